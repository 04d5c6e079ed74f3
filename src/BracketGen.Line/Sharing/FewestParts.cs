using System.Collections.Concurrent;
using BracketGen.Design.Checks;
using BracketGen.Design.Study;
using BracketGen.Line.Solving;
using BracketGen.Profiles.Family;
using BracketGen.Words.Checks;

namespace BracketGen.Line.Sharing;

/// <summary>The fewest parts that serve every passing combination of a line.</summary>
/// <remarks>
/// A set cover: rows are the combinations, sets what each bracket serves. What a bracket may serve is found by quick tests that leave out
/// only what cannot pass; the cover is solved exactly; then every service it uses is checked in full, and those that fail are struck out
/// and the cover solved again. When all are proven, no line with fewer parts exists: the quick tests could only have made it look so.
/// </remarks>
public static class FewestParts
{
    /// <summary>The selection.</summary>
    /// <param name="family">The family.</param>
    /// <param name="parts">The passing combinations with their own brackets, in order.</param>
    /// <param name="strength">How finely brackets are meshed for their strength; null where that is not looked at.</param>
    /// <param name="threads">How many full checks at once.</param>
    public static PartSelection Of(LoadedFamily family, IReadOnlyList<LinePart> parts, StrengthDetail? strength, int threads)
    {
        var possible = PossibleServices.Of(family, parts).ToDictionary(s => (s.Part, s.Served));
        var proven = new ConcurrentDictionary<(int Part, int Served), Fit?>();
        while (true)
        {
            var sets = possible.Values.GroupBy(s => s.Part).OrderBy(g => g.Key)
                .Select(g => (Part: g.Key, Set: new SetCover.Set(
                    [.. g.OrderBy(s => s.Served).Select(s => s.Served)], [.. g.OrderBy(s => s.Served).Select(s => s.Shift)]))).ToArray();
            var (chosen, cheapest) = SetCover.Solve(parts.Count, [.. sets.Select(s => s.Set)]);
            var taken = chosen.Select(c => sets[c].Part).ToHashSet();
            var services = Enumerable.Range(0, parts.Count)
                .Select(served => Best(possible, taken, served)).ToArray();
            Parallel.ForEach(
                services.Where(s => s.Part != s.Served && !proven.ContainsKey((s.Part, s.Served))),
                new ParallelOptions { MaxDegreeOfParallelism = Math.Max(1, threads) },
                s => proven[(s.Part, s.Served)] = Prove(parts, s, strength));
            var struck = services.Where(s => s.Part != s.Served && proven[(s.Part, s.Served)] is null).ToArray();
            if (struck.Length == 0)
            {
                return new(
                    [.. taken.Order().Select(p => parts[p])],
                    [.. services.Select(s => new Service(
                        parts[s.Served], parts[s.Part], s.Mount, s.Part == s.Served ? parts[s.Served].Made.Fit! : proven[(s.Part, s.Served)]!))],
                    cheapest, proven.Count);
            }

            foreach (var service in struck)
            {
                possible.Remove((service.Part, service.Served));
            }
        }
    }

    /// <summary>Every combination with its own part.</summary>
    public static PartSelection Own(IReadOnlyList<LinePart> parts) =>
        new([.. parts], [.. parts.Select(p => new Service(p, p, p.Bracket.Folded.Flanges[0], p.Made.Fit!))], true, 0);

    // Of the parts taken the one that moves the adjuster least; its own before others, then the first.
    private static PossibleService Best(Dictionary<(int Part, int Served), PossibleService> possible, HashSet<int> taken, int served) => taken
        .Where(p => possible.ContainsKey((p, served)))
        .Select(p => possible[(p, served)])
        .OrderBy(s => s.Shift).ThenBy(s => s.Part != s.Served).ThenBy(s => s.Part).First();

    // No worse an answer than with its own part: an open question more would be a price that nobody agreed to.
    private static Fit? Prove(IReadOnlyList<LinePart> parts, PossibleService service, StrengthDetail? strength)
    {
        var served = parts[service.Served];
        return GivenBracket.On(served.Job, parts[service.Part].Bracket, service.Mount, strength) is { } solution
            && Fits.OutcomeOf(solution) is Outcome.Passes or Outcome.NotProven
            && VerdictText.ToProve(solution.Verdict).All(served.Made.Fit!.ToProve.Contains)
            ? Fits.Of(solution)
            : null;
    }
}
