using System.Collections.Immutable;
using System.Globalization;
using BracketGen.Design.Part;
using BracketGen.Line.Combinations;
using BracketGen.Line.Costing;
using BracketGen.Line.Lists;
using BracketGen.Line.Numbering;
using BracketGen.Line.Sharing;
using BracketGen.Line.Solving;
using BracketGen.Profiles.Family;
using BracketGen.Profiles.Forms;
using BracketGen.SheetMetal.Shops;

namespace BracketGen.Cli.Terminal;

/// <summary>What became of a line, on the terminal.</summary>
internal static class LineTable
{
    /// <summary>Longest list printed in full; the rest stands in the files.</summary>
    private const int Most = 30;

    /// <summary>How the combinations ended, and which part numbers and revisions are new.</summary>
    public static void PrintOutcome(
        TextWriter output, FamilyCombinations combinations, ImmutableArray<Made> made, Register now, Register before)
    {
        output.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{made.Count(m => m.Outcome == Outcome.Passes)} of {made.Length} combinations have a bracket that passes every check; {combinations.Excluded.Length} are not offered."));
        var without = combinations.Offered.Zip(made).Where(p => p.Second.Outcome != Outcome.Passes).ToArray();
        foreach (var (combination, done) in without.Take(Most))
        {
            output.WriteLine($"  {combination.Key}: no bracket");
            foreach (var reason in done.Reasons)
            {
                output.WriteLine($"    {reason.Replace("\n", "\n    ", StringComparison.Ordinal)}");
            }
        }

        More(output, without.Length);
        var added = now.Revisions.Skip(before.Revisions.Length).ToArray();
        var raised = added.Where(r => !r.Differences.IsEmpty).ToArray();
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"Register: {added.Length - raised.Length} new parts, {raised.Length} new revisions."));
        foreach (var revision in raised.Take(Most))
        {
            output.WriteLine($"  {revision.PartNumber} is now revision {revision.Revision}");
            foreach (var line in revision.Differences)
            {
                output.WriteLine($"    {line}");
            }
        }

        More(output, raised.Length);
    }

    /// <summary>The parts, and what sharing them costs.</summary>
    public static void PrintParts(TextWriter output, LineReport report)
    {
        var (selection, rates) = (report.Selection, report.Family.Family.Rates);
        var shared = selection.Services.Where(s => s.IsShared).ToArray();
        output.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{selection.Parts.Count} parts serve {selection.Services.Count} combinations; no fewer can{(selection.IsCheapest ? "" : " (another choice of as few may move the adjusters less)")}. {selection.Tried} were tried in full on another's combination."));
        var fits = selection.Services.ToLookup(s => s.By);
        var rows = new List<string[]> { new[] { "part", "rev.", "sheet", "mass", "price of one", "serves" } };
        rows.AddRange(selection.Parts.Take(Most).Select(part => new[]
        {
            part.Made.PartNumber, part.Made.Revision,
            string.Create(CultureInfo.InvariantCulture, $"{part.Bracket.Stock.Material.Designation}, {part.Bracket.Stock.Thickness:0.###} mm"),
            string.Create(CultureInfo.InvariantCulture, $"{part.Bracket.Mass * 1e6:0} g"),
            string.Create(CultureInfo.InvariantCulture, $"{PartCost.Of(part.Bracket, report.Family.Family.Cutting, rates).PriceFor(1):0.00} {rates.Currency}"),
            string.Join(", ", fits[part].Select(s => s.Served.Combination.Key)),
        }));
        TextTable.Print(output, rows);
        More(output, selection.Parts.Count);
        foreach (var service in shared.Take(Most))
        {
            var cost = MarginCost.Of(service);
            output.WriteLine(
                $"  {service.Served.Combination.Key} on {service.By.Made.PartNumber}: tightest {cost.OwnTightest.Margin} ({cost.OwnTightest.Id}), now {cost.SharedTightest.Margin} ({cost.SharedTightest.Id})"
                + (cost.Dearest is { } dearest ? $"; gives up most: {dearest.Id}, {cost.DearestBefore!.Margin}, now {dearest.Margin}" : ""));
        }

        More(output, shared.Length);
        foreach (var nest in report.Nests)
        {
            output.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"  {nest.Stock.Material.Designation}, {nest.Stock.Thickness:0.###} mm: {nest.Nest.Sheets.Length} sheets, {100 * nest.Nest.Utilisation:0} % of the area used; {100 * nest.Saved:0} % less sheet than in rows"));
        }
    }

    private static void More(TextWriter output, int count)
    {
        if (count > Most)
        {
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  and {count - Most} more; the lists have them all"));
        }
    }
}
