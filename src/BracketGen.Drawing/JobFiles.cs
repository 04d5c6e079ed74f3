using System.Collections.Concurrent;
using BracketGen.Design.Part;
using BracketGen.Design.Study;
using BracketGen.Drawing.Dxf;
using BracketGen.Drawing.Inspecting;
using BracketGen.Drawing.Report;
using BracketGen.Drawing.Result;
using BracketGen.Drawing.Setup;
using BracketGen.Drawing.Sheet;
using BracketGen.Drawing.ShopDrawing;
using BracketGen.Drawing.Solid;
using BracketGen.Drawing.Solid.Brep;
using BracketGen.Drawing.Solid.Glb;
using BracketGen.Drawing.Solid.Mesh;
using BracketGen.Drawing.Solid.Step;
using BracketGen.Words.CutFile;
using BracketGen.Words.Inspecting;
using BracketGen.Words.SetupSheet;

namespace BracketGen.Drawing;

/// <summary>The files of one job, made in memory before any of them is written.</summary>
/// <param name="Written">Name and bytes of the files to write.</param>
/// <param name="Withheld">Names of files that this job must not have: an older one of the name is removed.</param>
public sealed record JobFiles(IReadOnlyList<(string Name, byte[] Bytes)> Written, IReadOnlyList<string> Withheld)
{
    /// <summary>The flat pattern as cut: the finished edge.</summary>
    public const string CutFile = FileNames.FinishedEdge;

    /// <summary>The beam path, half the kerf off the finished edge.</summary>
    public const string KerfFile = FileNames.BeamPath;

    private const string DrawingFile = "drawing.pdf", SetupFile = "setup-sheet.pdf", InspectionFile = "inspection-sheet.pdf", ResultFile = "result.json", ReportFile = "report.html";

    private const string StepFile = "solid.step", GlbFile = "solid.glb", StlFile = "solid.stl";

    private static readonly string[] Order = [CutFile, KerfFile, FileNames.AdapterRing, StepFile, DrawingFile, SetupFile, InspectionFile, GlbFile, StlFile, ReportFile, ResultFile];

    /// <summary>Every name there may be, in the order in which they are listed.</summary>
    public static IReadOnlyList<string> All => Order;

    /// <summary>The files of <paramref name="solution"/>; those to make the bracket from only where no failed safety check is left unaccepted.</summary>
    /// <param name="solution">The solution, with its strength and, where nothing passes, its diagnosis, if they are to be in the files.</param>
    /// <param name="accepted">Failed safety checks that the user accepted by name.</param>
    /// <param name="choices">What the user chose about the files.</param>
    public static JobFiles Of(Solution solution, IReadOnlyList<string> accepted, FileChoices choices)
    {
        // Each file is a task of its own, all of the same solution, which nobody changes: the long ones first, so that no processor waits long.
        var tasks = new List<(string Name, Func<byte[]> Bytes)> { (ReportFile, () => JobReport.Write(solution, accepted)) };
        if (solution.Bracket is { } bracket)
        {
            var info = SolidInfo.Of(solution);
            var options = new DrawingOptions { Format = choices.Paper, WithKerfCompensated = choices.CutPath is not null };
            tasks.Add((DrawingFile, () => Pdf(solution, BracketDrawing.Compose(solution, options), "")));
            tasks.Add((SetupFile, () => Pdf(solution, SetupSheet.Compose(solution, options.FormatFor(solution.Job).Small), $"{SetupText.Title}, ")));
            tasks.Add((InspectionFile, () => Pdf(solution, InspectionSheet.Compose(solution, options.FormatFor(solution.Job).Small), $"{InspectionText.Title}, ")));
            if (solution.Dangers.All(d => accepted.Contains(d.Code)))
            {
                var dxf = new DxfWriter(choices.Dxf);
                tasks.Add((CutFile, () => dxf.Write(FlatPatternDxf.Compose(bracket, solution.Job, info.Warnings, choices.TextQuantity))));
                if (choices.CutPath is { } path)
                {
                    tasks.Add((KerfFile, () => dxf.Write(FlatPatternDxf.ComposeCompensated(bracket, solution.Job, path, info.Warnings, choices.TextQuantity))));
                }

                if (RingShape.Of(solution.Job.Body.Mount) is { } ring)
                {
                    tasks.Add((FileNames.AdapterRing, () => dxf.Write(AdapterRingDxf.Compose(ring, solution.Job, info.Warnings))));
                }

                tasks.Add((StepFile, () => StepWriter.Write(FoldedBrep.Of(bracket.Folded), info, choices.Step)));
            }

            var mesh = new Lazy<FoldedMesh>(() => FoldedMesh.Of(bracket.Folded));
            tasks.Add((GlbFile, () => GlbWriter.Write(mesh.Value, info)));
            tasks.Add((StlFile, () => StlWriter.Write(mesh.Value, info)));
        }

        tasks.Add((ResultFile, () => ResultJson.Write(solution, accepted)));
        var bytes = new byte[tasks.Count][];
        Parallel.ForEach(Partitioner.Create(Enumerable.Range(0, tasks.Count), EnumerablePartitionerOptions.NoBuffering), i => bytes[i] = tasks[i].Bytes());
        var written = tasks.Select((task, i) => (task.Name, bytes[i])).OrderBy(file => Array.IndexOf(Order, file.Name)).ToList();
        return new(written, [.. Order.Except(written.Select(w => w.Name))]);
    }

    private static byte[] Pdf(Solution solution, IReadOnlyList<SheetPage> pages, string kind)
    {
        var document = solution.Job.Document;
        return PdfWriter.Write(
            pages, new PdfInfo($"{kind}{document.PartNumber} {document.Title}".Trim(), solution.Job.Shop.Name, document.Date ?? new DateOnly(2000, 1, 1)));
    }
}
