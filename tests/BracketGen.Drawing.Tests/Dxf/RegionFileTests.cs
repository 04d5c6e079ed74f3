using BracketGen.Drawing.Dxf;
using BracketGen.Drawing.Dxf.Model;
using BracketGen.Geometry;
using BracketGen.Profiles.Family;
using BracketGen.Profiles.Forms;
using BracketGen.Profiles.Sections;
using BracketGen.TestSupport;
using BracketGen.Units;
using BracketGen.Words.Report;

namespace BracketGen.Drawing.Tests.Dxf;

/// <summary>Flat pieces written, read with ezdxf, and compared in area, cut length and order of cutting.</summary>
public class RegionFileTests
{
    private const double Inch = 25.4;

    private static readonly IReadOnlyDictionary<string, Region> Handmade = new Dictionary<string, Region>
    {
        ["plate"] = new(
            Contour.Polygon([new(0, 0), new(80, 0), new(80, 50), new(0, 50)]),
            [Contour.Circle(new(20, 25), 3.3), RandomShapes.Slot(new(55, 25), 3.3, 12, new(0.4))]),
        ["washer"] = new(Contour.Circle(new(-7, 3), 12), [Contour.Circle(new(-7, 3), 4)]),
        ["circle of two halves"] = new(
            new Contour([new ArcSegment(new(5, 5), 9, Angle.Right, Angle.Straight), new ArcSegment(new(5, 5), 9, -Angle.Right, Angle.Straight)]),
            []),
        ["half disc"] = new(new Contour([new LineSegment(new(-9, 0), new(9, 0)), RandomShapes.Bulged(new(9, 0), new(-9, 0), 1)]), []),
        ["flat on a shaft"] = new(new Contour([Arc(30, 300), new LineSegment(Arc(30, 300).End, Arc(30, 300).Start)]), []),
        ["almost a circle"] = new(new Contour([Arc(1, 358), new LineSegment(Arc(1, 358).End, Arc(1, 358).Start)]), []),
        ["hollow side"] = new(
            new Contour([new LineSegment(new(0, 0), new(40, 0)), RandomShapes.Bulged(new(40, 0), new(40, 30), -0.7),
                new LineSegment(new(40, 30), new(0, 30)), new LineSegment(new(0, 30), new(0, 0))]),
            []),
    };

    [SkippableFact]
    public void Handmade_pieces_keep_area_and_cut_length() => Compare(Handmade);

    [SkippableFact]
    public void Random_pieces_keep_area_and_cut_length() => Compare(
        RandomShapes.Region.Draw(LongRun.Of(300)).Select((region, i) => (Name: $"random {i:000}", region)).ToDictionary(t => t.Name, t => t.region));

    [Fact]
    public void Holes_come_first_and_round_ones_are_circles()
    {
        var entities = RegionEntities.Of(Handmade["plate"], DxfLayers.CutThrough);
        Assert.Equal(3, entities.Length);
        Assert.Equal(new DxfCircle(DxfLayers.CutThrough, new(20, 25), 3.3), entities[0]);
        Assert.Equal(4, Assert.IsType<DxfPolyline>(entities[1]).Vertices.Length);
        Assert.Equal(new Vector2(0, 0), Assert.IsType<DxfPolyline>(entities[2]).Vertices[0].Point);
        Assert.IsType<DxfCircle>(Assert.Single(RegionEntities.Of(Handmade["circle of two halves"], DxfLayers.CutThrough)));
    }

    [Fact]
    public void A_bulge_is_the_tangent_of_a_quarter_of_the_sweep()
    {
        // DXF Reference, LWPOLYLINE, group 42: 0 a straight line, 1 a half circle, negative where clockwise.
        var slot = Assert.IsType<DxfPolyline>(RegionEntities.Of(RandomShapes.Slot(Vector2.Zero, 2, 9, Angle.Zero), DxfLayers.CutThrough));
        Assert.Equal([0, 0, 1, 1], slot.Vertices.Select(v => Math.Round(v.Bulge, 14)).Order());
        var back = Assert.IsType<DxfPolyline>(
            RegionEntities.Of(RandomShapes.Slot(Vector2.Zero, 2, 9, Angle.Zero).Reversed, DxfLayers.CutThrough));
        Assert.Equal([-1, -1, 0, 0], back.Vertices.Select(v => Math.Round(v.Bulge, 14)).Order());
    }

    [Fact]
    public void Large_arcs_are_split_before_the_bulge_blows_up()
    {
        var flat = Assert.IsType<DxfPolyline>(RegionEntities.Of(Handmade["flat on a shaft"].Outline, DxfLayers.CutThrough));
        Assert.Equal(3, flat.Vertices.Length);
        Assert.Equal(Math.Tan(Math.PI * 150 / 180 / 4), flat.Vertices[0].Bulge, 1e-14);
    }

    [Fact]
    public void What_has_no_length_is_left_out()
    {
        var square = new Contour([
            new LineSegment(new(0, 0), new(10, 0)), new LineSegment(new(10, 0), new(10, 5e-8)), new LineSegment(new(10, 5e-8), new(10, 10)),
            new LineSegment(new(10, 10), new(0, 10)), new LineSegment(new(0, 10), new(0, 0))]);
        Assert.Equal(4, Assert.IsType<DxfPolyline>(RegionEntities.Of(square, DxfLayers.CutThrough)).Vertices.Length);
    }

    private static ArcSegment Arc(double fromDegrees, double sweepDegrees) =>
        new(new(3, -2), 15, Angle.FromDegrees(fromDegrees), Angle.FromDegrees(sweepDegrees));

    private static void Compare(IReadOnlyDictionary<string, Region> regions)
    {
        (string Name, DxfVersion Version, DxfUnits Units)[] ways =
            [("mm", DxfVersion.R2000, DxfUnits.Millimetres), ("inch", DxfVersion.R2000, DxfUnits.Inches), ("old", DxfVersion.R12, DxfUnits.Millimetres)];

        // Each piece is written one way, and the first few every way, to keep the run short.
        var files = regions
            .SelectMany((r, i) => ways.Where((_, w) => i < 10 || w == i % ways.Length).Select(way => (Key: $"{r.Key} {way.Name}", Region: r.Value, way)))
            .ToList();
        var read = ReadBack.Of(files.Select(f => (f.Key, new DxfWriter(f.way.Version).Write(new(
            f.way.Units, DxfLayers.All, RegionEntities.Of(f.Region, DxfLayers.CutThrough))))));
        Assert.Equal(files.Count, read.Count);
        foreach (var (key, region, way) in files)
        {
            var seen = read[key];
            Assert.True(seen.Problems.Length == 0, $"{key}: {string.Join("; ", seen.Problems)}");
            Assert.Equal(way.Version == DxfVersion.R12 ? "AC1009" : "AC1015", seen.Version);
            var unit = way.Units == DxfUnits.Inches ? Inch : 1;

            Assert.Equal(region.Holes.Length + 1, seen.Entities.Length);
            Assert.All(seen.Entities, e =>
            {
                Assert.Equal("CUT_THROUGH", e.Layer);
                Assert.True(e.Closed);
                Assert.InRange(e.Gap * unit, 0, 1e-6);
                Assert.True(e.Shortest * unit > Tolerance.Point);
            });
            Relative(region.Area, seen.Entities[^1].Area * unit * unit - seen.Entities[..^1].Sum(e => Math.Abs(e.Area)) * unit * unit, unit * region.CutLength, key);
            Relative(region.CutLength, seen.Entities.Sum(e => e.Length) * unit, unit * region.Contours.Sum(c => c.Segments.Length), key);

            var bounds = region.Outline.Bounds;
            foreach (var (expected, actual) in new[] { bounds.Min, bounds.Max }.Zip(seen.Extents))
            {
                Assert.True(expected.DistanceTo(new(actual[0] * unit, actual[1] * unit)) < 1e-9 * unit);
            }
        }
    }

    // Coordinates are rounded to 1e-9 of the file's unit: an area may be off by that along its outline, a length by that at every piece.
    private static void Relative(double expected, double actual, double rounded, string what) =>
        Assert.True(Math.Abs(actual - expected) <= 1e-9 * (expected + 2 * rounded), $"{what}: {actual:R} is not {expected:R}.");
}
