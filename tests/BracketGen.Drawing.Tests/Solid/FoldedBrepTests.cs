using BracketGen.Design.Checks;
using BracketGen.Design.Part;
using BracketGen.Design.Study;
using BracketGen.Drawing.Solid.Brep;
using BracketGen.Drawing.Tests.ShopDrawing;
using BracketGen.Geometry;
using BracketGen.Profiles.Family;
using BracketGen.SheetMetal.Patterns;
using BracketGen.TestSupport;
using BracketGen.Words.Report;
using BracketGen.Words.Worksheet;

namespace BracketGen.Drawing.Tests.Solid;

/// <summary>The exact solid, on every example and some hundred random brackets: flat, bent once and twice.</summary>
public class FoldedBrepTests
{
    private static void Each(Action<FlatPattern, BrepSolid> check)
    {
        void Check(FoldedSheet sheet) => check(sheet.Flat, FoldedBrep.Of(sheet));
        foreach (var (_, solution) in ExampleSolutions.All.Where(e => e.Solution.Bracket is not null))
        {
            Check(solution.Bracket!.Folded);
        }

        RandomSolutions.Each(int.MaxValue, s => Check(s.Bracket!.Folded));
    }

    [Fact]
    public void EveryEdgeIsTravelledOnceEachWay() => Each((_, solid) =>
    {
        var uses = solid.Faces.SelectMany(f => f.Loops).SelectMany(l => l).ToList();
        Assert.Equal(2 * solid.Edges.Length, uses.Count);
        Assert.Equal(uses.Count, uses.Distinct().Count());
    });

    [Fact]
    public void NumbersAgreeWithEulerAndPoincare() => Each((flat, solid) =>
    {
        // V - E + F - (L - F) = 2 (S - G): one shell, and each hole through the sheet is a handle.
        var loops = solid.Faces.Sum(f => f.Loops.Length);
        Assert.Equal(
            2 * (1 - flat.Blank.Holes.Length),
            solid.Corners.Length - solid.Edges.Length + solid.Faces.Length - (loops - solid.Faces.Length));
    });

    [Fact]
    public void CornersLieOnTheirCurvesAndCurvesOnTheirSurfaces() => Each((_, solid) =>
    {
        foreach (var edge in solid.Edges)
        {
            Assert.True(edge.Curve.DistanceTo(solid.Corners[edge.Start]) < Tolerance.Point);
            Assert.True(edge.Curve.DistanceTo(solid.Corners[edge.End]) < Tolerance.Point);
        }

        foreach (var face in solid.Faces)
        {
            foreach (var use in face.Loops.SelectMany(l => l))
            {
                var points = Points(solid, solid.Edges[use.Edge]);
                Assert.All(points, p => Assert.True(face.Surface.DistanceTo(p) < 1.5 * Tolerance.Point));
            }
        }
    });

    [Fact]
    public void VolumeAndAreaAreThoseOfPlatesAndRings() => Each((flat, solid) =>
    {
        var (expected, found) = (PlatesAndRings.Of(flat), BrepMeasure.Of(solid));
        Assert.Equal(1, found.Volume / expected.Volume, 9);
        Assert.Equal(1, found.Area / expected.Area, 9);
        Assert.All(found.Areas, area => Assert.True(area > 0));
    });

    [Fact]
    public void NoEdgeDividesAPlane() => Each((_, solid) =>
    {
        var beside = solid.Faces.SelectMany(f => f.Loops.SelectMany(l => l).Select(u => (u.Edge, Face: f))).ToLookup(p => p.Edge, p => p.Face);
        foreach (var faces in beside)
        {
            if (faces.First().Surface is BrepPlane one && faces.Last().Surface is BrepPlane other && faces.First() != faces.Last())
            {
                Assert.True(one.Normal.Cross(other.Normal).Length > Tolerance.Direction);
            }
        }
    });

    [Fact]
    public void ASurfaceThatIsNotClosedIsRefused()
    {
        var solid = FoldedBrep.Of(ExampleSolutions.First.Bracket!.Folded);
        Assert.Contains("Edge ", Assert.Throws<ArgumentException>(() => new BrepSolid(solid.Corners, solid.Edges, solid.Faces[1..])).Message);
        var turned = solid.Faces[0] with { Loops = solid.Faces[0].Loops.SetItem(0, [solid.Faces[0].Loops[0][0].Reversed, .. solid.Faces[0].Loops[0][1..]]) };
        Assert.Contains(
            "do not meet", Assert.Throws<ArgumentException>(() => new BrepSolid(solid.Corners, solid.Edges, solid.Faces.SetItem(0, turned))).Message);
    }

    private static IEnumerable<Vector3> Points(BrepSolid solid, BrepEdge edge)
    {
        if (edge.Curve is BrepCircle circle)
        {
            var b = solid.Corners[edge.End];
            var y = circle.Axis.Cross(circle.Towards);
            var end = Math.Atan2((b - circle.Centre).Dot(y), (b - circle.Centre).Dot(circle.Towards));
            var sweep = edge.Start == edge.End ? 2 * Math.PI : end > 0 ? end : end + 2 * Math.PI;
            var (sin, cos) = Math.SinCos(sweep / 2);
            yield return circle.Centre + circle.Radius * cos * circle.Towards + circle.Radius * sin * y;
        }

        yield return solid.Corners[edge.Start];
        yield return solid.Corners[edge.End];
    }
}
