using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Search;
using BracketGen.Design.Study;
using BracketGen.Geometry;
using BracketGen.SheetMetal.Patterns;

namespace BracketGen.Design.Tests;

/// <summary>Slotted mount holes: where they let a bracket stand, and that the verdict holds there.</summary>
public sealed class MountSlotTests
{
    private static readonly Job Job = Examples.Read("plover-alder-58-slotted");
    private static readonly Solution Answer = Designer.Solve(Job, SearchEffort.Whole);

    private static Bracket With(params (SlottedHole? First, SlottedHole? Second)[] outlines)
    {
        var bracket = Answer.Bracket!;
        SlottedHole?[] each = [outlines[0].First, outlines[0].Second];
        return bracket with { Holes = [.. bracket.Holes.Select((h, i) => i < 2 ? h with { Outline = each[i] } : h)] };
    }

    private static SlottedHole Slot(double degrees, double travel = 3) => new(Vector2.FromPolar(1, Angle.FromDegrees(degrees)), travel);

    // H1 and H2 lie 34 mm apart along x. Hand geometry: slots along their line shift by half their travel each way; slots square to it let each bolt go to either end, and turn the bracket by atan(3/34).
    [Fact]
    public void Slots_let_the_bracket_shift_and_where_they_lie_side_by_side_turn()
    {
        double Shift(Bracket end) => (end.FoldedSeat.Point - Answer.Bracket!.FoldedSeat.Point).Length;
        double Turn(Bracket end) => Math.Acos(Math.Clamp(end.Folded.Flanges[0].X.Dot(Answer.Bracket!.Folded.Flanges[0].X), -1, 1));
        var inLine = SlotPositions.Ends(With((Slot(0), Slot(0))));
        Assert.Equal(2, inLine.Length);
        Assert.All(inLine, e => Assert.Equal(1.5, Shift(e), 1e-9));
        Assert.All(inLine, e => Assert.Equal(0, Turn(e), 1e-6));

        var beside = SlotPositions.Ends(With((Slot(90), Slot(90))));
        Assert.Equal(4, beside.Length);
        Assert.Equal([0.0, 0.0, Math.Atan(3 / 34.0), Math.Atan(3 / 34.0)], beside.Select(Turn).Order(), (a, b) => Math.Abs(a - b) < 1e-3);
    }

    [Fact]
    public void One_slot_that_points_to_a_round_hole_lets_it_do_nothing_and_one_square_to_it_lets_it_turn()
    {
        Assert.Empty(SlotPositions.Ends(With((null, Slot(0)))));
        Assert.Empty(SlotPositions.Ends(With((null, null))));
        Assert.Equal(0, SlotPositions.Farthest(With((null, Slot(0)))));
        var turned = SlotPositions.Ends(With((null, Slot(90))));
        Assert.Equal(2, turned.Length);

        // The bolt in the round hole stays where it is within its play of 0.3 mm.
        Assert.All(turned, e => Assert.True(e.Holes[0].Shift.Length <= 0.3 + 1e-6));
        Assert.Equal(1.5, SlotPositions.Farthest(With((null, Slot(90)))), 0.05);
    }

    // Whatever the slots: the bolts stay where they are in space, and in their slots.
    [Fact]
    public void The_bolts_stay_where_they_are()
    {
        foreach (var (one, other, travel) in new[] { (0.0, 0.0, 4.0), (90, 90, 8), (30, 30, 6), (20, 70, 5), (45, -45, 3), (89, 90, 6) })
        {
            var bracket = With((Slot(one, travel), Slot(other, travel / 2)));
            foreach (var end in SlotPositions.Ends(bracket))
            {
                for (var i = 0; i < 2; i++)
                {
                    Assert.True(bracket.Folded.Flanges[0].ToThrottle(bracket.Holes[i].BoltAt).DistanceTo(end.Folded.Flanges[0].ToThrottle(end.Holes[i].BoltAt)) < 1e-9);
                    var slot = (SlottedHole)end.Holes[i].Outline!;
                    var along = Math.Clamp(end.Holes[i].Shift.Dot(slot.Along), -slot.Travel / 2, slot.Travel / 2);
                    Assert.True(end.Holes[i].Shift.DistanceTo(along * slot.Along) <= 0.3 + 1e-6, $"{one} {other}");
                }
            }
        }
    }

    [Fact]
    public void The_example_passes_in_the_middle_and_at_both_ends()
    {
        Assert.Equal(VerdictKind.Passes, Answer.Verdict.Kind);
        Assert.All(Answer.Bracket!.Holes.SkipLast(1), h => Assert.Equal(3, ((SlottedHole)h.Outline!).Travel));
        Assert.Contains(Answer.Checks, c => c.IsAtSlotEnd);
        Assert.Equal(CheckState.Passes, Of(Answer, CheckId.SlotSlip).State);
        Assert.Equal(CheckState.Passes, Of(Answer, CheckId.SlotEnds).State);

        // Every check is the worst of the middle and of the bracket really laid at each end.
        foreach (var end in SlotPositions.Ends(Answer.Bracket))
        {
            var laid = GivenBracket.On(Job, end with { Holes = [.. end.Holes.Select(h => h with { Outline = h.Purpose == HolePurpose.Bolt ? null : h.Outline })] }, end.Folded.Flanges[0])!;
            foreach (var check in laid.Checks.Where(c => double.IsFinite(c.Value) && c.Definition.Scope is CheckScope.StopPlace || c.Id is CheckId.AdjusterReserve or CheckId.MovingParts or CheckId.KeepOut))
            {
                Assert.True(Answer.Checks.Single(c => c.Code == check.Code).Margin <= check.Margin + 1e-3, check.Code);
            }
        }
    }

    [Fact]
    public void Friction_that_nobody_tried_is_not_proven_and_a_low_one_fails()
    {
        Solution With(double? friction) => GivenBracket.On(
            Job with { Body = Job.Body with { Mount = Job.Body.Mount with { FaceFriction = friction } } }, Answer.Bracket!, Answer.Bracket!.Folded.Flanges[0], StrengthDetail.Coarse)!;
        var untried = With(null);
        Assert.Equal(CheckState.NotKnown, Of(untried, CheckId.SlotSlipStamped).State);
        Assert.NotEqual(VerdictKind.Passes, untried.Verdict.Kind);
        Assert.Equal(VerdictKind.Unsafe, With(0.05).Verdict.Kind);
    }

    // A wall that only the bracket at one end of its slots comes near.
    [Fact]
    public void What_fails_at_an_end_fails()
    {
        var bracket = Answer.Bracket!;
        var far = bracket.Folded.Flanges.SelectMany((f, i) => bracket.Flat.FlangeRegion(i).Outline.Segments.Select(s => f.ToThrottle(new(s.Start), 0))).Min(p => p.Vector.Y);
        var wall = new KeepOutBox("wall", new(-120, far - 20, -60), new(-40, far - 3.0, 40));
        var job = Job with { Body = Job.Body with { KeepOuts = [wall] }, Chosen = Answer.Taken };
        var walled = Designer.Solve(job, SearchEffort.WithoutStrength);
        var check = walled.Checks.Single(c => c.Id == CheckId.KeepOut && c.Subject == "wall");
        Assert.Equal(ChosenState.Fails, walled.ChosenIs);
        Assert.True(check is { Fails: true, IsAtSlotEnd: true, PassesInMiddleOfSlots: true });
    }

    // The wire runs along x at its seat to within a degree: slots along it make it longer by their travel, slots across it hardly.
    [Fact]
    public void Sliding_along_the_wire_takes_the_free_play()
    {
        var least = Job.Preferences.FreePlay.Min;
        Assert.InRange(Of(Answer, CheckId.SlotFreePlay).Value, least - 0.3, least);
        var bracket = With((Slot(90, 2.4), Slot(90, 2.4)));
        var laid = GivenBracket.On(Job, bracket, bracket.Folded.Flanges[0])!;
        var check = Of(laid, CheckId.SlotFreePlay);
        Assert.True(check.IsDanger);
        Assert.True(check.Value <= least - 2.4 + 0.01);
    }

    // Shorter slots, or round holes, are tried as a way out.
    [Fact]
    public void Shorter_slots_are_tried()
    {
        var setting = Assert.Single(Setting.Of(Job), s => s.Input == ChangedInput.SlotTravel);
        Assert.Equal(2.5, setting.At(1), 1e-9);
        Assert.Equal(2.5, setting.Applied(Job, 1).Preferences.MountSlots!.Travel, 1e-9);
        Assert.Null(setting.Applied(Job, setting.Most).Preferences.MountSlots);
        Assert.DoesNotContain(Setting.Of(Examples.Read("plover-alder-58")), s => s.Input == ChangedInput.SlotTravel);
    }

    // Described as somebody would measure it, it is the same bracket; its pattern may be off along the slots, not across them.
    [Fact]
    public void A_measured_one_is_read()
    {
        var described = BracketDescription.Of(Answer.Bracket!, "ours", "our own drawing");
        Assert.All(described.Holes, h => Assert.Equal(3, h.Slot!.Travel));
        BracketTrial Tried(MeasuredBracket measured) => BracketTrial.Of(Job, MeasuredShape.Of(measured, Answer.Bracket!.Stock.Material).Bracket!, 0, null);
        var trial = Tried(described);
        Assert.Equal(TrialState.Solved, trial.State);
        Assert.Contains(trial.Solution!.Checks, c => c.IsAtSlotEnd);
        var quick = Designer.Solve(Job with { Chosen = Answer.Taken }, SearchEffort.WithoutStrength);
        Assert.Equal(Of(quick, CheckId.AdjusterReserve).Value, Of(trial.Solution, CheckId.AdjusterReserve).Value, 1e-6);
        MeasuredBracket Moved(Vector2 by) => described with { Holes = described.Holes.SetItem(1, described.Holes[1] with { At = described.Holes[1].At + by }) };
        Assert.Equal(TrialState.Solved, Tried(Moved(new(1, 0))).State);
        Assert.Equal(TrialState.NoPattern, Tried(Moved(new(4.5, 0))).State);

        // A slot as long as its ± allows.
        var loose = described with { Holes = [.. described.Holes.Select(h => h with { SlotPlusMinus = 0.5 })] };
        var most = MeasuredShape.Of(loose, Answer.Bracket!.Stock.Material).Bracket!;
        Assert.Equal(3.5, ((SlottedHole)most.Holes[0].Outline!).Travel, 1e-9);
    }

    [Fact]
    public void The_mirror_image_of_a_job_has_the_mirrored_slots()
    {
        Assert.Equal(Job.Preferences, Job.Preferences.Mirrored().Mirrored());
        var slots = new MountSlots(3, new Vector3(1, 2, 0).Unit);
        var frame = MountFrame.Of(Job.Body.Mount).Frame;
        var slot = slots.On(frame);
        var mirrored = slots.Mirrored().On(frame.Mirrored());
        Assert.Equal(0, slot.Along.Cross(mirrored.Along.MirroredInX), 1e-12);

        // Whichever sense is given.
        Assert.Equal(slot, (slots with { Way = -slots.Way }).On(frame));
        Assert.Null(MountSlots.InFace(frame.Z, frame.Z));
    }

    [Fact]
    public void Its_length_is_inspected()
    {
        var item = Inspection.ItemsOf(Job, Answer.Bracket!).First(i => i.Thing == InspectedThing.SlotLength);
        Assert.Equal(("H1", 9.6), (item.Of, Math.Round(item.Nominal, 6)));
        var longer = Inspection.Of(Answer, new Dictionary<string, double> { [item.Name] = 10.6 }, 0.1, null);
        Assert.False(longer.IsAsDrawn);
    }

    private static Check Of(Solution solution, CheckId id) => solution.Checks.Single(c => c.Id == id);
}
