using System.Collections.Immutable;
using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Study;
using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;
using BracketGen.Mechanism.Grooves;
using BracketGen.Mechanism.Motion;
using BracketGen.TestSupport;
using BracketGen.Words.Checks;
using CsCheck;
using Check = BracketGen.Design.Checks.Check;

namespace BracketGen.Design.Tests;

/// <summary>What moves and hangs against what stands: each case passed before these checks were made.</summary>
public class ObstacleTests
{
    private static readonly Job Plover = Examples.Read("plover-alder-58");
    private static readonly Lazy<Solution> Solved = new(() => Designer.Solve(Plover));

    [Fact]
    public void The_shipped_job_passes_all_of_them_on_evidence()
    {
        CheckId[] all =
        [
            CheckId.BodyDescribed, CheckId.MountNormal, CheckId.BodyClearance, CheckId.QuadrantOverlap, CheckId.QuadrantClearance, CheckId.WireOverlap,
            CheckId.WireClearance, CheckId.OuterClearance, CheckId.OuterEndClearance, CheckId.OuterMoving, CheckId.MovingParts,
        ];
        Assert.All(all, id => Assert.True(Solved.Value.Checks.Single(c => c.Id == id).Passes, id.ToString()));
    }

    [Fact]
    public void A_box_across_the_wire()
    {
        var wire = Solved.Value.Travel.Closed;
        var middle = Vector3.From(wire.From + 0.5 * wire.Straight * wire.Direction);
        var checks = WithBox(middle, 2);
        AssertFails(checks, CheckId.WireOverlap, CheckKind.Safety, "across the wire");

        // Beside it, with less than the clearance: it works, but not as wanted.
        var beside = WithBox(middle + new Vector3(0, 0, 4.5), 2);
        Assert.True(beside.Single(c => c.Id == CheckId.WireOverlap).Passes);
        AssertFails(beside, CheckId.WireClearance, CheckKind.Function, "across the wire");
        Assert.Equal(4.5 - 2 - 0.75, beside.Single(c => c.Id == CheckId.WireClearance).Value, 0.01);
    }

    [Fact]
    public void A_box_inside_the_quadrant() =>
        AssertFails(WithBox(Vector3.From(20 * Vector2.FromPolar(1, Angle.FromDegrees(100))), 2), CheckId.QuadrantOverlap, CheckKind.Safety, "across the wire");

    [Fact]
    public void A_box_where_the_quadrant_comes_only_at_wide_open() =>
        AssertFails(WithBox(Vector3.From(33 * Vector2.FromPolar(1, Angle.FromDegrees(205))), 1), CheckId.QuadrantOverlap, CheckKind.Safety, "across the wire");

    [Fact]
    public void A_box_on_the_way_of_the_outer()
    {
        var line = Solved.Value.Mechanism!.Outer!.Points(1);
        foreach (var part in (double[])[0.2, 0.5, 0.9])
        {
            AssertFails(WithBox(line[(int)(part * line.Length)].Vector, 3), CheckId.OuterClearance, CheckKind.Function, "across the wire");
        }
    }

    // The outer comes out of it: that is how it is mounted, not an obstacle.
    [Fact]
    public void The_panel_that_the_outer_comes_out_of_is_none()
    {
        var bulkhead = Plover.Bulkhead!;
        var panel = new KeepOutBox("panel", bulkhead.Point - new Vector3(40, 200, 200), bulkhead.Point + new Vector3(0, 200, 200));
        Assert.True(Again(Plover with { Body = Plover.Body with { KeepOuts = Plover.Body.KeepOuts.Add(panel) } }).Single(c => c.Id == CheckId.OuterClearance).Passes);
    }

    [Fact]
    public void A_box_where_the_adjuster_is()
    {
        var placement = Solved.Value.Placement!;
        AssertFails(WithBox((placement.Seat + 10 * placement.Direction).Vector, 2), CheckId.OuterEndClearance, CheckKind.Function, "across the wire");
    }

    [Fact]
    public void A_spring_in_the_way_of_the_bracket()
    {
        var bracket = Solved.Value.Bracket!;
        var at = bracket.Folded.Fold(bracket.Stop.Centre + new Vector2(0, 8), bracket.Stock.Thickness / 2);
        var body = Plover.Body with { SpringRooms = [new KeepOutBox("outer spring", at - new Vector3(2, 2, 2), at + new Vector3(2, 2, 2))] };
        AssertFails(Again(Plover with { Body = body }), CheckId.MovingParts, CheckKind.Safety, "outer spring");
    }

    [Fact]
    public void The_search_goes_round_a_box_across_the_wire()
    {
        var placement = Solved.Value.Placement!;
        var box = Box((placement.Seat - 12 * placement.Direction).Vector, 1);
        var other = Designer.Solve(Plover with { Body = Plover.Body with { KeepOuts = Plover.Body.KeepOuts.Add(box) } });
        Assert.NotEmpty(other.Offers);
        Assert.True(other.Checks.Single(c => c.Id == CheckId.WireOverlap).Passes);
        Assert.NotEqual(placement.Leaving, other.Placement!.Leaving);
    }

    [Fact]
    public void A_casting_that_nobody_described_is_not_known()
    {
        var checks = Again(Plover with { Body = Plover.Body with { BoreAxis = null } });
        var described = checks.Single(c => c.Id == CheckId.BodyDescribed);
        Assert.Equal(CheckState.NotKnown, described.State);
        Assert.Contains("bore_axis", described.Consequence(), StringComparison.Ordinal);
        Assert.DoesNotContain(checks, c => c.Id == CheckId.MountNormal);
        Assert.Contains(described, Verdict.Of(checks.Where(c => !c.Fails)).Deciding);
    }

    [Fact]
    public void Keep_outs_that_describe_the_whole_casting_stand_alone()
    {
        var checks = Again(Plover with { Body = Plover.Body with { Shape = BodyShape.KeepOuts } });
        Assert.True(checks.Single(c => c.Id == CheckId.BodyDescribed).Passes);
        Assert.DoesNotContain(checks, c => c.Id == CheckId.BodyClearance);
        Assert.DoesNotContain(checks, c => c.Pair is { Other: Thing.Boss or Thing.Casting });
    }

    [Theory]
    [InlineData("plover-alder-58")]
    [InlineData("dunlin-rowan-64")]
    [InlineData("whimbrel-hornbeam-70")]
    public void A_normal_that_points_into_the_casting_is_found(string name)
    {
        var body = Examples.Read(name).Body;
        Assert.False(BodyChecks.PointsIntoBody(body));
        var turned = body with { Mount = body.Mount with { Plane = new(body.Mount.Plane.Point, -body.Mount.Plane.Normal) } };
        Assert.True(BodyChecks.PointsIntoBody(turned));
        Assert.True(BodyChecks.Of(turned).Single(c => c.Id == CheckId.MountNormal).Fails);

        // The same where the keep-outs describe the casting: a block whose face at z = -24 carries the holes.
        var face = new KeepOutBox("casting", new(-200, -200, -200), new(200, 200, -24));
        var flat = body with { Shape = BodyShape.KeepOuts, KeepOuts = [face], Mount = new(new(new(0, 0, -24), new(0, 0, 1)), [.. body.Mount.Holes.Select(h => h with { At = new(h.At.X, h.At.Y, -24) })]) };
        Assert.False(BodyChecks.PointsIntoBody(flat));
        Assert.True(BodyChecks.PointsIntoBody(flat with { Mount = flat.Mount with { Plane = new(flat.Mount.Plane.Point, new(0, 0, -1)) } }));
    }

    // The rods against the wire itself at many more openings than there are rods: no point of the wire that is clear of the quadrant lies outside them.
    [Fact]
    public void Between_the_steps_of_the_sweep_no_wire_is_missed() => Gen.Select(Gen.Double[18, 40], Gen.Double[0, 8], Gen.Double[-180, 180], Gen.Double[30, 120], Gen.Double[60, 90])
        .Check(LongRun.Of(200), drawn =>
    {
        var (radius, offset, direction, straight, rotation) = drawn;
        var quadrant = new Quadrant
        {
            Groove = new EccentricGroove(radius, offset, Angle.FromDegrees(direction)), Rotation = new(Angle.FromDegrees(rotation)), Pocket = new(new Angle(-0.4)),
            GrooveExtent = Angle.FromDegrees(rotation + 65), GrooveWidth = 3, SlotWidth = 2, OuterRadius = radius + offset + 3, Thickness = 9, HubRadius = 10,
        };
        if (StopPlacement.At(quadrant, straight + quadrant.Groove.ArcBetween(quadrant.PocketNormal, new(1.7)), 2, new(1.7)) is not { } placement
            || Travel.TrySolve(quadrant, placement.Seat.XY, 2, 60) is not { } travel)
        {
            return;
        }

        const double wire = 1.5;
        var rods = SweptWire.Of(quadrant, travel, placement.Seat, wire);
        for (var i = 0; i <= 997; i++)
        {
            var taut = TautWire.Solve(quadrant, placement.Seat.XY, i / 997.0 * travel.Rotation);
            for (var j = 0; j <= 20; j++)
            {
                var at = Vector3.From(taut.From + j / 20.0 * taut.Straight * taut.Direction);
                if (at.XY.Length > quadrant.OuterRadius)
                {
                    Assert.True(rods.Min(r => MovingParts.SegmentDistance(new(at), r.From, r.To) - r.Radius) <= -wire / 2 + 1e-9, $"opening {i}, {at}");
                }
            }
        }
    });

    // Points of a swept quadrant against the signed distance of a box, both by plain sampling: the gap is never above what is found.
    [Fact]
    public void Gaps_of_the_quadrant_are_those_of_a_dense_sample() => Gen.Select(Gen.Double[-60, 60], Gen.Double[-60, 60], Gen.Double[-20, 20], Gen.Double[1, 8]).Check(LongRun.Of(100), drawn =>
    {
        var (x, y, z, half) = drawn;
        var body = Plover.Body;
        var box = Box(new(x, y, z), half);
        var moving = new MovingParts(body.Quadrant, Plover.Vehicle.Cable.Fitting);
        var gap = moving.Solids.Min(s => SolidGap.Between(s, box.Solid));

        // Nearest point of the box to the swept space, on a grid of the box.
        const int count = 12;
        double Along(double middle, int i) => middle - half + 2 * half * i / count;
        var sampled = Enumerable.Range(0, (count + 1) * (count + 1) * (count + 1))
            .Min(i => moving.DistanceTo(new(Along(x, i % (count + 1)), Along(y, i / (count + 1) % (count + 1)), Along(z, i / (count + 1) / (count + 1)))));
        var step = half / count * Math.Sqrt(3);
        if (sampled > step)
        {
            Assert.InRange(sampled - gap, -1e-6, step);
        }
        else if (sampled < 0)
        {
            Assert.True(gap < 0, $"gap {gap}, sampled {sampled}");
        }
    });

    [Fact]
    public void The_tube_holds_the_route_between_its_points()
    {
        var route = Solved.Value.Mechanism!.Outer!.Shortest!;
        // Steps shorter than the arcs: a bend between two points alone does not show. The program takes 8 mm.
        foreach (var step in (double[])[3, 8, 15])
        {
            var tube = OuterTube.Of([.. route.Points(step).Select(p => new ThrottlePoint(p))], route.Leaving, route.Arriving, 2.5, 0, double.PositiveInfinity);
            for (double along = 0; along <= route.Length; along += 0.37)
            {
                var at = route.At(along).Point;
                var outside = tube.Min(p => MovingParts.SegmentDistance(new(at), p.From, p.To) - p.Radius) + 2.5;
                Assert.True(outside <= 1e-9, $"step {step}, {along} of {route.Length} mm, bends {route.FirstBend} and {route.LastBend}: {outside} mm outside");
            }

            // And is not much thicker, with fewer pieces than points.
            Assert.True(step > 3 || tube.Length < route.Length / step / 2);
            Assert.All(tube, p => Assert.InRange(p.Radius, 2.5, 2.5 + Math.Max(0.3, step * step / route.Radius / 2) + 1e-9));
        }
    }

    private static KeepOutBox Box(Vector3 middle, double half) => new("across the wire", new(middle - half * new Vector3(1, 1, 1)), new(middle + half * new Vector3(1, 1, 1)));

    // The same bracket with a box more: what its checks say then.
    private static ImmutableArray<Check> WithBox(Vector3 middle, double half) =>
        Again(Plover with { Body = Plover.Body with { KeepOuts = Plover.Body.KeepOuts.Add(Box(middle, half)) } });

    private static ImmutableArray<Check> Again(Job job) =>
        GivenBracket.On(job, Solved.Value.Bracket!, Solved.Value.Bracket!.Folded.Flanges[0])!.Checks;

    private static void AssertFails(ImmutableArray<Check> checks, CheckId id, CheckKind kind, string name)
    {
        var check = checks.Single(c => c.Id == id);
        Assert.True(check.Fails, $"{check.Code}: {check.Value}");
        Assert.Equal(kind, check.Kind);
        Assert.Equal(name, check.Subject);
        Assert.Contains(name, check.Title(), StringComparison.Ordinal);
    }
}
