using System.Collections.Immutable;
using BracketGen.Geometry;

namespace BracketGen.Drawing.Sheet;

/// <summary>A straight dimension: two points, the dimension line's place, the text and where it stands.</summary>
/// <remarks>
/// ISO 129-1: extension lines start a gap away from the feature and run over the dimension line; the text stands above the line,
/// readable from below or from the right; where there is no room between the extension lines, arrowheads and then the text go
/// outside.
/// </remarks>
public sealed record LinearDimension
{
    private readonly double _from;
    private readonly double _to;

    /// <summary>
    /// The dimension of <paramref name="a"/> to <paramref name="b"/> (mm on paper), measured along <paramref name="direction"/>, with
    /// its line through <paramref name="through"/>. Extension lines keep clear of the feature points by <paramref name="clearA"/> and
    /// <paramref name="clearB"/> (mm) and the gap: the room of a hole's centre lines, for one.
    /// </summary>
    /// <exception cref="ArgumentException">The points are level in the direction measured: there is nothing to measure.</exception>
    public LinearDimension(Vector2 a, Vector2 b, Vector2 direction, Vector2 through, string text, DimensionStyle? style = null, double clearA = 0, double clearB = 0)
    {
        Text = text;
        Style = style ?? DimensionStyle.Standard;
        Along = Readable(direction.Unit);
        Level = Along.Left.Dot(through);
        if (Along.Dot(b - a) < 0)
        {
            (a, b) = (b, a);
            (clearA, clearB) = (clearB, clearA);
        }

        (A, B) = (a, b);
        (ClearA, ClearB) = (clearA, clearB);
        (_from, _to) = (Along.Dot(a), Along.Dot(b));
        if (!(_to - _from > Tolerance.Point))
        {
            throw new ArgumentException($"The dimension “{text}” has no length.", nameof(b));
        }

        TextMiddle = FitsBetween ? (_from + _to) / 2 : _to + OutsideTextReach;
    }

    /// <summary>The feature point at the start of the dimension line.</summary>
    public Vector2 A { get; }

    /// <summary>The feature point at its end.</summary>
    public Vector2 B { get; }

    /// <summary>Room kept clear around <see cref="A"/> (mm).</summary>
    public double ClearA { get; }

    /// <summary>Room kept clear around <see cref="B"/> (mm).</summary>
    public double ClearB { get; }

    /// <summary>What is written.</summary>
    public string Text { get; }

    /// <summary>Sizes.</summary>
    public DimensionStyle Style { get; }

    /// <summary>Direction of the dimension line, to the right or upwards: the way the text reads.</summary>
    public Vector2 Along { get; }

    /// <summary>Distance of the dimension line from the origin, along <see cref="Along"/> turned left (mm).</summary>
    public double Level { get; init; }

    /// <summary>Where the text's middle stands along the line (mm): in the middle, or outside the end where there is no room.</summary>
    public double TextMiddle { get; init; }

    /// <summary>Room along the line taken by line, arrowheads and text (mm).</summary>
    public (double From, double To) Reach
    {
        get
        {
            var (textFrom, textTo) = TextReach;
            var outside = ArrowsOutside ? ArrowsRoom : 0;
            return (Math.Min(_from - outside, textFrom), Math.Max(_to + outside, textTo));
        }
    }

    /// <summary>Room along the line taken by the text (mm), with a character's clearance.</summary>
    public (double From, double To) TextReach
    {
        get
        {
            var half = TextWidth / 2 + Style.TextGap;
            return (TextMiddle - half, TextMiddle + half);
        }
    }

    /// <summary>The measured stretch along the line (mm).</summary>
    public (double From, double To) Measured => (_from, _to);

    /// <summary>Whether the arrowheads point inwards from outside.</summary>
    public bool ArrowsOutside => !FitsBetween;

    /// <summary>Text middle outside the end (mm along the line).</summary>
    internal double MiddleBeyondEnd => _to + OutsideTextReach;

    /// <summary>Text middle outside the start (mm along the line).</summary>
    internal double MiddleBeforeStart => _from - OutsideTextReach;

    private double TextWidth => SheetFont.Of(FontWeight.Regular).Width(Text, Style.TextHeight);

    private bool FitsBetween => _to - _from >= Math.Max(TextWidth + 2 * Style.TextGap, 2 * Style.ArrowLength + Style.TextGap);

    private double ArrowsRoom => 2 * Style.ArrowLength;

    private double OutsideTextReach => Style.ArrowLength + Style.TextGap + TextWidth / 2 + Style.TextGap;

    /// <summary>A dimension measured along x.</summary>
    public static LinearDimension Horizontal(Vector2 a, Vector2 b, double y, string text, DimensionStyle? style = null) =>
        new(a, b, new(1, 0), new(0, y), text, style);

    /// <summary>A dimension measured along y.</summary>
    public static LinearDimension Vertical(Vector2 a, Vector2 b, double x, string text, DimensionStyle? style = null) =>
        new(a, b, new(0, 1), new(x, 0), text, style);

    /// <summary>A dimension measured straight from point to point; its line runs <paramref name="offset"/> (mm) to the left of the way from a to b.</summary>
    public static LinearDimension Aligned(Vector2 a, Vector2 b, double offset, string text, DimensionStyle? style = null) =>
        new(a, b, b - a, a + offset * (b - a).Unit.Left, text, style);

    /// <summary>Its lines, arrowheads and text.</summary>
    public ImmutableArray<SheetItem> Draw()
    {
        var items = ImmutableArray.CreateBuilder<SheetItem>();
        Vector2 start = At(_from), end = At(_to);
        AddExtension(items, A, ClearA, start);
        AddExtension(items, B, ClearB, end);

        var lineFrom = ArrowsOutside ? _from - ArrowsRoom : _from;
        var lineTo = ArrowsOutside ? _to + ArrowsRoom : _to;
        if (TextMiddle < _from || TextMiddle > _to)
        {
            var (textFrom, textTo) = TextReach;
            lineFrom = Math.Min(lineFrom, textFrom + Style.TextGap);
            lineTo = Math.Max(lineTo, textTo - Style.TextGap);
        }

        items.Add(new Stroke(At(lineFrom), At(lineTo), LineKind.Dimension));
        var outwards = ArrowsOutside ? -1.0 : 1.0;
        items.Add(Arrow.Head(start, -outwards * Along, Style));
        items.Add(Arrow.Head(end, outwards * Along, Style));
        items.Add(new TextItem(Text, At(TextMiddle) + Style.TextGap * Along.Left, Style.TextHeight, TextAlign.Centre, Along.Polar));
        return items.ToImmutable();
    }

    /// <summary>Text reads from below or from the right: its direction lies above -90° up to 90°.</summary>
    internal static Vector2 Readable(Vector2 direction) =>
        direction.X > Tolerance.Direction || (Math.Abs(direction.X) <= Tolerance.Direction && direction.Y > 0) ? direction : -direction;

    private Vector2 At(double along) => along * Along + Level * Along.Left;

    private void AddExtension(ImmutableArray<SheetItem>.Builder items, Vector2 feature, double clear, Vector2 foot)
    {
        var way = foot - feature;
        if (way.Length > clear + Style.Gap)
        {
            items.Add(new Stroke(feature + (clear + Style.Gap) * way.Unit, foot + Style.Overrun * way.Unit, LineKind.Extension));
        }
    }
}
