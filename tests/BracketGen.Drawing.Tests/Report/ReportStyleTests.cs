using System.Globalization;
using System.Text.RegularExpressions;
using BracketGen.Design.Checks;
using BracketGen.Drawing.Report;
using BracketGen.Drawing.Report.Charts;
using BracketGen.Drawing.Report.Html;
using BracketGen.Profiles.Family;
using BracketGen.TestSupport;
using BracketGen.Words.Report;
using CsCheck;

namespace BracketGen.Drawing.Tests.Report;

/// <summary>Colours that can be told apart, round numbers on grids, numbers that stay with their units.</summary>
public partial class ReportStyleTests
{
    public static TheoryData<string, double> Pairs => new()
    {
        // Text: 4.5 to 1 (WCAG 2.2, 1.4.3); lines of pictures and borders of controls: 3 to 1 (1.4.11).
        { "ink on card", 4.5 }, { "ink on paper", 4.5 }, { "faint on card", 4.5 }, { "faint on paper", 4.5 }, { "accent on card", 4.5 },
        { "accent on paper", 4.5 }, { "copper on paper", 4.5 }, { "copper on card", 4.5 }, { "good on good-ground", 4.5 }, { "bad on bad-ground", 4.5 },
        { "bad on card", 4.5 }, { "todo on todo-ground", 4.5 }, { "ink on good-ground", 4.5 }, { "ink on bad-ground", 4.5 }, { "ink on todo-ground", 4.5 },
        { "card on bad", 4.5 }, { "card on accent", 4.5 }, { "moss on card", 3 }, { "plum on card", 3 }, { "wire on card", 3 }, { "outer on card", 3 },
        { "sheet-line on sheet", 3 }, { "sheet-line on card", 3 }, { "good on hair", 3 }, { "bad on hair", 3 }, { "faint on hair", 3 }, { "accent on hair", 3 },
    };

    [Theory]
    [MemberData(nameof(Pairs))]
    public void Contrast_suffices_in_light_in_dark_and_on_paper(string pair, double least)
    {
        var names = pair.Split(" on ");
        var themes = Themes().Matches(PageFiles.Style).Select(m => Colour().Matches(m.Value).ToDictionary(c => c.Groups[1].Value, c => c.Groups[2].Value)).ToList();
        Assert.Equal(3, themes.Count);
        Assert.All(themes, t => Assert.True(Contrast(t[names[0]], t[names[1]]) >= least, $"{pair}: {Contrast(t[names[0]], t[names[1]]):0.00}"));
    }

    [Fact]
    public void Black_on_white_has_the_contrast_that_WCAG_states() => Assert.Equal(21, Contrast("#000000", "#fff"), 9);

    [Fact]
    public void A_grid_holds_its_values_in_round_steps() => Gen.Select(Gen.Double[-2000, 2000], Gen.Double[0, 3], Gen.Int[3, 8]).Check(400, (case_) =>
    {
        var (low, size, wanted) = case_;
        var high = low + Math.Pow(10, size) - 1;
        var ticks = Ticks.Over(low, high, wanted);
        Assert.True(ticks.Low <= low + 1e-6 && ticks.High >= high - 1e-6);
        Assert.InRange(ticks.Count, 1, wanted + 2);
        var mantissa = ticks.Step / Math.Pow(10, Math.Floor(Math.Log10(ticks.Step) + 1e-9));
        Assert.Contains(Math.Round(mantissa, 9), new[] { 1.0, 2, 5 });
        Assert.Equal(ticks.Values.Count(), ticks.Values.Select(v => v.ToString("F" + ticks.Decimals, CultureInfo.InvariantCulture)).Distinct().Count());
    });

    [Theory]
    [InlineData("2.82 mm of pull at 94 % of 3 N", "2.82_mm of pull at 94_% of 3_N")]
    [InlineData("4 into 3 inches, 2 Vans", "4 into 3 inches, 2 Vans")]
    [InlineData("no 5", "no 5")]
    [InlineData("12 in", "12_in")]
    public void A_unit_stays_with_its_number(string text, string kept) => Assert.Equal(kept.Replace('_', '\u00a0'), Typography.KeepUnits(text));

    /// <summary>WCAG 2.2, definitions of contrast ratio and relative luminance.</summary>
    private static double Contrast(string one, string other)
    {
        static double Luminance(string colour)
        {
            var hex = colour.Length == 4 ? string.Concat(colour[1..].Select(c => $"{c}{c}")) : colour[1..];
            double Channel(int i)
            {
                var c = Convert.ToInt32(hex.Substring(2 * i, 2), 16) / 255.0;
                return c <= 0.04045 ? c / 12.92 : Math.Pow((c + 0.055) / 1.055, 2.4);
            }

            return 0.2126 * Channel(0) + 0.7152 * Channel(1) + 0.0722 * Channel(2);
        }

        double a = Luminance(one), b = Luminance(other);
        return (Math.Max(a, b) + 0.05) / (Math.Min(a, b) + 0.05);
    }

    [GeneratedRegex(":root \\{[^}]*\\}")]
    private static partial Regex Themes();

    [GeneratedRegex("--([a-z-]+): (#[0-9a-f]{3,6})")]
    private static partial Regex Colour();
}
