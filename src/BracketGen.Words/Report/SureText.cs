using System.Globalization;
using BracketGen.Design.Checks;
using BracketGen.Mechanism.Uncertainty;
using BracketGen.Units;
using BracketGen.Words.Checks;

namespace BracketGen.Words.Report;

/// <summary>How sure the answer is, in words.</summary>
public static class SureText
{
    /// <summary>Caption of the probabilities.</summary>
    public const string Probabilities = "Probabilities";

    /// <summary>Caption of the spreads.</summary>
    public const string Spreads = "How far it may be off";

    /// <summary>Heading of the ranking.</summary>
    public const string MeasureAgain = "What to measure again";

    /// <summary>Said if there is nothing to rank.</summary>
    public const string NothingGiven = "No input was given a ±.";

    /// <summary>Heads of the probabilities.</summary>
    public static IReadOnlyList<string> ProbabilityHeads { get; } = ["requirement", "probability", "standard error"];

    /// <summary>Heads of the spreads.</summary>
    public static IReadOnlyList<string> SpreadHeads { get; } = ["quantity", "as measured", "98 of 100", "worst cases"];

    /// <summary>What was done.</summary>
    public static string Intro(int samples) =>
        $"Every measurement was varied within its ±, and every dimension within its cutting, bending and bolting tolerance, in {Phrases.Count(samples)} samples.";

    /// <summary>Rows of the probabilities.</summary>
    public static IReadOnlyList<IReadOnlyList<string>> ProbabilityRows(MechanismReport mechanism, TravelUncertainty sure) =>
    [
        Row("can be made to close", mechanism.Closes, sure.Run.Count),
        Row("opens fully", sure.ReachesWideOpen, sure.Run.Count),
        Row("the wire stays in the groove at the closed stop", sure.ProbabilityOf(TravelRequirement.InGroove), sure.Run.Count),
        .. mechanism.AdjusterRange > 0 ? [Row("the adjuster has the range to set the free play", sure.WithinAdjuster, sure.Run.Count)] : Array.Empty<IReadOnlyList<string>>(),
    ];

    /// <summary>Rows of the spreads.</summary>
    public static IReadOnlyList<IReadOnlyList<string>> SpreadRows(MechanismReport mechanism, TravelUncertainty sure, UnitSystem units)
    {
        IReadOnlyList<string> Spread(string name, OutputSpread s) =>
        [
            name, units.Write(Quantity.Length, s.Nominal), units.WriteRange(Quantity.Length, s.Quantile(0.01), s.Quantile(0.99)),
            units.WriteRange(Quantity.Length, s.Least, s.Most),
        ];
        return
        [
            Spread("over-travel, free play set", sure.OverTravel), Spread("free play before it is set", sure.FreePlayUntouched),
            .. mechanism.AdjusterRange > 0 ? [Spread("adjuster off mid range", sure.AdjusterNeed)] : Array.Empty<IReadOnlyList<string>>(),
        ];
    }

    /// <summary>What range an adjuster must have.</summary>
    public static string Adjuster(MechanismReport mechanism, TravelUncertainty sure, UnitSystem units) =>
        $"An adjuster range of {units.Write(Quantity.Length, sure.AdjusterRangeFor(MechanismChecks.LeastWorking))} is enough in 99 of 100 cases, {units.Write(Quantity.Length, sure.AdjusterRangeFor(1))} in all; this one has {units.Write(Quantity.Length, mechanism.AdjusterRange)}.";

    /// <summary>What to measure first.</summary>
    public static string First(TravelUncertainty sure)
    {
        var (requirement, contributions) = sure.Ranking;
        var what = !sure.HoldsAsMeasured(sure.Nearest) ? MeasureText.NoneHelps
            : contributions.FirstOrDefault(c => c.MeasuredAgain) is { Name: { } name } ? $"First: {name}."
            : "No measurement: only tighter tolerances help.";
        return $"{what} The ranking is for the requirement nearest to failing: {requirement}.";
    }

    /// <summary>What a contribution comes to.</summary>
    public static string Share(double share, bool isMeasured) =>
        $"{UnitSystem.Metric.Write(Quantity.Fraction, share)} of the spread{(isMeasured ? "" : "; a tolerance: only finer work helps")}";

    private static IReadOnlyList<string> Row(string name, Probability p, int samples) =>
    [
        name,
        p.Value is > 0 and < 1 ? (Math.Floor(10_000 * p.Value) / 100).ToString("0.00", CultureInfo.InvariantCulture) + " %" : p.Value >= 1 ? "100 %" : "0 %",
        p.Value is > 0 and < 1
            ? "± " + (100 * p.StandardError).ToString("0.00", CultureInfo.InvariantCulture) + " %"
            : $"{(p.Value >= 1 ? "all" : "none")} of {Phrases.Count(samples)}",
    ];
}
