using BracketGen.Fuzz.Tests;
using BracketGen.Strength.Tests;
using BenchmarkDotNet.Attributes;
using BracketGen.Mechanism.Uncertainty;
using BracketGen.Strength.Analysis;
using BracketGen.Strength.Model;
using BracketGen.Strength.Parts;

namespace BracketGen.Bench;

/// <summary>The L-bracket at about 3,000 nodes: mesh; factorise and solve; five modes.</summary>
[ShortRunJob]
public class StrengthBenchmarks
{
    private const double Size = 1.42;

    private TriangleMesh _flat = null!;
    private ShellModel _model = null!;

    [GlobalSetup]
    public void Prepare()
    {
        var prepared = LBracket.Part.Prepare(Size, 1, 8);
        (_flat, _model) = (prepared.Flat, prepared.Model);
        Console.WriteLine($"// {_flat.Nodes.Length} nodes, {_flat.Triangles.Length} triangles");
    }

    [Benchmark]
    public TriangleMesh Mesh() => LBracket.Part.Mesh(Size, 1, 8);

    [Benchmark]
    public StaticSolution Static() => ShellSystem.Factorise(_model).Solve(SeatLoad.Spread(_flat, LBracket.Seat, LBracket.Force));

    [Benchmark]
    public double StaticAndFiveModes()
    {
        var system = ShellSystem.Factorise(_model);
        system.Solve(SeatLoad.Spread(_flat, LBracket.Seat, LBracket.Force));
        return system.LowestModes(5)[4].Frequency;
    }
}
