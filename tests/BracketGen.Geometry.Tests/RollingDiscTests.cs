using BracketGen.TestSupport;
using NetTopologySuite.Algorithm.Distance;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Buffer;

namespace BracketGen.Geometry.Tests;

/// <summary>Contours offset by a rolling disc, held against formulas and against NetTopologySuite's buffer.</summary>
public class RollingDiscTests
{
    private static readonly BufferParameters Fine = new(64) { SimplifyFactor = 1e-6 };

    [Fact]
    public void Outside_a_convex_outline_area_and_length_grow_as_Steiner_says()
    {
        // Steiner's formula for a convex figure: A + P d + pi d², P + 2 pi d.
        foreach (var outline in (Contour[])
        [
            Contour.Polygon([new(0, 0), new(30, 0), new(30, 20), new(0, 20)]),
            RandomShapes.Slot(new(3, 4), 5, 17, new(0.7)),
            Contour.Circle(new(-2, 1), 6),
            TangentOutline.Around([new(new(0, 0), 8), new(new(34, 0), 7), new(new(20, 30), 11)]),
        ])
        {
            var path = RollingDisc.Along(outline, 0.75).Path!;
            Assert.Equal(outline.SignedArea + 0.75 * outline.Perimeter + Math.PI * 0.75 * 0.75, path.SignedArea, 1e-9);
            Assert.Equal(outline.Perimeter + 2 * Math.PI * 0.75, path.Perimeter, 1e-9);
        }
    }

    [Fact]
    public void Inside_a_hole_they_shrink_likewise_and_arcs_stay_about_their_centres()
    {
        var slot = RandomShapes.Slot(new(3, 4), 5, 17, new(0.7)).Reversed;
        var rolled = RollingDisc.Along(slot, 0.1);
        Assert.Empty(rolled.Tight);
        Assert.Equal(slot.SignedArea + 0.1 * slot.Perimeter - Math.PI * 0.01, rolled.Path!.SignedArea, 1e-9);
        Assert.Equal(
            slot.Segments.OfType<ArcSegment>().Select(a => (a.Centre, a.Radius - 0.1)),
            rolled.Path.Segments.OfType<ArcSegment>().Select(a => (a.Centre, a.Radius)));
        Assert.Equal(2.9, Assert.IsType<ArcSegment>(Assert.Single(RollingDisc.Along(Contour.Circle(default, 3).Reversed, 0.1).Path!.Segments)).Radius, 1e-12);
    }

    [Fact]
    public void An_inside_corner_is_left_with_the_disc_s_own_radius()
    {
        // An angle of 10 mm, its inside corner at (4, 4), sharp or rounded by 0.3: the disc of 0.5 touches both sides either way.
        var sharp = Contour.Polygon([new(0, 0), new(10, 0), new(10, 4), new(4, 4), new(4, 10), new(0, 10)]);
        foreach (var (angle, at) in new[] { (sharp, new Vector2(4, 4)), (Fillet.Round(sharp, 2, 0.3)!, new(4.3 - 0.3 / Math.Sqrt(2), 4.3 - 0.3 / Math.Sqrt(2))) })
        {
            var rolled = RollingDisc.Along(angle, 0.5);
            Assert.InRange(Assert.Single(rolled.Tight).DistanceTo(at), 0, 1e-9);
            Assert.Contains(rolled.Path!.Segments, s => s.End.DistanceTo(new(4.5, 4.5)) < 1e-9);
        }

        Assert.Empty(RollingDisc.Along(Fillet.Round(sharp, 2, 0.6)!, 0.5).Tight);
        Assert.Empty(RollingDisc.Along(Fillet.Round(sharp, 2, 0.5)!, 0.5).Tight);
    }

    [Theory]
    [InlineData("hole no larger than the disc", 1.5)]
    [InlineData("open slot", 1.5)]
    [InlineData("open slot just as wide", 1.5)]
    [InlineData("neck between two bellies", 1.5)]
    [InlineData("bay with a narrow mouth", 1.5)]
    [InlineData("flat bottom shorter than the disc", 1.5)]
    public void Where_the_disc_does_not_fit_it_is_stuck_and_where_it_is_smaller_it_is_not(string what, double radius)
    {
        var contour = Narrow(what);
        Assert.Null(RollingDisc.Along(contour, radius).Path);
        Assert.NotNull(RollingDisc.Along(contour, radius).Stuck);
        Assert.NotNull(RollingDisc.Along(contour, 0.4).Path);
        Assert.Null(RollingDisc.Along(contour, 0.4).Stuck);
    }

    private static Contour Narrow(string what)
    {
        var plate = Contour.Polygon([new(0, 0), new(40, 0), new(40, 20), new(0, 20)]);
        return what switch
        {
            "hole no larger than the disc" => Contour.Circle(default, 1.5).Reversed,
            "open slot" => Notch.Cut(plate, new(20, 10), new(0, 1), 2.5)!,
            "open slot just as wide" => Notch.Cut(plate, new(20, 10), new(0, 1), 3)!,
            "neck between two bellies" => new Contour([
                new LineSegment(new(0, 0), new(40, 0)), new LineSegment(new(40, 0), new(40, 20)),
                new LineSegment(new(40, 20), new(28.4, 20)), RandomShapes.Bulged(new(28.4, 20), new(28.4, 8), 0.7),
                RandomShapes.Bulged(new(28.4, 8), new(18, 8), -1), RandomShapes.Bulged(new(18, 8), new(18, 20), 0.7),
                new LineSegment(new(18, 20), new(0, 20)), new LineSegment(new(0, 20), new(0, 0))]),
            "bay with a narrow mouth" => Contour.Polygon([
                new(0, 0), new(40, 0), new(40, 20), new(21, 20), new(21, 15), new(28, 15), new(28, 6), new(12, 6), new(12, 15), new(19, 15),
                new(19, 20), new(0, 20)]),
            _ => Contour.Polygon([new(0, 0), new(40, 0), new(40, 20), new(25, 20), new(21, 10), new(19, 10), new(15, 20), new(0, 20)]),
        };
    }

    [Fact]
    public void Random_outlines_and_holes_agree_with_NetTopologySuite()
    {
        const double chord = 2e-4;
        int paths = 0, tight = 0, stuck = 0;
        RandomShapes.Region.Check(150, region =>
        {
            var polygon = region.Outline.ToPolygon(chord);
            if (!polygon.IsValid)
            {
                return; // A few cross themselves.
            }

            var radius = 0.05 + region.Area % 1.3;
            foreach (var contour in region.Contours)
            {
                var isHole = contour.SignedArea < 0;
                var expected = contour.ToPolygon(chord).Buffer(isHole ? -radius : radius, Fine);
                var rolled = RollingDisc.Along(contour, radius);
                if (rolled.Path is not { } path)
                {
                    // Nothing, or something torn apart, is left of a hole; the outline closes over a bay.
                    stuck++;
                    Assert.True(
                        expected.IsEmpty || expected is MultiPolygon || ((Polygon)expected).NumInteriorRings > 0 || Deepened(contour, radius),
                        $"stuck at {rolled.Stuck} without need");
                    continue;
                }

                paths++;
                tight += rolled.Tight.Length;
                var found = path.ToPolygon(chord);
                Assert.True(found.IsValid);
                Assert.Equal(isHole, path.SignedArea < 0);
                Assert.Equal(expected.Area, Math.Abs(path.SignedArea), 3e-4 * path.Perimeter);
                Assert.InRange(DiscreteHausdorffDistance.Distance(found.ExteriorRing, ((Polygon)expected).ExteriorRing), 0, 2e-3);
            }
        });
        Assert.InRange(paths, 200, 1000);
        Assert.InRange(tight, 15, 1000);
        Assert.InRange(stuck, 1, 100);
    }

    /// <summary>Whether a disc rolled round the outline leaves out a whole side: the scrap, opened by the disc, loses more than corners.</summary>
    private static bool Deepened(Contour contour, double radius)
    {
        var polygon = contour.ToPolygon(2e-4);
        return contour.Segments.Any(s => polygon.Buffer(radius, Fine).Boundary.Distance(s.PointAt(0.5).ToPoint()) > radius + 1e-3);
    }
}
