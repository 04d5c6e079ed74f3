using BracketGen.Geometry;
using BracketGen.SheetMetal.Cutting;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Buffer;

namespace BracketGen.SheetMetal.Tests;

/// <summary>The way of the beam's middle: half the kerf into the scrap, or the place where the beam does not fit.</summary>
public class CutPathTests
{
    private static readonly Contour Plate = Contour.Polygon([new(0, 0), new(30, 0), new(30, 20), new(0, 20)]);

    private static readonly Region Drilled = new(Plate, [Contour.Circle(new(8, 10), 3), Contour.Circle(new(22, 10), 5)]);

    // By hand, kerf 1: outside of the 30 by 20 plate lie strips of half the kerf and four quarter circles (Steiner's formula), and each
    // hole's path is half the kerf smaller in radius.
    [Fact]
    public void Runs_half_the_kerf_outside_of_the_outline_and_inside_of_the_holes()
    {
        var path = CutPath.Of(Drilled, 1);
        Assert.Equal(1, path.Kerf);
        Assert.Null(path.Stuck);
        Assert.Empty(path.Tight);
        Assert.Equal(600 + 100 * 0.5 + Math.PI * 0.25, path.Contours!.Outline.SignedArea, 1e-9);
        Assert.Equal(100 + Math.PI, path.Contours.Outline.Perimeter, 1e-9);
        Assert.Equal(
            [(new Vector2(8, 10), 2.5), (new Vector2(22, 10), 4.5)],
            path.Contours.Holes.Select(h => Assert.IsType<ArcSegment>(Assert.Single(h.Segments))).Select(a => (a.Centre, a.Radius)));
        Assert.All(path.Contours.Holes, h => Assert.True(h.SignedArea < 0, "A hole's path runs clockwise."));
    }

    [Fact]
    public void A_blank_without_holes_has_a_path_without_holes()
    {
        var path = CutPath.Of(new(Plate, []), 0.2);
        Assert.Empty(path.Contours!.Holes);
        Assert.Equal(600 + 100 * 0.1 + Math.PI * 0.01, path.Contours.Area, 1e-9);
    }

    // NetTopologySuite's buffer of the metal by half the kerf is the sheet that the beam leaves nothing of outside.
    [Fact]
    public void Agrees_with_NetTopologySuite_s_buffer()
    {
        const double kerf = 0.6, chord = 1e-4;
        var outline = TangentOutline.Around([new(new(0, 0), 12), new(new(40, 5), 9), new(new(18, 30), 7)]);
        Region blank = new(outline, [Contour.Circle(new(0, 0), 4), TangentOutline.Around([new(new(36, 5), 2), new(new(42, 5), 2)])]);
        var polygon = new Polygon(Ring(blank.Outline), [.. blank.Holes.Select(Ring)]);
        var expected = polygon.Buffer(kerf / 2, new BufferParameters(128) { SimplifyFactor = 1e-6 });
        var found = CutPath.Of(blank, kerf).Contours!;
        Assert.Equal(expected.Area, found.Area, 1e-4 * expected.Length);
        Assert.Equal(expected.Length, found.CutLength, 1e-2);

        LinearRing Ring(Contour contour)
        {
            var points = contour.Flatten(chord).Select(p => new Coordinate(p.X, p.Y)).ToList();
            return new([.. points, points[0].Copy()]);
        }
    }

    // By hand: a beam of 1 mm leaves the inside corner (30, 20) of the outline and the four of the hole; its middle runs round 3 by 3 mm there.
    [Fact]
    public void Tells_every_inside_corner_tighter_than_the_beam_those_of_the_outline_first()
    {
        var angle = Contour.Polygon([new(0, 0), new(40, 0), new(40, 20), new(30, 20), new(30, 30), new(0, 30)]);
        var square = Contour.Polygon([new(10, 8), new(14, 8), new(14, 12), new(10, 12)]);
        var path = CutPath.Of(new(angle, [square]), 1);
        Assert.Equal(new(30, 20), path.Tight[0]);
        Assert.Equal(
            [new(10, 8), new(10, 12), new(14, 8), new(14, 12)],
            path.Tight.Skip(1).OrderBy(p => p.X).ThenBy(p => p.Y));
        Assert.Equal(9, -Assert.Single(path.Contours!.Holes).SignedArea, 1e-9);
    }

    // A hole of radius 0.5 is as large as the beam, which needs more; the outline and the first hole it gets round.
    [Theory]
    [InlineData(0.5, true)]
    [InlineData(0.4, true)]
    [InlineData(0.51, false)]
    public void Tells_the_first_place_where_the_beam_does_not_fit(double radius, bool stuck)
    {
        Region blank = new(Plate, [Contour.Circle(new(8, 10), 3), Contour.Circle(new(20, 6), radius), Contour.Circle(new(26, 16), radius)]);
        var path = CutPath.Of(blank, 1);
        Assert.Equal(1, path.Kerf);
        Assert.Equal(stuck, path.Contours is null);
        Assert.Equal(stuck, path.Stuck is not null);
        if (path.Stuck is { } place)
        {
            Assert.InRange(place.DistanceTo(new(20, 6)), 0, radius + 1e-9);
            Assert.Empty(path.Tight);
        }
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-0.2)]
    [InlineData(double.NaN)]
    public void A_kerf_that_is_not_positive_is_refused(double kerf) =>
        Assert.Throws<ArgumentException>(() => CutPath.Of(Drilled, kerf));

    [Fact]
    public void Paths_are_equal_when_all_that_is_in_them_is()
    {
        FlatPoint corner = new(10, 8), place = new(1, 2);
        CutPath path = new(0.2, new(Plate, []), [corner], place), same = new(0.2, new(Plate, []), [corner], place);
        Assert.True(path.Equals(same));
        Assert.Equal(path.GetHashCode(), same.GetHashCode());
        CutPath[] others =
        [
            same with { Kerf = 0.3 }, same with { Contours = Drilled }, same with { Contours = null }, same with { Tight = [] },
            same with { Tight = [place] }, same with { Stuck = null }, same with { Stuck = corner },
        ];
        Assert.All(others, o => Assert.False(path.Equals(o)));
        Assert.All(others, o => Assert.False(o.Equals(path)));
        Assert.False(path.Equals(null));
    }
}
