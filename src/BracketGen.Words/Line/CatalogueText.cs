using System.Collections.Immutable;
using BracketGen.Units;

namespace BracketGen.Words.Line;

/// <summary>The sentences of the catalogue.</summary>
public static class CatalogueText
{
    /// <summary>Heading of the tables of vehicles and throttle bodies.</summary>
    public const string Matrices = "What fits where";

    /// <summary>Heading of the parts.</summary>
    public const string Parts = "Parts";

    /// <summary>Heading of the shared parts.</summary>
    public const string Shared = "What shared parts cost in margin";

    /// <summary>Below it.</summary>
    public const string SharedNote =
        "Every check was calculated again with the shared part. The table gives the tightest check and the check that loses most, with the variant's own part and with the shared part.";

    /// <summary>Heads of a part's variants.</summary>
    public static readonly ImmutableArray<string> FitColumns = ["vehicle", "throttle body", "material, option", "adjuster", "tightest check", "margin", "verdict"];

    /// <summary>Heads of the shared parts.</summary>
    public static readonly ImmutableArray<string> SharedColumns =
    [
        "variant", "part not made", "served by", "adjuster", "tightest check, own part", "margin", "tightest check, shared part", "margin", "check that loses most",
        "margin, own part", "margin, shared part",
    ];

    /// <summary>No check loses.</summary>
    public const string LosesNothing = "none";

    /// <summary>The line in a few sentences.</summary>
    /// <param name="shop">Name of the shop.</param>
    /// <param name="parts">Parts.</param>
    /// <param name="served">Variants with a bracket.</param>
    /// <param name="shared">Those of them with a shared part.</param>
    /// <param name="without">Variants without a bracket.</param>
    /// <param name="notSold">Variants that are not sold.</param>
    public static string Summary(string shop, int parts, int served, int shared, int without, int notSold) =>
        $"{shop}. {Counted.Of(parts, "part")} for {Counted.Of(served, "variant")}, {Counted.Number(shared)} of them on a shared part. "
        + $"{Counted.Of(without, "variant")} without a bracket, {Counted.Number(notSold)} not sold; the tables give the reasons.";

    /// <summary>How many variants are not proven.</summary>
    public static string NotProven(int open, int of) =>
        $"{Counted.Number(open)} of {Counted.Of(of, "variant")} {Counted.Verb(open, "is", "are")} not proven. Do the following before you make or sell the parts for {Counted.Verb(open, "it", "them")}.";

    /// <summary>What to measure or calculate, and for which variants.</summary>
    public static string ToProve(string sentence, IReadOnlyCollection<string> variants) => $"{sentence} ({string.Join(", ", variants)})";

    /// <summary>Heading of one part.</summary>
    public static string Part(string partNumber, string revision) => $"{partNumber}, revision {revision}";

    /// <summary>What a part is.</summary>
    /// <param name="designation">Material.</param>
    /// <param name="thickness">Thickness (mm).</param>
    /// <param name="bends">Number of bends.</param>
    /// <param name="mass">Mass (t).</param>
    /// <param name="units">Units.</param>
    public static string PartFacts(string designation, double thickness, int bends, double mass, UnitSystem units) =>
        $"{LineText.Stock(designation, thickness, units)}; {(bends == 0 ? "flat" : Counted.Of(bends, "bend"))}; {units.Write(Quantity.Mass, mass)}.";

    /// <summary>From which quantity a price holds.</summary>
    public static string From(int quantity) => quantity == 1 ? "1 piece" : $"{Counted.Number(quantity)} or more";

    /// <summary>The causes in an empty cell.</summary>
    public static string Causes(IReadOnlyList<string> causes) => causes.Count switch
    {
        0 => "no bracket",
        1 => causes[0],
        _ => $"{causes[0]}; {Counted.Of(causes.Count - 1, "more cause")} in fits.csv",
    };
}
