using System.Collections.Immutable;
using BracketGen.Geometry;

namespace BracketGen.Mechanism.Rods;

/// <summary>Finds the lines in which an inextensible, naturally straight, elastic rod rests between clamps that fix place and direction, not twist.</summary>
/// <remarks>
/// Without twist, weight and contact the rod takes a line of minimum ∫κ²/2 (A. E. H. Love, <i>A Treatise on the Mathematical Theory of
/// Elasticity</i>, chapter XIX). A coarse chain is solved from several starts; each line found is followed to finer chains, and the last two are
/// extrapolated (L. F. Richardson, 1911: the error falls with the square of the link's length). Same input, same lines: there is nothing random.
/// Where the rod slides through supports, it slides until no length moved from one span to the next lowers the energy.
/// </remarks>
public static class ElasticRod
{
    /// <summary>The stable lines of a rod between two clamps, the one with the least energy first; none if it is too short.</summary>
    /// <param name="from">Where it begins.</param>
    /// <param name="to">Where it ends; its direction is that of the rod as it arrives.</param>
    /// <param name="length">Length of the rod, positive.</param>
    public static ImmutableArray<ElasticLine> Lines(RodEnd from, RodEnd to, double length) =>
        PieceOf([from.Point, to.Point], [from.Direction.Unit, to.Direction.Unit], [length], [true], []).Lines;

    /// <summary>How a rod lies between two clamps and over supports.</summary>
    /// <param name="from">Where it begins.</param>
    /// <param name="supports">What it runs through, in order.</param>
    /// <param name="to">Where it ends; its direction is that of the rod as it arrives.</param>
    /// <param name="length">Length of the rod, positive.</param>
    /// <param name="near">
    /// How it lies with its ends and supports a little aside, found without this; null if that is not known. Its lines are followed, and fewer starts are needed beside them.
    /// </param>
    public static ElasticLines Lay(RodEnd from, IReadOnlyList<RodSupport> supports, RodEnd to, double length, ElasticLines? near = null)
    {
        var spans = supports.Count + 1;
        var points = new Vector3[spans + 1];
        var directions = new Vector3[spans + 1];
        var marks = new double[spans + 1];
        (points[0], points[spans], directions[0], directions[spans]) = (from.Point, to.Point, from.Direction.Unit, to.Direction.Unit);
        for (var k = 1; k < spans; k++)
        {
            var support = supports[k - 1];
            (points[k], directions[k]) = (support.Point, support.Direction?.Unit ?? Vector3.Zero);
            marks[k] = support.Along ?? double.NaN;
        }

        marks[spans] = length;
        double chord = 0, leastBend = 0;
        var before = directions[0];
        for (var k = 0; k < spans; k++)
        {
            // Where two points coincide there is no chord, and nothing of the bend can be said there.
            var gap = points[k + 1] - points[k];
            chord += gap.Length;
            foreach (var next in new[] { gap, directions[k + 1] })
            {
                if (next.Length > 0)
                {
                    leastBend += before.AngleTo(next).Radians;
                    before = next;
                }
            }
        }

        if (Split(points, marks) is not { } lengths)
        {
            return new(length, chord, new(leastBend), []);
        }

        var pieces = ImmutableArray.CreateBuilder<RodPiece>();
        var begin = 0;
        for (var k = 1; k <= spans; k++)
        {
            if (directions[k] != Vector3.Zero && !double.IsNaN(marks[k]))
            {
                pieces.Add(PieceOf(
                    points[begin..(k + 1)], directions[begin..(k + 1)], lengths[begin..k], [.. marks[(begin + 1)..(k + 1)].Select(m => !double.IsNaN(m))],
                    near is { IsTooShort: false } ? near.Pieces[pieces.Count].Lines : []));
                begin = k;
            }
        }

        return new(length, chord, new(leastBend), pieces.ToImmutable());
    }

    // Where the rod slides, its length is first shared out by the distances; null if it does not reach somewhere.
    private static double[]? Split(Vector3[] points, double[] marks)
    {
        var lengths = new double[points.Length - 1];
        var begin = 0;
        for (var k = 1; k < points.Length; k++)
        {
            if (double.IsNaN(marks[k]))
            {
                continue;
            }

            double apart = 0, given = marks[k] - marks[begin];
            for (var j = begin; j < k; j++)
            {
                apart += lengths[j] = points[j].DistanceTo(points[j + 1]);
            }

            if (!(given > 0) || given < apart * (1 - RodTolerance.Straight))
            {
                return null;
            }

            // No span is left without any length where two points coincide.
            for (var j = begin; j < k; j++)
            {
                lengths[j] += (given - apart) * (0.9 * (apart > 0 ? lengths[j] / apart : 1.0 / (k - begin)) + 0.1 / (k - begin));
            }

            begin = k;
        }

        return lengths;
    }

    private static RodPiece PieceOf(Vector3[] points, Vector3[] directions, double[] lengths, bool[] isGripped, ImmutableArray<ElasticLine> near)
    {
        var length = lengths.Sum();
        var gaps = new Vector3[lengths.Length];
        double apart = 0;
        for (var k = 0; k < gaps.Length; k++)
        {
            gaps[k] = (points[k + 1] - points[k]) / length;
            lengths[k] /= length;
            apart += gaps[k].Length;
        }

        var way = new RodWay(directions, gaps, lengths);
        if (way.IsStraight(apart))
        {
            return new([StraightLine.Through(points, length)]);
        }

        if (!way.IsLongEnough(apart))
        {
            return new([]);
        }

        var found = new List<RodChain>();
        Search(way, near, found);
        if (isGripped.Contains(false))
        {
            // Two lines may slide into one.
            var settled = new List<RodChain>();
            foreach (var chain in found)
            {
                Sliding.Settle(chain, isGripped);
                if (!chain.IsAmong(settled))
                {
                    settled.Add(chain);
                }
            }

            found = settled;
        }

        var lines = new List<ElasticLine>();
        foreach (var chain in found)
        {
            if (Refined(way, chain, points[0], length) is { IsStable: true } line)
            {
                lines.Add(line);
            }
        }

        return new([.. lines.OrderBy(l => l.Energy)]);
    }

    // From the lines near by, where they are known, and a few starts for what is new. Otherwise all starts, then each line found with its middle turned about
    // the chord by thirds: that finds most second lines the starts missed.
    private static void Search(RodWay way, ImmutableArray<ElasticLine> near, List<RodChain> found)
    {
        foreach (var line in near)
        {
            var chain = new RodChain(way, RodTolerance.CoarseLinks);
            RodWay.LayAlong(chain, line);
            Keep(way, chain, found);
        }

        for (var start = 0; start < (near.IsEmpty ? RodSpan.Starts : RodSpan.StartsBesideLines); start++)
        {
            var chain = new RodChain(way, RodTolerance.CoarseLinks);
            way.Lay(chain, start);
            Keep(way, chain, found);
        }

        if (!near.IsEmpty)
        {
            return;
        }

        foreach (var basis in found.ToArray())
        {
            for (var third = 1; third < 3; third++)
            {
                var chain = new RodChain(way, RodTolerance.CoarseLinks);
                way.LayTurned(chain, basis, new(third * 2 * Math.PI / 3));
                Keep(way, chain, found);
            }
        }
    }

    // With all clamps on one line, every line can be turned about it: one of them stands for all.
    private static void Keep(RodWay way, RodChain chain, List<RodChain> found)
    {
        if (chain.Solve(found) && chain.Index == 0 && !chain.IsAmong(found)
            && !(way.TurnsFreely && found.Exists(f => Math.Abs(f.Energy - chain.Energy) < RodTolerance.SameEnergy * chain.Energy)))
        {
            found.Add(chain);
        }
    }

    private static ElasticLine? Refined(RodWay way, RodChain coarse, Vector3 from, double length)
    {
        while (true)
        {
            var fine = new RodChain(way, 2 * coarse.LinksASpan);
            fine.LayAlong(coarse);
            if (!fine.Solve())
            {
                return null;
            }

            if (fine.Index > 0)
            {
                // Stable only as a coarse chain: the line lies where it turns unstable, and a little aside is one that is not.
                fine.Skew();
                if (!fine.Solve())
                {
                    return null;
                }
            }

            if (fine.LinksASpan >= RodTolerance.MostLinks || (fine.LinksASpan >= RodTolerance.FineLinks && IsFine(fine)))
            {
                return Extrapolation.Of(coarse, fine, from, length);
            }

            coarse = fine;
        }
    }

    private static bool IsFine(RodChain chain)
    {
        for (var i = 0; i < chain.Links.Length; i++)
        {
            var scale = Math.Max(Math.Sqrt(chain.Forces[chain.SpanOf[i]].Length), Math.Max(chain.MomentBefore(i).Length, chain.MomentAfter(i).Length));
            if (chain.LengthOf[i] * scale > RodTolerance.LinkTurn)
            {
                return false;
            }
        }

        return true;
    }
}
