using BracketGen.Design.Part;
using BracketGen.Drawing.Solid.Mesh;
using BracketGen.Geometry;
using BracketGen.Profiles.Family;
using BracketGen.SheetMetal.Bending;
using BracketGen.TestSupport;
using BracketGen.Words.Report;
using BracketGen.Words.Worksheet;

namespace BracketGen.Drawing.Tests.Solid;

public class FoldedMeshTests
{
    [Fact]
    public void EveryEdgeHasOneNeighbour() => RandomSolutions.Each(120, solution =>
    {
        var bracket = solution.Bracket!;
        var directed = FoldedMesh.Of(bracket.Folded).Triangles
            .SelectMany(t => ((int, int)[])[(t.A, t.B), (t.B, t.C), (t.C, t.A)])
            .ToList();
        Assert.Equal(directed.Count, directed.Distinct().Count());
        var all = directed.ToHashSet();
        Assert.All(directed, e => Assert.Contains((e.Item2, e.Item1), all));
    });

    [Fact]
    public void VolumeIsThatOfPlatesAndRings() => RandomSolutions.Each(120, solution =>
    {
        var bracket = solution.Bracket!;
        // Flanges: area times thickness. Bends: sector of a ring, A (R² - r²) / 2 times its length (any table of solids).
        var flat = bracket.Flat;
        var strips = flat.Bends.Sum(b => b.Length * b.Allowance);
        double Ring(Bend b) => b.Length * b.Turn.Magnitude.Radians * (Math.Pow(b.InsideRadius + flat.Thickness, 2) - Math.Pow(b.InsideRadius, 2)) / 2;
        var expected = (flat.Blank.Area - strips) * flat.Thickness + flat.Bends.Sum(Ring);
        var coarse = Math.Abs(FoldedMesh.Of(bracket.Folded, 0.02).Volume / expected - 1);
        var fine = Math.Abs(FoldedMesh.Of(bracket.Folded, 0.002).Volume / expected - 1);
        Assert.True(fine < 5e-4, $"Off by {fine:P3} of the volume.");
        Assert.True(coarse < 5e-3, $"Off by {coarse:P3} of the volume.");
    });

    [Fact]
    public void VerticesLieWhereTheSheetFolds() => RandomSolutions.Each(40, solution =>
    {
        var bracket = solution.Bracket!;
        var mesh = FoldedMesh.Of(bracket.Folded);
        foreach (var segment in bracket.Flat.Blank.Outline.Segments)
        {
            foreach (var height in (double[])[0, bracket.Flat.Thickness])
            {
                var point = bracket.Folded.Fold(new(segment.Start), height).Vector;
                Assert.True(mesh.Vertices.Min(v => v.DistanceTo(point)) < 1e-6);
            }
        }
    });

    [Fact]
    public void TrianglesCoverABlankOnce() => RandomSolutions.Each(120, solution =>
    {
        var bracket = solution.Bracket!;
        List<Vector2> points = [];
        var loops = bracket.Flat.Blank.Contours.Select(c =>
        {
            var loop = c.Flatten(0.05);
            points.AddRange(loop);
            return (IReadOnlyList<int>)[.. Enumerable.Range(points.Count - loop.Length, loop.Length)];
        }).ToList();
        double Area(IEnumerable<int> loop)
        {
            var p = loop.Select(i => points[i]).ToArray();
            return p.Select((a, i) => a.Cross(p[(i + 1) % p.Length])).Sum() / 2;
        }

        // Shoelace formula: the triangles are all counter-clockwise and add up to the outline less the holes; their number is
        // that of any triangulation, corners + 2 holes - 2.
        var areas = EarClipper.Triangulate(points, loops).Select(t => Area([t.A, t.B, t.C])).ToList();
        Assert.Equal(loops.Sum(Area), areas.Sum(), 6);
        Assert.True(areas.Min() > -1e-6);
        Assert.Equal(points.Count + 2 * (loops.Count - 1) - 2, areas.Count);
    });
}
