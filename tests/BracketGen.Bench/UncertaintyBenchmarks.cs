using BenchmarkDotNet.Attributes;
using BracketGen.Design.Part;
using BracketGen.Geometry;
using BracketGen.Mechanism.Grooves;
using BracketGen.Mechanism.Motion;
using BracketGen.Mechanism.Uncertainty;

namespace BracketGen.Bench;

/// <summary>
/// The travel over ten uncertain quantities, 100,000 samples on one core, worst case and probabilities included: to stay below a
/// second for every kind of groove.
/// </summary>
[ShortRunJob]
public class UncertaintyBenchmarks
{
    private UncertainTravel _travel = null!;

    /// <summary>Kind of groove.</summary>
    [Params("constant", "eccentric", "table")]
    public string Kind { get; set; } = "constant";

    [GlobalSetup]
    public void Prepare()
    {
        EccentricGroove eccentric = new(new(31.5, 0.2), 6, new(1));
        Groove groove = Kind switch
        {
            "constant" => new CircularGroove(new(31.5, 0.2)),
            "eccentric" => eccentric,
            _ => new TabulatedGroove(
                Enumerable.Range(0, 20).Select(i =>
                {
                    Angle polar = new(-0.2 + i * 0.18);
                    return new GroovePoint(polar, eccentric.PointWithNormal(eccentric.NormalAt(polar)).Length);
                }),
                plusMinus: 0.2),
        };
        Quadrant quadrant = new()
        {
            Groove = groove, Rotation = new(new(1.43), new(0.02)), Pocket = new(new(0.35), new(0.02)), GrooveExtent = new(2.97), GrooveWidth = 2.5,
            SlotWidth = 2, OuterRadius = 36, Thickness = 8, HubRadius = 10,
        };
        _travel = new()
        {
            Quadrant = quadrant,
            Seat = StopPlacement.At(quadrant, 180, 2, Angle.FromDegrees(130))!.Seat.XY,
            FreeInnerLength = new(180, 1.5),
            AdjusterRange = 12,
            FreePlay = new(2, 0.5),
            AvailablePull = new(48, 1),
            LostMotion = new(0.3, 0.1),
            SeatTolerances = [new("leg", new(1, 0), 0.3), new("bend", new(10, 50), 0.009), new("cut", new(0, 1), 0.2)],
        };
    }

    [Benchmark]
    public Probability HundredThousandSamples() => TravelUncertainty.Of(_travel, 100_000).ReachesWideOpen;
}
