using System.Collections.Immutable;
using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Search;
using BracketGen.Design.Study;
using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;
using BracketGen.Profiles;
using BracketGen.SheetMetal.Patterns;
using BracketGen.SheetMetal.Shops;
using BracketGen.TestSupport;
using Check = BracketGen.Design.Checks.Check;
using CsCheck;

namespace BracketGen.Design.Tests;

/// <summary>A bracket that is there already: measured, bolted on every way, and corrected.</summary>
public class MeasuredBracketTests
{
    public static TheoryData<string> Names => Examples.OnOneFace;

    private static readonly Lazy<Job> Plover = new(() => Examples.Read("plover-alder-58"));

    // A bracket of ours, described as somebody would measure it without error, is the same bracket: what was calculated of the design comes out of the measurements.
    [Theory]
    [MemberData(nameof(Names))]
    public void One_of_ours_described_gives_the_verdict_of_the_design(string name) => Describe(Examples.Read(name));

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void One_of_ours_with_a_hole_that_is_not_round_is_described_whole(bool isSquare)
    {
        OuterEnd end = isSquare ? new PushInEnd(12, 18, 1.5, 3.5, 8, 14) { Corner = 0.5 } : new ThreadedAdjuster(8, 1, 14, 13, 5) { ThreadFlats = 7 };
        var cable = Plover.Value.Vehicle.Cable with { OuterEnd = end, Fitting = new(EndFittingKind.Barrel, 4, 8) };
        var bracket = Describe(Plover.Value with { Vehicle = Plover.Value.Vehicle with { Cable = cable } });
        Assert.Equal(isSquare, bracket.Stop.Outline is SquareHole);
        Assert.Equal(!isSquare, bracket.Stop.Outline is FlatSidedHole);
        var read = ProfileReader.ReadBracket("b.toml", MemoryFileSource.Empty.With("b.toml", Profiles.Editing.BracketFileText.Of(BracketDescription.Of(bracket, "ours", "drawing"))));
        Assert.Empty(read.Errors);
        Assert.Equal(0, read.Value!.Stop.Outline!.Along.DistanceTo(BracketDescription.Of(bracket, "ours", "drawing").Stop.Outline!.Along), 1e-9);
    }

    private static Bracket Describe(Job of)
    {
        var solution = Designer.Solve(of, SearchEffort.WithoutStrength);
        var (job, drawn) = (solution.Job, solution.Bracket!);
        var measured = BracketDescription.Of(drawn, "ours", "our own drawing");
        var (bracket, mistake) = MeasuredShape.Of(measured, drawn.Stock.Material);
        Assert.Null(mistake);
        Assert.Equal(drawn.Flat.FlangeCount, bracket!.Flat.FlangeCount);
        var trial = BracketTrial.Of(job, bracket, 0, null);
        Assert.Equal(TrialState.Solved, trial.State);
        Assert.Equal(solution.Verdict.Kind, trial.Kind);
        Assert.True(solution.Placement!.Seat.DistanceTo(trial.Solution!.Placement!.Seat) < 1e-6);
        Assert.Equal(solution.Placement.AdjusterShift, trial.Adjuster!.Value, 1e-6);

        // Whatever does not rest on how it was made; distances are found to five hundredths of a millimetre. Of the layer on a finished part nothing is known.
        foreach (var check in solution.Checks.Where(c => c.Id != CheckId.ClipNeck && c.Kind is CheckKind.Safety or CheckKind.Function && double.IsFinite(c.Value) && !c.Code.StartsWith("probability", StringComparison.Ordinal)))
        {
            var found = trial.Solution.Checks.First(c => c.Code == check.Code).Value;
            Assert.True(Math.Abs(check.Value - found) <= Math.Max(SpaceDemand.Error, 1e-3 * Math.Abs(check.Value)), $"{check.Code}: {check.Value} as drawn, {found} as measured");
        }

        return bracket;
    }

    // Area by Pappus' rule needs no allowance of ours: the folded part is what was measured, whatever the flat pattern is.
    [Fact]
    public void A_square_bracket_folds_to_its_outside_sizes()
    {
        var bracket = MeasuredShape.Of(Upright(), SheetClass.All[0]).Bracket!;
        var folded = bracket.Folded;
        var top = bracket.Flat.Bends[0];

        // Tip of the upright flange: 30 above the mount face, its outside in the plane y = 25.
        var tip = folded.Fold(new(top.Middle.X, top.Start.Y + top.Allowance + 30 - 7), 0);
        Assert.Equal(30, tip.Z, 1e-9);
        Assert.Equal(25, tip.Y, 1e-9);
        var inside = folded.Fold(new(top.Middle.X, top.Start.Y + top.Allowance + 30 - 7), 3);
        Assert.Equal(22, inside.Y, 1e-9);

        // 60 x 25 and 60 x 30 outside, less what the rounding takes, and the bend itself at half its thickness.
        var flat = 60 * (25 + 10 - 7) + 60 * (30 - 7) + 60 * top.Allowance;
        Assert.Equal(flat, bracket.Flat.Blank.Outline.SignedArea, 1e-6);
    }

    // The same part measured from other axes is the same part.
    [Fact]
    public void The_axes_on_the_mount_flange_do_not_matter()
    {
        var measured = Read("shelf-upright-34");
        var expected = BracketTrial.Of(Plover.Value, MeasuredShape.Of(measured, Metal(measured)).Bracket!, 0, null);
        Gen.Select(Gen.Double[-40, 40], Gen.Double[-40, 40], Gen.Double[-Math.PI, Math.PI]).Check(
            6, axes =>
            {
                var (x, y, turn) = axes;
                FlatPoint Moved(FlatPoint at) => new(at.Vector.Rotate(new(turn)) + new Vector2(x, y));
                var moved = measured with
                {
                    MountFlange = [.. measured.MountFlange.Select(c => c with { At = Moved(c.At) })],
                    Holes = [.. measured.Holes.Select(h => h with { At = Moved(h.At) })],
                    Bends = [.. measured.Bends.Select(b => b with { Start = Moved(b.Start), End = Moved(b.End) })],
                    Stop = measured.Stop with { At = (Moved(measured.Stop.At.On), measured.Stop.At.Height) },
                };
                var trial = BracketTrial.Of(Plover.Value, MeasuredShape.Of(moved, Metal(moved)).Bracket!, 0, null);
                Assert.Equal((expected.Kind, expected.Ways), (trial.Kind, trial.Ways));
                Assert.Equal(expected.Adjuster!.Value, trial.Adjuster!.Value, 1e-6);
            });
    }

    // Turned over it is the same metal: every point of it comes to lie where the part turned by 180° about the y axis has it.
    [Fact]
    public void Turned_over_it_is_the_same_part()
    {
        var bracket = MeasuredShape.Of(Upright(), SheetClass.All[0]).Bracket!;
        var over = BracketWay.TurnedOver(bracket);
        foreach (var hole in bracket.Holes)
        {
            for (var height = 0.0; height <= 3; height += 1.5)
            {
                var (there, here) = (over.Folded.Fold(hole.Centre.MirroredInX, 3 - height), bracket.Folded.Fold(hole.Centre, height));
                Assert.True(there.DistanceTo(new(-here.X, here.Y, 3 - here.Z)) < 1e-9);
            }
        }

        var (seat, normal) = bracket.FoldedSeat;
        Assert.True(over.FoldedSeat.Point.DistanceTo(new(-seat.X, seat.Y, 3 - seat.Z)) < 1e-9);
        Assert.True(over.FoldedSeat.Normal.DistanceTo(new(-normal.X, normal.Y, -normal.Z)) < 1e-9);
        var back = BracketWay.TurnedOver(over);
        Assert.True(back.FoldedSeat.Point.DistanceTo(seat) < 1e-9);
        Assert.Equal(bracket.Flat.Bends[0].Turn, back.Flat.Bends[0].Turn);
    }

    // Follow the advice, and it passes: solved from the start with what the fitter would measure then.
    [Fact]
    public void Advice_that_is_followed_serves()
    {
        var measured = Read("shelf-upright-34");
        var bracket = MeasuredShape.Of(measured, Metal(measured)).Bracket!;
        var trial = BracketTrial.Of(Plover.Value, bracket, measured.Thickness.PlusMinus, StrengthDetail.Usual);
        Assert.Equal(VerdictKind.Unsafe, trial.Kind);
        var found = BracketRemedies.Of(trial, bracket, measured.Thickness.PlusMinus, StrengthDetail.Usual);
        var spacer = Assert.IsType<PlateUnder>(Assert.Single(found.Remedies.Single(r => r.Changes is [PlateUnder]).Changes));
        Assert.Equal(2, spacer.Thickness);

        // The smallest: the next thinner one does not serve.
        var thinner = new PlateUnder(1.5).Apply(Plover.Value, bracket)!.Value;
        Assert.False(BracketTrial.Of(thinner.Job, thinner.Bracket, 0, null).NothingFails);
        foreach (var remedy in found.Remedies)
        {
            var (job, changed) = (Plover.Value, bracket);
            foreach (var change in remedy.Changes)
            {
                (job, changed) = change.Apply(job, changed)!.Value;
            }

            Assert.True(BracketTrial.Of(job, changed, measured.Thickness.PlusMinus, StrengthDetail.Usual).NothingFails);
        }
    }

    [Fact]
    public void Holes_that_are_narrow_and_off_are_drilled_and_the_slot_is_filed()
    {
        var measured = Read("bought-tall-34");
        var bracket = MeasuredShape.Of(measured, Metal(measured)).Bracket!;
        var trial = BracketTrial.Of(Plover.Value, bracket, 0, StrengthDetail.Usual);
        Assert.Equal(TrialState.NoPattern, trial.State);
        Assert.Equal(VerdictKind.Fails, trial.Kind);
        var remedy = BracketRemedies.Of(trial, bracket, 0, StrengthDetail.Usual).Remedies[0];
        var (bolts, slot) = (Assert.IsType<OpenBoltHoles>(remedy.Changes[0]), Assert.IsType<OpenStop>(remedy.Changes[1]));
        Assert.Equal((6.4, 6.6), (bolts.From, bolts.To));
        Assert.Equal((8.2, true), (slot.From, slot.IsSlot));
        Assert.Equal(9, slot.To, 1e-9);
    }

    [Fact]
    public void A_pattern_that_is_wide_off_cannot_be_helped()
    {
        var measured = Read("market-upright-40");
        var bracket = MeasuredShape.Of(measured, Metal(measured)).Bracket!;
        var trial = BracketTrial.Of(Plover.Value, bracket, 0, null);
        Assert.Equal(TrialState.NoPattern, trial.State);
        Assert.Empty(BracketRemedies.Of(trial, bracket, 0, StrengthDetail.Usual).Remedies);
    }

    // A bracket with a third hole is bolted on by the two that fit, and says which.
    [Fact]
    public void A_hole_too_many_stays_empty()
    {
        var measured = Read("shelf-upright-34");
        measured = measured with { Holes = [new(new(17, 0), 6.6), .. measured.Holes] };
        var trial = BracketTrial.Of(Plover.Value, MeasuredShape.Of(measured, Metal(measured)).Bracket!, 0, null);
        Assert.Equal(TrialState.Solved, trial.State);
        Assert.Equal<string>(["H2", "H3"], trial.Way!.Matches);
    }

    // Where the reading's ± reaches over the limit, the answer is not known.
    [Fact]
    public void A_width_read_roughly_is_not_a_pass()
    {
        var measured = Read("shelf-upright-34");
        Check Opening(double width, double plusMinus) => BracketTrial.Of(
            Plover.Value, MeasuredShape.Of(measured with { Stop = measured.Stop with { Size = new(width, plusMinus) } }, Metal(measured)).Bracket!, 0, null)
            .Solution!.Checks.First(c => c.Id == CheckId.StopOpening);
        Assert.Equal(CheckState.Passes, Opening(9, 0.1).State);
        Assert.Equal(CheckState.NotKnown, Opening(8.5, 0.2).State);
        Assert.Equal(CheckState.Fails, Opening(8.3, 0).State);
    }

    // A limit that is relaxed closes no way.
    [Theory]
    [InlineData(1)]
    [InlineData(4)]
    public void A_relaxed_limit_never_makes_it_worse(double degrees)
    {
        var measured = Read("shelf-upright-34");
        var bracket = MeasuredShape.Of(measured, Metal(measured)).Bracket!;
        var job = Plover.Value;
        var relaxed = job with { Vehicle = job.Vehicle with { Cable = job.Vehicle.Cable with { FleetLimit = job.Vehicle.Cable.FleetLimit + Angle.FromDegrees(degrees) } } };
        Assert.True(BracketTrial.Of(relaxed, bracket, 0, null).Kind >= BracketTrial.Of(job, bracket, 0, null).Kind);
    }

    // The stop turns with its bend about the bend's own axis: bent on and back it is where it was, and its distance from the axis stays.
    [Fact]
    public void Bent_on_and_back_the_stop_is_where_it_was()
    {
        var bracket = MeasuredShape.Of(Upright(), SheetClass.All[0]).Bracket!;
        var square = Angle.Right;
        var closed = new BendFurther(0, square, Angle.FromDegrees(80)).Apply(Plover.Value, bracket)!.Value.Bracket;
        var back = new BendFurther(0, Angle.FromDegrees(80), square).Apply(Plover.Value, closed)!.Value.Bracket;
        var seat = bracket.FoldedSeat.Point;
        Assert.True(back.FoldedSeat.Point.DistanceTo(seat) < 1e-9);

        // Closing a bend that goes up brings the stop over the mount flange; measured and folded stop move alike.
        Assert.True(closed.FoldedSeat.Point.Y < seat.Y - 2);
        Assert.True(closed.FoldedSeat.Point.DistanceTo((closed with { Measured = null }).FoldedSeat.Point) < 1e-9);
    }

    // A small end fitting goes through a round hole; then a hole that is too low is drilled anew, higher up.
    [Fact]
    public void A_round_hole_is_drilled_anew()
    {
        var job = Plover.Value;
        job = job with { Vehicle = job.Vehicle with { Cable = job.Vehicle.Cable with { Fitting = new(EndFittingKind.Barrel, 3.5, 4) } } };
        var measured = Read("shelf-upright-34");
        measured = measured with
        {
            Bends = [measured.Bends[0] with { Outline = [new(new(0, 0), 0), new(new(78.5, 0), 0), new(new(78.5, 60), 3), new(new(30, 60), 3), new(new(0, 22), 3)] }],
            Stop = measured.Stop with { SlotTowards = null, At = (new(52, 25.5), 14) },
        };
        var bracket = MeasuredShape.Of(measured, Metal(measured)).Bracket!;
        Assert.NotNull(BracketEdit.Redrilled(bracket, 0, 16, 9));
        Assert.Null(BracketEdit.Redrilled(bracket, 0, 8, 9));
        Assert.Null(BracketEdit.Redrilled(bracket, 0, 60, 9));
        var moved = BracketEdit.Redrilled(bracket, -3, 16, 9)!;
        Assert.True(moved.FoldedSeat.Point.DistanceTo(bracket.FoldedSeat.Point + new Vector3(-3, 0, 16)) < 1e-9);
        Assert.Equal(bracket.Flat.Blank.Holes.Length + 1, moved.Flat.Blank.Holes.Length);
    }

    // Whatever is measured wrongly, the answer is a mistake with a name, or a bracket that can be tried.
    [Fact]
    public void Wrong_measurements_are_told_and_break_nothing()
    {
        var (measured, told, tried) = (Read("shelf-upright-34"), 0, 0);
        Gen.Select(Gen.Double[-60, 60], Gen.Double[-60, 60], Gen.Int[0, 9], Gen.Double[31, 174]).Check(
            LongRun.Of(1000), wrong =>
            {
                var (x, y, what, degrees) = wrong;
                var at = new FlatPoint(x, y);
                var bend = measured.Bends[0];
                var spoilt = what switch
                {
                    < 4 => measured with { MountFlange = measured.MountFlange.SetItem(what, new(at, Math.Abs(x) / 10)) },
                    < 8 => measured with { Bends = [bend with { Outline = bend.Outline.SetItem(what - 4, new(at, Math.Abs(y) / 10)), Included = Angle.FromDegrees(degrees) }] },
                    8 => measured with { Bends = [bend with { Start = at, Relief = 4 }] },
                    _ => measured with { Stop = measured.Stop with { At = (at, 20), Direction = new Vector3(0, 1, 0) } },
                };
                if (MeasuredShape.Of(spoilt, Metal(measured)) is not { Bracket: { } bracket })
                {
                    told++;
                    return;
                }

                tried++;
                _ = BracketTrial.Of(Plover.Value, bracket, 0, tried % 8 == 0 ? StrengthDetail.Usual : null).Kind;
            });
        Assert.True(told > 10 && tried > 2, $"{told} told, {tried} tried");
    }

    [Theory]
    [InlineData(4.3, "M4")]
    [InlineData(5.5, "M5")]
    [InlineData(6.6, "M6")]
    [InlineData(9, "M8")]
    public void A_hole_takes_the_largest_bolt_that_goes_through(double diameter, string thread) => Assert.Equal(thread, MeasuredShape.MadeFor(diameter).Name);

    private static MeasuredBracket Read(string name)
    {
        var result = ProfileReader.ReadBracket(RepositoryRoot.PathOf("profiles", "brackets", name + ".toml"), new DiskFileSource(), Plover.Value.Shop);
        Assert.True(result.IsRead, string.Join('\n', result.Errors));
        return result.Value!;
    }

    private static Material Metal(MeasuredBracket measured) => measured.MetalIn(Plover.Value.Shop)!;

    private static FlangeCorner Corner(double x, double y) => new(new(x, y), 0);

    // 60 wide, 35 and 30 outside, 3 thick, inside radius 4.
    private static MeasuredBracket Upright() => new()
    {
        Name = "upright",
        Source = "test",
        Material = "steel",
        Thickness = new(3),
        MountFlange = [Corner(-10, -10), Corner(50, -10), Corner(50, 25), Corner(-10, 25)],
        Holes = [new(new(0, 0), 6.6), new(new(34, 0), 6.6)],
        Bends =
        [
            new()
            {
                From = 0,
                Start = new(-10, 25),
                End = new(50, 25),
                Included = Angle.Right,
                IsUp = true,
                InsideRadius = 4,
                Outline = [Corner(0, 0), Corner(60, 0), Corner(60, 30), Corner(0, 30)],
            },
        ],
        Stop = new() { At = (new(20, 25), 18), PlusMinus = 0.1, Size = new(9), DirectionPlusMinus = Angle.FromDegrees(1) },
    };
}
