using System.Collections.Immutable;
using BracketGen.Geometry;
using BracketGen.Strength.Analysis;
using BracketGen.Strength.Model;

namespace BracketGen.Strength.Parts;

/// <summary>A force that a ring-shaped seat puts on the sheet.</summary>
public static class SeatLoad
{
    /// <summary>Spreads <paramref name="force"/> evenly over the triangles of a ring, its resultant through the centre.</summary>
    /// <param name="flat">Mesh of the flat pattern, with edges along the ring's two circles for an exact area.</param>
    /// <param name="seat">Outer rim of the ring; the hole inside it has no triangles.</param>
    /// <param name="force">The whole force (N), in the axes of the folded part.</param>
    /// <exception cref="ArgumentException">No triangle lies in the ring.</exception>
    public static ImmutableArray<NodalLoad> Spread(TriangleMesh flat, Disc seat, Vector3 force) =>
        [.. Shares(flat, seat).Select(s => new NodalLoad(s.Node, s.Share * force))];

    /// <summary>Out of the sheet's top at the ring, the mean over it; length one.</summary>
    internal static Vector3 TopOf(TriangleMesh flat, ShellMesh folded, Disc seat) => flat.Triangles.Where(t => IsIn(flat, seat, t))
        .Aggregate(Vector3.Zero, (sum, t) => sum + (folded.Nodes[t.B] - folded.Nodes[t.A]).Cross(folded.Nodes[t.C] - folded.Nodes[t.A])).Unit;

    private static bool IsIn(TriangleMesh flat, Disc seat, Triangle t) =>
        ((flat.Nodes[t.A].Vector + flat.Nodes[t.B].Vector + flat.Nodes[t.C].Vector) / 3).DistanceTo(seat.Centre) <= seat.Radius;

    /// <summary>Each node's share of a force on the ring, by ascending node; together they are one.</summary>
    /// <remarks>Parameters as of <see cref="Spread"/>.</remarks>
    internal static ImmutableArray<(int Node, double Share)> Shares(TriangleMesh flat, Disc seat)
    {
        var nodes = flat.Nodes.AsSpan();
        var areas = new double[nodes.Length];
        foreach (var t in flat.Triangles.Where(t => IsIn(flat, seat, t)))
        {
            var third = flat.AreaOf(t) / 3;
            areas[t.A] += third;
            areas[t.B] += third;
            areas[t.C] += third;
        }

        List<(int Node, double Area)> shares = [];
        var (area, moment) = (0.0, Vector2.Zero);
        for (var n = 0; n < areas.Length; n++)
        {
            if (areas[n] > 0)
            {
                shares.Add((n, areas[n]));
                area += areas[n];
                moment += areas[n] * nodes[n].Vector;
            }
        }

        if (shares.Count == 0)
        {
            throw new ArgumentException("The mesh has no triangle under the seat: it is too coarse, or the seat lies off the sheet.", nameof(seat));
        }

        // The mesh is not quite even about the centre: a slight tilt of the pressure brings the resultant back there, so that no
        // moment comes from the mesh. Share of node i: a_i (1 + tilt · (x_i - mean)) / area.
        double xx = 0, xy = 0, yy = 0;
        var mean = moment / area;
        foreach (var (node, share) in shares)
        {
            var d = nodes[node].Vector - mean;
            xx += share * d.X * d.X / area;
            xy += share * d.X * d.Y / area;
            yy += share * d.Y * d.Y / area;
        }

        var off = seat.Centre - mean;
        var determinant = xx * yy - xy * xy;
        var tilt = new Vector2((yy * off.X - xy * off.Y) / determinant, (xx * off.Y - xy * off.X) / determinant);
        return [.. shares.Select(n => (n.Node, n.Area / area * (1 + tilt.Dot(flat.Nodes[n.Node].Vector - mean))))];
    }
}
