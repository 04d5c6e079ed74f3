using BracketGen.Geometry;
using BracketGen.Mechanism;
using BracketGen.SheetMetal;

namespace BracketGen.Design;

/// <summary>Makes the brackets among which the best is picked.</summary>
public static class CandidateSearch
{
    private static readonly Angle Step = Angle.FromDegrees(3);

    // Two bends have so many ways of their own that every second leaving angle shows them all.
    private static readonly Angle WideStep = Angle.FromDegrees(6);
    private static readonly double[] Widths = [0, 0.5, 1];

    /// <summary>
    /// All candidates for <paramref name="body"/> (opening counter-clockwise), best first, quick checks done. The adjuster is
    /// moved off mid range only where nothing is found with it there.
    /// </summary>
    public static IReadOnlyList<Candidate> All(Job job, ThrottleBody body)
    {
        var usable = UsableShift(job);
        var found = AtMidRange(job, body).ToList();
        if (!found.Any(Promising))
        {
            double[] shifts = usable > 0 ? [-usable, usable] : [];
            found.AddRange(Shaped(job, body, Placements(job, body, shifts), 1));
            found.AddRange(Shaped(job, body, Placements(job, body, shifts, WideStep), 2));
        }

        return [.. found.OrderBy(c => c.Cost)];
    }

    /// <summary>
    /// The candidates with the adjuster at mid range, and flat plates wherever it can reach one; made one by one as asked for, the
    /// fewest bends first.
    /// </summary>
    public static IEnumerable<Candidate> AtMidRange(Job job, ThrottleBody body) =>
        Enumerable.Range(0, 3).SelectMany(bends => AtMidRange(job, body, bends));

    /// <summary>Of those the ones with so many bends: 0, 1 or 2.</summary>
    public static IEnumerable<Candidate> AtMidRange(Job job, ThrottleBody body, int bends) => Shaped(
        job, body,
        bends switch
        {
            0 => Level(job, body, UsableShift(job)),
            1 => Placements(job, body, [0]),
            _ => Placements(job, body, [0], WideStep),
        },
        bends);

    /// <summary>Whether nothing stands against a candidate as a bracket but what only the checks in space can tell.</summary>
    public static bool Promising(Candidate candidate) => candidate.QuickChecks.All(IsGoodEnough);

    /// <summary>Whether a check does not stand against a bracket: it passes, is advice, or is no matter of the bracket's.</summary>
    public static bool IsGoodEnough(Check check) =>
        check.Passes || check.Kind == CheckKind.Advice || TravelChecks.IsBeyondTheBracket(check);

    private static IEnumerable<Candidate> Shaped(Job job, ThrottleBody body, IEnumerable<StopPlacement> placements, int bends)
    {
        foreach (var placement in placements)
        {
            var travel = Travel.Solve(
                body.Quadrant, placement.Seat.XY, placement.FreePlay, job.Vehicle.Pedal.AvailablePull.Value);
            List<Check> travelChecks = [.. TravelChecks.Of(body, job.Vehicle, job.Preferences, travel), .. MechanismChecks.OfPlacement(job, travel, placement)];
            var tension = LargestTension(body, travel);
            foreach (var bracket in Brackets(job, body, placement, bends))
            {
                var give = CandidateCost.Give(bracket, tension);
                yield return new(
                    placement, travel, bracket, give,
                    CandidateCost.Of(bracket, placement, give, job.Vehicle.Cable.OuterEnd.AdjusterRange),
                    () =>
                    [
                        .. travelChecks,
                        .. TravelChecks.OfStop(job.Vehicle, job.Preferences, travel, placement, bracket.Seat),
                        .. BracketChecks.OfFlat(bracket, job.Vehicle.Cable, job.Shop.Process),
                    ]);
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

    private static IReadOnlyList<Angle> Angles(Job job, ThrottleBody body, Angle? step = null) =>
        LeavingAngles.Of(body.Quadrant, body.Mount.Plane.Normal, job.Preferences.LeastWrap, step ?? Step);

    private static IEnumerable<StopPlacement> Placements(Job job, ThrottleBody body, double[] shifts, Angle? step = null) =>
        from angle in Angles(job, body, step)
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

    private static IEnumerable<Bracket> Brackets(Job job, ThrottleBody body, StopPlacement placement, int bends)
    {
        var frame = BracketShape.MountFrame(body.Mount);
        foreach (var stock in StockAllowed(job))
        {
            var choice = new BracketShape.Choice(body.Mount, placement, job.Vehicle.Cable, job.Preferences, stock, null);
            var shaped = bends switch
            {
                0 => Plates(choice, frame),
                1 => DiesFor(job.Shop, stock, stock.Material.LeastRadiusAcrossGrain).SelectMany(die => Bent(choice with { Die = die }, frame, job.Shop, Layouts.OneBend, Widths)),
                _ => DiesFor(job.Shop, stock, stock.Material.LeastRadiusAlongGrain).Take(1).SelectMany(die => Bent(choice with { Die = die }, frame, job.Shop, Layouts.TwoBends, [0, 1])),
            };
            foreach (var bracket in shaped)
            {
                yield return bracket;
            }
        }
    }

    private static IEnumerable<Bracket> Plates(BracketShape.Choice choice, Frame frame)
    {
        foreach (var seatOnTop in new[] { true, false })
        {
            if (Layouts.IsLevel(frame, BracketShape.StopBottom(choice.Placement, choice.Stock.Thickness, seatOnTop))
                && BracketShape.Make(choice, [], seatOnTop, []) is { } plate)
            {
                yield return plate;
            }
        }
    }

    private static IEnumerable<Bracket> Bent(
        BracketShape.Choice choice, Frame frame, Shop shop,
        Func<BracketShape.Choice, Frame, BendRule, IEnumerable<Layouts.Chain>> layouts, double[] widths)
    {
        var rule = shop.RuleFor(choice.Stock, choice.Die!.InsideRadius);
        foreach (var chain in layouts(choice, frame, rule))
        {
            foreach (var width in widths)
            {
                if (BracketShape.Make(choice, chain.Joints, chain.SeatOnTop, [.. chain.Joints.Select(_ => width)]) is { } bracket)
                {
                    yield return bracket;
                }
            }
        }
    }

    // The narrowest die that suits and does not crack the sheet gives the tightest bend, which is what a short flange wants; the next one is kinder to the sheet.
    private static IEnumerable<PressBrakeDie> DiesFor(Shop shop, Stock stock, double leastRatio) =>
        shop.Dies.Where(d => d.Suits(stock.Thickness)).OrderBy(d => d.Opening)
            .OrderBy(d => d.InsideRadius < leastRatio * stock.Thickness).Take(2);

    private static IEnumerable<Stock> StockAllowed(Job job) => job.Shop.Stock.Where(s =>
        s.Thickness >= job.Preferences.LeastThickness && s.Thickness <= job.Preferences.MostThickness
        && (job.Preferences.Materials.IsEmpty || job.Preferences.Materials.Contains(s.Material.Designation)));
}
