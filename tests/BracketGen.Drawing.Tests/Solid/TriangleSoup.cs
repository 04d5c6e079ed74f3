using BracketGen.Drawing.Solid.Mesh;
using BracketGen.Geometry;

namespace BracketGen.Drawing.Tests.Solid;

/// <summary>Triangles, counter-clockwise seen from outside, and what the divergence theorem makes of them.</summary>
internal sealed record TriangleSoup(IReadOnlyList<(Vector3 A, Vector3 B, Vector3 C)> Triangles)
{
    public static TriangleSoup Of(FoldedMesh mesh) => new([.. mesh.Triangles.Select(t => (mesh.Vertices[t.A], mesh.Vertices[t.B], mesh.Vertices[t.C]))]);

    public double Volume => Triangles.Sum(t => t.A.Dot(t.B.Cross(t.C))) / 6;

    public double Area => Triangles.Sum(t => (t.B - t.A).Cross(t.C - t.A).Length) / 2;

    /// <summary>Centre of mass: each triangle makes a pyramid with the origin.</summary>
    public Vector3 Centre => Triangles
        .Select(t => t.A.Dot(t.B.Cross(t.C)) / 24 * (t.A + t.B + t.C))
        .Aggregate((a, b) => a + b) / Volume;

    /// <summary>Whether every edge has just one neighbour that runs the other way.</summary>
    public bool IsClosed
    {
        get
        {
            var edges = Triangles.SelectMany(t => ((Vector3, Vector3)[])[(t.A, t.B), (t.B, t.C), (t.C, t.A)]).ToList();
            var all = edges.ToHashSet();
            return all.Count == edges.Count && edges.All(e => all.Contains((e.Item2, e.Item1)));
        }
    }
}
