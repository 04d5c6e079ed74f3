using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;
using BracketGen.Words.Report;

namespace BracketGen.Mechanism.Tests;

/// <summary>The cable's own numbers: fitting, nuts, wire and what is assumed where nothing was measured.</summary>
public class CableEndTests
{
    /// <summary>By hand: half the diagonal of a cylinder, 6-8-10 and 5-12-13; half the diameter of a ball, whatever its length says.</summary>
    [Theory]
    [InlineData(EndFittingKind.Barrel, 6, 8, 5)]
    [InlineData(EndFittingKind.Nipple, 5, 12, 6.5)]
    [InlineData(EndFittingKind.Ball, 8, 8, 4)]
    public void A_fitting_reaches_its_farthest_point(EndFittingKind kind, double diameter, double length, double reach) =>
        Assert.Equal(reach, new EndFitting(kind, diameter, length).ReachRadius, 1e-12);

    /// <summary>
    /// Geometry: ball and nipple show a circle of their diameter along the wire; a long barrel goes end on, a circle of its diameter with the
    /// wire's circle against it; a short one flat on, a rectangle of 4 by 3 in a circle of 5.
    /// </summary>
    [Theory]
    [InlineData(EndFittingKind.Ball, 8, 8, 8)]
    [InlineData(EndFittingKind.Nipple, 4, 10, 4)]
    [InlineData(EndFittingKind.Barrel, 6, 14, 7.5)]
    [InlineData(EndFittingKind.Barrel, 6, 6, 7.5)]
    [InlineData(EndFittingKind.Barrel, 4, 3, 5)]
    public void A_fitting_passes_a_hole_as_large_as_it_shows(EndFittingKind kind, double diameter, double length, double hole) =>
        Assert.Equal(hole, new EndFitting(kind, diameter, length).PassageDiameter(1.5), 1e-12);

    /// <summary>No barrel goes through a hole narrower than its diameter, and none needs a wider one than end on with the wire beside it.</summary>
    [Theory]
    [InlineData(10, 2)]
    [InlineData(10, 6)]
    [InlineData(6, 6.5)]
    public void A_short_barrel_needs_no_more_than_end_on(double diameter, double length) =>
        Assert.InRange(new EndFitting(EndFittingKind.Barrel, diameter, length).PassageDiameter(1.5), diameter, diameter + 1.5);

    /// <summary>A regular hexagon of 13 mm across flats has sides of 13/√3 = 7.5056 mm, and twice that across corners (by hand).</summary>
    [Fact]
    public void A_nut_is_twice_its_side_across_corners() =>
        Assert.Equal(15.0111, new ThreadedAdjuster(8, 1.25, 10, 13, 6.5).AcrossCorners, 5e-5);

    [Fact]
    public void What_was_not_measured_is_as_documented()
    {
        Cable cable = new()
        {
            Fitting = new(EndFittingKind.Ball, 8, 8), WireDiameter = 1.5, OuterEnd = new PlainFerrule(8, 11), OuterDiameter = 5,
            FreeInnerLength = 180, FleetLimit = new(0.02), MinBendRadius = 60,
        };
        Assert.Equal(5, cable.WanderLimit.Degrees, 1e-12);
        Assert.Equal(1180, cable.Soft.WireLength, 1e-12); // an outer of a metre
        Assert.Equal(580, cable.Stiff.WireLength, 1e-12); // as short as usual
        var known = cable with { OuterLength = 640, OuterAxialStiffness = new(100_000, 20_000) };
        Assert.Equal((820, 820), (known.Soft.WireLength, known.Stiff.WireLength));

        // Elastic bar: F L/(E A).
        Assert.Equal((640 / 80_000.0, 640 / 120_000.0), (known.Soft.Outer, known.Stiff.Outer));
        Assert.Equal((1000 / 50_000.0, 400 / 500_000.0), (cable.Soft.Outer, cable.Stiff.Outer));
    }
}
