using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Geometry;

namespace BracketGen.Design.Search;

/// <summary>Writes down which bracket was chosen, and makes it again.</summary>
/// <remarks>
/// What was chosen holds for a body that opens either way: leaving angles are counted from the pocket the way the groove runs, and a mirrored sheet keeps its top.
/// </remarks>
internal static class ChosenSearch
{
    // A bend that turns by this much more or less is another bracket, not the same one on a job that was measured anew.
    private static readonly Angle SameTurn = Angle.FromDegrees(15);

    /// <summary>What there is to write down of a candidate.</summary>
    /// <param name="job">The job, opening counter-clockwise.</param>
    /// <param name="candidate">The candidate.</param>
    public static ChosenBracket Of(Job job, Candidate candidate)
    {
        var bracket = candidate.Bracket;
        return new(
            bracket.Stock.Material.Designation, bracket.Stock.Thickness, candidate.Placement.Leaving - job.Body.Quadrant.PocketNormal,
            candidate.Placement.AdjusterShift, bracket.Flat.Bends.IsEmpty ? 0 : bracket.Flat.Bends[0].InsideRadius, bracket.SeatOnTop,
            [.. bracket.Flat.Bends.Select(b => new ChosenBend(b.Turn, b.Length))]);
    }

    /// <summary>The bracket made again for a job: of those on that sheet at that place with such bends, the one most like it. Null where there is none.</summary>
    /// <param name="job">The job, opening counter-clockwise.</param>
    /// <param name="chosen">What was chosen.</param>
    public static Candidate? Again(Job job, ChosenBracket chosen)
    {
        var place = Place.At(job, job.Body.Quadrant.PocketNormal + chosen.Leaving, chosen.AdjusterShift);
        var tools = CandidateSearch.ToolsFor(job).FirstOrDefault(t =>
            t.Sheet.Stock.Material.Designation == chosen.Material && Math.Abs(t.Sheet.Stock.Thickness - chosen.Thickness) < Tolerance.SameSize);
        return place is null || tools is null ? null : Enumerable.Range(0, 3).SelectMany(bends => new[] { false, true }.SelectMany(stiffened => tools.Drafts(place.Placement, bends, stiffened)))
            .Where(d => d.KeepsApart && IsLike(d, chosen))
            .OrderBy(d => Unlikeness(d, chosen))
            .Select(d => BracketShape.Finish(d) is { } bracket ? CandidateSearch.CandidateOf(job, place, bracket, d.Give(place.Tension)) : null)
            .FirstOrDefault(c => c is not null);
    }

    /// <summary>Whether two candidates of a job are one bracket; what was written down and read again differs in the last digits.</summary>
    /// <param name="job">The job, opening counter-clockwise.</param>
    /// <param name="one">One candidate.</param>
    /// <param name="other">The other.</param>
    public static bool IsSame(Job job, Candidate one, Candidate other)
    {
        var (a, b) = (Of(job, one), Of(job, other));
        return a.Material == b.Material && a.SeatOnTop == b.SeatOnTop && a.Bends.Length == b.Bends.Length
            && AreNear(a.Thickness, b.Thickness) && AreNear(a.Leaving.Radians, b.Leaving.Radians) && AreNear(a.AdjusterShift, b.AdjusterShift)
            && AreNear(a.InsideRadius, b.InsideRadius) && AreNear(one.Bracket.Mass, other.Bracket.Mass)
            && a.Bends.Zip(b.Bends).All(p => AreNear(p.First.Length, p.Second.Length) && AreNear(p.First.Turn.Radians, p.Second.Turn.Radians));
    }

    private static bool AreNear(double one, double other) => Math.Abs(one - other) < Tolerance.SameSize;

    private static bool IsLike(BracketDraft draft, ChosenBracket chosen) =>
        draft.SeatOnTop == chosen.SeatOnTop && draft.Bends.Length == chosen.Bends.Length
        && (draft.Bends.Length == 0 || Math.Abs(draft.Bends[0].InsideRadius - chosen.InsideRadius) < Tolerance.SameSize)
        && draft.Bends.Zip(chosen.Bends).All(p => Math.Abs((p.First.Turn - p.Second.Turn).Radians) < SameTurn.Radians);

    private static double Unlikeness(BracketDraft draft, ChosenBracket chosen) =>
        draft.Bends.Zip(chosen.Bends).Sum(p => Math.Abs(p.First.Length - p.Second.Length) + Math.Abs((p.First.Turn - p.Second.Turn).Degrees));
}
