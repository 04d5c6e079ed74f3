using BracketGen.Geometry;
using BracketGen.Profiles.Errors;
using BracketGen.SheetMetal.Shops;
using BracketGen.SheetMetal.Tooling;

namespace BracketGen.Profiles.Tests;

/// <summary>A shop that has no press brake: what it must say, and what it may not.</summary>
public class ViceShopTests
{
    private const string File = "shops/saltmarsh-vice.toml";

    private static ProfileResult<Shop> Read(string text) => ProfileReader.ReadShop(File, MemoryFileSource.Empty.With(File, text));

    [Fact]
    public void A_vice_with_bars_is_a_shop()
    {
        var shop = Read(Examples.Texts[File]).Value!;
        Assert.Empty(shop.Dies);
        Assert.Null(shop.Tools.Press);
        Assert.Empty(shop.Tools.Punches);
        Assert.All(shop.Tools.Clamps, c => Assert.Equal((ClampKind.Vice, Evidence.Given), (c.Kind, c.Evidence)));

        // A strip bent over a bar is a test bend like one from a die.
        Assert.All(shop.TestBends, b => Assert.Contains(shop.Tools.Clamps, c => c.Radius == b.InsideRadius));
    }

    [Fact]
    public void A_shop_has_dies_or_clamps()
    {
        var text = Examples.Texts[File];
        var clamps = text.IndexOf("[[clamps]]", StringComparison.Ordinal);
        var problem = Assert.Single(Read(text[..clamps]).Errors).Problem;
        Assert.Equal("dies or clamps", string.Join(" or ", Assert.IsType<AlternativeMissing>(problem).Keys));
        Assert.False(Read(text[..clamps] + "clamps = []\n").IsRead);
    }

    [Theory]
    [InlineData("[press]\nopen_height = 320\nstroke = 180\n", "press")]
    [InlineData("[[punches]]\nname = \"a\"\nkind = \"straight\"\nheight = 100\nangle = 88\ntip_radius = 1\nbody_width = 16\n", "punches")]
    public void A_press_brake_needs_a_die(string more, string key)
    {
        var error = Assert.Single(Read(Examples.Texts[File] + "\n" + more).Errors);
        Assert.Equal((key, new Contradiction(Contradictory.PressWithoutDies)), (error.Key, error.Problem));
    }
}
