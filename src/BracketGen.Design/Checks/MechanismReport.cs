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
    /// <summary>
    /// Samples of the uncertainty where nothing else is said: if none fails, at least 99.98 % is proven. Where a limit lies within the sampling error,
    /// <see cref="MoreSamples"/> times as many are taken.
    /// </summary>
    public const int UsualSamples = 16_384;

    /// <summary>How many times as many samples are taken where a limit lies within the sampling error.</summary>
    public const int MoreSamples = 8;

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
        var movement = MovementStudy.Of(job, placement, outer);
        var moved = movement.MaxBend is { } bend && bend > friction.TotalBend ? friction with { TotalBend = bend } : friction;
        var pedal = job.Vehicle.Pedal;
        var uncertainTravel = Uncertain(job, body.Quadrant, seat, placement, bracket, loaded);
        var uncertainty = Sample(uncertainTravel, samples);
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
            UncertainTravel = uncertainTravel,
            AdjusterRange = cable.OuterEnd.AdjusterRange,
            BracketIsKnown = bracket is not null,
        };
        return report with { Checks = [.. MechanismChecks.Of(job, report)] };
    }

    /// <inheritdoc/>
    public MechanismReport Mirrored() => this with { Loaded = Loaded?.Mirrored(), Outer = Outer?.Mirrored() };

    // The larger of what was measured and what is calculated. The shortest route only says what the bends come to at a minimum, so
    // it is compared with a usual value.
    private static Angle BendsOf(Cable cable, OuterFit? outer)
    {
        var given = cable.TotalBend.Evidence != Evidence.Assumed || AreBendsAssumed(cable, outer) ? cable.TotalBend.Max : 0;
        return new(Math.Max(given, outer?.Bends?.Radians ?? 0));
    }

    private static bool AreBendsAssumed(Cable cable, OuterFit? outer) =>
        cable.TotalBend.Evidence == Evidence.Assumed && outer is not { IsLaid: true };

    private static UncertainTravel Uncertain(
        Job job, Quadrant quadrant, Vector2 seat, StopPlacement? placement, Bracket? bracket, LoadedTravel? loaded)
    {
        var lost = loaded?.LostAtWideOpen ?? 0;
        return new()
        {
            Quadrant = quadrant,
            Seat = seat,
            FreeInnerLength = job.Vehicle.Cable.FreeInnerLength,
            AdjusterShift = placement?.AdjusterShift ?? 0,
            AdjusterRange = job.Vehicle.Cable.OuterEnd.AdjusterRange,
            FreePlay = job.Preferences.FreePlay,
            MinFreePlay = job.Preferences.MinFreePlay,
            AvailablePull = job.Vehicle.Pedal.AvailablePull,
            LostMotion = new(lost, LostMotionKnown * lost),
            SeatTolerances = bracket is null ? [] : [.. SeatTolerances.Of(bracket, job.Shop.Process), .. SeatTolerances.OfMount(bracket, job.Body.Mount)],
        };
    }

    private static TravelUncertainty? Sample(UncertainTravel travel, int samples)
    {
        try
        {
            var sure = TravelUncertainty.Of(travel, samples);
            return sure.Requirements.Any(r => IsClose(sure.ProbabilityOf(r), MechanismChecks.CheckOf(r).Limit))
                ? TravelUncertainty.Of(travel, MoreSamples * samples)
                : sure;
        }
        catch (ArgumentException)
        {
            return null; // The seat is so near that a deviation within its ± puts it inside the groove.
        }
    }

    // More samples tell on which side of the limit it is.
    private static bool IsClose(Probability found, double limit) => found.Value >= limit && found.LowerBound < limit;
}
