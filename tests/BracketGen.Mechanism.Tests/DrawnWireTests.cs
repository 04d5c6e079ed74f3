using BracketGen.Geometry;
using BracketGen.Mechanism.Grooves;
using BracketGen.Mechanism.Motion;

namespace BracketGen.Mechanism.Tests;

/// <summary>The wire of a cable that the quadrant draws as the valve opens.</summary>
public class DrawnWireTests
{
    private static readonly Angle Rotation = Angle.FromDegrees(80);

    private static Quadrant With(Groove groove, double pocket = 200) => new()
    {
        Groove = groove,
        Rotation = new(Rotation, Angle.Zero),
        Pocket = new(Angle.FromDegrees(pocket), Angle.Zero),
        GrooveExtent = Angle.FromDegrees(170),
        GrooveWidth = 3,
        SlotWidth = 2,
        OuterRadius = 40,
        Thickness = 9,
        HubRadius = 40,
    };

    // Arc length: a round groove of radius R winds on R θ, and the arm is R.
    [Fact]
    public void A_round_groove_winds_on_its_arc()
    {
        var quadrant = With(new CircularGroove(30));
        var seat = DrawnWire.At(quadrant, 150, 2, Angle.FromDegrees(40))!;
        var sweep = DrawnWire.TrySweep(quadrant, seat.Seat.XY)!.Value;
        Assert.Equal(49, sweep.Length);
        Assert.Equal(148, sweep[0].Length, 9);
        foreach (var wire in sweep)
        {
            Assert.Equal(30 * wire.Opening.Radians, wire.Length - sweep[0].Length, 9);
            Assert.Equal(30, wire.Arm, 9);
            Assert.Equal(40 + wire.Opening.Degrees, wire.Wrap.Degrees, 9);
            Assert.Equal(0, (wire.Seat - seat.Seat.XY).Length, 9);
        }

        // Seen from outside the wire leaves clockwise: its tension turns the quadrant clockwise, which closes the valve.
        Assert.True(sweep[0].From.Cross(sweep[0].Direction) < 0);
    }

    // Virtual work: the arm is the slope of the wire drawn, here by central differences.
    [Fact]
    public void The_arm_is_the_slope_of_the_wire_drawn()
    {
        var quadrant = With(new EccentricGroove(30, 6, Angle.FromDegrees(-70)));
        var seat = DrawnWire.At(quadrant, 150, 2, Angle.FromDegrees(40))!.Seat.XY;
        var sweep = DrawnWire.TrySweep(quadrant, seat)!.Value;
        var step = (sweep[1].Opening - sweep[0].Opening).Radians;
        for (var i = 1; i + 1 < sweep.Length; i++)
        {
            Assert.Equal(sweep[i].Arm, (sweep[i + 1].Length - sweep[i - 1].Length) / (2 * step), 0.01);
        }
    }

    // Run backwards and seen from behind, it is a wire that pulls: the travel of the quadrant as it stands wide open, y reversed.
    [Fact]
    public void Run_backwards_it_is_a_travel()
    {
        const double direction = -70;
        var quadrant = With(new EccentricGroove(30, 6, Angle.FromDegrees(direction)));
        var seat = DrawnWire.At(quadrant, 150, 2, Angle.FromDegrees(40))!.Seat.XY;
        var sweep = DrawnWire.TrySweep(quadrant, seat)!.Value;
        var wideOpen = With(new EccentricGroove(30, 6, Angle.FromDegrees(-(direction + 80))), -(200 + 80));
        var travel = Travel.Solve(wideOpen, seat.MirroredInY, 2, 100);
        Assert.Equal(sweep[^1].Length - sweep[0].Length, travel.PullToWideOpen, 9);
        for (var i = 0; i < sweep.Length; i++)
        {
            Assert.Equal(travel.Sweep[^(i + 1)].Length, sweep[i].Length, 9);
            Assert.Equal(travel.Sweep[^(i + 1)].Arm, sweep[i].Arm, 9);
            Assert.Equal(travel.Sweep[^(i + 1)].Wrap.Radians, sweep[i].Wrap.Radians, 9);
        }
    }

    [Fact]
    public void A_seat_inside_the_groove_and_a_cable_too_short_have_no_wire()
    {
        var quadrant = With(new CircularGroove(30));
        Assert.Null(DrawnWire.TrySweep(quadrant, new(5, 5)));
        Assert.Null(DrawnWire.At(quadrant, 15, 2, Angle.FromDegrees(40)));
    }
}
