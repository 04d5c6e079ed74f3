using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Geometry;
using BracketGen.SheetMetal.Shops;

namespace BracketGen.Design.Search;

/// <summary>Makes the brackets among which the best is picked, for jobs whose body opens counter-clockwise.</summary>
public static class CandidateSearch
{
    private static readonly Angle Step = Angle.FromDegrees(3);

    // Two bends have so many ways of their own that every second leaving angle shows them all.
    private static readonly Angle WideStep = Angle.FromDegrees(6);

    // Off mid range the adjuster is tried at these (mm), as far as it may be used: fixed, so that a longer range adds places and moves none.
    private static readonly double[] Shifts = [2.5, 5, 10, 20];

    /// <summary>All candidates for <paramref name="job"/>, best first, quick checks done.</summary>
    public static IReadOnlyList<Candidate> All(Job job) => new CandidatePool(job).All();

    /// <summary>
    /// The candidates with the adjuster at mid range, and flat plates wherever it can reach one; made one by one as asked for, the
    /// fewest bends first.
    /// </summary>
    public static IEnumerable<Candidate> AtMidRange(Job job) =>
        Enumerable.Range(0, 3).SelectMany(bends => AtMidRange(job, bends));

    /// <summary>Of those the ones with so many bends: 0, 1 or 2.</summary>
    public static IEnumerable<Candidate> AtMidRange(Job job, int bends)
    {
        var tools = ToolsFor(job).ToList();
        foreach (var place in PlacesAtMidRange(job, bends))
        {
            foreach (var draft in tools.SelectMany(t => t.Drafts(place.Placement, bends, stiffened: false)))
            {
                if (BracketShape.Finish(draft) is { } bracket)
                {
                    yield return CandidateOf(job, place, bracket, draft.Give(place.Tension));
                }
            }
        }
    }

    internal static IEnumerable<Place> PlacesAtMidRange(Job job, int bends) => bends switch
    {
        0 => Level(job, UsableShift(job)),
        1 => Places(job, [0], Step),
        _ => Places(job, [0], WideStep),
    };

    /// <summary>Every place for brackets with so many bends: the adjuster at mid range, and off it as far as it may be used.</summary>
    internal static IEnumerable<Place> Places(Job job, int bends)
    {
        var usable = UsableShift(job);
        double[] shifts = [.. Shifts.Where(s => s <= usable + Tolerance.Point).SelectMany(s => new[] { -s, s })];
        return bends == 0 ? PlacesAtMidRange(job, 0) : PlacesAtMidRange(job, bends).Concat(Places(job, shifts, bends == 1 ? Step : WideStep));
    }

    internal static IEnumerable<BracketTools> ToolsFor(Job job) =>
        StockAllowed(job).Select(stock => new BracketTools(new(job.Body.Mount, job.Vehicle.Cable, job.Preferences, stock, job.Shop.Rates), job.Shop));

    /// <summary>Whether nothing stands against a candidate as a bracket but what only the checks in space can tell.</summary>
    public static bool Promising(Candidate candidate) => candidate.QuickChecks.All(IsGoodEnough);

    /// <summary>Whether a check does not rule a bracket out: it does not fail, is advice, or is no matter of the bracket's.</summary>
    public static bool IsGoodEnough(Check check) =>
        !check.Fails || check.Kind == CheckKind.Advice || TravelChecks.IsBeyondTheBracket(check);

    internal static Candidate CandidateOf(Job job, Place place, Bracket bracket, double give) => new(
        place.Placement, place.Travel, bracket, give,
        BracketCost.Of(bracket, place.Placement, give, job.Vehicle.Cable.OuterEnd.AdjusterRange, job.Shop.Rates).Total,
        () =>
        [
            .. JobFacts.Of(job).Body,
            .. place.Checks,
            .. TravelChecks.OfStop(job.Vehicle, job.Preferences, place.Travel, place.Placement, bracket.Seat),
            .. BracketChecks.OfFlat(bracket, job.Vehicle.Cable, job.Shop.Process),
            .. SecondFaceChecks.OfFlat(bracket, job.Body.Mount),
        ])
    {
        Place = place,
    };

    /// <summary>The check that fails where no bracket could be shaped at all.</summary>
    public static Check NoShape(Job job)
    {
        var reachable = Places(job, [0], Step).Any();
        return new(CheckId.BracketShape, 0, 1) { IsVariant = !reachable };
    }

    /// <summary>The check of the room at the line where the faces of the mount meet, where no sheet and tool leaves enough; null where one does, and where there is no second face.</summary>
    public static Check? NoSecondFlange(Job job) => job.Body.Mount.Second is not null && new Check(CheckId.SecondFaceLine, ToolsFor(job).Max(t => t.RoomAtSecond) ?? double.NaN, 0) is { Passes: false } none ? none : null;

    private static double UsableShift(Job job) =>
        job.Vehicle.Cable.OuterEnd.AdjusterRange / 2 * (1 - job.Preferences.AdjusterReserve);

    private static IReadOnlyList<Angle> Angles(Job job, Angle step) =>
        LeavingAngles.Of(job.Body.Quadrant, job.Body.Mount.Plane.Normal, job.Preferences.MinWrap, step);

    private static IEnumerable<Place> Places(Job job, double[] shifts, Angle step) =>
        from angle in Angles(job, step)
        from shift in shifts
        select Place.At(job, angle, shift) into place
        where place is not null
        select place;

    // Where the stop's face comes parallel to the mount face, the adjuster may bring both into one plane.
    private static IEnumerable<Place> Level(Job job, double usable)
    {
        var mount = job.Body.Mount.Plane;
        foreach (var angle in Angles(job, Step))
        {
            if (Place.At(job, angle, 0)?.Placement is not { } middle || middle.Direction.Cross(mount.Normal).Length > Tolerance.Direction)
            {
                continue;
            }

            var height = mount.HeightOf(middle.Seat.Vector);
            foreach (var thickness in job.Shop.Stock.Select(s => s.Thickness).Distinct())
            {
                var shift = middle.Direction.Dot(mount.Normal) > 0 ? height - thickness : -height;
                if (Math.Abs(shift) <= usable && Place.At(job, angle, shift) is { } level)
                {
                    yield return level;
                }
            }
        }
    }

    internal static IEnumerable<Stock> StockAllowed(Job job) => job.Shop.Stock.Where(s =>
        s.Thickness >= job.Preferences.MinThickness && s.Thickness <= job.Preferences.MaxThickness
        && (job.Preferences.Materials.IsEmpty || job.Preferences.Materials.Contains(s.Material.Designation)));
}
