using BracketGen.Design.Checks;
using BracketGen.Design.Search;
using BracketGen.Design.Study;
using BracketGen.Drawing.Sheet;
using BracketGen.Drawing.ShopDrawing;
using BracketGen.Geometry;
using BracketGen.Profiles;
using BracketGen.SheetMetal.Forming;
using BracketGen.TestSupport;

namespace BracketGen.Drawing.Tests.ShopDrawing;

/// <summary>The main job made in a workshop that has a vice with bars and no press brake.</summary>
public class ViceShopTests
{
    private static readonly Lazy<Solution> Made = new(() =>
    {
        var shop = ProfileReader.ReadShop(RepositoryRoot.PathOf("profiles", "shops", "saltmarsh-vice.toml"), new DiskFileSource()).Value!;
        var job = ExampleSolutions.All.Single(s => s.Name == "plover-alder-58").Solution.Job;
        return Designer.Solve(job with { Shop = shop, Preferences = job.Preferences with { Materials = [] } }, SearchEffort.Whole);
    });

    [Fact]
    public void It_is_bent_over_a_bar_to_its_scribed_lines()
    {
        var bracket = Made.Value.Bracket!;
        Assert.Equal(VerdictKind.Passes, Made.Value.Verdict.Kind);
        Assert.Null(bracket.Die);
        Assert.NotEmpty(bracket.Flat.Bends);
        Assert.All(bracket.Plan!.Steps, s => Assert.Equal(bracket.Flat.Bends[s.Bend].InsideRadius, s.Clamp!.Radius));
        Assert.All(bracket.Plan.Steps, s => Assert.Equal(GaugeKind.ScribedLine, s.Gauge.Kind));
        Assert.Contains(Made.Value.Checks, c => c is { Id: CheckId.BendOrder, Passes: true });
        Assert.DoesNotContain(Made.Value.Checks, c => c.Id is CheckId.BendGauge or CheckId.DieShoulders or CheckId.HoleOverDie or CheckId.ShortestFlange);
    }

    [Fact]
    public void The_drawing_asks_for_no_die_and_the_template_has_the_lines_to_scribe()
    {
        var pages = BracketDrawing.Compose(Made.Value, DrawingOptions.Standard);
        Assert.All(pages, p => Assert.Empty(SheetAudit.Check(p)));
        var texts = pages.SelectMany(p => p.Items).OfType<TextItem>().Select(t => t.Text).ToList();
        Assert.DoesNotContain(texts, t => t.Contains("Die") || t.Contains(" die") || t.Contains("Punch") || t.Contains("punch"));
        Assert.Contains(texts, t => t == "Bent over");

        // Two lines for each bend, as long as it and its allowance apart, on the full-size sheets alone.
        var bends = Made.Value.Bracket!.Flat.Bends;
        var lines = pages.Where(p => !p.Framed).SelectMany(p => p.Items).OfType<Stroke>().Where(s => s.Kind == LineKind.Tangent).Select(s => (LineSegment)s.Segment).ToList();
        Assert.Equal(2 * bends.Length, lines.Count);
        for (var i = 0; i < bends.Length; i++)
        {
            Assert.All(lines[(2 * i)..(2 * i + 2)], l => Assert.Equal(bends[i].Length, l.Length, 1e-9));
            Assert.Equal(bends[i].Allowance, lines[2 * i + 1].DistanceTo(lines[2 * i].PointAt(0.5)), 1e-9);
        }

        Assert.DoesNotContain(BracketDrawing.Compose(ExampleSolutions.First, DrawingOptions.Standard).Where(p => !p.Framed).SelectMany(p => p.Items), i => i is Stroke { Kind: LineKind.Tangent });
    }
}
