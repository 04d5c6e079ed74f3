using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;
using BracketGen.Mechanism.Motion;

namespace BracketGen.Design.Checks;

/// <summary>The mechanism at one stop, whatever bracket holds it: shared by all brackets there.</summary>
internal sealed record StopMechanism
{
    private MovementStudy? _movement;

    /// <summary>The job, opening counter-clockwise.</summary>
    public required Job Job { get; init; }

    /// <summary>The travel with the stop there.</summary>
    public required Travel Travel { get; init; }

    /// <summary>Where the stop is; null where only the travel is looked at.</summary>
    public required StopPlacement? Placement { get; init; }

    /// <summary>The seat in the groove's plane (mm).</summary>
    public required Vector2 Seat { get; init; }

    /// <summary>The outer's way to the bulkhead; null where the job does not give it.</summary>
    public required OuterFit? Outer { get; init; }

    /// <summary>Whether nobody measured the outer's bends, and its length gives none.</summary>
    public required bool AreBendsAssumed { get; init; }

    /// <summary>Friction in the outer at rest.</summary>
    public required CableFriction Friction { get; init; }

    /// <summary>What gives way in the cable, at its soft end: the bracket's own give is zero here.</summary>
    public CableCompliance CableAlone => Job.Vehicle.Cable.Soft;

    /// <summary>The same at its stiff end: what loads the stop with the pedal stamped on.</summary>
    public CableCompliance StiffCable => Job.Vehicle.Cable.Stiff;

    /// <summary>What the engine's movement does there; found when first asked for.</summary>
    public MovementStudy Movement => LazyInitializer.EnsureInitialized(ref _movement, () => MovementStudy.Of(Job, Placement, Outer));

    /// <summary>Length of outer from the stop to the first clip, or to the bulkhead (mm); null where its way is not known.</summary>
    public required double? FreeOuter { get; init; }

    /// <summary>What hangs on the stop in a sheet of a thickness (mm).</summary>
    public EndBody EndIn(double thickness) => EndBody.Of(Job.Vehicle.Cable, thickness, FreeOuter);

    /// <summary>The mechanism at a stop.</summary>
    /// <param name="job">The job, opening counter-clockwise.</param>
    /// <param name="travel">The travel with the stop there.</param>
    /// <param name="placement">Where the stop is; null where only the travel is looked at.</param>
    public static StopMechanism Of(Job job, Travel travel, StopPlacement? placement)
    {
        var cable = job.Vehicle.Cable;
        var outer = placement is null ? null : OuterWay.Of(job, placement);
        var areBendsAssumed = cable.TotalBend.Evidence == Evidence.Assumed && outer is not { IsLaid: true };
        return new()
        {
            Job = job,
            Travel = travel,
            Placement = placement,
            Seat = travel.Closed.From + travel.Closed.Straight * travel.Closed.Direction,
            Outer = outer,
            FreeOuter = FreeLength(job.Bulkhead, outer),
            AreBendsAssumed = areBendsAssumed,
            Friction = new(cable.Friction, BendsOf(cable, outer, areBendsAssumed))
            {
                OpeningDrag = cable.OpeningDrag.Value,
                ClosingDrag = cable.ClosingDrag.Value,
            },
        };
    }

    /// <summary>The travel under a friction and a compliance; null where the wire passes the throttle shaft within the sweep.</summary>
    public LoadedTravel? Under(CableFriction friction, CableCompliance compliance) => Travel.LeastArm > 0
        ? LoadedTravel.Solve(
            Job.Body.Quadrant, Seat, Travel.FreePlay, Travel.AvailablePull, Job.Body.Springs, friction, compliance, Job.Body.ShaftDrag.Value)
        : null;

    private static double? FreeLength(Bulkhead? bulkhead, OuterFit? outer)
    {
        if (bulkhead is null || outer is null)
        {
            return null;
        }

        var line = outer.Points(PointStep);
        if (bulkhead.Clips is not [var first, ..] || line.IsEmpty)
        {
            return outer.IsLaid ? outer.AtLengths[0].Length : outer.Shortest?.Length;
        }

        var nearest = Enumerable.Range(0, line.Length).MinBy(i => line[i].DistanceTo(first.Point));
        return first.Along ?? OuterTube.LengthOf(line[..(nearest + 1)]);
    }

    // Step along the outer's line (mm) in which the place of a clip is looked for.
    private const double PointStep = 5;

    // The larger of what was measured and what is calculated. The shortest route only says what the bends come to at a minimum, so
    // it is compared with a usual value.
    private static Angle BendsOf(Cable cable, OuterFit? outer, bool areAssumed)
    {
        var given = cable.TotalBend.Evidence != Evidence.Assumed || areAssumed ? cable.TotalBend.Max : 0;
        return new(Math.Max(given, outer?.Bends?.Radians ?? 0));
    }
}
