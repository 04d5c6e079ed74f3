using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace BracketGen.Strength.Solving;

/// <summary>Dense arithmetic of one front: the first columns of a symmetric matrix are eliminated (Cholesky).</summary>
/// <remarks>
/// Columns first, lower triangle; the strict upper triangle and the padding are scratch. Products are added lane by lane and never
/// fused, so every processor gives the same bits.
/// </remarks>
internal static class FrontKernel
{
    private const int Panel = 24;

    /// <summary>Column length for a front of <paramref name="order"/>: whole pairs of vectors.</summary>
    public static int Stride(int order) => (order + 7) & ~7;

    /// <summary>Numbers to hold for a front: four columns more than needed, for the last tile to run into.</summary>
    public static int Length(int order) => Stride(order) * (Stride(order) + 4) + 8;

    /// <summary>Eliminates the first <paramref name="count"/> columns of <paramref name="front"/> of <paramref name="order"/> rows.</summary>
    /// <returns>-1, or the column whose pivot is not safely positive.</returns>
    public static int Eliminate(double[] front, int order, int count, ReadOnlySpan<double> smallest)
    {
        var stride = Stride(order);
        for (var from = 0; from < count; from += Panel)
        {
            var to = Math.Min(from + Panel, count);
            for (var j = from; j < to; j++)
            {
                for (var q = from; q < j; q++)
                {
                    Subtract(front, j * stride + j, q * stride + j, front[q * stride + j], stride - j);
                }

                var pivot = front[j * stride + j];
                if (!(pivot > smallest[j]))
                {
                    return j;
                }

                var root = Math.Sqrt(pivot);
                front[j * stride + j] = root;
                Scale(front, j * stride + j + 1, 1 / root, stride - j - 1);
            }

            Update(front, stride, order, from, to);
        }

        return -1;
    }

    // Columns from `to` on less the products of the panel's columns, in tiles of 8 rows by 4 columns.
    private static void Update(double[] front, int stride, int order, int from, int to)
    {
        ref var f = ref MemoryMarshal.GetArrayDataReference(front);
        for (var j = to; j < order; j += 4)
        {
            for (var i = j & ~7; i < stride; i += 8)
            {
                nuint c0 = (nuint)(j * stride + i), c1 = c0 + (nuint)stride, c2 = c1 + (nuint)stride, c3 = c2 + (nuint)stride;
                var a00 = Vector256.LoadUnsafe(ref f, c0);
                var a01 = Vector256.LoadUnsafe(ref f, c0 + 4);
                var a10 = Vector256.LoadUnsafe(ref f, c1);
                var a11 = Vector256.LoadUnsafe(ref f, c1 + 4);
                var a20 = Vector256.LoadUnsafe(ref f, c2);
                var a21 = Vector256.LoadUnsafe(ref f, c2 + 4);
                var a30 = Vector256.LoadUnsafe(ref f, c3);
                var a31 = Vector256.LoadUnsafe(ref f, c3 + 4);
                nuint row = (nuint)(from * stride + i), multiplier = (nuint)(from * stride + j);
                for (var q = from; q < to; q++)
                {
                    var l0 = Vector256.LoadUnsafe(ref f, row);
                    var l1 = Vector256.LoadUnsafe(ref f, row + 4);
                    var m0 = Vector256.Create(System.Runtime.CompilerServices.Unsafe.Add(ref f, multiplier));
                    var m1 = Vector256.Create(System.Runtime.CompilerServices.Unsafe.Add(ref f, multiplier + 1));
                    a00 -= l0 * m0;
                    a01 -= l1 * m0;
                    a10 -= l0 * m1;
                    a11 -= l1 * m1;
                    var m2 = Vector256.Create(System.Runtime.CompilerServices.Unsafe.Add(ref f, multiplier + 2));
                    var m3 = Vector256.Create(System.Runtime.CompilerServices.Unsafe.Add(ref f, multiplier + 3));
                    a20 -= l0 * m2;
                    a21 -= l1 * m2;
                    a30 -= l0 * m3;
                    a31 -= l1 * m3;
                    row += (nuint)stride;
                    multiplier += (nuint)stride;
                }

                a00.StoreUnsafe(ref f, c0);
                a01.StoreUnsafe(ref f, c0 + 4);
                a10.StoreUnsafe(ref f, c1);
                a11.StoreUnsafe(ref f, c1 + 4);
                a20.StoreUnsafe(ref f, c2);
                a21.StoreUnsafe(ref f, c2 + 4);
                a30.StoreUnsafe(ref f, c3);
                a31.StoreUnsafe(ref f, c3 + 4);
            }
        }
    }

    /// <summary>target[0..length) -= factor · source[0..length), both inside <paramref name="data"/>.</summary>
    private static void Subtract(double[] data, int target, int source, double factor, int length) =>
        Subtract(data.AsSpan(target, length), data.AsSpan(source, length), factor);

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

    private static void Scale(double[] data, int start, double factor, int length)
    {
        foreach (ref var value in data.AsSpan(start, length))
        {
            value *= factor;
        }
    }
}
