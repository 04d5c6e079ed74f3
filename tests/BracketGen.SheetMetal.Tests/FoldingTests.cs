using BracketGen.Geometry;
using BracketGen.SheetMetal.Bending;
using BracketGen.SheetMetal.Patterns;
using BracketGen.TestSupport;
using CsCheck;

namespace BracketGen.SheetMetal.Tests;

/// <summary>Folding: rigid on flanges, of the right length in bends, and the way up it says.</summary>
public class FoldingTests
{
    private static FlatPattern Strip(double turn, double radius, double thickness = 2)
    {
        var allowance = new Din6935Rule().Allowance(Angle.FromDegrees(turn), radius, thickness);
        return new()
        {
            Blank = new(Contour.Polygon([new(0, 0), new(60 + allowance, 0), new(60 + allowance, 20), new(0, 20)]), []),
            Thickness = thickness,
            Bends =
            [
                new()
                {
                    From = 0, To = 1, Start = new(30, 20), End = new(30, 0), Turn = Angle.FromDegrees(turn), InsideRadius = radius,
                    Allowance = allowance, Rule = new Din6935Rule(),
                },
            ],
        };
    }

    // An L of 30 mm flanges, t = 2, r = 3, bent up by 90°: the second flange's tip stands 30 mm above the bend's end, its outside
    // 3 + 2 mm past the bend's start. Simple geometry, no source needed.
    [Fact]
    public void Right_angle_up()
    {
        var flat = Strip(90, 3);
        var folded = new FoldedSheet(flat, Frame.Identity);
        var tipOutside = folded.Fold(new(flat.Blank.Outline.Bounds.Max.X, 10), 0);
        Assert.Equal(35, tipOutside.X, 1e-9);
        Assert.Equal(10, tipOutside.Y, 1e-9);
        Assert.Equal(30 + 3 + 2, tipOutside.Z, 1e-9);
        var tipInside = folded.Fold(new(flat.Blank.Outline.Bounds.Max.X, 10), 2);
        Assert.Equal(33, tipInside.X, 1e-9);
    }

    [Fact]
    public void Right_angle_down()
    {
        var flat = Strip(-90, 3);
        var folded = new FoldedSheet(flat, Frame.Identity);
        var tip = folded.Fold(new(flat.Blank.Outline.Bounds.Max.X, 10), 2);
        Assert.Equal(35, tip.X, 1e-9);
        Assert.Equal(-33, tip.Z, 1e-9);
    }

    private static readonly Gen<(double Turn, double Radius, FlatPoint A, FlatPoint B)> Cases = Gen.Select(
        Gen.Double[5, 150], Gen.Bool, Gen.Double[0.5, 8], Gen.Double[0, 1], Gen.Double[0, 1],
        (turn, up, radius, a, b) => (up ? turn : -turn, radius, new FlatPoint(60 * a, 20 * b), new FlatPoint(60 * b, 20 * a)));

    [Fact]
    public void Flanges_stay_rigid_and_the_sheet_stays_whole() => BracketGen.TestSupport.Repeatable.Check(Cases, 2000, c =>
    {
        var flat = Strip(c.Turn, c.Radius);
        var folded = new FoldedSheet(flat, Frame.FromZX(new(3, 4, 5), new(1, 2, 3), new(0, 1, 0)));
        if (flat.ZoneOf(c.A) is { Bend: null } zone && flat.ZoneOf(c.B) == zone)
        {
            Assert.Equal(c.A.DistanceTo(c.B), folded.Fold(c.A, 0.5).DistanceTo(folded.Fold(c.B, 0.5)), 1e-9);
        }

        // Thickness is kept everywhere, and nothing jumps at the bend's edges.
        Assert.Equal(2, folded.Fold(c.A, 0).DistanceTo(folded.Fold(c.A, 2)), 1e-9);
        var bend = flat.Bends[0];
        foreach (var depth in new[] { 0, bend.Allowance })
        {
            var edge = bend.Start + depth * bend.Across - 7 * new Vector2(0, 1);
            Assert.Equal(0, folded.Fold(edge - 1e-9 * bend.Across, 1).DistanceTo(folded.Fold(edge + 1e-9 * bend.Across, 1)), 1e-7);
        }

        // The inside of the bend lies at its radius from the axis.
        var (point, axis) = folded.AxisOf(bend);
        var inside = folded.Fold(bend.Start + 0.3 * bend.Allowance * bend.Across, bend.IsUp ? 2 : 0);
        var toAxis = inside - point;
        Assert.Equal(c.Radius, (toAxis - toAxis.Dot(axis) * axis).Length, 1e-9);
    });

    [Fact]
    public void The_mirror_image_folds_to_the_mirror_image() => BracketGen.TestSupport.Repeatable.Check(Cases, 500, c =>
    {
        var folded = new FoldedSheet(Strip(c.Turn, c.Radius), Frame.FromZX(new(3, 4, 5), new(1, 2, 3), new(0, 1, 0)));
        var mirrored = folded.Mirrored();
        Assert.Equal(0, folded.Fold(c.A, 1.5).Mirrored().DistanceTo(mirrored.Fold(new(-c.A.X, c.A.Y), 1.5)), 1e-9);
        Assert.Equal(folded.Flat.Blank.Area, mirrored.Flat.Blank.Area, 1e-9);
    });

    [Fact]
    public void Flange_regions_and_bend_make_up_the_blank() => BracketGen.TestSupport.Repeatable.Check(Cases, 200, c =>
    {
        var flat = Strip(c.Turn, c.Radius);
        var bend = flat.Bends[0];
        Assert.Equal(
            flat.Blank.Area, flat.FlangeRegion(0).Area + flat.FlangeRegion(1).Area + bend.Allowance * bend.Length, 1e-9);
    });
}
