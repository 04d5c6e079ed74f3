using System.Diagnostics;
using System.Globalization;
using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Search;
using BracketGen.Profiles;
using BracketGen.TestSupport;

namespace BracketGen.Bench;

/// <summary>The strength of every candidate of the shipped jobs that can be cut and has room, judged by stages and each in full.</summary>
internal static class StrengthPool
{
    /// <summary>One row a job: processor time of both ways, and what the stages rejected.</summary>
    /// <returns>1 where the two disagree on a bracket, else 0.</returns>
    public static int Run(TextWriter output)
    {
        output.WriteLine("Candidates whose flat pattern and room pass, all judged at the usual mesh; processor seconds, on as many threads as there are processors.");
        output.WriteLine();
        output.WriteLine("| job | candidates | strong | by bound | coarse | by stress | by frequency | in full | staged | each in full | ratio |");
        output.WriteLine("|---|---|---|---|---|---|---|---|---|---|---|");
        var disagree = 0;
        foreach (var file in Directory.GetFiles(RepositoryRoot.PathOf("profiles", "jobs"), "*.toml").Order(StringComparer.Ordinal))
        {
            disagree += Row(output, Path.GetFileNameWithoutExtension(file), ProfileReader.ReadJob(file, new DiskFileSource()).Value!.OpeningCounterClockwise());
        }

        output.WriteLine();
        output.WriteLine(disagree == 0 ? "Both say the same of every bracket." : $"They disagree on {disagree} brackets.");
        return disagree == 0 ? 0 : 1;
    }

    private static int Row(TextWriter output, string name, Job job)
    {
        var pool = CandidateSearch.All(job).AsParallel().AsOrdered().Where(c => CandidateSearch.Promising(c) && BracketChecks.FitsInSpace(c.Around(job))).ToArray();
        bool InFull(Candidate c) => StrengthStudy.Of(job, c.Travel, c.Placement, c.Bracket, StrengthDetail.Usual).Checks.All(k => !k.Fails);
        StrengthFinding Staged(StrengthJudge judge, Candidate c) => judge.Judge(c.StopOf(job), c.Bracket);

        // Until then the run time compiles.
        var warm = new StrengthJudge(job, StrengthDetail.Usual);
        foreach (var candidate in pool.Where((_, i) => i % (pool.Length / 8) == 0))
        {
            Staged(warm, candidate);
            InFull(candidate);
        }

        var judge = new StrengthJudge(job, StrengthDetail.Usual);
        var (findings, whole) = (new StrengthFinding[pool.Length], new bool[pool.Length]);
        var staged = Seconds(() => Parallel.For(0, pool.Length, i => findings[i] = Staged(judge, pool[i])));
        var full = Seconds(() => Parallel.For(0, pool.Length, i => whole[i] = InFull(pool[i])));
        int By(StrengthMeans means) => findings.Count(f => f.Means == means);
        output.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"| {name} | {pool.Length} | {findings.Count(f => f.IsStrong)} | {By(StrengthMeans.Bound)} | {By(StrengthMeans.Coarse)} | {By(StrengthMeans.Stress)} | {By(StrengthMeans.Frequency)} | {By(StrengthMeans.Full)} | {staged:0.0} | {full:0.0} | {staged / full:0.00} |"));
        return Enumerable.Range(0, pool.Length).Count(i => findings[i].IsStrong != whole[i]);
    }

    private static double Seconds(Action action)
    {
        var before = Process.GetCurrentProcess().TotalProcessorTime;
        action();
        return (Process.GetCurrentProcess().TotalProcessorTime - before).TotalSeconds;
    }
}
