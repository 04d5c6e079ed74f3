using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Search;
using BracketGen.Design.Study;
using BracketGen.Mechanism.Cables;
using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Family;
using BracketGen.Profiles.Toml;
using BracketGen.SheetMetal.Shops;
using BracketGen.TestSupport;
using BracketGen.Words.Report;

namespace BracketGen.Design.Tests;

/// <summary>The bounds by which the search leaves brackets undrawn: never above the true cost.</summary>
public class CostBoundTests
{
    [Fact]
    public void The_bound_is_below_the_cost_of_every_candidate()
    {
        var compared = 0;
        RandomJobs.Job.Check(LongRun.Of(6), job =>
        {
            job = job.OpeningCounterClockwise();
            var range = job.Vehicle.Cable.OuterEnd.AdjusterRange;
            for (var bends = 1; bends <= 2; bends++)
            {
                foreach (var place in CandidateSearch.PlacesAtMidRange(job, bends))
                {
                    foreach (var tools in CandidateSearch.ToolsFor(job))
                    {
                        var ofPlace = BracketCost.OfPlace(place.Placement, range, job.Shop.Rates)
                            + (bends == 1 ? CostBound.OfSingleAngle(job.Body.Mount.Plane.Normal, place.Placement.Direction, job.Shop.Rates) : 0);
                        foreach (var (stiffened, draft) in new[] { false, true }.SelectMany(s => tools.Drafts(place.Placement, bends, s).Select(d => (s, d))))
                        {
                            if (BracketShape.Finish(draft) is { } bracket)
                            {
                                var give = draft.Give(place.Tension);
                                var cost = CandidateSearch.CandidateOf(job, place, bracket, give).Cost;
                                double weighed = CostBound.Of(draft, give, range), light = CostBound.WithoutGive(draft, range);
                                Assert.True(weighed <= cost, $"{weighed} over {cost}");
                                Assert.True(light <= weighed, $"{light} over {weighed}");
                                var any = CostBound.OfAny(tools.Sheet, bends, stiffened) + ofPlace;
                                Assert.True(any <= light, $"{any} over {light}");
                                Assert.True(CostBound.LeastMass(draft) <= bracket.Mass);
                                Assert.Equal(StopGive.Of(bracket, place.Tension), give, 1e-9);
                                compared++;
                            }
                        }
                    }
                }
            }
        });
        Assert.True(compared > LongRun.AtLeast(500), $"only {compared} brackets compared");
    }

    [Fact]
    public void No_chain_of_two_bends_is_left_out_that_costs_less_than_the_limit()
    {
        int below = 0, kept = 0, all = 0;
        RandomJobs.Job.Check(LongRun.Of(6), job =>
        {
            job = job.OpeningCounterClockwise();
            foreach (var place in CandidateSearch.PlacesAtMidRange(job, 2))
            {
                foreach (var tools in CandidateSearch.ToolsFor(job))
                {
                    var costs = tools.Drafts(place.Placement, 2, stiffened: false).Select(draft => CostOf(job, place, draft)).ToList();
                    var made = costs.Where(double.IsFinite).Order().ToList();
                    foreach (var limit in made.Count == 0 ? [] : new[] { 0, 0.01, 0.05, 0.2, 0.4 }.Select(part => made[(int)(part * made.Count)]))
                    {
                        var left = tools.Drafts(place.Placement, 2, false, new TwoBendBound(tools.Sheet, place.Tension, limit)).Select(draft => CostOf(job, place, draft)).ToList();
                        Assert.Equal(costs.Where(c => c < limit), left.Where(c => c < limit));
                        (below, kept, all) = (below + left.Count(c => c < limit), kept + left.Count, all + costs.Count);
                    }
                }
            }
        });
        Assert.True(below > LongRun.AtLeast(200), $"only {below} brackets below their limit");
        Assert.True(kept < 0.8 * all, $"{kept} of {all} kept: nothing was gained");
    }

    private static double CostOf(Job job, Place place, BracketDraft draft) =>
        BracketShape.Finish(draft) is { } bracket ? CandidateSearch.CandidateOf(job, place, bracket, draft.Give(place.Tension)).Cost : double.PositiveInfinity;
}
