using System.Collections.Immutable;
using BracketGen.Geometry;
using BracketGen.Profiles;
using BracketGen.SheetMetal.Bending;
using BracketGen.SheetMetal.Shops;
using BracketGen.Units;
using BracketGen.Words.Profiles;

namespace BracketGen.Words.Terminal;

/// <summary>How a test bend ended.</summary>
public enum TestBendState
{
    /// <summary>K can be written.</summary>
    Good,

    /// <summary>One strip alone shows no mistake.</summary>
    OneStrip,

    /// <summary>The strips contradict each other, or give a K that no bend has.</summary>
    Wrong,
}

/// <summary>What was bent, and on what.</summary>
/// <param name="Material">Designation of the sheet.</param>
/// <param name="Thickness">Its nominal thickness (mm).</param>
/// <param name="Opening">Opening of the die (mm); null where a clamp is named.</param>
/// <param name="Clamp">Name of folder, hand brake or bar.</param>
public sealed record TestBendAsked(string Material, double Thickness, double? Opening, string? Clamp);

/// <summary>A strip as it was typed.</summary>
/// <param name="Name">What it is called where something is wrong with it.</param>
/// <param name="Text">Whole, as it was typed.</param>
/// <param name="Parts">Length before bending, one leg, the other leg, bend angle, inside radius and, where it was measured, thickness.</param>
public sealed record TypedStrip(string Name, string Text, IReadOnlyList<string> Parts);

/// <summary>What measured test strips come to, in the words of the command.</summary>
/// <param name="State">How it ended.</param>
/// <param name="Heading">The heading.</param>
/// <param name="Rows">The table of strips, its heads first.</param>
/// <param name="Told">What is said of it, a paragraph each; how to write K is not among it.</param>
/// <param name="Bend">The test bend for the shop's file; null where nothing is to be written.</param>
public sealed record TestBendAnswer(TestBendState State, string Heading, IReadOnlyList<string[]> Rows, IReadOnlyList<string> Told, TestBend? Bend)
{
    // How exactly a radius gauge reads an inside radius (mm; common practice, no source).
    private const double RadiusReading = 0.3;

    private const UnitSystem Units = UnitSystem.Metric;

    // Kinds of a strip's values in their order; the last may be left out.
    private static readonly ImmutableArray<ReadingKind> Kinds =
        [ReadingKind.Length, ReadingKind.Length, ReadingKind.Length, ReadingKind.BendAngle, ReadingKind.Length, ReadingKind.Length];

    /// <summary>The answer, or why there is none.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="asked">What was bent, and on what.</param>
    /// <param name="strips">The strips; at least one.</param>
    public static (TestBendAnswer? Answer, string? Refusal) Of(Shop shop, TestBendAsked asked, IReadOnlyList<TypedStrip> strips)
    {
        var (material, thickness) = (asked.Material, asked.Thickness);
        if (shop.Stock.FirstOrDefault(s => s.Material.Designation == material && IsSame(s.Thickness, thickness)) is not { } stock)
        {
            return (null, TestBendWords.NoStock(material, thickness, shop.Stock.Select(s => TestBendWords.Stock(s.Material.Designation, s.Thickness, Units)), Units));
        }

        var (found, refusal) = RadiusOf(shop, asked, stock);
        if (found is not { } radius)
        {
            return (null, refusal);
        }

        List<TestStrip> measured = [];
        foreach (var strip in strips)
        {
            var (one, why) = Parse(strip.Parts, thickness);
            if (one is null)
            {
                return (null, TestBendWords.BadStrip(strip.Name, strip.Text, why));
            }

            measured.Add(one);
        }

        return (Of(asked, stock.Thickness, radius, measured), null);
    }

    // For the radius that the design counts with, so that its flanges come out as long as those of the strips.
    private static (double? Radius, string? Refusal) RadiusOf(Shop shop, TestBendAsked asked, Stock stock)
    {
        if (asked.Opening is { } width)
        {
            return shop.Dies.FirstOrDefault(d => IsSame(d.Opening, width)) is { } die
                ? (die.InsideRadiusIn(stock.Material.BendGroup), null)
                : (null, TestBendWords.NoDie(width, Units));
        }

        return shop.Tools.Clamps.FirstOrDefault(c => c.Name == asked.Clamp) is { } clamp
            ? (clamp.Radius, null)
            : (null, TestBendWords.NoClamp(asked.Clamp ?? "", shop.Tools.Clamps.Select(c => c.Name)));
    }

    private static TestBendAnswer Of(TestBendAsked asked, double thickness, double radius, List<TestStrip> measured)
    {
        ImmutableArray<TestStrip> counted = [.. measured.Select(s => s with { InsideRadius = radius })];
        var result = TestStripResult.Of(counted);
        var seen = measured.Average(s => s.InsideRadius);
        var state = result.IsSpreadTooLarge || !counted.All(s => s.IsPlausible) ? TestBendState.Wrong : counted.Length == 1 ? TestBendState.OneStrip : TestBendState.Good;
        return new(
            state,
            asked.Opening is { } on ? TestBendWords.Heading(asked.Material, asked.Thickness, on, Units) : TestBendWords.HeadingOver(asked.Material, asked.Thickness, asked.Clamp!, Units),
            TestBendWords.Rows(counted, Units),
            [
                TestBendWords.Result(result, counted.Length),
                .. Math.Abs(seen - radius) > RadiusReading ? [TestBendWords.OtherRadius(seen, radius, Units)] : Array.Empty<string>(),
                .. state switch
                {
                    TestBendState.Wrong => [result.IsSpreadTooLarge ? TestBendWords.SpreadTooLarge : TestBendWords.NotPlausible],
                    TestBendState.OneStrip => [TestBendWords.OneStrip],
                    _ => Array.Empty<string>(),
                },
            ],
            state == TestBendState.Good ? new(asked.Material, thickness, radius, Math.Round(result.K, 3)) : null);
    }

    private static (TestStrip? Strip, string? Why) Parse(IReadOnlyList<string> parts, double thickness)
    {
        if (parts.Count is not 5 and not 6)
        {
            return (null, null);
        }

        var values = new double[parts.Count];
        for (var i = 0; i < parts.Count; i++)
        {
            var (value, error) = ReadingText.Parse(parts[i], Kinds[i]);
            if (error is not null)
            {
                return (null, ProfileErrorText.OfReading(error));
            }

            values[i] = value!.Value;
        }

        return values.All(v => v > 0)
            ? (new(values[0], values[1], values[2], new(values[3]), values[4], parts.Count == 6 ? values[5] : thickness), null)
            : (null, null);
    }

    private static bool IsSame(double a, double b) => Math.Abs(a - b) < Tolerance.SameSize;
}
