using System.Globalization;
using BracketGen.Design.Search;
using BracketGen.Geometry;
using BracketGen.SheetMetal.Cutting;
using BracketGen.Units;

namespace BracketGen.Drawing.Text;

/// <summary>What a cut file compensated for the kerf says of itself, in the file, on the drawing and on the screen.</summary>
public static class KerfText
{
    /// <summary>What the screen says of the file.</summary>
    /// <param name="path">The path that was written, counted from the flat pattern's lower left corner.</param>
    /// <param name="units">Unit of length.</param>
    public static IEnumerable<string> OnScreen(CutPath path, UnitSystem units)
    {
        yield return $"its contours are the middle of a beam of {Fine(path.Kerf, units)}, half of that off the finished edge: switch the machine's own compensation off";
        if (!path.Tight.IsEmpty)
        {
            yield return Corners(path, units);
        }
    }

    /// <summary>Why no such file can be written, and what to do; null where it can.</summary>
    /// <param name="path">The path as <see cref="Dxf.FlatPatternDxf.PathFor"/> gives it.</param>
    /// <param name="units">Unit of length.</param>
    public static string? Refusal(CutPath? path, UnitSystem units) => path switch
    {
        null => "the shop's kerf is 0, so there is nothing to compensate.",
        { Contours: null } => $"a beam of {Fine(path.Kerf, units)}, the kerf of the shop, does not fit the contour at {Place(path.Stuck ?? default, units)}, "
            + $"counted from the flat pattern's lower left corner. {JobFiles.CutFile} has the finished edge. Or cut by a finer process.",
        _ => null,
    };

    /// <summary>A length to 1 µm or a ten-thousandth of an inch, with its unit: a kerf is too fine for a drawing's decimals.</summary>
    /// <param name="length">mm.</param>
    /// <param name="units">Unit of length.</param>
    public static string Fine(double length, UnitSystem units) => units == UnitSystem.Inch
        ? (length / 25.4).ToString("0.0000", CultureInfo.InvariantCulture) + " in"
        : length.ToString("0.###", CultureInfo.InvariantCulture) + " mm";

    /// <summary>Lines for the head of the file.</summary>
    internal static IEnumerable<string> InFile(CutPath path, UnitSystem units)
    {
        yield return $"COMPENSATED for a kerf of {Fine(path.Kerf, units)}: contours are the middle of the beam, half the kerf outside of the outline and inside of the holes.";
        yield return "Switch the machine's own compensation off. The finished part is in flat-pattern.dxf.";
        if (!path.Tight.IsEmpty)
        {
            yield return Corners(path, units);
        }
    }

    /// <summary>Lines that stand beside the part, in letters for marking.</summary>
    internal static IEnumerable<string> OnDrawing(double kerf, UnitSystem units) =>
        [$"COMPENSATED FOR A KERF OF {Fine(kerf, units)}", "SWITCH COMPENSATION AT THE MACHINE OFF"];

    private static string Corners(CutPath path, UnitSystem units) =>
        $"the beam leaves a radius of {Fine(path.Kerf / 2, units)} in inside corners that are drawn tighter, at "
        + string.Join(", ", path.Tight.Select(t => Place(t, units)));

    private static string Place(Vector2 point, UnitSystem units)
    {
        string Number(double value) => units == UnitSystem.Inch
            ? (value / 25.4).ToString("0.000", CultureInfo.InvariantCulture)
            : value.ToString("0.##", CultureInfo.InvariantCulture);
        return $"({Number(point.X)}; {Number(point.Y)})";
    }
}
