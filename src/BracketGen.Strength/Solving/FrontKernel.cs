using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using BracketGen.Strength.Elements;

namespace BracketGen.Strength.Solving;

/// <summary>Dense arithmetic of one front: the first columns of a symmetric matrix are eliminated (Cholesky).</summary>
/// <remarks>
/// Columns first, lower triangle, in blocks of six by six; what lies above the blocks of the diagonal and the padding are scratch. Products are added lane by lane and never
/// fused, so every processor gives the same bits.
/// </remarks>
internal static class FrontKernel
{
    private const int Block = Block6.Order;

    /// <summary>Column length for a front of <paramref name="order"/>, a multiple of six: whole vectors, and room for the last one to run over by two.</summary>
    public static int Stride(int order) => (order + 5) & ~3;

    /// <summary>Numbers to hold for a front.</summary>
    public static int Length(int order) => Stride(order) * order;

    /// <summary>Eliminates the first <paramref name="count"/> columns of <paramref name="front"/> of <paramref name="order"/> rows; both are multiples of six.</summary>
    /// <returns>-1, or the column whose pivot is not safely positive.</returns>
    public static int Eliminate(double[] front, int order, int count, ReadOnlySpan<double> smallest)
    {
        var stride = Stride(order);
        ref var f = ref MemoryMarshal.GetArrayDataReference(front);
        for (var j = 0; j < count; j += Block)
        {
            Update(ref f, stride, order, j, j);
            for (var c = j; c < j + Block; c++)
            {
                for (var q = j; q < c; q++)
                {
                    var factor = front[q * stride + c];
                    for (var r = c; r < j + Block; r++)
                    {
                        front[c * stride + r] -= front[q * stride + r] * factor;
                    }
                }

                var pivot = front[c * stride + c];
                if (!(pivot > smallest[c]))
                {
                    return c;
                }

                var root = Math.Sqrt(pivot);
                front[c * stride + c] = root;
                for (var r = c + 1; r < j + Block; r++)
                {
                    front[c * stride + r] *= 1 / root;
                }
            }

            Below(ref f, stride, order, j);
        }

        for (var j = count; j < order; j += Block)
        {
            Update(ref f, stride, order, j, count);
        }

        return -1;
    }

    // Six columns from `j` on, less the products of the first `count` columns, in tiles of four rows.
    private static void Update(ref double f, int stride, int order, int j, int count)
    {
        for (var i = j; i < order; i += 4)
        {
            ref var to = ref Unsafe.Add(ref f, j * stride + i);
            var a0 = Vector256.LoadUnsafe(ref to);
            var a1 = Vector256.LoadUnsafe(ref to, (nuint)stride);
            var a2 = Vector256.LoadUnsafe(ref to, (nuint)(2 * stride));
            var a3 = Vector256.LoadUnsafe(ref to, (nuint)(3 * stride));
            var a4 = Vector256.LoadUnsafe(ref to, (nuint)(4 * stride));
            var a5 = Vector256.LoadUnsafe(ref to, (nuint)(5 * stride));
            ref var row = ref Unsafe.Add(ref f, i);
            ref var factor = ref Unsafe.Add(ref f, j);
            for (var q = 0; q < count; q++)
            {
                var l = Vector256.LoadUnsafe(ref row);
                a0 = a0 - l * Vector256.Create(factor);
                a1 = a1 - l * Vector256.Create(Unsafe.Add(ref factor, 1));
                a2 = a2 - l * Vector256.Create(Unsafe.Add(ref factor, 2));
                a3 = a3 - l * Vector256.Create(Unsafe.Add(ref factor, 3));
                a4 = a4 - l * Vector256.Create(Unsafe.Add(ref factor, 4));
                a5 = a5 - l * Vector256.Create(Unsafe.Add(ref factor, 5));
                row = ref Unsafe.Add(ref row, stride);
                factor = ref Unsafe.Add(ref factor, stride);
            }

            a0.StoreUnsafe(ref to);
            a1.StoreUnsafe(ref to, (nuint)stride);
            a2.StoreUnsafe(ref to, (nuint)(2 * stride));
            a3.StoreUnsafe(ref to, (nuint)(3 * stride));
            a4.StoreUnsafe(ref to, (nuint)(4 * stride));
            a5.StoreUnsafe(ref to, (nuint)(5 * stride));
        }
    }

    // The rows below the block of the diagonal at `j`: each column less the ones before it in the block, over its pivot.
    private static void Below(ref double f, int stride, int order, int j)
    {
        ref var d = ref Unsafe.Add(ref f, j * stride + j);
        ref double d1 = ref Unsafe.Add(ref d, stride), d2 = ref Unsafe.Add(ref d, 2 * stride), d3 = ref Unsafe.Add(ref d, 3 * stride), d4 = ref Unsafe.Add(ref d, 4 * stride);
        double r0 = 1 / d, r1 = 1 / Unsafe.Add(ref d1, 1), r2 = 1 / Unsafe.Add(ref d2, 2), r3 = 1 / Unsafe.Add(ref d3, 3), r4 = 1 / Unsafe.Add(ref d4, 4);
        var r5 = 1 / Unsafe.Add(ref d, 5 * stride + 5);
        for (var i = Block; i < order - j; i += 4)
        {
            ref var to = ref Unsafe.Add(ref d, i);
            var a0 = Vector256.LoadUnsafe(ref to) * Vector256.Create(r0);
            a0.StoreUnsafe(ref to);
            var a1 = Less(Vector256.LoadUnsafe(ref to, (nuint)stride), a0, ref d, 1);
            a1 *= Vector256.Create(r1);
            a1.StoreUnsafe(ref to, (nuint)stride);
            var a2 = Less(Less(Vector256.LoadUnsafe(ref to, (nuint)(2 * stride)), a0, ref d, 2), a1, ref d1, 2);
            a2 *= Vector256.Create(r2);
            a2.StoreUnsafe(ref to, (nuint)(2 * stride));
            var a3 = Less(Less(Less(Vector256.LoadUnsafe(ref to, (nuint)(3 * stride)), a0, ref d, 3), a1, ref d1, 3), a2, ref d2, 3);
            a3 *= Vector256.Create(r3);
            a3.StoreUnsafe(ref to, (nuint)(3 * stride));
            var a4 = Less(Less(Vector256.LoadUnsafe(ref to, (nuint)(4 * stride)), a0, ref d, 4), a1, ref d1, 4);
            a4 = Less(Less(a4, a2, ref d2, 4), a3, ref d3, 4);
            a4 *= Vector256.Create(r4);
            a4.StoreUnsafe(ref to, (nuint)(4 * stride));
            var a5 = Less(Less(Vector256.LoadUnsafe(ref to, (nuint)(5 * stride)), a0, ref d, 5), a1, ref d1, 5);
            a5 = Less(Less(Less(a5, a2, ref d2, 5), a3, ref d3, 5), a4, ref d4, 5);
            (a5 * Vector256.Create(r5)).StoreUnsafe(ref to, (nuint)(5 * stride));
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector256<double> Less(Vector256<double> a, Vector256<double> l, ref double factors, int at) => a - l * Vector256.Create(Unsafe.Add(ref factors, at));

    /// <summary><paramref name="target"/> -= <paramref name="factor"/> · <paramref name="source"/>.</summary>
    public static void Subtract(Span<double> target, ReadOnlySpan<double> source, double factor)
    {
        ref var t = ref MemoryMarshal.GetReference(target);
        ref var s = ref MemoryMarshal.GetReference(source);
        var multiplier = Vector256.Create(factor);
        var i = 0;
        for (; i <= target.Length - 4; i += 4)
        {
            (Vector256.LoadUnsafe(ref t, (nuint)i) - Vector256.LoadUnsafe(ref s, (nuint)i) * multiplier).StoreUnsafe(ref t, (nuint)i);
        }

        for (; i < target.Length; i++)
        {
            target[i] -= source[i] * factor;
        }
    }

    /// <summary>Scalar product in four lanes.</summary>
    public static double Dot(ReadOnlySpan<double> a, ReadOnlySpan<double> b)
    {
        ref var x = ref MemoryMarshal.GetReference(a);
        ref var y = ref MemoryMarshal.GetReference(b);
        Vector256<double> even = default, odd = default;
        var i = 0;
        for (; i <= a.Length - 8; i += 8)
        {
            even += Vector256.LoadUnsafe(ref x, (nuint)i) * Vector256.LoadUnsafe(ref y, (nuint)i);
            odd += Vector256.LoadUnsafe(ref x, (nuint)(i + 4)) * Vector256.LoadUnsafe(ref y, (nuint)(i + 4));
        }

        even += odd;
        var sum = (even[0] + even[1]) + (even[2] + even[3]);
        for (; i < a.Length; i++)
        {
            sum += a[i] * b[i];
        }

        return sum;
    }
}
