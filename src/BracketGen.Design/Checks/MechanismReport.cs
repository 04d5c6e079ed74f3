using System.Collections.Immutable;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;
using BracketGen.Mechanism.Forces;
using BracketGen.Mechanism.Grooves;
using BracketGen.Mechanism.Motion;
using BracketGen.Mechanism.Throttles;
using BracketGen.Mechanism.Uncertainty;

namespace BracketGen.Design.Checks;

/// <summary>The whole mechanism at the stop that was chosen: forces, lost motion, progression, outer, sensor, and how sure it is.</summary>
/// <remarks>
/// Computed once for an answer, not for every candidate.
/// </remarks>
public sealed record MechanismReport : IMirrored<MechanismReport>
{
    /// <summary>Samples of the uncertainty where nothing else is said.</summary>
    public const int UsualSamples = 8_192;

    /// <summary>How well the lost motion is known, as a part of it (common practice, no source).</summary>
    private const double LostMotionKnown = 0.3;

    /// <summary>The travel under load; null where the wire passes the throttle shaft within the sweep.</summary>
    public required LoadedTravel? Loaded { get; init; }

    /// <summary>Friction in the outer, by its way to the bulkhead where that is known.</summary>
    public required CableFriction Friction { get; init; }

    /// <summary>The outer's way to the bulkhead; null where the job does not give it.</summary>
    public required OuterFit? Outer { get; init; }

    /// <summary>Foot force over the sweep; empty without <see cref="Loaded"/>.</summary>
    public required ImmutableArray<FootForce> FootForces { get; init; }

    /// <summary>What the engine's movement does to outer and free play.</summary>
    public required MovementStudy Movement { get; init; }

    /// <summary>Maximum foot force with the outer's bends at the worst corner of the engine's movement (N); null without <see cref="Loaded"/>.</summary>
    public required double? FootForceMoved { get; init; }

    /// <summary>Whether the valve returns, and with what out of order; null without <see cref="Loaded"/>.</summary>
    public required ReturnStudy? Return { get; init; }

    /// <summary>Return margin over the sweep, springs as weak and friction and drag as strong as their ± allow; empty without <see cref="Loaded"/>.</summary>
    public ImmutableArray<ReturnMargin> Returns => Return?.All ?? [];

    /// <summary>The same with the strongest spring broken; empty likewise, and where there is only one.</summary>
    public ImmutableArray<ReturnMargin> ReturnsOneFailed => Return?.OneFailed ?? [];

    /// <summary>Pedal to valve to flow area; null without <see cref="Loaded"/>.</summary>
    public required Progression? Progression { get; init; }

    /// <summary>The position sensor; null where there is none.</summary>
    public required PositionSensor? Sensor { get; init; }

    /// <summary>How sure the travel is; null where a deviation within its ± leaves no wire.</summary>
    public required TravelUncertainty? Uncertainty { get; init; }

    /// <summary>Probability that the valve can be made to close; 0 without <see cref="Uncertainty"/>.</summary>
    public required Probability Closes { get; init; }

    /// <summary>Total range of the adjuster (mm); zero where there is none.</summary>
    public required double AdjusterRange { get; init; }

    /// <summary>Every check of it.</summary>
    public ImmutableArray<Check> Checks { get; init; } = [];

    /// <summary>Name of the measurement that is most to blame for what is not sure.</summary>
    public string MeasureAgain => Uncertainty?.Ranking.Contributions.Where(c => c.MeasuredAgain).Select(c => c.Name).FirstOrDefault() ?? "nothing in particular";

    /// <summary>The report for a stop.</summary>
    /// <param name="job">The job, opening counter-clockwise.</param>
    /// <param name="travel">The travel with the stop there.</param>
    /// <param name="placement">Where the stop is; null where only the travel is looked at.</param>
    /// <param name="bracket">The bracket; null where none is made yet: then it does not give way and has no tolerances.</param>
    /// <param name="samples">Samples of the uncertainty.</param>
    /// <param name="give">Give of the stop along the wire for 1 N (mm/N), as finite elements found it; null for the beam estimate.</param>
    public static MechanismReport Of(
        Job job, Travel travel, StopPlacement? placement, Bracket? bracket, int samples = UsualSamples, double? give = null)
    {
        var body = job.Body;
        var cable = job.Vehicle.Cable;
        var outer = placement is null ? null : OuterWay.Of(job, placement);
        var friction = new CableFriction(cable.Friction, BendsOf(cable, outer))
        {
            OpeningDrag = cable.OpeningDrag.Value,
            ClosingDrag = cable.ClosingDrag.Value,
        };
        var seat = travel.Closed.From + travel.Closed.Straight * travel.Closed.Direction;
        var compliance = new CableCompliance
        {
            WireLength = cable.WireLength,
            WireDiameter = cable.WireDiameter,
            WireModulus = cable.WireModulus,
            Fill = cable.WireFill,
            OuterStiffness = cable.OuterStiffness,
            Bracket = give ?? (bracket is null ? 0 : BracketCost.Give(bracket, 1)),
        };
        LoadedTravel? Under(CableFriction f) => travel.LeastArm > 0
            ? LoadedTravel.Solve(body.Quadrant, seat, travel.FreePlay, travel.AvailablePull, body.Springs, f, compliance, body.ShaftDrag.Value)
            : null;
        var loaded = Under(friction);
        var movement = MovementStudy.Of(job, placement, outer?.Bends);
        var moved = movement.MaxBend is { } bend ? friction with { TotalBend = new(Math.Max(bend.Radians, friction.TotalBend.Radians)) } : friction;
        var pedal = job.Vehicle.Pedal;
        var uncertainty = Uncertain(job, body.Quadrant, seat, placement, bracket, loaded, samples);
        var report = new MechanismReport
        {
            Loaded = loaded,
            Friction = friction,
            Outer = outer,
            FootForces = loaded is null ? [] : FootForce.Loop(loaded, pedal),
            Movement = movement,
            FootForceMoved = (moved == friction ? loaded : Under(moved)) is { } atCorner ? FootForce.Loop(atCorner, pedal).Max(f => f.Pressing) : null,
            Return = ReturnStudy.Of(job, movement.Movement.IsAssumed ? friction : moved, moved, AreBendsAssumed(cable, outer), Under),
            Progression = loaded is null ? null : Progression.Of(loaded, pedal.Lever, body.Valve),
            Sensor = body.Sensor,
            Uncertainty = uncertainty,
            Closes = Closing(uncertainty, placement?.AdjusterShift ?? 0, cable.OuterEnd.AdjusterRange, job.Preferences.MinFreePlay),
            AdjusterRange = cable.OuterEnd.AdjusterRange,
        };
        return report with { Checks = [.. MechanismChecks.Of(job, report)] };
    }

    /// <inheritdoc/>
    public MechanismReport Mirrored() => this with { Loaded = Loaded?.Mirrored(), Outer = Outer?.Mirrored() };

    // The larger of what was measured and what is calculated. The shortest route only says what the bends come to at a minimum, so
    // a usual value stands beside it.
    private static Angle BendsOf(Cable cable, OuterFit? outer)
    {
        var given = cable.TotalBend.Evidence != Evidence.Assumed || AreBendsAssumed(cable, outer) ? cable.TotalBend.Max : 0;
        return new(Math.Max(given, outer?.Bends?.Radians ?? 0));
    }

    private static bool AreBendsAssumed(Cable cable, OuterFit? outer) =>
        cable.TotalBend.Evidence == Evidence.Assumed && outer is not { IsLaid: true };

    // Where there is an adjuster, it can give wire up to the end of its range: the valve can be made to close if that leaves the
    // minimum free play. Where there is none, it must close as built.
    private static Probability Closing(TravelUncertainty? uncertainty, double shift, double range, double leastFreePlay) =>
        uncertainty is null ? default
        : range > 0 ? uncertainty.Run.Probability(o => o[0] + shift + range / 2 >= leastFreePlay)
        : uncertainty.ClosesUntouched;

    private static TravelUncertainty? Uncertain(
        Job job, Quadrant quadrant, Vector2 seat, StopPlacement? placement, Bracket? bracket, LoadedTravel? loaded, int samples)
    {
        var lost = loaded?.LostAtWideOpen ?? 0;
        var travel = new UncertainTravel
        {
            Quadrant = quadrant,
            Seat = seat,
            FreeInnerLength = job.Vehicle.Cable.FreeInnerLength,
            AdjusterShift = placement?.AdjusterShift ?? 0,
            AdjusterRange = job.Vehicle.Cable.OuterEnd.AdjusterRange,
            FreePlay = job.Preferences.FreePlay,
            AvailablePull = job.Vehicle.Pedal.AvailablePull,
            LostMotion = new(lost, LostMotionKnown * lost),
            SeatTolerances = bracket is null ? [] : SeatTolerances.Of(bracket, job.Shop.Process),
        };
        try
        {
            return TravelUncertainty.Of(travel, samples);
        }
        catch (ArgumentException)
        {
            return null; // The seat is so near that a deviation within its ± puts it inside the groove.
        }
    }
}
