using BracketGen.Design.Checks;
using BracketGen.Design.Search;
using BracketGen.TestSupport;

namespace BracketGen.Design.Tests;

/// <summary>The stress that is judged is one that a finer mesh does not change by more than is printed.</summary>
public sealed class SettledStrengthTests
{
    private static readonly int OfEachJob = LongRun.Of(4);

    // Half the edge length everywhere, and refined from there.
    private static readonly StrengthDetail Finer = new(2, 0.75, 8) { FilletAngle = Math.PI / 48, MostMeshes = 5 };

    [Theory]
    [MemberData(nameof(Examples.Names), MemberType = typeof(Examples))]
    public void A_mesh_twice_as_fine_everywhere_moves_the_judged_stress_by_no_more_than_its_error(string name)
    {
        var job = Examples.Read(name).OpeningCounterClockwise();
        var pool = CandidateSearch.All(job).Where(CandidateSearch.Promising).ToArray();
        Parallel.For(0, OfEachJob, i =>
        {
            var candidate = pool[(2 * i + 1) * pool.Length / (2 * OfEachJob)];
            StrengthReport Of(StrengthDetail detail) => StrengthStudy.Of(job, candidate.Travel, candidate.Placement, candidate.Bracket, detail);
            var (settled, finer) = (Of(StrengthDetail.Usual), Of(Finer));
            var error = settled.MeshError!.Value;
            Assert.InRange(error, 0, SettledStrength.Left * SettledStrength.Enough);
            Assert.InRange(settled.Opening.LargestStress / finer.Opening.LargestStress, 1 - error - finer.MeshError!.Value, 1 + error + finer.MeshError.Value);
        });
    }

    [Fact]
    public void One_mesh_says_nothing_of_its_error()
    {
        var job = Examples.Read("plover-alder-58").OpeningCounterClockwise();
        var candidate = CandidateSearch.All(job).First(CandidateSearch.Promising);
        Assert.Null(StrengthStudy.Of(job, candidate.Travel, candidate.Placement, candidate.Bracket, StrengthDetail.Usual with { MostMeshes = 1 }).MeshError);
    }
}
