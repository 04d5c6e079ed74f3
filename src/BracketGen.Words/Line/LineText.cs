using System.Collections.Immutable;
using BracketGen.Units;

namespace BracketGen.Words.Line;

/// <summary>What terminal, lists, catalogue and sheets say alike of a line.</summary>
public static class LineText
{
    /// <summary>Heads of the table of parts.</summary>
    public static readonly ImmutableArray<string> PartColumns = ["part", "rev.", "sheet", "mass", "price of one", "fits"];

    /// <summary>How many variants have a bracket, and how many of those are proven.</summary>
    /// <param name="with">With a bracket.</param>
    /// <param name="notProven">Those of them that are not proven.</param>
    /// <param name="all">All that are sold.</param>
    /// <param name="notSold">Not sold.</param>
    public static string Outcome(int with, int notProven, int all, int notSold) =>
        $"{Counted.Number(with)} of {Counted.Of(all, "variant")} {Counted.Verb(with, "has", "have")} a bracket"
        + (with == 0 ? "" : notProven == 0 ? $" that passes every check" : $", {Counted.Number(notProven)} of them not proven")
        + (notSold == 0 ? "" : $"; {NotSold(notSold)}") + ".";

    /// <summary>The verdict of the whole line.</summary>
    public static string Verdict(string verdict) => $"Verdict of the line: {verdict}.";

    /// <summary>What to measure or calculate, and for how many variants.</summary>
    public static string ToProve(string sentence, int variants) => $"{Counted.Of(variants, "variant")} not proven: {sentence}";

    /// <summary>How many parts serve how many variants, and what is proven of that.</summary>
    /// <param name="parts">Parts.</param>
    /// <param name="variants">Variants with a bracket.</param>
    /// <param name="candidates">Brackets tried that are the best of no variant.</param>
    /// <param name="atLeast">The number of parts below which, proven, no choice of the brackets tried goes.</param>
    /// <param name="isCheapest">Whether no other choice of as few parts needs less adjustment.</param>
    /// <param name="tried">Brackets checked on another variant.</param>
    public static string Parts(int parts, int variants, int candidates, int atLeast, bool isCheapest, int tried) =>
        $"{Counted.Of(parts, "part")} {Counted.Verb(parts, "serves", "serve")} {Counted.Of(variants, "variant")}. "
        + $"Tried: the best bracket of each variant and {Counted.Of(candidates, "more bracket")} that may serve several. "
        + (atLeast < parts
            ? $"Fewer than {Counted.Number(atLeast)} of these cannot serve all; the search was stopped before it was known whether {Counted.Number(parts)} are the fewest. "
            : "Fewer of these cannot serve all; brackets that were not tried may. ")
        + (isCheapest || atLeast < parts ? "" : $"Another choice of {Counted.Of(parts, "part")} may need less adjustment. ")
        + $"{Counted.Of(tried, "bracket")} {Counted.Verb(tried, "was", "were")} checked on another variant.";

    /// <summary>What the register calls a part that is the best bracket of no variant.</summary>
    /// <param name="variant">Names of the variant that it was first issued for.</param>
    public static string SharedPart(string variant) => $"{variant}, shared part";

    /// <summary>How many parts serve how many variants, where variants keep the parts that they had.</summary>
    /// <param name="parts">Parts.</param>
    /// <param name="variants">Variants with a bracket.</param>
    /// <param name="kept">Those that keep their part.</param>
    /// <param name="tried">Brackets checked in full on another variant.</param>
    public static string KeptParts(int parts, int variants, int kept, int tried) =>
        $"{Counted.Of(parts, "part")} {Counted.Verb(parts, "serves", "serve")} {Counted.Of(variants, "variant")}; {Counted.Number(kept)} of them {Counted.Verb(kept, "keeps the part that it has", "keep the parts that they have")}, because {Counted.Verb(kept, "it", "they")} still {Counted.Verb(kept, "passes", "pass")} or {Counted.Verb(kept, "is", "are")} pinned. "
        + (parts > 1 ? "Fewer parts may do if all are chosen anew (--choose-anew). " : "") + $"{Counted.Of(tried, "bracket")} {Counted.Verb(tried, "was", "were")} checked in full on another variant.";

    /// <summary>Variants that are not sold, with the family's reason.</summary>
    public static string Excluded(int variants, string reason) => $"{Counted.Of(variants, "variant")} not sold: {reason}";

    /// <summary>Heading of a variant without a bracket.</summary>
    public static string NoBracket(string variant) => $"{variant}: no bracket";

    /// <summary>What is new in the register.</summary>
    public static string Registered(int parts, int revisions) => $"Register: {Counted.Of(parts, "new part")}, {Counted.Of(revisions, "new revision")}.";

    /// <summary>A part was raised.</summary>
    public static string Raised(string partNumber, string revision) => $"{partNumber} is now revision {revision}";

    /// <summary>Lines left out on the terminal.</summary>
    public static string More(int count) => $"and {Counted.Number(count)} more; the lists have all of them";

    /// <summary>Why a variant is not sold.</summary>
    public static string NotSoldBecause(string reason) => $"not sold: {reason}";

    /// <summary>Yes or no in a list.</summary>
    public static string YesNo(bool value) => value ? "yes" : "no";

    /// <summary>A sheet: "S235JR, 3.0 mm".</summary>
    public static string Stock(string designation, double thickness, UnitSystem units) => $"{designation}, {units.Write(Quantity.Length, thickness)}";

    /// <summary>Two lengths: "2500.0 x 1250.0 mm".</summary>
    public static string Size(double length, double width, UnitSystem units) =>
        $"{units.Number(Quantity.Length, length)} x {units.Write(Quantity.Length, width)}";

    /// <summary>An amount of money.</summary>
    public static string Money(double amount, string currency) => $"{UnitSystems.Decimals(amount, "0.00")} {currency}";

    /// <summary>Where the adjuster is.</summary>
    /// <param name="shift">Off mid range (mm), positive if it takes up wire.</param>
    /// <param name="range">Whole range (mm); 0 without an adjuster.</param>
    /// <param name="units">Units.</param>
    public static string Adjuster(double shift, double range, UnitSystem units) => range <= 0
        ? "none"
        : Math.Abs(shift) < 0.05
            ? "at mid range"
            : $"{units.Write(Quantity.Length, Math.Abs(shift))} {(shift > 0 ? "taken up" : "let out")}";

    /// <summary>A shared part on the terminal.</summary>
    public static string Shared(string variant, string partNumber, string own, string ownCheck, string shared, string sharedCheck) =>
        $"{variant} on {partNumber}: smallest margin {own} ({ownCheck}) with its own part, {shared} ({sharedCheck}) with the shared one";

    /// <summary>The check that loses most by sharing, to follow <see cref="Shared"/>.</summary>
    public static string LosesMost(string check, string before, string now) => $"; loses most: {check}, {before} to {now}";

    private static string NotSold(int count) => $"{Counted.Number(count)} more {Counted.Verb(count, "is", "are")} not sold";
}
