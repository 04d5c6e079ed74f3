using System.Collections.Immutable;
using BracketGen.Geometry;

namespace BracketGen.Strength;

/// <summary>One natural vibration of the held part, without damping.</summary>
/// <param name="Frequency">Natural frequency (Hz).</param>
/// <param name="Shape">Displacement of each node; the largest has length one.</param>
public sealed record Mode(double Frequency, ImmutableArray<Vector3> Shape) : IMirrored<Mode>
{
    /// <inheritdoc/>
    public Mode Mirrored() => this with { Shape = [.. Shape.Select(s => s.MirroredInY)] };
}
