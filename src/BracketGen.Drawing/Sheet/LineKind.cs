using System.Collections.Immutable;

namespace BracketGen.Drawing.Sheet;

/// <summary>What a line means, which decides how it looks (ISO 128-2; line group 0.5).</summary>
public enum LineKind
{
    /// <summary>Visible edges and outlines: continuous wide (01.2).</summary>
    Visible,

    /// <summary>Hidden edges: dashed narrow (02.1).</summary>
    Hidden,

    /// <summary>Centre lines and axes: long-dashed dotted narrow (04.1).</summary>
    Centre,

    /// <summary>Bend lines on the flat pattern: long-dashed double-dotted narrow (05.1).</summary>
    Bend,

    /// <summary>Dimension lines, and small marks as thin as they are: continuous narrow (01.1).</summary>
    Dimension,

    /// <summary>Extension lines: continuous narrow (01.1).</summary>
    Extension,

    /// <summary>Leader lines: continuous narrow (01.1).</summary>
    Leader,

    /// <summary>Outlines of neighbouring parts and extreme positions: long-dashed double-dotted narrow (05.1).</summary>
    Adjacent,

    /// <summary>Cutting planes: long-dashed dotted wide (04.2).</summary>
    Cutting,

    /// <summary>Imaginary intersections, such as the tangent edges of a bend: continuous narrow (01.1).</summary>
    Tangent,

    /// <summary>Frame of the drawing space: continuous, 0.7 mm (ISO 5457).</summary>
    Frame,

    /// <summary>Rules of tables, the title block and the grid reference border: continuous narrow.</summary>
    Rule,

    /// <summary>Outline of a table or the title block: continuous wide.</summary>
    Box,

    /// <summary>Border of a warning: continuous, 1 mm.</summary>
    Warning,

    /// <summary>The other parts in the picture of the fitted bracket, whose own lines are wide: continuous narrow (01.1).</summary>
    FittedPart,

    /// <summary>The throttle cable's wire in that picture: continuous, 0.7 mm.</summary>
    Wire,
}

/// <summary>How a line is drawn.</summary>
/// <param name="Width">Width (mm).</param>
/// <param name="Dashes">Lengths drawn and left out in turn (mm); empty where continuous.</param>
/// <param name="Ink">Colour.</param>
public sealed record LineStyle(double Width, ImmutableArray<double> Dashes, Ink Ink)
{
    /// <summary>Width of the wide lines (mm), ISO 128-2 line group 0.5.</summary>
    public const double Wide = 0.5;

    /// <summary>Width of the narrow lines (mm): half the wide ones.</summary>
    public const double Narrow = 0.25;

    /// <summary>
    /// The style of a kind of line. Dashes are multiples of the width: dash 12 d, long dash 24 d, gap 3 d, dot 0.5 d (ISO 128-20,
    /// annex). Dots are drawn 1.5 d long: at 0.5 d a workshop's printer loses them.
    /// </summary>
    public static LineStyle Of(LineKind kind) => kind switch
    {
        LineKind.Visible or LineKind.Box => new(Wide, [], Ink.Black),
        LineKind.Hidden => new(Narrow, Scaled(Narrow, 12, 3), Ink.Black),
        LineKind.Centre => new(Narrow, Scaled(Narrow, 24, 3, 1.5, 3), Ink.Black),
        LineKind.Bend or LineKind.Adjacent => new(Narrow, Scaled(Narrow, 24, 3, 1.5, 3, 1.5, 3), Ink.Black),
        LineKind.Dimension or LineKind.Extension or LineKind.Leader or LineKind.Tangent or LineKind.Rule or LineKind.FittedPart => new(Narrow, [], Ink.Black),
        LineKind.Cutting => new(Wide, Scaled(Wide, 24, 3, 1.5, 3), Ink.Black),
        LineKind.Frame or LineKind.Wire => new(0.7, [], Ink.Black),
        LineKind.Warning => new(1, [], Ink.Warning),
        _ => throw new ArgumentOutOfRangeException(nameof(kind)),
    };

    private static ImmutableArray<double> Scaled(double width, params ReadOnlySpan<double> pattern)
    {
        var dashes = ImmutableArray.CreateBuilder<double>(pattern.Length);
        foreach (var part in pattern)
        {
            dashes.Add(part * width);
        }

        return dashes.MoveToImmutable();
    }
}
