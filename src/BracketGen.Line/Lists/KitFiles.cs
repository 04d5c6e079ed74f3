using BracketGen.Design.Kit;
using BracketGen.Drawing.Kit;
using BracketGen.Drawing.Sheet;
using BracketGen.Drawing.ShopDrawing;
using BracketGen.Words.Kit;

namespace BracketGen.Line.Lists;

/// <summary>The files of a kit: the list of every part, the workbook, the sheet to take along.</summary>
public static class KitFiles
{
    /// <summary>Their names, in the order in which they are written.</summary>
    public static IReadOnlyList<string> Names { get; } = ["kit.csv", "kit.xlsx", "kit.pdf"];

    /// <summary>Name and bytes of each.</summary>
    /// <param name="study">The study.</param>
    public static (string Name, byte[] Bytes)[] Of(KitStudy study)
    {
        var (job, parts) = (study.Kit.Job, KitLists.Parts(study));
        var pdf = PdfWriter.Write(
            KitSheet.Compose(study, new DrawingOptions().FormatFor(job).Small),
            new PdfInfo($"{KitText.Title}, {job.Document.PartNumber} {job.Document.Title}".Trim(), job.Shop.Name, job.Document.Date ?? new DateOnly(2000, 1, 1)));
        return [(Names[0], CsvText.Write(parts)), (Names[1], Workbook.Write([KitLists.Set(study), parts, KitLists.Measures(study)])), (Names[2], pdf)];
    }
}
