using BracketGen.Design.Study;
using BracketGen.Drawing.Sheet;
using BracketGen.Geometry;
using BracketGen.Words.SetupSheet;

namespace BracketGen.Drawing.Setup;

/// <summary>Head of a sheet without a title block: what it is, of which part, for which job.</summary>
internal static class SheetHead
{
    /// <summary>The head; always of the same height.</summary>
    /// <param name="solution">The solution.</param>
    /// <param name="title">What the sheet is.</param>
    /// <param name="width">Width between the margins (mm).</param>
    /// <param name="sheet">Number of the sheet.</param>
    /// <param name="sheets">How many there are.</param>
    public static SheetBlock Draw(Solution solution, string title, double width, int sheet, int sheets)
    {
        const double tall = 21;
        return new(
            [
                new TextItem(title, new(0, -TextHeight.Large - 1), TextHeight.Large, Weight: FontWeight.Bold),
                new TextItem(SetupText.Sheet(sheet, sheets), new(width, -TextHeight.Large - 1), TextHeight.Small, TextAlign.Right),
                Line(SetupText.Part(solution.Job.Document), -11.5, FontWeight.Bold),
                Line(SetupText.Subject(solution.Job), -16, FontWeight.Regular),
                new Stroke(new Vector2(0, -18), new(width, -18), LineKind.Rule),
            ],
            new(new(0, -tall), new(width, 0)));

        // The head must stay of one height whatever the names are.
        TextItem Line(string text, double y, FontWeight weight)
        {
            var height = TextHeight.Small;
            while (SheetFont.Of(weight).Width(text, height) > width)
            {
                height *= 0.95;
            }

            return new(text, new(0, y), height, Weight: weight);
        }
    }
}
