using BracketGen.Fuzz.Tests;
using BracketGen.Strength.Tests;
using System.Diagnostics;
using System.Globalization;

namespace BracketGen.Bench;

/// <summary>The long run of hostile inputs: too long for the tests, and the only one that holds the processor time of each.</summary>
internal static class FuzzBenchmark
{
    private static readonly TimeSpan MostProcessor = TimeSpan.FromSeconds(1), MostWait = TimeSpan.FromMinutes(2);

    /// <summary>Runs mutations <paramref name="from"/> on of a stream; ends with 1 where one did harm.</summary>
    public static int Run(TextWriter output, int count, int stream, int wholeEvery, int from = 0)
    {
        new FuzzRun().Over(Corpus.Seeds, 1, MostWait); // compiles what the first mutations would else be charged with
        var watch = Stopwatch.StartNew();
        var run = new FuzzRun().Over(Enumerable.Range(from, count).Select(n => Mutator.Make(stream, n)), wholeEvery, MostWait, MostProcessor);
        output.WriteLine("| input | mutations | refused with words | read and taken | put through the whole program | longest | longest diagnosis |");
        output.WriteLine("|---|---|---|---|---|---|---|");
        foreach (var (kind, tally) in run.Tallies)
        {
            output.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"| {kind} | {tally.Cases} | {tally.Refused} | {tally.Taken} | {tally.Through} | {tally.Longest:0} ms ({tally.LongestName}) | {tally.LongestDiagnosis:0} ms |"));
        }

        output.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{run.Tallies.Values.Sum(t => t.Cases)} mutations of stream {stream} in {watch.Elapsed.TotalMinutes:0.0} minutes; {run.Failures.Count} did harm."));
        foreach (var failure in run.Failures)
        {
            output.WriteLine(failure);
        }

        return run.Failures.Count == 0 ? 0 : 1;
    }
}
