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
    private const string CutFile = "flat-pattern.dxf", DrawingFile = "drawing.pdf", ResultFile = "result.json", ReportFile = "report.html";

    private const string StepFile = "solid.step", GlbFile = "solid.glb", StlFile = "solid.stl";

    /// <summary>The files of <paramref name="solution"/>; those to make the bracket from only where no failed safety check is left unaccepted.</summary>
    public static JobFiles Of(Solution solution, IReadOnlyList<string> accepted)
    {
        var written = new List<(string, byte[])>();
        var withheld = new List<string>();
        var mayBeCut = solution.Dangers.All(d => accepted.Contains(d.Id));
        if (solution.Bracket is { } bracket && mayBeCut)
        {
            var info = SolidInfo.Of(solution);
            written.Add((CutFile, new DxfWriter().Write(FlatPatternDxf.Compose(bracket, solution.Job, info.Warnings))));
            written.Add((StepFile, StepWriter.Write(FoldedBrep.Of(bracket.Folded), info)));
        }
        else
        {
            withheld.AddRange([CutFile, StepFile]);
        }

        if (solution.Bracket is not null)
        {
            written.Add((DrawingFile, DrawingPdf(solution)));
            var (mesh, info) = (FoldedMesh.Of(solution.Bracket.Folded), SolidInfo.Of(solution));
            written.Add((GlbFile, GlbWriter.Write(mesh, info)));
            written.Add((StlFile, StlWriter.Write(mesh, info)));
        }
        else
        {
            withheld.AddRange([DrawingFile, GlbFile, StlFile]);
        }

        written.Add((ReportFile, JobReport.Write(solution, accepted)));
        written.Add((ResultFile, ResultJson.Write(solution, accepted)));
        return new(written, withheld);
    }

    private static byte[] DrawingPdf(Solution solution)
    {
        var document = solution.Job.Document;
        return PdfWriter.Write(
            BracketDrawing.Compose(solution, DrawingOptions.Standard),
            new PdfInfo($"{document.PartNumber} {document.Title}".Trim(), solution.Job.Shop.Name, document.Date ?? new DateOnly(2000, 1, 1)));
    }
}
