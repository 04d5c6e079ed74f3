using BracketGen.Design.Checks;
using BracketGen.Geometry;
using BracketGen.Mechanism.Grooves;
using BracketGen.Mechanism.Motion;
using BracketGen.TestSupport;
using BracketGen.Words.Report;
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

    /// <summary>
    /// The wire's straight part on an eccentric circle is sqrt(|stop - c(θ)|² - ρ²) (tangent to a circle); the direction wanders to the side
    /// that is negative from where it begins.
    /// </summary>
    [Theory]
    [InlineData(0.9)]
    [InlineData(-2.2)]
    [InlineData(2.2)]
    public void Shortest_wire_and_wander_are_those_of_the_circle(double towards)
    {
        var quadrant = Cases.Alder with { Groove = new EccentricGroove(30, 8, new(towards)) };
        var seat = Placed(quadrant, 130).Seat.XY;
        var wires = Enumerable.Range(0, 2001).Select(i =>
        {
            var from = seat - Vector2.FromPolar(8, new Angle(towards) + i / 2000.0 * Angle.FromDegrees(82));
            return (Straight: Math.Sqrt(from.Dot(from) - 900), Direction: (from.Polar - new Angle(Math.Acos(30 / from.Length) + 2)).Normalised);
        }).ToList();
        var travel = Travel.Solve(quadrant, seat, 2, 60);
        Assert.Equal(wires.Min(w => w.Straight), travel.LeastStraight, 1e-2);
        Assert.Equal(wires.Max(w => w.Direction.Radians) - wires.Min(w => w.Direction.Radians), travel.Wander.Radians, 1e-4);
    }

    /// <summary>A cam that comes round over the stop: |stop - c| falls below ρ on the way, so there is no travel, and no exception.</summary>
    [Fact]
    public void A_groove_that_comes_over_the_stop_has_no_travel()
    {
        var quadrant = Cases.Alder with { Groove = new EccentricGroove(30, 20, Angle.FromDegrees(120)) };
        var stop = Vector2.FromPolar(40, Angle.FromDegrees(200));
        Assert.True(stop.DistanceTo(Vector2.FromPolar(20, Angle.FromDegrees(120))) > 30);
        Assert.True(stop.DistanceTo(Vector2.FromPolar(20, Angle.FromDegrees(202))) < 30);
        Assert.Throws<ArgumentException>(() => Travel.Solve(quadrant, stop, 2, 48));
        Assert.Null(Travel.TrySolve(quadrant, stop, 2, 48));
        var seat = Placed(Cases.Alder, 130).Seat.XY;
        Assert.Equal(45.08185, Travel.TrySolve(Cases.Alder, seat, 2, 48)!.PullToWideOpen, 1e-4);
    }

    private static Travel Made(double freePlay, double available, double needed)
    {
        var some = Travel.Solve(Cases.Alder, Placed(Cases.Alder, 130).Seat.XY, 2, 48);
        return some with { FreePlay = freePlay, AvailablePull = available, PullToWideOpen = needed };
    }

    /// <summary>By hand, in whole numbers: a stroke that is just enough is enough.</summary>
    [Fact]
    public void Just_enough_is_enough()
    {
        Assert.True(Made(2, 47, 45).ReachesWideOpen);
        Assert.False(Made(2, 46, 45).ReachesWideOpen);
    }

    /// <summary>By hand on R = 30: one radian of groove takes 30 mm of the 32, the free play the other 2; nothing is left to aim along.</summary>
    [Fact]
    public void A_wire_used_up_by_groove_and_slack_has_no_stop()
    {
        var quadrant = Cases.Quadrant(new CircularGroove(30), pocketDegrees: 0);
        Assert.Null(StopPlacement.At(quadrant, 32, 2, new(1)));
        Assert.Null(StopPlacement.At(quadrant, 31, 2, new(1)));
        Assert.Equal(0.5, StopPlacement.At(quadrant, 32.5, 2, new(1))!.Straight, 1e-12);
    }

    [Fact]
    public void A_mirrored_quadrant_has_its_fitting_mirrored() => Cases.Grooves.Check(50, groove =>
    {
        var quadrant = Cases.Quadrant(groove);
        Angle opening = new(0.4);
        var fitting = quadrant.FittingAt(opening);
        Assert.True(quadrant.Mirrored().FittingAt(-opening).DistanceTo(new(fitting.X, -fitting.Y)) < 1e-9);
    });
}
