using BracketGen.Geometry;
using BracketGen.SheetMetal.Bending;
using BracketGen.TestSupport;
using CsCheck;
using NetTopologySuite.Algorithm;
using NetTopologySuite.Algorithm.Distance;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Buffer;
using NetTopologySuite.Operation.Union;
using static BracketGen.SheetMetal.Tests.BlankLayout;
using Shape = NetTopologySuite.Geometries.Geometry;

namespace BracketGen.SheetMetal.Tests;

/// <summary>Random outlines of blanks held against NetTopologySuite and against brute force.</summary>
public class RandomBlankTests
{
    /// <summary>A bend as it was laid: by the middle of its line, the way across and half its length.</summary>
    private sealed record Laid(int From, int To, Vector2 Middle, Vector2 Way, double Half, double Allowance)
    {
        public Bend Bend => Across(From, To, new(Middle + Half * Way.Left), new(Middle - Half * Way.Left), Allowance);

        /// <summary>Corners of its strip and of <paramref name="straight"/> on either side: two before it, two behind it.</summary>
        public Vector2[] Corners(double straight) =>
        [
            Middle - straight * Way + Half * Way.Left, Middle - straight * Way - Half * Way.Left,
            Middle + (Allowance + straight) * Way - Half * Way.Left, Middle + (Allowance + straight) * Way + Half * Way.Left,
        ];

        /// <summary>How far a point lies across its line, as NetTopologySuite measures from a line.</summary>
        public double OffLine(Vector2 p)
        {
            Vector2 a = Middle + Half * Way.Left, b = Middle - Half * Way.Left;
            return -DistanceComputer.PointToLinePerpendicularSigned(Of(p), Of(a), Of(b));
        }
    }

    private sealed record RandomLayout(Laid[] Laid, Disc[][] Discs, double Straight, double Radius)
    {
        public BlankLayout Layout => new([.. Laid.Select(b => b.Bend)], Discs);
    }

    private static Coordinate Of(Vector2 p) => new(p.X, p.Y);

    private static Gen<RandomLayout> Layouts(double reach) => Gen.Select(Gen.Int[0, 3], Gen.Double[0, 1].Array[64]).Select(g =>
    {
        var (bends, at) = (g.Item1, 0);
        double Next(double low, double high) => low + g.Item2[at++] * (high - low);
        var straight = Next(1, 3);
        var (middles, ways, laid) = (new List<Vector2> { default }, new List<double> { 0 }, new List<Laid>());
        for (var i = 0; i < bends; i++)
        {
            var from = (int)Next(0, i + 0.999);
            var angle = from == 0 ? Next(0, 2 * Math.PI) : ways[from] + Next(-1.2, 1.2);
            var way = Vector2.FromPolar(1, new(angle));
            Laid bend = new(from, i + 1, middles[from] + Next(12, 22) * way, way, Next(4, 12), Next(1, 5));
            laid.Add(bend);
            ways.Add(angle);
            middles.Add(bend.Middle + (bend.Allowance + Next(8, 18)) * way);
        }

        var discs = middles.Select(m => Enumerable.Range(0, (int)Next(1, 3.999))
            .Select(_ => new Disc(m + new Vector2(Next(-reach, reach), Next(-reach, reach)), Next(1.5, 5))).ToArray()).ToArray();
        return new RandomLayout([.. laid], discs, straight, Next(0.1, 0.45) * straight);
    });

    [Fact]
    public void Whether_all_keeps_apart_agrees_with_the_distances_of_many_points()
    {
        var outcomes = new int[2];
        Layouts(8).Check(400, layout =>
        {
            // The tightest of all distances, from points on the rims of the discs and the corners of the bends.
            var room = double.PositiveInfinity;
            foreach (var bend in layout.Laid)
            {
                var beyond = new HashSet<int> { bend.To };
                foreach (var next in layout.Laid.Where(b => beyond.Contains(b.From)))
                {
                    beyond.Add(next.To);
                }

                Before(bend, Rims(bend.From));
                Behind(bend, beyond.SelectMany(Rims));
                Behind(bend, layout.Laid.Where(b => beyond.Contains(b.From)).SelectMany(b => b.Corners(layout.Straight)));
                foreach (var next in layout.Laid.Where(b => b.From == bend.To))
                {
                    Before(next, bend.Corners(layout.Straight).Skip(2));
                }
            }

            if (Math.Abs(room) > 0.01)
            {
                outcomes[room > 0 ? 1 : 0]++;
                Assert.Equal(room > 0, layout.Layout.KeepApart(layout.Straight));
            }

            IEnumerable<Vector2> Rims(int flange) => layout.Discs[flange].SelectMany(d => Rim(d, 60));
            void Before(Laid bend, IEnumerable<Vector2> points) =>
                room = points.Aggregate(room, (r, p) => Math.Min(r, -layout.Straight - bend.OffLine(p)));
            void Behind(Laid bend, IEnumerable<Vector2> points) =>
                room = points.Aggregate(room, (r, p) => Math.Min(r, bend.OffLine(p) - bend.Allowance - layout.Straight));
        });
        Assert.All(outcomes, n => Assert.InRange(n, 50, 350));
    }

    private static IEnumerable<Vector2> Rim(Disc disc, int count) =>
        Enumerable.Range(0, count).Select(i => disc.Centre + Vector2.FromPolar(disc.Radius, new(2 * Math.PI * i / count)));

    // Independent: convex hulls of points on the discs and of the bends' ends, the bends' strips between them, all joined by
    // NetTopologySuite. Its buffers out, in and out again round inside and outside corners; discs are larger than that rounding.
    [Fact]
    public void Random_outlines_agree_with_NetTopologySuite()
    {
        int drawn = 0, arcs = 0;
        Layouts(6).Check(50, random =>
        {
            var layout = random.Layout;
            var sharp = layout.Draw(0, random.Straight);
            var rounded = layout.Draw(random.Radius, random.Straight);
            Assert.Equal(sharp is null, rounded is null);
            Assert.False(sharp is not null && !layout.KeepApart(random.Straight));
            if (sharp is null || rounded is null)
            {
                return;
            }

            drawn++;
            Shape[] strips = [.. random.Laid.Select(b => Hull(b.Corners(random.Straight)))];
            Shape[] flanges = [.. random.Discs.Select((discs, i) => Hull([
                .. discs.SelectMany(d => Rim(d, 180)),
                .. random.Laid.Where(b => b.From == i).SelectMany(b => b.Corners(random.Straight).Take(2)),
                .. random.Laid.Where(b => b.To == i).SelectMany(b => b.Corners(random.Straight).Skip(2))]))];
            var expected = CascadedPolygonUnion.Union([.. strips, .. flanges]);
            Agree(expected, sharp, 2e-3);
            var fine = new BufferParameters(24) { SimplifyFactor = 1e-4 };
            Agree(expected.Buffer(random.Radius, fine).Buffer(-2 * random.Radius, fine).Buffer(random.Radius, fine), rounded, 5e-3);

            // Flanges that no bend joins lie apart, but for how exactly that is found out.
            for (var i = 0; i < flanges.Length; i++)
            {
                for (var j = i + 1; j < flanges.Length; j++)
                {
                    Assert.True(
                        random.Laid.Any(b => b.From == i && b.To == j) || flanges[i].Distance(flanges[j]) > random.Straight - 0.2,
                        $"Flanges {i} and {j} are too near each other.");
                }
            }

            Assert.All(random.Discs.SelectMany(d => d), d => Assert.True(
                rounded.Contains(d.Centre) && rounded.DistanceTo(d.Centre) > d.Radius - 1e-9, $"{d} lacks metal."));
            foreach (var bend in random.Laid)
            {
                // Over the bend itself the edges are the strip's own.
                Assert.All(bend.Corners(0), c => Assert.InRange(rounded.DistanceTo(c), 0, 1e-9));
            }

            arcs += rounded.Segments.Length - sharp.Segments.Length;
        });
        Assert.InRange(drawn, 15, 45);
        Assert.InRange(arcs, 50, 500);
    }

    private static Shape Hull(Vector2[] points) => new ConvexHull(points.Select(Of), GeometryFactory.Default).GetConvexHull();

    private static void Agree(Shape expected, Contour found, double within)
    {
        var points = found.Flatten(1e-3).Select(Of).ToList();
        Polygon polygon = new(new([.. points, points[0].Copy()]));
        Assert.True(polygon.IsValid, "The outline crosses itself.");
        Assert.True(found.SignedArea > 0, "The outline runs clockwise.");
        Assert.Equal(expected.Area, found.SignedArea, within * found.Perimeter);
        Assert.InRange(DiscreteHausdorffDistance.Distance(expected.Boundary, polygon.ExteriorRing), 0, within);
    }
}
