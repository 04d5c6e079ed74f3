using BracketGen.Geometry;
using BracketGen.Strength.Meshing;
using BracketGen.Strength.Model;
using BracketGen.TestSupport;
using CsCheck;

namespace BracketGen.Strength.Tests;

/// <summary>Meshes of many flat patterns: whole, well shaped, as fine as asked.</summary>
public sealed class MesherTests
{
    // A tangent outline round three or four discs with holes in them, a bend zone across, washers.
    private static readonly Gen<MeshRequest> Brackets =
        Gen.Select(Gen.Double[-8, 8].Array[8], Gen.Double[8, 14].Array[4], Gen.Double[2, 4.5].Array[3], Gen.Double[2, 5], Gen.Double[-0.3, 0.3])
            .Select((shift, radii, holes, size, tilt) =>
            {
                Disc[] discs = [
                    new(new(shift[0], shift[1]), radii[0]), new(new(50 + shift[2], shift[3]), radii[1]),
                    new(new(45 + shift[4], 60 + shift[5]), radii[2]), new(new(5 + shift[6], 55 + shift[7]), radii[3])];
                var region = new Region(
                    TangentOutline.Around(discs), discs.Take(3).Select((d, i) => Contour.Circle(d.Centre, holes[i])));
                var zone = MeshLine.AcrossZone(
                    new(new(-40, 28 - 40 * tilt), new(100, 28 + 100 * tilt)), new(new(-40, 33 - 40 * tilt), new(100, 33 + 100 * tilt)), 4, 2);
                return new MeshRequest(region, size)
                {
                    HoleSize = Math.Min(size, 1.8),
                    Lines = [.. zone, .. discs.Take(3).Select(d => MeshLine.Rim(new(d.Centre, d.Radius - 1.5), 2))],
                };
            });

    [Fact]
    public void MeshIsWholeAndWellShaped() => Brackets.Check(40, CheckWhole);

    private static void CheckWhole(MeshRequest request)
    {
        var mesh = Mesher.Mesh(request);

        // Area: the exact one less what chords cut off, at most sagitta times length.
        Assert.InRange(mesh.Area / request.Region.Area, 0.995, 1.005);

        // Every edge has one or two triangles; those with one make the contours; Euler: V - E + F = 1 - holes.
        var edges = Edges(mesh);
        Assert.All(edges.Values, n => Assert.InRange(n, 1, 2));
        Assert.Equal(1 - request.Region.Holes.Length, mesh.Nodes.Length - edges.Count + mesh.Triangles.Length);
        foreach (var (a, b) in edges.Where(e => e.Value == 1).Select(e => e.Key))
        {
            Assert.True(request.Region.Contours.Min(c => c.DistanceTo(FlatPoint.Middle(mesh.Nodes[a], mesh.Nodes[b]).Vector)) < 0.5);
            Assert.True(request.Region.Contours.Min(c => c.DistanceTo(mesh.Nodes[a].Vector)) < 0.05);
        }

        Assert.All(mesh.Triangles, t => Assert.True(mesh.AreaOf(t) > 0));
        var angles = mesh.Triangles.Select(t => mesh.SmallestAngleOf(t).Degrees).Order().ToArray();

        // A rim that meets a bend's border at a shallow angle leaves a corner that no mesh can open.
        Assert.True(angles[0] > 10, $"smallest angle {angles[0]}");
        Assert.True(angles[angles.Length / 100] > 20, $"first percentile {angles[angles.Length / 100]}");
    }

    [Fact]
    public void NoTriangleCrossesAFollowedLine() => Brackets.Check(
        15,
        request =>
        {
            var mesh = Mesher.Mesh(request);
            foreach (var line in request.Lines.Select(l => l.Line).OfType<LineSegment>())
            {
                foreach (var t in mesh.Triangles)
                {
                    var sides = Enumerable.Range(0, 3).Select(i => line.StartTangent.Cross(mesh.Nodes[t[i]].Vector - line.Start)).ToArray();
                    Assert.False(sides.Min() < -1e-3 && sides.Max() > 1e-3, $"{sides.Min()} to {sides.Max()}");
                }
            }
        });

    [Fact]
    public void EdgesAreAsLongAsAsked()
    {
        var mesh = Mesher.Mesh(new(new(Contour.Polygon([new(0, 0), new(100, 0), new(100, 60), new(0, 60)]), []), 4));
        var lengths = Edges(mesh).Keys.Select(e => mesh.Nodes[e.Item1].DistanceTo(mesh.Nodes[e.Item2])).Order().ToArray();
        Assert.InRange(lengths[lengths.Length / 2], 0.7 * 4, 1.1 * 4);
        Assert.True(lengths[^1] < 1.7 * 4);
    }

    [Fact]
    public void HolesAreRound()
    {
        // Halved chords go back onto their arc: every node of a rim lies on it.
        var region = new Region(Contour.Circle(Vector2.Zero, 10), [Contour.Circle(new(6.5, 0), 3)]);
        var mesh = Mesher.Mesh(new(region, 4));
        var edges = Edges(mesh);
        foreach (var n in edges.Where(e => e.Value == 1).SelectMany(e => new[] { e.Key.Item1, e.Key.Item2 }).Distinct())
        {
            Assert.True(region.Contours.Min(c => c.DistanceTo(mesh.Nodes[n].Vector)) < 1e-6);
        }
    }

    [Fact]
    public void ReliefSlotsAndBendsThatTouchThemAreMeshed()
    {
        // Two slots whose ends lie on the bend's border, and a bend line that runs along an edge of the part.
        var region = new Region(
            Contour.Polygon([
                new(0, 0), new(60, 0), new(60, 20), new(50, 20), new(50, 18), new(49, 18), new(49, 40), new(10, 40), new(10, 18), new(9, 18),
                new(9, 20), new(0, 20)]),
            []);
        var request = new MeshRequest(region, 4)
        {
            Lines = [.. MeshLine.AcrossZone(new(new(-5, 20), new(65, 20)), new(new(-5, 24), new(65, 24)), 4, 2)],
        };
        var mesh = Mesher.Mesh(request);
        Assert.Equal(region.Area, mesh.Area, 1e-3);
        Assert.True(mesh.Triangles.Min(t => mesh.SmallestAngleOf(t).Degrees) > 15);
    }

    [Fact]
    public void SharpCornersEnd()
    {
        // A 3° spike cannot have good triangles at its tip, but the mesher must stop.
        var mesh = Mesher.Mesh(new(new(Contour.Polygon([new(0, 0), new(100, 0), new(100, 5.24)]), []), 3));
        Assert.Equal(262, mesh.Area, 1e-2);
        Assert.True(mesh.Nodes.Length < 2000);
    }

    [Fact]
    public void ContoursThatCutEachOtherAreRefused()
    {
        var square = Contour.Polygon([new(0, 0), new(30, 0), new(30, 30), new(0, 30)]);
        var e = Assert.Throws<MeshException>(() => Mesher.Mesh(new(new(square, [Contour.Circle(new(28, 15), 4)]), 5)));
        Assert.Contains("(30, ", e.Message, StringComparison.Ordinal);
        Assert.Throws<MeshException>(() => Mesher.Mesh(new(new(square, [Contour.Circle(new(10, 10), 4), Contour.Circle(new(15, 10), 4)]), 5)));
    }

    private static Dictionary<(int, int), int> Edges(TriangleMesh mesh)
    {
        var edges = new Dictionary<(int, int), int>();
        foreach (var t in mesh.Triangles)
        {
            for (var i = 0; i < 3; i++)
            {
                int a = t[i], b = t[(i + 1) % 3];
                var key = (Math.Min(a, b), Math.Max(a, b));
                edges[key] = edges.GetValueOrDefault(key) + 1;
            }
        }

        return edges;
    }
}
