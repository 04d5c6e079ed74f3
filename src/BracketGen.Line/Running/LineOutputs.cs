using System.Collections.Immutable;
using BracketGen.Design.Checks;
using BracketGen.Line.Catalogue;
using BracketGen.Line.Combinations;
using BracketGen.Line.Lists;
using BracketGen.Line.Nesting;
using BracketGen.Line.Numbering;
using BracketGen.Line.Orders;
using BracketGen.Line.Sharing;
using BracketGen.Line.Solving;
using BracketGen.Profiles;
using BracketGen.Profiles.Family;
using BracketGen.Storage;
using BracketGen.Words.Line;

namespace BracketGen.Line.Running;

/// <summary>A line whose variants are all solved and registered.</summary>
/// <param name="Family">The family.</param>
/// <param name="Combinations">What is sold and what is not.</param>
/// <param name="Made">What was made of the variants, in order.</param>
/// <param name="Selection">The parts and whom they serve.</param>
/// <param name="Register">The register.</param>
/// <param name="Strength">How finely brackets are meshed; null without strength.</param>
internal sealed record SolvedLine(
    LoadedFamily Family, FamilyCombinations Combinations, ImmutableArray<Made> Made, PartSelection Selection, Register Register, StrengthDetail? Strength);

/// <summary>From the solved variants to parts, lists, catalogue and stock sheets.</summary>
internal static class LineOutputs
{
    /// <returns>False if the order cannot be used.</returns>
    public static bool Write(LineWishes wishes, SolvedLine line, LinePlace place, FolderLock held, LineTeller tell)
    {
        var family = line.Family.Family;
        var selection = line.Selection;
        if (ReadOrder(wishes.Order, selection, line.Family, tell) is not { } order)
        {
            return false;
        }

        var nests = CuttingPlanner.Of(selection, order, family.Cutting, wishes.Threads);
        var report = new LineReport(line.Family, line.Combinations, line.Made, selection, nests, line.Register);
        ListTable[] lists = [LineLists.Parts(report), LineLists.Fits(report), LineLists.Shared(report), LineLists.Costs(report), LineLists.Sheets(report), IssuedLists.Replaced(line.Register), IssuedLists.Redraw(line.Made)];
        var files = new List<(string Name, byte[] Bytes)>
        {
            ("catalogue.html", CataloguePage.Write(report, wishes.Threads)),
            ("sheets.html", SheetsPage.Write(report)),
            ("line.xlsx", Workbook.Write(lists)),
            ("revisions.txt", RevisionList.Write(line.Register)),
            (KeptLine.FileName, KeptLine.Of(report).ToBytes()),
        };
        files.AddRange(lists.Append(ShopImport.Products(report)).Select(l => (l.Name + ".csv", CsvText.Write(l))));
        var sheets = SheetFiles.Of(family, selection.Parts, nests).ToList();
        (string Folder, string Pattern, IReadOnlyList<(string Name, byte[] Bytes)> Files)[] folders =
        [
            (LinePlace.SheetsFolder, "*.dxf", In(LinePlace.SheetsFolder, sheets)),
            (ShopImport.Pictures, "*.svg", In(ShopImport.Pictures, ShopImport.PicturesOf(report, wishes.Threads))),
            (LinePart.SharedFolder, "*", [.. SharedFiles.Of(selection, line.Strength, wishes.Drawings ? LineDrawings.Of : null, wishes.Threads)]),
        ];
        WriteFiles(place, held, [.. files, .. folders.SelectMany(f => f.Files)], folders.Select(f => (f.Folder, f.Pattern)));
        LineTable.PrintParts(tell.Output, report);
        foreach (var (name, _) in files)
        {
            tell.Output.WriteLine($"  {LineRunText.Wrote(Path.Combine(place.Folder, name))}");
        }

        tell.Output.WriteLine($"  {LineRunText.WroteSheets(sheets.Count, place.Sheets)}");
        return true;
    }

    private static IReadOnlyList<(string Name, byte[] Bytes)> In(string folder, IEnumerable<(string Name, byte[] Bytes)> files) => [.. files.Select(f => ($"{folder}/{f.Name}", f.Bytes))];

    // One set: no list goes with the stock sheets, pictures or shared parts of an earlier run.
    private static void WriteFiles(LinePlace place, FolderLock held, IReadOnlyList<(string Name, byte[] Bytes)> files, IEnumerable<(string Folder, string Pattern)> folders)
    {
        var outdated = folders.Select(f => (Path: Path.Combine(place.Folder, f.Folder), f.Pattern)).Where(f => Directory.Exists(f.Path))
            .SelectMany(f => Directory.GetFiles(f.Path, f.Pattern, SearchOption.AllDirectories)).Select(f => Path.GetRelativePath(place.Folder, f).Replace('\\', '/'))
            .Except(files.Select(f => f.Name)).Order(StringComparer.Ordinal);
        WholeFiles.Write(held, place.Folder, files, [.. outdated]);
    }

    /// <summary>Longest order that is read (bytes): one of a hundred thousand pieces is a tenth of it.</summary>
    private const int MaxOrder = 50_000_000;

    private static CuttingOrder? ReadOrder(string? file, PartSelection selection, LoadedFamily family, LineTeller tell)
    {
        if (file is null)
        {
            return CuttingOrder.OfAll(selection, family.Family.Cutting);
        }

        // Neither a folder nor a pipe, which may never end.
        var read = new DiskFileSource().Read(file, MaxOrder);
        if (read.State != FileState.Read)
        {
            tell.Problem(LineRunText.NoOrder(file));
            return null;
        }

        var (order, mistakes) = CuttingOrder.Parse(read.Bytes.ToArray(), selection.Parts.Select(p => p.Made.PartNumber).ToHashSet());
        foreach (var mistake in mistakes)
        {
            tell.Errors.WriteLine(LineRunText.InOrder(file, mistake));
        }

        return order;
    }
}
