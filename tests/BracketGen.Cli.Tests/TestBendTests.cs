using System.Collections.Immutable;
using BracketGen.Cli.Terminal;
using BracketGen.Profiles;
using BracketGen.SheetMetal.Shops;

namespace BracketGen.Cli.Tests;

/// <summary>Test strips on the command line, and k in the shop's file.</summary>
public class TestBendTests
{
    // BA = 100 - 51.9 - 51.9 + 2 (2.6 + 2) = 5.4; K = (5.4/(π/2) - 2.6)/2 = 0.4189. The second is 0.05 mm longer in one leg: 0.0159 less.
    private const string One = "100, 51.9, 51.9, 90, 2.6", Other = "100, 51.9, 51.95, 90, 2.6";

    private static ImmutableArray<TestBend> Bends(string shop) => ProfileReader.ReadShop(shop, new DiskFileSource()).Value!.TestBends;

    private static string Shop(Workplace place) => place.PathOf("profiles", "shops", "saltmarsh-fabrication.toml");

    [Fact]
    public void Two_strips_give_k_and_leave_the_file_alone()
    {
        using var place = new Workplace();
        var before = File.ReadAllText(Shop(place));
        var result = BracketGenProgram.Run("test-bend", Shop(place), "--material", "DC01", "--thickness", "2", "--die", "16", "--strip", One, "--strip", Other);
        Assert.Equal(ExitCode.Pass, result.ExitCode);
        var said = ScreenText.OneLine(result.Output);
        Assert.Contains("K = 0.411 ± 0.032", said, StringComparison.Ordinal);
        Assert.Contains("the strips differ by 0.016", said, StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllText(Shop(place)));
    }

    [Fact]
    public void K_takes_the_place_of_the_one_before()
    {
        using var place = new Workplace();
        var (shop, before) = (Shop(place), File.ReadAllText(Shop(place)));
        var result = BracketGenProgram.Run(
            "test-bend", shop, "--material", "DC01", "--thickness", "0.2 cm", "--die", "16 mm", "--strip", One, "--strip", Other, "--write");
        Assert.Equal(ExitCode.Pass, result.ExitCode);
        Assert.Equal(before.Replace("k = 0.41\n", "k = 0.411\n", StringComparison.Ordinal), File.ReadAllText(shop));
    }

    [Fact]
    public void A_new_sheet_gets_a_test_bend_of_its_own()
    {
        using var place = new Workplace();
        var (shop, before) = (Shop(place), Bends(Shop(place)));
        var result = BracketGenProgram.Run(
            "test-bend", shop, "--material", "1.4301", "--thickness", "3", "--die", "24", "--strip", "100, 53, 53.1, 90, 3.7", "--strip", "100, 53.1, 53.1, 90, 3.8, 3.02", "--write");
        Assert.Equal(ExitCode.Pass, result.ExitCode);
        var after = Bends(shop);
        Assert.Equal(before.AsEnumerable(), after.Take(before.Length));
        Assert.Equal(("1.4301", 3, 3.8), (after[^1].Material, after[^1].Thickness, after[^1].InsideRadius));

        // BA = 7.5 and 7.44: K = (7.5/1.5708 - 3.8)/3 = 0.3249 and (7.44/1.5708 - 3.8)/3.02 = 0.3101.
        Assert.Equal(0.317, after[^1].K, 1e-3);
    }

    // A shop with a vice: the radius is the bar's. BA = 100 - 53.4 - 53.4 + 2 (4 + 3) = 7.2; K = (7.2/(π/2) - 4)/3 = 0.1946.
    [Fact]
    public void A_strip_bent_over_a_bar_counts_for_its_radius()
    {
        using var place = new Workplace();
        var shop = place.PathOf("profiles", "shops", "saltmarsh-vice.toml");
        string[] strips = ["--strip", "100, 53.4, 53.4, 90, 4", "--strip", "100, 53.4, 53.4, 90, 4"];
        string[] sheet = ["test-bend", shop, "--material", "S235JR", "--thickness", "3"];
        var result = BracketGenProgram.Run([.. sheet, "--clamp", "bar R4", .. strips, "--write"]);
        Assert.Equal(ExitCode.Pass, result.ExitCode);
        Assert.Equal(0.195, Bends(shop).Single(b => b is { Material: "S235JR", InsideRadius: 4 }).K, 1e-9);
        foreach (var (wrong, told) in new (string[], string)[]
        {
            (["--clamp", "bar R9"], "It has: bar R4, bar R5"), (["--die", "16"], "no die with an opening"), ([], "either --die"), (["--die", "16", "--clamp", "bar R4"], "either --die"),
        })
        {
            var refused = BracketGenProgram.Run([.. sheet, .. wrong, .. strips]);
            Assert.Equal(ExitCode.BadInput, refused.ExitCode);
            Assert.Contains(told, ScreenText.OneLine(refused.Errors), StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData(ExitCode.NotProven, "second strip", "DC01", "16", One)]
    [InlineData(ExitCode.CheckFailed, "differ by more", "DC01", "16", One, "100, 52.9, 51.9, 90, 2.6")]
    [InlineData(ExitCode.CheckFailed, "between 0 and 0.5", "DC01", "16", "100, 50.9, 51.9, 90, 2.6", "100, 50.9, 51.9, 90, 2.6")]
    [InlineData(ExitCode.BadInput, "does not stock DC02", "DC02", "16", One, Other)]
    [InlineData(ExitCode.BadInput, "no die with an opening of 17.0 mm", "DC01", "17", One, Other)]
    [InlineData(ExitCode.BadInput, "with commas between", "DC01", "16", "100, 51.9, 51.9, 90")]
    [InlineData(ExitCode.BadInput, "from 5 to 160°", "DC01", "16", "100, 51.9, 51.9, 190, 2.6")]
    [InlineData(ExitCode.BadInput, "--die was given as '16 N'", "DC01", "16 N", One)]
    public void What_cannot_be_is_said_and_not_written(int code, string told, string material, string die, params string[] strips)
    {
        using var place = new Workplace();
        var before = File.ReadAllText(Shop(place));
        var result = BracketGenProgram.Run(["test-bend", Shop(place), "--material", material, "--thickness", "2", "--die", die, .. strips.SelectMany(s => new[] { "--strip", s }), "--write"]);
        Assert.Equal(code, result.ExitCode);
        Assert.Contains(told, ScreenText.OneLine(result.Output + result.Errors), StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllText(Shop(place)));
    }

    /// <summary>A radius that is not the die's is told, and K counts for the die's.</summary>
    [Fact]
    public void Another_radius_is_told()
    {
        using var place = new Workplace();
        var result = BracketGenProgram.Run("test-bend", Shop(place), "--material", "DC01", "--thickness", "2", "--die", "16", "--strip", "100, 51.9, 51.9, 90, 3.2", "--strip", "100, 51.9, 51.95, 90, 3.2");
        Assert.Equal(ExitCode.Pass, result.ExitCode);
        Assert.Contains("K = 0.411", ScreenText.OneLine(result.Output), StringComparison.Ordinal);
        Assert.Contains("measured as 3.200 mm; the shop's file has 2.600 mm", ScreenText.OneLine(result.Output), StringComparison.Ordinal);
    }
}
