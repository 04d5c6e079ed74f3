using System.Collections.Immutable;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;
using BracketGen.Mechanism.Forces;
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
    /// <summary>
    /// Samples of the uncertainty where nothing else is said: if none fails, at least 99.9 % is proven. Where a limit lies within the sampling error,
    /// <see cref="MoreSamples"/> times as many are taken.
    /// </summary>
    public const int UsualSamples = 4_096;

    /// <summary>How many times as many samples are taken where a limit lies within the sampling error.</summary>
    public const int MoreSamples = 8;

    /// <summary>The travel under load; null where the wire passes the throttle shaft within the sweep.</summary>
    public required LoadedTravel? Loaded { get; init; }

    /// <summary>What the pedal stamped on puts on the stop: of the bracket with its give and tolerances, and of a rigid stop where there is none.</summary>
    public required ProofLoad ProofLoad { get; init; }

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

    /// <summary>What was sampled for it.</summary>
    internal UncertainTravel? UncertainTravel { get; init; }

    /// <summary>Probability that the valve can be made to close; 0 without <see cref="Uncertainty"/>.</summary>
    public Probability Closes => Uncertainty?.ProbabilityOf(TravelRequirement.Closes) ?? default;

    /// <summary>Total range of the adjuster (mm); zero where there is none.</summary>
    public required double AdjusterRange { get; init; }

    /// <summary>Whether the give and the tolerances of the bracket are in it; otherwise there is no bracket yet, and they are not known.</summary>
    public required bool BracketIsKnown { get; init; }

    /// <summary>Every check of it.</summary>
    public ImmutableArray<Check> Checks { get; init; } = [];

    /// <summary>
    /// Which measurement to take again for one requirement: the one with the largest part of that requirement's own spread. It is named only if the
    /// requirement would be kept with all readings exact.
    /// </summary>
    /// <param name="requirement">The requirement.</param>
    /// <param name="limit">Probability wanted.</param>
    public MeasureAgain MeasureFor(TravelRequirement requirement, double limit)
    {
        if (Uncertainty is not { } sure || UncertainTravel is not { } travel || !sure.HoldsAsMeasured(requirement))
        {
            return new(MeasureHelp.FailsAsMeasured, null);
        }

        var input = sure.ContributionsTo(requirement).Where(c => c.MeasuredAgain).Select(c => c.Name).FirstOrDefault();
        return input is not null && TravelUncertainty.Of(travel, UsualSamples, readingsExact: true).ProbabilityOf(requirement).LowerBound >= limit
            ? new(MeasureHelp.Measure, input)
            : new(MeasureHelp.OnlyFinerWork, null);
    }

    /// <summary>The report for a stop.</summary>
    /// <param name="job">The job, opening counter-clockwise.</param>
    /// <param name="travel">The travel with the stop there.</param>
    /// <param name="placement">Where the stop is; null where only the travel is looked at.</param>
    /// <param name="bracket">The bracket; null where none is made yet: then it does not give way and has no tolerances.</param>
    /// <param name="samples">Samples of the uncertainty.</param>
    /// <param name="give">Give of the stop along the wire for 1 N (mm/N), as finite elements found it; null for the beam estimate.</param>
    public static MechanismReport Of(
        Job job, Travel travel, StopPlacement? placement, Bracket? bracket, int samples = UsualSamples, double? give = null) =>
        Of(StopMechanism.Of(job, travel, placement), bracket, samples, give);

    /// <summary>The report for a bracket at a stop whose own part is known.</summary>
    internal static MechanismReport Of(StopMechanism stop, Bracket? bracket, int samples = UsualSamples, double? give = null)
    {
        var mechanism = LoadedMechanism.Of(stop, bracket, samples, give);
        var (job, outer, friction, loaded, pedal) = (stop.Job, mechanism.Outer, mechanism.Friction, mechanism.Loaded, stop.Job.Vehicle.Pedal);
        var movement = stop.Movement;
        var moved = movement.MaxBend is { } bend && bend > friction.TotalBend ? friction with { TotalBend = bend } : friction;
        var report = new MechanismReport
        {
            Loaded = loaded,
            ProofLoad = new StopTension(stop).ProofOf(mechanism),
            Friction = friction,
            Outer = outer,
            FootForces = loaded is null ? [] : FootForce.Loop(loaded, pedal),
            Movement = movement,
            FootForceMoved = (moved == friction ? loaded : mechanism.Under(moved)) is { } atCorner ? FootForce.Loop(atCorner, pedal).Max(f => f.Pressing) : null,
            Return = ReturnStudy.Of(job, movement.Movement.IsAssumed ? friction : moved, moved, mechanism.AreBendsAssumed, mechanism.Under),
            Progression = loaded is null ? null : Progression.Of(loaded, pedal.Lever, job.Body.Valve),
            Sensor = job.Body.Sensor,
            Uncertainty = mechanism.Uncertainty,
            UncertainTravel = mechanism.UncertainTravel,
            AdjusterRange = job.Vehicle.Cable.OuterEnd.AdjusterRange,
            BracketIsKnown = bracket is not null,
        };
        return report with { Checks = [.. MechanismChecks.Of(job, report)] };
    }

    /// <inheritdoc/>
    public MechanismReport Mirrored() => this with { Loaded = Loaded?.Mirrored(), Outer = Outer?.Mirrored() };
}
