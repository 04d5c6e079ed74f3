using System.Collections.Immutable;
using BracketGen.Geometry;

namespace BracketGen.Strength.Model;

/// <summary>The middle surface of a folded sheet, cut into flat triangles.</summary>
/// <remarks>
/// Nodes in mm. The top side is the one from which the triangles run counter-clockwise.
/// </remarks>
/// <param name="Nodes">The nodes.</param>
/// <param name="Triangles">The triangles, by node number.</param>
public sealed record ShellMesh(ImmutableArray<ThrottlePoint> Nodes, ImmutableArray<Triangle> Triangles) : IMirrored<ShellMesh>
{
    /// <inheritdoc/>
    /// <remarks>Node numbers stay, and so does the side of the sheet that is its top.</remarks>
    public ShellMesh Mirrored() => new([.. Nodes.Select(n => n.Mirrored())], [.. Triangles.Select(t => t.Mirrored())]);

    /// <summary>Folds a flat mesh: node numbers and triangles stay.</summary>
    /// <param name="flat">Mesh of the flat pattern.</param>
    /// <param name="middleSurface">Where each point of the flat pattern's middle surface comes to lie.</param>
    public static ShellMesh Fold(TriangleMesh flat, Func<FlatPoint, ThrottlePoint> middleSurface) =>
        new([.. flat.Nodes.Select(middleSurface)], flat.Triangles);
}
