using System.Collections.Immutable;
using BracketGen.Geometry;

namespace BracketGen.Drawing.Solid.Mesh;

/// <summary>How the two surfaces beside an edge of the solid meet.</summary>
public enum MeshEdgeKind
{
    /// <summary>At a corner: the edge is seen from everywhere.</summary>
    Sharp,

    /// <summary>A flat face runs over into a bend.</summary>
    Tangent,

    /// <summary>Two facets of one round surface: an edge only where it is the surface's outline for an eye.</summary>
    Smooth,
}

/// <summary>A circle in space that an edge lies on.</summary>
/// <param name="Centre">Centre (mm).</param>
/// <param name="Axis">Direction square to its plane, length one.</param>
/// <param name="Radius">Radius (mm).</param>
public readonly record struct EdgeCircle(Vector3 Centre, Vector3 Axis, double Radius);

/// <summary>An edge of the solid, through vertices of its mesh.</summary>
/// <param name="Points">Numbers of the vertices along it; a closed edge names its first vertex again at the end.</param>
/// <param name="Kind">How the surfaces beside it meet.</param>
/// <param name="NormalA">Outward normal on one side, length one; zero where the edge is sharp.</param>
/// <param name="NormalB">Outward normal on the other side, length one; zero where the edge is sharp.</param>
/// <param name="Circle">The circle it lies on; null where it is straight.</param>
public sealed record MeshEdge(
    ImmutableArray<int> Points, MeshEdgeKind Kind, Vector3 NormalA = default, Vector3 NormalB = default, EdgeCircle? Circle = null)
{
    /// <inheritdoc/>
    public bool Equals(MeshEdge? other) => other is not null && Kind == other.Kind && Circle == other.Circle
        && NormalA == other.NormalA && NormalB == other.NormalB && Points.SequenceEqual(other.Points);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Points.Length, Points[0], Kind);
}

/// <summary>A triangle of a mesh, by the numbers of its vertices, counter-clockwise for an eye outside the solid.</summary>
/// <param name="A">First corner.</param>
/// <param name="B">Second corner.</param>
/// <param name="C">Third corner.</param>
public readonly record struct MeshTriangle(int A, int B, int C);

/// <summary>The exact surface's outward normals at a triangle's corners, each of length one.</summary>
/// <param name="A">At its first corner.</param>
/// <param name="B">At its second corner.</param>
/// <param name="C">At its third corner.</param>
public readonly record struct MeshNormals(Vector3 A, Vector3 B, Vector3 C);
