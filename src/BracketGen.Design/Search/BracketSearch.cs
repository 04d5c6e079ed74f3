using System.Collections.Immutable;
using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;

namespace BracketGen.Design.Search;

/// <summary>Finds the cheapest bracket of a job that passes every check, strength included; the one place where this is decided.</summary>
/// <remarks>
/// Candidates come in the order of their cost and are judged until one passes: nothing cheaper is left out, and "none" is said when all were judged. Candidates
/// are judged several at a time, in rounds whose size does not depend on the machine. Where shaking is given and it is certain that none keeps clear of the firing frequency, those that were turned down
/// for their first natural frequency are judged once more, in the same order, by what shaking does to them (<see cref="FrequencyRule.Response"/>).
/// </remarks>
internal static class BracketSearch
{
    // Others worth offering are looked for among so many that come next by cost, and cost so many times the best at the most; of each kind so many are judged.
    private const int MostNext = 60, MostTries = 2;

    private const double CostOfOthers = 1.25;

    private const int FirstRound = 1, LargestRound = 16;

    // The checks of so many of the shapes with the least against them tell which of all is the nearest to passing.
    private const int MostLookedAt = 40;

    /// <summary>The search.</summary>
    /// <param name="job">The job, opening counter-clockwise.</param>
    /// <param name="effort">How far it goes.</param>
    public static SearchOutcome Of(Job job, SearchEffort effort)
    {
        var pool = new CandidatePool(job);
        var outcome = Of(job, pool, effort, new CandidateJudge(job, effort.Strength));
        if (outcome.Best is not null || !outcome.Obstacles.Any(o => o.Nearest.Definition.Scope == CheckScope.WholeMechanism))
        {
            return outcome;
        }

        // Nowhere does the mechanism work, and no bracket is to blame: the best bracket all the same, with what fails.
        var best = Of(job, pool, effort with { WithOthers = false }, new CandidateJudge(job, effort.Strength, mechanismDecides: false));
        return best.Best is null ? outcome : best with { Obstacles = outcome.Obstacles, Shapes = outcome.Shapes, Solves = outcome.Solves + best.Solves };
    }

    /// <summary>
    /// The cheapest bracket that passes, null where none was found, how many were judged by finite elements, how many shapes were looked at, and whether that is
    /// certain: no others, no reasons, nothing of those that fail.
    /// </summary>
    /// <param name="job">The job, opening counter-clockwise.</param>
    /// <param name="effort">How far it goes.</param>
    public static (Finding? Best, int Solves, int Shapes, bool IsCertain) Cheapest(Job job, SearchEffort effort)
    {
        var judge = new CandidateJudge(job, effort.Strength);
        var walk = Walk(new CandidatePool(job), effort, judge);
        var second = ByResponse(job, walk, effort, judge);
        return (walk.Best ?? second?.Walk.Best, walk.Solves + (second?.Walk.Solves ?? 0), walk.Findings.Count, walk.IsCertain && second?.Walk.IsCertain != false);
    }

    private static SearchOutcome Of(Job job, CandidatePool pool, SearchEffort effort, CandidateJudge judge)
    {
        var walk = Walk(pool, effort, judge);
        var outcome = new SearchOutcome
        {
            Best = walk.Best,
            Shapes = walk.Findings.Count,
            Solves = walk.Solves,
            IsCertain = walk.IsCertain,
            Obstacles = ObstaclesOf([.. walk.Findings.Where(f => f.Failed is not null).Select(f => (f.Failed!, 1))], walk.Findings.Count),
        };
        if (ByResponse(job, walk, effort, judge) is { Walk: var (passes, _, solves, certain), Judge: var byResponse })
        {
            outcome = outcome with { Solves = outcome.Solves + solves, IsCertain = certain };
            if (passes is not null)
            {
                return outcome with
                {
                    Best = passes,
                    FrequencyRule = FrequencyRule.Response,
                    Others = effort.WithOthers ? OthersOf(pool, passes, byResponse) : [],
                };
            }
        }

        if (walk.Best is not { } best)
        {
            if (judge.IsHopeless)
            {
                return outcome;
            }

            (Check Failed, int Shapes)[] ruledOut = [.. pool.RuledOut()];
            var shapes = walk.Findings.Count + ruledOut.Sum(r => r.Shapes);
            return outcome with
            {
                Nearest = NearestOf(job, pool, walk.Findings, judge),
                Shapes = shapes,
                AllShapes = outcome.IsCertain ? shapes : Math.Max(shapes, pool.Count),
                Obstacles = ObstaclesOf([.. walk.Findings.Where(f => f.Failed is not null).Select(f => (f.Failed!, 1)), .. ruledOut], shapes),
            };
        }

        var weak = walk.Findings.FirstOrDefault(f => f.Stage == SearchStage.Strength);
        return outcome with
        {
            CheapestWeak = weak is null ? null : new(weak.Candidate, weak.Candidate.QuickChecks),
            Others = effort.WithOthers ? OthersOf(pool, best, judge) : [],
        };
    }

    private sealed record Round(Finding? Best, List<Finding> Findings, int Solves, bool IsCertain);

    // None keeps clear of the firing frequency: every other check stands, so only those that failed this one can pass. Where the shaking is only assumed, nothing can take the rule's place.
    private static (Round Walk, CandidateJudge Judge)? ByResponse(Job job, Round walk, SearchEffort effort, CandidateJudge judge)
    {
        if (walk.Best is not null || !walk.IsCertain || judge.IsHopeless || !ShakingStudy.Decides(job.Body, FrequencyRule.Separation))
        {
            return null;
        }

        Candidate[] low = [.. walk.Findings.Where(f => f.Failed?.Id == CheckId.Resonance).Select(f => f.Candidate)];
        if (low.Length == 0)
        {
            return null;
        }

        var byResponse = judge.ByResponse();
        return (Walk(low, [], effort, byResponse), byResponse);
    }

    private static Round Walk(CandidatePool pool, SearchEffort effort, CandidateJudge judge)
    {
        if (effort.Strength is not null)
        {
            return Walk(pool.ByCost(), [], effort, judge);
        }

        // Without strength a bracket is soon found, and what one bend can do limits what is worth looking at among the many shapes of two.
        var few = Walk(pool.ByCost((0, 1)), [], effort, judge);
        if (judge.IsHopeless || !few.IsCertain)
        {
            return few;
        }

        var limit = few.Best?.Candidate.Cost ?? double.PositiveInfinity;
        var many = Walk(pool.ByCost((2, 2), limit).TakeWhile(c => c.Cost < limit), few.Findings, effort, judge);
        return many with { Best = many.Best ?? few.Best };
    }

    private static Round Walk(IEnumerable<Candidate> byCost, List<Finding> findings, SearchEffort effort, CandidateJudge judge)
    {
        var (solves, size) = (findings.Count(IsSolved), FirstRound);
        using var candidates = byCost.GetEnumerator();
        while (true)
        {
            var round = new List<Candidate>(size);
            while (round.Count < size && candidates.MoveNext())
            {
                round.Add(candidates.Current);
            }

            if (round.Count == 0)
            {
                return new(null, findings, solves, true);
            }

            foreach (var finding in Judge(round, judge))
            {
                findings.Add(finding);
                solves += IsSolved(finding) ? 1 : 0;
                if (finding.Passes)
                {
                    return new(finding, findings, solves, true);
                }

                if (finding is { Stage: SearchStage.Mechanism, Mechanism: not null })
                {
                    judge.TakeNote(finding);
                    if (judge.IsHopeless)
                    {
                        return new(null, findings, solves, true);
                    }
                }

                if (solves >= effort.MaxSolves || findings.Count >= effort.MaxShapes)
                {
                    return new(null, findings, solves, false);
                }
            }

            size = Math.Min(2 * size, LargestRound);
        }
    }

    // Up to the first that passes; those after it are not waited for.
    private static IEnumerable<Finding> Judge(List<Candidate> round, CandidateJudge judge)
    {
        var findings = new Finding?[round.Count];
        Parallel.For(0, round.Count, (i, loop) =>
        {
            if ((findings[i] = judge.Judge(round[i])) is { Passes: true })
            {
                loop.Break(); // All before it are still judged.
            }
        });
        return findings.OfType<Finding>();
    }

    private static bool IsSolved(Finding finding) => finding.Means is not null;

    // Of the next few by cost: one that is lighter, one that is stiffer and one with more room. What is nearest in cost is worth offering, and few need be judged. At
    // the best one's own place the stop stays where it is, and travel and outer are known.
    private static ImmutableArray<Finding> OthersOf(CandidatePool pool, Finding best, CandidateJudge judge)
    {
        var (candidate, offer) = (best.Candidate, best.Offer!);
        Candidate[] next = [.. pool.ByCost((0, candidate.Bracket.Flat.Bends.Length), CostOfOthers * candidate.Cost)
            .SkipWhile(c => c != candidate).Skip(1).Take(MostNext).Where(c => CandidateSearch.Promising(c))];
        var judged = new Dictionary<Candidate, Finding>();
        Finding? Better(Func<Candidate, bool> isBetter, Func<Candidate, double> rank)
        {
            var tried = next.Where(isBetter).OrderBy(c => c.Place != candidate.Place).ThenBy(rank).ThenBy(c => c.Cost).Take(MostTries);
            return tried.Select(c => judged.TryGetValue(c, out var known) ? known : judged[c] = judge.Judge(c)).FirstOrDefault(f => f.Passes);
        }

        Finding?[] found =
        [
            Better(c => c.Bracket.Mass < Ranking.WorthSaying * offer.Mass, c => c.Bracket.Mass),
            Better(c => c.Give < Ranking.WorthSaying * offer.Give, c => c.Give),
            Better(c => RoomOf(c) > offer.LeastSpare + Ranking.MoreRoom, c => -RoomOf(c)),
        ];
        return
        [
            .. found.OfType<Finding>().Distinct().Where(f => !f.Offer!.IsDominatedBy(offer)).OrderBy(f => f.Candidate.Cost),
        ];

        // No more than what its quick checks leave.
        static double RoomOf(Candidate c) => c.QuickChecks.Where(Offer.IsOfPlace).Min(k => k.Spare);
    }

    private static ImmutableArray<Obstacle> ObstaclesOf(IEnumerable<(Check Failed, int Shapes)> stopped, int shapes) =>
    [
        .. stopped.GroupBy(s => s.Failed.Code)
            .Select(g => new Obstacle(g.Select(s => s.Failed).MaxBy(c => c.Margin)!, g.Sum(s => s.Shapes), shapes))
            .OrderByDescending(o => o.Stopped).ThenBy(o => o.Nearest.Code, StringComparer.Ordinal),
    ];

    // One that fails late is nearer than one that fails early; among those, the one that misses its limit by the least.
    private static Finding? NearestOf(Job job, CandidatePool pool, List<Finding> findings, CandidateJudge judge)
    {
        if (findings.Where(f => f.Mechanism is not null).MaxBy(f => f.Failed!.Spare) is { } works)
        {
            return works;
        }

        if (findings.Where(f => f.Stage >= SearchStage.Strength).MaxBy(f => f.Failed!.Spare) is { } weak)
        {
            return judge.InFull(weak.Candidate) with { Stage = weak.Stage, Failed = weak.Failed };
        }

        return LeastFaulty(job, pool.All()) is { } faulty ? judge.InFull(faulty) with { Stage = SearchStage.Flat, Failed = null } : null;
    }

    // Looking in full at no more than shows which it is.
    private static Candidate? LeastFaulty(Job job, IReadOnlyList<Candidate> candidates)
    {
        Candidate? best = null;
        var leastFaults = double.PositiveInfinity;
        foreach (var candidate in candidates.OrderBy(c => FaultsOf(c.QuickChecks)).ThenBy(c => c.Cost).Take(MostLookedAt))
        {
            if (FaultsOf(candidate.QuickChecks) >= leastFaults)
            {
                break; // The checks in space can only add to the faults.
            }

            var faults = FaultsOf(candidate.QuickChecks.Concat(BracketChecks.InSpace(candidate.Around(job), SpaceDemand.Error)));
            if (faults < leastFaults)
            {
                (best, leastFaults) = (candidate, faults);
            }
        }

        return best;
    }

    private static double FaultsOf(IEnumerable<Check> checks) => checks.Where(c => c.Fails).Sum(c => c.Kind switch
    {
        CheckKind.Safety => 100.0,
        CheckKind.Function => 10,
        CheckKind.Making => 10,
        _ => 0,
    });
}
