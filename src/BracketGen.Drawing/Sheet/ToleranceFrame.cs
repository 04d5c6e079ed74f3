using System.Collections.Immutable;
using BracketGen.Geometry;

namespace BracketGen.Drawing.Sheet;

/// <summary>What a geometrical tolerance limits (ISO 1101, ASME Y14.5-2018).</summary>
public enum Characteristic
{
    /// <summary>Position of an axis.</summary>
    Position,

    /// <summary>Angularity of a face.</summary>
    Angularity,

    /// <summary>Profile of a surface: place and form of a face.</summary>
    SurfaceProfile,
}

/// <summary>A datum in a tolerance frame.</summary>
/// <param name="Letter">Its letter.</param>
/// <param name="AtMaximumMaterial">Whether it is taken at maximum material (ISO 2692): the play of the bolt is not part of the tolerance.</param>
public readonly record struct DatumReference(string Letter, bool AtMaximumMaterial = false);

/// <summary>Tolerance frames and datum symbols, ISO 1101 and ISO 5459: symbols are drawn, not written.</summary>
public static class ToleranceFrame
{
    /// <summary>Height of a frame (mm): twice the letters, ISO 3098-1.</summary>
    public const double Height = 2 * TextHeight.Small;

    private const double Padding = 1.1;

    /// <summary>The frame, its lower left corner at the origin.</summary>
    /// <param name="characteristic">What is limited.</param>
    /// <param name="value">Width or diameter of the zone as text.</param>
    /// <param name="datums">Datums in order.</param>
    public static SheetBlock Draw(Characteristic characteristic, string value, params ImmutableArray<DatumReference> datums)
    {
        List<SheetItem> items = [.. Symbol(characteristic).Select(i => i.Shift(new(Height / 2, Height / 2)))];
        List<double> edges = [0, Height];
        void Write(string text, double x) => items.Add(new TextItem(text, new(x, (Height - TextHeight.Small) / 2), TextHeight.Small));
        double Width(string text) => SheetFont.Of(FontWeight.Regular).Width(text, TextHeight.Small);
        Write(value, edges[^1] + Padding);
        edges.Add(edges[^1] + Width(value) + 2 * Padding);
        foreach (var datum in datums)
        {
            var x = edges[^1] + Padding;
            Write(datum.Letter, x);
            x += Width(datum.Letter);
            if (datum.AtMaximumMaterial)
            {
                const double radius = 1.7;
                items.AddRange(MaximumMaterial(new(x + 0.9 + radius, Height / 2), radius));
                x += 0.9 + 2 * radius;
            }

            edges.Add(x + Padding);
        }

        items.AddRange(edges.Skip(1).SkipLast(1).Select(x => new Stroke(new(x, 0), new(x, Height), LineKind.Dimension)));
        var box = new Bounds(Vector2.Zero, new(edges[^1], Height));
        items.Add(Polyline.Rectangle(box, LineKind.Dimension));
        return new([.. items], box);
    }

    /// <summary>A datum's letter in its box, on a filled triangle that stands on the feature (ISO 5459).</summary>
    /// <param name="on">Where the triangle stands (mm on paper).</param>
    /// <param name="outwards">Away from the material, length one.</param>
    /// <param name="letter">The letter.</param>
    /// <param name="reach">From the feature to the middle of the box (mm).</param>
    public static ImmutableArray<SheetItem> Datum(Vector2 on, Vector2 outwards, string letter, double reach = 9)
    {
        const double half = 1.75, height = 3;
        var middle = on + reach * outwards;
        var toBox = Height / 2 / Math.Max(Math.Abs(outwards.X), Math.Abs(outwards.Y));
        var corner = new Vector2(Height / 2, Height / 2);
        return
        [
            new Fill([on + half * outwards.Left, on - half * outwards.Left, on + height * outwards], Ink.Black),
            new Stroke(on + height * outwards, middle - toBox * outwards, LineKind.Dimension),
            Polyline.Rectangle(new(middle - corner, middle + corner), LineKind.Dimension),
            new TextItem(letter, middle - new Vector2(0, TextHeight.Small / 2), TextHeight.Small, TextAlign.Centre),
        ];
    }

    private static IEnumerable<SheetItem> MaximumMaterial(Vector2 centre, double radius)
    {
        const double w = 0.75, h = 0.9;
        yield return Stroke.Circle(centre, radius, LineKind.Dimension);
        yield return new Polyline(
            [centre + new Vector2(-w, -h), centre + new Vector2(-w, h), centre + new Vector2(0, -h / 4), centre + new Vector2(w, h), centre + new Vector2(w, -h)], false, LineKind.Dimension);
    }

    private static IEnumerable<SheetItem> Symbol(Characteristic characteristic)
    {
        switch (characteristic)
        {
            case Characteristic.Position:
                yield return Stroke.Circle(Vector2.Zero, 1.2, LineKind.Dimension);
                yield return new Stroke(new(-2, 0), new(2, 0), LineKind.Dimension);
                yield return new Stroke(new(0, -2), new(0, 2), LineKind.Dimension);
                break;
            case Characteristic.Angularity:
                yield return new Polyline([new(1.3, 1.4), new(-1.7, -1.3), new(1.7, -1.3)], false, LineKind.Dimension);
                break;
            default:
                yield return new Stroke(new ArcSegment(new(0, -0.8), 1.7, Angle.Zero, Angle.Straight), LineKind.Dimension);
                yield return new Stroke(new(-1.7, -0.8), new(1.7, -0.8), LineKind.Dimension);
                break;
        }
    }
}
