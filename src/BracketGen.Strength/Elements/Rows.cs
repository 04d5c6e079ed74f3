using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace BracketGen.Strength.Elements;

/// <summary>Products of small matrices of nine columns, each row padded to <see cref="Stride"/> numbers: three vectors.</summary>
/// <remarks>Products are added lane by lane and never fused, so every processor gives the same bits.</remarks>
internal static class Rows
{
    /// <summary>Numbers of a row; those past the ninth are scratch.</summary>
    public const int Stride = 12;

    /// <summary>result = factors · rows: <paramref name="factors"/> is n x n, rows first; <paramref name="rows"/> and <paramref name="result"/> have n rows.</summary>
    public static void Multiply(ReadOnlySpan<double> factors, int n, ReadOnlySpan<double> rows, Span<double> result)
    {
        for (var r = 0; r < n; r++)
        {
            Sum(factors.Slice(n * r, n), 1, rows, result.Slice(Stride * r, Stride));
        }
    }

    /// <summary>result = leftᵀ · right, nine rows: both have n rows.</summary>
    public static void Congruence(ReadOnlySpan<double> left, int n, ReadOnlySpan<double> right, Span<double> result)
    {
        for (var r = 0; r < 9; r++)
        {
            Sum(left.Slice(r, Stride * (n - 1) + 1), Stride, right, result.Slice(Stride * r, Stride));
        }
    }

    private static void Sum(ReadOnlySpan<double> factors, int step, ReadOnlySpan<double> rows, Span<double> result)
    {
        ref var from = ref MemoryMarshal.GetReference(rows);
        Vector256<double> a = default, b = default, c = default;
        var at = 0;
        for (var q = 0; q < factors.Length; q += step)
        {
            var factor = Vector256.Create(factors[q]);
            a += factor * Vector256.LoadUnsafe(ref from, (nuint)at);
            b += factor * Vector256.LoadUnsafe(ref from, (nuint)(at + 4));
            c += factor * Vector256.LoadUnsafe(ref from, (nuint)(at + 8));
            at += Stride;
        }

        ref var to = ref MemoryMarshal.GetReference(result);
        a.StoreUnsafe(ref to);
        b.StoreUnsafe(ref to, 4);
        c.StoreUnsafe(ref to, 8);
    }
}
