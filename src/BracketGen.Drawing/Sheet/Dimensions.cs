using System.Collections.Immutable;
using BracketGen.Geometry;

namespace BracketGen.Drawing.Sheet;

/// <summary>Angles, radii, diameters and leaders, ISO 129-1.</summary>
public static class Dimensions
{
    /// <summary>
    /// The angle at <paramref name="vertex"/> from the direction <paramref name="from"/> counter-clockwise through
    /// <paramref name="sweep"/>, with its arc at <paramref name="radius"/> (mm on paper). Extension lines run from
    /// <paramref name="legs"/> (mm from the vertex, where the drawn legs end) to the arc where the legs are shorter.
    /// </summary>
    public static ImmutableArray<SheetItem> Angular(
        Vector2 vertex, Angle from, Angle sweep, double radius, string text, double legs = 0, DimensionStyle? style = null)
    {
        var s = style ?? DimensionStyle.Standard;
        if (sweep.Radians < 0)
        {
            (from, sweep) = (from + sweep, -sweep);
        }

        var items = ImmutableArray.CreateBuilder<SheetItem>();
        foreach (var side in (Angle[])[from, from + sweep])
        {
            if (legs + s.Gap < radius)
            {
                items.Add(new Stroke(vertex + Vector2.FromPolar(legs + s.Gap, side), vertex + Vector2.FromPolar(radius + s.Overrun, side), LineKind.Extension));
            }
        }

        // Where the text does not fit between the legs, arrowheads and text go outside, the text past the far leg.
        var arrowTurn = new Angle(s.ArrowLength / radius);
        var width = SheetFont.Of(FontWeight.Regular).Width(text, s.TextHeight);
        var stand = Stand(from + 0.5 * sweep);
        var room = sweep.Radians < Math.PI ? 2 * stand.Lowest * Math.Tan(sweep.Radians / 2) : double.PositiveInfinity;
        var outside = room < width + 2 * s.TextGap || radius * sweep.Radians < 2 * s.ArrowLength + s.TextGap;
        var before = outside ? 2 * arrowTurn : Angle.Zero;
        var after = outside ? arrowTurn + new Angle((width + 2 * s.TextGap) / radius) : Angle.Zero;
        if (outside)
        {
            stand = Stand(from + sweep + arrowTurn + new Angle((width / 2 + s.TextGap) / radius));
        }

        items.Add(new Stroke(new ArcSegment(vertex, radius, from - before, before + sweep + after), LineKind.Dimension));

        // The head lies along its chord: along the tangent it would leave the arc.
        AddHead(from, outside ? from - arrowTurn : from + arrowTurn);
        AddHead(from + sweep, outside ? from + sweep + arrowTurn : from + sweep - arrowTurn);
        items.Add(new TextItem(text, stand.Foot, s.TextHeight, TextAlign.Centre, stand.Along.Polar));
        return items.ToImmutable();

        // The text stands on a tangent, on the side of the arc that is its top when read: outside the arc, or inside it above the
        // arc's sagitta. Lowest is its distance from the vertex where the legs leave it the least room.
        (Vector2 Foot, Vector2 Along, double Lowest) Stand(Angle middle)
        {
            var ray = Vector2.FromPolar(1, middle);
            var along = LinearDimension.Readable(ray.Left);
            var outer = along.Left.Dot(ray) > 0;
            var sagitta = radius - Math.Sqrt(Math.Max(0, radius * radius - width * width / 4));
            var lift = s.TextGap + (outer ? 0 : sagitta);
            return (vertex + radius * ray + lift * along.Left, along, outer ? radius : radius - lift - TextFlow.Ascent * s.TextHeight);
        }

        void AddHead(Angle tip, Angle back)
        {
            Vector2 t = vertex + Vector2.FromPolar(radius, tip), b = vertex + Vector2.FromPolar(radius, back);
            items.Add(Arrow.Head(t, t - b, s));
        }
    }

    /// <summary>
    /// The radius of an arc about <paramref name="centre"/>, with the arrow at polar angle <paramref name="at"/>. The leader comes
    /// from outside, or from inside where <paramref name="inside"/> holds, and ends in a landing that carries the text.
    /// </summary>
    public static ImmutableArray<SheetItem> Radius(
        Vector2 centre, double radius, Angle at, string text, double reach = 10, bool inside = false, DimensionStyle? style = null)
    {
        var tip = centre + Vector2.FromPolar(radius, at);
        var out_ = Vector2.FromPolar(1, at);
        return Leader(tip, inside ? tip - reach * out_ : tip + reach * out_, [text], style);
    }

    /// <summary>
    /// The diameter of a circle: a leader that points at its centre from polar angle <paramref name="at"/> and ends, after
    /// <paramref name="reach"/> (mm), in a landing that carries the text.
    /// </summary>
    public static ImmutableArray<SheetItem> Diameter(
        Vector2 centre, double radius, Angle at, string text, double reach = 10, DimensionStyle? style = null) =>
        Callout(centre, radius, at, [text], reach, style);

    /// <summary>The same with several lines, such as "4 x Ø6.6" over "thread M6".</summary>
    public static ImmutableArray<SheetItem> Callout(
        Vector2 centre, double radius, Angle at, IReadOnlyList<string> lines, double reach = 10, DimensionStyle? style = null) =>
        Leader(centre + Vector2.FromPolar(radius, at), centre + Vector2.FromPolar(radius + reach, at), lines, style);

    /// <summary>
    /// A leader with its arrow at <paramref name="tip"/>, its bend at <paramref name="elbow"/> (mm on paper) and a level landing
    /// away from the tip; the first line of text stands above the landing, the rest below it.
    /// </summary>
    public static ImmutableArray<SheetItem> Leader(Vector2 tip, Vector2 elbow, IReadOnlyList<string> lines, DimensionStyle? style = null)
    {
        var s = style ?? DimensionStyle.Standard;
        var width = lines.Max(l => SheetFont.Of(FontWeight.Regular).Width(l, s.TextHeight));
        var side = elbow.X >= tip.X - Tolerance.Point ? 1.0 : -1.0;
        var start = elbow + new Vector2(side * s.TextGap, 0);
        var end = start + new Vector2(side * width, 0);
        var items = ImmutableArray.CreateBuilder<SheetItem>();
        items.Add(new Polyline([tip, elbow, end], false, LineKind.Leader));
        items.Add(Arrow.Head(tip, tip - elbow, s));
        var left = new Vector2(Math.Min(start.X, end.X), elbow.Y);
        for (var i = 0; i < lines.Count; i++)
        {
            var drop = i == 0 ? s.TextGap : -s.TextGap - s.TextHeight - (i - 1) * 1.6 * s.TextHeight;
            items.Add(new TextItem(lines[i], left + new Vector2(0, drop), s.TextHeight));
        }

        return items.ToImmutable();
    }

    /// <summary>The crossed centre lines of a circle, <paramref name="overrun"/> (mm on paper) longer than it at all four ends.</summary>
    public static ImmutableArray<SheetItem> CentreMark(Vector2 centre, double radius, double overrun = 2)
    {
        // Drawn from the middle outwards: dashes, not gaps, must cross at the centre (ISO 128-2).
        var reach = radius + overrun;
        return
        [
            new Stroke(centre, centre + new Vector2(reach, 0), LineKind.Centre),
            new Stroke(centre, centre - new Vector2(reach, 0), LineKind.Centre),
            new Stroke(centre, centre + new Vector2(0, reach), LineKind.Centre),
            new Stroke(centre, centre - new Vector2(0, reach), LineKind.Centre),
        ];
    }
}
