using System.Collections.Immutable;
using BracketGen.Geometry;

namespace BracketGen.Drawing.Sheet;

/// <summary>Knows what is drawn already, and finds places for texts and leaders among it.</summary>
internal sealed class FreeSpace
{
    /// <summary>Room around a text (mm) that others keep out of.</summary>
    private const double Clearance = 0.7;

    private const double Fault = 1000;
    private const double Crossing = 3, OverDimension = 4;

    private readonly List<SheetItem> _items = [];
    private readonly InkGrid<SheetItem> _ink = new();
    private readonly InkGrid<(Segment Segment, double Cost)> _lines = new();
    private readonly List<TextBox> _texts = [];
    private Bounds? _bounds;

    public FreeSpace(IEnumerable<SheetItem> drawn) => Add(drawn);

    public IReadOnlyList<SheetItem> Items => _items;

    /// <summary>The room of all that is drawn; there must be something.</summary>
    public Bounds Bounds => _bounds!.Value;

    /// <summary>The room texts must stay in; null for any.</summary>
    public Bounds? Room { get; init; }

    public void Add(IEnumerable<SheetItem> items)
    {
        foreach (var item in items)
        {
            _items.Add(item);
            _bounds = _bounds?.Union(item.Bounds) ?? item.Bounds;
            if (item is TextItem text)
            {
                _texts.Add(new(text, -Clearance));
            }
            else
            {
                _ink.Add(item, item.Bounds);
                foreach (var segment in Outline(item))
                {
                    _lines.Add((segment, CostOf(item)), segment.Bounds);
                }
            }
        }
    }

    /// <summary>Adds the first candidate that runs into nothing; whether there was one.</summary>
    public bool AddFirstClean(IEnumerable<ImmutableArray<SheetItem>> candidates)
    {
        foreach (var candidate in candidates)
        {
            if (Cost(candidate, Fault) < Fault)
            {
                Add(candidate);
                return true;
            }
        }

        return false;
    }

    /// <summary>Adds the best candidate that runs no text into anything: few lines crossed, early in the list; whether there was one.</summary>
    public bool AddBest(IEnumerable<ImmutableArray<SheetItem>> candidates)
    {
        ImmutableArray<SheetItem>? best = null;
        var least = Fault;
        var place = 0.0;
        foreach (var candidate in candidates)
        {
            // A place later in the list costs a little: a crossing is worth a few dozen places.
            place += Crossing / 40;
            if (place >= least)
            {
                break;
            }

            var cost = Cost(candidate, least) + place;
            if (cost < least)
            {
                (best, least) = (candidate, cost);
            }
        }

        if (best is { } chosen)
        {
            Add(chosen);
            return true;
        }

        return false;
    }

    /// <summary>A text near a point: places on circles about it that are tried one after the other.</summary>
    public bool AddLabel(string text, Vector2 centre, double radius, double height = TextHeight.Small, FontWeight weight = FontWeight.Regular)
    {
        double[] turns = [45, 135, 225, 315, 22, 68, 112, 158, 202, 248, 292, 338, 0, 90, 180, 270];
        return AddFirstClean(
            from reach in (double[])[1.2, 2.4, 4]
            from turn in turns
            select At(reach, Angle.FromDegrees(turn)));

        ImmutableArray<SheetItem> At(double reach, Angle turn)
        {
            var half = SheetFont.Of(weight).Width(text, height) / 2;
            var out_ = Vector2.FromPolar(1, turn);
            var distance = radius + reach + Math.Abs(out_.X) * half + Math.Abs(out_.Y) * height / 2;
            return [new TextItem(text, centre + distance * out_ - new Vector2(0, height / 2), height, TextAlign.Centre, Weight: weight)];
        }
    }

    /// <summary>A leader to a point or circle, near a wanted direction; whether a clean place was found.</summary>
    public bool AddLeader(Vector2 centre, double radius, Angle wanted, params string[] lines) => AddBest(
        from reach in (double[])[7, 10, 14, 19, 25, 32, 40, 50]
        from turn in (double[])[0, 15, -15, 30, -30, 45, -45, 60, -60, 80, -80, 100, -100, 120, -120, 140, -140, 160, -160, 180]
        let angle = wanted + Angle.FromDegrees(turn)
        where IsOblique(angle)
        select Dimensions.Callout(centre, radius, angle, lines, reach));

    /// <summary>The radius of an arc, its arrow somewhere along it, from the side where there is no metal.</summary>
    public bool AddRadius(ArcSegment arc, string text) => AddBest(
        from reach in (double[])[7, 10, 14, 19, 25, 32, 40]
        from fraction in (double[])[0.5, 0.35, 0.65, 0.2, 0.8, 0.05, 0.95]
        let at = arc.From + fraction * arc.Sweep
        where IsOblique(at)
        select Dimensions.Radius(arc.Centre, arc.Radius, at, text, arc.Sweep.Radians > 0 ? reach : reach + arc.Radius, arc.Sweep.Radians < 0));

    /// <summary>Leaders lie at an angle to the lines of the drawing, so that nobody takes them for one (ISO 128-2).</summary>
    public static bool IsOblique(Angle angle) => Math.Abs(Math.IEEERemainder(angle.Degrees, 90)) >= 10;

    // Exact up to a cost that is too high; no line is looked at beyond it.
    private double Cost(ImmutableArray<SheetItem> candidate, double tooHigh)
    {
        var cost = 0.0;
        foreach (var item in candidate)
        {
            if (Room is { } room && !room.Holds(item.Bounds))
            {
                return Fault;
            }

            if (item is TextItem text)
            {
                var box = new TextBox(text, -Clearance);
                if (_texts.Any(t => t.Overlaps(box)) || _ink.Near(box.Bounds).Any(i => SheetAudit.Crosses(i, box)))
                {
                    return Fault;
                }
            }
            else if (_texts.Any(t => SheetAudit.Crosses(item, t)))
            {
                return Fault;
            }
            else if (item is not Fill)
            {
                foreach (var edge in Outline(item).OfType<LineSegment>())
                {
                    foreach (var (line, price) in _lines.Near(edge))
                    {
                        if (SheetAudit.Cross(edge, line) && (cost += price) >= tooHigh)
                        {
                            return cost;
                        }
                    }
                }
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

    // A leader across a dimension line is worse than another crossing; a long way round would widen the view, and make it smaller.
    private static double CostOf(SheetItem crossed) => crossed is Stroke { Kind: LineKind.Dimension } ? OverDimension : Crossing;
}
