using BracketGen.TestSupport;
using CsCheck;
using NetTopologySuite.Algorithm;
using NetTopologySuite.Geometries;

namespace BracketGen.Geometry.Tests;

/// <summary>The tangent outline against NetTopologySuite's convex hull of many points on the discs.</summary>
public class TangentOutlineTests
{
    private static readonly Gen<Disc> Free =
        Gen.Select(RandomShapes.Point, Gen.Double[0, 30], (c, r) => new Disc(c, Math.Round(r, 3)));

    // Whole numbers make what free numbers never do: equal radii, discs in a row, tangent from inside, equal, radius zero.
    private static readonly Gen<Disc> Whole =
        Gen.Select(Gen.Int[-3, 3], Gen.Int[-3, 3], Gen.Int[0, 4], (x, y, r) => new Disc(new(5 * x, 5 * y), 5 * r));

    private static readonly Gen<Disc> InARow =
        Gen.Select(Gen.Int[-6, 6], Gen.Int[1, 2], (x, r) => new Disc(new(3 * x, -4 * x), r));

    [Fact]
    public void Free_discs() => Free.Array[1, 8].Check(200, Compare);

    [Fact]
    public void Discs_on_a_grid() => Whole.Array[2, 9].Check(400, Compare);

    [Fact]
    public void Discs_in_a_row() => InARow.Array[2, 6].Check(200, Compare);

    [Fact]
    public void Turned_grids_meet_round_off() => Gen.Select(Whole.Array[2, 9], RandomShapes.Direction).Check(
        300,
        t => Compare([.. t.Item1.Select(d => d with { Centre = d.Centre.Rotate(t.Item2) })]));

    [Fact]
    public void A_disc_that_touches_a_larger_one_from_inside_changes_nothing()
    {
        Disc large = new(new(0, 0), 2), small = new(new(0, -1), 1);
        Assert.Equal(4 * Math.PI, TangentOutline.Around([small, large]).SignedArea, 1e-9);
        Assert.Equal(4 * Math.PI, TangentOutline.Around([large, small]).SignedArea, 1e-9);
        Assert.Equal(4 * Math.PI, TangentOutline.Around([large, large]).SignedArea, 1e-9);
    }

    [Fact]
    public void Discs_all_but_equal_count_once()
    {
        foreach (var off in new[] { 1e-12, 3e-8, 9e-8, 1.1e-7, 1e-6 })
        {
            Disc[] discs = [new(new(0, 0), 5), new(new(off, -off), 5), new(new(0, off), 5), new(new(20, 0), 5), new(new(20, off), 5)];
            var outline = TangentOutline.Around(discs);
            Assert.Equal(25 * Math.PI + 200, outline.SignedArea, 1e-4);
        }
    }

    [Fact]
    public void Discs_almost_equally_low_close()
    {
        foreach (var rise in new[] { 0, 1e-16, 1e-13, 1e-9, 5e-8, 1e-7, 1e-6 })
        {
            foreach (var sign in new[] { -1, 1 })
            {
                Disc[] discs = [new(new(0, 0), 50), new(new(10, sign * rise), 50), new(new(5, 5), 30)];
                Assert.Equal(2500 * Math.PI + 1000, TangentOutline.Around(discs).SignedArea, 1e-3);
            }
        }
    }

    [Fact]
    public void Two_equal_discs_make_a_long_hole_s_outline()
    {
        var outline = TangentOutline.Around([new(new(0, 0), 3), new(new(10, 0), 3)]);
        Assert.Equal(4, outline.Segments.Length);
        Assert.Equal(9 * Math.PI + 60, outline.SignedArea, 1e-10);
        Assert.Equal(6 * Math.PI + 20, outline.Perimeter, 1e-10);
    }

    [Fact]
    public void No_outline_of_nothing()
    {
        Assert.Throws<ArgumentException>(() => TangentOutline.Around([]));
        Assert.Throws<ArgumentException>(() => TangentOutline.Around([new(Vector2.Zero, -1)]));
        Assert.Throws<ArgumentException>(() => TangentOutline.Around([new(Vector2.Zero, 0)]));
        Assert.Throws<ArgumentException>(() => TangentOutline.Around([new(Vector2.Zero, 0), new(Vector2.Zero, 0)]));
    }

    private static void Compare(Disc[] discs)
    {
        if (discs.All(d => d.Radius == 0))
        {
            return; // Points alone are a polygon, or a line there and back.
        }

        const int count = 1200;
        var points = discs.SelectMany(d => Enumerable.Range(0, d.Radius > 0 ? count : 1).Select(i =>
        {
            var p = d.Centre + Vector2.FromPolar(d.Radius, new(2 * Math.PI * i / count));
            return new Coordinate(p.X, p.Y);
        }));
        var hull = new ConvexHull(points, GeometryFactory.Default).GetConvexHull();
        var outline = TangentOutline.Around(discs);

        // The points' hull lies inside, nowhere deeper than one chord's height; Cauchy's formula bounds the lengths.
        var deep = discs.Max(d => d.Radius) * (1 - Math.Cos(Math.PI / count));
        Assert.InRange(hull.Area, outline.SignedArea - deep * outline.Perimeter - 1e-6, outline.SignedArea + 1e-6);
        Assert.InRange(hull.Length, outline.Perimeter - 2 * Math.PI * deep - 1e-6, outline.Perimeter + 1e-6);

        for (var i = 0; i < outline.Segments.Length; i++)
        {
            var (a, b) = (outline.Segments[i], outline.Segments[(i + 1) % outline.Segments.Length]);
            Assert.True(a is ArcSegment || a.Length > Tolerance.Point);
            Assert.True(a.EndTangent.Cross(b.StartTangent) > -1e-7, "The outline turns right.");
            var point = a.End;
            if (discs.Any(d => d.Radius > 0 && Math.Abs(d.Centre.DistanceTo(point) - d.Radius) < 1e-7)
                && !discs.Any(d => d.Radius == 0 && d.Centre.DistanceTo(point) < 1e-7))
            {
                Assert.True(a.EndTangent.DistanceTo(b.StartTangent) < 1e-6, "The outline has a corner on a disc.");
            }
        }
    }

    [Fact]
    public void Closes_where_a_corner_lies_on_the_lowest_tangent_but_for_round_off()
    {
        Disc[] discs =
        [
            new(new(0, 0), 8), new(new(40, 0), 8), new(new(46.5493194390395, 38.15), 0),
            new(new(46.5493194390395, -7.999999999999998), 0),
        ];
        var outline = TangentOutline.Around(discs);
        Assert.All(discs, d => Assert.True(outline.DistanceTo(d.Centre) >= d.Radius - Tolerance.Point));
        Assert.True(outline.SignedArea > 40 * 16);
    }
}
