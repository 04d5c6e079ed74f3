using BracketGen.Drawing.Solid.Mesh;
using BracketGen.Geometry;

namespace BracketGen.Drawing.Solid.Glb;

/// <summary>Three numbers of single precision.</summary>
internal readonly record struct Single3(float X, float Y, float Z)
{
    /// <summary>The vector, rounded.</summary>
    public static Single3 Of(Vector3 v) => new((float)v.X, (float)v.Y, (float)v.Z);
}

/// <summary>Points with one normal each, as renderers want them: where faces meet at an edge, a vertex of the mesh becomes several.</summary>
/// <param name="Positions">Positions (m).</param>
/// <param name="Normals">Normals, one a position.</param>
/// <param name="Indices">Numbers of the triangles' corners, three a triangle.</param>
internal sealed record GlbPoints(IReadOnlyList<Single3> Positions, IReadOnlyList<Single3> Normals, IReadOnlyList<int> Indices)
{
    /// <summary>The points of <paramref name="mesh"/>.</summary>
    public static GlbPoints Of(FoldedMesh mesh)
    {
        List<Single3> positions = [], normals = [];
        var indices = new List<int>(3 * mesh.Triangles.Length);
        var known = new Dictionary<(int, Single3), int>();
        void Add(int vertex, Vector3 normal)
        {
            var unit = Single3.Of(normal);
            if (!known.TryGetValue((vertex, unit), out var index))
            {
                known.Add((vertex, unit), index = positions.Count);
                positions.Add(Single3.Of(mesh.Vertices[vertex] / 1000));
                normals.Add(unit);
            }

            indices.Add(index);
        }

        foreach (var (triangle, corner) in mesh.Triangles.Zip(mesh.Normals))
        {
            Add(triangle.A, corner.A);
            Add(triangle.B, corner.B);
            Add(triangle.C, corner.C);
        }

        return new(positions, normals, indices);
    }
}
