using BracketGen.Geometry;
using BracketGen.SheetMetal.Cutting;
using BracketGen.Units;

namespace BracketGen.Words.CutFile;

/// <summary>What a cut file compensated for the kerf says of itself: in the file, on the drawing and on the screen.</summary>
public static class KerfText
{
    /// <summary>What the screen says of the file.</summary>
    /// <param name="path">The path that was written, counted from the flat pattern's lower left corner.</param>
    /// <param name="units">Units of the job.</param>
    public static IEnumerable<string> OnScreen(CutPath path, UnitSystem units)
    {
        yield return $"its contours are the beam path, half the kerf of {Fine(path.Kerf, units)} off the finished edge: switch compensation off at the machine";
        if (!path.Tight.IsEmpty)
        {
            yield return Corners(path, units);
        }
    }

    /// <summary>Why no such file can be written, and what to do; null if it can.</summary>
    /// <param name="path">The path; null if the shop's kerf is 0.</param>
    /// <param name="units">Units of the job.</param>
    public static string? Refusal(CutPath? path, UnitSystem units) => path switch
    {
        null => "the kerf of the shop is 0, so there is nothing to compensate.",
        { Contours: null } => $"a beam as wide as the kerf of the shop, {Fine(path.Kerf, units)}, does not fit the contour at {Place(path.Stuck ?? default, units)}, "
            + $"counted from the lower left corner of the flat pattern. Cut from {FileNames.FinishedEdge}, which has the finished edge, or use a process with a finer kerf.",
        _ => null,
    };

    /// <summary>Lines for the head of the file.</summary>
    public static IEnumerable<string> InFile(CutPath path, UnitSystem units)
    {
        yield return $"COMPENSATED for a kerf of {Fine(path.Kerf, units)}: the contours are the beam path, half the kerf outside the outline and inside the holes.";
        yield return $"Switch compensation off at the machine. The finished edge is in {FileNames.FinishedEdge}.";
        if (!path.Tight.IsEmpty)
        {
            yield return Corners(path, units);
        }
    }

    /// <summary>Lines beside the part, in letters for marking.</summary>
    public static IEnumerable<string> OnDrawing(double kerf, UnitSystem units) =>
        [$"COMPENSATED FOR A KERF OF {Fine(kerf, units)}", "SWITCH COMPENSATION OFF AT THE MACHINE"];

    private static string Fine(double length, UnitSystem units) => units.WriteFine(Quantity.Length, length);

    private static string Corners(CutPath path, UnitSystem units) =>
        $"the beam leaves a radius of {Fine(path.Kerf / 2, units)} in inside corners that are drawn tighter, at "
        + string.Join(", ", path.Tight.Select(t => Place(t, units)));

    private static string Place(FlatPoint point, UnitSystem units) =>
        $"({units.Number(Quantity.Length, point.X)}; {units.Write(Quantity.Length, point.Y)})";
}
