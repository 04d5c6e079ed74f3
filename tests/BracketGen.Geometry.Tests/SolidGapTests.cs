using BracketGen.TestSupport;
using CsCheck;

namespace BracketGen.Geometry.Tests;

/// <summary>Gaps between convex solids: against SciPy, against plain sampling, and where they overlap.</summary>
public class SolidGapTests
{
    /// <summary>
    /// Pairs of solids and their gap (mm) as SciPy 1.10.1 finds it: scipy.optimize.minimize, SLSQP, on the squared distance of two points,
    /// each held in its solid by inequalities; best of six starts, every constraint kept to 1e-7.
    /// </summary>
    private static readonly (ConvexSolid One, ConvexSolid Other, double Gap)[] Known =
    [
        (ConvexSolid.Box(new(-33.8, 9.2, 23.4), new(0.4, 39.4, 63.0)), ConvexSolid.Sector(Angle.FromDegrees(77.9), Angle.FromDegrees(168.0), 34.3, 6.5), 16.90000),
        (ConvexSolid.Rod(new(22.7, 59.5, 41.4), new(-8.4, -54.4, -32.6), 0.8), ConvexSolid.Rod(new(34.1, 35.2, -34.3), new(53.8, -21.2, -4.1), 2.5), 40.44194),
        (ConvexSolid.Box(new(-39.7, -55.5, -66.4), new(-22.3, -46.1, -16.8)), ConvexSolid.Box(new(4.4, -53.2, -9.0), new(27.8, -38.6, 15.2)), 27.81600),
        (ConvexSolid.Cylinder(new(-19.6, 13.0, 44.4), new(-36.7, -12.0, -34.6), 11.2), ConvexSolid.Rod(new(-44.2, -19.2, 59.5), new(50.3, -58.4, -18.3), 3.3), 23.61777),
        (ConvexSolid.Sector(Angle.FromDegrees(65.1), Angle.FromDegrees(202.9), 26.1, 7.3), ConvexSolid.Rod(new(26.0, -48.1, -58.3), new(17.0, 38.1, 20.3), 3.3), 4.18778),
        (ConvexSolid.Sector(Angle.FromDegrees(125.1), Angle.FromDegrees(254.2), 34.9, 4.2), ConvexSolid.Cylinder(new(-16.4, 52.7, 19.5), new(17.4, -2.0, 27.6), 19.5), 4.09074),
        (ConvexSolid.Sector(Angle.FromDegrees(98.8), Angle.FromDegrees(232.6), 25.2, 2.8), ConvexSolid.Rod(new(-30.6, -8.3, -56.8), new(-43.3, 15.4, -12.9), 2.3), 20.78387),
        (ConvexSolid.Rod(new(-40.4, 48.1, 16.9), new(-8.9, 55.5, -44.4), 2.2), ConvexSolid.Cylinder(new(19.9, 15.9, 54.4), new(-40.3, 23.8, -43.8), 6.4), 21.73874),
        (ConvexSolid.Sector(Angle.FromDegrees(179.1), Angle.FromDegrees(222.5), 27.1, 6.1), ConvexSolid.Rod(new(-17.5, 35.7, -25.6), new(42.5, -28.6, -1.7), 2.0), 12.55442),
        (ConvexSolid.Box(new(29.7, 1.6, -24.6), new(69.5, 42.4, 19.6)), ConvexSolid.Rod(new(16.7, 18.5, 42.7), new(46.9, -18.0, 45.5), 3.5), 20.70150),
        (ConvexSolid.Sector(Angle.FromDegrees(-85.2), Angle.FromDegrees(-10.9), 43.8, 7.5), ConvexSolid.Cylinder(new(-18.2, 59.2, -26.8), new(-20.4, -56.8, 10.1), 12.9), 6.42732),
        (ConvexSolid.Sector(Angle.FromDegrees(136.4), Angle.FromDegrees(176.6), 27.9, 7.6), ConvexSolid.Cylinder(new(18.5, -26.6, 42.8), new(-51.3, -16.2, 24.8), 8.2), 22.11251),
        (ConvexSolid.Sector(Angle.FromDegrees(167.9), Angle.FromDegrees(202.7), 29.3, 6.9), ConvexSolid.Rod(new(-50.1, -39.6, 54.8), new(-58.3, -40.5, 25.2), 2.6), 43.92858),
        (ConvexSolid.Rod(new(20.8, 32.3, -40.0), new(-21.4, 20.0, -13.8), 3.7), ConvexSolid.Box(new(12.8, 4.1, -28.8), new(42.8, 35.7, -14.2)), 1.59557),
        (ConvexSolid.Box(new(9.4, -1.3, -25.6), new(22.2, 34.7, 23.4)), ConvexSolid.Cylinder(new(-57.8, 31.6, 0.1), new(-5.5, 36.5, 31.5), 4.4), 13.40793),
        (ConvexSolid.Box(new(32.4, -59.9, -34.7), new(72.0, -30.9, -10.5)), ConvexSolid.Sector(Angle.FromDegrees(-38.8), Angle.FromDegrees(67.4), 40.5, 4.5), 8.19749),
        (ConvexSolid.Box(new(45.0, -43.3, -38.6), new(72.8, -34.9, -20.6)), ConvexSolid.Box(new(7.9, -35.2, 19.4), new(18.1, -25.2, 56.2)), 48.20384),
        (ConvexSolid.Rod(new(-24.1, 40.4, 54.8), new(-1.9, 17.5, 27.1), 2.6), ConvexSolid.Box(new(-59.0, 28.9, -26.3), new(-18.8, 35.1, 7.9)), 25.29449),
        (ConvexSolid.Rod(new(-56.3, -7.5, -30.5), new(56.5, 51.5, -43.7), 3.8), ConvexSolid.Box(new(-14.0, -31.4, -10.2), new(3.0, -1.0, 5.8)), 24.22705),
        (ConvexSolid.Rod(new(23.3, -5.0, 27.4), new(24.5, -51.4, -9.4), 2.3), ConvexSolid.Rod(new(49.6, -26.7, -23.2), new(-51.7, 52.7, 23.9), 0.7), 26.10009),
        (ConvexSolid.Sector(Angle.FromDegrees(171.1), Angle.FromDegrees(196.0), 31.0, 7.5), ConvexSolid.Rod(new(10.0, 32.9, -59.2), new(-3.5, 49.0, 56.4), 0.5), 39.44629),
        (ConvexSolid.Rod(new(7.6, -2.2, -8.1), new(0.8, -39.9, 19.3), 2.4), ConvexSolid.Box(new(-16.8, 24.7, 44.4), new(-1.6, 37.9, 71.8)), 56.40149),
        (ConvexSolid.Sector(Angle.FromDegrees(51.6), Angle.FromDegrees(151.7), 29.8, 5.8), ConvexSolid.Cylinder(new(-47.3, -22.1, -36.7), new(-37.0, 40.4, -1.1), 6.5), 10.28478),
        (ConvexSolid.Box(new(6.0, 35.6, 34.2), new(22.6, 72.8, 55.4)), ConvexSolid.Cylinder(new(51.4, 49.0, 17.8), new(-49.1, 27.9, 8.8), 16.3), 2.60346),
    ];

    private static readonly Gen<Vector3> Point = Gen.Select(Gen.Double[-40, 40], Gen.Double[-40, 40], Gen.Double[-40, 40], (x, y, z) => new Vector3(x, y, z));

    private static readonly Gen<ConvexSolid> Solid = Gen.Select(Gen.Int[0, 4], Point, Point, Gen.Double[1, 15], Gen.Double[0.1, 3.1], (kind, a, b, size, turn) => kind switch
    {
        0 => ConvexSolid.Box(a, a + new Vector3(size, 2 * size, 0.5 * size)),
        1 => ConvexSolid.Cylinder(a, b, size),
        2 => ConvexSolid.Rod(a, b, size / 10),
        3 => ConvexSolid.Triangle(a, b, new(a.Y, b.Z, a.X), size / 10),
        _ => ConvexSolid.Sector(new(a.X), new(a.X + turn), 2 * size, size / 3),
    });

    [Fact]
    public void Gaps_are_those_of_an_optimizer()
    {
        foreach (var (one, other, gap) in Known)
        {
            Assert.Equal(gap, SolidGap.Between(one, other), 1e-4);
            Assert.Equal(gap, SolidGap.Between(other, one), 1e-4);
        }
    }

    // Farthest points of both in many directions are points of both: no two of them are nearer than the gap. And some plane between
    // the solids shows that the gap is there: the widest strip found among as many directions is nearly as wide.
    [Fact]
    public void No_two_points_are_nearer_than_the_gap() => Gen.Select(Solid, Solid).Check(LongRun.Of(300), pair =>
    {
        var (one, other) = pair;
        var gap = SolidGap.Between(one, other);
        Vector3[] ways = [.. Directions(400)];
        var strip = ways.Max(w => (one.Farthest(-w) - other.Farthest(w)).Dot(w)) - one.Rounding - other.Rounding;
        if (gap > 0)
        {
            Vector3[] ofOne = [.. ways.Select(one.Farthest).Append(one.Inside)], ofOther = [.. ways.Select(other.Farthest).Append(other.Inside)];
            var sampled = ofOne.Min(p => ofOther.Min(q => p.DistanceTo(q))) - one.Rounding - other.Rounding;
            Assert.True(gap <= sampled + 1e-6, $"gap {gap}, sampled {sampled}");
        }

        // No strip is wider than the gap, and a direction 8° off shows nearly all of it. Of an overlap only some way out is promised: it
        // may be a tenth longer than the shortest.
        Assert.True(strip <= gap + (gap > 0 ? 1e-5 : 0.1 * -gap), $"gap {gap}, strip {strip}");
        Assert.True(strip >= gap - 0.15 * 130, $"gap {gap}, strip {strip}");
    });

    // Along its own axis a cylinder ends at its end: what is left across the axis is round-off, and points anywhere.
    [Fact]
    public void A_cylinder_ends_at_its_end() => Gen.Select(Point, Point, Gen.Double[1, 15], Gen.Double[1e-3, 1e3]).Check(LongRun.Of(2000), drawn =>
    {
        var (from, to, radius, scale) = drawn;
        to += new Vector3(100, 0, 0); // No cylinder of no length.
        var axis = (to - from).Unit;
        var cylinder = ConvexSolid.Cylinder(from, to, radius);
        Assert.Equal(to.Dot(axis), cylinder.Farthest(scale * axis).Dot(axis), 1e-9);
        Assert.Equal(from.Dot(axis), cylinder.Farthest(-scale * (to - from)).Dot(axis), 1e-9);
    });

    // Two rods, boxes or discs through one point overlap, however they lie.
    [Fact]
    public void Solids_through_one_point_overlap() => Gen.Select(Point, Point, Point, Gen.Double[1, 15], Gen.Double[0.1, 0.9]).Check(LongRun.Of(300), drawn =>
    {
        var (at, a, b, size, part) = drawn;
        a += new Vector3(60, 0, 0); // No cylinder of no length.
        ConvexSolid[] all =
        [
            ConvexSolid.Box(at - part * size * new Vector3(1, 1, 1), at + size * new Vector3(1, 1, 1)),
            ConvexSolid.Cylinder(at - part * a, at + (1 - part) * a, size),
            ConvexSolid.Rod(at - part * b, at + (1 - part) * b, size / 10),
            ConvexSolid.Triangle(at + a, at - part * a + 0.3 * b, at - part * a - 0.3 * b, 0.1),
        ];
        foreach (var one in all)
        {
            foreach (var other in all)
            {
                Assert.True(SolidGap.Between(one, other) < 0);
            }
        }
    });

    [Theory]
    [InlineData(0, 0, 0, -10)] // A box in the middle of one as large: ten must be moved whichever way.
    [InlineData(7, 0, 0, -3)]
    [InlineData(10, 0, 0, 0)]
    [InlineData(13, 0, 0, 3)]
    [InlineData(13, 14, 0, 5)]
    public void Boxes(double x, double y, double z, double gap)
    {
        var box = ConvexSolid.Box(new(-5, -5, -5), new(5, 5, 5));
        Assert.Equal(gap, SolidGap.Between(box, ConvexSolid.Box(new(x - 5, y - 5, z - 5), new(x + 5, y + 5, z + 5))), 1e-5);
    }

    [Fact]
    public void A_sector_keeps_to_its_own_side_of_the_shaft()
    {
        var quarter = ConvexSolid.Sector(Angle.Zero, Angle.FromDegrees(90), 30, 4);
        Assert.Equal(5, SolidGap.Between(quarter, ConvexSolid.Rod(new(-6, 10, 0), new(-6, 20, 0), 1)), 1e-5);
        Assert.Equal(2, SolidGap.Between(quarter, ConvexSolid.Rod(new(10, 10, -20), new(10, 10, -7), 1)), 1e-5);
        Assert.Equal(1.5 * Math.Sqrt(2), SolidGap.Between(quarter, ConvexSolid.Rod(Vector3.From((30 + 1.5 * Math.Sqrt(2)) * Vector2.FromPolar(1, Angle.FromDegrees(45))), new(60, 60, 0), 0)), 1e-5);
        Assert.Throws<ArgumentOutOfRangeException>(() => ConvexSolid.Sector(Angle.Zero, Angle.FromDegrees(200), 30, 4));
    }

    private static IEnumerable<Vector3> Directions(int count) => Enumerable.Range(0, count).Select(i =>
    {
        var z = 1 - (2 * i + 1.0) / count;
        return Vector3.From(Vector2.FromPolar(Math.Sqrt(1 - z * z), new(i * Math.PI * (3 - Math.Sqrt(5)))), z);
    });

    // The gap does not change where both move alike, and a move away along z adds its length to the gap of two flat faces.
    [Fact]
    public void A_shifted_solid_keeps_its_shape()
    {
        var (disc, box) = (ConvexSolid.Sector(Angle.Zero, Angle.FromDegrees(120), 20, 3), ConvexSolid.Box(new(1, 1, 8), new(4, 4, 9)));
        Assert.Equal(5, SolidGap.Between(disc, box), 1e-6);
        Vector3 by = new(7, -3, 11);
        Assert.Equal(5, SolidGap.Between(disc.Shifted(by), box.Shifted(by)), 1e-6);
        Assert.Equal(9, SolidGap.Between(disc.Shifted(new(0, 0, -4)), box), 1e-6);
        Assert.Equal(disc.Reach, disc.Shifted(by).Reach, 1e-9);
        Assert.Same(disc, disc.Shifted(Vector3.Zero));
    }
}
