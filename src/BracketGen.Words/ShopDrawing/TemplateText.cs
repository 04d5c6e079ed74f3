using BracketGen.Design.Inputs;

namespace BracketGen.Words.ShopDrawing;

/// <summary>What stands at the head of the 1:1 template.</summary>
public static class TemplateText
{
    /// <summary>On the template of an unsafe part.</summary>
    public const string Unsafe = "SAFETY CHECK FAILED: see sheet 1. Do not fit this part.";

    /// <summary>On the template of a part that is not proven.</summary>
    public const string NotProven = "NOT PROVEN: see sheet 1.";

    /// <summary>Part number and revision.</summary>
    public static string Name(DocumentData document) =>
        document.Revision.Length > 0 ? $"{document.PartNumber}, revision {document.Revision}" : document.PartNumber;

    /// <summary>The heading that follows the name.</summary>
    public static string Heading(int sheet, int sheets) => $"template 1:1, sheet {sheet}/{sheets}";

    /// <summary>How to print and read it.</summary>
    /// <param name="isPlate">Whether it has no bend.</param>
    /// <param name="onDie">Whether it is bent on a V die; else the lines where each bend begins and ends are scribed.</param>
    public static string HowTo(bool isPlate, bool onDie) =>
        $"Print at 100 %. Check the bars. {Phrases.Capital(DrawingText.SeenFrom)}{(isPlate ? "." : "; UP is towards you.")}"
        + (isPlate || onDie ? "" : " Scribe the thin lines beside each bend line: there the bend begins and ends.");

    /// <summary>An edge that another sheet joins: "right edge to sheet 4".</summary>
    public static string Edge(string side, int sheet) => $"{side} edge to sheet {sheet}";

    /// <summary>The edges that other sheets join.</summary>
    public static string Joins(IEnumerable<string> edges) => $"Join on the lines with crosses: {string.Join(", ", edges)}.";
}
