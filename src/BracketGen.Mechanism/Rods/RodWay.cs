using BracketGen.Geometry;

namespace BracketGen.Mechanism.Rods;

/// <summary>What a rod has to reach, from clamp to clamp: its spans, each with gap and length.</summary>
/// <param name="Directions">Direction at the beginning, between spans and at the end, length one; zero where a point lets the rod turn.</param>
/// <param name="Gaps">From each span's beginning to its end.</param>
/// <param name="Lengths">Length of each span.</param>
internal sealed record RodWay(Vector3[] Directions, Vector3[] Gaps, double[] Lengths)
{
    /// <summary>The way on which the first line of the search lies: at points without direction it runs along both chords.</summary>
    public Vector3 DirectionToBegin(int k)
    {
        if (Directions[k] != Vector3.Zero)
        {
            return Directions[k];
        }

        Vector3 before = Gaps[k - 1] / Lengths[k - 1], after = Gaps[k] / Lengths[k], sum = before + after;
        return sum.Length > RodTolerance.NoFrame ? sum.Unit : RodSpan.Aside(before.Unit);
    }

    /// <summary>Whether every clamp and point lies on one line and the rod is no longer than that.</summary>
    public bool IsStraight(double apart) => 1 - apart < RodTolerance.Straight && IsOnOneLine(RodTolerance.StraightDirection);

    /// <summary>Whether all clamps and points lie on one line: then nothing holds a bent rod from turning about it.</summary>
    public bool TurnsFreely => IsOnOneLine(RodTolerance.StraightDirection);

    /// <summary>Whether the rod has any line: it is longer than its gaps by what its ends need to turn within the last links.</summary>
    /// <remarks>
    /// A taut rod turns by θ at a clamp within a length of the order of √(EI/F), which takes 2 (1 - cos(θ/2)) √(EI/F) more than the chord (the
    /// elastica without inflection, Love, article 262).
    /// </remarks>
    public bool IsLongEnough(double apart)
    {
        double turns = 0;
        for (var k = 0; k < Gaps.Length; k++)
        {
            if (Gaps[k].Length < RodTolerance.NoGap)
            {
                continue;
            }

            var along = Gaps[k].Unit;
            turns += TurnNeeded(Directions[k], along) + TurnNeeded(Directions[k + 1], along);
        }

        return 1 - apart > Math.Max(RodTolerance.Straight, turns / RodTolerance.Tautest);
    }

    /// <summary>Lays a chain for start number <paramref name="start"/>.</summary>
    public void Lay(RodChain chain, int start)
    {
        var n = chain.LinksASpan;
        for (var k = 0; k < Gaps.Length; k++)
        {
            var span = new RodSpan(DirectionToBegin(k), DirectionToBegin(k + 1), Gaps[k], Lengths[k]);
            for (var i = 0; i < n; i++)
            {
                chain.Links[k * n + i] = span.At(start, (i + 0.5) / n);
            }
        }
    }

    /// <summary>Lays a chain along a line over as many spans, link by link.</summary>
    public static void LayAlong(RodChain chain, ElasticLine line)
    {
        // The line has a point at the middle of each link: it was found with finer ones.
        var links = chain.Links;
        var pieces = line.Points.Length - 1;
        for (var i = 0; i < links.Length; i++)
        {
            links[i] = line.Directions[(2 * i + 1) * pieces / (2 * links.Length)];
        }
    }

    /// <summary>Lays a chain along another, the middle of each span turned about its gap.</summary>
    public void LayTurned(RodChain chain, RodChain other, Angle turn)
    {
        var n = chain.LinksASpan;
        for (var k = 0; k < Gaps.Length; k++)
        {
            var axis = Gaps[k].Length > RodTolerance.NoGap ? Gaps[k].Unit : DirectionToBegin(k);
            for (var i = 0; i < n; i++)
            {
                double s = (i + 0.5) / n, part = Math.Min(1, Math.Min(s, 1 - s) / RodTolerance.TurnedEnd);
                chain.Links[k * n + i] = other.Links[k * n + i].Rotate(axis, part * turn);
            }
        }

        other.Forces.CopyTo(chain.Forces);
    }

    private static double TurnNeeded(Vector3 direction, Vector3 along) =>
        direction == Vector3.Zero ? 0 : 2 * (1 - Math.Cos(direction.AngleTo(along).Radians / 2));

    private bool IsOnOneLine(double angle)
    {
        var along = Vector3.Zero;
        foreach (var gap in Gaps)
        {
            along = along == Vector3.Zero && gap.Length > RodTolerance.NoGap ? gap.Unit : along;
            if (gap.Length > RodTolerance.NoGap && gap.AngleTo(along).Radians > angle)
            {
                return false;
            }
        }

        foreach (var direction in Directions)
        {
            if (direction != Vector3.Zero && !(direction.AngleTo(along).Radians <= angle))
            {
                return false;
            }
        }

        return true;
    }
}
