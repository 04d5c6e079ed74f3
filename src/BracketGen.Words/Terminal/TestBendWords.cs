using System.Globalization;
using BracketGen.SheetMetal.Bending;
using BracketGen.Units;

namespace BracketGen.Words.Terminal;

/// <summary>What measured test strips say.</summary>
public static class TestBendWords
{
    /// <summary>The heading: sheet and die.</summary>
    public static string Heading(string material, double thickness, double opening, UnitSystem units) =>
        $"Test bend of {material}, {units.Write(Quantity.Length, thickness)}, on the die with an opening of {units.Write(Quantity.Length, opening)}";

    /// <summary>The heading: sheet, and what it was bent over.</summary>
    public static string HeadingOver(string material, double thickness, string clamp, UnitSystem units) =>
        $"Test bend of {material}, {units.Write(Quantity.Length, thickness)}, over {clamp}";

    /// <summary>What to give where both or neither are given.</summary>
    public const string DieOrClamp = "Give either --die, the opening of the die, or --clamp, the name of what the strips were bent over.";

    /// <summary>Where no folder, hand brake or bar has the name.</summary>
    public static string NoClamp(string name, IEnumerable<string> names) =>
        string.Join(", ", names) is { Length: > 0 } known ? $"the shop has no clamp named {name}. It has: {known}." : "the shop has no clamps: give --die.";

    /// <summary>The rows of the table of strips, the heading first.</summary>
    public static IReadOnlyList<string[]> Rows(IReadOnlyList<TestStrip> strips, UnitSystem units) =>
    [
        ["strip", "bend angle", "bend allowance", "K"],
        .. strips.Select((s, i) => new[]
        {
            (i + 1).ToString(CultureInfo.InvariantCulture), units.Write(Quantity.Angle, s.Turn.Magnitude.Radians), units.WriteFine(Quantity.Length, s.Allowance), K(s.K),
        }),
    ];

    /// <summary>The result with its spread and what reading does to it.</summary>
    public static string Result(TestStripResult result, int strips) => strips == 1
        ? $"K = {K(result.K)} ± {K(result.PlusMinus)} from reading each leg to 0.1 mm."
        : $"K = {K(result.K)} ± {K(result.PlusMinus)} from reading each leg to 0.1 mm; the strips differ by {K(result.Spread)}.";

    /// <summary>What to do with one strip.</summary>
    public const string OneStrip = "Bend and measure a second strip: one alone shows no mistake. Nothing was written.";

    /// <summary>What to do where the strips differ by more than reading explains.</summary>
    public const string SpreadTooLarge = "The strips differ by more than reading them explains. Measure again: one was read or cut wrong, or the sheet is not even. Nothing was written.";

    /// <summary>What to do where K is none that a bend can have.</summary>
    public const string NotPlausible = "K lies between 0 and 0.5 in any real bend. Measure again: length before bending, both legs to where their outsides meet, bend angle (0° is flat). Nothing was written.";

    /// <summary>A radius that is not the one in the file.</summary>
    public static string OtherRadius(double measured, double die, UnitSystem units) =>
        $"The inside radius was measured as {units.WriteFine(Quantity.Length, measured)}; the shop's file has {units.WriteFine(Quantity.Length, die)} for it. "
        + "K is calculated for the radius in the file, so that the flanges come out right. If the reading is sure, correct it in the file first.";

    /// <summary>Where no die suits.</summary>
    public static string NoDie(double opening, UnitSystem units) => $"the shop has no die with an opening of {units.Write(Quantity.Length, opening)}.";

    /// <summary>Where the sheet is not in stock.</summary>
    public static string NoStock(string material, double thickness, IEnumerable<string> stock, UnitSystem units) =>
        $"the shop does not stock {material} in {units.Write(Quantity.Length, thickness)}. It stocks: {string.Join(", ", stock)}.";

    /// <summary>A sheet in stock.</summary>
    public static string Stock(string material, double thickness, UnitSystem units) => $"{material} {units.Write(Quantity.Length, thickness)}";

    /// <summary>What was wrong with a strip.</summary>
    /// <param name="name">What the strip is called.</param>
    /// <param name="text">What was typed.</param>
    /// <param name="why">What is wrong; null where numbers are missing.</param>
    public static string BadStrip(string name, string text, string? why) =>
        $"{name} was given as '{text}'. {why ?? "Give length, one leg, the other leg, bend angle, inside radius and, if it was measured, thickness, with commas between: \"100, 51.8, 51.7, 90, 2.6\"."}";

    /// <summary>What was written where.</summary>
    public static string Wrote(double k, string path) => $"wrote k = {K(k)} into {path}";

    /// <summary>How to write it.</summary>
    public const string NotWritten = "Nothing was written. Add --write to put k into the shop's file.";

    private static string K(double k) => k.ToString("0.000", CultureInfo.InvariantCulture);
}
