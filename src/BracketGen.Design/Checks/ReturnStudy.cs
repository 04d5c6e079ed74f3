using System.Collections.Immutable;
using BracketGen.Design.Inputs;
using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;
using BracketGen.Mechanism.Forces;
using BracketGen.Mechanism.Motion;
using BracketGen.Mechanism.Pedals;
using BracketGen.Mechanism.Throttles;

namespace BracketGen.Design.Checks;

/// <summary>Whether the valve returns: with every spring, with one broken, how fast, with how much drag at most, and with every single part severed.</summary>
/// <remarks>
/// Springs as weak, friction, drag and pad load as large as their ± allow. Measured drag counts with the job's factor for dirt and cold; assumed drag has a
/// range of its own, which stands for a cable in use.
/// </remarks>
public sealed record ReturnStudy
{
    /// <summary>How many times the drag counts with the outer softened by heat (our assumption, no source).</summary>
    public const double SoftenedDrag = 10;

    /// <summary>Return margin over the sweep with every spring.</summary>
    public required ImmutableArray<ReturnMargin> All { get; init; }

    /// <summary>The same with the strongest spring broken; empty where there is only one.</summary>
    public required ImmutableArray<ReturnMargin> OneFailed { get; init; }

    /// <summary>
    /// Minimum part of the springs' torque left where all that is assumed is at its worst, with every spring and with one broken; null where
    /// nothing it rests on is assumed.
    /// </summary>
    public required (double All, double? OneFailed)? AtWorst { get; init; }

    /// <summary>
    /// Greatest closing drag (N), as read with a spring balance, with which every return check still passes, everything else assumed at its worst; null where
    /// none passes even without drag.
    /// </summary>
    public required double? GreatestDrag { get; init; }

    /// <summary>Time from the wide-open to the closed stop, foot off (s); infinite where the valve hangs.</summary>
    public required double ClosingTime { get; init; }

    /// <summary>The same where all that is assumed is at its worst; null where nothing is assumed.</summary>
    public required double? ClosingTimeAtWorst { get; init; }

    /// <summary>Every single failure that was thought of, in the order of <see cref="FailureId"/>.</summary>
    public required ImmutableArray<SingleFailure> Failures { get; init; }

    /// <summary>The study of a job.</summary>
    /// <param name="job">The job, opening counter-clockwise.</param>
    /// <param name="friction">Friction and drag as measured.</param>
    /// <param name="atWorst">The same where all that is assumed is at its worst: with the outer's bends as the engine's assumed movement leaves them.</param>
    /// <param name="areBendsAssumed">Whether nobody measured the outer's bends, and its length gives none.</param>
    /// <param name="under">The travel under a friction; null where the wire passes the throttle shaft within the sweep.</param>
    public static ReturnStudy? Of(Job job, CableFriction friction, CableFriction atWorst, bool areBendsAssumed, Func<CableFriction, LoadedTravel?> under)
    {
        var (usual, worst) = (Hindrance.Of(job, friction, atWorst: false), Hindrance.Of(job, areBendsAssumed ? AtMostBends(atWorst) : atWorst, atWorst: true));
        if (under(usual.Friction) is not { } travel || under(worst.Friction) is not { } travelAtWorst)
        {
            return null;
        }

        var springs = job.Body.Springs.Weakest();
        var (all, allAtWorst) = (usual.Margins(travel, springs), worst.Margins(travelAtWorst, springs));
        var oneFailed = springs.Count < 2 ? [] : With(all, springs.OneFailed());
        var oneFailedAtWorst = springs.Count < 2 ? [] : With(allAtWorst, springs.OneFailed(ReturnSprings.StrongestAtWorst));
        var spring = springs.Count < 2 || springs.Each.Length > 1;
        var assumed = usual != worst;
        var times = new Times(job, travel, all);
        return new()
        {
            All = all,
            OneFailed = oneFailed,
            AtWorst = assumed || !spring ? (Part(allAtWorst), oneFailedAtWorst.IsEmpty ? null : Part(oneFailedAtWorst)) : null,
            GreatestDrag = GreatestDragOf(allAtWorst, oneFailedAtWorst, worst.Friction.ClosingDrag, job.Preferences.DirtAndCold),
            ClosingTime = times.WithPedal(all),
            ClosingTimeAtWorst = assumed ? times.WithPedal(allAtWorst) : null,
            Failures = [.. new FailureTable(job, springs, new(usual, travel, all, IsWorst: false), new(worst, travelAtWorst, allAtWorst, IsWorst: true), times).Rows()],
        };
    }

    /// <summary>The same margins with other springs.</summary>
    internal static ImmutableArray<ReturnMargin> With(ImmutableArray<ReturnMargin> margins, ReturnSprings springs) =>
        [.. margins.Select((m, i) => m with { Spring = springs.TorqueAt((double)i / (margins.Length - 1)) })];

    private static CableFriction AtMostBends(CableFriction friction) =>
        friction with { TotalBend = new(Math.Max(friction.TotalBend.Radians, Cable.TotalBendAtWorst.Radians)) };

    private static double Part(ImmutableArray<ReturnMargin> margins) => ReturnMargin.Least(margins).Fraction;

    private static double? GreatestDragOf(ImmutableArray<ReturnMargin> all, ImmutableArray<ReturnMargin> oneFailed, double counted, double dirtAndCold)
    {
        var more = Math.Min(
            ReturnMargin.DragToSpare(all, ReturnMargin.SafeFraction),
            oneFailed.IsEmpty ? double.PositiveInfinity : ReturnMargin.DragToSpare(oneFailed, 0));
        return counted + more >= 0 ? (counted + more) / dirtAndCold : null;
    }

    /// <summary>What takes closing torque.</summary>
    internal sealed record Hindrance(CableFriction Friction, double ShaftDrag, Pedal Pedal)
    {
        public static Hindrance Of(Job job, CableFriction friction, bool atWorst)
        {
            var (cable, pedal, factor) = (job.Vehicle.Cable, job.Vehicle.Pedal, job.Preferences.DirtAndCold);
            double Of(Measured drag, double bad) => drag.Evidence != Evidence.Assumed ? factor * drag.Max : atWorst ? Math.Max(drag.Max, bad) : drag.Max;
            return new(
                (atWorst && cable.Friction.Evidence == Evidence.Assumed ? friction with { Coefficient = Math.Max(friction.Coefficient.Max, Cable.FrictionAtWorst) } : friction.Worst()) with
                {
                    ClosingDrag = Of(cable.ClosingDrag, Cable.DragAtWorst),
                },
                Of(job.Body.ShaftDrag, ThrottleBody.ShaftDragAtWorst),
                atWorst && pedal.PadLoad.Evidence == Evidence.Assumed ? pedal with { PadLoad = Math.Max(pedal.PadLoad.Max, Pedal.PadLoadAtWorst) } : pedal);
        }

        public ImmutableArray<ReturnMargin> Margins(LoadedTravel travel, ReturnSprings springs) => ReturnMargin.Over(travel, springs, Pedal, ShaftDrag);
    }

    /// <summary>Closing times of a job's mechanism.</summary>
    internal sealed class Times(Job job, LoadedTravel travel, ImmutableArray<ReturnMargin> sweep)
    {
        private readonly double _shaft = job.Body.Inertia;

        private readonly ImmutableArray<double> _pedal = ClosingMotion.InertiaOfPedal(travel, sweep, job.Vehicle.Pedal);

        public double WithPedal(ImmutableArray<ReturnMargin> margins) => ClosingMotion.Time(margins, i => _shaft + _pedal[i]);

        public double WithoutPedal(ImmutableArray<ReturnMargin> margins) => ClosingMotion.Time(margins, _ => _shaft);
    }
}
