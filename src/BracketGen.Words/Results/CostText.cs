using System.Collections.Immutable;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Search;
using BracketGen.SheetMetal.Shops;
using BracketGen.Units;

namespace BracketGen.Words.Results;

/// <summary>What a bracket costs, in the shop's currency or in minutes, with its parts.</summary>
public static class CostText
{
    /// <summary>The cost of an offer of a job.</summary>
    public static BracketCost Of(Offer offer, Job job) => BracketCost.Of(
        offer.Candidate.Bracket, offer.Candidate.Placement, offer.Candidate.Give, job.Vehicle.Cable.OuterEnd.AdjusterRange, job.Shop.Rates);

    /// <summary>An amount: "31.20 EUR", "24.13 min".</summary>
    public static string Amount(double cost, ShopRates rates) => rates.Currency is { } currency
        ? $"{UnitSystems.Decimals(cost, Format)} {currency}"
        : $"{UnitSystems.Decimals(cost, Format)} min";

    /// <summary>What it costs to make, part by part: "31.20 EUR to make one: sheet 0.35, cutting 16.10 …".</summary>
    public static string Bill(BracketCost cost, ShopRates rates) => $"It costs {Amount(cost.Bill, rates)} to make {Pieces(rates)}: {Parts(cost, isPreference: false)}.";

    /// <summary>What is held against it beside the bill; null where nothing is.</summary>
    public static string? Preferences(BracketCost cost, ShopRates rates) => Parts(cost, isPreference: true) is { Length: > 0 } parts
        ? $"Held against it beside the bill: {parts}; {Amount(cost.Total, rates)} in all."
        : null;

    /// <summary>Where the numbers come from.</summary>
    public static string Source(ShopRates rates) => rates.Currency is null
        ? $"The shop gives no [rates]: the times are usual ones, and a kilogram of sheet counts as {Amount(rates.SheetPerKilogram, rates)}."
        : "Cost is by the shop's [rates].";

    /// <summary>What is not in it where there is an adapter ring.</summary>
    public const string WithoutRing = "The adapter ring is not in the cost.";

    /// <summary>Name of a part.</summary>
    public static string Name(CostPart part) => part switch
    {
        CostPart.Sheet => "sheet",
        CostPart.Cutting => "cutting",
        CostPart.Bends => "bends",
        CostPart.Angles => "angles other than 90°",
        CostPart.ToolChanges => "tool changes",
        CostPart.TestStrips => "test strips",
        CostPart.Finishing => "finishing",
        CostPart.Give => "give",
        CostPart.LittleGroove => "little groove",
        _ => "adjuster off mid range",
    };

    private const string Format = "0.00";

    private static string Pieces(ShopRates rates) => rates.Batch == 1 ? "one" : $"one of {Counted.Number(rates.Batch)}";

    // What comes to nothing is not said.
    private static string Parts(BracketCost cost, bool isPreference)
    {
        ImmutableArray<(CostPart Part, double Cost)> parts = [.. cost.Parts.Where(p => BracketCost.IsPreference(p.Part) == isPreference)];
        return string.Join(", ", parts
            .Select(p => (p.Part, Text: UnitSystems.Decimals(p.Cost, Format)))
            .Where(p => p.Text != UnitSystems.Decimals(0, Format))
            .Select(p => $"{Name(p.Part)} {p.Text}"));
    }
}
