using System.Globalization;
using BracketGen.Profiles.Errors;
using BracketGen.SheetMetal.Shops;
using BracketGen.Words.Profiles;

namespace BracketGen.Profiles.Tests;

/// <summary>Sheets that a shop's file names and the program knows.</summary>
public sealed class SheetLibraryTests
{
    private static readonly string Text = Samples.Texts[Samples.Shop];

    [Fact]
    public void Designation_and_thicknesses_are_enough_for_a_sheet_of_the_library()
    {
        var read = Samples.ReadWith(Samples.Shop, Of("DC01"), "designation = \"DC01\"\nthicknesses = [2, 3]\n\n");
        Assert.Equal("", string.Join('\n', read.Errors.Select(ProfileErrorText.Format)));
        var sheet = read.Value!.Shop.Stock.First(s => s.Material.Designation == "DC01").Material;
        Assert.Equal(SheetLibrary.Of("DC01"), sheet);
    }

    [Fact]
    public void What_the_shop_gives_counts_and_the_source_says_so()
    {
        var read = Samples.ReadWith(Samples.Shop, Of("DC01"), "designation = \"DC01\"\nthicknesses = [2, 3]\nyield = 180\n\n");
        var sheet = read.Value!.Shop.Stock.First(s => s.Material.Designation == "DC01").Material;
        Assert.Equal(180, sheet.Yield);
        Assert.EndsWith("; the shop's own: yield", sheet.Source, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("designation = \"DC02\"\nthicknesses = [2, 3]\n\n", "Did you mean \"DC01\"?")]
    [InlineData("designation = \"DC01\"\nthicknesses = [2, 3]\nmax_tensile = 100\n\n", "140 MPa")]
    [InlineData("designation = \"DC01\"\nthicknesses = [2, 3]\nmin_radius_across_grain = 3\n\n", "min_radius_across_grain")]
    [InlineData("designation = \"own sheet\"\nthicknesses = [2, 3]\nyield = 180\n\n", "Add the line density")]
    public void What_cannot_be_is_told(string entry, string says) =>
        Assert.Contains(Samples.ReadWith(Samples.Shop, Of("DC01"), entry).Errors, e => ProfileErrorText.Format(e).Contains(says, StringComparison.Ordinal));

    // Minimum radii and strengths go with each other as in every standard.
    [Fact]
    public void Every_sheet_of_the_library_is_one() => Assert.All(SheetLibrary.All, m =>
    {
        Assert.InRange(m.Yield, 20, m.MinTensile!.Value);
        Assert.True(m.MaxTensile is not { } max || max > m.MinTensile);
        Assert.True(m.MinRadiusAlongGrain >= m.MinRadiusAcrossGrain);
        Assert.Equal((m.IsSteel ? 0.4 : 0.3) * m.MinTensile.Value, m.Endurance, 1e-9);
        Assert.True(m.IsSteel == m.Density > 5e-9);
        Assert.Single(SheetLibrary.All, other => other.Designation == m.Designation);
    });

    // Whoever knows only the kind of metal is not told that a part holds which would not in the weakest sheet of it.
    [Fact]
    public void No_sheet_of_the_library_is_weaker_than_its_class() => Assert.All(SheetLibrary.All, sheet =>
    {
        var kind = SheetClass.Of(!sheet.IsSteel ? "aluminium" : sheet.Modulus < 205_000 ? "stainless steel" : "steel")!;
        Assert.True(kind.Yield <= sheet.Yield && kind.MinTensile <= sheet.MinTensile && kind.Endurance <= sheet.Endurance && kind.Modulus <= sheet.Modulus, sheet.Designation);
    });

    // The shop's own files, where they speak of the same sheet, say the same.
    [Fact]
    public void The_shipped_shop_agrees_with_the_library()
    {
        foreach (var sheet in Samples.ReadJob(Samples.Files).Value!.Shop.Stock.Select(s => s.Material).Distinct())
        {
            if (SheetLibrary.Of(sheet.Designation) is { } known && sheet.IsSteel)
            {
                Assert.True(sheet.Yield >= known.Yield && sheet.Density == known.Density, sheet.Designation);
            }
        }
    }

    // BRACKETGEN_TABLES, the folder of the manual, writes it anew.
    [Fact]
    public void The_manual_has_the_whole_table()
    {
        var rows = string.Concat(SheetLibrary.All.Select(m => string.Create(
            CultureInfo.InvariantCulture,
            $"| `{m.Designation}` | {m.Yield:0} | {m.MinTensile:0} | {(m.MaxTensile is { } max ? $"{max:0}" : "")} | {m.Endurance:0} | {m.MinRadiusAcrossGrain:0.##} | {m.MinRadiusAlongGrain:0.##} | {m.Source} |\n")));
        var table = "| designation | yield (MPa) | tensile, min. | max. | endurance | radius/thickness across the grain | along | source |\n|---|---|---|---|---|---|---|---|\n" + rows;
        if (Environment.GetEnvironmentVariable("BRACKETGEN_TABLES") is { Length: > 0 } folder)
        {
            var file = Path.Combine(folder, "profiles.md");
            var text = File.ReadAllText(file);
            var from = text.IndexOf("| designation | yield (MPa)", StringComparison.Ordinal);
            var to = text.IndexOf("\n\n", from, StringComparison.Ordinal) + 1;
            File.WriteAllText(file, text[..from] + table + text[to..]);
            return;
        }

        Assert.Contains(table, File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "docs", "profiles.md")), StringComparison.Ordinal);
    }

    // The entry of a material in the sample shop, from its designation to the next header.
    private static string Of(string designation)
    {
        var from = Text.IndexOf($"designation = \"{designation}\"", StringComparison.Ordinal);
        return Text[from..(Text.IndexOf("[[", from, StringComparison.Ordinal))];
    }
}
