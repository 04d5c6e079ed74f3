using System.Collections.Immutable;
using BracketGen.Line.Combinations;
using BracketGen.Line.Costing;
using BracketGen.Line.Lists;
using BracketGen.Line.Nesting;
using BracketGen.Line.Numbering;
using BracketGen.Line.Sharing;
using BracketGen.Line.Solving;
using BracketGen.Units;
using BracketGen.Words.Checks;
using BracketGen.Words.Line;

namespace BracketGen.Line.Running;

/// <summary>What became of a line, on the terminal.</summary>
internal static class LineTable
{
    /// <summary>Longest list printed in full; the files hold the rest.</summary>
    private const int MaxRows = 30;

    /// <summary>How the variants ended, and which part numbers and revisions are new.</summary>
    public static void PrintOutcome(
        TextWriter output, FamilyCombinations combinations, ImmutableArray<Made> made, Register now, Register before)
    {
        output.WriteLine(LineText.Verdict(VerdictText.Banner(LineVerdict.Of(made))));
        output.WriteLine(LineText.Outcome(
            made.Count(m => m.HasPart), made.Count(m => m.Outcome == Outcome.NotProven), made.Length, combinations.Excluded.Length));
        var without = combinations.Offered.Zip(made).Where(p => !p.Second.HasPart).ToArray();
        foreach (var (combination, done) in without.Take(MaxRows))
        {
            output.WriteLine($"  {LineText.NoBracket(combination.Key)}");
            foreach (var reason in done.Reasons)
            {
                output.WriteLine($"    {reason.Replace("\n", "\n    ", StringComparison.Ordinal)}");
            }
        }

        More(output, without.Length);
        foreach (var todo in made.SelectMany(m => m.Fit?.ToProve ?? []).GroupBy(t => t))
        {
            output.WriteLine($"  {LineText.ToProve(todo.Key, todo.Count())}");
        }

        PrintRegistered(output, now, before, LineText.Registered);
    }

    /// <summary>Which shared part numbers and revisions are new; nothing where none is.</summary>
    public static void PrintShared(TextWriter output, Register now, Register before)
    {
        if (now != before)
        {
            PrintRegistered(output, now, before, LineText.RegisteredShared);
        }
    }

    private static void PrintRegistered(TextWriter output, Register now, Register before, Func<int, int, string> sentence)
    {
        var added = now.Revisions.Skip(before.Revisions.Length).ToArray();
        var raised = added.Where(r => !r.Differences.IsEmpty).ToArray();
        output.WriteLine(sentence(added.Length - raised.Length, raised.Length));
        foreach (var revision in raised.Take(MaxRows))
        {
            output.WriteLine($"  {LineText.Raised(revision.PartNumber, revision.Revision)}");
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
        var (selection, units) = (report.Selection, report.Family.Family.Units);
        output.WriteLine(LineText.Parts(selection.Parts.Count, selection.Services.Count, selection.Candidates, selection.AtLeast, selection.IsCheapest, selection.Tried));
        TextTable.Print(output, PartRows(report));
        More(output, selection.Parts.Count);
        var shared = selection.Services.Where(s => s.IsShared).ToArray();
        foreach (var service in shared.Take(MaxRows))
        {
            var cost = MarginCost.Of(service);
            output.WriteLine(
                "  " + LineText.Shared(
                    service.Served.Combination.Key, service.By.Made.PartNumber, CheckText.Margin(cost.OwnTightest.Check, units), cost.OwnTightest.Code,
                    CheckText.Margin(cost.SharedTightest.Check, units), cost.SharedTightest.Code)
                + (cost.Dearest is { } dearest ? LineText.LosesMost(dearest.Code, CheckText.Margin(cost.DearestBefore!.Check, units), CheckText.Margin(dearest.Check, units)) : ""));
        }

        More(output, shared.Length);
        foreach (var nest in report.Nests)
        {
            output.WriteLine("  " + SheetsText.Short(
                nest.Stock.Material.Designation, nest.Stock.Thickness, nest.Nest.Sheets.Length, nest.Nest.Utilisation, nest.Saved, units));
        }

        foreach (var note in StockNotes.Of(report.Family.Family, report.Nests))
        {
            output.WriteLine($"  {note}");
        }
    }

    private static List<string[]> PartRows(LineReport report)
    {
        var family = report.Family.Family;
        var fits = report.Selection.Services.ToLookup(s => s.By);
        return
        [
            [.. LineText.PartColumns],
            .. report.Selection.Parts.Take(MaxRows).Select(part => new[]
            {
                part.Made.PartNumber, part.Made.Revision,
                LineText.Stock(part.Bracket.Stock.Material.Designation, part.Bracket.Stock.Thickness, family.Units),
                family.Units.Write(Quantity.Mass, part.Bracket.Mass),
                LineText.Money(PartCost.Of(part.Bracket, family.Cutting, family.Rates).PriceFor(1), family.Rates.Currency),
                string.Join(", ", fits[part].Select(s => s.Served.Combination.Key)),
            }),
        ];
    }

    private static void More(TextWriter output, int count)
    {
        if (count > MaxRows)
        {
            output.WriteLine($"  {LineText.More(count - MaxRows)}");
        }
    }
}
