using System.Globalization;
using BracketGen.Design.Part;
using BracketGen.Design.Search;
using BracketGen.Design.Study;
using BracketGen.SheetMetal;
using BracketGen.Units;
using BracketGen.Words.Checks;

namespace BracketGen.Words.Results;

/// <summary>The brackets that a job offers, as rows of a table; screen and report print the same.</summary>
public static class OfferText
{
    /// <summary>Heads of the columns of <see cref="Row"/>.</summary>
    public static IReadOnlyList<string> Heads { get; } = ["no.", "sheet", "bends", "mass", "give", "tightest place"];

    /// <summary>What the numbers are worth, and how to get another one.</summary>
    public static string Note(Solution solution) => solution.Strength is null
        ? "Give is a beam estimate, for choosing only. Make another one by its number with --choice."
        : "Make another one by its number with --choice.";

    /// <summary>An offer, <paramref name="number"/> counted from 1.</summary>
    public static IReadOnlyList<string> Row(Offer offer, int number, UnitSystem units)
    {
        var stock = offer.Candidate.Bracket.Stock;
        var angles = offer.Candidate.Bracket.Flat.Bends.Select(b => b.Turn.Magnitude.Degrees.ToString("0.#", CultureInfo.InvariantCulture) + "°");
        return
        [
            number.ToString(CultureInfo.InvariantCulture),
            $"{stock.Material.Designation}, {CheckText.Number(Quantity.Length, stock.Thickness, units)}",
            offer.Bends == 0 ? "none" : string.Join(" + ", angles),
            (offer.Mass * 1e6).ToString("0", CultureInfo.InvariantCulture) + " g",
            units == UnitSystem.Inch
                ? (offer.BestGive / 25.4).ToString("0.0000", CultureInfo.InvariantCulture) + " in"
                : offer.BestGive.ToString("0.000", CultureInfo.InvariantCulture) + " mm",
            $"{offer.Tightest.Code}, {(100 * offer.LeastSpare).ToString("0", CultureInfo.InvariantCulture)} % to spare",
        ];
    }
}
