using BracketGen.Design.Inputs;
using BracketGen.Design.Study;
using BracketGen.Words.Results;

namespace BracketGen.Cli.Terminal;

/// <summary>The brackets that a job offers, each with its number, and why the first stands first.</summary>
internal static class OfferTable
{
    public static void Print(TextWriter output, Solution solution)
    {
        if (solution.Offers.IsEmpty)
        {
            return;
        }

        var units = solution.Job.Units;
        output.WriteLine();
        var rows = new List<string[]> { (string[])["", .. OfferText.Heads] };
        rows.AddRange(solution.Offers.Select((offer, i) => (string[])[i + 1 == solution.Choice ? ">" : "", .. OfferText.Row(offer, i + 1, units)]));
        TextTable.Print(output, rows);
        foreach (var reason in solution.Reasons)
        {
            output.WriteLine($"  {reason}");
        }

        if (solution.Offers.Length > 1)
        {
            output.WriteLine($"  {OfferText.Note(solution)}");
        }
    }
}
