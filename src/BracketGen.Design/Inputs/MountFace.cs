using System.Collections.Immutable;
using System.Globalization;
using BracketGen.Geometry;
using BracketGen.SheetMetal.Standards;

namespace BracketGen.Design.Inputs;

/// <summary>A threaded hole that the bracket is bolted to.</summary>
/// <param name="At">Centre on the face (mm).</param>
/// <param name="Thread">Thread.</param>
/// <param name="BossDiameter">Diameter (mm) of the boss around it; the bracket covers it.</param>
public sealed record MountHole(ThrottlePoint At, MetricThread Thread, double BossDiameter)
{
    /// <summary>How far each coordinate of the centre may be off.</summary>
    public PointPlusMinus PlusMinus { get; init; }
}

/// <summary>The flat face that the bracket lies on, with its holes.</summary>
/// <remarks>The holes lie on the face within what their ± explains (<see cref="MountFit"/>).</remarks>
/// <param name="Plane">The face; its normal points out of the casting.</param>
/// <param name="Holes">At least one threaded hole.</param>
public sealed record MountFace(Plane Plane, ImmutableArray<MountHole> Holes) : IMirrored<MountFace>
{
    /// <summary>How far the hole farthest off the face was measured from it (mm): the residual of the fit.</summary>
    public double Residual => Holes.Max(h => Math.Abs(Plane.HeightOf(h.At.Vector)));

    /// <summary>Name of a hole by its index: H1, H2. Letters are for datums.</summary>
    public static string HoleName(int index) => string.Create(CultureInfo.InvariantCulture, $"H{index + 1}");

    /// <inheritdoc/>
    public MountFace Mirrored() => new(Plane.Mirrored(), [.. Holes.Select(h => h with { At = h.At.Mirrored() })]);

    /// <inheritdoc/>
    public bool Equals(MountFace? other) => other is not null && Plane == other.Plane && Holes.SequenceEqual(other.Holes);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Plane, Holes.Length);
}
