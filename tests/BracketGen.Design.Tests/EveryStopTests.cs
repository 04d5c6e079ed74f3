using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Search;
using BracketGen.TestSupport;
using CsCheck;

namespace BracketGen.Design.Tests;

/// <summary>What fails at one place of the stop and is said to fail wherever the stop is: brute force over the places.</summary>
public class EveryStopTests
{
    // Cables and pedals measured well and badly, with enough pull and with too little.
    private static readonly Gen<Job> Jobs = Gen.Select(RandomJobs.Job, Gen.Int[0, 50], Gen.Int[44, 60], Gen.Int[0, 30], (job, length, pull, off) => job with
    {
        Vehicle = job.Vehicle with
        {
            Cable = job.Vehicle.Cable with { FreeInnerLength = new(job.Vehicle.Cable.FreeInnerLength.Value, length / 10.0) },
            Pedal = job.Vehicle.Pedal with { AvailablePull = new(pull, off / 10.0) },
        },
    });

    [Fact]
    public void What_is_said_to_fail_at_every_stop_does()
    {
        var (everywhere, somewhere) = (0, 0);
        Jobs.Check(LongRun.Of(200), drawn =>
        {
            var job = drawn.OpeningCounterClockwise();
            Place[] all = [.. CandidateSearch.Places(job, 1)];
            var alone = all.Where((_, i) => i % 7 == 0 || i == all.Length - 1).Select(p => MechanismReport.Of(p.Stop.Value, null).Checks).ToArray();
            var fails = alone.Count(checks => checks.Any(c => !CandidateSearch.IsGoodEnough(c)));
            if (alone.Any(checks => MechanismChecks.FailsAtEveryStop(job, checks, CandidateSearch.IsGoodEnough) is not null))
            {
                everywhere++;
                Assert.Equal(alone.Length, fails);
            }
            else if (fails > 0 && fails < alone.Length)
            {
                somewhere++;
            }
        });
        Assert.True(everywhere > LongRun.AtLeast(20), $"Only {everywhere} jobs fail wherever the stop is.");
        Assert.True(somewhere > LongRun.AtLeast(20), $"Only {somewhere} jobs fail at some places and not at others.");
    }
}
