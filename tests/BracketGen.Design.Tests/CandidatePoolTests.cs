using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Search;
using BracketGen.Profiles.Family;
using BracketGen.Profiles.Forms;
using BracketGen.TestSupport;
using BracketGen.Words.Report;

namespace BracketGen.Design.Tests;

/// <summary>Drawing only what may be needed against drawing everything.</summary>
public class CandidatePoolTests
{
    [Fact]
    public void What_comes_by_cost_is_what_drawing_everything_gives()
    {
        int compared = 0, drawn = 0, all = 0;
        RandomJobs.Job.Check(LongRun.Of(25), job =>
        {
            job = job.OpeningCounterClockwise();
            var everything = new CandidatePool(job).All();
            var promising = everything.Where(CandidateSearch.Promising).ToList();
            var byCost = new CandidatePool(job).ByCost().Where(CandidateSearch.Promising).Take(20).ToList();
            Assert.Equal(promising.Take(20).Select(Key), byCost.Select(Key));
            if (promising.Count > 0)
            {
                var pool = new CandidatePool(job);
                _ = pool.ByCost().First(CandidateSearch.Promising);
                Assert.True(pool.Count >= everything.Count);
                compared++;
                (drawn, all) = (drawn + pool.Drawn, all + everything.Count);
            }
        });
        Assert.True(compared > LongRun.AtLeast(10), $"only {compared} jobs had a promising bracket");
        Assert.True(drawn < all / 2, $"{drawn} of {all} drawn: nothing was gained");
    }

    private static (double Cost, double Mass, double Give) Key(Candidate candidate) => (candidate.Cost, candidate.Bracket.Mass, candidate.Give);
}
