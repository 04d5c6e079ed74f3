using System.Collections.Immutable;
using BracketGen.Drawing.Sheet;
using BracketGen.Geometry;
using BracketGen.Words.Worksheet;

namespace BracketGen.Drawing.Measuring;

/// <summary>Gathers the strokes of a small sketch (mm on paper, origin where the sketch wants it).</summary>
/// <param name="blanks">The blanks beside it, from which it takes its letters.</param>
internal sealed class Sketcher(ImmutableArray<Blank> blanks)
{
    private static readonly DimensionStyle Small = DimensionStyle.Standard with { ArrowLength = 2.2 };
    private readonly List<SheetItem> _items = [];

    public SheetBlock Block => SheetBlock.Around(_items);

    public static Vector2 Polar(double radius, double degrees) => Vector2.FromPolar(radius, Angle.FromDegrees(degrees));

    /// <summary>The letter of a blank.</summary>
    /// <param name="mark">Its name in the sketch.</param>
    public string this[string mark] => blanks.Single(b => b.Mark == mark).Letter;

    public void Line(Vector2 from, Vector2 to, LineKind kind = LineKind.Visible) => _items.Add(new Stroke(from, to, kind));

    public void Chain(LineKind kind, bool closed, params Vector2[] points) => _items.Add(new Polyline([.. points], closed, kind));

    public void Box(double x, double y, double width, double height, LineKind kind = LineKind.Visible) =>
        _items.Add(Polyline.Rectangle(new(new(x, y), new(x + width, y + height)), kind));

    public void Circle(Vector2 centre, double radius, LineKind kind = LineKind.Visible) => _items.Add(Stroke.Circle(centre, radius, kind));

    public void Arc(Vector2 centre, double radius, double from, double to, LineKind kind = LineKind.Visible) =>
        _items.Add(new Stroke(new ArcSegment(centre, radius, Angle.FromDegrees(from), Angle.FromDegrees(to - from)), kind));

    public void Text(string text, Vector2 at, TextAlign align = TextAlign.Centre, FontWeight weight = FontWeight.Regular) =>
        _items.Add(new TextItem(text, at, TextHeight.Small, align, Weight: weight));

    public void Head(Vector2 tip, Vector2 direction) => _items.Add(Arrow.Head(tip, direction, Small));

    public void ArrowTo(Vector2 from, Vector2 to, LineKind kind = LineKind.Dimension)
    {
        Line(from, to, kind);
        Head(to, to - from);
    }

    public void Turn(Vector2 centre, double radius, double from, double to)
    {
        Arc(centre, radius, from, to, LineKind.Dimension);
        var sign = Math.Sign(to - from);
        Head(centre + Polar(radius, to), sign * Polar(1, to + 90 - sign * 4));
    }

    public void Leader(Vector2 tip, Vector2 elbow, string text) => _items.AddRange(Dimensions.Leader(tip, elbow, [text], Small));

    public void Across(Vector2 a, Vector2 b, double y, string text) => _items.AddRange(LinearDimension.Horizontal(a, b, y, text, Small).Draw());

    public void Up(Vector2 a, Vector2 b, double x, string text) => _items.AddRange(LinearDimension.Vertical(a, b, x, text, Small).Draw());

    public void Along(Vector2 a, Vector2 b, double offset, string text) => _items.AddRange(LinearDimension.Aligned(a, b, offset, text, Small).Draw());

    public void Corner(Vector2 vertex, double from, double sweep, double radius, string text, double legs = 0) =>
        _items.AddRange(Dimensions.Angular(vertex, Angle.FromDegrees(from), Angle.FromDegrees(sweep), radius, text, legs, Small));

    /// <summary>The frame that everything is measured in: an origin, x to the right and y up.</summary>
    public void Axes(Vector2 origin, double x, double y)
    {
        ArrowTo(origin, origin + new Vector2(x, 0), LineKind.Centre);
        ArrowTo(origin, origin + new Vector2(0, y), LineKind.Centre);
        Text("x", origin + new Vector2(x + 2.5, -1.2));
        Text("y", origin + new Vector2(0, y + 1.5));
    }
}
