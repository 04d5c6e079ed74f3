namespace BracketGen.Geometry.Tests;

/// <summary>The plane nearest to points, held against the singular value decomposition of NumPy.</summary>
public class PlaneFitTests
{
    // NumPy 1.24.2: c = P.mean(0); u, s, v = numpy.linalg.svd(P - c); normal v[2].
    [Fact]
    public void The_normal_is_the_last_singular_vector()
    {
        Vector3[] points = [new(-50, -22, -24.1), new(-50, 12, -23.8), new(-18, -22, -24.3), new(-20, 15, -23.9), new(-35, -4, -24.0)];
        var plane = PlaneFit.Of(points, new(0, 0, 1), 1)!.Value;
        Same(new(-34.6, -4.2, -24.02), plane.Point);
        Same(new(0.005348138323462872, -0.009748201530076106, 0.9999381830810352), plane.Normal);
        double[] residuals = [0.011161602407541812, -0.020295794690734503, -0.017685607857852614, 0.010909932114821927, 0.015909868026219916];
        Assert.All(points.Zip(residuals), p => Assert.Equal(p.Second, plane.HeightOf(p.First), 1e-12));
    }

    [Fact]
    public void A_tilted_plane_far_from_its_points_is_found_too()
    {
        Vector3[] points = [new(3, 1, 2), new(40, 5, -7), new(12, 33, 9), new(-8, 20, 31)];
        var plane = PlaneFit.Of(points, new(-1, 0, 0), 1)!.Value;
        Same(new(11.75, 14.75, 8.75), plane.Point);
        Same(-new Vector3(0.5078661016538556, -0.3159994603539286, 0.8013840301921054), plane.Normal);
    }

    [Fact]
    public void Points_on_a_line_or_two_points_decide_no_plane()
    {
        Assert.Null(PlaneFit.Of([new(0, 0, 0), new(30, 0, 0)], new(0, 0, 1), 1));
        Assert.Null(PlaneFit.Of([new(0, 0, 0), new(30, 0.2, 0), new(60, 0, 0.1)], new(0, 0, 1), 1));
    }

    [Fact]
    public void The_box_of_all_plus_minus_is_half_as_wide_as_its_support()
    {
        var off = new PointPlusMinus(0.3, 0.2, 0.5);
        Assert.Equal(0.5, off.Along(new(0, 0, -1)));
        Assert.Equal(0.6 * 0.3 + 0.8 * 0.5, off.Along(new(0.6, 0, -0.8)), 1e-12);
        Assert.True(default(PointPlusMinus).IsExact);
    }

    private static void Same(Vector3 expected, Vector3 found) => Assert.True(expected.DistanceTo(found) < 1e-12, $"{expected}, found {found}");
}
