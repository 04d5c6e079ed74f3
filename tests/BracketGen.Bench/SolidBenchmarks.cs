using BenchmarkDotNet.Attributes;
using BracketGen.Design.Part;
using BracketGen.Design.Study;
using BracketGen.Drawing.Solid;
using BracketGen.Drawing.Solid.Brep;
using BracketGen.Drawing.Solid.Glb;
using BracketGen.Drawing.Solid.Mesh;
using BracketGen.Drawing.Solid.Step;
using BracketGen.Profiles;
using BracketGen.TestSupport;

namespace BracketGen.Bench;

/// <summary>The files of the solid model, each from the folded sheet to the bytes.</summary>
[ShortRunJob]
[MemoryDiagnoser]
public class SolidBenchmarks
{
    private Bracket _bracket = null!;
    private SolidInfo _info = null!;

    /// <summary>The job.</summary>
    [Params("plover-alder-58", "dunlin-rowan-64")]
    public string Name { get; set; } = "plover-alder-58";

    [GlobalSetup]
    public void Prepare()
    {
        var job = ProfileReader.ReadJob(RepositoryRoot.PathOf("profiles", "jobs", Name + ".toml"), new DiskFileSource()).Value!;
        var solution = Designer.Solve(job);
        _bracket = solution.Bracket!;
        _info = SolidInfo.Of(solution);
    }

    [Benchmark]
    public byte[] Step() => StepWriter.Write(FoldedBrep.Of(_bracket.Folded), _info);

    [Benchmark]
    public byte[] Glb() => GlbWriter.Write(FoldedMesh.Of(_bracket.Folded), _info);

    [Benchmark]
    public byte[] Stl() => StlWriter.Write(FoldedMesh.Of(_bracket.Folded), _info);
}
