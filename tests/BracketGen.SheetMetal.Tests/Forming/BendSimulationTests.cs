using BracketGen.Geometry;
using BracketGen.SheetMetal.Forming;
using BracketGen.SheetMetal.Patterns;
using BracketGen.SheetMetal.Tooling;

namespace BracketGen.SheetMetal.Tests.Forming;

/// <summary>Orders of bends on cases drawn by hand: the section square to the bends shows what happens.</summary>
public class BendSimulationTests
{
    private static BendResult Bend(double[] flats, double[] turns, params Punch[] punches) =>
        BendSimulation.Of(BentStrip.Of(flats, turns), BentStrip.Stock, [BentStrip.Die], BentStrip.Tools(punches));

    [Theory]
    [InlineData(90)]
    [InlineData(-90)]
    [InlineData(30)]
    [InlineData(135)]
    public void One_bend_can_always_be_made(double turn)
    {
        var step = Assert.Single(Bend([40, 50], [turn], BentStrip.Straight).Plan!.Steps);
        Assert.Equal((0, turn > 0), (step.Bend, step.TopUp));
        Assert.Equal((BentStrip.Die, BentStrip.Straight), (step.Die, step.Punch));
        Assert.Equal(GaugeKind.Edge, step.Gauge.Kind);
        Assert.True(step.Support!.Suffices());
    }

    /// <summary>
    /// Both legs at 45°, the first flange leads back at 45° from 8.5 mm in front and crosses the punch's plane 17 mm up, where the punch is 16 mm wide.
    /// </summary>
    [Fact]
    public void A_channel_narrower_than_the_punch_is_not_bent()
    {
        var result = Bend([40, 12, 40], [90, 90], BentStrip.Straight);
        Assert.Null(result.Plan);
        Assert.Equal([(Obstruction.Punch, 1, 0), (Obstruction.Punch, 0, 2)], result.Obstacles.Select(o => (o.What, o.Bend, o.Flange!.Value)));
        Assert.All(result.Obstacles, o => Assert.InRange(o.At!.Value.Degrees, 1, 92));
    }

    [Fact]
    public void A_channel_wider_than_its_flanges_is_bent() => Assert.Equal(2, Bend([25, 60, 25], [90, 90], BentStrip.Straight).Plan!.Steps.Length);

    /// <summary>The throat of the gooseneck takes the flange that the straight punch meets.</summary>
    [Fact]
    public void A_gooseneck_bends_a_deeper_channel()
    {
        Assert.Null(Bend([42, 50, 42], [90, 90], BentStrip.Straight).Plan);
        var plan = Bend([42, 50, 42], [90, 90], BentStrip.Straight, BentStrip.Gooseneck).Plan!;
        Assert.All(plan.Steps, s => Assert.Equal(BentStrip.Gooseneck, s.Punch));
    }

    [Fact]
    public void A_z_is_bent_and_turned_over_between()
    {
        var plan = Bend([40, 30, 40], [90, -90], BentStrip.Straight).Plan!;
        Assert.Equal(1, plan.TurnsOver);
        Assert.Equal(0, plan.ToolChanges);
    }

    /// <summary>A Z lower than the die's body: the first flange hangs down beside the V and meets the die.</summary>
    [Fact]
    public void A_low_z_meets_the_die()
    {
        var result = Bend([40, 10, 40], [90, -90], BentStrip.Straight);
        Assert.Null(result.Plan);
        Assert.All(result.Obstacles, o => Assert.Equal(Obstruction.Die, o.What));
    }

    [Fact]
    public void A_hat_is_bent()
    {
        var plan = Bend([30, 40, 50, 40, 30], [90, -90, -90, 90], BentStrip.Straight, BentStrip.Gooseneck).Plan!;
        Assert.Equal([0, 1, 2, 3], plan.Steps.Select(s => s.Bend).Order());
    }

    /// <summary>
    /// With the middle flange at half the bend angle and the first turned on by the whole, it crosses the punch's plane after m cos(A/2) / cos(180° - 3 A/2) of its
    /// length: 24 mm at 110°, 22 mm at 115°, 41 mm at 135°, less the bends; longer flanges cannot be bent in either order.
    /// </summary>
    [Theory]
    [InlineData(110, 45, 60)]
    [InlineData(115, 45, 60)]
    [InlineData(135, 45, 60)]
    public void What_closes_on_itself_is_not_bent(double turn, double middle, double flange)
    {
        var result = Bend([flange, middle, flange], [turn, turn], BentStrip.Straight);
        Assert.Null(result.Plan);
        Assert.Equal([Obstruction.Punch, Obstruction.Punch], result.Obstacles.Select(o => o.What));
    }

    [Fact]
    public void An_obtuse_v_does_not_take_an_acute_bend()
    {
        var result = BendSimulation.Of(
            BentStrip.Of([40, 40], [100]), BentStrip.Stock, [BentStrip.Die with { Angle = Angle.FromDegrees(88) }], BentStrip.Tools(BentStrip.Straight));
        Assert.Equal(Obstruction.DieAngle, Assert.Single(result.Obstacles).What);
        var blunt = Punch.Straight("blunt", 100, Angle.FromDegrees(88), 1, 16);
        Assert.Equal(Obstruction.NoPunch, Assert.Single(BendSimulation.Of(
            BentStrip.Of([40, 40], [100]), BentStrip.Stock, [BentStrip.Die], BentStrip.Tools(blunt)).Obstacles).What);
        Assert.Equal(Obstruction.NoPunch, Assert.Single(BendSimulation.Of(
            BentStrip.Of([40, 40], [90]), BentStrip.Stock, [BentStrip.Die], BentStrip.Tools(Punch.Straight("round", 100, Angle.FromDegrees(85), 3, 16))).Obstacles).What);
    }

    [Fact]
    public void Without_a_die_of_that_radius_there_is_no_way() => Assert.Equal(
        Obstruction.NoDie,
        Assert.Single(BendSimulation.Of(BentStrip.Of([40, 40], [90]), BentStrip.Stock, [new(16, 2.5)], BentStrip.Tools(BentStrip.Straight)).Obstacles).What);

    [Fact]
    public void Tools_have_a_limit_of_force_and_height()
    {
        var flat = BentStrip.Of([40, 40], [90]);
        BendResult With(PressBrake press) => BendSimulation.Of(flat, BentStrip.Stock, [BentStrip.Die], BentStrip.Tools(BentStrip.Straight) with { Press = press });
        var force = With(new()).Plan!.Steps[0].ForcePerLength;

        // (1 + 4 · 2/16) · 410 · 2²/16 = 153.75 N/mm (Schuler, Metal Forming Handbook).
        Assert.Equal(153.75, force, 1e-9);
        Assert.NotNull(With(new() { MaxForcePerLength = 154, MaxForce = 154 * 40 }).Plan);
        Assert.Equal(Obstruction.Force, Assert.Single(With(new() { MaxForcePerLength = 153 }).Obstacles).What);
        Assert.Equal(Obstruction.Force, Assert.Single(With(new() { MaxForce = 153 * 40 }).Obstacles).What);
        Assert.Equal(Obstruction.OpenHeight, Assert.Single(With(new() { OpenHeight = 181, Stroke = 100 }).Obstacles).What);
        Assert.Equal(Obstruction.OpenHeight, Assert.Single(With(new() { OpenHeight = 400, Stroke = 200 }).Obstacles).What);
    }

    // A square base with a flange on each side, 3 mm in from its corners.
    private static FlatPattern Pan(double flange)
    {
        const double half = 30, inset = 3;
        var proto = BentStrip.Of([40, 40], [90]).Bends[0];
        var bends = Enumerable.Range(0, 4).Select(i =>
        {
            var turn = Angle.FromDegrees(90 * i);
            return proto with { From = 0, To = i + 1, Start = new FlatPoint(half, half - inset).Rotate(turn), End = new FlatPoint(half, inset - half).Rotate(turn) };
        }).ToArray();
        var corners = bends.Reverse().SelectMany(b => new[] { b.Start, b.Start + (b.Allowance + flange) * b.Across, b.End + (b.Allowance + flange) * b.Across, b.End })
            .Select(p => p.Vector).Reverse().ToArray();
        return new() { Blank = new(Contour.Polygon(corners), []), Thickness = BentStrip.Thickness, Bends = [.. bends] };
    }

    /// <summary>A pan needs sections: flanges already up stand beside the ends of the punch. Taller than the punch, they meet the beam.</summary>
    [Fact]
    public void A_pan_is_bent_with_sections()
    {
        BendResult With(double? step, double flange) => BendSimulation.Of(
            Pan(flange), BentStrip.Stock, [BentStrip.Die], BentStrip.Tools(BentStrip.Straight) with { Press = new() { SectionStep = step } });
        Assert.Null(With(null, 15).Plan);
        var plan = With(5, 15).Plan!;
        Assert.Equal([null, null, 50, 50], plan.Steps.Select(s => s.ToolLength).Order());
        Assert.Null(With(20, 15).Plan?.Steps.FirstOrDefault(s => s.ToolLength > 54));
        Assert.Contains(With(5, 120).Obstacles, o => o.What is Obstruction.Beam or Obstruction.Punch);
    }

    /// <summary>
    /// A flange between wings of the one that stays: while it is bent the wings go down past the die, which must end beside them. The cuts that set them apart are
    /// 3 mm wide.
    /// </summary>
    [Fact]
    public void A_flange_between_wings_needs_a_short_die()
    {
        var bend = BentStrip.Of([40, 40], [90]).Bends[0] with { Relief = 3 };
        double near = 40, far = near + bend.Allowance, end = far + 40, cut = near - 3;
        var flat = new FlatPattern
        {
            Blank = new(
                Contour.Polygon(
                [
                    new(0, -25), new(70, -25), new(70, -3), new(cut, -3), new(cut, 0), new(near, 0), new(far, 0), new(end, 0),
                    new(end, 40), new(far, 40), new(near, 40), new(cut, 40), new(cut, 43), new(70, 43), new(70, 65), new(0, 65),
                ]),
                []),
            Thickness = BentStrip.Thickness,
            Bends = [bend],
        };
        BendResult With(double? step) => BendSimulation.Of(
            flat, BentStrip.Stock, [BentStrip.Die], BentStrip.Tools(BentStrip.Straight) with { Press = new() { SectionStep = step } });
        Assert.Equal(Obstruction.Die, Assert.Single(With(null).Obstacles).What);
        Assert.Equal(40, With(5).Plan!.Steps[0].ToolLength);

        // Wings 26 mm long go down by 26 sin 46° = 19 mm: not past a bed that is only 15 mm below the shoulders.
        Assert.Equal(
            Obstruction.Bed,
            Assert.Single(BendSimulation.Of(flat, BentStrip.Stock, [BentStrip.Die with { ShoulderHeight = 15 }],
                BentStrip.Tools(BentStrip.Straight) with { Press = new() { SectionStep = 5, OpenHeight = 250 } }).Obstacles.Where(o => o.What != Obstruction.Die)).What);
    }

    /// <summary>A flat plate needs no bending.</summary>
    [Fact]
    public void A_plate_has_an_empty_plan()
    {
        FlatPattern plate = BentStrip.Of([40, 40], [90]) with { Bends = [] };
        Assert.Empty(BendSimulation.Of(plate, BentStrip.Stock, [], BentStrip.Tools()).Plan!.Steps);
    }

    [Fact]
    public void The_same_part_gives_the_same_plan() => Assert.Equal(
        Bend([25, 60, 25], [90, 90], BentStrip.Straight), Bend([25, 60, 25], [90, 90], Punch.Straight("straight", 100, Angle.FromDegrees(30), 1, 16)));

    /// <summary>A vice with a bar bends what no die of the shop would; its drawing asks for no die.</summary>
    [Fact]
    public void A_vice_is_enough()
    {
        var tools = ToolSet.ViceOnly(BentStrip.Radius);
        var step = Assert.Single(BendSimulation.Of(BentStrip.Of([40, 40], [80]), BentStrip.Stock, [], tools).Plan!.Steps);
        Assert.Null(step.Die);
        Assert.Equal((ClampKind.Vice, GaugeKind.ScribedLine), (step.Clamp!.Kind, step.Gauge.Kind));
        Assert.Equal(Obstruction.Clamp, Assert.Single(BendSimulation.Of(BentStrip.Of([40, 40], [100]), BentStrip.Stock, [], tools).Obstacles).What);
        Assert.Equal(Obstruction.ClampSize, Assert.Single(BendSimulation.Of(BentStrip.Of([40, 40], [80], 200), BentStrip.Stock, [], tools).Obstacles).What);
    }
}
