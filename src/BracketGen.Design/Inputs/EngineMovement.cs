using BracketGen.Geometry;

namespace BracketGen.Design.Inputs;

/// <summary>How far the throttle body moves against the bulkhead as the engine rocks in its mounts.</summary>
/// <remarks>
/// Throttle frame of the body at rest. Each amount is ±. The turn is about an axis of the crankshaft's direction: through <see cref="Crankshaft"/>
/// if that is given; otherwise through the frame's origin, and the three lengths then hold what the turn moves the body.
/// </remarks>
public sealed record EngineMovement : IMirrored<EngineMovement>
{
    /// <summary>Where nobody measured it: ±10 mm along each axis and ±3° about an axis that is not known (common practice, no source).</summary>
    public static readonly EngineMovement Usual = new() { X = 10, Y = 10, Z = 10, Roll = Angle.FromDegrees(3), Evidence = Evidence.Assumed };

    /// <summary>Movement along x (mm).</summary>
    public required double X { get; init; }

    /// <summary>Movement along y (mm).</summary>
    public required double Y { get; init; }

    /// <summary>Movement along z (mm).</summary>
    public required double Z { get; init; }

    /// <summary>Turn about the crankshaft's direction.</summary>
    public required Angle Roll { get; init; }

    /// <summary>Direction of the crankshaft, length one; null where it is not known: then x, y and z are each tried.</summary>
    public Vector3? Direction { get; init; }

    /// <summary>A point on the crankshaft's axis; null where it is not known.</summary>
    public ThrottlePoint? Crankshaft { get; init; }

    /// <summary>How it is known.</summary>
    public Evidence Evidence { get; init; } = Evidence.Given;

    /// <summary>Whether nobody measured it.</summary>
    public bool IsAssumed => Evidence == Evidence.Assumed;

    /// <summary>Where a bulkhead and the clips of the vehicle come to lie, seen from the body, at every corner of the movement.</summary>
    /// <param name="bulkhead">The bulkhead as it lies at rest.</param>
    public IEnumerable<Bulkhead> Corners(Bulkhead bulkhead)
    {
        var about = Crankshaft ?? default;
        Vector3[] axes = Direction is { } direction ? [direction] : [new(1, 0, 0), new(0, 1, 0), new(0, 0, 1)];
        foreach (var axis in Roll.Radians == 0 ? axes[..1] : axes)
        {
            foreach (var roll in Ends(Roll.Radians))
            {
                // The body turns and shifts; seen from it, the bulkhead and the clips, which are on the vehicle, shift back and turn back.
                Vector3 Back(Vector3 v) => v.Rotate(axis, new(-roll));
                foreach (var x in Ends(X))
                {
                    foreach (var y in Ends(Y))
                    {
                        foreach (var z in Ends(Z))
                        {
                            ThrottlePoint Seen(ThrottlePoint p) => about + Back(p - new Vector3(x, y, z) - about);
                            yield return new(Seen(bulkhead.Point), Back(bulkhead.Direction))
                            {
                                Clips = [.. bulkhead.Clips.Select(c => c with { Point = Seen(c.Point), Direction = c.Direction is { } d ? Back(d) : null })],
                            };
                        }
                    }
                }
            }
        }
    }

    /// <inheritdoc/>
    public EngineMovement Mirrored() => this with { Direction = Direction?.MirroredInY, Crankshaft = Crankshaft?.Mirrored() };

    private static double[] Ends(double amount) => amount == 0 ? [0] : [-amount, amount];
}
