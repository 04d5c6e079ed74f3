using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;
using BracketGen.Mechanism.Grooves;
using BracketGen.Mechanism.Motion;
using BracketGen.Mechanism.Uncertainty;

namespace BracketGen.Design.Checks;

/// <summary>The mechanism under load with the stop at its place: what a bracket's strength needs of it, and what <see cref="MechanismReport"/> starts from.</summary>
internal sealed record LoadedMechanism
{
    /// <summary>How well the lost motion is known, as a part of it (common practice, no source).</summary>
    private const double LostMotionKnown = 0.3;

    /// <summary>The outer's way to the bulkhead; null where the job does not give it.</summary>
    public required OuterFit? Outer { get; init; }

    /// <summary>Whether nobody measured the outer's bends, and its length gives none.</summary>
    public required bool AreBendsAssumed { get; init; }

    /// <summary>Friction in the outer at rest.</summary>
    public required CableFriction Friction { get; init; }

    /// <summary>The travel under a friction; null where the wire passes the throttle shaft within the sweep.</summary>
    public required Func<CableFriction, LoadedTravel?> Under { get; init; }

    /// <summary>The travel under <see cref="Friction"/>.</summary>
    public required LoadedTravel? Loaded { get; init; }

    /// <summary>What was sampled.</summary>
    public required UncertainTravel UncertainTravel { get; init; }

    /// <summary>How sure the travel is; null where a deviation within the ± puts the stop inside the groove.</summary>
    public required TravelUncertainty? Uncertainty { get; init; }

    /// <summary>The mechanism for a stop; parameters as of <see cref="MechanismReport.Of"/>.</summary>
    public static LoadedMechanism Of(Job job, Travel travel, StopPlacement? placement, Bracket? bracket, int samples, double? give)
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
            Bracket = give ?? (bracket is null ? 0 : StopGive.Of(bracket, 1)),
        };
        LoadedTravel? Under(CableFriction f) => travel.LeastArm > 0
            ? LoadedTravel.Solve(body.Quadrant, seat, travel.FreePlay, travel.AvailablePull, body.Springs, f, compliance, body.ShaftDrag.Value)
            : null;
        var loaded = Under(friction);
        var uncertainTravel = Uncertain(job, body.Quadrant, seat, placement, bracket, loaded);
        return new()
        {
            Outer = outer,
            AreBendsAssumed = BendsAreAssumed(cable, outer),
            Friction = friction,
            Under = Under,
            Loaded = loaded,
            UncertainTravel = uncertainTravel,
            Uncertainty = Sample(uncertainTravel, samples),
        };
    }

    // The larger of what was measured and what is calculated. The shortest route only says what the bends come to at a minimum, so
    // it is compared with a usual value.
    private static Angle BendsOf(Cable cable, OuterFit? outer)
    {
        var given = cable.TotalBend.Evidence != Evidence.Assumed || BendsAreAssumed(cable, outer) ? cable.TotalBend.Max : 0;
        return new(Math.Max(given, outer?.Bends?.Radians ?? 0));
    }

    private static bool BendsAreAssumed(Cable cable, OuterFit? outer) =>
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
                ? TravelUncertainty.Of(travel, MechanismReport.MoreSamples * samples)
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
