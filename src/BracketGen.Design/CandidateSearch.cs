using BracketGen.Geometry;
using BracketGen.Mechanism;
using BracketGen.SheetMetal;

namespace BracketGen.Design;

/// <summary>Makes the brackets among which the best is picked.</summary>
public static class CandidateSearch
{
    private static readonly Angle Step = Angle.FromDegrees(3);
    private static readonly double[] Widths = [0, 0.5, 1];

    /// <summary>
    /// All candidates for <paramref name="body"/> (opening counter-clockwise), best first, quick checks done. The adjuster is
    /// moved off mid range only where nothing is found with it there.
    /// </summary>
    public static IReadOnlyList<Candidate> All(Job job, ThrottleBody body)
    {
        var usable = UsableShift(job);
        var found = AtMidRange(job, body).ToList();
        if (usable > 0 && !found.Any(c => c.QuickChecks.All(k => k.Passes || k.Kind == CheckKind.Advice)))
        {
            found.AddRange(Shaped(job, body, Placements(job, body, [-usable, usable])));
        }

        return [.. found.OrderBy(c => c.Cost)];
    }

    /// <summary>The candidates with the adjuster at mid range, and flat plates wherever it can reach one; made one by one as asked for.</summary>
    public static IEnumerable<Candidate> AtMidRange(Job job, ThrottleBody body) =>
        Shaped(job, body, Level(job, body, UsableShift(job)).Concat(Placements(job, body, [0])));

    private static IEnumerable<Candidate> Shaped(Job job, ThrottleBody body, IEnumerable<StopPlacement> placements)
    {
        foreach (var placement in placements)
        {
            var travel = Travel.Solve(
                body.Quadrant, placement.Seat.XY, placement.FreePlay, job.Vehicle.Pedal.AvailablePull.Value);
            List<Check> travelChecks = [.. TravelChecks.Of(body, job.Vehicle, job.Preferences, travel)];
            var tension = LargestTension(body, travel);
            foreach (var bracket in Brackets(job, body, placement))
            {
                yield return new(
                    placement, travel, bracket,
                    [
                        .. travelChecks,
                        .. TravelChecks.OfStop(job.Vehicle, job.Preferences, travel, placement, bracket.Seat),
                        .. BracketChecks.OfFlat(bracket, job.Vehicle.Cable, job.Shop.Process),
                    ],
                    CandidateCost.Of(bracket, placement, tension, job.Vehicle.Cable.OuterEnd.AdjusterRange));
            }
        }
    }

    /// <summary>The check that fails where no bracket could be shaped at all.</summary>
    public static Check NoShape(Job job, ThrottleBody body)
    {
        var reachable = Placements(job, body, [0]).Any();
        return new(
            "bracket-shape", "A bracket that joins mount face and stop", CheckKind.Function, CheckUnit.Number, 0, Bound.AtLeast, 1,
            Sources.Geometry,
            reachable
                ? "No leaving angle gives a stop that a flat plate or one bend can reach from the mount face. Choose another mount face, or change the free inner length."
                : "The wire is too short: with the valve closed nothing of it is left beyond the groove. A cable with more free inner length is needed.");
    }

    private static double LargestTension(ThrottleBody body, Travel travel) =>
        travel.Sweep.Max(w => body.Springs.TorqueAt(w.Opening.Radians / travel.Rotation.Radians) / Math.Max(1, w.Arm));

    private static double UsableShift(Job job) =>
        job.Vehicle.Cable.OuterEnd.AdjusterRange / 2 * (1 - job.Preferences.AdjusterReserve);

    private static StopPlacement? Place(Job job, ThrottleBody body, Angle leaving, double shift) => StopPlacement.At(
        body.Quadrant, job.Vehicle.Cable.FreeInnerLength.Value, job.Preferences.FreePlay.Value, leaving, shift);

    private static IReadOnlyList<Angle> Angles(Job job, ThrottleBody body) =>
        LeavingAngles.Of(body.Quadrant, body.Mount.Plane.Normal, job.Preferences.LeastWrap, Step);

    private static IEnumerable<StopPlacement> Placements(Job job, ThrottleBody body, double[] shifts) =>
        from angle in Angles(job, body)
        from shift in shifts
        select Place(job, body, angle, shift) into placement
        where placement is not null
        select placement;

    // Where the stop's face comes parallel to the mount face, the adjuster may bring both into one plane.
    private static IEnumerable<StopPlacement> Level(Job job, ThrottleBody body, double usable)
    {
        var mount = body.Mount.Plane;
        foreach (var angle in Angles(job, body))
        {
            if (Place(job, body, angle, 0) is not { } middle || middle.Direction.Cross(mount.Normal).Length > 1e-9)
            {
                continue;
            }

            var height = mount.HeightOf(middle.Seat);
            foreach (var thickness in job.Shop.Stock.Select(s => s.Thickness).Distinct())
            {
                var shift = middle.Direction.Dot(mount.Normal) > 0 ? height - thickness : -height;
                if (Math.Abs(shift) <= usable && Place(job, body, angle, shift) is { } level)
                {
                    yield return level;
                }
            }
        }
    }

    private static IEnumerable<Bracket> Brackets(Job job, ThrottleBody body, StopPlacement placement)
    {
        var frame = BracketShape.MountFrame(body.Mount);
        foreach (var stock in StockAllowed(job))
        {
            var plate = new BracketShape.Choice(body.Mount, placement, job.Vehicle.Cable, job.Preferences, stock, null);
            foreach (var seatOnTop in new[] { true, false })
            {
                var bottom = BracketShape.StopBottom(placement, stock.Thickness, seatOnTop);
                if (bottom.Normal.Dot(frame.Z) > 1 - 1e-12 && Math.Abs(frame.ToLocal(bottom.Point).Z) < Tolerance.Point
                    && BracketShape.Make(plate, [], seatOnTop, []) is { } flat)
                {
                    yield return flat;
                }

                foreach (var die in job.Shop.Dies.Where(d => d.Suits(stock.Thickness)))
                {
                    foreach (var bracket in OneBend(plate with { Die = die }, die, job.Shop, frame, bottom, seatOnTop))
                    {
                        yield return bracket;
                    }
                }
            }
        }
    }

    private static IEnumerable<Bracket> OneBend(
        BracketShape.Choice choice, PressBrakeDie die, Shop shop, Frame frame, Plane bottom, bool seatOnTop)
    {
        var rule = shop.RuleFor(choice.Stock, die.InsideRadius);
        foreach (var up in new[] { true, false })
        {
            if (Joint.Between(frame, bottom, up, choice.Stock.Thickness, die.InsideRadius, rule) is not { } joint)
            {
                continue;
            }

            foreach (var width in Widths)
            {
                if (BracketShape.Make(choice, [joint], seatOnTop, [width]) is { } bracket)
                {
                    yield return bracket;
                }
            }
        }
    }

    private static IEnumerable<Stock> StockAllowed(Job job) => job.Shop.Stock.Where(s =>
        s.Thickness >= job.Preferences.LeastThickness && s.Thickness <= job.Preferences.MostThickness
        && (job.Preferences.Materials.IsEmpty || job.Preferences.Materials.Contains(s.Material.Designation)));
}
