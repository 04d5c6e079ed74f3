using BracketGen.Design;
using BracketGen.Drawing;
using BracketGen.Drawing.Dxf;
using BracketGen.Drawing.Result;
using BracketGen.Drawing.Sheet;
using BracketGen.Drawing.Text;

namespace BracketGen.Cli;

/// <summary>The files of one job, made in memory before any of them is written.</summary>
/// <param name="Written">Name and bytes of the files to write.</param>
/// <param name="Withheld">Names of files that this job must not have: an older one of the name is removed.</param>
internal sealed record JobFiles(IReadOnlyList<(string Name, byte[] Bytes)> Written, IReadOnlyList<string> Withheld)
{
    public const string CutFile = "flat-pattern.dxf", KerfFile = "flat-pattern-kerf.dxf";

    private const string DrawingFile = "drawing.pdf", SetupFile = "setup-sheet.pdf", ResultFile = "result.json";

    /// <summary>The files of <paramref name="solution"/>; cut files only where no failed safety check is left unaccepted.</summary>
    public static JobFiles Of(Solution solution, IReadOnlyList<string> accepted, FileChoices choices)
    {
        var written = new List<(string, byte[])>();
        var withheld = new List<string>();
        var mayBeCut = solution.Dangers.All(d => accepted.Contains(d.Id));
        var dxf = new DxfWriter(choices.Dxf);
        string[] warnings = [.. solution.Dangers.Select(d =>
            $"SAFETY CHECK FAILED: {d.Title}: {CheckText.Value(d, solution.Job.Units)}, {CheckText.Limit(d, solution.Job.Units)}")];
        Add(CutFile, solution.Bracket is { } bracket && mayBeCut
            ? dxf.Write(FlatPatternDxf.Compose(bracket, solution.Job, warnings))
            : null);
        Add(KerfFile, solution.Bracket is { } same && mayBeCut && choices.CutPath is { } path
            ? dxf.Write(FlatPatternDxf.ComposeCompensated(same, solution.Job, path, warnings))
            : null);

        var options = new DrawingOptions { Format = choices.Paper, WithKerfCompensated = choices.CutPath is not null };
        Add(DrawingFile, solution.Bracket is not null ? Pdf(solution, BracketDrawing.Compose(solution, options), "") : null);
        Add(SetupFile, solution.Bracket is not null
            ? Pdf(solution, SetupSheet.Compose(solution, options.FormatFor(solution.Job).Small), "set-up sheet, ")
            : null);
        Add(ResultFile, ResultJson.Write(solution, accepted));
        return new(written, withheld);

        void Add(string name, byte[]? bytes)
        {
            if (bytes is not null)
            {
                written.Add((name, bytes));
            }
            else
            {
                withheld.Add(name);
            }
        }
    }

    private static byte[] Pdf(Solution solution, IReadOnlyList<SheetPage> pages, string kind)
    {
        var document = solution.Job.Document;
        return PdfWriter.Write(
            pages, new PdfInfo($"{kind}{document.PartNumber} {document.Title}".Trim(), solution.Job.Shop.Name, document.Date ?? new DateOnly(2000, 1, 1)));
    }
}
