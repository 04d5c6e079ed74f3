using BracketGen.Geometry;
using BracketGen.Strength.Model;

namespace BracketGen.Strength.Meshing;

/// <summary>Divides a flat pattern into triangles, fine where requested, with edges on every contour and followed line.</summary>
/// <remarks>
/// Constrained Delaunay triangulation, Ruppert's refinement, smoothing: see <see cref="Refinement"/>. The same request gives the same
/// mesh to the last bit.
/// </remarks>
public static class Mesher
{
    // The longest side of the part is this many grid steps: 1e-5 mm on half a metre.
    private const int Extent = 1 << 26;

    /// <summary>The mesh for <paramref name="request"/>.</summary>
    /// <exception cref="MeshException">The contours cross.</exception>
    public static TriangleMesh Mesh(MeshRequest request)
    {
        var sizes = new SizeField(request);
        var lines = LineWork.For(request, sizes);
        var bounds = request.Region.Outline.Bounds;
        var (centre, step) = (bounds.Centre, Math.Max(bounds.Width, bounds.Height) / Extent);
        GridPoint ToGrid(Vector2 p) => new((int)Math.Round((p.X - centre.X) / step), (int)Math.Round((p.Y - centre.Y) / step));
        Vector2 ToPlane(GridPoint p) => new(centre.X + p.X * step, centre.Y + p.Y * step);

        var triangulation = new Triangulation(Extent);
        var exact = new Dictionary<int, Vector2>();
        var numbers = new int[lines.Points.Count];
        for (var i = 0; i < numbers.Length; i++)
        {
            numbers[i] = triangulation.Insert(ToGrid(lines.Points[i]));
            exact.TryAdd(numbers[i], lines.Points[i]);
        }

        foreach (var (a, b, kind) in lines.Edges)
        {
            triangulation.InsertLine(numbers[a], numbers[b], kind);
        }

        triangulation.MarkInside();
        new Refinement(triangulation, sizes, ToPlane).Run();
        var arcs = request.Region.Contours.SelectMany(c => c.Segments).Concat(request.Lines.Select(l => l.Line))
            .OfType<ArcSegment>().ToList();
        return Collect(
            triangulation,
            p => exact.TryGetValue(p, out var known) ? (known, known) : Halfway(ToPlane(triangulation.Point(p)), arcs));
    }

    // A point that halved the chord of an arc belongs on the arc.
    private static (Vector2 Now, Vector2 Wanted) Halfway(Vector2 p, List<ArcSegment> arcs)
    {
        foreach (var arc in arcs)
        {
            // The chords of an arc keep within 3.4 % of its radius: at least twelve go round.
            var off = p.DistanceTo(arc.Centre);
            if (off < arc.Radius && off > 0.96 * arc.Radius && arc.DistanceTo(p) <= arc.Radius - off + Tolerance.Point)
            {
                return (p, arc.Centre + arc.Radius / off * (p - arc.Centre));
            }
        }

        return (p, p);
    }

    private static TriangleMesh Collect(Triangulation triangulation, Func<int, (Vector2 Now, Vector2 Wanted)> place)
    {
        var number = new int[triangulation.PointCount];
        Array.Fill(number, -1);
        var nodes = new List<Vector2>();
        var wanted = new List<Vector2>();
        var onLine = new List<bool>();
        var triangles = new List<Triangle>();
        int Number(int p)
        {
            if (number[p] < 0)
            {
                number[p] = nodes.Count;
                var (now, then) = place(p);
                nodes.Add(now);
                wanted.Add(then);
                onLine.Add(false);
            }

            return number[p];
        }

        for (var t = 0; t < triangulation.TriangleCount; t++)
        {
            if (!triangulation.Inside(t))
            {
                continue;
            }

            int a = Number(triangulation.Corner(t, 0)), b = Number(triangulation.Corner(t, 1)), c = Number(triangulation.Corner(t, 2));
            triangles.Add(new(a, b, c));
            for (var i = 0; i < 3; i++)
            {
                if (triangulation.Kind(t, i) != EdgeKind.Free)
                {
                    onLine[number[triangulation.Corner(t, i)]] = onLine[number[triangulation.Corner(t, (i + 1) % 3)]] = true;
                }
            }
        }

        if (triangles.Count == 0)
        {
            throw new MeshException("The flat pattern holds no metal.");
        }

        var places = nodes.ToArray();
        var pulled = Enumerable.Range(0, places.Length).Where(n => onLine[n] && wanted[n] != places[n]).Select(n => (n, wanted[n]));
        Smoothing.Run(places, triangles, [.. onLine], [.. pulled]);
        return new([.. places.Select(p => new FlatPoint(p))], [.. triangles]);
    }
}

/// <summary>The flat pattern cannot be meshed: its contours cross or touch.</summary>
public sealed class MeshException : Exception
{
    internal MeshException(string message)
        : base(message)
    {
    }
}
