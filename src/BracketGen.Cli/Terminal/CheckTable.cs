using BracketGen.Design.Checks;
using BracketGen.Units;
using BracketGen.Words.Checks;
using BracketGen.Words.Results;

namespace BracketGen.Cli.Terminal;

/// <summary>The checks as a table, the verdict, and what each failure means.</summary>
internal static class CheckTable
{
    public static void Print(TextWriter output, IReadOnlyList<Check> checks, UnitSystem units)
    {
        output.WriteLine();
        var rows = new List<string[]> { new[] { "", "check", "", "value", "limit", "margin" } };
        rows.AddRange(checks.Select(c => new[]
        {
            VerdictText.Mark(c), c.Id, c.Title, CheckText.Value(c, units), CheckText.Limit(c, units), CheckText.Margin(c, units),
        }));
        TextTable.Print(output, rows);
        output.WriteLine();
        foreach (var check in checks.Where(c => !c.Passes))
        {
            var head = check.Kind switch
            {
                CheckKind.Safety => "DANGER",
                CheckKind.Advice => "To do",
                _ => "FAILED",
            };
            output.WriteLine($"  {head}, {check.Id}: {check.Consequence}");
        }

        output.WriteLine($"  Verdict: {VerdictText.Of(checks)}");
    }
}
