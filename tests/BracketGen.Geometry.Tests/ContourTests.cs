using BracketGen.TestSupport;
using NetTopologySuite.Geometries;

namespace BracketGen.Geometry.Tests;

/// <summary>Exact areas, lengths and insides against those of NetTopologySuite on ever finer polygons.</summary>
public class ContourTests
{
    [Theory]
    [InlineData(1e-1)]
    [InlineData(1e-3)]
    [InlineData(1e-5)]
    public void Area_and_length_are_the_limits_of_the_polygon_s(double chord) => RandomShapes.Outline.Check(150, contour =>
    {
        var polygon = contour.ToPolygon(chord);
        Assert.True(contour.SignedArea > 0);
        Assert.InRange(polygon.Area, contour.SignedArea - chord * contour.Perimeter, contour.SignedArea + chord * contour.Perimeter);

        // An arc of length L flattened to chord error c is short by L c/(3 r), to leading order.
        var shortBy = contour.Segments.OfType<ArcSegment>().Sum(a => a.Length * Math.Min(1, chord / (2 * a.Radius)));
        Assert.InRange(polygon.Length, contour.Perimeter - shortBy - 1e-9, contour.Perimeter + 1e-9);
    });

    [Fact]
    public void The_flat_polygon_keeps_the_promised_distance() => RandomShapes.Outline.Check(50, contour =>
    {
        foreach (var chord in new[] { 1.0, 0.02, 1e-4, 1e-6 })
        {
            var points = contour.Flatten(chord);
            for (var i = 0; i < points.Length; i++)
            {
                var middle = 0.5 * (points[i] + points[(i + 1) % points.Length]);
                Assert.True(contour.DistanceTo(middle) <= chord * (1 + 1e-6) + 1e-9, $"{contour.DistanceTo(middle)} > {chord}");
                if (chord < 1e-3 && i > 200)
                {
                    break;
                }
            }
        }
    });

    [Fact]
    public void Inside_is_the_polygon_s_inside()
    {
        var compared = 0;
        RandomShapes.Outline.Check(100, contour =>
        {
            var polygon = contour.ToPolygon(1e-3);
            if (!polygon.IsValid)
            {
                return; // Crosses itself: "inside" means different things to the two.
            }

            foreach (var point in RandomShapes.Point.Draw(40, stream: 9).Select(p => 2 * p))
            {
                if (contour.DistanceTo(point) > 0.01)
                {
                    compared++;
                    Assert.Equal(polygon.Contains(point.ToPoint()), contour.Contains(point));
                    Assert.Equal(contour.Contains(point), contour.Reversed.Contains(point));
                }
            }
        });
        Assert.True(compared > 2000, $"Only {compared} comparisons.");
    }

    [Fact]
    public void A_full_circle_knows_its_inside()
    {
        var circle = Contour.Circle(new(3, 4), 5);
        Assert.Equal(25 * Math.PI, circle.SignedArea, 1e-10);
        Assert.Equal(10 * Math.PI, circle.Perimeter, 1e-10);
        Assert.Equal(-8, -circle.Bounds.Max.X, 1e-12);
        Assert.Equal(-1, circle.Bounds.Min.Y, 1e-12);
        foreach (var degrees in Enumerable.Range(0, 360))
        {
            var way = Vector2.FromPolar(1, Angle.FromDegrees(degrees));
            Assert.True(circle.Contains(new Vector2(3, 4) + 4.9999 * way));
            Assert.False(circle.Contains(new Vector2(3, 4) + 5.0001 * way));
        }

        Assert.True(circle.Contains(new(3, 4)));
    }

    [Fact]
    public void Mirrored_and_moved_contours_keep_size_and_sense() => RandomShapes.Outline.Check(100, contour =>
    {
        foreach (var copy in new[] { contour.MirroredInX, contour.Shift(new(100, -3)), contour.Rotate(new(1.1)), contour.Reversed.Reversed })
        {
            Assert.Equal(contour.SignedArea, copy.SignedArea, 1e-7);
            Assert.Equal(contour.Perimeter, copy.Perimeter, 1e-9);
        }

        Assert.Equal(-contour.SignedArea, contour.Reversed.SignedArea, 1e-7);
        var probe = new Vector2(15, 7);
        Assert.Equal(contour.DistanceTo(probe), contour.MirroredInX.DistanceTo(new(-15, 7)), 1e-9);
    });

    [Fact]
    public void Gaps_are_refused()
    {
        Assert.Throws<ArgumentException>(() => new Contour([]));
        Assert.Throws<ArgumentException>(() => new Contour([new LineSegment(new(0, 0), new(1, 0))]));
        Assert.Throws<ArgumentException>(() => new Contour([
            new LineSegment(new(0, 0), new(1, 0)), new LineSegment(new(1, 1e-5), new(0, 0))]));
    }

    [Fact]
    public void A_region_is_its_outline_less_its_holes() => RandomShapes.Region.Check(100, region =>
    {
        const double chord = 1e-4;
        var polygon = region.ToPolygon(chord);
        Assert.InRange(polygon.Area - region.Area, -chord * region.CutLength, chord * region.CutLength);
        Assert.Equal(polygon.Length, region.CutLength, 1e-3 * region.CutLength);
        Assert.True(region.Outline.SignedArea > 0);
        Assert.All(region.Holes, h => Assert.True(h.SignedArea < 0));
        Assert.Equal(region.Area, region.MirroredInX.Area, 1e-7);
        Assert.Equal(region.Area, region.Rotate(new(2)).Shift(new(1, 2)).Area, 1e-7);
        foreach (var point in RandomShapes.Point.Draw(20, stream: 10).Select(p => 0.4 * p))
        {
            if (region.Contours.Min(c => c.DistanceTo(point)) > 0.001)
            {
                Assert.Equal(polygon.Contains(point.ToPoint()), region.Contains(point));
            }
        }
    });

    // A point on the chord between the ends of a bow, level with them or not, is inside where the bow bulges outwards.
    [Theory]
    [InlineData(0)]
    [InlineData(90)]
    [InlineData(180)]
    [InlineData(270)]
    [InlineData(33)]
    public void A_point_on_the_chord_of_a_bow_is_inside(double turned)
    {
        // A slot: two half circles joined by lines; and a D, whose one side is a bow of three quarters.
        var slot = new Contour(
        [
            new LineSegment(new(0, -2), new(10, -2)), new ArcSegment(new(10, 0), 2, Angle.FromDegrees(-90), Angle.Straight),
            new LineSegment(new(10, 2), new(0, 2)), new ArcSegment(new(0, 0), 2, Angle.FromDegrees(90), Angle.Straight),
        ]).Rotate(Angle.FromDegrees(turned));
        var bow = new ArcSegment(new(0, 0), 3, Angle.FromDegrees(-135), Angle.FromDegrees(270));
        var bulge = new Contour([bow, new LineSegment(bow.End, bow.Start)]).Rotate(Angle.FromDegrees(turned));
        foreach (var contour in new[] { slot, slot.Reversed })
        {
            foreach (var at in new[] { -1.5, 0, 0.5, 5, 10, 11 })
            {
                Assert.True(contour.Contains(new Vector2(at, 0).Rotate(Angle.FromDegrees(turned))));
            }

            foreach (var height in new[] { -1.9, -1, 0, 1, 1.9 })
            {
                Assert.True(contour.Contains(new Vector2(0, height).Rotate(Angle.FromDegrees(turned))));
                Assert.True(contour.Contains(new Vector2(10, height).Rotate(Angle.FromDegrees(turned))));
                Assert.False(contour.Contains(new Vector2(12.5, height).Rotate(Angle.FromDegrees(turned))));
                Assert.False(contour.Contains(new Vector2(-2.5, height).Rotate(Angle.FromDegrees(turned))));
            }
        }

        foreach (var contour in new[] { bulge, bulge.Reversed })
        {
            foreach (var at in new[] { -2.1, -1, 0, 1, 2.9 })
            {
                Assert.True(contour.Contains(new Vector2(at, 0).Rotate(Angle.FromDegrees(turned))));
                Assert.True(contour.Contains(new Vector2(0, at).Rotate(Angle.FromDegrees(turned))));
            }

            Assert.False(contour.Contains(new Vector2(-2.2, 0).Rotate(Angle.FromDegrees(turned))));
            Assert.False(contour.Contains(new Vector2(-2.9, 0).Rotate(Angle.FromDegrees(turned))));
        }
    }

    [Fact]
    public void The_distance_is_the_least_of_its_segments()
    {
        RandomShapes.Outline.Check(100, contour =>
        {
            foreach (var point in RandomShapes.Point.Draw(40, stream: 10).Select(p => 2 * p))
            {
                Assert.Equal(contour.Segments.Min(s => s.DistanceTo(point)), contour.DistanceTo(point), 1e-9);
            }
        });
    }
}
