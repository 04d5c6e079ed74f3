using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Search;
using BracketGen.Design.Study;
using BracketGen.Mechanism.Cables;
using BracketGen.Profiles.Family;
using BracketGen.SheetMetal.Shops;
using BracketGen.TestSupport;
using BracketGen.Words.Report;

namespace BracketGen.Design.Tests;

/// <summary>The order of the offers.</summary>
public class RankingTests
{
    public static TheoryData<string> Names => Examples.Names;

    // Brute force: every candidate of the grid checked in full, none passed over. The first offer is as cheap as the cheapest.
    [Fact]
    public void No_cheaper_bracket_passes_of_all_on_the_grid()
    {
        var compared = 0;
        RandomJobs.Job.Check(LongRun.Of(40), job =>
        {
            var small = Small(job);
            var turned = small.OpeningCounterClockwise();
            var search = Designer.Solve(small, SearchEffort.WithoutStrength).Search!;
            var passing = CandidateSearch.All(turned)
                .Where(c => c.QuickChecks.Concat(BracketChecks.InSpace(c.Bracket, turned, c.Placement, c.Travel))
                    .All(CandidateSearch.IsGoodEnough))
                .ToList();
            var working = passing.Where(c => MechanismReport.Of(turned, c.Travel, c.Placement, c.Bracket).Checks.All(CandidateSearch.IsGoodEnough)).ToList();
            Assert.Equal(passing.Count == 0, search.Best is null);
            Assert.True(search.IsCertain);
            if (passing.Count > 0)
            {
                // Where the mechanism works nowhere, the best is the cheapest that passes all else.
                compared++;
                Assert.Equal((working.Count > 0 ? working : passing).Min(c => c.Cost), search.Best!.Candidate.Cost, 1e-12);
            }
        });
        Assert.True(compared > LongRun.AtLeast(10), $"only {compared} jobs had a passing bracket");
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Offers_do_not_beat_one_another(string name)
    {
        var offers = Designer.Solve(Examples.Read(name)).Offers;
        Assert.NotEmpty(offers);
        foreach (var offer in offers.Skip(1))
        {
            Assert.DoesNotContain(offers, offer.IsDominatedBy);
        }
    }

    [Fact]
    public void Any_offer_can_be_taken_by_its_number()
    {
        var job = Examples.Read("dunlin-rowan-64");
        var first = Designer.Solve(job);
        Assert.True(first.Offers.Length > 1);
        for (var number = 1; number <= first.Offers.Length; number++)
        {
            var taken = Designer.Solve(job, choice: number);
            Assert.Equal(number, taken.Choice);
            Assert.Equal(first.Offers[number - 1].Mass, taken.Bracket!.Mass, 1e-15);
            Assert.True(taken.NothingFails, $"{number}: {taken.Verdict}");
        }

        Assert.NotNull(first.Reasons);
    }

    // One sheet and one die keep brute force quick.
    private static Job Small(Job job) => job with
    {
        Shop = job.Shop with { Stock = [job.Shop.Stock[1]], Dies = [job.Shop.Dies[0], job.Shop.Dies[1]] },
    };
}
