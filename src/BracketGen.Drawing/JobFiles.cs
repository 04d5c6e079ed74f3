using BracketGen.Design;
using BracketGen.Drawing.Dxf;
using BracketGen.Drawing.Report;
using BracketGen.Drawing.Result;
using BracketGen.Drawing.Sheet;
using BracketGen.Drawing.Solid;
using BracketGen.Drawing.Solid.Brep;

namespace BracketGen.Drawing;

/// <summary>The files of one job, made in memory before any of them is written.</summary>
/// <param name="Written">Name and bytes of the files to write.</param>
/// <param name="Withheld">Names of files that this job must not have: an older one of the name is removed.</param>
public sealed record JobFiles(IReadOnlyList<(string Name, byte[] Bytes)> Written, IReadOnlyList<string> Withheld)
{
    /// <summary>The flat pattern as cut: the finished edge.</summary>
    public const string CutFile = "flat-pattern.dxf";

    /// <summary>The way of the beam, half the kerf off the finished edge.</summary>
    public const string KerfFile = "flat-pattern-kerf.dxf";

    private const string DrawingFile = "drawing.pdf", SetupFile = "setup-sheet.pdf", ResultFile = "result.json", ReportFile = "report.html";

    private const string StepFile = "solid.step", GlbFile = "solid.glb", StlFile = "solid.stl";

    /// <summary>Every name there may be, in the order in which they are listed.</summary>
    public static IReadOnlyList<string> All { get; } = [CutFile, KerfFile, StepFile, DrawingFile, SetupFile, GlbFile, StlFile, ReportFile, ResultFile];

    /// <summary>The files of <paramref name="solution"/>; those to make the bracket from only where no failed safety check is left unaccepted.</summary>
    /// <param name="solution">The solution, with its strength and, where nothing passes, its diagnosis, if they are to be in the files.</param>
    /// <param name="accepted">Failed safety checks that the user accepted by name.</param>
    /// <param name="choices">What the user chose about the files.</param>
    public static JobFiles Of(Solution solution, IReadOnlyList<string> accepted, FileChoices choices)
    {
        var written = new List<(string Name, byte[] Bytes)>();
        if (solution.Bracket is { } bracket)
        {
            var info = SolidInfo.Of(solution);
            if (solution.Dangers.All(d => accepted.Contains(d.Id)))
            {
                var dxf = new DxfWriter(choices.Dxf);
                written.Add((CutFile, dxf.Write(FlatPatternDxf.Compose(bracket, solution.Job, info.Warnings))));
                if (choices.CutPath is { } path)
                {
                    written.Add((KerfFile, dxf.Write(FlatPatternDxf.ComposeCompensated(bracket, solution.Job, path, info.Warnings))));
                }

                written.Add((StepFile, StepWriter.Write(FoldedBrep.Of(bracket.Folded), info)));
            }

            var options = new DrawingOptions { Format = choices.Paper, WithKerfCompensated = choices.CutPath is not null };
            written.Add((DrawingFile, Pdf(solution, BracketDrawing.Compose(solution, options), "")));
            written.Add((SetupFile, Pdf(solution, SetupSheet.Compose(solution, options.FormatFor(solution.Job).Small), "set-up sheet, ")));
            var mesh = FoldedMesh.Of(bracket.Folded);
            written.Add((GlbFile, GlbWriter.Write(mesh, info)));
            written.Add((StlFile, StlWriter.Write(mesh, info)));
        }

        written.Add((ReportFile, JobReport.Write(solution, accepted)));
        written.Add((ResultFile, ResultJson.Write(solution, accepted)));
        return new(written, [.. All.Except(written.Select(w => w.Name))]);
    }

    private static byte[] Pdf(Solution solution, IReadOnlyList<SheetPage> pages, string kind)
    {
        var document = solution.Job.Document;
        return PdfWriter.Write(
            pages, new PdfInfo($"{kind}{document.PartNumber} {document.Title}".Trim(), solution.Job.Shop.Name, document.Date ?? new DateOnly(2000, 1, 1)));
    }
}
