using BracketGen.Design.Part;
using BracketGen.Design.Search;
using BracketGen.Geometry;
using BracketGen.Mechanism.Grooves;
using BracketGen.Mechanism.Motion;
using BracketGen.Mechanism.Uncertainty;
using BracketGen.Words.Report;

namespace BracketGen.Mechanism.Tests;

/// <summary>The spread of the travel where the answer is known in closed form: Alder 58, constant radius 31.5 mm.</summary>
public class TravelUncertaintyTests
{
    private const double Radius = 31.5;

    private static readonly double Drawn = Radius * Angle.FromDegrees(82).Radians;

    private static TravelUncertainty Of(UncertainTravel travel) => TravelUncertainty.Of(travel, 64);

    /// <summary>The stop placed for an adjuster 1.5 mm off mid range leaves the free play that was asked for.</summary>
    [Fact]
    public void The_adjuster_stands_where_the_design_puts_it()
    {
        var seat = StopPlacement.At(Cases.Alder, 180, 2, Angle.FromDegrees(130), adjusterShift: 1.5)!.Seat.XY;
        var sure = Of(Cases.AlderTravel with { Seat = seat, AdjusterShift = 1.5 });
        Assert.Equal(2, sure.FreePlayUntouched.Nominal, 1e-9);
        Assert.Equal(1.5, sure.AdjusterNeed.Nominal, 1e-9);
    }

    /// <summary>Over-travel is S - f - RΘ less what gives way at the wide-open stop.</summary>
    [Fact]
    public void Lost_motion_takes_from_the_over_travel()
    {
        var sure = Of(Cases.AlderTravel with { LostMotion = 0.7 });
        Assert.Equal(48 - 2 - Drawn - 0.7, sure.OverTravel.Nominal, 1e-9);
        Assert.Equal(48 - 2 - Drawn - 0.7, sure.OverTravelUntouched.Nominal, 1e-9);
    }

    /// <summary>
    /// A wire that lifts off 10° before wide open (pocket 20°, leaving 130°, rotation 120°) runs straight from the fitting from there on:
    /// the pull is the length at the closed stop less the distance of two points.
    /// </summary>
    [Fact]
    public void A_wire_that_lifts_off_is_not_taken_for_one_in_the_groove()
    {
        var sure = Of(Cases.AlderTravel with { Quadrant = Cases.Quadrant(new CircularGroove(Radius), rotationDegrees: 120), AvailablePull = 80 });
        var fitting = Vector2.FromPolar(Radius, Angle.FromDegrees(20 + 120));
        Assert.Equal(80 - 2 - (178 - fitting.DistanceTo(Cases.AlderTravel.Seat)), sure.OverTravel.Nominal, 1e-9);
        Assert.Equal(-10, sure.WrapWideOpen.Nominal * 180 / Math.PI, 1e-9);
    }

    /// <summary>Polar angles may be given on any turn; here with a wrap of 80°, little past the rotation of 60°.</summary>
    [Theory]
    [InlineData(-2)]
    [InlineData(-1)]
    [InlineData(1)]
    public void The_pockets_turn_does_not_matter(int turns)
    {
        TravelUncertainty With(int turn) => Of(Cases.AlderTravel with
        {
            Quadrant = Cases.Quadrant(new CircularGroove(Radius), 60, 50) with { Pocket = Angle.FromDegrees(50) + new Angle(2 * Math.PI * turn) },
        });
        for (var output = 0; output < 5; output++)
        {
            Assert.Equal(With(0).Run.Nominal[output], With(turns).Run.Nominal[output], 1e-9);
        }

        Assert.Equal(20, With(turns).WrapWideOpen.Nominal * 180 / Math.PI, 1e-9);
    }

    /// <summary>
    /// A short groove (100°) whose pocket has gone 110° past the leaving point: the wire is off the groove, as <see cref="Travel"/> has it,
    /// and not 250° round it.
    /// </summary>
    [Fact]
    public void A_wire_far_off_a_short_groove_is_not_taken_for_one_nearly_round_it()
    {
        var quadrant = Cases.Quadrant(new CircularGroove(Radius), 15, 240) with { GrooveExtent = Angle.FromDegrees(100) };
        var sure = Of(Cases.AlderTravel with { Quadrant = quadrant });
        var travel = Travel.Solve(quadrant, Cases.AlderTravel.Seat, 2, 48);
        Assert.Equal(-125, sure.WrapWideOpen.Nominal * 180 / Math.PI, 1e-9);
        Assert.Equal(180 - travel.Closed.Length, sure.FreePlayUntouched.Nominal, 1e-9);
        Assert.Equal(travel.OverTravel, sure.OverTravel.Nominal, 1e-9);
    }

    [Fact]
    public void A_seat_within_the_groove_is_refused() =>
        Assert.Throws<ArgumentException>(() => Of(Cases.AlderTravel with { Seat = new(Radius / 2, 0) }));

    /// <summary>Just closed, just open, just in the groove, just within the range: all of it counts as well.</summary>
    [Fact]
    public void Exactly_at_the_limit_is_well()
    {
        // The limits are asked of the same arithmetic, so that they are met to the last bit.
        double Wrap() => Of(Cases.AlderTravel with { Quadrant = Cases.AlderTravel.Quadrant with { Rotation = Angle.Zero } }).WrapWideOpen.Nominal;
        var atWideOpen = Cases.AlderTravel with { Quadrant = Cases.AlderTravel.Quadrant with { Rotation = new Angle(Wrap()) }, FreePlay = 0 };
        var length = -Of(atWideOpen with { FreeInnerLength = 0 }).FreePlayUntouched.Nominal;
        var drawn = -Of(atWideOpen with { AvailablePull = 0 }).OverTravel.Nominal;
        var fixedStop = Of(atWideOpen with { FreeInnerLength = length, AvailablePull = drawn, AdjusterRange = 0 });
        double[] outputs = [.. fixedStop.Run.Nominal];
        Assert.Equal([0.0, 0, 0, 0, 0], outputs[..5]);
        Probability[] all =
        [
            fixedStop.ClosesUntouched, fixedStop.ReachesWideOpen, fixedStop.WithinAdjuster,
        ];
        Assert.All(all, p => Assert.Equal(new(1, 0, 64), p));

        var adjusted = atWideOpen with { FreeInnerLength = length + 2, AvailablePull = drawn };
        var need = Of(adjusted).AdjusterNeed.Nominal;
        Assert.Equal(2, need, 1e-9);
        Assert.Equal(1, Of(adjusted with { AdjusterRange = 2 * need }).WithinAdjuster.Value);
    }

    /// <summary>1 mm off mid range and ±3 mm: 4 mm to one side, so 8 mm in all.</summary>
    [Fact]
    public void The_worst_case_range_reaches_to_the_farther_side()
    {
        Assert.Equal(8, Of(Cases.AlderTravel with { FreeInnerLength = new(181, 3) }).AdjusterRangeFor(1), 1e-9);
        Assert.Equal(8, Of(Cases.AlderTravel with { FreeInnerLength = new(179, 3) }).AdjusterRangeFor(1), 1e-9);
    }

    /// <summary>
    /// Margins in standard deviations, worked by hand. Adjuster: (2 - 1.5)/(1/√3) = 0.87. Wide open: 0.92/(0.5/√3) = 3.2. As built, closed:
    /// 0.5/(1/√3) = 0.87, wide open (48 - 0.5 - 45.08)/√((1 + 0.25)/3) = 3.7.
    /// </summary>
    [Fact]
    public void The_requirement_nearest_to_failing_is_named()
    {
        var adjusted = Cases.AlderTravel with { FreeInnerLength = new(181.5, 1), AdjusterRange = 4, AvailablePull = new(48, 0.5) };
        Assert.Equal("within the adjuster's range", Of(adjusted).Ranking.Requirement);
        Assert.Equal(["free inner length", "available pull"], Of(adjusted).Ranking.Contributions.Select(c => c.Name)); // nothing exact
        var asBuilt = Cases.AlderTravel with { FreeInnerLength = new(178.5, 1), AdjusterRange = 0, AvailablePull = new(48, 0.5) };
        Assert.Equal("valve closed", Of(asBuilt).Ranking.Requirement);
    }

    /// <summary>
    /// Half-widths in the over-travel as built, S - (F - L) - RΘ - lost, largest first: lost motion 0.9, free length 0.7, pull 0.5,
    /// rotation 31.5 · 0.011 = 0.35, pocket R · 0.006 = 0.19, tolerance along the wire 0.15/2 (two standard deviations, where a half-width is √3 of them).
    /// What was set by the fitter has no part in it.
    /// </summary>
    [Fact]
    public void Everything_uncertain_is_named_in_its_order()
    {
        var travel = Cases.AlderTravel with
        {
            Quadrant = Cases.AlderTravel.Quadrant with { Rotation = new(Cases.AlderTravel.Quadrant.Rotation.Value, new(0.011)), Pocket = new(Cases.AlderTravel.Quadrant.Pocket.Value, new(0.006)) },
            FreeInnerLength = new(180, 0.7),
            AvailablePull = new(47.5, 0.5),
            LostMotion = new(0.2, 0.9),
            AdjusterRange = 0,
            SeatTolerances = [new("leg 2", Vector2.FromPolar(1, Angle.FromDegrees(220)), 0.15)],
        };
        var (requirement, contributions) = TravelUncertainty.Of(travel, 4096).Ranking;
        Assert.Equal("valve fully open", requirement);
        Assert.Equal(
            ["lost motion", "free inner length", "available pull", "rotation", "pocket angle", "leg 2"],
            contributions.Where(c => c.Share > 1e-3).Select(c => c.Name));
        Assert.Equal([false], contributions.Where(c => c.Name == "leg 2").Select(c => c.MeasuredAgain));
    }
}
