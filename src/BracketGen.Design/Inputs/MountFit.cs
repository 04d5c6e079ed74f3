using BracketGen.Geometry;

namespace BracketGen.Design.Inputs;

/// <summary>The mount face through holes that were measured with ±.</summary>
/// <remarks>
/// The normal that is given holds as long as the ± of the holes explains it; the face then lies where the heights of the holes fit best. Holes without
/// any ± are exact: the face goes through the first one. The free plane, nearest to the holes whatever normal is given, tells which of the two is
/// wrong where they do not go together.
/// </remarks>
/// <param name="Face">The face, its normal the one given.</param>
/// <param name="Worst">Number of the hole that the face misses by most beyond its ±, from 0.</param>
/// <param name="Height">Height of that hole over the face (mm); negative below it.</param>
/// <param name="Allowed">Height that its ± explains (mm).</param>
/// <param name="Free">The plane nearest to the holes by least squares of the distances; null where they decide none.</param>
public sealed record MountFit(Plane Face, int Worst, double Height, double Allowed, Plane? Free)
{
    // Holes nearer to one line than this (mm) say nothing about the tilt across it.
    private const double MinSpan = 3;

    /// <summary>Whether ± explains how far every hole is off the face.</summary>
    public bool IsExplained => Math.Abs(Height) <= Allowed;

    /// <summary>The fit.</summary>
    /// <param name="normal">The normal as given, out of the casting; of any length.</param>
    /// <param name="holes">At least one hole.</param>
    public static MountFit Of(Vector3 normal, IReadOnlyList<MountHole> holes)
    {
        var below = new Plane(holes[0].At.Vector, normal);

        // A spacer fills what lies between a lower boss and the face.
        var first = holes[0].SpacerLength > 0 ? new Plane(below.Point + holes[0].SpacerLength * below.Normal, below.Normal) : below;
        double[] heights = [.. holes.Select(h => first.HeightOf(h.At.Vector) + h.SpacerLength)];
        double[] known = [.. holes.Select(h => h.PlusMinus.Along(first.Normal))];
        var offset = holes.All(h => h.PlusMinus.IsExact) ? 0 : Offset(heights, known);
        double Beyond(int i) => Math.Abs(heights[i] - offset) - known[i];
        var worst = Enumerable.Range(0, heights.Length).MaxBy(Beyond);
        var face = offset == 0 ? first : new Plane(first.Point + offset * first.Normal, first.Normal);
        return new(
            face, worst, heights[worst] - offset, known[worst] + Tolerance.OffPlane,
            PlaneFit.Of([.. holes.Select(h => h.At.Vector + h.SpacerLength * first.Normal)], first.Normal, MinSpan));
    }

    // The mean height, each hole weighed by the inverse square of its ±, moved to where every ± explains it if there is such a height.
    private static double Offset(double[] heights, double[] known)
    {
        double sum = 0, weights = 0;
        for (var i = 0; i < heights.Length; i++)
        {
            var off = Math.Max(known[i], Tolerance.OffPlane);
            var weight = 1 / (off * off);
            (sum, weights) = (sum + weight * heights[i], weights + weight);
        }

        var (low, high) = (heights.Zip(known, (h, k) => h - k).Max(), heights.Zip(known, (h, k) => h + k).Min());
        return low <= high ? Math.Clamp(sum / weights, low, high) : sum / weights;
    }
}
