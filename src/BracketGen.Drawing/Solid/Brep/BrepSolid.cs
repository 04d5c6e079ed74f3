using System.Collections.Immutable;
using BracketGen.Geometry;

namespace BracketGen.Drawing.Solid.Brep;

/// <summary>A solid by its boundary: corners, edges and faces, exact and closed.</summary>
/// <remarks>
/// Throttle frame, mm. Corners and edges are shared between the faces that meet there, and every edge is travelled once each way:
/// the boundary is one closed surface with the metal behind it. Equality is that of the object.
/// </remarks>
public sealed class BrepSolid
{
    /// <summary>The solid within <paramref name="faces"/>.</summary>
    /// <exception cref="ArgumentException">A loop is not a closed chain, or an edge is not travelled once each way.</exception>
    public BrepSolid(ImmutableArray<Vector3> corners, ImmutableArray<BrepEdge> edges, ImmutableArray<BrepFace> faces)
    {
        Corners = corners;
        Edges = edges;
        Faces = faces;
        var (forward, backward) = (new int[edges.Length], new int[edges.Length]);
        foreach (var loop in faces.SelectMany(f => f.Loops))
        {
            for (var i = 0; i < loop.Length; i++)
            {
                (loop[i].IsForward ? forward : backward)[loop[i].Edge]++;
                if (EndOf(loop[i]) != StartOf(loop[(i + 1) % loop.Length]))
                {
                    throw new ArgumentException($"Edges {loop[i].Edge} and {loop[(i + 1) % loop.Length].Edge} follow each other in a loop but do not meet.", nameof(faces));
                }
            }
        }

        for (var i = 0; i < edges.Length; i++)
        {
            if ((forward[i], backward[i]) != (1, 1))
            {
                throw new ArgumentException($"Edge {i} is travelled {forward[i]} times forward and {backward[i]} times back, where once each is a closed solid.", nameof(faces));
            }
        }
    }

    /// <summary>The corners (mm).</summary>
    public ImmutableArray<Vector3> Corners { get; }

    /// <summary>The edges.</summary>
    public ImmutableArray<BrepEdge> Edges { get; }

    /// <summary>The faces.</summary>
    public ImmutableArray<BrepFace> Faces { get; }

    /// <summary>Number of the corner where a use of an edge begins.</summary>
    public int StartOf(BrepEdgeUse use) => use.IsForward ? Edges[use.Edge].Start : Edges[use.Edge].End;

    /// <summary>Number of the corner where a use of an edge ends.</summary>
    public int EndOf(BrepEdgeUse use) => StartOf(use.Reversed);
}
