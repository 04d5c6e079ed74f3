using System.Collections.Immutable;
using BracketGen.Cli.Terminal;
using BracketGen.Design.Checks;
using BracketGen.Line.Catalogue;
using BracketGen.Line.Combinations;
using BracketGen.Line.Lists;
using BracketGen.Line.Nesting;
using BracketGen.Line.Numbering;
using BracketGen.Line.Sharing;
using BracketGen.Line.Solving;
using BracketGen.Profiles.Family;

namespace BracketGen.Cli.Line;

/// <summary>From the solved combinations to parts, lists, catalogue and sheets.</summary>
internal static class LineOutputs
{
    public static int Write(
        FileInfo? orderFile, bool own, StrengthDetail? strength, int threads, LoadedFamily family, FamilyCombinations combinations, ImmutableArray<Made> made,
        ImmutableArray<LinePart> parts, Register register, LinePlace place)
    {
        var selection = own ? FewestParts.Own(parts) : FewestParts.Of(family, parts, strength, threads);
        if (ReadOrder(orderFile, selection, family) is not { } order)
        {
            return ExitCode.BadInput;
        }

        var nests = CuttingPlanner.Of(selection, order, family.Family.Cutting, threads);
        var report = new LineReport(family, combinations, made, selection, nests, register, strength is not null);
        ListTable[] lists = [LineLists.Parts(report), LineLists.Fits(report), LineLists.Shared(report), LineLists.Costs(report), LineLists.Sheets(report)];
        var files = new List<(string, byte[])>
        {
            ("catalogue.html", CataloguePage.Write(report, threads)),
            ("sheets.html", SheetsPage.Write(report)),
            ("line.xlsx", Workbook.Write(lists)),
            ("revisions.txt", RevisionText.Write(register)),
        };
        files.AddRange(lists.Select(l => (l.Name + ".csv", CsvText.Write(l))));
        OutputFolder.Write(place.Folder, files, []);
        var sheets = SheetFiles.Of(report).ToList();
        var outdated = Directory.Exists(place.Sheets)
            ? Directory.GetFiles(place.Sheets, "*.dxf").Select(f => Path.GetFileName(f)).Except(sheets.Select(s => s.Name)).ToArray()
            : [];
        OutputFolder.Write(place.Sheets, sheets, outdated);
        LineTable.PrintParts(Console.Out, report);
        foreach (var (name, _) in files)
        {
            Console.Out.WriteLine($"  wrote {Path.Combine(place.Folder, name)}");
        }

        Console.Out.WriteLine($"  wrote {sheets.Count} cut files of sheets to {place.Sheets}");
        return ExitCode.Pass;
    }

    private static CuttingOrder? ReadOrder(FileInfo? file, PartSelection selection, LoadedFamily family)
    {
        if (file is null)
        {
            return CuttingOrder.OfAll(selection, family.Family.Cutting);
        }

        if (!file.Exists)
        {
            Console.Error.WriteLine($"bracketgen: there is no order {file}.");
            return null;
        }

        var (order, mistakes) = CuttingOrder.Parse(File.ReadAllBytes(file.FullName), selection.Parts.Select(p => p.Made.PartNumber).ToHashSet());
        foreach (var mistake in mistakes)
        {
            Console.Error.WriteLine($"{file}: {mistake}");
        }

        return order;
    }
}
