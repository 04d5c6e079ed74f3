using BracketGen.Geometry;
using BracketGen.SheetMetal.Bending;
using BracketGen.SheetMetal.Forming;
using BracketGen.SheetMetal.Patterns;
using CsCheck;

namespace BracketGen.SheetMetal.Tests.Forming;

/// <summary>Bends that are not parallel: points all over the first flange, carried in space, against the punch as a solid.</summary>
/// <remarks>The part is folded by <see cref="FoldedSheet"/> and laid under the punch by three points of it.</remarks>
public class SkewBendTests
{
    private static readonly Gen<(double Length, double Middle, double Turn, double Skew, double Second)> Cases = Gen.Select(
        Gen.Double[10, 70], Gen.Double[14, 50], Gen.Double[20, 135], Gen.Double[-60, 60], Gen.Double[20, 135]);

    /// <summary>A first flange 40 mm wide; the second bend lies askew to the first, on a middle flange that is long enough for both.</summary>
    private static FlatPattern Part(double length, double middle, double turn, double skew, double second)
    {
        var rule = new TestBendRule(0.4, "for this test");
        Bend Make(int number, FlatPoint start, FlatPoint end, double degrees) => new()
        {
            From = number, To = number + 1, Start = start, End = end, Turn = Angle.FromDegrees(degrees), InsideRadius = BentStrip.Radius,
            Allowance = rule.Allowance(Angle.FromDegrees(degrees), BentStrip.Radius, BentStrip.Thickness), Rule = rule,
        };

        // The second bend's near edge passes through the middle flange's end, turned by the skew; both bends are 40 mm long.
        var one = Make(0, new(length, 20), new(length, -20), turn);
        var across = Vector2.FromPolar(1, Angle.FromDegrees(skew));
        var near = new FlatPoint(length + one.Allowance + middle + 20 * Math.Abs(Math.Sin(Angle.FromDegrees(skew).Radians)), 0);
        var two = Make(1, near + 20 * across.Left, near - 20 * across.Left, second);
        FlatPoint Far(FlatPoint p, Bend b, double more) => p + (b.Allowance + more) * b.Across;
        Vector2[] corners =
        [
            new(0, -20), one.End.Vector, Far(one.End, one, 0).Vector, two.End.Vector, Far(two.End, two, 50).Vector, Far(two.Start, two, 50).Vector, two.Start.Vector,
            Far(one.Start, one, 0).Vector, one.Start.Vector, new(0, 20),
        ];
        return new() { Blank = new(Contour.Polygon(corners), []), Thickness = BentStrip.Thickness, Bends = [one, two] };
    }

    [Fact]
    public void The_first_flange_meets_the_punch_where_its_points_do() => BracketGen.TestSupport.Repeatable.Check(Cases, 60, c =>
    {
        var flat = Part(c.Length, c.Middle, c.Turn, c.Skew, c.Second);
        var result = BendSimulation.Of(flat, BentStrip.Stock, [BentStrip.Die], BentStrip.Tools(BentStrip.Straight));
        var meets = new[] { Nearest(flat, 0, 1), Nearest(flat, 1, 0) };

        // The second bend of either order; the first of each is one bend in a flat sheet and can always be made.
        var obstacles = result.Obstacles.Where(o => o.What == Obstruction.Punch).Select(o => o.Bend).ToHashSet();
        if (result.Plan is { } plan)
        {
            Assert.True(meets[plan.Steps[1].Bend == 1 ? 0 : 1] > BendSimulation.Clearance - 0.25, $"{string.Join(" and ", meets)} mm, bent all the same.");
        }
        else if (result.Obstacles.All(o => o.What == Obstruction.Punch))
        {
            Assert.Equal(2, obstacles.Count);
            Assert.True(meets.Max() < BendSimulation.Clearance + StrokeSlack, $"{string.Join(" and ", meets)} mm, not bent.");
        }
    });

    // Points are up to 3 mm apart, and move by up to 2.5 mm from angle to angle.
    private const double StrokeSlack = 3;

    // The shortest distance of any point of the flange made first from the punch while the other bend is made (mm; negative inside).
    private static double Nearest(FlatPattern flat, int made, int number)
    {
        Bend bend = flat.Bends[number], first = flat.Bends[made];
        var flange = flat.FlangeRegion(made == 0 ? 0 : 2);
        var bounds = flange.Outline.Bounds;
        List<FlatPoint> points = [.. flange.Outline.Flatten().Select(p => new FlatPoint(p))];
        for (var x = bounds.Min.X; x <= bounds.Max.X; x += 3)
        {
            for (var y = bounds.Min.Y; y <= bounds.Max.Y; y += 3)
            {
                if (flange.Contains(new(x, y)))
                {
                    points.Add(new(x, y));
                }
            }
        }

        var most = (bend.Turn + Springback.Allowance(bend.Turn, bend.InsideRadius, BentStrip.Steel, flat.Thickness) + BendSimulation.Reserve).Radians;
        var least = double.PositiveInfinity;
        for (var i = 1; i <= 40; i++)
        {
            var turn = most * i / 40;
            var radius = bend.Allowance / turn - (bend.Allowance / bend.Turn.Radians - bend.InsideRadius);
            var folded = new FoldedSheet(flat with { Bends = flat.Bends.SetItem(number, bend with { Turn = new(turn), InsideRadius = radius }) }, Frame.Identity);

            // Under the punch: the middle of the strip's inside is the tip, the legs go up evenly to both sides of it.
            var tip = folded.Fold(bend.Middle + bend.Allowance / 2 * bend.Across, flat.Thickness);
            var up = folded.TopAt(bend.Middle + bend.Allowance / 2 * bend.Across);
            var along = (folded.Fold(bend.End + bend.Allowance / 2 * bend.Across, flat.Thickness) - tip).Unit;
            var across = along.Cross(up);
            foreach (var point in points)
            {
                foreach (var height in new[] { 0, flat.Thickness })
                {
                    var p = folded.Fold(point, height) - tip;
                    least = Math.Min(least, FromPunch(new(p.Dot(across), p.Dot(up))));
                }
            }
        }

        return least;
    }

    private static readonly Contour Outline = Contour.Polygon([.. BentStrip.Straight.Profile.Select(c => new Vector2(c.Across, c.Up))]);

    private static double FromPunch(Vector2 p) =>
        Math.Abs(p.X) > 30 || p.Y > BentStrip.Straight.Height ? double.PositiveInfinity : Outline.Contains(p) ? -Outline.DistanceTo(p) : Outline.DistanceTo(p);
}
