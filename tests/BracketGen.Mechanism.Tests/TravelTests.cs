using BracketGen.Geometry;
using BracketGen.TestSupport;
using CsCheck;

namespace BracketGen.Mechanism.Tests;

public class TravelTests
{
    private static StopPlacement Placed(Quadrant quadrant, double leavingDegrees, double shift = 0) =>
        StopPlacement.At(quadrant, 180, 2, Angle.FromDegrees(leavingDegrees), shift)!;

    /// <summary>R = 31.5 mm, 82°: 31.5 · 82 π/180 = 45.08185 mm of pull.</summary>
    [Fact]
    public void A_round_quadrant_needs_the_arc()
    {
        var travel = Travel.Solve(Cases.Alder, Placed(Cases.Alder, 130).Seat.XY, 2, 48);
        Assert.Equal(45.08185, travel.PullToWideOpen, 1e-4);
        Assert.Equal(48 - 2 - 45.08185, travel.OverTravel, 1e-4);
        Assert.True(travel.ReachesWideOpen);
        Assert.Equal(82, travel.Reached.Degrees, 1e-9);
        Assert.Equal(2.0 / 48, travel.PedalAtFirstMove, 1e-12);
        Assert.Equal(47.08185 / 48, travel.PedalAtWideOpen, 1e-6);
        Assert.Equal(31.5, travel.LeastArm, 1e-12);
        Assert.Equal(0, travel.Wander.Radians, 1e-12);
    }

    /// <summary>
    /// On an eccentric circle the wire's direction wanders: φ(θ) = polar(stop - c(θ)) - acos(ρ/|stop - c(θ)|), largest less smallest.
    /// </summary>
    [Fact]
    public void An_eccentric_quadrant_makes_the_wire_wander()
    {
        var quadrant = Cases.Alder with { Groove = new EccentricGroove(30, 8, new(0.9)) };
        var seat = Placed(quadrant, 130).Seat.XY;
        var directions = Enumerable.Range(0, 2001).Select(i =>
        {
            var centre = Vector2.FromPolar(8, new Angle(0.9) + i / 2000.0 * Angle.FromDegrees(82));
            var from = seat - centre;
            return new Angle(from.Polar.Radians - Math.Acos(30 / from.Length)).Normalised.Radians;
        }).ToList();
        var travel = Travel.Solve(quadrant, seat, 2, 60);
        Assert.False(travel.WideOpen.LiftedOff);
        Assert.Equal(directions.Max() - directions.Min(), travel.Wander.Radians, 1e-4);
        Assert.InRange(travel.Wander.Degrees, 1, 10);
    }

    /// <summary>With 40 mm the valve opens by (40 - 2)/31.5 rad = 69.12°.</summary>
    [Fact]
    public void A_short_pull_stops_where_it_is_used_up()
    {
        var travel = Travel.Solve(Cases.Alder, Placed(Cases.Alder, 130).Seat.XY, 2, 40);
        Assert.False(travel.ReachesWideOpen);
        Assert.Equal(38 / 31.5, travel.Reached.Radians, 1e-12);
        Assert.Equal(69.12, travel.Reached.Degrees, 0.005);
    }

    /// <summary>Each remedy alone, put in, leaves just the reserve.</summary>
    [Theory]
    [InlineData(46)]
    [InlineData(40)]
    public void Every_remedy_mends_the_travel(double pull)
    {
        const double Reserve = 0.5;
        var seat = Placed(Cases.Alder, 130).Seat.XY;
        var remedy = TravelRemedy.For(Travel.Solve(Cases.Alder, seat, 2, pull), Reserve)!;
        var smaller = Cases.Alder with { Groove = new CircularGroove(31.5 * remedy.GrooveScale) };
        Assert.Equal(Reserve, Travel.Solve(smaller, Placed(smaller, 130).Seat.XY, 2, pull).OverTravel, 1e-9);
        Assert.Equal(Reserve, Travel.Solve(Cases.Alder, seat, 2, remedy.PullNeeded).OverTravel, 1e-9);
        Assert.Equal(Reserve, Travel.Solve(Cases.Alder, seat, 2, pull * remedy.LeverScale).OverTravel, 1e-9);
        Assert.Equal(pull >= 46, remedy.FreePlayNeeded is not null);
        if (remedy.FreePlayNeeded is { } slack)
        {
            Assert.Equal(Reserve, Travel.Solve(Cases.Alder, seat, slack, pull).OverTravel, 1e-9);
        }

        Assert.Null(TravelRemedy.For(Travel.Solve(Cases.Alder, seat, 2, 60), Reserve));
    }

    /// <summary>The wire from the placed stop is as long as it should be, and leaves as asked.</summary>
    [Fact]
    public void The_stop_lies_where_the_cable_puts_it() => Gen.Select(
        Cases.Grooves, Gen.Double[0.1, 2.5], Gen.Double[150, 250], Gen.Double[0, 4], Gen.Double[-5, 5]).Check(300, t =>
    {
        var (groove, wrap, free, slack, shift) = t;
        if (groove is TabulatedGroove { IsClosed: false })
        {
            return;
        }

        var quadrant = Cases.Quadrant(groove);
        var leaving = quadrant.PocketNormal + new Angle(wrap);
        if (StopPlacement.At(quadrant, free, slack, leaving, shift) is not { } placed)
        {
            Assert.True(groove.ArcBetween(quadrant.PocketNormal, leaving) >= free - slack - shift);
            return;
        }

        var wire = TautWire.Solve(quadrant, placed.Seat.XY, Angle.Zero);
        Assert.Equal(free - shift - slack, wire.Length, 1e-8);
        Assert.Equal(leaving.Radians, wire.Leaving.Radians, 1e-8);
        Assert.Equal(placed.Straight, wire.Straight, 1e-8);
        Assert.Equal(0, placed.Seat.Z);
        Assert.True((placed.Direction.XY - wire.Direction).Length < 1e-8);
    });

    /// <summary>A body that opens clockwise is the mirror image: same travel, mirrored stop.</summary>
    [Fact]
    public void Mirroring_twice_changes_nothing() => Gen.Select(Cases.Grooves, Gen.Double[0.3, 2]).Check(50, t =>
    {
        var quadrant = Cases.Quadrant(t.Item1);
        var placed = StopPlacement.At(quadrant, 200, 2, quadrant.PocketNormal + new Angle(t.Item2))!;
        Assert.Equal(placed, placed.Mirrored().Mirrored());
        var there = quadrant.Mirrored().Mirrored();
        Assert.Equal(
            Travel.Solve(quadrant, placed.Seat.XY, 2, 50).PullToWideOpen, Travel.Solve(there, placed.Seat.XY, 2, 50).PullToWideOpen, 1e-9);
    });
}
