using System.Collections.Immutable;
using BracketGen.Design.Checks;
using BracketGen.Geometry;

namespace BracketGen.Drawing.Sheet;

/// <summary>Finds a place for a leader's text among what is drawn already.</summary>
public static class LeaderPlacer
{
    /// <summary>Lengths of leader that are tried, shortest first (mm).</summary>
    private static readonly ImmutableArray<double> Reaches = [8, 11, 15, 20, 26, 33, 41, 50, 60, 72];

    /// <summary>Turns from the wanted angle that are tried (degrees), nearest first.</summary>
    private static readonly ImmutableArray<double> Turns =
        [0, .. Enumerable.Range(1, 17).SelectMany(i => (double[])[10.0 * i, -10.0 * i]), 180];

    /// <summary>
    /// A leader that points at the middle of a circle (radius 0 for a point), as near as may be to the polar angle
    /// <paramref name="wanted"/>, whose text runs into nothing of <paramref name="drawn"/> and stays in <paramref name="space"/>
    /// (mm on paper). Of the places without a fault the one with the fewest lines crossed and the shortest way is taken; where
    /// none is without a fault, the one with the fewest. Deterministic.
    /// </summary>
    /// <param name="drawn">What is on the sheet already.</param>
    /// <param name="space">Where the leader may be.</param>
    /// <param name="centre">Middle of the circle or arc pointed at.</param>
    /// <param name="radius">Its radius; 0 for a point.</param>
    /// <param name="wanted">Polar angle at which the leader should come in.</param>
    /// <param name="lines">The text.</param>
    /// <param name="style">Sizes.</param>
    /// <param name="maximumTurn">How far from the wanted angle the leader may come in: half the sweep of an arc that is no full circle.</param>
    public static ImmutableArray<SheetItem> Callout(
        IEnumerable<SheetItem> drawn, Bounds space, Vector2 centre, double radius, Angle wanted, IReadOnlyList<string> lines, DimensionStyle? style = null,
        Angle? maximumTurn = null)
    {
        var obstacles = drawn.Select(o => (Item: o, o.Bounds)).ToArray();
        var texts = obstacles.Select(o => o.Item).OfType<TextItem>().Select(t => new TextBox(t, -Clearance)).ToArray();
        ImmutableArray<SheetItem>? best = null;
        var least = double.PositiveInfinity;
        var limit = (maximumTurn ?? Angle.Straight).Degrees;
        foreach (var turn in Turns.Where(t => Math.Abs(t) <= limit + 1e-9))
        {
            var angle = wanted + Angle.FromDegrees(turn);
            var posture = IsNearlyLevelOrUpright(angle) ? Misleading : 0;
            foreach (var reach in Reaches)
            {
                var leader = Dimensions.Callout(centre, radius, angle, lines, reach, style);
                var cost = Cost(leader, obstacles, texts, space) + posture + reach / 10 + Math.Abs(turn) / 30;
                if (cost < least - 1e-9)
                {
                    (best, least) = (leader, cost);
                }
            }
        }

        return best!.Value;
    }

    /// <summary>Cost of a leader that may be taken for a line of the drawing: more than a few crossings, less than a fault.</summary>
    private const double Misleading = 30;

    /// <summary>Room around a text (mm) that others keep out of.</summary>
    private const double Clearance = 0.8;

    /// <summary>A fault costs more than any number of crossings; a crossing more than a long way round.</summary>
    private static double Cost(ImmutableArray<SheetItem> leader, (SheetItem Item, Bounds Bounds)[] obstacles, TextBox[] texts, Bounds space)
    {
        const double fault = 1000, crossing = 3;
        var cost = 0.0;
        foreach (var item in leader)
        {
            if (!space.Holds(item.Bounds))
            {
                cost += fault;
            }

            if (item is TextItem text)
            {
                var box = new TextBox(text, -Clearance);
                cost += fault * (texts.Count(t => t.Overlaps(box)) + obstacles.Count(o => box.Bounds.Touches(o.Bounds) && SheetAudit.Crosses(o.Item, box)));
            }
            else
            {
                cost += fault * texts.Count(t => SheetAudit.Crosses(item, t));
            }

            if (item is Polyline line)
            {
                var edges = SheetAudit.Edges(line.Points, false).ToArray();
                var around = line.Bounds;
                cost += crossing * obstacles.Where(o => around.Touches(o.Bounds)).Sum(o => Outline(o.Item).Sum(s => edges.Count(e => Cross((LineSegment)e, s))));
            }
        }

        return cost;
    }

    private static IEnumerable<Segment> Outline(SheetItem item) => item switch
    {
        Stroke stroke => [stroke.Segment],
        Polyline line => SheetAudit.Edges(line.Points, line.Closed),
        Fill fill => SheetAudit.Edges(fill.Points, true),
        _ => [],
    };

    /// <summary>Ends left aside: the leader's tip always touches what it points at.</summary>
    private static bool Cross(LineSegment edge, Segment other) =>
        edge.Bounds.Touches(other.Bounds)
        && other.CrossingsWithLine(edge.Start, edge.StartTangent).Any(c => c.Along > 0.1 && c.Along < edge.Length);

    /// <summary>Leaders lie at an angle to the lines of the drawing, so that nobody takes them for one (ISO 128-2).</summary>
    private static bool IsNearlyLevelOrUpright(Angle angle)
    {
        var off = Math.Abs(Math.IEEERemainder(angle.Degrees, 90));
        return off < 12;
    }
}
