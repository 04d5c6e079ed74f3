using BracketGen.Drawing.Report.Model;
using BracketGen.Drawing.Report.Scene;
using BracketGen.Geometry;
using BracketGen.Profiles.Family;
using BracketGen.Words.Report;

namespace BracketGen.Drawing.Tests.Report;

/// <summary>The bodies of the picture to turn are closed, look outwards, and hold what geometry says they hold.</summary>
public class SolidShapesTests
{
    // Area of a regular polygon of n corners on a circle of radius r: n/2 r² sin(2π/n).
    private static double Polygon(double radius, int sides) => sides / 2.0 * radius * radius * Math.Sin(2 * Math.PI / sides);

    [Fact]
    public void A_cylinder() => IsClosed(
        new SolidShapes().Cylinder(new(1, 2, 3), new(4, 6, 3), 2, 24), Polygon(2, 24) * 5);

    [Fact]
    public void A_box() => IsClosed(new SolidShapes().Box(new(-1, -2, -3), new(2, 2, 4)), 3 * 4 * 7);

    [Fact]
    public void A_tube_straight_and_bent()
    {
        IsClosed(new SolidShapes().Tube([new(0, 0, 0), new(0, 0, 4), new(0, 0, 10)], 3, 12), Polygon(3, 12) * 10);

        // Guldin: a section whose middle runs round the circle of radius R holds its area times the way of its middle.
        var bent = Enumerable.Range(0, 91).Select(i => new Vector3(40 * Math.Cos(i * Math.PI / 180), 40 * Math.Sin(i * Math.PI / 180), 0)).ToList();
        IsClosed(new SolidShapes().Tube(bent, 3, 12), Polygon(3, 12) * 40 * Math.PI / 2, 0.002);
    }

    // A ring holds the difference of its two prisms.
    [Fact]
    public void A_ring_is_closed_and_hollow() => IsClosed(
        new SolidShapes().Ring(new(1, 2, 3), new(4, 6, 3), 5, 3, 40), (Polygon(5, 40) - Polygon(3, 40)) * 5, 1e-9);

    [Fact]
    public void A_post_ends_in_what_lies_below_it()
    {
        // A plane that slopes: the prism below is as long as its middle.
        IsClosed(new SolidShapes().Post(new(1, 2, 10), new(0, 0, 1), 2, p => p.Z - 0.25 * p.X, 24), Polygon(2, 24) * (10 - 0.25));
    }

    [Fact]
    public void The_casting_is_as_wide_as_measured_its_bore_is_open_and_no_boss_stands_in_it() => ReportCases.Each((solution, _, _) =>
    {
        var body = solution.Job.Body;
        var scene = new ReportScene(solution, []);
        if (scene.Mesh is null)
        {
            return;
        }

        var parts = JobSolid.Of(scene).Parts;
        var casting = parts.Where(p => p.Kind == "casting").ToList();
        Assert.Equal(body.Casting is null ? 0 : 1, casting.Count);
        Assert.Equal(casting.Count, parts.Count(p => p.Kind == "valve" && p.Turns));
        if (body is { Casting: { } round, BoreAxis: { } bore })
        {
            var axis = (round.To - round.From).Unit;
            double FromAxis(Vector3 p) => (p - round.From.Vector - (p - round.From.Vector).Dot(axis) * axis).Length;
            IEnumerable<Vector3> Points(SolidPart part) => part.Points.Chunk(3).Select(c => new Vector3(c[0], c[1], c[2]));
            Assert.All(Points(casting[0]), p => Assert.True(Math.Abs(FromAxis(p) - bore.OutsideDiameter / 2) < 0.02 || Math.Abs(FromAxis(p) - body.Bore / 2) < 0.02));
            Assert.All(Points(parts.Single(p => p.Kind == "mount")), p => Assert.True(FromAxis(p) > body.Bore / 2));
            Assert.All(Points(parts.Single(p => p.Kind == "valve")), p => Assert.True(FromAxis(p) < body.Bore / 2 + 1.5));
        }
    });

    [Fact]
    public void A_mirrored_outline_is_still_seen_from_outside() => ReportCases.Each((solution, _, _) =>
    {
        var scene = new ReportScene(solution, []);
        if (scene.Mesh is not null)
        {
            foreach (var part in JobSolid.Of(scene).Parts)
            {
                Assert.True(Volume(part.Points, part.Triangles) > 0, part.Kind);
                Assert.All(part.Edges, e => Assert.InRange(e, 0, part.Points.Length / 3 - 1));
            }
        }
    });

    private static void IsClosed(SolidShapes shapes, double volume, double within = 1e-9)
    {
        Assert.Equal(volume, Volume([.. shapes.Points.SelectMany(p => (double[])[p.X, p.Y, p.Z])], [.. shapes.Triangles]), within * volume);

        // Closed: every edge is run through once each way.
        var edges = shapes.Triangles.Chunk(3).SelectMany(t => (((int, int)[])[(t[0], t[1]), (t[1], t[2]), (t[2], t[0])])).ToHashSet();
        Assert.Equal(shapes.Triangles.Count, edges.Count);
        Assert.All(edges, e => Assert.Contains((e.Item2, e.Item1), edges));
    }

    private static double Volume(IReadOnlyList<double> points, IReadOnlyList<int> triangles)
    {
        Vector3 At(int i) => new(points[3 * i], points[3 * i + 1], points[3 * i + 2]);
        return triangles.Chunk(3).Sum(t => At(t[0]).Dot(At(t[1]).Cross(At(t[2])))) / 6;
    }
}
