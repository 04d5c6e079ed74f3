using BracketGen.Geometry;
using CsCheck;

namespace BracketGen.Photo.Tests;

/// <summary>Camera and homography beside OpenCV 4.6.0 (projectPoints, undistortPointsIter, findHomography; Debian 12), numbers copied from its output.</summary>
public sealed class CameraTests
{
    private const double Half = 2500, Focal = 3300;

    private static readonly Camera Reference = new(
        [0.12, -0.31, 0.05, 12, -7, 520, Math.Log(Focal), 2011, 1483, -0.04, 0.02, 1], (new(1, 0, 0), new(0, -1, 0), new(0, 0, -1)), Half);

    [Theory]
    [InlineData(-80, -105, 0, 1552.557803099, 2107.709646128)]
    [InlineData(80, -105, 0, 2536.365706681, 2117.579889482)]
    [InlineData(80, 105, 0, 2549.476250312, 859.533210265)]
    [InlineData(-80, 105, 0, 1618.106326283, 730.978602701)]
    [InlineData(-50, 12, 24, 1821.311958068, 1313.104516112)]
    [InlineData(31, 9, 28.5, 2341.814701758, 1371.870713281)]
    public void A_point_is_seen_where_OpenCV_sees_it(double x, double y, double z, double u, double v)
    {
        var seen = Reference.See(new(x, y, z));

        Assert.Equal(u, seen.X, 6);
        Assert.Equal(v, seen.Y, 6);

        // And from there back, at its height.
        var back = Reference.Find(new(u, v), z);
        Assert.Equal(0, (back - new Vector3(x, y, z)).Length, 6);
    }

    [Theory]
    [InlineData(1552.557803099, 2107.709646128, 1550.8627031, 2110.0195236)]
    [InlineData(2549.476250312, 859.533210265, 2551.7147509, 856.9413953)]
    [InlineData(2341.814701758, 1371.870713281, 2342.0706301, 1371.7847403)]
    public void Distortion_is_taken_out_as_OpenCV_takes_it_out(double u, double v, double straightU, double straightV)
    {
        var straight = Reference.Straight(new(u, v));

        Assert.Equal(straightU, straight.X, 6);
        Assert.Equal(straightV, straight.Y, 6);
    }

    [Fact]
    public void The_camera_stands_where_OpenCV_has_it()
    {
        Assert.Equal(0, (Reference.Eye - new Vector3(-167.57733432, -72.53267801, 487.08299872)).Length, 7);
        Assert.Equal(0, (Reference.Ahead - new Vector3(0.30122271, 0.12543003, -0.94526832)).Length, 7);
    }

    [Theory]
    [InlineData(-50, 12, 1138.159799, 1382.033222)]
    [InlineData(0, 0, 1540.276361, 1491.102290)]
    [InlineData(31, -9, 1783.557193, 1571.041271)]
    public void Four_points_give_the_homography_of_OpenCV(double x, double y, double u, double v)
    {
        var map = Homography.Of(
            [new(-80, -105), new(80, -105), new(80, 105), new(-80, 105)], [new(812.4, 2590.7), new(2210.3, 2488.1), new(2093.6, 655.2), new(934.9, 590.3)]);

        // OpenCV works out a homography to about a ten-thousandth of a pixel; ours goes through the four points to round-off.
        Assert.Equal(u, map.Map(new(x, y)).X, 3);
        Assert.Equal(v, map.Map(new(x, y)).Y, 3);
        Assert.Equal(0, map.Map(new(80, 105)).DistanceTo(new(2093.6, 655.2)), 8);
    }

    [Fact]
    public void The_camera_is_found_again_from_exact_marks() => Check.Sample(
        Gen.Select(Gen.Double[-0.5, 0.5], Gen.Double[-0.5, 0.5], Gen.Double[300, 900], Gen.Double[0.75, 1.4]),
        (a, b, far, focal) =>
        {
            var rows = (new Vector3(1, 0, 0), new Vector3(0, -1, 0), new Vector3(0, 0, -1));
            var truth = new Camera([a, b, 0.1, 5, -8, far, Math.Log(4000 * focal), 2000, 1500, 0, 0, 1], rows, 2500);
            var photograph = new Photograph(
                4000, 3000, [.. PrintedTarget.Marks.Select((m, i) => new PhotoMark(i + 1, m, 0.01, [truth.See(Vector3.From(m))]))], new(1, 1e-6), new(truth.Eye.Length, 1));

            var found = CameraFit.Of(photograph, 0.01);

            Assert.NotNull(found);
            return found.Camera.Eye.DistanceTo(truth.Eye) < 0.02 * far && found.Marks.Max(m => m.Off) < 0.5;
        },
        iter: 100, threads: 1);

    [Fact]
    public void A_circle_through_points_of_a_short_arc_is_the_circle() => Check.Sample(
        Gen.Select(Gen.Double[5, 200], Gen.Double[0.3, 6], Gen.Double[-500, 500]),
        (radius, arc, x) =>
        {
            var centre = new Vector2(x, -x / 3);
            var circle = CircleThrough.Of([.. Enumerable.Range(0, 7).Select(i => centre + Vector2.FromPolar(radius, new(arc * i / 6)))])!.Value;
            return circle.Centre.DistanceTo(centre) < 1e-6 * radius && Math.Abs(circle.Radius - radius) < 1e-6 * radius;
        },
        iter: 200, threads: 1);

    [Fact]
    public void Points_in_line_are_no_circle() => Assert.Null(CircleThrough.Of([new(0, 0), new(10, 10.001), new(20, 20)]));
}
