using BenchmarkDotNet.Attributes;
using BracketGen.Design.Checks;
using BracketGen.Design.Search;
using BracketGen.Design.Study;
using BracketGen.Drawing.Report;
using BracketGen.Profiles;
using BracketGen.TestSupport;

namespace BracketGen.Bench;

/// <summary>The report's page, from the solution to its bytes.</summary>
[ShortRunJob]
[MemoryDiagnoser]
public class ReportBenchmarks
{
    private Solution _solution = null!;

    /// <summary>The job.</summary>
    [Params("plover-alder-58", "dunlin-rowan-64")]
    public string Name { get; set; } = "plover-alder-58";

    [GlobalSetup]
    public void Prepare() => _solution = Designer.Solve(
        ProfileReader.ReadJob(RepositoryRoot.PathOf("profiles", "jobs", Name + ".toml"), new DiskFileSource()).Value!, SearchEffort.Whole);

    [Benchmark]
    public byte[] Report() => JobReport.Write(_solution, []);
}
