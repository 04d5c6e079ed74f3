using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Units;

namespace BracketGen.Words.CutFile;

/// <summary>Lines at the head of every cut file.</summary>
public static class CutFileText
{
    /// <summary>The contours as they are in the file that is not compensated.</summary>
    public const string FinishedEdge = "The contours are the finished edge: kerf is not compensated.";

    /// <summary>What the cutter adds.</summary>
    public const string LeftToTheCutter = "Lead-ins, tabs (micro-joints) and the order of cuts are left to the cutter: there are none in the cut file.";

    /// <summary>Holes that are not cut; empty if all are.</summary>
    /// <param name="bracket">The bracket.</param>
    /// <param name="job">Its job.</param>
    public static string Drilled(Bracket bracket, Job job)
    {
        BracketHole[] drilled = [.. HoleMaking.Drilled(bracket, job)];
        return drilled.Length == 0 ? "" : string.Join(
            " ",
            drilled.GroupBy(h => h.Diameter).Select(g =>
                $"{(g.Count() == 1 ? "Hole" : "Holes")} {string.Join(", ", g.Select(h => h.Name))}: drill {job.Units.WriteFine(Quantity.Length, g.Key)} at the pilot mark, not cut."));
    }

    /// <summary>Part, sheet, and what the layers mean.</summary>
    /// <param name="label">Part number and revision as marked.</param>
    /// <param name="bracket">The bracket.</param>
    /// <param name="job">Its job.</param>
    /// <param name="isMarked">Whether the part number found room on the part.</param>
    public static IEnumerable<string> Heading(string label, Bracket bracket, Job job, bool isMarked)
    {
        yield return $"Part {label}";
        yield return $"{bracket.Stock.Material.Designation}, thickness {job.Units.WriteSize(bracket.Stock.Thickness)}";
        yield return "CUT_THROUGH: cut. FOLD_LINE: bend line, do not cut. SURFACE_MARK: etch or leave out.";
        yield return LeftToTheCutter;
        if (Drilled(bracket, job) is { Length: > 0 } drilled)
        {
            yield return drilled;
        }

        if (!isMarked)
        {
            yield return "The part number finds no room on the part and is not marked.";
        }
    }
}
