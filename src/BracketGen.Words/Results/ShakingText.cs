using System.Globalization;
using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Geometry;
using BracketGen.Units;
using BracketGen.Words.Checks;

namespace BracketGen.Words.Results;

/// <summary>Shaking of the mount in words.</summary>
public static class ShakingText
{
    /// <summary>Heading.</summary>
    public const string Heading = "Shaking of the mount";

    /// <summary>Said where neither the engine nor its shaking is known.</summary>
    public const string NotKnown = "How the mount shakes is not known: give [engine] or [shaking] in the throttle body's file. Whether the bracket cracks from it is not known.";

    /// <summary>Said where the bracket is bolted to an adapter ring.</summary>
    public const string NotKnownOnRing = "What shaking of the mount does to bracket and adapter ring together is not known. Look for cracks in both at every service.";

    /// <summary>Title of the table of orders.</summary>
    public const string OrdersTitle = "Speeds at which an order of the engine meets a natural frequency";

    /// <summary>Heads of its columns.</summary>
    public static IReadOnlyList<string> OrderHeads { get; } = ["Order", "Vibration", "Frequency", "Speed"];

    /// <summary>Said where no order meets a natural frequency.</summary>
    public static string NoCrossing(Engine engine) => $"None of the orders {Orders(engine)} meets a natural frequency between idle and maximum speed.";

    /// <summary>What a published test is worth.</summary>
    public const string StandsIn =
        "The test stands in for what the engine really does: a test of parts, harsher at most frequencies than an engine and not tied to its orders. Only an acceleration measured at the mount, over all speeds, tells how this engine shakes this bracket.";

    /// <summary>Name of a profile.</summary>
    public static string Name(ShakingProfile profile) => profile switch
    {
        ShakingProfile.SolidManifold => "ISO 16750-3:2023, test XI, solid intake manifold",
        ShakingProfile.FlexiblePlenum => "ISO 16750-3:2023, test III, flexible plenum chamber",
        _ => "sine and random of the throttle body's file",
    };

    /// <summary>Name of a profile in result.json.</summary>
    public static string Word(ShakingProfile profile) => profile switch
    {
        ShakingProfile.SolidManifold => "solid manifold",
        ShakingProfile.FlexiblePlenum => "flexible plenum",
        _ => "own",
    };

    /// <summary>Name of a frequency rule in result.json.</summary>
    public static string Word(FrequencyRule rule) => rule == FrequencyRule.Response ? "response" : "separation";

    /// <summary>How the mount shakes, with its evidence.</summary>
    public static string Profile(Shaking shaking) => $"{Name(shaking.Profile)}, {EvidenceText.Name(shaking.Evidence)}";

    /// <summary>Damping ratio with its evidence.</summary>
    public static string Damping(Shaking shaking) => shaking.Damping.Evidence == Evidence.Assumed
        ? $"{Percent(shaking.Damping.Value)} assumed, usually {Percent(shaking.Damping.Min)} to 3 %"
        : $"{Percent(shaking.Damping.Value)}{(shaking.Damping.PlusMinus > 0 ? $" ± {Percent(shaking.Damping.PlusMinus)}" : "")}";

    /// <summary>What shaking does, how it was found, and what it is worth.</summary>
    public static IEnumerable<string> Notes(ShakingReport report, UnitSystem units)
    {
        yield return $"The mount shakes by {Profile(report.Shaking)}; damping {Damping(report.Shaking)}. Each place is shaken in its own worst direction.";
        yield return $"Maximum alternating stress {units.Write(Quantity.Stress, report.LargestStress)} to each side"
            + (report.SineFrequency > 0 ? $": the sine gives {units.Write(Quantity.Stress, report.SineStress)} of it, at {units.Write(Quantity.Frequency, report.SineFrequency)}" : "")
            + (report.Shaking.Random is null ? "." : $"{(report.SineFrequency > 0 ? "," : ":")} random shaking the rest, three times its root mean square.");
        yield return $"Safety factor against cracking from this and every opening together {Factor(report.EnduranceFactor)}"
            + (report.EnduranceFactorAtWorst is { } worst ? $"; {Factor(worst)} with what is assumed at its unfavourable end." : ".");
        if (report.Shaking.Profile != ShakingProfile.Own)
        {
            yield return StandsIn;
        }
    }

    /// <summary>The table of orders.</summary>
    public static IReadOnlyList<IReadOnlyList<string>> Crossings(Engine engine, StrengthReport report) =>
    [
        .. OrderCrossing.Of(engine, report.Frequencies).Select(c => (IReadOnlyList<string>)
        [
            Phrases.Plain(c.Order), c.Mode.ToString(CultureInfo.InvariantCulture),
            UnitSystem.Metric.Write(Quantity.Frequency, report.Frequencies[c.Mode - 1]), Speed(c.Speed),
        ]),
    ];

    /// <summary>The orders of an engine, listed.</summary>
    public static string Orders(Engine engine) => Phrases.List([.. engine.Orders.Select(Phrases.Plain)]);

    /// <summary>Idle speed with its evidence.</summary>
    public static string Idle(Engine engine) => $"{Speed(engine.IdleSpeed.Value)}{(engine.IdleSpeed.Evidence == Evidence.Assumed ? ", assumed" : "")}";

    /// <summary>A speed of the crankshaft.</summary>
    public static string Speed(double speed) => UnitSystem.Metric.Write(Quantity.Speed, speed);

    /// <summary>Said of a bracket that passed by its response.</summary>
    public const string ByResponse =
        "No bracket keeps its first natural frequency clear of the engine's firing frequency. This one is the first that passes by what shaking of the mount does to it instead: see shaking-endurance.";

    private static string Factor(double factor) => Phrases.Plain(factor);

    private static string Percent(double part) => $"{(100 * part).ToString("0.##", CultureInfo.InvariantCulture)} %";
}
