using System.Diagnostics;
using System.Globalization;
using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Search;
using BracketGen.Geometry;
using BracketGen.Profiles;
using BracketGen.Strength.Analysis;
using BracketGen.Strength.Model;
using BracketGen.Strength.Parts;
using BracketGen.Strength.Solving;
using BracketGen.TestSupport;

namespace BracketGen.Bench;

/// <summary>What one study of a bracket's strength takes on one core, stage by stage.</summary>
internal static class StudyTimes
{
    private const int OfEachJob = 8, Runs = 15;

    private static readonly string[] Stages = ["mesh", "fold and number", "assembly", "plan and factorisation", "one load, stresses", "first frequency bounded", "three modes", "mechanism, 8,192 samples"];

    // Until then the run time compiles, in threads of its own.
    private static readonly TimeSpan WarmUp = TimeSpan.FromSeconds(5);

    /// <summary>Candidates of each shipped job that can be cut and have room, spread over its pool.</summary>
    public static void Write(TextWriter output)
    {
        if (OperatingSystem.IsLinux())
        {
            Process.GetCurrentProcess().ProcessorAffinity = 1;
        }

        var studies = Directory.GetFiles(RepositoryRoot.PathOf("profiles", "jobs"), "*.toml").Order(StringComparer.Ordinal)
            .Select(f => ProfileReader.ReadJob(f, new DiskFileSource()).Value!.OpeningCounterClockwise()).SelectMany(Of).ToArray();
        for (var began = Stopwatch.GetTimestamp(); Stopwatch.GetElapsedTime(began) < WarmUp;)
        {
            foreach (var study in studies)
            {
                study.Run();
            }
        }

        var times = studies.Select(s => s.Least()).ToArray();
        double Mean(Func<double[], double> of) => times.Average(of);
        string Line(string name, Func<double[], double> of) => string.Create(CultureInfo.InvariantCulture, $"| {name} | {Mean(of):0.00} | {times.Max(of):0.00} |");
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{studies.Length} brackets of the shipped jobs, {studies.Average(s => s.Nodes):0} nodes on average, at most {studies.Max(s => s.Nodes)}; one core, least of {Runs} runs each (ms)."));
        output.WriteLine();
        output.WriteLine("| stage | mean | largest |");
        output.WriteLine("|---|---|---|");
        for (var s = 0; s < Stages.Length; s++)
        {
            output.WriteLine(Line(Stages[s], t => t[s]));
        }

        output.WriteLine(Line("**loads and stresses**", t => t.Take(5).Sum()));
        output.WriteLine(Line("**with the first frequency bounded**", t => t.Take(6).Sum()));
        output.WriteLine(Line("**whole**", t => t.Sum()));
    }

    private static IEnumerable<Study> Of(Job job)
    {
        var pool = CandidateSearch.All(job).AsParallel().AsOrdered().Where(c => CandidateSearch.Promising(c) && BracketChecks.FitsInSpace(c.Around(job))).ToArray();
        return Enumerable.Range(0, OfEachJob).Select(i => new Study(job, pool[pool.Length * (2 * i + 1) / (2 * OfEachJob)]));
    }

    private sealed class Study(Job job, Candidate candidate)
    {
        private readonly FoldedPart _part = BracketModel.Of(candidate.Bracket, candidate.StopOf(job).EndIn(candidate.Bracket.Stock.Thickness));
        private readonly StopMechanism _stop = candidate.StopOf(job);

        public int Nodes { get; private set; }

        public double[] Least()
        {
            var least = Run();
            for (var run = 1; run < Runs; run++)
            {
                least = [.. least.Zip(Run(), Math.Min)];
            }

            return least;
        }

        // One after the other as the judge takes them; the steps between mesh and factor once more by themselves.
        public double[] Run()
        {
            var detail = StrengthDetail.Usual;
            var last = Stopwatch.GetTimestamp();
            double Lap()
            {
                var now = Stopwatch.GetTimestamp();
                var took = Stopwatch.GetElapsedTime(last, now).TotalMilliseconds;
                last = Stopwatch.GetTimestamp();
                return took;
            }

            var flat = detail.Mesh(_part);
            var mesh = Lap();
            var prepared = _part.Prepare(flat);
            var prepare = Lap();
            var tension = new StopTension(_stop);
            Lap();
            var loaded = prepared.Under(tension.Largest * tension.UnitForceAtLargest).Solution.LargestStress;
            var load = Lap();
            prepared.FirstFrequencyAtMost();
            prepared.FirstFrequencyCloselyAtMost();
            var first = Lap();
            prepared.LowestModes(StrengthReport.ModeCount);
            var modes = Lap();
            LoadedMechanism.Of(_stop, candidate.Bracket, MechanismReport.UsualSamples, 1e-3);
            var mechanism = Lap();
            var free = new FreeNodes(prepared.Model);
            Lap();
            var stiffness = Assembly.Stiffness(prepared.Model, free).Matrix;
            var assembly = Lap();
            SparseCholesky.Factorise(stiffness);
            var factorise = Lap();
            Nodes = loaded > 0 ? flat.Nodes.Length : 0;
            return [mesh, Math.Max(0, prepare - assembly - factorise), assembly, factorise, load, first, modes, mechanism];
        }
    }
}
