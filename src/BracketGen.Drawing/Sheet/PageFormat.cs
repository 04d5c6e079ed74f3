using BracketGen.Geometry;
using BracketGen.Units;

namespace BracketGen.Drawing.Sheet;

/// <summary>A trimmed sheet and the frame of the drawing space on it.</summary>
/// <param name="Name">What the trade calls it.</param>
/// <param name="Width">Width (mm).</param>
/// <param name="Height">Height (mm).</param>
/// <param name="Frame">The drawing space inside the frame (mm on paper).</param>
/// <param name="HasGrid">Whether the frame carries ISO 5457's grid reference border.</param>
public sealed record PageFormat(string Name, double Width, double Height, Bounds Frame, bool HasGrid)
{
    /// <summary>ISO A3, landscape (ISO 5457).</summary>
    public static readonly PageFormat A3 = Iso("A3", 420, 297);

    /// <summary>ISO A3, portrait.</summary>
    public static readonly PageFormat A3Portrait = Iso("A3", 297, 420);

    /// <summary>ISO A4, portrait (ISO 5457 uses A4 this way up).</summary>
    public static readonly PageFormat A4 = Iso("A4", 210, 297);

    /// <summary>ISO A4, landscape.</summary>
    public static readonly PageFormat A4Landscape = Iso("A4", 297, 210);

    /// <summary>ASME B, 17 x 11 in, landscape. Margins from memory of ASME Y14.1: 0.62 in at the sides, 0.38 in above and below.</summary>
    public static readonly PageFormat AnsiB = Asme("B", 17, 11, 0.62, 0.38);

    /// <summary>ASME A, 8.5 x 11 in, portrait. Margins from memory of ASME Y14.1: 0.25 in at the sides, 0.38 in above and below.</summary>
    public static readonly PageFormat AnsiA = Asme("A", 8.5, 11, 0.25, 0.38);

    /// <summary>The sheet of a drawing by its name, A3, A4, B or A, the way up it is used; null for any other name.</summary>
    public static PageFormat? Named(string? name) => name switch
    {
        "A3" => A3,
        "A4" => A4,
        "B" => AnsiB,
        "A" => AnsiA,
        _ => null,
    };

    /// <summary>ASME A, 11 x 8.5 in, landscape.</summary>
    public static readonly PageFormat AnsiALandscape = Asme("A", 11, 8.5, 0.38, 0.25);

    /// <summary>Whether it is one of ASME's, cut in inches, and not of ISO's.</summary>
    public bool IsAsme => !HasGrid;

    /// <summary>The upright sheet that any printer takes, of the same kind.</summary>
    public PageFormat Small => IsAsme ? AnsiA : A4;

    /// <summary>The whole trimmed sheet (mm on paper).</summary>
    public Bounds Sheet => new(Vector2.Zero, new(Width, Height));

    /// <summary>ISO 5457: 20 mm on the left for filing, 10 mm elsewhere.</summary>
    private static PageFormat Iso(string name, double width, double height) =>
        new(name, width, height, new(new(20, 10), new(width - 10, height - 10)), true);

    private static PageFormat Asme(string name, double width, double height, double side, double end)
    {
        var inch = UnitTable.InchLength.Factor;
        return new(name, width * inch, height * inch, new(new(side * inch, end * inch), new((width - side) * inch, (height - end) * inch)), false);
    }
}
