using System.Collections.Immutable;
using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Search;
using BracketGen.Geometry;
using BracketGen.Mechanism.Motion;

namespace BracketGen.Design.Study;

/// <summary>A bracket that is there already, tried on a job it was not made for.</summary>
/// <remarks>
/// It is bolted on as it is; where its seat then lies decides where the adjuster must stand. Every check that a bracket made for the job
/// would have to pass is made anew, and those of <see cref="GivenChecks"/> besides.
/// </remarks>
public static class GivenBracket
{
    /// <summary>The job solved with <paramref name="bracket"/>; null where the wire cannot reach the seat at all.</summary>
    /// <param name="job">The job.</param>
    /// <param name="bracket">The bracket as a part; where it lies is not looked at.</param>
    /// <param name="mount">Where its mount flange comes to lie on the job's body, throttle frame as measured (<see cref="MountMatch"/>).</param>
    /// <param name="strength">How finely it is meshed to see whether it bends, shakes or cracks; null where that is not looked at.</param>
    public static Solution? On(Job job, Bracket bracket, Frame mount, StrengthDetail? strength = null) =>
        OnTurned(job.OpeningCounterClockwise(), job.Body.Turned(Place(job, bracket, mount)), strength) is { } turned ? Designer.AsMeasured(job, turned) : null;

    private static Solution? OnTurned(Job job, Bracket placed, StrengthDetail? strength)
    {
        var (body, cable) = (job.Body, job.Vehicle.Cable);
        if (Stand(job, placed) is not { } placement
            || Travel.TrySolve(body.Quadrant, placement.Seat.XY, placement.FreePlay, job.Vehicle.Pedal.AvailablePull.Value) is not { } travel)
        {
            return null;
        }

        var bent = placed.Flat.Bends.IsEmpty ? null : BendChecks.Bend(placed, job.Shop);
        placed = placed with { Plan = bent?.Plan };
        Check[] bending = bent is null ? [] : [.. BendChecks.OfTools(placed, bent, BendChecks.AreAssumed(job.Shop))];
        ImmutableArray<Check> checks =
        [
            .. BodyChecks.Of(body),
            .. TravelChecks.Of(job, travel),
            .. MechanismChecks.OfPlacement(job, travel, placement),
            .. TravelChecks.OfStop(job.Vehicle, job.Preferences, travel, placement, placed.Seat),
            .. GivenChecks.Of(job, placed, placement, travel),
            .. BracketChecks.OfFlat(placed, cable, job.Shop.Process).Where(q => !bending.Any(b => (b.Id, b.Number) == (q.Id, q.Number))),
            .. bending,
            .. BracketChecks.InSpace(placed, job, placement, travel, SpaceDemand.Error),
        ];
        var candidate = new Candidate(placement, travel, placed, 0, 0, () => checks);
        var report = strength is null ? null : StrengthStudy.Of(job, travel, placement, placed, strength);
        return Designer.Answer(job, new(candidate, SearchStage.Passes, null)
        {
            Offer = new(candidate, checks) { GiveFound = report?.Opening.Give },
            Strength = report,
            Mechanism = MechanismReport.Of(job, travel, placement, placed, MechanismReport.UsualSamples, report?.GivePerTension),
        });
    }

    /// <summary>
    /// The wire from the pocket to the seat of a bracket bolted to a body, whatever the cable: its length (mm) with the valve closed, and
    /// how far it leans from the stop's own direction; null where no wire gets there. Quick.
    /// </summary>
    /// <param name="body">The throttle body as measured.</param>
    /// <param name="bracket">The bracket as a part.</param>
    /// <param name="mount">Where its mount flange comes to lie, throttle frame as measured.</param>
    public static (double Length, Angle Askew)? Reach(ThrottleBody body, Bracket bracket, Frame mount)
    {
        var turned = body.OpeningCounterClockwise();
        var placed = bracket with { Folded = new(bracket.Flat, mount) };
        var (seat, normal) = body.Turned(placed).FoldedSeat;
        return WireTo(turned, seat) is { } wire
            ? (wire.Length, new(Math.Acos(Math.Clamp(normal.Dot(Vector3.From(wire.Direction)), -1, 1))))
            : null;
    }

    // In place as measured, with what this job's outer needs.
    private static Bracket Place(Job job, Bracket bracket, Frame mount) => bracket with
    {
        Folded = new(bracket.Flat, mount),
        Seat = StopSeat.For(job.Vehicle.Cable, job.Preferences.StopOpening, bracket.Stock.Thickness, bracket.Stock.Material.Finish),
    };

    // The wire taut from the pocket to the seat is as long as it must be; the adjuster makes up what the cable has more or less.
    private static StopPlacement? Stand(Job job, Bracket placed)
    {
        var (seat, normal) = placed.FoldedSeat;
        if (WireTo(job.Body, seat) is not { } wire)
        {
            return null;
        }

        var freePlay = job.Preferences.FreePlay.Value;
        var shift = job.Vehicle.Cable.FreeInnerLength.Value - freePlay - wire.Length;
        return new(wire.Leaving, seat, normal, wire.Straight, shift, freePlay) { GrooveLeft = job.Body.Quadrant.GrooveExtent - wire.Wrap };
    }

    private static TautWire? WireTo(ThrottleBody body, ThrottlePoint seat)
    {
        try
        {
            return TautWire.Solve(body.Quadrant, seat.XY, Angle.Zero);
        }
        catch (ArgumentException)
        {
            return null; // The seat lies inside the groove.
        }
    }
}
