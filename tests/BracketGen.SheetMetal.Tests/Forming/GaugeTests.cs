using BracketGen.Geometry;
using BracketGen.SheetMetal.Forming;
using BracketGen.SheetMetal.Patterns;
using BracketGen.SheetMetal.Tooling;

namespace BracketGen.SheetMetal.Tests.Forming;

/// <summary>What a bend is placed by.</summary>
public class GaugeTests
{
    private static BackGauge Of(FlatPattern flat, PressBrake? press = null, int step = 0) =>
        BendSimulation.Of(flat, BentStrip.Stock, [BentStrip.Die], BentStrip.Tools(BentStrip.Straight) with { Press = press ?? new() }).Plan!.Steps[step].Gauge;

    private static FlatPattern With(FlatPattern flat, params Vector2[] corners) => flat with { Blank = new(Contour.Polygon(corners), []) };

    /// <summary>The far edge of a strip: its flat length and half the allowance from the middle of the bend, the fingers at either end of 40 mm.</summary>
    [Fact]
    public void A_straight_end_is_set_against_both_fingers()
    {
        var flat = BentStrip.Of([40, 50], [90]);
        var gauge = Of(flat);
        Assert.Equal((GaugeKind.Edge, 40.0), (gauge.Kind, gauge.Span));
        Assert.Equal(50 + flat.Bends[0].Allowance / 2, gauge.Fingers[0].Distance, 1e-9);
        Assert.Equal([5, 35], gauge.Fingers.Select(f => Math.Round(f.Along, 9)));
        Assert.Equal(0.1, gauge.PlusMinus);
        Assert.Equal(Math.Atan2(0.2, 40), gauge.Tilt.Radians, 1e-12);
    }

    /// <summary>Edges nearer than half the die's body, or farther than the gauge goes, are no use: then the part lies the other way round, or goes by a line.</summary>
    [Fact]
    public void The_edge_must_be_in_reach()
    {
        var flat = BentStrip.Of([40, 12], [90]);
        Assert.Equal(40 + flat.Bends[0].Allowance / 2, Of(flat).Fingers[0].Distance, 1e-9);
        Assert.Equal(GaugeKind.ScribedLine, Of(flat, new() { GaugeMax = 40 }).Kind);
        Assert.Equal(GaugeKind.ScribedLine, Of(BentStrip.Of([12, 12], [90])).Kind);
        Assert.Equal(GaugeKind.Edge, Of(BentStrip.Of([12, 12], [90]), new() { FingerDepth = 0 }).Kind);
        Assert.Equal(GaugeKind.ScribedLine, Of(flat, new() { FingerWidth = 41 }).Kind);
    }

    /// <summary>A step in the end: the farther half hides nothing, the nearer half lies beside it; the longer one wins.</summary>
    [Fact]
    public void A_step_leaves_the_longer_edge()
    {
        var flat = BentStrip.Of([12, 60], [90]);
        var end = 12 + flat.Bends[0].Allowance + 60;
        var gauge = Of(With(flat, new(0, 0), new(end - 10, 0), new(end - 10, 25), new(end, 25), new(end, 40), new(0, 40)));
        Assert.Equal(60 - 10 + flat.Bends[0].Allowance / 2, gauge.Fingers[0].Distance, 1e-9);
        Assert.InRange(gauge.Span, 22, 25);
    }

    /// <summary>An inside edge behind which the flange goes on cannot be reached.</summary>
    [Fact]
    public void A_hidden_edge_is_none()
    {
        var flat = BentStrip.Of([12, 60], [90]);
        double near = 12 + flat.Bends[0].Allowance, end = near + 60;

        // A slot from the side: its near wall faces the gauge, but the metal beyond it is in the way. The end itself is pointed.
        var gauge = Of(With(flat, new(0, 0), new(near + 20, 0), new(near + 20, 30), new(near + 35, 30), new(near + 35, 0), new(end, 20), new(near + 35, 40), new(0, 40)));
        Assert.Equal(GaugeKind.ScribedLine, gauge.Kind);
    }

    /// <summary>Two round lobes, of 15 mm radius, 30 mm apart.</summary>
    [Fact]
    public void Round_ends_give_two_points()
    {
        var flat = BentStrip.Of([12, 40], [90], 60);
        double near = 12 + flat.Bends[0].Allowance, mid = near + 25;
        var outline = new Contour(
        [
            new LineSegment(new(0, 0), new(mid, 0)), new ArcSegment(new(mid, 15), 15, -Angle.Right, Angle.Straight),
            new ArcSegment(new(mid, 45), 15, -Angle.Right, Angle.Straight), new LineSegment(new(mid, 60), new(0, 60)), new LineSegment(new(0, 60), new(0, 0)),
        ]);
        var gauge = Of(flat with { Blank = new(outline, []) });
        Assert.Equal((GaugeKind.TwoPoints, 30.0), (gauge.Kind, Math.Round(gauge.Span, 6)));
        Assert.All(gauge.Fingers, f => Assert.Equal(40 + flat.Bends[0].Allowance / 2, f.Distance, 1e-6));
    }

    /// <summary>A flange that stands square is gauged on its outside: flat length, radius and thickness beyond the bend's end.</summary>
    [Fact]
    public void A_standing_flange_is_gauged_on_its_outside()
    {
        var flat = BentStrip.Of([10, 40, 12], [90, 90]);
        var gauge = BendSimulation.Of(flat, BentStrip.Stock, [BentStrip.Die], BentStrip.Tools(BentStrip.Straight)).Plan!.Steps[1].Gauge;
        Assert.Equal((GaugeKind.Flange, 40.0), (gauge.Kind, gauge.Span));
        Assert.Equal(40 + flat.Bends[0].Allowance / 2 + BentStrip.Radius + BentStrip.Thickness, gauge.Fingers[0].Distance, 1e-6);
    }

    [Fact]
    public void A_scribed_line_is_less_sure()
    {
        var line = new BackGauge(GaugeKind.ScribedLine, [], 40);
        Assert.Equal(0.5, line.PlusMinus);
        Assert.Equal(Math.Atan2(1, 40), line.Tilt.Radians, 1e-12);
    }
}
