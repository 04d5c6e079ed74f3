using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Search;
using BracketGen.Design.Study;
using BracketGen.SheetMetal.Fasteners;

namespace BracketGen.Design.Tests;

/// <summary>A mount with a stud and a plain hole: its checks, each of which can fail, and the play of the bolt.</summary>
public sealed class NutMountTests
{
    private static readonly Job Job = Examples.Read("plover-alder-58-stud");
    private static readonly Solution Answer = Designer.Solve(Job, SearchEffort.Whole);

    private static StrengthReport With(Func<MountHole, MountHole> changed)
    {
        var mount = Job.Body.Mount;
        var job = Job with { Body = Job.Body with { Mount = mount with { Holes = [.. mount.Holes.Select(changed)] } } };
        return StrengthStudy.Of(job, Answer.Travel, Answer.Placement!, Answer.Bracket!, StrengthDetail.Usual);
    }

    private static Check Of(StrengthReport report, CheckId id) => report.Checks.Single(c => c.Id == id);

    [Fact]
    public void It_passes_and_every_kind_has_its_checks()
    {
        Assert.Equal(VerdictKind.Passes, Answer.Verdict.Kind);
        Assert.All([CheckId.NutThread, CheckId.StudLength, CheckId.StudDepth, CheckId.NutRoom, CheckId.BossThread], id => Assert.Equal(CheckState.Passes, Of(Answer.Strength!, id).State));
        Assert.DoesNotContain(Answer.Strength!.Checks, c => c.Id == CheckId.ThreadDepth);
        Assert.Equal(["H1", "H2"], ((CheckId[])[CheckId.StudLength, CheckId.NutRoom]).Select(id => Of(Answer.Strength!, id).Subject));

        // A mount with tapped holes alone has none of them.
        var tapped = With(h => h with { Fixing = new TappedHole(), ThreadDepth = 30 });
        Assert.DoesNotContain(tapped.Checks, c => c.Id is CheckId.NutThread or CheckId.StudLength or CheckId.StudDepth or CheckId.NutRoom);
        Assert.Contains(tapped.Checks, c => c.Id == CheckId.ThreadDepth);
    }

    [Fact]
    public void A_stud_that_is_too_short_or_sits_too_shallow_fails()
    {
        // By hand: sheet, washer 0.065 in, nut 0.226 in and 1/28 in.
        var length = Of(Answer.Strength!, CheckId.StudLength).Limit;
        Assert.Equal(Answer.Bracket!.Stock.Thickness + (0.065 + 0.226 + 1.0 / 28) * 25.4, length, 1e-9);
        MountHole Stud(MountHole hole, double standsOut) => hole.Fixing is MountStud ? hole with { Fixing = new MountStud(standsOut) } : hole;
        Assert.True(Of(With(h => Stud(h, length - 0.1)), CheckId.StudLength).Fails);
        Assert.False(Of(With(h => Stud(h, length + 0.1)), CheckId.StudLength).Fails);
        Assert.True(Of(With(h => h.Fixing is MountStud ? h with { ThreadDepth = 8 } : h), CheckId.StudDepth).Fails);
        Assert.Equal(CheckState.NotKnown, Of(With(h => h with { ThreadDepth = null }), CheckId.StudDepth).State);
    }

    [Fact]
    public void A_nut_without_room_fails_and_room_that_nobody_measured_is_not_known()
    {
        MountHole Room(MountHole hole, double? room) => hole.Fixing is ThroughHole through ? hole with { Fixing = through with { Room = room } } : hole;
        var needed = Of(Answer.Strength!, CheckId.NutRoom).Limit;
        Assert.True(Of(With(h => Room(h, needed - 0.1)), CheckId.NutRoom).Fails);
        Assert.Equal(CheckState.NotKnown, Of(With(h => Room(h, null)), CheckId.NutRoom).State);
    }

    [Fact]
    public void A_weak_nut_strips()
    {
        var joint = Answer.Strength!.Joints[1];
        var weak = joint with { Joint = joint.Joint with { Screw = joint.Screw with { Class = joint.Screw.Class with { Nut = new("", 400) } } } };
        Assert.True(Assert.Single(JointChecks.Of([weak], Answer.Strength.Metal), c => c.Id == CheckId.NutThread).Fails);
    }

    [Fact]
    public void A_spacer_is_judged_and_may_be_squeezed()
    {
        var joint = Answer.Strength!.Joints[1];
        Assert.Equal(6, joint.Screw.Spacer!.Length);
        Assert.Equal(CheckState.Passes, Of(Answer.Strength, CheckId.SpacerPressure).State);
        Assert.Equal("H2", Of(Answer.Strength, CheckId.SpacerPressure).Subject);
        var hard = joint with { Stamped = joint.Stamped with { Tilt = 200_000 } };
        Assert.True(Assert.Single(JointChecks.Of([hard], Answer.Strength.Metal), c => c.Id == CheckId.SpacerPressure).Fails);

        // The boss with its spacer reaches up to the bracket, and a hole of the bracket knows its own.
        var body = Job.Body;
        Assert.Equal(-24, body.Bosses[1].To.Z, 1e-9);
        Assert.Equal([0.0, 6.0, 0.0], Answer.Bracket!.Holes.Select(h => h.SpacerLength));
        Assert.Equal(body.Mount.Holes[1], body.Mount.Nearest(new(-50, 12, -24)));

        // Its length may be off: one more thing that moves the seat.
        Assert.Contains(SeatTolerances.OfMount(Answer.Bracket, body.Mount), t => t.PlusMinus == Spacer.Deviation);
    }

    // Hand geometry: the bolt has its play in both holes; 9/32 in for 1/4 in each.
    [Fact]
    public void The_bolt_has_its_play_in_both_holes()
    {
        var through = Job.Body.Mount.Holes[1];
        Assert.Equal((9.0 / 32 - 0.25) * 25.4 / 2 * 2, through.Play, 1e-9);
        Assert.Equal((9.0 / 32 - 0.25) * 25.4 / 2, Job.Body.Mount.Holes[0].Play, 1e-9);

        var bracket = Answer.Bracket!;
        var tapped = bracket with { Holes = [.. bracket.Holes.Select(h => h with { Fixing = new TappedHole() })] };
        Assert.True(SeatTolerances.TurnInPlay(bracket, Job.Shop.Process)!.Value > SeatTolerances.TurnInPlay(tapped, Job.Shop.Process)!.Value);
    }

    [Fact]
    public void Nut_and_stud_stand_up_where_a_head_would()
    {
        var (stud, through) = (Job.Body.Mount.Holes[0], Job.Body.Mount.Holes[1]);
        Assert.Equal(15.875 - 3, stud.Fixing.Above(stud.Thread, 3), 1e-9);
        Assert.Equal((0.065 + 0.226) * 25.4, new MountStud(5).Above(stud.Thread, 3), 1e-9);
        Assert.Equal((0.065 + 0.163) * 25.4, through.Fixing.Above(through.Thread, 3), 1e-9);
    }
}
