namespace BracketGen.Mechanism.Numerics;

/// <summary>Values by their rank, without sorting all the others.</summary>
/// <remarks>
/// C. A. R. Hoare's selection (Algorithm 65, <i>Communications of the ACM</i> 4, 1961): in the mean a few passes over the values, where
/// sorting takes many. Not a number ranks above or below all numbers, by its sign.
/// </remarks>
internal static class OrderStatistic
{
    /// <summary>The value of <paramref name="rank"/> (0 the smallest) and the one above it, or itself if it is the largest.</summary>
    public static (double Value, double Next) At(ReadOnlySpan<double> values, int rank)
    {
        // As whole numbers that keep the order: they compare faster, and totally.
        var keys = new long[values.Length];
        for (var i = 0; i < keys.Length; i++)
        {
            keys[i] = KeyOf(values[i]);
        }

        Select(keys, rank);
        var next = rank + 1 < keys.Length ? long.MaxValue : keys[rank];
        for (var i = rank + 1; i < keys.Length; i++)
        {
            next = Math.Min(next, keys[i]);
        }

        return (ValueOf(keys[rank]), ValueOf(next));
    }

    // Afterwards the key of the rank is at its place, none larger before it and none smaller behind it.
    private static void Select(long[] keys, int rank)
    {
        int low = 0, high = keys.Length - 1;
        while (low < high)
        {
            var pivot = Middle(keys[low], keys[low + (high - low) / 2], keys[high]);
            int i = low, j = high;
            while (i <= j)
            {
                while (keys[i] < pivot)
                {
                    i++;
                }

                while (keys[j] > pivot)
                {
                    j--;
                }

                if (i <= j)
                {
                    (keys[i], keys[j]) = (keys[j], keys[i]);
                    i++;
                    j--;
                }
            }

            if (rank <= j)
            {
                high = j;
            }
            else if (rank >= i)
            {
                low = i;
            }
            else
            {
                return;
            }
        }
    }

    private static long Middle(long a, long b, long c) => Math.Max(Math.Min(a, b), Math.Min(Math.Max(a, b), c));

    // A double's bits count upwards with it where it is positive, and downwards where it is negative.
    private static long KeyOf(double value) => Flip(BitConverter.DoubleToInt64Bits(value));

    private static double ValueOf(long key) => BitConverter.Int64BitsToDouble(Flip(key));

    private static long Flip(long bits) => bits ^ (bits >> 63 & long.MaxValue);
}
