using System.Globalization;
using BracketGen.Design;
using BracketGen.Drawing.Text;

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
        var rows = new List<string[]> { new[] { "", "no.", "sheet", "bends", "mass", "give", "tightest place" } };
        rows.AddRange(solution.Offers.Select((offer, i) =>
        {
            var stock = offer.Candidate.Bracket.Stock;
            var angles = offer.Candidate.Bracket.Flat.Bends
                .Select(b => b.Turn.Magnitude.Degrees.ToString("0.#", CultureInfo.InvariantCulture) + "\u00b0");
            return new[]
            {
                i + 1 == solution.Choice ? ">" : "",
                (i + 1).ToString(CultureInfo.InvariantCulture),
                $"{stock.Material.Designation}, {CheckText.Number(CheckUnit.Length, stock.Thickness, units)}",
                offer.Bends == 0 ? "none" : string.Join(" + ", angles),
                (offer.Mass * 1e6).ToString("0", CultureInfo.InvariantCulture) + " g",
                units == LengthUnit.Inch
                    ? (offer.BestGive / 25.4).ToString("0.0000", CultureInfo.InvariantCulture) + " in"
                    : offer.BestGive.ToString("0.000", CultureInfo.InvariantCulture) + " mm",
                $"{offer.Tightest.Id}, {(100 * offer.LeastSpare).ToString("0", CultureInfo.InvariantCulture)} % to spare",
            };
        }));
        TextTable.Print(output, rows);
        foreach (var reason in solution.Reasons)
        {
            output.WriteLine($"  {reason}");
        }

        if (solution.Offers.Length > 1)
        {
            output.WriteLine(solution.Strength is null
                ? "  Give is a beam estimate, for choosing only. Make another one by its number with --choice."
                : "  Make another one by its number with --choice.");
        }
    }
}
