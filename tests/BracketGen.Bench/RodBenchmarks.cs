using BenchmarkDotNet.Attributes;
using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;
using BracketGen.Mechanism.Rods;

namespace BracketGen.Bench;

/// <summary>The outer as an elastic rod, alone and over a clip, beside the shortest route: once for each answer.</summary>
[ShortRunJob, MemoryDiagnoser]
public class RodBenchmarks
{
    private static readonly RodEnd From = new(Vector3.Zero, new(1, 0, 0));
    private static readonly RodEnd To = new(new(250, 120, -80), new(0.2, 0.9, 0.4));

    [Benchmark]
    public ElasticLines Lay() => ElasticRod.Lay(From, [], To, 420);

    [Benchmark]
    public ElasticLines Taut() => ElasticRod.Lay(From, [], To, 295);

    [Benchmark]
    public ElasticLines OverClip() => ElasticRod.Lay(From, [new(new(183, -40, -50))], To, 420);

    [Benchmark]
    public OuterRoute? Shortest() => OuterRoute.Shortest(From.Point, From.Direction, To.Point, To.Direction, 60);
}
