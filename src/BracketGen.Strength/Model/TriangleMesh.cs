using System.Collections.Immutable;
using BracketGen.Geometry;

namespace BracketGen.Strength.Model;

/// <summary>A flat pattern cut into triangles.</summary>
/// <remarks>Nodes in mm in the flat pattern; triangles counter-clockwise.</remarks>
/// <param name="Nodes">The nodes.</param>
/// <param name="Triangles">The triangles, by node number.</param>
public sealed record TriangleMesh(ImmutableArray<FlatPoint> Nodes, ImmutableArray<Triangle> Triangles)
{
    /// <summary>Mirrored in the y axis (x becomes -x); node numbers stay.</summary>
    public TriangleMesh MirroredInX => new([.. Nodes.Select(n => n.MirroredInX)], [.. Triangles.Select(t => t.Mirrored())]);

    /// <summary>Area of one triangle (mm²).</summary>
    public double AreaOf(Triangle t) => (Nodes[t.B] - Nodes[t.A]).Cross(Nodes[t.C] - Nodes[t.A]) / 2;

    /// <summary>Area of all triangles (mm²).</summary>
    public double Area => Triangles.Sum(AreaOf);

    /// <summary>The smallest angle of one triangle.</summary>
    public Angle SmallestAngleOf(Triangle t)
    {
        Vector2 ab = Nodes[t.B] - Nodes[t.A], bc = Nodes[t.C] - Nodes[t.B], ca = Nodes[t.A] - Nodes[t.C];
        static double Between(Vector2 u, Vector2 v) => Math.Atan2(Math.Abs(u.Cross(v)), u.Dot(v));
        return new(Math.Min(Between(ab, -ca), Math.Min(Between(bc, -ab), Between(ca, -bc))));
    }

    /// <summary>Whether each node lies on the outline or the edge of a hole: on a side that only one triangle has.</summary>
    public ImmutableArray<bool> OnEdge()
    {
        var once = new HashSet<(int From, int To)>();
        foreach (var t in Triangles)
        {
            foreach (var (from, to) in ((int, int)[])[(t.A, t.B), (t.B, t.C), (t.C, t.A)])
            {
                // The neighbour runs along the same side the other way.
                if (!once.Remove((to, from)))
                {
                    once.Add((from, to));
                }
            }
        }

        var edge = new bool[Nodes.Length];
        foreach (var (from, to) in once)
        {
            (edge[from], edge[to]) = (true, true);
        }

        return [.. edge];
    }

    /// <summary>Nodes in the ring from <paramref name="inner"/> to <paramref name="outer"/> (mm) about <paramref name="centre"/>, rims included.</summary>
    /// <remarks>The rims are widened by a thousandth of the outer radius, for nodes put on them by the mesher.</remarks>
    public ImmutableArray<int> NodesInRing(FlatPoint centre, double inner, double outer)
    {
        var slack = StrengthTolerance.OnRim * outer;
        return [.. Enumerable.Range(0, Nodes.Length)
            .Where(i => Nodes[i].DistanceTo(centre) is var d && d >= inner - slack && d <= outer + slack)];
    }
}

/// <summary>Three nodes of a mesh by number, counter-clockwise seen from the sheet's top side.</summary>
/// <param name="A">First node.</param>
/// <param name="B">Second node.</param>
/// <param name="C">Third node.</param>
public readonly record struct Triangle(int A, int B, int C)
{
    /// <summary>The same triangle on a mirrored mesh, counter-clockwise there.</summary>
    public Triangle Mirrored() => new(A, C, B);

    /// <summary>The node at corner 0, 1 or 2.</summary>
    public int this[int corner] => corner switch
    {
        0 => A,
        1 => B,
        2 => C,
        _ => throw new ArgumentOutOfRangeException(nameof(corner), corner, "A triangle has corners 0, 1 and 2."),
    };
}
