using BracketGen.TestSupport;
using BracketGen.TestSupport.Comparison;
using CsCheck;
using NetTopologySuite.Geometries;

namespace BracketGen.Geometry.Tests;

/// <summary>Open slots against NetTopologySuite's difference of outline and slot.</summary>
public class NotchTests
{
    [Fact]
    public void A_slot_into_a_rectangle()
    {
        var plate = Contour.Polygon([new(-20, 0), new(20, 0), new(20, 30), new(-20, 30)]);
        var cut = Notch.Cut(plate, new(1, 20), new(0, 1), 6)!;
        Assert.Equal(1200 - 60 - 4.5 * Math.PI, cut.SignedArea, 1e-9);
        Assert.Equal(140 - 6 + 20 + 3 * Math.PI, cut.Perimeter, 1e-9);
        Assert.False(cut.Contains(new(1, 25)));
        Assert.True(cut.Contains(new(-2.1, 25)));
    }

    [Fact]
    public void No_slot_where_it_cannot_leave()
    {
        var plate = Contour.Polygon([new(-20, 0), new(20, 0), new(20, 30), new(-20, 30)]);
        Assert.Null(Notch.Cut(plate, new(0, 40), new(0, 1), 6));
        Assert.Null(Notch.Cut(plate, new(19, 20), new(0, 1), 6));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(17)]
    [InlineData(90)]
    [InlineData(123.4)]
    [InlineData(271)]
    public void A_slot_whose_sides_pass_through_joins(double degrees)
    {
        // A corner, a smooth join of line and arc, and an arc's end, each just where the slot's side leaves.
        var turn = Angle.FromDegrees(degrees);
        Contour[] plates =
        [
            Contour.Polygon([new(-20, 0), new(20, 0), new(20, 30), new(3, 30), new(-3, 30), new(-20, 30)]),
            TangentOutline.Around([new(new(-3, 20), 10), new(new(3, 20), 10), new(new(0, 0), 10)]),
            new Contour([
                new LineSegment(new(-20, 0), new(20, 0)), new LineSegment(new(20, 0), new(3, 30)),
                RandomShapes.Bulged(new(3, 30), new(-3, 30), 0.4), new LineSegment(new(-3, 30), new(-20, 0))]),
        ];
        foreach (var plate in plates)
        {
            Compare(plate.Rotate(turn), new Vector2(0, 12).Rotate(turn), new Vector2(0, 1).Rotate(turn), 6);
        }
    }

    [Fact]
    public void The_whole_edge_on_one_arc_on_either_side_of_its_seam()
    {
        foreach (var degrees in Enumerable.Range(0, 72).Select(i => 5 * i))
        {
            Assert.True(Compare(Contour.Circle(new(2, 1), 20), new(3, 2), Vector2.FromPolar(1, Angle.FromDegrees(degrees)), 8));
        }
    }

    [Fact]
    public void Random_outlines_and_slots()
    {
        var compared = 0;
        Gen.Select(RandomShapes.Outline, RandomShapes.Point, RandomShapes.Direction, Gen.Double[1, 8]).Check(300, t =>
        {
            var (outline, bottom, way, width) = t;
            if (outline.ToPolygon(1e-3).IsValid && Compare(outline, 0.2 * bottom, Vector2.FromPolar(1, way), width))
            {
                compared++;
            }
        });
        Assert.True(compared > 200, $"Only {compared} slots compared.");
    }

    private static bool Compare(Contour outline, Vector2 bottom, Vector2 towards, double width)
    {
        const double chord = 1e-5;
        var far = bottom + 500 * towards;
        var side = width / 2 * towards.Left;
        var slot = Contour.Polygon([bottom - side, far - side, far + side, bottom + side]).ToPolygon(chord)
            .Union(Contour.Circle(bottom, width / 2).ToPolygon(chord));
        if (outline.ToPolygon(chord).Difference(slot) is not Polygon expected || expected.NumInteriorRings > 0)
        {
            return false; // The slot leaves, comes back and cuts something off: not what a slot is for.
        }

        var cut = Notch.Cut(outline, bottom, towards, width);
        Assert.NotNull(cut);
        Assert.Equal(expected.Area, cut.SignedArea, chord * (outline.Perimeter + 100));
        Assert.Equal(expected.Length, cut.Perimeter, 0.01);
        Assert.All(cut.Segments, s => Assert.True(s.Length > Tolerance.Point));
        return true;
    }
}
