using BracketGen.Geometry;
using BracketGen.SheetMetal.Bending;
using BracketGen.SheetMetal.Shops;
using BracketGen.SheetMetal.Tooling;
using BracketGen.TestSupport;

namespace BracketGen.Profiles.Tests;

/// <summary>Tools in the shop's file: what is written is given, what is left out is assumed.</summary>
public class ShopToolTests
{
    private static Shop Read(string more = "")
    {
        const string before = "[[dies]]\nopening = 12";
        var result = Samples.ReadWith(Samples.Shop, before, more + before);
        Assert.True(result.IsRead, string.Join('\n', result.Errors));
        return result.Value!.Shop;
    }

    [Fact]
    public void A_shop_file_without_tools_has_the_usual_ones()
    {
        var shop = Read();
        Assert.Equal(ToolSet.Assumed, shop.Tools);
        Assert.Equal((Evidence.Assumed, Evidence.Assumed), (shop.Tools.Punches[0].Evidence, shop.Tools.Press!.Evidence));
        Assert.Equal(new PressBrakeDie(12, 1.9), shop.Dies[0]);
        Assert.Equal((Evidence.Assumed, 88.0), (shop.Dies[0].Evidence, Math.Round(shop.Dies[0].Angle.Degrees, 9)));
        Assert.All(shop.Stock, s => Assert.Null(s.Material.MaxTensile));
    }

    [Fact]
    public void Every_kind_of_tool_is_read()
    {
        var shop = Read("""
            [[punches]]
            name = "a"
            kind = "straight"
            height = "4 in"
            angle = 30
            tip_radius = 0.8
            body_width = 16
            max_force = 600
            [[punches]]
            name = "b"
            kind = "gooseneck"
            height = 120
            angle = 85
            tip_radius = 1
            [[punches]]
            name = "c"
            kind = "own section"
            height = 100
            angle = 85
            tip_radius = 1
            body = [[8, 8], [8, 100], [-8, 100], [-8, 8]]
            [press]
            open_height = 400
            stroke = 200
            gauge_in_bend = "moves back"
            max_force = "800 kN"
            [[clamps]]
            kind = "vice"
            name = "bar"
            radius = 3
            length = 120
            [[clamps]]
            kind = "hand brake"
            name = "small"
            radius = 1
            """ + "\n");
        Punch[] meant =
        [
            Punch.Straight("a", 101.6, Angle.FromDegrees(30), 0.8, 16) with { MaxForce = 600 },
            Punch.Gooseneck("b", 120, Angle.FromDegrees(85), 1),
            Punch.WithBody("c", 100, Angle.FromDegrees(85), 1, [new(8, 8), new(8, 100), new(-8, 100), new(-8, 8)]),
        ];
        foreach (var (one, read) in meant.Zip(shop.Tools.Punches))
        {
            Assert.Equal((one.Name, one.TipRadius, one.MaxForce, one.Evidence), (read.Name, read.TipRadius, read.MaxForce, read.Evidence));
            Assert.Equal(one.Height, read.Height, 1e-9);
            Assert.Equal(one.Angle.Radians, read.Angle.Radians, 1e-12);
            Assert.Equal(one.Profile.Length, read.Profile.Length);
            Assert.All(one.Profile.Zip(read.Profile), p => Assert.Equal(0, Math.Abs(p.First.Across - p.Second.Across) + Math.Abs(p.First.Up - p.Second.Up), 1e-9));
        }

        Assert.Equal(new PressBrake { OpenHeight = 400, Stroke = 200, GaugeRetracts = true, MaxForce = 800_000, Evidence = Evidence.Given }, shop.Tools.Press);
        Assert.Equal([new BendingClamp(ClampKind.Vice, "bar", 3) { Length = 120 }, new(ClampKind.HandBrake, "small", 1)], shop.Tools.Clamps.AsEnumerable());
    }

    [Fact]
    public void The_shipped_shop_has_tools()
    {
        var job = ProfileReader.ReadJob(RepositoryRoot.PathOf("profiles", "jobs", "plover-alder-58.toml"), new DiskFileSource()).Value!;
        Assert.All(job.Shop.Dies, d => Assert.Equal(Evidence.Given, d.Evidence));
        Assert.All(job.Shop.Stock, s => Assert.NotNull(s.Material.MaxTensile));
        Assert.Equal([88, 30, 85], job.Shop.Tools.Punches.Select(p => Math.Round(p.Angle.Degrees, 9)));
        Assert.Equal((600_000, 600, Evidence.Given), (job.Shop.Tools.Press!.MaxForce, job.Shop.Tools.Press.GaugeMax, job.Shop.Tools.Press.Evidence));
    }
}
