using System.Collections.Concurrent;
using BracketGen.Design.Checks;
using BracketGen.Design.Study;
using BracketGen.Line.Numbering;
using BracketGen.Line.Solving;
using BracketGen.Words.Checks;
using BracketGen.Words.Line;

namespace BracketGen.Line.Sharing;

/// <summary>Leaves the choice of parts what was given out before: a variant keeps the part that it has where that still passes.</summary>
internal static class IssuedFirst
{
    /// <summary>
    /// What a variant costs on a part that nobody has yet, and again on a bracket that is nobody's own and has no number, beside the share of the adjuster's half range (0 to 1): of as many parts
    /// those given out come first, then own ones, then those that keep adjusters nearest to mid range.
    /// </summary>
    private const double OfNewPart = 1;

    /// <summary>What a service costs in the cover.</summary>
    public static double CostOf(IReadOnlyList<LinePart> parts, PossibleService service, ServicesBefore before) =>
        service.Shift + (IsNumbered(parts[service.Part]) ? 0 : OfNewPart) + (before.Preferred.Count == 0 || IsGivenOut(parts[service.Part], before) ? 0 : OfNewPart);

    /// <summary>Takes from the possible services those that would take from a variant what it has; returns the kept, by part and variant, and why others are lost.</summary>
    /// <param name="parts">The combinations with their own parts.</param>
    /// <param name="all">Those, and the shared parts that were given out.</param>
    /// <param name="possible">What is possible; changed.</param>
    /// <param name="before">What was given out.</param>
    /// <param name="prove">Checks a service in full.</param>
    /// <param name="proven">What was checked in full; added to.</param>
    /// <param name="threads">How many at once.</param>
    /// <param name="strength">How finely brackets are meshed for their strength.</param>
    public static (HashSet<(int Part, int Served)> Kept, Dictionary<string, string[]> Lost) Keep(
        IReadOnlyList<LinePart> parts, IReadOnlyList<LinePart> all, Dictionary<(int Part, int Served), PossibleService> possible, ServicesBefore before,
        Func<PossibleService, Fit?> prove, ConcurrentDictionary<(int Part, int Served), Fit?> proven, int threads, StrengthDetail? strength)
    {
        var index = new Dictionary<string, int>();
        for (var i = 0; i < all.Count; i++)
        {
            index[all[i].Made.PartNumber] = i;
        }

        bool IsPinned(int i) => before.Pinned.Contains(parts[i].Made.PartNumber);
        var wanted = Enumerable.Range(0, parts.Count)
            .Select(j => (Served: j, Part: IsPinned(j) ? j : before.Serving.TryGetValue(parts[j].Combination.Key, out var number) && index.TryGetValue(number, out var p) ? p : -1))
            .Where(w => w.Part >= 0).ToArray();
        Parallel.ForEach(
            wanted.Where(w => w.Part != w.Served && possible.ContainsKey((w.Part, w.Served))),
            new ParallelOptions { MaxDegreeOfParallelism = Math.Max(1, threads) },
            w => proven[(w.Part, w.Served)] = prove(possible[(w.Part, w.Served)]));
        HashSet<(int, int)> kept = [];
        Dictionary<string, string[]> lost = [];
        foreach (var (served, part) in wanted)
        {
            if (part == served || (proven.TryGetValue((part, served), out var fit) && fit is not null))
            {
                kept.Add((part, served));
            }
            else
            {
                lost[parts[served].Combination.Key] = Why(parts, possible.TryGetValue((part, served), out var service) ? service : null, served, all[part], strength);
                possible.Remove((part, served));
            }
        }

        var partOf = kept.ToDictionary(k => k.Item2, k => k.Item1);
        foreach (var key in possible.Keys.Where(k => partOf.TryGetValue(k.Served, out var part) && part != k.Part).ToArray())
        {
            possible.Remove(key);
        }

        return (kept, lost);
    }

    private static bool IsNumbered(LinePart part) => part.Key.Length > 0;

    private static bool IsGivenOut(LinePart part, ServicesBefore before) => IsNumbered(part) && before.Preferred.Contains(part.Made.PartNumber);

    private static string[] Why(IReadOnlyList<LinePart> parts, PossibleService? service, int served, LinePart part, StrengthDetail? strength)
    {
        var job = parts[served].Job;
        var mount = service?.Mount ?? MountMatch.Of(part.Bracket, job.Body.Mount).Cast<Geometry.Frame?>().FirstOrDefault();
        if (mount is not { } place || GivenBracket.On(job, part.Bracket, place, strength) is not { } solution)
        {
            return [mount is null ? IssuedText.OtherHoles : IssuedText.OutOfReach];
        }

        return Fits.Reasons(solution) is { Length: > 0 } reasons ? reasons : [.. VerdictText.ToProve(solution.Verdict).Except(parts[served].Made.Fit!.ToProve)];
    }
}
