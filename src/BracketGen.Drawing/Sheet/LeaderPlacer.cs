using System.Collections.Immutable;
using BracketGen.Geometry;

namespace BracketGen.Drawing.Sheet;

/// <summary>Finds a place for a leader's text among what is drawn already.</summary>
public static class LeaderPlacer
{
    /// <summary>Lengths of leader that are tried, shortest first (mm).</summary>
    private static readonly ImmutableArray<double> Reaches = [8, 11, 15, 20, 26, 33, 41, 50, 60, 72];

    /// <summary>Turns from the wanted angle that are tried (degrees), nearest first.</summary>
    private static readonly ImmutableArray<double> Turns = [0, 15, -15, 30, -30, 45, -45, 60, -60, 75, -75, 90, -90, 105, -105, 120, -120, 135, -135, 150, -150, 165, -165, 180];

    /// <summary>
    /// A leader that points at the middle of a circle (radius 0 for a point), as near as may be to the polar angle
    /// <paramref name="wanted"/>, whose text runs into nothing of <paramref name="drawn"/> and stays in <paramref name="space"/>
    /// (mm on paper). Of the places without a fault the one with the fewest lines crossed and the shortest way is taken; where
    /// none is without a fault, the one with the fewest. Deterministic.
    /// </summary>
    public static ImmutableArray<SheetItem> Callout(
        IEnumerable<SheetItem> drawn, Bounds space, Vector2 centre, double radius, Angle wanted, IReadOnlyList<string> lines, DimensionStyle? style = null)
    {
        var obstacles = drawn.Select(o => (Item: o, o.Bounds)).ToArray();
        var texts = obstacles.Select(o => o.Item).OfType<TextItem>().Select(t => new TextBox(t, -Clearance)).ToArray();
        ImmutableArray<SheetItem>? best = null;
        var least = double.PositiveInfinity;
        foreach (var turn in Turns)
        {
            var angle = wanted + Angle.FromDegrees(turn);
            if (IsNearlyLevelOrUpright(angle))
            {
                continue;
            }

            foreach (var reach in Reaches)
            {
                var leader = Dimensions.Callout(centre, radius, angle, lines, reach, style);
                var cost = Cost(leader, obstacles, texts, space) + reach / 10 + Math.Abs(turn) / 30;
                if (cost < least - 1e-9)
                {
                    (best, least) = (leader, cost);
                }
            }
        }

        return best ?? Dimensions.Callout(centre, radius, wanted, lines, Reaches[0], style);
    }

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
