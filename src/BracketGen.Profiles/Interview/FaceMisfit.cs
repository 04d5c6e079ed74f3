using System.Collections.Immutable;
using System.Globalization;
using BracketGen.Geometry;
using BracketGen.Profiles.Errors;

namespace BracketGen.Profiles.Interview;

/// <summary>Which of the points of a face seems wrong, where the rest lie in one plane.</summary>
internal static class FaceMisfit
{
    /// <summary>Number of the one hole, from 1, without which the others agree; null where there is none, or more than one.</summary>
    /// <param name="mistakes">What is wrong with the answers.</param>
    /// <param name="count">How many holes there are.</param>
    public static int? Hole(IEnumerable<ProfileError> mistakes, int count)
    {
        // Heights over the plane through hole 1; holes without a mistake lie in it.
        var heights = new double[count];
        foreach (var mistake in mistakes)
        {
            if (mistake.Problem is HoleOffFace off && ItemOf(mistake.Key) is var item && item >= 1 && item <= count)
            {
                if (off.IsFitted)
                {
                    return item;
                }

                heights[item - 1] = off.Height;
            }
        }

        // Of two points either may be the wrong one.
        ImmutableArray<int> odd = count < 3 ? [] : [.. Enumerable.Range(1, count).Where(i => Spread(heights.Where((_, j) => j != i - 1)) <= 2 * Tolerance.OffPlane)];
        return odd is [var one] ? one : null;
    }

    private static double Spread(IEnumerable<double> heights) => heights.Max() - heights.Min();

    // mount.holes[2].at
    private static int ItemOf(string key)
    {
        var (open, close) = (key.IndexOf('['), key.IndexOf(']'));
        return open >= 0 && close > open && int.TryParse(key[(open + 1)..close], NumberStyles.None, CultureInfo.InvariantCulture, out var item) ? item : 0;
    }
}
