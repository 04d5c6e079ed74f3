using System.Globalization;
using BracketGen.Design.Inputs;
using BracketGen.Design.Search;
using BracketGen.Design.Study;
using BracketGen.Units;

namespace BracketGen.Words.Results;

/// <summary>The brackets that a job offers, as rows of a table; screen, page and report print the same.</summary>
public static class OfferText
{
    /// <summary>Title of the table.</summary>
    public const string Title = "Brackets that pass";

    /// <summary>Heads of the columns of <see cref="Row"/>.</summary>
    public static IReadOnlyList<string> Heads { get; } = ["no.", "sheet", "bends", "mass", "give", "cost", "tightest check"];

    /// <summary>What the numbers are worth, and how to get another one.</summary>
    public static string Note(Solution solution) => solution.Strength is null
        ? "Give is a beam estimate, for choosing only. To make another one, give its number with --choice."
        : "To make another one, give its number with --choice.";

    /// <summary>How many there are, and which one this is.</summary>
    public static string Intro(Solution solution) => solution.Offers.Length == 1
        ? solution.Choice == 0 ? $"{OnlyOne} {NoneOfThem}" : OnlyOne
        : $"Of the brackets that pass, {solution.Offers.Length} are each better than every other in something. "
            + (solution.Choice == 0 ? NoneOfThem : $"This report is about number {solution.Choice}.");

    /// <summary>The same for a page that shows them side by side.</summary>
    public static string IntroSideBySide(Solution solution) => solution.Offers.Length == 1
        ? OnlyOne
        : $"Of the brackets that pass, these {solution.Offers.Length} are each better than every other in something.";

    /// <summary>Name of an offer, <paramref name="number"/> counted from 1.</summary>
    public static string Name(int number) => $"Bracket {number}";

    /// <summary>Said of the one that is shown.</summary>
    public const string Shown = "This is the one shown.";

    /// <summary>Button that shows another one.</summary>
    public static string Show(int number) => $"Show bracket {number}";

    /// <summary>An offer, <paramref name="number"/> counted from 1.</summary>
    public static IReadOnlyList<string> Row(Offer offer, int number, Job job)
    {
        var units = job.Units;
        var stock = offer.Candidate.Bracket.Stock;
        var angles = offer.Candidate.Bracket.Flat.Bends.Select(b => UnitSystems.Decimals(b.Turn.Magnitude.Degrees, "0.#") + "°");
        return
        [
            number.ToString(CultureInfo.InvariantCulture),
            $"{stock.Material.Designation}, {units.WriteSize(stock.Thickness)}",
            offer.Bends == 0 ? "none" : string.Join(" + ", angles),
            units.Write(Quantity.Mass, offer.Mass),
            units.WriteFine(Quantity.Length, offer.BestGive),
            CostText.Amount(CostText.Of(offer, job).Bill, job.Shop.Rates),
            $"{offer.Tightest.Code}, {units.Write(Quantity.Fraction, offer.LeastSpare)} spare",
        ];
    }

    private const string NoneOfThem = "This report is about the bracket that was chosen for the job, which is not in the list.";

    private const string OnlyOne = "Only this bracket is worth offering.";
}
