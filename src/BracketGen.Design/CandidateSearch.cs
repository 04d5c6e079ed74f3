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
    public static IEnumerable<Candidate> AtMidRange(Job job, ThrottleBody body, int bends) =>
        Shaped(job, body, PlacementsAtMidRange(job, body, bends), bends);

    internal static IEnumerable<StopPlacement> PlacementsAtMidRange(Job job, ThrottleBody body, int bends) => bends switch
    {
        0 => Level(job, body, UsableShift(job)),
        1 => Placements(job, body, [0]),
        _ => Placements(job, body, [0], WideStep),
    };

    /// <summary>Whether nothing stands against a candidate as a bracket but what only the checks in space can tell.</summary>
    public static bool Promising(Candidate candidate) => candidate.QuickChecks.All(IsGoodEnough);

    /// <summary>Whether a check does not stand against a bracket: it passes, is advice, or is no matter of the bracket's.</summary>
    public static bool IsGoodEnough(Check check) =>
        check.Passes || check.Kind == CheckKind.Advice || TravelChecks.IsBeyondTheBracket(check);

    private static IEnumerable<Candidate> Shaped(Job job, ThrottleBody body, IEnumerable<StopPlacement> placements, int bends)
    {
        foreach (var placement in placements)
        {
            var place = PlaceWith(job, body, placement);
            foreach (var bracket in Brackets(job, body, placement, bends))
            {
                yield return CandidateOf(job, place, bracket);
            }
        }
    }

    /// <summary>A placement with what every bracket there has in common.</summary>
    internal sealed record Place(StopPlacement Placement, Travel Travel, IReadOnlyList<Check> Checks, double Tension);

    internal static Place PlaceWith(Job job, ThrottleBody body, StopPlacement placement)
    {
        var travel = Travel.Solve(body.Quadrant, placement.Seat.XY, placement.FreePlay, job.Vehicle.Pedal.AvailablePull.Value);
        return new(
            placement, travel,
            [.. TravelChecks.Of(body, job.Vehicle, job.Preferences, travel), .. MechanismChecks.OfPlacement(job, travel, placement)],
            LargestTension(body, travel));
    }

    internal static Candidate CandidateOf(Job job, Place place, Bracket bracket)
    {
        var give = CandidateCost.Give(bracket, place.Tension);
        return new(
            place.Placement, place.Travel, bracket, give,
            CandidateCost.Of(bracket, place.Placement, give, job.Vehicle.Cable.OuterEnd.AdjusterRange),
            () =>
            [
                .. place.Checks,
                .. TravelChecks.OfStop(job.Vehicle, job.Preferences, place.Travel, place.Placement, bracket.Seat),
                .. BracketChecks.OfFlat(bracket, job.Vehicle.Cable, job.Shop.Process),
            ]);
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

    private static StopPlacement? PlacementAt(Job job, ThrottleBody body, Angle leaving, double shift) => StopPlacement.At(
        body.Quadrant, job.Vehicle.Cable.FreeInnerLength.Value, job.Preferences.FreePlay.Value, leaving, shift);

    private static IReadOnlyList<Angle> Angles(Job job, ThrottleBody body, Angle? step = null) =>
        LeavingAngles.Of(body.Quadrant, body.Mount.Plane.Normal, job.Preferences.LeastWrap, step ?? Step);

    private static IEnumerable<StopPlacement> Placements(Job job, ThrottleBody body, double[] shifts, Angle? step = null) =>
        from angle in Angles(job, body, step)
        from shift in shifts
        select PlacementAt(job, body, angle, shift) into placement
        where placement is not null
        select placement;

    // Where the stop's face comes parallel to the mount face, the adjuster may bring both into one plane.
    private static IEnumerable<StopPlacement> Level(Job job, ThrottleBody body, double usable)
    {
        var mount = body.Mount.Plane;
        foreach (var angle in Angles(job, body))
        {
            if (PlacementAt(job, body, angle, 0) is not { } middle || middle.Direction.Cross(mount.Normal).Length > 1e-9)
            {
                continue;
            }

            var height = mount.HeightOf(middle.Seat);
            foreach (var thickness in job.Shop.Stock.Select(s => s.Thickness).Distinct())
            {
                var shift = middle.Direction.Dot(mount.Normal) > 0 ? height - thickness : -height;
                if (Math.Abs(shift) <= usable && PlacementAt(job, body, angle, shift) is { } level)
                {
                    yield return level;
                }
            }
        }
    }

    private static IEnumerable<Bracket> Brackets(Job job, ThrottleBody body, StopPlacement placement, int bends) =>
        from stock in StockAllowed(job)
        from draft in Drafts(job, body, placement, stock, bends)
        select BracketShape.Finish(draft) into bracket
        where bracket is not null
        select bracket;

    /// <summary>Every bracket of one sheet that gets to a placement with so many bends, before its outline is drawn.</summary>
    internal static IEnumerable<BracketShape.Draft> Drafts(Job job, ThrottleBody body, StopPlacement placement, Stock stock, int bends)
    {
        var frame = BracketShape.MountFrame(body.Mount);
        var choice = new BracketShape.Choice(body.Mount, placement, job.Vehicle.Cable, job.Preferences, stock, null);
        return bends switch
        {
            0 => Plates(choice, frame),
            1 => DiesFor(job.Shop, stock, stock.Material.LeastRadiusAcrossGrain).SelectMany(die => Bent(choice with { Die = die }, frame, job.Shop, Layouts.OneBend, Widths)),
            _ => DiesFor(job.Shop, stock, stock.Material.LeastRadiusAlongGrain).Take(1).SelectMany(die => Bent(choice with { Die = die }, frame, job.Shop, Layouts.TwoBends, [0, 1])),
        };
    }

    private static IEnumerable<BracketShape.Draft> Plates(BracketShape.Choice choice, Frame frame)
    {
        foreach (var seatOnTop in new[] { true, false })
        {
            if (Layouts.IsLevel(frame, BracketShape.StopBottom(choice.Placement, choice.Stock.Thickness, seatOnTop))
                && BracketShape.Sketch(choice, [], seatOnTop, []) is { } plate)
            {
                yield return plate;
            }
        }
    }

    private static IEnumerable<BracketShape.Draft> Bent(
        BracketShape.Choice choice, Frame frame, Shop shop,
        Func<BracketShape.Choice, Frame, BendRule, IEnumerable<Layouts.Chain>> layouts, double[] widths)
    {
        var rule = shop.RuleFor(choice.Stock, choice.Die!.InsideRadius);
        Disc[] bolts = [.. choice.Mount.Holes.Select(h => new Disc(frame.ToLocal(h.At).XY, BracketShape.BoltMetalRadius(h)))];
        foreach (var chain in layouts(choice, frame, rule))
        {
            if (!Layouts.IsClear(choice, bolts, chain))
            {
                continue;
            }

            foreach (var width in widths)
            {
                if (BracketShape.Sketch(choice, chain.Joints, chain.SeatOnTop, [.. chain.Joints.Select(_ => width)]) is { } draft)
                {
                    yield return draft;
                }
            }
        }
    }

    // The narrowest die that suits and does not crack the sheet gives the tightest bend, which is what a short flange wants; the next one is kinder to the sheet.
    private static IEnumerable<PressBrakeDie> DiesFor(Shop shop, Stock stock, double leastRatio) =>
        shop.Dies.Where(d => d.Suits(stock.Thickness)).OrderBy(d => d.Opening)
            .OrderBy(d => d.InsideRadius < leastRatio * stock.Thickness).Take(2);

    internal static IEnumerable<Stock> StockAllowed(Job job) => job.Shop.Stock.Where(s =>
        s.Thickness >= job.Preferences.LeastThickness && s.Thickness <= job.Preferences.MostThickness
        && (job.Preferences.Materials.IsEmpty || job.Preferences.Materials.Contains(s.Material.Designation)));
}
