using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Study;
using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;
using BracketGen.Mechanism.Rods;
using BracketGen.TestSupport;

namespace BracketGen.Design.Tests;

/// <summary>The engine rocks in its mounts: what that does to the outer and to the free play.</summary>
public class MovementTests
{
    private static readonly Job Plover = Examples.Read("plover-alder-58");
    private static readonly Solution Answer = Designer.Solve(Plover);

    private static readonly EngineMovement Given = new()
    {
        X = 6, Y = 8, Z = 4, Roll = Angle.FromDegrees(2), Direction = new(0, 0, 1), Crankshaft = new(50, -300, -80),
    };

    private static MechanismReport Report(Job job) => MechanismReport.Of(job, Answer.Travel, Answer.Placement, null, samples: 16);

    private static Check Check(Job job, CheckId id) => Report(job).Checks.Single(c => c.Id == id);

    private static Job With(Job job, Func<Cable, Cable> cable) => job with { Vehicle = job.Vehicle with { Cable = cable(job.Vehicle.Cable) } };

    // Rigid motion: whether the body moves or the bulkhead moves back, the outer between them is the same.
    [Fact]
    public void Moving_the_body_is_moving_the_bulkhead_back()
    {
        var (cable, placement, bulkhead) = (Plover.Vehicle.Cable, Answer.Placement!, Plover.Bulkhead!);
        List<double> moved = [];
        foreach (var roll in (double[])[-1, 1])
        {
            foreach (var shift in from x in new[] { -6, 6 } from y in new[] { -8, 8 } from z in new[] { -4, 4 } select new Vector3(x, y, z))
            {
                var (sin, cos) = Math.SinCos(roll * 2 * Math.PI / 180);
                Vector3 Turn(Vector3 v) => new(cos * v.X - sin * v.Y, sin * v.X + cos * v.Y, v.Z);
                var about = Given.Crankshaft!.Value.Vector;
                var lines = ElasticRod.Lay(
                    new(about + Turn(placement.Seat.Vector - about) + shift, Turn(placement.Direction)), [], new(bulkhead.Point.Vector, -bulkhead.Direction),
                    cable.OuterLength!.Value.Value);
                moved.Add(lines.MaxBend.Radians);
            }
        }

        var seen = Given.Corners(bulkhead).Select(b => OuterWay.At(cable, placement, b, null)!.MaxBend.Radians).ToArray();
        Assert.Equal(16, seen.Length);
        Assert.All(moved.Order().Zip(seen.Order()), p => Assert.Equal(p.First, p.Second, 1e-4));

        var study = Report(Plover with { Movement = Given }).Movement;
        var rest = Answer.Mechanism!.Outer!.AtLengths[0].MaxBend.Radians;
        Assert.Equal(moved.Max(b => Math.Abs(b - rest)), study.Change!.Value.Radians, 1e-4);
        Assert.Equal(1, study.Reached);

        // 2 ± 0.5 mm of free play wanted, outer of 2.1 mm bore on a wire of 1.5 mm.
        Assert.Equal(1.5 - 2 * 0.3 * study.Change.Value.Radians, study.Left, 1e-12);
        Assert.Equal(study.Left, study.LeftAtWorst);
        Assert.False(study.IsAssumed);
    }

    [Fact]
    public void Corners_that_are_not_known_are_all_tried()
    {
        Assert.Equal(48, EngineMovement.Usual.Corners(Plover.Bulkhead!).Count());
        Assert.Equal(8, (Given with { Roll = Angle.Zero, Direction = null }).Corners(Plover.Bulkhead!).Count());
        Assert.Equal(Plover.Bulkhead, Assert.Single((Given with { X = 0, Y = 0, Z = 0, Roll = Angle.Zero }).Corners(Plover.Bulkhead!)));
        Assert.Equal((10, Evidence.Assumed), (EngineMovement.Usual.X, new Job
        {
            Body = Plover.Body, Vehicle = Plover.Vehicle, Shop = Plover.Shop, Preferences = Plover.Preferences, Units = Plover.Units, Document = Plover.Document,
        }.Movement.Evidence));
    }

    // Little free play: half a millimetre at the least, and an outer so wide that the engine's movement takes it.
    [Fact]
    public void Free_play_that_the_movement_takes_is_unsafe_and_an_assumed_movement_proves_nothing()
    {
        var job = With(
            Plover with { Preferences = Plover.Preferences with { FreePlay = new(0.5, 0), MinFreePlay = 0.1 }, Movement = Given },
            c => c with { OuterBore = 4.9 });
        var check = Check(job, CheckId.FreePlayMoving);
        Assert.True(check.IsDanger);
        Assert.Equal(0.5 - 2 * 1.7 * Report(job).Movement.Change!.Value.Radians, check.Value, 1e-12);

        var assumed = Check(job with { Movement = EngineMovement.Usual }, CheckId.FreePlayMoving);
        Assert.Equal(CheckState.NotKnown, assumed.State);
        Assert.Equal(0.5, assumed.Value);
        Assert.Equal(CheckState.Passes, Check(Plover with { Movement = EngineMovement.Usual }, CheckId.FreePlayMoving).State);

        // A bore that nobody measured: half a millimetre wider than the wire as a rule, a whole one at worst.
        var unmeasured = Report(With(Plover with { Movement = Given }, c => c with { OuterBore = null })).Movement;
        Assert.Equal(1.5 - 0.5 * unmeasured.Change!.Value.Radians, unmeasured.Left, 1e-12);
        Assert.Equal(1.5 - unmeasured.Change.Value.Radians, unmeasured.LeftAtWorst, 1e-12);
    }

    // 8 √(10/600) rad; its line is not known without a bulkhead, or without the outer's length.
    [Fact]
    public void Without_its_line_the_change_of_bend_is_assumed()
    {
        Assert.Equal(8 * Math.Sqrt(10.0 / 600), MovementStudy.UsualChange.Radians, 0.02);
        var bare = Report(Plover with { Bulkhead = null, Movement = Given });
        Assert.Null(bare.Movement.Change);
        Assert.DoesNotContain(bare.Checks, c => c.Id == CheckId.OuterReach);
        Assert.Equal(1.5 - 2 * 0.3 * Math.PI / 3, bare.Checks.Single(c => c.Id == CheckId.FreePlayMoving).Value, 1e-12);
    }

    // An outer that just reaches at rest is pulled taut when the body moves away from the bulkhead.
    [Fact]
    public void An_outer_that_is_pulled_taut_is_unsafe()
    {
        var shortest = OuterWay.Tightest(Plover, Answer.Placement!)!.Length;
        var job = With(Plover with { Movement = Given }, c => c with { OuterLength = shortest + 1 });
        var check = Check(job, CheckId.OuterReach);
        Assert.True(check.IsDanger);
        Assert.InRange(check.Value, 0.1, 0.9);
        Assert.Equal(CheckState.NotKnown, Check(job with { Movement = EngineMovement.Usual }, CheckId.OuterReach).State);
        Assert.True(Check(Plover with { Movement = Given }, CheckId.OuterReach).Passes);

        // Without the outer's length only the bends can be held against the corners.
        Assert.True(Check(With(Plover with { Movement = Given }, c => c with { OuterLength = null }), CheckId.OuterReach).Passes);
    }

    // Euler-Eytelwein at the worst corner: the largest bends take the most of springs and foot.
    [Fact]
    public void Foot_and_springs_are_judged_at_the_worst_corner()
    {
        var (still, moved) = (Report(Plover with { Movement = Given with { X = 0, Y = 0, Z = 0, Roll = Angle.Zero } }), Report(Plover with { Movement = Given }));
        Assert.True(moved.Movement.MaxBend!.Value.Radians > still.Movement.MaxBend!.Value.Radians);
        var ratio = Math.Exp(Plover.Vehicle.Cable.Friction.Value * (moved.Movement.MaxBend!.Value - still.Movement.MaxBend!.Value).Radians);
        double Foot(MechanismReport r) => r.Checks.Single(c => c.Id == CheckId.FootForce).Value;
        Assert.InRange(Foot(moved) / Foot(still), 1 + 0.5 * (ratio - 1), 1 + 1.1 * (ratio - 1)); // drag does not grow with it, lost motion does
        Assert.True(moved.Checks.Single(c => c.Id == CheckId.ReturnMargin).Value < still.Checks.Single(c => c.Id == CheckId.ReturnMargin).Value);
        var assumed = Check(Plover with { Movement = EngineMovement.Usual }, CheckId.ReturnMargin);
        Assert.Equal(still.Checks.Single(c => c.Id == CheckId.ReturnMargin).Value, assumed.Value, 1e-12);
        Assert.True(assumed.Unfavourable < assumed.Value);
    }

    [Fact]
    public void A_mirrored_job_has_the_same_numbers()
    {
        var study = Report(Plover with { Movement = Given }).Movement;
        var mirrored = (Plover with { Movement = Given }).Mirrored().Mirrored();
        Assert.Equal(Given, mirrored.Movement);
        Assert.Equal(study.Left, Report(mirrored).Movement.Left, 1e-12);
        Assert.Equal(new Vector3(0, 0, 1), Given.Mirrored().Direction);
        Assert.Equal(new ThrottlePoint(50, 300, -80), Given.Mirrored().Crankshaft);
    }
}
