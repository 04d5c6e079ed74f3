using BracketGen.Design.Checks;
using BracketGen.Design.Part;
using BracketGen.Drawing.Sheet;
using BracketGen.Drawing.Solid.Mesh;
using BracketGen.Drawing.Views;
using BracketGen.Geometry;
using BracketGen.Profiles.Family;
using BracketGen.SheetMetal.Patterns;
using BracketGen.TestSupport;
using BracketGen.Words.Report;
using BracketGen.Words.Worksheet;

namespace BracketGen.Drawing.Tests.ShopDrawing;

/// <summary>Pictures that anybody can draw by hand.</summary>
public class HiddenLinesTests
{
    private static FoldedMesh Plate(params Contour[] holes) => FoldedMesh.Of(new(
        new FlatPattern
        {
            Blank = new(Contour.Polygon([new(0, 0), new(40, 0), new(40, 30), new(0, 30)]), holes),
            Thickness = 5,
            Bends = [],
        },
        Frame.Identity));

    private static Frame Towards(Vector3 eye, Vector3 right) => Frame.FromZX(Vector3.Zero, eye, right);

    [Fact]
    public void BoxSeenOverACornerShowsNineOfItsTwelveEdges()
    {
        var lines = HiddenLines.Draw(Plate(), Towards(new(1, 1, 1), new(-1, 1, 0)), true);
        Assert.Equal(9, lines.Count(l => l.Kind == LineKind.Visible));
        Assert.Equal(3, lines.Count(l => l.Kind == LineKind.Hidden));

        // Each of the three edge lengths is foreshortened by √(2/3) and seen three times (ISO 5456-3).
        Assert.Equal(3 * (40 + 30 + 5) * Math.Sqrt(2.0 / 3), lines.Where(l => l.Kind == LineKind.Visible).Sum(l => l.Length), 2);
    }

    [Fact]
    public void SquareOnOnlyTheOutlineShows()
    {
        var lines = HiddenLines.Draw(Plate(Contour.Circle(new(10, 12), 4)), Towards(new(0, 0, 1), new(1, 0, 0)), true);
        Assert.Equal(4, lines.Count(l => l.Segment is LineSegment));
        var circle = Assert.IsType<ArcSegment>(Assert.Single(lines, l => l.Segment is ArcSegment).Segment);
        Assert.True(circle.IsFullCircle);
        Assert.Equal(4, circle.Radius, 9);
        Assert.Equal(5, lines.Count);
        Assert.All(lines, l => Assert.Equal(LineKind.Visible, l.Kind));
    }

    [Fact]
    public void HoleIsDashedFromTheSide()
    {
        var lines = HiddenLines.Draw(Plate(Contour.Circle(new(10, 12), 4)), Towards(new(0, -1, 0), new(1, 0, 0)), true);
        Assert.Equal(4, lines.Count(l => l.Kind == LineKind.Visible));
        var hidden = lines.Where(l => l.Kind == LineKind.Hidden).Select(l => Assert.IsType<LineSegment>(l.Segment)).ToList();
        Assert.Equal(2, hidden.Count);
        Assert.All(hidden, h => Assert.Equal(5, h.Length, 1));
        Assert.Equal([6.0, 14.0], hidden.Select(h => Math.Round(h.Start.X, 1)).Order());
    }

    [Fact]
    public void PlateSquareOnShowsEachEdgeOnce() => RandomSolutions.Plates.Check(60, solution =>
    {
        if (solution?.Bracket is not { } bracket)
        {
            return;
        }

        // A plate square on: outline and holes, every stretch once, nothing else.
        var scene = new BracketScene(solution, bracket);
        var lines = HiddenLines.Draw(scene.Mesh, scene.Front, true);
        Assert.DoesNotContain(lines, l => l.Kind != LineKind.Visible);
        Assert.Equal(scene.Flat.Blank.CutLength, lines.Sum(l => l.Length), 0.3);
    });
}
