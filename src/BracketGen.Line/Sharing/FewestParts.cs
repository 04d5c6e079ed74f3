using System.Collections.Concurrent;
using BracketGen.Design.Checks;
using BracketGen.Design.Study;
using BracketGen.Line.Numbering;
using BracketGen.Line.Parts;
using BracketGen.Line.Solving;
using BracketGen.Profiles.Family;
using BracketGen.Words.Checks;

namespace BracketGen.Line.Sharing;

/// <summary>The fewest parts that serve every passing combination of a line, of the brackets that were tried.</summary>
/// <remarks>
/// A set cover: rows are the combinations, sets what each bracket serves: each combination's own, and <see cref="SharedCandidates"/>. What a bracket may serve is found by quick tests that leave out
/// only what cannot pass; the cover is solved; then every service it uses is checked in full, and those that fail are struck out, more candidates are made where that may help,
/// and the cover is solved again. When all are proven, no choice of fewer of these brackets exists: the quick tests could only have made it look so.
/// </remarks>
public static class FewestParts
{
    /// <summary>The selection; its shared parts have no numbers yet (<see cref="SharedNumbers"/>).</summary>
    /// <param name="family">The family.</param>
    /// <param name="parts">The passing combinations with their own brackets, in order.</param>
    /// <param name="strength">How finely brackets are meshed for their strength; null where that is not looked at.</param>
    /// <param name="threads">How many full checks at once.</param>
    /// <param name="before">What was given out before; null for nothing.</param>
    /// <param name="shared">Shared parts that were given out before; null for none.</param>
    public static PartSelection Of(LoadedFamily family, IReadOnlyList<LinePart> parts, StrengthDetail? strength, int threads, ServicesBefore? before = null, IReadOnlyList<LinePart>? shared = null)
    {
        var services = new PossibleServices(family, parts);
        var issued = before ?? ServicesBefore.None;
        LinePart[] givenOut = [.. shared ?? []];
        List<LinePart> all = [.. parts, .. givenOut];
        var possible = all.SelectMany((p, i) => services.Of(i, p.Bracket)).ToDictionary(s => (s.Part, s.Served));
        var (proven, failed) = (new ConcurrentDictionary<(int Part, int Served), Fit?>(), new HashSet<int>());
        var (kept, lost) = IssuedFirst.Keep(parts, all, possible, issued, s => Prove(parts[s.Served], all[s.Part], s, strength), proven, threads, strength);
        var settled = kept.Select(k => k.Served).ToHashSet();
        var candidates = new SharedCandidates(parts, services, strength is not null, threads, settled, givenOut.Select(p => p.Made.Fingerprint!));
        List<int> hosts = [.. Enumerable.Range(0, parts.Count), .. givenOut.Select(p => Host(parts, p))];
        while (true)
        {
            var joined = new Joined(parts.Count);
            foreach (var served in possible.Values.GroupBy(s => s.Part))
            {
                joined.Add([.. served.Select(s => s.Served)]);
            }

            candidates.Add(joined, failed, (host, bracket) =>
            {
                all.Add(new LinePart(parts[host].Combination, parts[host].Made with { Fingerprint = PartFingerprint.Of(bracket), Part = PartShape.Of(bracket), Files = [] }, bracket, parts[host].Job) { Key = "" });
                hosts.Add(host);
                PossibleService[] found = [.. services.Of(all.Count - 1, bracket).Where(s => !settled.Contains(s.Served))];
                Array.ForEach(found, s => possible.Add((s.Part, s.Served), s));
                return Array.ConvertAll(found, s => s.Served);
            });
            var sets = possible.Values.GroupBy(s => s.Part).OrderBy(g => g.Key)
                .Select(g => (Part: g.Key, Set: new SetCover.Set(
                    [.. g.OrderBy(s => s.Served).Select(s => s.Served)], [.. g.OrderBy(s => s.Served).Select(s => IssuedFirst.CostOf(all, s, issued))]))).ToArray();
            var (chosen, atLeast, cheapest) = SetCover.Solve(parts.Count, [.. sets.Select(s => s.Set)]);
            var taken = chosen.Select(c => sets[c].Part).ToHashSet();
            var used = Enumerable.Range(0, parts.Count)
                .Select(served => Best(possible, taken, served, s => IssuedFirst.CostOf(all, s, issued))).ToArray();
            Parallel.ForEach(
                used.Where(s => s.Part != s.Served && !proven.ContainsKey((s.Part, s.Served))),
                new ParallelOptions { MaxDegreeOfParallelism = Math.Max(1, threads) },
                s => proven[(s.Part, s.Served)] = Prove(parts[s.Served], all[s.Part], s, strength));
            var struck = used.Where(s => s.Part != s.Served && proven[(s.Part, s.Served)] is null).ToArray();
            if (struck.Length == 0)
            {
                return new(
                    [.. used.Select(s => s.Part).Distinct().Order().Select(p => all[p])],
                    [.. used.Select(s => new Service(
                        parts[s.Served], all[s.Part], s.Mount, s.Part == s.Served ? parts[s.Served].Made.Fit! : proven[(s.Part, s.Served)]!))],
                    cheapest, proven.Count)
                {
                    Candidates = all.Count - parts.Count - givenOut.Length,
                    AtLeast = atLeast,
                    Kept = kept.Count,
                    Lost = lost,
                };
            }

            foreach (var service in struck)
            {
                possible.Remove((service.Part, service.Served));
                failed.Add(hosts[service.Part]);
            }
        }
    }

    private static int Host(IReadOnlyList<LinePart> parts, LinePart shared) => Enumerable.Range(0, parts.Count).First(i => parts[i].Combination == shared.Combination);

    /// <summary>Every combination with its own part.</summary>
    public static PartSelection Own(IReadOnlyList<LinePart> parts) =>
        new([.. parts], [.. parts.Select(p => new Service(p, p, p.Bracket.Folded.Flanges[0], p.Made.Fit!))], true, 0);

    // Of the parts taken the one that costs least; its own before others, then the first.
    private static PossibleService Best(Dictionary<(int Part, int Served), PossibleService> possible, HashSet<int> taken, int served, Func<PossibleService, double> cost) => taken
        .Where(p => possible.ContainsKey((p, served)))
        .Select(p => possible[(p, served)])
        .OrderBy(cost).ThenBy(s => s.Part != s.Served).ThenBy(s => s.Part).First();

    // No worse an answer than with its own part: an open question more would be a price that nobody agreed to. The quick checks first: strength takes long.
    private static Fit? Prove(LinePart served, LinePart by, PossibleService service, StrengthDetail? strength) =>
        (strength is null || GivenBracket.MayPass(served.Job, by.Bracket, service.Mount))
        && GivenBracket.On(served.Job, by.Bracket, service.Mount, strength) is { } solution
        && Fits.OutcomeOf(solution) is Outcome.Passes or Outcome.NotProven
        && VerdictText.ToProve(solution.Verdict).All(served.Made.Fit!.ToProve.Contains)
            ? Fits.Of(solution)
            : null;
}
