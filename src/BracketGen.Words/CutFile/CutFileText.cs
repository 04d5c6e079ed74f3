using BracketGen.Design.Part;
using BracketGen.Units;

namespace BracketGen.Words.CutFile;

/// <summary>Lines at the head of every cut file.</summary>
public static class CutFileText
{
    /// <summary>The contours as they are in the file that is not compensated.</summary>
    public const string FinishedEdge = "The contours are the finished edge: kerf is not compensated.";

    /// <summary>Part, sheet, and what the layers mean.</summary>
    /// <param name="label">Part number and revision as marked.</param>
    /// <param name="bracket">The bracket.</param>
    /// <param name="units">Units of the job.</param>
    /// <param name="isMarked">Whether the part number found room on the part.</param>
    public static IEnumerable<string> Heading(string label, Bracket bracket, UnitSystem units, bool isMarked)
    {
        yield return $"Part {label}";
        yield return $"{bracket.Stock.Material.Designation}, thickness {units.WriteSize(bracket.Stock.Thickness)}";
        yield return "CUT_THROUGH: cut. FOLD_LINE: bend line, do not cut. SURFACE_MARK: etch or leave out.";
        if (!isMarked)
        {
            yield return "The part number finds no room on the part and is not marked.";
        }
    }
}
