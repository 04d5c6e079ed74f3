using System.Numerics;

namespace BracketGen.Mechanism.Numerics;

/// <summary>Sobol's points, which fill the unit cube more evenly than random ones, with a seeded digital shift.</summary>
/// <remarks>
/// I. M. Sobol', USSR Comput. Math. Math. Phys. 7 (1967) 86-112, in the Gray-code order of I. A. Antonov and V. M. Saleev (1979), with
/// the direction numbers of S. Joe and F. Y. Kuo, SIAM J. Sci. Comput. 30 (2008) 2635-2654 (file new-joe-kuo-6, first rows). The random
/// digital shift makes every point uniform by itself and keeps the evenness (P. L'Ecuyer and C. Lemieux, "Recent advances in randomized
/// quasi-Monte Carlo methods", 2002); its bits come from the seed by SplitMix64 (Steele, Lea and Flood, OOPSLA 2014). Same seed, same points. Not
/// thread-safe: one for each run.
/// </remarks>
internal sealed class SobolSequence
{
    private const int Bits = 32;

    /// <summary>Maximum number of dimensions.</summary>
    public const int MostDimensions = 21;

    /// <summary>Degree s, coefficients a and first direction numbers of dimensions 2, 3, ...; dimension 1 is van der Corput's.</summary>
    private static readonly (int Degree, uint A, uint[] M)[] Rows =
    [
        (1, 0, [1]),
        (2, 1, [1, 3]),
        (3, 1, [1, 3, 1]),
        (3, 2, [1, 1, 1]),
        (4, 1, [1, 1, 3, 3]),
        (4, 4, [1, 3, 5, 13]),
        (5, 2, [1, 1, 5, 5, 17]),
        (5, 4, [1, 1, 5, 5, 5]),
        (5, 7, [1, 1, 7, 11, 19]),
        (5, 11, [1, 1, 5, 1, 1]),
        (5, 13, [1, 1, 1, 3, 11]),
        (5, 14, [1, 3, 5, 5, 31]),
        (6, 1, [1, 3, 3, 9, 7, 49]),
        (6, 13, [1, 1, 1, 15, 21, 21]),
        (6, 16, [1, 3, 1, 13, 27, 49]),
        (6, 19, [1, 1, 1, 15, 7, 5]),
        (6, 22, [1, 3, 1, 15, 13, 25]),
        (6, 25, [1, 1, 5, 5, 19, 61]),
        (7, 1, [1, 3, 7, 11, 23, 15, 103]),
        (7, 4, [1, 3, 7, 13, 13, 15, 69]),
    ];

    private readonly uint[][] directions;
    private readonly uint[] state;
    private readonly uint[] shift;
    private uint index;

    /// <summary>The sequence in <paramref name="dimensions"/> dimensions, shifted by the bits of <paramref name="seed"/>; without a seed as published.</summary>
    public SobolSequence(int dimensions, ulong? seed = null)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThan(dimensions, MostDimensions);
        directions = [.. Enumerable.Range(0, dimensions).Select(Directions)];
        state = new uint[dimensions];
        shift = new uint[dimensions];
        if (seed is { } s)
        {
            for (var i = 0; i < dimensions; i++)
            {
                shift[i] = (uint)(SplitMix(ref s) >> 32);
            }
        }
    }

    /// <summary>The next point: each coordinate in the middle of its 2⁻³² wide cell, so never 0 or 1.</summary>
    public void Next(Span<double> point)
    {
        for (var i = 0; i < state.Length; i++)
        {
            point[i] = ((state[i] ^ shift[i]) + 0.5) / 4294967296.0;
        }

        var flipped = BitOperations.TrailingZeroCount(++index);
        for (var i = 0; i < state.Length; i++)
        {
            state[i] ^= directions[i][flipped];
        }
    }

    /// <summary>The next number of SplitMix64.</summary>
    internal static ulong SplitMix(ref ulong state)
    {
        state += 0x9E3779B97F4A7C15;
        var z = state;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
        return z ^ (z >> 31);
    }

    private static uint[] Directions(int dimension)
    {
        var v = new uint[Bits];
        if (dimension == 0)
        {
            for (var k = 0; k < Bits; k++)
            {
                v[k] = 1u << (Bits - 1 - k);
            }

            return v;
        }

        var (s, a, m) = Rows[dimension - 1];
        for (var k = 0; k < Bits; k++)
        {
            if (k < s)
            {
                v[k] = m[k] << (Bits - 1 - k);
                continue;
            }

            v[k] = v[k - s] ^ (v[k - s] >> s);
            for (var j = 1; j < s; j++)
            {
                v[k] ^= ((a >> (s - 1 - j)) & 1) * v[k - j];
            }
        }

        return v;
    }
}
