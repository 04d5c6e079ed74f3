using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;
using BracketGen.SheetMetal.Cutting;
using BracketGen.SheetMetal.Patterns;
using BracketGen.SheetMetal.Shops;

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
        Assert.Equal(isSlot, StopSeat.For(cable, StopOpening.AsNeeded, 3, Finish.NotStated).IsSlot);
        var hole = StopSeat.For(cable, StopOpening.Hole, 3, Finish.NotStated);
        Assert.False(hole.IsSlot);
        Assert.Equal(!isSlot, hole.CableGoesOn);
        Assert.Equal(6.917, hole.Passage!.Value, 5e-4);
        Assert.True(StopSeat.For(cable, StopOpening.OpenSlot, 3, Finish.NotStated).CableGoesOn);
    }

    // Two nuts of 5 mm on 14 mm of thread leave 4 mm for the sheet; what the sheet leaves of it stands out beyond the nut on the quadrant's side.
    [Fact]
    public void A_bulkhead_ferrule_holds_what_its_nuts_leave_of_the_thread_and_sets_nothing()
    {
        var ferrule = new BulkheadFerrule(8, 1, 14, 13, 5);
        var seat = StopSeat.For(With(4, 40, ferrule), StopOpening.AsNeeded, 3, Finish.NotStated);
        Assert.Equal((0, 4, false), (ferrule.AdjusterRange, ferrule.MaxSheet, seat.IsSlot));
        Assert.Equal(3 + 5 + 1, seat.Protrusion, 1e-12);
        Assert.Equal(new ThreadedAdjuster(8, 1, 0, 13, 5).NutBore, ferrule.NutBore);
        Assert.True(StopSeat.For(With(6, 40, ferrule), StopOpening.AsNeeded, 3, Finish.NotStated).IsSlot); // the barrel goes through the hole, not through the nut
    }

    [Fact]
    public void A_push_in_end_has_the_hole_it_is_made_for_and_never_a_slot()
    {
        var end = new PushInEnd(9, 13, 0.8, 2, 7);
        foreach (var wanted in Enum.GetValues<StopOpening>())
        {
            var seat = StopSeat.For(With(9.5, 40, end), wanted, 1.5, Finish.NotStated);
            Assert.Equal((9, false, false, 7), (seat.Opening, seat.IsSlot, seat.CableGoesOn, seat.Protrusion));
        }
    }

    // 12 x 12 with corners of 0.5: its corners lie √2 (6 - 0.5) + 0.5 = 8.278 from the middle.
    [Fact]
    public void A_square_push_in_end_has_a_square_hole()
    {
        var end = new PushInEnd(12, 18, 0.8, 3.2, 7) { Corner = 0.5 };
        var seat = StopSeat.For(With(9.5, 40, end), StopOpening.OpenSlot, 1.5, Finish.NotStated);
        Assert.Equal((12, false, new SquareHole(new(0, 1), 0.5)), (seat.Opening, seat.IsSlot, seat.Outline));
        Assert.Equal(8.278, seat.Reach, 5e-4);
        Assert.True(seat.CableGoesOn);
    }

    [Fact]
    public void Flats_of_a_thread_make_the_slot_narrower_or_give_the_hole_flats()
    {
        var end = new ThreadedAdjuster(8, 1, 14, 13, 5) { ThreadFlats = 7 };
        Assert.Equal(7.3, StopSeat.For(With(4, 40, end), StopOpening.OpenSlot, 3, Finish.NotStated).Opening, 1e-12);
        var hole = StopSeat.For(With(4, 40, end), StopOpening.Hole, 3, Finish.NotStated);
        Assert.Equal((9, 7.3), (hole.Opening, ((FlatSidedHole)hole.Outline!).AcrossFlats));
    }

    // A square end does not go into a round hole of its side, nor a round one into a square: its barbs hold at four points.
    [Fact]
    public void An_end_of_another_shape_does_not_go_into_a_bracket_that_is_there()
    {
        var job = Examples.Read("plover-alder-58");
        Job For(OuterEnd end) => job with { Vehicle = job.Vehicle with { Cable = job.Vehicle.Cable with { OuterEnd = end, Fitting = new(EndFittingKind.Barrel, 6, 8) } } };
        Job square = For(new PushInEnd(12, 18, 0.8, 3.5, 8, 14) { Corner = 0.5 }), round = For(new PushInEnd(12, 18, 0.8, 3.5, 8, 14));
        foreach (var (made, used) in new[] { (square, round), (round, square), (square, square) })
        {
            var bracket = Design.Study.Designer.Solve(made).Bracket!;
            var checks = Design.Study.GivenBracket.On(used, bracket, bracket.Folded.Flanges[0])!.Checks;
            Assert.Equal(made != used, checks.Any(c => c.Id is CheckId.StopOpening or CheckId.StopPlay && c.Fails));
        }
    }

    [Theory]
    [InlineData(1, false, true)]
    [InlineData(2, true, true)]
    [InlineData(3, true, false)]
    public void Sheet_too_thin_or_too_thick_for_the_end_is_told(double thickness, bool isThick, bool isThin)
    {
        var bracket = Design.Study.Designer.Solve(Examples.Read("plover-alder-58")).Bracket!;
        var of = bracket with { Stock = bracket.Stock with { Thickness = thickness }, Folded = new(bracket.Flat with { Thickness = thickness }, bracket.Folded.Flanges[0]) };
        Check Found(OuterEnd end, CheckId id) => BracketChecks.OfFlat(of, With(4, 40, end), CuttingProcess.Laser).Single(c => c.Id == id);
        var pushed = new PushInEnd(9, 13, 1.5, 2.5, 7);
        Assert.Equal(isThick, Found(pushed, CheckId.EndMinSheet).Passes);
        Assert.Equal(isThin, Found(pushed, CheckId.EndMaxSheet).Passes);
        Assert.Equal(isThin, Found(new ClippedFerrule(7.5, 11, 2.5, 8, 13), CheckId.EndMaxSheet).Passes);
        Assert.Equal(isThin, Found(new BulkheadFerrule(8, 1, 12.5, 13, 5), CheckId.EndMaxSheet).Passes);
    }

    // The search looks for sheet that the end takes.
    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    public void A_bracket_is_found_for_every_kind_of_end(int kind)
    {
        var job = Examples.Read("plover-alder-58");
        OuterEnd end = kind switch
        {
            0 => new BulkheadFerrule(8, 1, 14, 13, 5, 14),
            1 => new ClippedFerrule(8, 12, 3.5, 7, 13, 14),
            2 => new PushInEnd(9, 14, 1.5, 3.5, 8, 14),
            3 => new PushInEnd(12, 18, 1.5, 3.5, 8, 14) { Corner = 0.5 },
            _ => new ThreadedAdjuster(8, 1, 14, 13, 5) { ThreadFlats = 7 },
        };
        var fitting = kind >= 2 ? new EndFitting(EndFittingKind.Barrel, kind == 4 ? 4 : 6, 8) : job.Vehicle.Cable.Fitting;
        var solution = Design.Study.Designer.Solve(job with { Vehicle = job.Vehicle with { Cable = job.Vehicle.Cable with { OuterEnd = end, Fitting = fitting } } });
        Assert.DoesNotContain(solution.Checks, c => c.Fails && c.Kind != CheckKind.Advice);
        Assert.True(kind == 4 || solution.Checks.Any(c => c.Id == CheckId.EndMaxSheet && c.Passes));
        Assert.True(kind is 0 or 1 || !solution.Bracket!.Stop.IsSlot);
        Assert.Equal(kind, solution.Bracket!.Stop.Outline switch { SquareHole => 3, FlatSidedHole => 4, _ => kind });
    }

    // A ferrule has no nut: its own hole is all that the fitting goes through.
    [Theory]
    [InlineData(9.5, 7, false)]
    [InlineData(9.5, 9.5, true)]
    public void A_ferrule_s_hole_counts_alone(double nose, double barrel, bool isSlot) =>
        Assert.Equal(isSlot, StopSeat.For(With(barrel, 40, new PlainFerrule(nose, 14)), StopOpening.AsNeeded, 3, Finish.NotStated).IsSlot);

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

    [Fact]
    public void A_thick_finish_makes_the_holes_larger_and_counts_in_a_clip_s_neck()
    {
        var job = Examples.Read("plover-alder-58");
        var coated = job with { Shop = job.Shop.Finished(new(FinishKind.PowderCoat, 0.08)) };
        Bracket bare = Design.Study.Designer.Solve(job).Bracket!, powdered = Design.Study.Designer.Solve(coated).Bracket!;
        Assert.Equal(6.6, bare.Holes[0].Diameter, 1e-9); // M6, ISO 273 medium.
        Assert.Equal(6.8, powdered.Holes[0].Diameter, 1e-9);
        Assert.Equal(bare.Stop.Diameter + 0.2, powdered.Stop.Diameter, 1e-9);
        var clipped = job.Vehicle.Cable with { OuterEnd = new SlottedClip(8, 14, 3.1) };
        Check Neck(Bracket b) => BracketChecks.OfFlat(b, clipped, CuttingProcess.Laser).Single(c => c.Id == CheckId.ClipNeck);
        Assert.True(Neck(bare).Passes);
        Assert.Equal(bare.Flat.Thickness + 0.16, Neck(powdered).Value, 1e-9);
    }

    // Steel that nobody protects is advice, steel of which nobody knows is not a pass; aluminium needs nothing.
    [Theory]
    [InlineData(FinishKind.Bare, false, true)]
    [InlineData(FinishKind.NotStated, false, false)]
    [InlineData(FinishKind.Zinc, true, false)]
    [InlineData(FinishKind.PowderCoat, true, false)]
    public void Bare_steel_on_the_casting_is_advice(FinishKind kind, bool passes, bool fails)
    {
        var job = Examples.Read("plover-alder-58");
        var bracket = Design.Study.Designer.Solve(job).Bracket!;
        Assert.True(bracket.Stock.Material.IsSteel);
        Check Of(Material m) => BracketChecks.OfFlat(bracket with { Stock = bracket.Stock with { Material = m } }, job.Vehicle.Cable, CuttingProcess.Laser)
            .Single(c => c.Id == CheckId.Finish);
        var check = Of(bracket.Stock.Material with { Finish = new(kind, 0) });
        Assert.Equal((passes, fails, CheckKind.Advice), (check.Passes, check.Fails, check.Kind));
        Assert.True(Of(bracket.Stock.Material with { Finish = new(kind, 0), Density = 2.67e-9, Modulus = 70_000 }).Passes);
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
