using BenchmarkDotNet.Attributes;
using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Study;
using BracketGen.Mechanism.Motion;
using BracketGen.Profiles;
using BracketGen.TestSupport;

namespace BracketGen.Bench;

/// <summary>The whole mechanism of an answer: outer's way, forces, progression, 8,192 samples. It is computed once for a job.</summary>
[ShortRunJob]
public class MechanismBenchmarks
{
    private Job _job = null!;
    private Solution _solution = null!;

    /// <summary>The job.</summary>
    [Params("plover-alder-58", "dunlin-hornbeam-70")]
    public string Name { get; set; } = "plover-alder-58";

    [GlobalSetup]
    public void Prepare()
    {
        _job = ProfileReader.ReadJob(RepositoryRoot.PathOf("profiles", "jobs", Name + ".toml"), new DiskFileSource()).Value!;
        _solution = Designer.Solve(_job);
    }

    [Benchmark]
    public MechanismReport Report() => MechanismReport.Of(_job, _solution.Travel, _solution.Placement, _solution.Bracket);
}
