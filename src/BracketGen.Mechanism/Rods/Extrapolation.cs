using System.Collections.Immutable;
using BracketGen.Geometry;

namespace BracketGen.Mechanism.Rods;

/// <summary>The smooth line from two chains, the second with links half as long: (4 fine - coarse)/3 at the joints of the coarse one.</summary>
internal static class Extrapolation
{
    /// <summary>The line in the rod's own length and place.</summary>
    /// <param name="coarse">The coarse chain, solved, length one.</param>
    /// <param name="fine">The fine one.</param>
    /// <param name="from">Where the rod begins.</param>
    /// <param name="length">Its length.</param>
    public static ElasticLine Of(RodChain coarse, RodChain fine, Vector3 from, double length)
    {
        var n = coarse.Links.Length;
        var points = new Vector3[n + 1];
        var directions = new Vector3[n + 1];
        var along = new double[n + 1];
        Vector3 atCoarse = Vector3.Zero, atFine = Vector3.Zero;
        (points[0], directions[0]) = (from, coarse.DirectionAt(0));
        for (var i = 0; i < n; i++)
        {
            atCoarse += coarse.LengthOf[i] * coarse.Links[i];
            atFine += fine.LengthOf[2 * i] * (fine.Links[2 * i] + fine.Links[2 * i + 1]);
            along[i + 1] = along[i] + coarse.LengthOf[i] * length;
            points[i + 1] = from + length * Limit(atCoarse, atFine);
            directions[i + 1] = Limit(coarse.DirectionAt(i + 1), fine.DirectionAt(2 * i + 2)).Unit;
        }

        var curvature = new Curvature();
        for (var i = 0; i < n; i++)
        {
            var span = coarse.SpanOf[i];
            curvature.Add(
                along[i + 1] - along[i], Limit(coarse.MomentBefore(i), fine.MomentBefore(2 * i)) / length,
                Limit(coarse.MomentAfter(i), fine.MomentAfter(2 * i + 1)) / length, directions[i], directions[i + 1],
                Limit(coarse.Forces[span], fine.Forces[span]) / (length * length));
        }

        return new()
        {
            Points = ImmutableArray.Create(points),
            Directions = ImmutableArray.Create(directions),
            Along = ImmutableArray.Create(along),
            Bend = curvature.Bend,
            MinRadius = 1 / curvature.Largest,
            TightestAt = curvature.LargestAt,
            StartMoment = Limit(coarse.MomentBefore(0), fine.MomentBefore(0)) / length,
            EndMoment = Limit(coarse.MomentAfter(n - 1), fine.MomentAfter(2 * n - 1)) / length,
            EndForce = Limit(coarse.Forces[^1], fine.Forces[^1]) / (length * length),
            Energy = (4 * fine.Energy - coarse.Energy) / 3 / length,
            NegativeModes = fine.Index,
            Turning = curvature.Turning,
        };
    }

    private static Vector3 Limit(Vector3 coarse, Vector3 fine) => (4 * fine - coarse) / 3;
}
