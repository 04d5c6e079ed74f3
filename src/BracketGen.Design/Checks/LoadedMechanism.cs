using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Mechanism.Cables;
using BracketGen.Mechanism.Motion;
using BracketGen.Mechanism.Uncertainty;

namespace BracketGen.Design.Checks;

/// <summary>The mechanism under load with the stop at its place: what a bracket's strength needs of it, and what <see cref="MechanismReport"/> starts from.</summary>
internal sealed record LoadedMechanism
{
    /// <summary>How well the lost motion is known, as a part of it (common practice, no source).</summary>
    internal const double LostMotionKnown = 0.3;

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

    /// <summary>The same with the cable at its stiff end, for the pedal stamped on.</summary>
    public required LoadedTravel? Stamped { get; init; }

    /// <summary>What was sampled.</summary>
    public required UncertainTravel UncertainTravel { get; init; }

    /// <summary>How sure the travel is; null where a deviation within the ± puts the stop inside the groove.</summary>
    public required TravelUncertainty? Uncertainty { get; init; }

    /// <summary>The mechanism for a stop; parameters as of <see cref="MechanismReport"/>.</summary>
    public static LoadedMechanism Of(Job job, Travel travel, StopPlacement? placement, Bracket? bracket, int samples, double? give) =>
        Of(StopMechanism.Of(job, travel, placement), bracket, samples, give);

    /// <summary>The mechanism for a bracket at a stop whose own part is known.</summary>
    public static LoadedMechanism Of(StopMechanism stop, Bracket? bracket, int samples, double? give)
    {
        var ofBracket = give ?? (bracket is null ? 0 : StopGive.Of(bracket, 1) + GiveOfRing(stop.Job, bracket));
        var compliance = stop.CableAlone with { Bracket = ofBracket };
        LoadedTravel? Under(CableFriction friction) => stop.Under(friction, compliance);
        var loaded = Under(stop.Friction);
        var uncertainTravel = Uncertain(stop, bracket, loaded);
        return new()
        {
            Outer = stop.Outer,
            AreBendsAssumed = stop.AreBendsAssumed,
            Friction = stop.Friction,
            Under = Under,
            Loaded = loaded,
            Stamped = stop.Under(stop.Friction, stop.StiffCable with { Bracket = ofBracket }),
            UncertainTravel = uncertainTravel,
            Uncertainty = Sample(uncertainTravel, samples),
        };
    }

    // The bracket rigid on the ring, pulled square to its seat, as the wire runs there but for its fleet angle.
    private static double GiveOfRing(Job job, Bracket bracket) =>
        JobFacts.Of(job).Ring is { } ring ? ring.Base.GiveOfRigid(bracket.FoldedSeat.Point, bracket.FoldedSeat.Normal) : 0;

    private static UncertainTravel Uncertain(StopMechanism stop, Bracket? bracket, LoadedTravel? loaded)
    {
        var job = stop.Job;
        var lost = loaded?.LostAtWideOpen ?? 0;
        return new()
        {
            Quadrant = job.Body.Quadrant,
            Seat = stop.Seat,
            FreeInnerLength = job.Vehicle.Cable.FreeInnerLength,
            AdjusterShift = stop.Placement?.AdjusterShift ?? 0,
            AdjusterRange = job.Vehicle.Cable.OuterEnd.AdjusterRange,
            FreePlay = job.Preferences.FreePlay,
            MinFreePlay = job.Preferences.MinFreePlay,
            AvailablePull = job.Vehicle.Pedal.AvailablePull,
            LostMotion = new(lost, LostMotionKnown * lost),
            SeatTolerances = bracket is null ? [] : [.. SeatTolerances.Of(bracket, job.Shop.Process, job.Vehicle.Cable.OuterEnd), .. SeatTolerances.OfMount(bracket, job.Body.Mount)],
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
