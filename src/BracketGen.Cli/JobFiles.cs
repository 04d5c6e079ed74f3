using BracketGen.Design;
using BracketGen.Drawing;
using BracketGen.Drawing.Dxf;
using BracketGen.Drawing.Report;
using BracketGen.Drawing.Result;
using BracketGen.Drawing.Sheet;
using BracketGen.Drawing.Solid;
using BracketGen.Drawing.Solid.Brep;

namespace BracketGen.Cli;

/// <summary>The files of one job, made in memory before any of them is written.</summary>
/// <param name="Written">Name and bytes of the files to write.</param>
/// <param name="Withheld">Names of files that this job must not have: an older one of the name is removed.</param>
internal sealed record JobFiles(IReadOnlyList<(string Name, byte[] Bytes)> Written, IReadOnlyList<string> Withheld)
{
    public const string CutFile = "flat-pattern.dxf", KerfFile = "flat-pattern-kerf.dxf";

    private const string DrawingFile = "drawing.pdf", SetupFile = "setup-sheet.pdf", ResultFile = "result.json", ReportFile = "report.html";

    private const string StepFile = "solid.step", GlbFile = "solid.glb", StlFile = "solid.stl";

    /// <summary>The files of <paramref name="solution"/>; those to make the bracket from only where no failed safety check is left unaccepted.</summary>
    public static JobFiles Of(Solution solution, IReadOnlyList<string> accepted, FileChoices choices)
    {
        var written = new List<(string, byte[])>();
        var withheld = new List<string>();
        var mayBeCut = solution.Dangers.All(d => accepted.Contains(d.Id));
        var dxf = new DxfWriter(choices.Dxf);
        var info = solution.Bracket is null ? null : SolidInfo.Of(solution);
        string[] warnings = [.. info?.Warnings ?? []];
        var mesh = solution.Bracket is { } any ? FoldedMesh.Of(any.Folded) : null;
        Add(CutFile, solution.Bracket is { } bracket && mayBeCut
            ? dxf.Write(FlatPatternDxf.Compose(bracket, solution.Job, warnings))
            : null);
        Add(KerfFile, solution.Bracket is { } same && mayBeCut && choices.CutPath is { } path
            ? dxf.Write(FlatPatternDxf.ComposeCompensated(same, solution.Job, path, warnings))
            : null);
        Add(StepFile, solution.Bracket is { } solid && mayBeCut ? StepWriter.Write(FoldedBrep.Of(solid.Folded), info!) : null);
        Add(DrawingFile, solution.Bracket is not null ? DrawingPdf(solution, choices) : null);
        Add(SetupFile, solution.Bracket is not null ? SetupPdf(solution) : null);
        Add(GlbFile, mesh is not null ? GlbWriter.Write(mesh, info!) : null);
        Add(StlFile, mesh is not null ? StlWriter.Write(mesh, info!) : null);
        Add(ReportFile, JobReport.Write(solution, accepted));
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

    private static byte[] DrawingPdf(Solution solution, FileChoices choices) =>
        Pdf(solution, BracketDrawing.Compose(solution, new() { WithKerfCompensated = choices.CutPath is not null }), "");

    private static byte[] SetupPdf(Solution solution) => Pdf(
        solution, SetupSheet.Compose(solution, solution.Job.Units == LengthUnit.Inch ? PageFormat.AnsiA : PageFormat.A4), "set-up sheet, ");

    private static byte[] Pdf(Solution solution, IReadOnlyList<SheetPage> pages, string kind)
    {
        var document = solution.Job.Document;
        return PdfWriter.Write(
            pages, new PdfInfo($"{kind}{document.PartNumber} {document.Title}".Trim(), solution.Job.Shop.Name, document.Date ?? new DateOnly(2000, 1, 1)));
    }
}
