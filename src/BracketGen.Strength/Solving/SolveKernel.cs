using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using BracketGen.Strength.Elements;

namespace BracketGen.Strength.Solving;

/// <summary>Forward and backward solution with the columns of one group, for four right-hand sides at once: one lane each.</summary>
/// <remarks>The right-hand sides lie by places of elimination: six rows a place, four numbers a row. Products are never fused, so every processor gives the same bits.</remarks>
internal static class SolveKernel
{
    /// <summary>Right-hand sides solved at once.</summary>
    public const int Width = 4;

    private const int Block = Block6.Order;

    // Numbers of a place.
    private const int PlaceLength = Block * Width;

    /// <summary>L y = b for the places of <paramref name="group"/>; later places are made less what these put on them.</summary>
    public static void Forward(EliminationPlan.Supernode group, double[] columns, double[] all)
    {
        var stride = FrontKernel.Stride(Block * group.Front);
        ref var l = ref MemoryMarshal.GetArrayDataReference(columns);
        ref var y = ref MemoryMarshal.GetArrayDataReference(all);
        for (var k = 0; k < group.Count; k++)
        {
            ref var own = ref Unsafe.Add(ref y, PlaceLength * (group.First + k));
            for (var c = 0; c < Block; c++)
            {
                ref var column = ref Unsafe.Add(ref l, (Block * k + c) * stride + Block * k);
                var value = Vector256.LoadUnsafe(ref own, (nuint)(Width * c)) / Vector256.Create(Unsafe.Add(ref column, c));
                value.StoreUnsafe(ref own, (nuint)(Width * c));
                for (var r = c + 1; r < Block; r++)
                {
                    Less(Vector256.LoadUnsafe(ref own, (nuint)(Width * r)), ref Unsafe.Add(ref column, r), value).StoreUnsafe(ref own, (nuint)(Width * r));
                }
            }

            var at = Block * k * stride + Block * (k + 1);
            for (var i = k + 1; i < group.Front; i++)
            {
                var place = i < group.Count ? group.First + i : group.Rows[i - group.Count];
                ForwardPlace(ref Unsafe.Add(ref l, at), stride, ref own, ref Unsafe.Add(ref y, PlaceLength * place));
                at += Block;
            }
        }
    }

    /// <summary>Lᵀ x = y for the places of <paramref name="group"/>, all later ones known.</summary>
    public static void Backward(EliminationPlan.Supernode group, double[] columns, double[] all)
    {
        var stride = FrontKernel.Stride(Block * group.Front);
        ref var l = ref MemoryMarshal.GetArrayDataReference(columns);
        ref var y = ref MemoryMarshal.GetArrayDataReference(all);
        for (var k = group.Count - 1; k >= 0; k--)
        {
            ref var own = ref Unsafe.Add(ref y, PlaceLength * (group.First + k));
            ref var l0 = ref Unsafe.Add(ref l, Block * k * stride + Block * k);
            ref double l1 = ref Unsafe.Add(ref l0, stride), l2 = ref Unsafe.Add(ref l0, 2 * stride), l3 = ref Unsafe.Add(ref l0, 3 * stride), l4 = ref Unsafe.Add(ref l0, 4 * stride);
            ref var l5 = ref Unsafe.Add(ref l0, 5 * stride);
            Vector256<double> a0 = Vector256.LoadUnsafe(ref own), a1 = Vector256.LoadUnsafe(ref own, 4), a2 = Vector256.LoadUnsafe(ref own, 8);
            Vector256<double> a3 = Vector256.LoadUnsafe(ref own, 12), a4 = Vector256.LoadUnsafe(ref own, 16), a5 = Vector256.LoadUnsafe(ref own, 20);
            for (var i = k + 1; i < group.Front; i++)
            {
                var at = Block * (i - k);
                ref var from = ref Unsafe.Add(ref y, PlaceLength * (i < group.Count ? group.First + i : group.Rows[i - group.Count]));
                for (var r = 0; r < Block; r++)
                {
                    var value = Vector256.LoadUnsafe(ref from, (nuint)(Width * r));
                    a0 = Less(a0, ref Unsafe.Add(ref l0, at + r), value);
                    a1 = Less(a1, ref Unsafe.Add(ref l1, at + r), value);
                    a2 = Less(a2, ref Unsafe.Add(ref l2, at + r), value);
                    a3 = Less(a3, ref Unsafe.Add(ref l3, at + r), value);
                    a4 = Less(a4, ref Unsafe.Add(ref l4, at + r), value);
                    a5 = Less(a5, ref Unsafe.Add(ref l5, at + r), value);
                }
            }

            a0.StoreUnsafe(ref own);
            a1.StoreUnsafe(ref own, 4);
            a2.StoreUnsafe(ref own, 8);
            a3.StoreUnsafe(ref own, 12);
            a4.StoreUnsafe(ref own, 16);
            a5.StoreUnsafe(ref own, 20);
            for (var c = Block - 1; c >= 0; c--)
            {
                ref var column = ref Unsafe.Add(ref l0, c * stride);
                var value = Vector256.LoadUnsafe(ref own, (nuint)(Width * c));
                for (var r = c + 1; r < Block; r++)
                {
                    value = Less(value, ref Unsafe.Add(ref column, r), Vector256.LoadUnsafe(ref own, (nuint)(Width * r)));
                }

                (value / Vector256.Create(Unsafe.Add(ref column, c))).StoreUnsafe(ref own, (nuint)(Width * c));
            }
        }
    }

    private static void ForwardPlace(ref double l, int stride, ref double own, ref double to)
    {
        Vector256<double> y0 = Vector256.LoadUnsafe(ref own), y1 = Vector256.LoadUnsafe(ref own, 4), y2 = Vector256.LoadUnsafe(ref own, 8);
        Vector256<double> y3 = Vector256.LoadUnsafe(ref own, 12), y4 = Vector256.LoadUnsafe(ref own, 16), y5 = Vector256.LoadUnsafe(ref own, 20);
        ref double l1 = ref Unsafe.Add(ref l, stride), l2 = ref Unsafe.Add(ref l, 2 * stride), l3 = ref Unsafe.Add(ref l, 3 * stride), l4 = ref Unsafe.Add(ref l, 4 * stride);
        ref var l5 = ref Unsafe.Add(ref l, 5 * stride);
        for (var r = 0; r < Block; r++)
        {
            var a = Vector256.LoadUnsafe(ref to, (nuint)(Width * r));
            a = Less(a, ref Unsafe.Add(ref l, r), y0);
            a = Less(a, ref Unsafe.Add(ref l1, r), y1);
            a = Less(a, ref Unsafe.Add(ref l2, r), y2);
            a = Less(a, ref Unsafe.Add(ref l3, r), y3);
            a = Less(a, ref Unsafe.Add(ref l4, r), y4);
            a = Less(a, ref Unsafe.Add(ref l5, r), y5);
            a.StoreUnsafe(ref to, (nuint)(Width * r));
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector256<double> Less(Vector256<double> a, ref double factor, Vector256<double> value) => a - Vector256.Create(factor) * value;
}
