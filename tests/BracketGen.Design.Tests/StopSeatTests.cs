using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;
using BracketGen.SheetMetal.Cutting;

namespace BracketGen.Design.Tests;

/// <summary>The cable goes on, and holes come out as the process leaves them.</summary>
public class StopSeatTests
{
    private static readonly Cable Plover = Examples.Read("plover-alder-58").Vehicle.Cable;

    private static Cable With(double diameter, double length, OuterEnd end) =>
        Plover with { Fitting = new(EndFittingKind.Barrel, diameter, length), WireDiameter = 1.5, OuterEnd = end };

    // M8 x 1: the nut's bore is D1 = 6.917 mm (table of ISO 724), from 6H's lower limit up. A barrel of 4 mm on a wire of 1.5 mm needs 5.5 mm, one of 6 mm 7.5 mm,
    // which goes through the clearance hole of 9 mm and not through the nut.
    [Theory]
    [InlineData(4, false)]
    [InlineData(6, true)]
    public void The_nut_counts_and_as_needed_gives_a_slot_where_it_does_not_pass(double barrel, bool isSlot)
    {
        var adjuster = new ThreadedAdjuster(8, 1, 14, 13, 5);
        Assert.Equal(6.917, adjuster.NutBore, 5e-4);
        var cable = With(barrel, 40, adjuster);
        Assert.Equal(isSlot, StopSeat.For(cable, StopOpening.AsNeeded, 3).IsSlot);
        var hole = StopSeat.For(cable, StopOpening.Hole, 3);
        Assert.False(hole.IsSlot);
        Assert.Equal(!isSlot, hole.CableGoesOn);
        Assert.Equal(6.917, hole.Passage!.Value, 5e-4);
        Assert.True(StopSeat.For(cable, StopOpening.OpenSlot, 3).CableGoesOn);
    }

    // A ferrule has no nut: its own hole is all that the fitting goes through.
    [Theory]
    [InlineData(9.5, 7, false)]
    [InlineData(9.5, 9.5, true)]
    public void A_ferrule_s_hole_counts_alone(double nose, double barrel, bool isSlot) =>
        Assert.Equal(isSlot, StopSeat.For(With(barrel, 40, new PlainFerrule(nose, 14)), StopOpening.AsNeeded, 3).IsSlot);

    [Fact]
    public void The_check_compares_what_the_fitting_needs_with_the_nut()
    {
        var job = Examples.Read("plover-alder-58");
        var solution = Design.Study.Designer.Solve(job);
        var bracket = solution.Bracket!;
        Assert.True(bracket.Stop.IsSlot);
        Check Of(Bracket b) => BracketChecks.OfFlat(b, job.Vehicle.Cable, CuttingProcess.Laser).Single(c => c.Id == CheckId.FittingThroughStop);
        Assert.True(Of(bracket).Passes);
        var holed = Of(bracket with { Holes = bracket.Holes.SetItem(bracket.Holes.Length - 1, bracket.Stop with { Towards = null }) });
        Assert.Equal(6.917, holed.Value, 5e-4);
        Assert.False(holed.Passes);
    }

    // Plasma, ISO 9013 class 2: ±0.6 in 3 mm sheet leaves a hole of 6.6 mm for M6 at 6.0 mm, which the bolt does not pass; 9 mm for M8 comes out at 8.4 mm. A slot is cut.
    [Theory]
    [InlineData(CuttingProcess.Plasma, 6.6, 6, 3, true, 0.2)]
    [InlineData(CuttingProcess.Plasma, 9, 8, 3, false, 0.6)]
    [InlineData(CuttingProcess.Laser, 6.6, 6, 3, false, 0.15)]
    [InlineData(CuttingProcess.Laser, 6.6, 6, 8, true, 0.2)]
    [InlineData(CuttingProcess.WaterJet, 4.5, 4, 5, true, 0.1)]
    public void Holes_that_the_process_cannot_hold_are_drilled(CuttingProcess process, double hole, double bolt, double thickness, bool isDrilled, double size)
    {
        var round = new BracketHole("H1", HolePurpose.Bolt, 0, new FlatPoint(0, 0), hole, null, null, 10);
        var making = HoleMaking.Of(round, bolt, process, thickness);
        Assert.Equal(isDrilled, making.IsDrilled);
        Assert.Equal(size, making.Size);
        Assert.True(making.Position >= (isDrilled ? HoleMaking.DrillOffMark : size));
        Assert.True(hole - making.Size > bolt || isDrilled);
        Assert.False(HoleMaking.Of(round with { Towards = new(1, 0) }, bolt, process, thickness).IsDrilled);
    }
}
