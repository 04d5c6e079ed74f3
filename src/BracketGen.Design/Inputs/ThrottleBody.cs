using System.Collections.Immutable;
using BracketGen.Geometry;
using BracketGen.Mechanism.Forces;
using BracketGen.Mechanism.Grooves;
using BracketGen.Mechanism.Throttles;
using BracketGen.SheetMetal.Fasteners;

namespace BracketGen.Design.Inputs;

/// <summary>The throttle body that the engine brings, with the face the bracket is bolted to.</summary>
/// <remarks>Throttle frame: as measured where a job is read, and opening counter-clockwise wherever it is solved.</remarks>
public sealed record ThrottleBody : IMirrored<ThrottleBody>
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

    /// <summary>Grooves of the quadrant besides the one for the cable from the pedal.</summary>
    public ImmutableArray<OtherGroove> OtherGrooves { get; init; } = [];

    /// <summary>Arc of the first groove over which the end fitting can stay behind while another cable opens the valve; null where it was not measured.</summary>
    public Angle? FreeArc { get; init; }

    /// <summary>The return springs.</summary>
    public required ReturnSprings Springs { get; init; }

    /// <summary>Drag at the throttle shaft where nobody measured it (N·mm): what is usual, and what it may be (common practice, no source).</summary>
    public const double UsualShaftDrag = 10, ShaftDragAtWorst = 40;

    /// <summary>Drag torque at the throttle shaft (N·mm), cable off: half the difference between the torques read as the valve opens and as it closes.</summary>
    /// <remarks>Default 0.01 N·m, assumed.</remarks>
    public Measured ShaftDrag { get; init; } = new(UsualShaftDrag, 0, Evidence.Assumed);

    /// <summary>Moment of inertia of what turns with the shaft, where it was measured (t·mm²); otherwise it is estimated.</summary>
    public double? MeasuredInertia { get; init; }

    /// <summary>Moment of inertia of what turns with the shaft (t·mm²).</summary>
    public double Inertia => MeasuredInertia ?? ShaftInertia.Estimate(Valve, Quadrant);

    /// <summary>Where the bracket is bolted on.</summary>
    public required MountFace Mount { get; init; }

    /// <summary>Where bracket, cable and quadrant may not be.</summary>
    public required ImmutableArray<KeepOut> KeepOuts { get; init; }

    /// <summary>Where the bore lies; null where it was not measured.</summary>
    public BoreAxis? BoreAxis { get; init; }

    /// <summary>What stands for the casting.</summary>
    public BodyShape Shape { get; init; } = BodyShape.BoreAndBosses;

    /// <summary>The spaces that the return springs take up, whatever the opening; empty where they were not measured.</summary>
    public ImmutableArray<KeepOut> SpringRooms { get; init; } = [];

    /// <summary>Whether something stands for the whole casting.</summary>
    public bool IsDescribed => Shape == BodyShape.KeepOuts || BoreAxis is not null;

    /// <summary>The casting round the bore; null where it was not measured, or where the keep-outs describe it.</summary>
    public KeepOutCylinder? Casting => Shape == BodyShape.BoreAndBosses ? BoreAxis?.Casting("") : null;

    /// <summary>The bosses under the mount holes with the spacers on them, named by their letters; empty where the keep-outs describe them.</summary>
    /// <remarks>A boss is taken to reach as deep as the bore's axis lies, and at least as deep as it is wide: how deep it is, nobody is asked.</remarks>
    public ImmutableArray<KeepOutCylinder> Bosses
    {
        get
        {
            if (Shape == BodyShape.KeepOuts)
            {
                return [];
            }

            return
            [
                .. Mount.Holes.Select((hole, i) =>
                {
                    var face = Mount.PlaneOf(hole);
                    if (Mount.Ring is { } ring)
                    {
                        // A pad of the ring, with what stands under it; what carries the ring is the casting.
                        var under = hole.Fixing is ThroughHole ? 2 * hole.Thread.WasherThickness + hole.Thread.NutHeight + 2 * hole.Thread.Pitch : 0;
                        return new KeepOutCylinder(MountFace.HoleName(i), hole.At - (ring.Thickness + under) * face.Normal, hole.At, hole.BossDiameter / 2);
                    }

                    var axis = BoreAxis is { } bore ? -face.HeightOf(new(0, 0, bore.Z)) : 0;
                    return new KeepOutCylinder(
                        MountFace.HoleName(i), hole.At - Math.Max(axis, hole.BossDiameter) * face.Normal, hole.At + hole.SpacerLength * face.Normal, hole.BossDiameter / 2);
                }),
            ];
        }
    }

    /// <summary>Angle between the valve's plate and the bore's cross-section at the closed stop.</summary>
    /// <remarks>Default 7° (common practice, no source).</remarks>
    public Angle ValveClosedAngle { get; init; } = Angle.FromDegrees(7);

    /// <summary>The position sensor, read at both stops with the cable off; null where there is none.</summary>
    public PositionSensor? Sensor { get; init; }

    /// <summary>What it has for the other parts that make it complete, as far as that was measured.</summary>
    /// <remarks>As measured, also in the mirror image.</remarks>
    public BodyOpenings Openings { get; init; } = new();

    /// <summary>The engine it is on; null where it is not told.</summary>
    public Engine? Engine { get; init; }

    /// <summary>How the mount shakes.</summary>
    public Shaking Shaking { get; init; } = Shaking.Usual;

    /// <summary>The valve.</summary>
    public ButterflyValve Valve => new(Bore, ShaftDiameter, ValveClosedAngle);

    /// <inheritdoc/>
    /// <remarks>It opens the other way.</remarks>
    public ThrottleBody Mirrored() => this with
    {
        Opens = Opens.Opposite(),
        Quadrant = Quadrant.Mirrored(),
        OtherGrooves = [.. OtherGrooves.Select(g => g.Mirrored())],
        Mount = Mount.Mirrored(),
        KeepOuts = [.. KeepOuts.Select(k => k.Mirrored())],
        BoreAxis = BoreAxis?.Mirrored(),
        SpringRooms = [.. SpringRooms.Select(k => k.Mirrored())],
    };

    /// <summary>
    /// Something of this body as measured in the frame in which it is solved, opening counter-clockwise; and the other way round:
    /// something solved in the frame as measured. Its mirror image where the body opens clockwise.
    /// </summary>
    /// <param name="thing">What belongs to this body.</param>
    public T Turned<T>(T thing)
        where T : IMirrored<T> => Opens.Turned(thing);

    /// <summary>The body as the solvers take it: itself, or its mirror image where it opens clockwise.</summary>
    public ThrottleBody OpeningCounterClockwise() => Turned(this);
}
