using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Search;
using BracketGen.Design.Study;
using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;
using BracketGen.Mechanism.Grooves;
using BracketGen.Words.Checks;
using BracketGen.Words.Results;
using Check = BracketGen.Design.Checks.Check;

namespace BracketGen.Design.Tests;

/// <summary>A second cable in a groove of its own: its wire, its slack, and the return with it.</summary>
public class OtherGrooveTests
{
    private static readonly Job Twin = Examples.Read("dunlin-tourer-alder-58-twin");
    private static readonly Solution Answer = Designer.Solve(Twin, SearchEffort.WithoutStrength);

    private static Job With(Func<OtherCable, OtherCable>? cable = null, Func<OtherGroove, OtherGroove>? groove = null, Func<CableUse, CableUse>? use = null) => Twin with
    {
        Vehicle = Twin.Vehicle with { OtherCables = [(cable ?? (c => c))(Twin.Vehicle.OtherCables[0])] },
        Body = Twin.Body with { OtherGrooves = [(groove ?? (g => g))(Twin.Body.OtherGrooves[0])] },
        CableUses = [(use ?? (u => u))(Twin.CableUses[0])],
    };

    private static Job WithDrag(Measured drag) => With(c => c with { Cable = c.Cable! with { ClosingDrag = drag } });

    private static Check Of(Job job, CheckId id) => All(job).Single(c => c.Id == id);

    private static IEnumerable<Check> All(Job job) => OtherCableChecks.Of(job)
        .Concat(MechanismReport.Of(job, Answer.Travel, Answer.Placement, Answer.Bracket, samples: 64).Checks.Where(OtherCableChecks.IsOne));

    [Fact]
    public void The_example_passes_with_all_of_them()
    {
        Assert.All(All(Twin), c => Assert.True(c.Passes, c.Code));
        Assert.Equal(All(Twin).Count(), All(Twin).Select(c => c.Code).Distinct().Count());
        Assert.All(All(Twin), c => Assert.Contains("\"cruise cable\"", c.Title(), StringComparison.Ordinal));
        Assert.DoesNotContain(Answer.Checks, c => c.Fails && c.Kind != CheckKind.Advice);
    }

    [Fact]
    public void Without_something_that_holds_its_outer_it_is_unsafe()
    {
        foreach (var job in new[] { With(use: u => u with { HeldBy = null }), With(use: u => u with { Seat = null }) })
        {
            var check = Of(job, CheckId.OtherStop);
            Assert.True(check.IsDanger);
            Assert.Contains("No bracket holds the outer of this cable yet", check.Consequence(), StringComparison.Ordinal);
            Assert.Contains("[[keep_out]]", check.Consequence(), StringComparison.Ordinal);
            Assert.Equal(VerdictKind.Unsafe, Verdict.Of(Designer.CheckTravel(job).Checks).Kind);
        }
    }

    // Where nobody says where the seat is, the cable says it: free inner length less free play along the groove and on.
    [Fact]
    public void A_seat_that_is_not_given_is_where_the_cable_would_want_it()
    {
        var wire = OtherCableWire.Of(With(use: u => u with { Seat = null }))[0];
        Assert.Equal(148, wire.Sweep[0].Length, 9);
        Assert.Equal(14, wire.Seat.Z);
        Assert.Equal(28 * Math.PI * 84 / 180, wire.Moved, 9); // Arc length.
        Assert.Contains("The cable would want it at", OtherCableText.Account(With(use: u => u with { Seat = null }), Twin.Vehicle.OtherCables[0]), StringComparison.Ordinal);
    }

    // By hand: 28 mm x (free arc - 84°) for its own wire, 31.5 mm for the pedal's.
    [Fact]
    public void Slack_that_goes_nowhere_is_unsafe()
    {
        var tight = With(groove: g => g with { FreeArc = Angle.FromDegrees(60) });
        Assert.Equal(-28 * Math.PI * 24 / 180, Of(tight, CheckId.IdleSlack).Value, 9);
        Assert.True(Of(tight, CheckId.IdleSlack).IsDanger);
        Assert.Equal(CheckState.NotKnown, Of(With(groove: g => g with { FreeArc = null }), CheckId.IdleSlack).State);
        Assert.True(Of(With(c => c with { TakeUp = 42 }, g => g with { FreeArc = null }), CheckId.IdleSlack).Passes);

        var pedal = Twin with { Body = Twin.Body with { FreeArc = Angle.FromDegrees(60) } };
        Assert.Equal(-31.5 * Math.PI * 24 / 180, Of(pedal, CheckId.PedalSlack).Value, 9);
        Assert.True(Of(pedal, CheckId.PedalSlack).IsDanger);
        Assert.Equal(CheckState.NotKnown, Of(Twin with { Body = Twin.Body with { FreeArc = null } }, CheckId.PedalSlack).State);
    }

    // By hand, closed stop, where the springs are weakest: 800 N·mm, shaft drag 1.5 x 15 N·mm, drag 1.5 x 9 N on 28 mm.
    [Fact]
    public void The_return_is_looked_at_with_each_cable_and_with_both()
    {
        var job = WithDrag(new(9));
        Assert.Equal(1 - (28 * 1.5 * 9 + 1.5 * 15) / 800, Of(job, CheckId.CableReturn).Value, 9);
        Assert.True(Of(job, CheckId.CablesReturn).Value < Of(job, CheckId.CableReturn).Value);
        Assert.True(Of(WithDrag(new(15)), CheckId.CableReturn).IsDanger);
        Assert.True(Of(WithDrag(new(9)), CheckId.CablesReturn).IsDanger);
        Assert.True(Of(WithDrag(new(9)), CheckId.CablesReturnOneFailed).IsDanger);

        // The pedal's cable has its own checks, which the other does not change.
        var report = MechanismReport.Of(job, Answer.Travel, Answer.Placement, Answer.Bracket, samples: 64);
        Assert.Equal(Answer.Mechanism!.Checks.Single(c => c.Id == CheckId.ReturnMargin).Value, report.Checks.Single(c => c.Id == CheckId.ReturnMargin).Value, 9);
        var (pedal, both) = (report.Return!.All, Of(job, CheckId.CablesReturn).Value);
        Assert.All(pedal, m => Assert.True(both <= (m.Left - 28 * 1.5 * 9) / m.Spring + 1e-9));
    }

    [Fact]
    public void Drag_that_nobody_measured_is_not_proven()
    {
        var job = WithDrag(new(Cable.UsualDrag, 0, Evidence.Assumed));
        Assert.Equal(CheckState.NotKnown, Of(job, CheckId.CablesReturnOneFailed).State);
        Assert.Contains("Measure the closing drag of this cable", Of(job, CheckId.CablesReturnOneFailed).Consequence(), StringComparison.Ordinal);
    }

    [Fact]
    public void Wire_groove_and_fitting_are_looked_at_like_those_of_the_pedals_cable()
    {
        Assert.True(Of(With(groove: g => g with { Quadrant = g.Quadrant with { GrooveWidth = 1 } }), CheckId.WireInGroove).IsDanger);
        Assert.True(Of(With(groove: g => g with { Quadrant = g.Quadrant with { GrooveExtent = Angle.FromDegrees(100) } }), CheckId.GrooveLength).IsDanger);
        Assert.True(Of(With(c => c with { Cable = c.Cable! with { Fitting = new(EndFittingKind.Ball, 9, 9) } }), CheckId.PocketPlay).Fails);
        Assert.Equal(CheckState.NotKnown, Of(With(groove: g => g with { Quadrant = g.Quadrant with { PocketShape = null } }), CheckId.PocketShape).State);
        Assert.True(Of(With(use: u => u with { Seat = new(-88.9, -2.6, 25) }), CheckId.FleetAngle).IsDanger);
        Assert.True(Of(With(use: u => u with { Seat = new(-110, -2.6, 14) }), CheckId.AdjusterReserve).Fails);
        Assert.True(Of(With(use: u => u with { Seat = new(5, 5, 14) }), CheckId.CableReach).IsDanger);
        Assert.True(Of(With(c => c with { Stroke = new(30) }), CheckId.CableStroke) is { Fails: true, Kind: CheckKind.Advice });
    }

    [Fact]
    public void No_search_and_no_remedy_is_asked_to_change_it()
    {
        var job = With(groove: g => g with { FreeArc = Angle.FromDegrees(60), Quadrant = g.Quadrant with { GrooveExtent = Angle.FromDegrees(100) } });
        var solution = Designer.Solve(job, SearchEffort.WithoutStrength);
        Assert.NotNull(solution.Bracket);
        Assert.Equal(VerdictKind.Unsafe, solution.Verdict.Kind);
        Assert.Null(Diagnosis.Of(solution, SearchEffort.WithoutStrength));
    }

    [Fact]
    public void The_bracket_stays_clear_of_the_other_groove_and_the_other_wire()
    {
        Assert.True(MovingParts.Of(Twin).DistanceTo(new(20, 0, 14)) < 0);
        Assert.True(MovingParts.Of(Twin with { Body = Twin.Body with { OtherGrooves = [] } }).DistanceTo(new(20, 0, 14)) > 0);

        // A seat beside the bracket's own, in the plane of the first groove: the wire goes through the bracket's metal.
        var through = With(use: u => u with { Seat = Answer.Placement!.Seat + new Vector3(-20, 0, 0) });
        var check = BracketChecks.InSpace(Answer.Bracket!, through, Answer.Placement!, Answer.Travel).Single(c => c.Id == CheckId.MovingParts);
        Assert.Equal(new Pair(Thing.OtherWire, Thing.Bracket), check.Pair);
        Assert.True(check.IsDanger);
        Assert.Contains("cruise cable", check.Title(), StringComparison.Ordinal);
    }

    private static Job Kick(double needed, double most, double? force = 20)
    {
        var cable = Twin.Vehicle.OtherCables[0] with { Duty = CableDuty.KickDown, Stroke = new(needed), MaxStroke = most, DrawForce = force is { } f ? new Measured(f) : null };
        var job = With(_ => cable, g => g with { Role = GrooveRole.Pulled, Quadrant = g.Quadrant with { Pocket = g.Quadrant.Pocket with { Value = Angle.FromDegrees(150) } } }, u => u with { Seat = null });
        return job;
    }

    // Arc length: 28 mm x 84° = 41.05 mm, less 2 mm of free play.
    [Fact]
    public void A_wire_that_the_quadrant_draws_has_its_stroke_at_both_ends()
    {
        Assert.Equal(28 * Math.PI * 84 / 180 - 2, Of(Kick(35, 45), CheckId.KickDownStroke).Value, 9);
        Assert.True(Of(Kick(35, 45), CheckId.KickDownStroke).Passes);
        Assert.True(Of(Kick(40, 45), CheckId.KickDownStroke).IsDanger);
        Assert.True(Of(Kick(35, 45), CheckId.DrawnStroke).Passes);
        Assert.True(Of(Kick(35, 40), CheckId.DrawnStroke).Fails);

        // It pulls the valve closed: it never hinders the return, and the foot has to draw it.
        Assert.DoesNotContain(All(Kick(35, 45)), c => c.Id is CheckId.CableReturn or CheckId.CablesReturn or CheckId.IdleSlack);
        var (light, heavy) = (Of(Kick(35, 45, 10), CheckId.DrawnFootForce).Value, Of(Kick(35, 45, 20), CheckId.DrawnFootForce).Value);
        var foot = Answer.Mechanism!.FootForces.Max(f => f.Pressing);
        Assert.InRange(light, foot, heavy);
        Assert.Equal(heavy - light, light - foot, 6);
        Assert.True(Of(Kick(35, 45, 200), CheckId.DrawnFootForce).Fails);
        Assert.Equal(CheckState.NotKnown, Of(Kick(35, 45, null), CheckId.DrawnFootForce).State);
    }

    [Fact]
    public void The_mirrored_job_has_the_same_answer()
    {
        MirrorImage.Check(Twin, Twin.Mirrored());
        var turned = Twin.Mirrored().OpeningCounterClockwise();
        Assert.Equal(All(Twin).Select(c => (c.Code, Math.Round(c.Value, 9))), All(turned).Select(c => (c.Code, Math.Round(c.Value, 9))));
        Assert.Contains("y -2.6, z 14.0 mm", OtherCableText.Account(Twin, Twin.Vehicle.OtherCables[0]), StringComparison.Ordinal);
        Assert.Contains("y 2.6, z 14.0 mm", OtherCableText.Account(Twin.Mirrored(), Twin.Vehicle.OtherCables[0]), StringComparison.Ordinal);
    }
}
