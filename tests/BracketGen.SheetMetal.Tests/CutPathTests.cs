using BracketGen.Geometry;

namespace BracketGen.SheetMetal.Tests;

/// <summary>The beam's way half a kerf off the edge, worked out on a rectangle with a round hole.</summary>
public class CutPathTests
{
    private static readonly Region Plate = new(
        Contour.Polygon([new(0, 0), new(40, 0), new(40, 20), new(0, 20)]), [Contour.Circle(new(10, 10), 3)]);

    /// <summary>Outside of the outline by r = 1 (Steiner: area + perimeter r + π r²) and inside of the hole, which the beam runs at 3 - 1.</summary>
    [Fact]
    public void Outside_of_the_outline_and_inside_of_the_holes()
    {
        var path = CutPath.Of(Plate, 2);
        Assert.Null(path.Stuck);
        Assert.Empty(path.Tight);
        Assert.Equal(2, path.Kerf);
        Assert.Equal(800 + 120 + Math.PI, path.Contours!.Outline.SignedArea, 1e-9);
        Assert.Equal(4 * Math.PI, -Assert.Single(path.Contours.Holes).SignedArea, 1e-9);
    }

    /// <summary>A kerf wider than the hole does not fit in it.</summary>
    [Fact]
    public void A_hole_smaller_than_the_cut_is_told()
    {
        var path = CutPath.Of(Plate, 6.5);
        Assert.Null(path.Contours);
        Assert.InRange(path.Stuck!.Value.DistanceTo(new(10, 10)), 0, 3.5);
        Assert.Throws<ArgumentException>(() => CutPath.Of(Plate, 0));
    }

    /// <summary>A notch leaves an inside corner that the round beam cannot reach: it is named, where it is.</summary>
    [Fact]
    public void Inside_corners_are_tight()
    {
        Region notched = new(Contour.Polygon([new(0, 0), new(40, 0), new(40, 20), new(20, 20), new(20, 10), new(0, 10)]), []);
        Assert.Equal(0, Assert.Single(CutPath.Of(notched, 1).Tight).DistanceTo(new(20, 10)), 1);
    }

    [Fact]
    public void Paths_are_equal_where_all_of_them_is()
    {
        CutPath path = CutPath.Of(Plate, 2), other = CutPath.Of(Plate, 2);
        Assert.Equal(path, other);
        Assert.Equal(path.GetHashCode(), other.GetHashCode());
        Assert.False(path.Equals(null));
        Assert.NotEqual(path, path with { Kerf = 3 });
        Assert.NotEqual(path, path with { Contours = null });
        Assert.NotEqual(path, path with { Tight = [new(1, 1)] });
        Assert.NotEqual(path, path with { Stuck = new(1, 1) });
    }
}
