using BracketGen.Design.Inputs;
using BracketGen.Mechanism.Motion;

namespace BracketGen.Design.Checks;

/// <summary>What moves or hangs against what stands, the bracket's own sheet aside.</summary>
internal static class ObstacleChecks
{
    /// <summary>Quadrant and end fitting against casting and keep-outs: no bracket changes it.</summary>
    /// <param name="body">The throttle body, opening counter-clockwise.</param>
    /// <param name="moving">The quadrant with all its grooves, and the fittings.</param>
    /// <param name="preferences">The limits wanted.</param>
    public static IEnumerable<Check> OfQuadrant(ThrottleBody body, MovingParts moving, Preferences preferences) => Both(
        NearestStanding.Of(moving.Solids, Standing.Of(body)),
        CheckId.QuadrantOverlap, CheckId.QuadrantClearance, Thing.Quadrant, preferences.SweepClearance);

    /// <summary>The straight wire against casting, keep-outs and springs: the stop's place decides.</summary>
    /// <param name="job">The job, opening counter-clockwise.</param>
    /// <param name="travel">The travel.</param>
    /// <param name="placement">Where the stop is.</param>
    public static IEnumerable<Check> OfWire(Job job, Travel travel, StopPlacement placement)
    {
        var wire = SweptWire.Of(job.Body.Quadrant, travel, placement.Seat, job.Vehicle.Cable.WireDiameter);
        return Both(
            NearestStanding.Of([.. wire.Select(w => w.Solid)], [.. JobFacts.Of(job).Stands, .. JobFacts.Of(job).Springs]),
            CheckId.WireOverlap, CheckId.WireClearance, Thing.Wire, job.Preferences.SweepClearance);
    }

    /// <summary>Bolt heads against what moves, and outer and outer end against what moves and what stands.</summary>
    public static IEnumerable<Check> Of(Surroundings around)
    {
        var (job, preferences) = (around.Job, around.Job.Preferences);
        foreach (var check in OfBolts(around))
        {
            yield return check;
        }

        var springs = around.Springs;
        var end = around.OuterEnd;
        if (NearestStanding.Of(end, [.. around.Stands, .. springs]) is { } nearEnd)
        {
            yield return nearEnd.Check(CheckId.OuterEndClearance, Thing.OuterEnd, preferences.KeepOutClearance);
        }

        var seat = new Standing(Thing.OuterEnd, null, end[0]);
        var outerEnd = end.Select(e => seat with { Solid = e });
        var outer = around.Outer.Select(p => new Standing(Thing.Outer, null, p.Solid)).ToArray();
        if (NearestStanding.Of(around.Moving.Solids, [.. outerEnd, .. outer]) is { } nearMoving)
        {
            yield return nearMoving.Check(CheckId.OuterMoving, Thing.Quadrant, preferences.SweepClearance);
        }

        var stands = outer.Length == 0 ? [] : around.Stands.Concat(springs)
            .Select(s => NearestStanding.Of([.. around.OuterPast(s).Select(p => p.Solid)], [s])).OfType<NearestStanding>().ToArray();
        if (stands.Length > 0)
        {
            yield return stands.MinBy(s => s.Gap).Check(CheckId.OuterClearance, Thing.Outer, preferences.OuterClearance);
        }
    }

    private static IEnumerable<Check> OfBolts(Surroundings around)
    {
        var limit = around.Job.Preferences.SweepClearance;
        Standing[] heads = [.. around.BoltHeads];
        if (NearestStanding.Of(around.Moving.Solids, heads) is { } quadrant)
        {
            yield return quadrant.Check(CheckId.MovingParts, Thing.Quadrant, limit);
        }

        if (NearestStanding.Of([.. around.Wire.Select(w => w.Solid)], heads) is { } wire)
        {
            yield return wire.Check(CheckId.MovingParts, Thing.Wire, limit);
        }
    }

    private static IEnumerable<Check> Both(NearestStanding? nearest, CheckId overlap, CheckId clearance, Thing of, double limit) =>
        nearest is { } found ? [found.Check(overlap, of, 0), found.Check(clearance, of, limit)] : [];
}
