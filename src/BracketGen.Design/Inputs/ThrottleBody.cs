using System.Collections.Immutable;
using BracketGen.Geometry;
using BracketGen.Mechanism.Grooves;
using BracketGen.Mechanism.Throttles;

namespace BracketGen.Design.Inputs;

/// <summary>The throttle body that the engine brings, with the face the bracket is bolted to.</summary>
/// <remarks>Throttle frame, as measured, whichever way it opens.</remarks>
public sealed record ThrottleBody
{
    /// <summary>Its name.</summary>
    public required string Name { get; init; }

    /// <summary>Which way it opens.</summary>
    public required OpeningSense Opens { get; init; }

    /// <summary>Diameter of the bore (mm).</summary>
    public required double Bore { get; init; }

    /// <summary>Diameter of the throttle shaft where it crosses the bore (mm).</summary>
    public required double ShaftDiameter { get; init; }

    /// <summary>The quadrant.</summary>
    public required Quadrant Quadrant { get; init; }

    /// <summary>The return springs.</summary>
    public required ReturnSprings Springs { get; init; }

    /// <summary>Where the bracket is bolted on.</summary>
    public required MountFace Mount { get; init; }

    /// <summary>Where the bracket may not be.</summary>
    public required ImmutableArray<KeepOut> KeepOuts { get; init; }

    /// <summary>Angle between the valve's plate and the bore's cross-section at the closed stop.</summary>
    /// <remarks>Default 7° (common practice, no source).</remarks>
    public Angle ValveClosedAngle { get; init; } = Angle.FromDegrees(7);

    /// <summary>The position sensor, read at both stops with the cable off; null where there is none.</summary>
    public PositionSensor? Sensor { get; init; }

    /// <summary>The engine it is on; null where it is not told.</summary>
    public Engine? Engine { get; init; }

    /// <summary>The valve.</summary>
    public ButterflyValve Valve => new(Bore, ShaftDiameter, ValveClosedAngle);

    /// <summary>
    /// The body as the solvers take it, opening counter-clockwise: itself, or mirrored in the plane y = 0. What is found for it
    /// is mirrored back before anyone sees it.
    /// </summary>
    public ThrottleBody OpeningCounterClockwise() => Opens == OpeningSense.CounterClockwise
        ? this
        : this with
        {
            Opens = OpeningSense.CounterClockwise,
            Quadrant = Quadrant.Mirrored(),
            Mount = Mount.Mirrored(),
            KeepOuts = [.. KeepOuts.Select(k => k.Mirrored())],
        };
}
