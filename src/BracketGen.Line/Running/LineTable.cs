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

    /// <summary>First of all: what has to come back.</summary>
    public static void PrintRecalls(TextWriter output, Register now, Register before)
    {
        var added = now.Recalls.Skip(before.Recalls.Length).ToArray();
        foreach (var recall in added)
        {
            output.WriteLine(recall.Why.IsEmpty
                ? IssuedText.Withdrawn(recall.PartNumber, recall.Revision, recall.Combination)
                : IssuedText.Recall(recall.PartNumber, recall.Revision, recall.Combination, recall.Names));
            foreach (var line in recall.Why)
            {
                output.WriteLine($"  {line}");
            }
        }

        if (now.OpenRecalls.Count(r => !added.Contains(r)) is > 0 and var old)
        {
            output.WriteLine(IssuedText.OpenRecalls(old));
        }
    }

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

        foreach (var reason in combinations.Excluded.GroupBy(e => e.Reason))
        {
            output.WriteLine($"  {LineText.Excluded(reason.Count(), reason.Key)}");
        }

        var added = now.Revisions.Skip(before.Revisions.Length).ToArray();
        var raised = added.Where(r => !r.Differences.IsEmpty).ToArray();
        output.WriteLine(LineText.Registered(added.Length - raised.Length, raised.Length));
        foreach (var revision in raised.Take(MaxRows))
        {
            output.WriteLine($"  {LineText.Raised(revision.PartNumber, revision.Revision)}");
            foreach (var line in revision.Differences)
            {
                output.WriteLine($"    {line}");
            }
        }

        More(output, raised.Length);
        PrintStaying(output, made);
    }

    private static void PrintStaying(TextWriter output, ImmutableArray<Made> made)
    {
        var staying = made.Where(m => m.Redraw is not null).ToArray();
        foreach (var part in staying.Take(MaxRows))
        {
            output.WriteLine($"  {IssuedText.Stays(part.PartNumber, part.Revision)}");
            foreach (var line in part.Redraw!)
            {
                output.WriteLine($"    {line}");
            }
        }

        More(output, staying.Length);
    }

    /// <summary>Which part replaces which on a variant, as far as this run changed it.</summary>
    /// <param name="output">Where to.</param>
    /// <param name="now">The register.</param>
    /// <param name="before">The register as it was read.</param>
    public static void PrintReplaced(TextWriter output, Register now, Register before)
    {
        var replaced = now.Services.Skip(before.Services.Length).Where(s => !s.Why.IsEmpty).ToArray();
        foreach (var service in replaced.Take(MaxRows))
        {
            var old = before.Serving[service.Combination];
            output.WriteLine($"  {IssuedText.Replaces(service.Combination, old.PartNumber, old.Revision, service.PartNumber, service.Revision)}");
            foreach (var line in service.Why)
            {
                output.WriteLine($"    {line}");
            }
        }

        More(output, replaced.Length);
    }

    /// <summary>The parts, and what sharing them costs.</summary>
    public static void PrintParts(TextWriter output, LineReport report)
    {
        var (selection, units) = (report.Selection, report.Family.Family.Units);
        output.WriteLine(selection.Kept > 0
            ? LineText.KeptParts(selection.Parts.Count, selection.Services.Count, selection.Kept, selection.Tried)
            : LineText.Parts(selection.Parts.Count, selection.Services.Count, selection.Candidates, selection.AtLeast, selection.IsCheapest, selection.Tried));
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
