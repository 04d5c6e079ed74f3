using BracketGen.Geometry;
using BracketGen.Strength.Analysis;
using BracketGen.Strength.Model;

namespace BracketGen.Strength.Tests;

/// <summary>Rectangles cut into triangles by a regular grid, for the published cases.</summary>
internal static class Grid
{
    /// <summary>0 to <paramref name="length"/> by 0 to <paramref name="width"/>; diagonals turn about so that no side is favoured.</summary>
    public static TriangleMesh Rectangle(double length, double width, int along, int across)
    {
        var nodes = new List<Vector2>();
        for (var i = 0; i <= along; i++)
        {
            for (var j = 0; j <= across; j++)
            {
                nodes.Add(new(length * i / along, width * j / across));
            }
        }

        var triangles = new List<Triangle>();
        for (var i = 0; i < along; i++)
        {
            for (var j = 0; j < across; j++)
            {
                int a = i * (across + 1) + j, b = a + across + 1, c = b + 1, d = a + 1;
                if ((i + j) % 2 == 0)
                {
                    triangles.Add(new(a, b, c));
                    triangles.Add(new(a, c, d));
                }
                else
                {
                    triangles.Add(new(a, b, d));
                    triangles.Add(new(b, c, d));
                }
            }
        }

        return new([.. nodes.Select(n => new FlatPoint(n))], [.. triangles]);
    }

    public static IEnumerable<int> Where(this TriangleMesh mesh, Func<FlatPoint, bool> which) =>
        Enumerable.Range(0, mesh.Nodes.Length).Where(i => which(mesh.Nodes[i]));

    public static ShellMesh Flat(this TriangleMesh mesh) => ShellMesh.Fold(mesh, p => new(Vector3.From(p.Vector)));

    /// <summary>A total force shared over a straight edge by the trapezium rule.</summary>
    public static IEnumerable<NodalLoad> EdgeLoad(IReadOnlyList<int> nodes, Vector3 force)
    {
        var parts = nodes.Count - 1;
        return nodes.Select((n, i) => new NodalLoad(n, (i == 0 || i == parts ? 0.5 : 1) / parts * force));
    }
}
