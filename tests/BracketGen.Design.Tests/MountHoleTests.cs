using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Study;
using BracketGen.Geometry;
using BracketGen.Mechanism.Uncertainty;
using BracketGen.SheetMetal.Cutting;
using BracketGen.SheetMetal.Standards;
using BracketGen.Words.Checks;

namespace BracketGen.Design.Tests;

/// <summary>Mount holes measured with ±: the face through them, where the bracket really comes to lie, and what it does to the travel.</summary>
public class MountHoleTests
{
    private static readonly Job Plover = Examples.Read("plover-alder-58");
    private static readonly Solution Answer = Designer.Solve(Plover);
    private static readonly Bracket Bracket = Answer.Bracket!;

    private static MountHole Hole(double x, double y, double z, double plusMinus) =>
        new(new(x, y, z), FastenerThread.All.Single(t => t.Name == "M6"), 15) { PlusMinus = new(plusMinus, plusMinus, plusMinus) };

    [Fact]
    public void Without_plus_minus_the_face_goes_through_the_first_hole()
    {
        var fit = MountFit.Of(new(0, 0, 2), [Hole(-50, -22, -24, 0), Hole(-50, 12, -23.97, 0)]);
        Assert.Equal(new Plane(new(-50, -22, -24), new(0, 0, 2)), fit.Face);
        Assert.Equal(0.03, fit.Height, 1e-9);
        Assert.True(fit.IsExplained);
        Assert.False(MountFit.Of(new(0, 0, 1), [Hole(-50, -22, -24, 0), Hole(-50, 12, -23.9, 0)]).IsExplained);
    }

    // By hand: equal ±, so the mean of -24, -23.6 and -23.9; with ± of 0.1 against 0.4 the weights are 16 to 1.
    [Fact]
    public void With_plus_minus_it_lies_at_the_weighed_mean_height()
    {
        var even = MountFit.Of(new(0, 0, 1), [Hole(0, 0, -24, 0.3), Hole(40, 0, -23.6, 0.3), Hole(0, 40, -23.9, 0.3)]);
        Assert.Equal(-23.8333333333, even.Face.Point.Z, 1e-9);
        Assert.Equal(-23.6 + 23.8333333333, even.Height, 1e-9);
        Assert.True(even.IsExplained);
        Assert.NotNull(even.Free);
        var uneven = MountFit.Of(new(0, 0, 1), [Hole(0, 0, -24, 0.1), Hole(40, 0, -23.6, 0.4)]);
        Assert.Equal((16 * -24 + -23.6) / 17, uneven.Face.Point.Z, 1e-9);
        Assert.True(uneven.IsExplained);
    }

    // 1 mm apart in height with ±0.3 each: no height is within both.
    [Fact]
    public void Beyond_plus_minus_it_is_not_explained()
    {
        var fit = MountFit.Of(new(0, 0, 1), [Hole(-50, -22, -24, 0.3), Hole(-50, 12, -23, 0.3)]);
        Assert.False(fit.IsExplained);
        Assert.Equal(0.5, Math.Abs(fit.Height), 1e-9);
    }

    // Hand geometry: M6 in 6.6 mm holes (ISO 273 medium) that may be 0.15 mm larger (ISO 9013 class 1, 3 to 10 mm), 34 mm apart: 0.375 mm each way at each bolt, so 0.75/34 rad, about the middle.
    [Fact]
    public void Play_of_two_bolts_turns_the_bracket_by_its_sum_over_the_distance()
    {
        Assert.Equal(Math.Atan2(0.75, 34), SeatTolerances.TurnInPlay(Bracket, CuttingProcess.Laser)!.Value.Radians, 1e-9);
        var tolerances = SeatTolerances.OfBolts(Bracket, CuttingProcess.Laser).ToArray();
        Assert.Equal(3, tolerances.Length);
        var across = tolerances.Where(t => t.Name.Contains("across", StringComparison.Ordinal)).ToArray();
        var turned = across[0].PlusMinus * across[0].Shift - across[1].PlusMinus * across[1].Shift;
        var arm = Bracket.FoldedSeat.Point.XY - new Vector2(-50, -5);
        Assert.Equal(0.75 / 34 * arm.Length, turned.Length, 1e-9);
        Assert.Equal(0, turned.Dot(arm), 1e-9);

        // Both the same way: the whole bracket shifts by the play, and along the line too.
        Assert.Equal(0.375, (across[0].PlusMinus * across[0].Shift + across[1].PlusMinus * across[1].Shift).Length, 1e-9);
        Assert.Equal(0.375, tolerances[0].PlusMinus * tolerances[0].Shift.Length, 1e-9);
    }

    [Fact]
    public void A_single_bolt_does_not_hold_the_bracket()
    {
        var single = Bracket with { Holes = [.. Bracket.Holes.Where(h => h.Purpose != HolePurpose.Bolt || h.Name == Bracket.Holes[0].Name)] };
        Assert.Null(SeatTolerances.TurnInPlay(single, CuttingProcess.Laser));
        var turn = SeatTolerances.OfBolts(single, CuttingProcess.Laser).Single(t => t.Name == "turn about one bolt");
        var arm = Bracket.FoldedSeat.Point.XY - Plover.Body.Mount.Holes[0].At.XY;
        Assert.Equal(arm.Length, turn.Shift.Length, 1e-9);
        Assert.Equal(2, new Angle(turn.PlusMinus).Degrees, 1e-9);
    }

    // Rigid motions by hand: both holes off by the same moves the bracket by that; off against each other by 1 mm each across their line of 34 mm
    // turns it by 2/34 about the middle; one up, the other down by 1 mm tilts the face by 2/34, and a seat 24 mm over it leans away by 24 times that.
    [Fact]
    public void The_bracket_goes_where_the_holes_really_are()
    {
        var mount = Plover.Body.Mount with { Holes = [.. Plover.Body.Mount.Holes.Select(h => h with { PlusMinus = new(0.3, 0.2, 0.5) })] };
        var moves = SeatTolerances.OfMount(Bracket, mount).ToDictionary(t => t.Name);
        Assert.All(moves.Values, t => Assert.True(t.IsMeasured));
        var arm = Bracket.FoldedSeat.Point.XY - new Vector2(-50, -5);
        var height = Bracket.FoldedSeat.Point.Z + 24;
        Same(new(1, 0), moves["mount hole 1, x"].Shift + moves["mount hole 2, x"].Shift);
        Same(new(0, 1), moves["mount hole 1, y"].Shift + moves["mount hole 2, y"].Shift);
        Same(2.0 / 34 * arm.Left, moves["mount hole 1, x"].Shift - moves["mount hole 2, x"].Shift);
        Same(new(0, -2.0 / 34 * height), moves["mount hole 2, z"].Shift - moves["mount hole 1, z"].Shift);
        Assert.Equal(0.5, moves["mount hole 1, z"].PlusMinus);
    }

    [Fact]
    public void Exact_holes_add_nothing() => Assert.Empty(SeatTolerances.OfMount(Bracket, Plover.Body.Mount));

    [Fact]
    public void Holes_count_in_the_probabilities_and_are_named_for_the_check_they_spoil()
    {
        var loose = Plover with
        {
            Body = Plover.Body with { Mount = Plover.Body.Mount with { Holes = [.. Plover.Body.Mount.Holes.Select(h => h with { PlusMinus = new(8, 8, 0) })] } },
        };
        var report = MechanismReport.Of(loose, Answer.Travel, Answer.Placement, Bracket, 4096);
        var adjuster = report.Checks.Single(c => c.Id == CheckId.ProbabilityAdjuster);
        Assert.True(adjuster.Fails);
        Assert.Equal(MeasureHelp.Measure, adjuster.Measure!.Help);
        Assert.StartsWith("mount hole", adjuster.Measure.Input, StringComparison.Ordinal);
        Assert.Contains($"Measure again: {adjuster.Measure.Input}.", adjuster.Consequence(), StringComparison.Ordinal);

        // The pull on a round groove has nothing to do with the holes.
        Assert.True(report.Checks.Single(c => c.Id == CheckId.ProbabilityWideOpen).Passes);
        Assert.True(report.Checks.Single(c => c.Id == CheckId.MountHolesFit).Fails);
        Assert.True(Answer.Mechanism!.Checks.Single(c => c.Id == CheckId.ProbabilityAdjuster).Passes);
    }

    // The distance of holes along y, ±0.2 each: 0.4 against a play of 0.3 + 0.3.
    [Fact]
    public void The_play_of_the_bolts_takes_up_what_the_holes_are_off()
    {
        var mount = Plover.Body.Mount with { Holes = [.. Plover.Body.Mount.Holes.Select(h => h with { PlusMinus = new(3, 0.2, 0) })] };
        var check = MechanismReport.Of(Plover with { Body = Plover.Body with { Mount = mount } }, Answer.Travel, Answer.Placement, Bracket, 4096).Checks
            .Single(c => c.Id == CheckId.MountHolesFit);
        Assert.Equal(0.4, check.Value, 1e-9);
        Assert.Equal(0.6, check.Limit, 1e-9);
        Assert.True(check.Passes);
    }

    private static void Same(Vector2 expected, Vector2 found) => Assert.True(expected.DistanceTo(found) < 1e-9, $"{expected}, found {found}");
}
