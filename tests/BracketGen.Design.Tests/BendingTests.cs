using BracketGen.Design.Checks;
using BracketGen.Design.Part;
using BracketGen.Design.Search;
using BracketGen.Design.Study;
using BracketGen.Geometry;
using BracketGen.SheetMetal.Forming;
using BracketGen.SheetMetal.Shops;
using BracketGen.SheetMetal.Tooling;
using BracketGen.TestSupport;

namespace BracketGen.Design.Tests;

/// <summary>The brackets of the shipped jobs between the tools of the shipped shop.</summary>
public class BendingTests
{
    public static TheoryData<string> Names => Examples.Names;

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_bracket_offered_can_be_bent(string name)
    {
        var job = Examples.Read(name);
        var solution = Designer.Solve(job);
        foreach (var bracket in solution.Offers.Select(o => o.Candidate.Bracket).Append(solution.Bracket!))
        {
            var result = BendSimulation.Of(bracket.Folded, bracket.Stock, job.Shop);
            Assert.True(result.Plan is not null, string.Join("; ", result.Obstacles));
            Assert.All(result.Plan.Steps, s => Assert.Equal(bracket.Die, s.Die));
            var checks = BendChecks.Of(bracket, job.Shop).ToArray();
            Assert.True(checks[0] is { Id: CheckId.BendOrder, Passes: true });
            Assert.Equal(bracket.Flat.Bends.Length, checks.Count(c => c.Id == CheckId.DieShoulders));
            Assert.Equal(bracket.Flat.Bends.Length, checks.Count(c => c.Id == CheckId.BendGauge));

            // The mirror image is bent the same way round the other way.
            var mirrored = BendSimulation.Of(bracket.Flat.Mirrored(), bracket.Stock, job.Shop.Dies, job.Shop.Tools).Plan!;
            Assert.Equal(result.Plan.Steps.Select(s => (s.Bend, s.TopUp, s.Gauge.Kind)), mirrored.Steps.Select(s => (s.Bend, s.TopUp, s.Gauge.Kind)));
            Assert.All(result.Plan.Steps.Zip(mirrored.Steps), p => Assert.Equal(p.First.Support!.Share, p.Second.Support!.Share, 1e-3));
        }
    }

    /// <summary>Mounts at random: each bracket that the search takes is bent by a plan, carried by the die and placed by the gauge, and says so.</summary>
    [Fact]
    public void Brackets_for_random_mounts_can_be_bent()
    {
        // What is offered is soon found; where nothing is, looking at every shape shows nothing of bending.
        var effort = SearchEffort.WithoutStrength with { MaxShapes = 300 };
        var shop = Examples.Read("plover-alder-58").Shop;
        var taken = 0;
        RandomJobs.Job.Check(LongRun.Of(200), drawn =>
        {
            var job = drawn with { Shop = shop, Preferences = drawn.Preferences with { Materials = [] } };
            if (BracketSearch.Cheapest(job.OpeningCounterClockwise(), effort).Best?.Candidate.Bracket is { Flat.Bends.IsEmpty: false } bracket)
            {
                taken++;
                var plan = bracket.Plan!;
                Assert.Equal(Enumerable.Range(0, bracket.Flat.Bends.Length), plan.Steps.Select(s => s.Bend).Order());
                Assert.All(plan.Steps, s => Assert.True(s.Support!.Suffices()));
                Assert.All(plan.Steps, s => Assert.NotEqual(GaugeKind.ScribedLine, s.Gauge.Kind));
                Assert.All(BendChecks.Of(bracket, shop), c => Assert.True(c.Passes, c.Code));
            }
        });
        Assert.True(taken > LongRun.AtLeast(20), $"only {taken} bent brackets");
    }

    /// <summary>A box that closes on itself: two bends to the same side with a short flange between them leave no room for a punch, whichever comes first.</summary>
    [Theory]
    [InlineData(115)]
    [InlineData(110)]
    [InlineData(135)]
    public void Brackets_that_close_on_themselves_fail(double degrees)
    {
        var job = Examples.Read("plover-alder-58");
        var plain = Designer.Solve(job, SearchEffort.WithoutStrength).Bracket!;
        var bend = plain.Flat.Bends[0] with { Turn = Angle.FromDegrees(degrees), Start = new(0, 0), End = new(30, 0), From = 0, To = 1 };
        double width = bend.Allowance, middle = 25;
        var second = bend with { From = 1, To = 2, Start = new(0, width + middle), End = new(30, width + middle) };
        var outline = Contour.Polygon([new(0, -60), new(30, -60), new(30, 2 * width + middle + 60), new(0, 2 * width + middle + 60)]);
        var closed = plain with { Folded = new(new() { Blank = new(outline, []), Thickness = plain.Flat.Thickness, Bends = [bend, second] }, Frame.Identity), Plan = null };
        Assert.True(OrderOf(closed, job.Shop with { Tools = job.Shop.Tools with { Punches = [.. job.Shop.Tools.Punches.Where(p => p.IsSymmetric)] } }).Fails);
    }

    /// <summary>Tools that nobody described prove nothing but one bend that any shop makes.</summary>
    [Fact]
    public void Assumed_tools_leave_the_order_open()
    {
        var job = Examples.Read("dunlin-hornbeam-70");
        var shop = job.Shop with { Tools = ToolSet.Assumed, Dies = [.. job.Shop.Dies.Select(d => new SheetMetal.Bending.PressBrakeDie(d.Opening, d.InsideRadius))] };
        var bracket = Designer.Solve(job).Bracket!;
        Assert.InRange(bracket.Flat.Bends[0].Turn.Magnitude.Degrees, 92, 135);
        Assert.Equal(CheckState.NotKnown, OrderOf(bracket, shop).State);
        var square = bracket with { Folded = new(bracket.Flat with { Bends = [bracket.Flat.Bends[0] with { Turn = Angle.FromDegrees(60) }] }, Frame.Identity) };
        Assert.Equal(CheckState.Passes, OrderOf(square, shop).State);
        Assert.Equal(CheckState.Fails, OrderOf(bracket, job.Shop with { Tools = job.Shop.Tools with { Punches = [Punch.Straight("a", 100, Angle.FromDegrees(88), 1, 16)] } }).State);
    }

    private static Check OrderOf(Bracket bracket, Shop shop) => BendChecks.Of(bracket, shop).First();
}
