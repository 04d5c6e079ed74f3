using System.Collections.Immutable;
using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Search;
using BracketGen.Geometry;
using BracketGen.Mechanism.Motion;
using BracketGen.SheetMetal.Patterns;

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
        if (SeatedStop.Of(job, placed) is not { } placement
            || Travel.TrySolve(job.Body.Quadrant, placement.Seat.XY, placement.FreePlay, job.Vehicle.Pedal.AvailablePull.Value) is not { } travel)
        {
            return null;
        }

        var bent = placed.Flat.Bends.IsEmpty || placed.IsMadeElsewhere ? null : BendChecks.Bend(placed, job.Shop);
        placed = placed with { Plan = bent?.Plan };
        Check[] bending = bent is null ? [] :
        [
            .. BendChecks.OfTools(placed, bent, job.Shop),
            .. SecondFaceChecks.OfBend(placed, job.Body.Mount, job.Shop.Process, job.Vehicle.Cable.OuterEnd),
        ];
        ImmutableArray<Check> checks = [.. ChecksOf(job, placed, placement, travel, bending)];
        var candidate = new Candidate(placement, travel, placed, 0, 0, () => checks);
        var report = StrengthStudy.OfSome(job, travel, placement, placed, strength);
        return Designer.Answer(job, new(candidate, SearchStage.Passes, null)
        {
            Offer = new(candidate, checks) { GiveFound = report?.Opening.Give },
            Strength = report,
            Mechanism = MechanismReport.Of(job, travel, placement, placed, MechanismReport.UsualSamples, report?.GivePerTension),
            AtEnds = SlotChecks.AtEnds(job, placed, strength),
        });
    }

    /// <summary>Whether nothing fails of what needs neither strength nor the whole mechanism: what fails here fails in <see cref="On"/>. Quick.</summary>
    /// <param name="job">The job.</param>
    /// <param name="bracket">The bracket as a part.</param>
    /// <param name="mount">Where its mount flange comes to lie, throttle frame as measured.</param>
    public static bool MayPass(Job job, Bracket bracket, Frame mount)
    {
        var turned = job.OpeningCounterClockwise();
        var placed = job.Body.Turned(Place(job, bracket, mount));
        return SeatedStop.Of(turned, placed) is { } placement
            && Travel.TrySolve(turned.Body.Quadrant, placement.Seat.XY, placement.FreePlay, turned.Vehicle.Pedal.AvailablePull.Value) is { } travel
            && ChecksOf(turned, placed, placement, travel, []).All(c => !c.Fails || c.Kind == CheckKind.Advice);
    }

    // Samples where no probability is looked at.
    private const int Few = 16;

    /// <summary>The checks with a bracket lying in one way, strength left out; null where the wire does not reach. Their probabilities mean nothing.</summary>
    /// <param name="job">The job.</param>
    /// <param name="bracket">The bracket as a part.</param>
    /// <param name="mount">Where its mount flange comes to lie, throttle frame as measured.</param>
    /// <param name="give">Give of the stop for 1 N along the wire (mm/N); null for the beam estimate.</param>
    internal static IReadOnlyList<Check>? ChecksOn(Job job, Bracket bracket, Frame mount, double? give)
    {
        var turned = job.OpeningCounterClockwise();
        var placed = job.Body.Turned(Place(job, bracket, mount));
        return SeatedStop.Of(turned, placed) is { } placement
            && Travel.TrySolve(turned.Body.Quadrant, placement.Seat.XY, placement.FreePlay, turned.Vehicle.Pedal.AvailablePull.Value) is { } travel
            ? [.. ChecksOf(turned, placed, placement, travel, []), .. MechanismReport.Of(turned, travel, placement, placed, Few, give).Checks]
            : null;
    }

    // The cheap ones first; those in space take nearly all the time.
    private static IEnumerable<Check> ChecksOf(Job job, Bracket placed, StopPlacement placement, Travel travel, Check[] bending) =>
        BodyChecks.Of(job.Body)
            .Concat(TravelChecks.Of(job, travel))
            .Concat(MechanismChecks.OfPlacement(job, travel, placement))
            .Concat(TravelChecks.OfStop(job.Vehicle, job.Preferences, travel, placement, placed.Seat))
            .Concat(GivenChecks.Of(job, placed, placement, travel))
            .Concat(BracketChecks.OfFlat(placed, job.Vehicle.Cable, job.Shop.Process)
                .Where(q => !bending.Any(b => (b.Id, b.Number) == (q.Id, q.Number)) && !(placed.IsMadeElsewhere && IsOfMaking(q))))
            .Concat(SecondFaceChecks.OfFlat(placed, job.Body.Mount))
            .Concat(bending)
            .Concat(Later(() => BracketChecks.InSpace(placed, job, placement, travel, SpaceDemand.Error)));

    private static IEnumerable<Check> Later(Func<IEnumerable<Check>> checks)
    {
        foreach (var check in checks())
        {
            yield return check;
        }
    }

    // Whether a shop could cut and bend it is no question of a part that is finished; whether its bends are sound, and its holes hold, is.
    private static bool IsOfMaking(Check check) => check.Id is CheckId.SmallestHole or CheckId.HoleBend or CheckId.BendAngle;

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
        return SeatedStop.WireTo(turned, seat) is { } wire
            ? (wire.Length, new(Math.Acos(Math.Clamp(normal.Dot(Vector3.From(wire.Direction)), -1, 1))))
            : null;
    }

    // In place as measured, held by what this job's mount has, with what its outer needs.
    private static Bracket Place(Job job, Bracket bracket, Frame mount) => bracket with
    {
        Folded = new(bracket.Flat, mount),
        Holes = [.. bracket.Holes.Select(h => h.Purpose == HolePurpose.Bolt ? OnMount(h, job.Body.Mount, new FoldedSheet(bracket.Flat, mount).Flanges[h.Flange].ToThrottle(h.Centre)) : h)],
        Seat = StopSeat.For(job.Vehicle.Cable, job.Preferences.StopOpening, bracket.Stock.Thickness, bracket.Stock.Material.Finish),
    };

    private static BracketHole OnMount(BracketHole hole, MountFace face, ThrottlePoint at)
    {
        var under = face.Nearest(at);
        return hole with { Fixing = under.Fixing, SpacerLength = under.SpacerLength };
    }
}
