using System.Collections.Immutable;
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

    /// <summary>
    /// All candidates for <paramref name="body"/> (opening counter-clockwise), best first, quick checks done. The adjuster is
    /// moved off mid range only where nothing is found with it there.
    /// </summary>
    public static IReadOnlyList<Candidate> All(Job job, ThrottleBody body) => new CandidatePool(job, body).All();

    /// <summary>
    /// The candidates with the adjuster at mid range, and flat plates wherever it can reach one; made one by one as asked for, the
    /// fewest bends first.
    /// </summary>
    public static IEnumerable<Candidate> AtMidRange(Job job, ThrottleBody body) =>
        Enumerable.Range(0, 3).SelectMany(bends => AtMidRange(job, body, bends));

    /// <summary>Of those the ones with so many bends: 0, 1 or 2.</summary>
    public static IEnumerable<Candidate> AtMidRange(Job job, ThrottleBody body, int bends)
    {
        var tools = ToolsFor(job, body).ToList();
        foreach (var place in PlacementsAtMidRange(job, body, bends).Select(p => PlaceWith(job, body, p)))
        {
            foreach (var draft in tools.SelectMany(t => t.Drafts(place.Placement, bends)))
            {
                if (BracketShape.Finish(draft) is { } bracket)
                {
                    yield return CandidateOf(job, place, bracket, draft.Give(place.Tension));
                }
            }
        }
    }

    internal static IEnumerable<StopPlacement> PlacementsAtMidRange(Job job, ThrottleBody body, int bends) => bends switch
    {
        0 => Level(job, body, UsableShift(job)),
        1 => Placements(job, body, [0]),
        _ => Placements(job, body, [0], WideStep),
    };

    /// <summary>Places with the adjuster at either end of what may be used of its range; none where it has no range, or for flat plates.</summary>
    internal static IEnumerable<StopPlacement> PlacementsAtRangeEnds(Job job, ThrottleBody body, int bends)
    {
        var usable = UsableShift(job);
        return bends == 0 || usable <= 0 ? [] : Placements(job, body, [-usable, usable], bends == 1 ? Step : WideStep);
    }

    internal static IEnumerable<BracketTools> ToolsFor(Job job, ThrottleBody body) =>
        StockAllowed(job).Select(stock => new BracketTools(new(body.Mount, job.Vehicle.Cable, job.Preferences, stock), job.Shop));

    /// <summary>Whether nothing stands against a candidate as a bracket but what only the checks in space can tell.</summary>
    public static bool Promising(Candidate candidate) => candidate.QuickChecks.All(IsGoodEnough);

    /// <summary>Whether a check does not stand against a bracket: it passes, is advice, or is no matter of the bracket's.</summary>
    public static bool IsGoodEnough(Check check) =>
        check.Passes || check.Kind == CheckKind.Advice || TravelChecks.IsBeyondTheBracket(check);

    /// <summary>A placement with what every bracket there has in common.</summary>
    internal sealed class Place
    {
        private readonly Lazy<ImmutableArray<Check>> _checks;

        public Place(Job job, ThrottleBody body, StopPlacement placement)
        {
            Placement = placement;
            Travel = Travel.Solve(body.Quadrant, placement.Seat.XY, placement.FreePlay, job.Vehicle.Pedal.AvailablePull.Value);
            Tension = LargestTension(body, Travel);
            _checks = new(() =>
                [.. TravelChecks.Of(body, job.Vehicle, job.Preferences, Travel), .. MechanismChecks.OfPlacement(job, Travel, placement)]);
        }

        public StopPlacement Placement { get; }

        public Travel Travel { get; }

        public ImmutableArray<Check> Checks => _checks.Value;

        /// <summary>Whether travel and place alone do not rule out whatever gets there.</summary>
        public bool IsGoodEnough => Checks.All(CandidateSearch.IsGoodEnough);

        /// <summary>Largest tension in the wire over an opening (N).</summary>
        public double Tension { get; }
    }

    internal static Place PlaceWith(Job job, ThrottleBody body, StopPlacement placement) => new(job, body, placement);

    internal static Candidate CandidateOf(Job job, Place place, Bracket bracket, double give) => new(
        place.Placement, place.Travel, bracket, give,
        CandidateCost.Of(bracket, place.Placement, give, job.Vehicle.Cable.OuterEnd.AdjusterRange),
        () =>
        [
            .. place.Checks,
            .. TravelChecks.OfStop(job.Vehicle, job.Preferences, place.Travel, place.Placement, bracket.Seat),
            .. BracketChecks.OfFlat(bracket, job.Vehicle.Cable, job.Shop.Process),
        ]);

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

    // A groove that is not round may come over the stop as it turns: no wire can run there.
    private static StopPlacement? PlacementAt(Job job, ThrottleBody body, Angle leaving, double shift) =>
        StopPlacement.At(body.Quadrant, job.Vehicle.Cable.FreeInnerLength.Value, job.Preferences.FreePlay.Value, leaving, shift) is { } placement
        && (body.Quadrant.Groove is CircularGroove
            || Travel.TrySolve(body.Quadrant, placement.Seat.XY, placement.FreePlay, job.Vehicle.Pedal.AvailablePull.Value) is not null)
            ? placement : null;

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

    internal static IEnumerable<Stock> StockAllowed(Job job) => job.Shop.Stock.Where(s =>
        s.Thickness >= job.Preferences.LeastThickness && s.Thickness <= job.Preferences.MostThickness
        && (job.Preferences.Materials.IsEmpty || job.Preferences.Materials.Contains(s.Material.Designation)));
}
