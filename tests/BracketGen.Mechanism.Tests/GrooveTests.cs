using BracketGen.Design.Checks;
using BracketGen.Geometry;
using BracketGen.Mechanism.Grooves;
using BracketGen.TestSupport;
using BracketGen.Words.Report;
using CsCheck;

namespace BracketGen.Mechanism.Tests;

public class GrooveTests
{
    /// <summary>h, h', h + h'' and the arc belong together: checked by central differences, for every kind of groove.</summary>
    [Fact]
    public void Support_slope_curvature_and_arc_belong_together() =>
        Gen.Select(Cases.Grooves, Gen.Double[-9, 9]).Check(400, t =>
        {
            var (groove, at) = t;
            const double Step = 1e-4;
            Angle before = new(at - Step), here = new(at), after = new(at + Step);
            if (OnSeam(groove, at))
            {
                return;
            }

            Assert.Equal((groove.Support(after) - groove.Support(before)) / (2 * Step), groove.Slope(here), 1e-5);
            Assert.Equal(groove.RadiusOfCurvature(here), groove.ArcBetween(before, after) / (2 * Step), 1e-3);
            Assert.Equal(
                groove.RadiusOfCurvature(here),
                groove.Support(here) + (groove.Slope(after) - groove.Slope(before)) / (2 * Step), 1e-2);
            Assert.Equal(2 * Math.PI, (groove.NormalAt(new(at + 2 * Math.PI)) - groove.NormalAt(here)).Radians, 1e-9);
            Assert.Equal((groove.Support(here), groove.Slope(here)), groove.Tangent(here));
        });

    /// <summary>A table over part of a turn has a seam opposite its middle, where its two end circles meet.</summary>
    private static bool OnSeam(Groove groove, double normal) => groove is TabulatedGroove { IsClosed: false } table
        && Math.Abs(Math.Abs(new Angle(normal - Middle(table)).Normalised.Radians) - Math.PI) < 1e-3;

    private static double Middle(TabulatedGroove table) =>
        (table.NormalAt(table.Points[0].Polar) + table.NormalAt(table.Points[^1].Polar)).Radians / 2;

    [Fact]
    public void The_normal_at_a_polar_angle_is_that_of_the_point_there() =>
        Gen.Select(Cases.Grooves, Gen.Double[-3, 3]).Check(400, t =>
        {
            var point = t.Item1.PointWithNormal(t.Item1.NormalAt(new(t.Item2)));
            Assert.Equal(0, (point.Polar - new Angle(t.Item2)).Normalised.Radians, 1e-9);
        });

    [Fact]
    public void Mirroring_mirrors_every_point() => Gen.Select(Cases.Grooves, Gen.Double[-3, 3]).Check(300, t =>
    {
        if (OnSeam(t.Item1, t.Item2))
        {
            return;
        }

        var point = t.Item1.PointWithNormal(new(t.Item2));
        var mirrored = t.Item1.Mirrored().PointWithNormal(new(-t.Item2));
        Assert.True(mirrored.DistanceTo(new(point.X, -point.Y)) < 1e-9);
    });

    [Fact]
    public void A_grown_groove_runs_beside_the_first() =>
        Gen.Select(Cases.Grooves, Gen.Double[-3, 3], Gen.Double[0.1, 4]).Check(200, t =>
        {
            var (groove, normal, by) = (t.Item1, new Angle(t.Item2), t.Item3);
            var grown = groove.Grown(by);
            Assert.Equal(by, grown.PointWithNormal(normal).DistanceTo(groove.PointWithNormal(normal)), 1e-9);
            Assert.Equal(groove.Support(normal), grown.Grown(-by).Support(normal), 1e-12);
            if (groove is not TabulatedGroove { IsClosed: false })
            {
                Assert.Equal(2 * Math.PI * by, TurnOf(grown) - TurnOf(groove), 1e-6); // Steiner's formula for parallel curves
            }
        });

    /// <summary>Neighbouring curves share normals and centres of curvature: all radii grow alike. Nothing beside is the groove itself.</summary>
    [Fact]
    public void Growing_adds_to_every_radius_of_curvature() =>
        Gen.Select(Cases.Grooves, Gen.Double[-3, 3], Gen.Double[0.1, 4]).Check(100, t =>
        {
            var (groove, normal, by) = (t.Item1, new Angle(t.Item2), t.Item3);
            var grown = groove.Grown(by);
            Assert.Equal(groove.RadiusOfCurvature(normal) + by, grown.RadiusOfCurvature(normal), 1e-9);
            Assert.Equal((grown.Support(normal), grown.Slope(normal), grown.RadiusOfCurvature(normal)), grown.Local(normal));
            Assert.Equal(groove, groove.Grown(0));
            if (groove is WavyGroove)
            {
                Assert.Same(groove, groove.Grown(0));
            }
        });

    private static double TurnOf(Groove groove) => groove.ArcBetween(Angle.Zero, 2 * Angle.Straight);

    /// <summary>Closed form of the eccentric circle: its points lie at ρ from its centre, with the centre's normal.</summary>
    [Fact]
    public void The_eccentric_groove_is_a_circle_beside_the_shaft() => Gen.Double[-7, 7].Check(200, normal =>
    {
        EccentricGroove groove = new(30, 8, new(0.7));
        var centre = Vector2.FromPolar(8, new(0.7));
        var point = groove.PointWithNormal(new(normal));
        Assert.True(point.DistanceTo(centre + Vector2.FromPolar(30, new(normal))) < 1e-12);
    });

    [Fact]
    public void An_eccentric_groove_without_offset_is_the_constant_one()
    {
        Groove round = new CircularGroove(30), eccentric = new EccentricGroove(30, 0, new(1.2));
        for (var normal = -4.0; normal < 4; normal += 0.37)
        {
            Assert.Equal(round.PointWithNormal(new(normal)), eccentric.PointWithNormal(new(normal)));
            Assert.Equal(round.NormalAt(new(normal)), eccentric.NormalAt(new(normal)));
        }
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_table_goes_through_its_points(bool closed) => Cases.Wavy.Check(30, curve =>
    {
        var table = Cases.Table(curve, 20, closed, -2, closed ? Math.PI / 10 : 0.2);
        foreach (var (polar, radius) in table.Points)
        {
            var point = table.PointWithNormal(table.NormalAt(polar));
            Assert.True(point.DistanceTo(Vector2.FromPolar(radius, polar)) < 1e-9);
        }
    });

    /// <summary>A cubic spline's error falls with the fourth power of the step (de Boor 1978, ch. V): half the step, a sixteenth.</summary>
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Tables_of_an_eccentric_circle_close_in_on_it(bool closed)
    {
        EccentricGroove circle = new(30, 6, new(0.4));
        double Error(int count)
        {
            var table = Cases.Table(circle, closed ? count : count + 1, closed, -1.5, (closed ? 2 * Math.PI : 3) / count);
            return Enumerable.Range(0, 200).Max(i =>
            {
                Angle normal = new(-1.2 + i * 0.012);
                return Math.Abs(table.Support(normal) - circle.Support(normal));
            });
        }

        Assert.InRange(Error(40), 0, 1e-4);
        Assert.InRange(Error(40) / Error(80), 10, 30);
    }

    [Fact]
    public void Past_its_ends_a_table_goes_on_round()
    {
        EccentricGroove circle = new(30, 6, new(0.4));
        var table = Cases.Table(circle, 60, closed: false, 0, 0.04);
        for (var polar = -0.8; polar < 3.2; polar += 0.05)
        {
            var at = circle.NormalAt(new(polar));
            Assert.Equal(at.Radians, table.NormalAt(new(polar)).Radians, 1e-3);
            Assert.True(circle.PointWithNormal(at).DistanceTo(table.PointWithNormal(at)) < 0.02);
            Assert.Equal(circle.ArcBetween(Angle.Right, at), table.ArcBetween(Angle.Right, at), 0.02);
        }
    }

    [Fact]
    public void Equal_tables_are_equal()
    {
        var curve = new EccentricGroove(30, 6, new(0.4));
        Assert.Equal(Cases.Table(curve, 12, false, 0, 0.2), Cases.Table(curve, 12, false, 0, 0.2));
        Assert.NotEqual(Cases.Table(curve, 12, false, 0, 0.2), Cases.Table(curve, 12, false, 0, 0.21));
        var table = Cases.Table(curve, 12, false, 0, 0.2);
        Assert.Equal(table, table.Mirrored().Mirrored());
        Assert.NotEqual(table, new TabulatedGroove(table.Points, closed: true));
        Assert.NotEqual(table, new TabulatedGroove(table.Points, plusMinus: 0.1));
        Assert.False(table.Equals(null));
    }

    /// <summary>
    /// A whole turn of an open table: its own arc and the two end circles, which meet opposite to its middle. The integral of the radius of
    /// curvature over the normals from seam to seam (midpoint rule), and the same from any other normal on.
    /// </summary>
    [Fact]
    public void A_turn_of_a_table_is_the_integral_of_its_radius_of_curvature() => Cases.Wavy.Check(10, curve =>
    {
        var table = Cases.Table(curve, 20, closed: false, 0.3, 0.11);
        const int Count = 4000;
        var seam = Middle(table) - Math.PI;
        var turn = Enumerable.Range(0, Count).Sum(i => table.RadiusOfCurvature(new(seam + (i + 0.5) * 2 * Math.PI / Count))) * 2 * Math.PI / Count;
        foreach (var from in new[] { seam + 0.1, 1, 4 })
        {
            Assert.Equal(turn, table.ArcBetween(new(from), new(from + 2 * Math.PI)), 1e-3 * turn);
            Assert.Equal(-2 * turn, table.ArcBetween(new(from), new(from - 4 * Math.PI)), 2e-3 * turn);
        }
    });

    public static TheoryData<double[], string> BadTables => new()
    {
        { [0, 30, 20, 30, 40, 30], "at least four rows" },
        { [0, 30, 20, 30, 40, 0, 60, 30], "row 3: the radius 0 mm must be positive" },
        { [0, 30, 20, 30, 15, 30, 60, 30], "row 3: the angle 15° does not come after 20° in row 2" },
        { [0, 30, 20, 30, 40, 27, 60, 30, 80, 30], "row 3 (40°, 27 mm) lies 1.19 mm inside the line between its neighbours" },
        { [0, 30, 20, 30, 20, 30, 60, 30], "row 3: the angle 20° does not come after 20° in row 2" },
        { [0, 30, 120, 30, 240, 30, 360, 30], "row 4: the angle 360° is a whole turn" },
        { [0, 30, 10, 30.6, 20, 32.05, 30, 34.6, 40, 33, 50, 30], "rows 2 and 3: the smooth curve through them is hollow near 10.63°" },
        { [0, 30, 20, 30, 40, 30, 60, 30, 80, 30, 100, 30, 120, 30, 140, 30, 160, 30, 180, 33], "rows 9 and 10: the smooth curve through them is hollow near 165°" },
    };

    [Theory]
    [MemberData(nameof(BadTables))]
    public void A_bad_table_is_refused_by_row(double[] rows, string message)
    {
        var error = Assert.Throws<ArgumentException>(() => new TabulatedGroove(
            rows.Chunk(2).Select(r => new GroovePoint(Angle.FromDegrees(r[0]), r[1]))));
        Assert.Contains(message, error.Message, StringComparison.Ordinal);
    }

    private static ArgumentException? Refusal(IEnumerable<(double Degrees, double Radius)> rows, bool closed = false)
    {
        try
        {
            _ = new TabulatedGroove(rows.Select(r => new GroovePoint(Angle.FromDegrees(r.Degrees), r.Radius)), closed);
            return null;
        }
        catch (ArgumentException refusal)
        {
            return refusal;
        }
    }

    private static (double Degrees, double Radius)[] Dented(int row, double by) =>
        [.. Enumerable.Range(0, 12).Select(i => (30.0 * i, i == row ? 30 - by : 30))];

    /// <summary>
    /// On twelve points of a circle of 30 mm the chord past one stands 30 cos 30° = 25.98 mm off (by hand): a radius of 25.9 is 0.08 mm inside.
    /// Every row of a closed table has two neighbours, the first and last as well.
    /// </summary>
    [Theory]
    [InlineData(0, "row 1 (0°, 25.9 mm) lies 0.08 mm inside")]
    [InlineData(5, "row 6 (150°, 25.9 mm) lies 0.08 mm inside")]
    [InlineData(11, "row 12 (330°, 25.9 mm) lies 0.08 mm inside")]
    public void A_closed_table_is_checked_all_round(int row, string message) =>
        Assert.Contains(message, Refusal(Dented(row, 4.1), closed: true)!.Message, StringComparison.Ordinal);

    /// <summary>A snail grows from 20 to 40 mm in most of a turn and steps back: the ends of an open table are no neighbours.</summary>
    [Fact]
    public void The_ends_of_an_open_table_are_no_neighbours()
    {
        var snail = Enumerable.Range(0, 18).Select(i => (20.0 * i, 20 + 20 * i / 17.0)).ToArray();
        Assert.Null(Refusal(snail));
        Assert.Null(Refusal(snail.Select(r => (-r.Item1, r.Item2)).Reverse()));
        Assert.Contains("row 1 (0°, 20 mm)", Refusal(snail, closed: true)!.Message, StringComparison.Ordinal);
    }

    /// <summary>Whether a table can be taken does not depend on the side from which it is looked at, least of all in its end pieces.</summary>
    [Fact]
    public void A_table_is_refused_where_its_mirror_image_is()
    {
        int taken = 0, refused = 0;
        for (var row = 0; row < 4; row++)
        {
            for (var by = -3.0; by < 2.5; by += 0.0217)
            {
                var rows = Enumerable.Range(0, 8).Select(i => (20.0 * i, i == row ? 30 - by : 30)).ToArray();
                var there = Refusal(rows) is null;
                Assert.Equal(there, Refusal(rows.Select(r => (-r.Item1, r.Item2)).Reverse()) is null);
                (taken, refused) = there ? (taken + 1, refused) : (taken, refused + 1);
            }
        }

        Assert.True(taken > 100 && refused > 100);
    }

    /// <summary>
    /// Where a table is all but hollow the normal hardly turns, then turns fast: the search for a normal must still find the point, here from
    /// the spline's own polar angles.
    /// </summary>
    [Fact]
    public void Nearly_hollow_tables_are_searched_safely()
    {
        for (var row = 0; row < 8; row++)
        {
            for (var by = -3.0; by < 2.5; by += 0.11)
            {
                GroovePoint[] rows = [.. Enumerable.Range(0, 8).Select(i => new GroovePoint(Angle.FromDegrees(20 * i), i == row ? 30 - by : 30))];
                if (Refusal(rows.Select(r => (r.Polar.Degrees, r.Radius))) is not null)
                {
                    continue;
                }

                TabulatedGroove table = new(rows);
                for (var polar = 0.01; polar < 2.44; polar += 0.02)
                {
                    Assert.Equal(polar, table.PointWithNormal(table.NormalAt(new(polar))).Polar.Radians, 1e-6);
                }
            }
        }
    }

    [Fact]
    public void Impossible_circles_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new CircularGroove(0));
        Assert.Throws<ArgumentOutOfRangeException>("radius.Value", () => new EccentricGroove(0, 0, Angle.Zero));
        Assert.Throws<ArgumentOutOfRangeException>(() => new EccentricGroove(20, 20, Angle.Zero));
        Assert.Throws<ArgumentOutOfRangeException>(() => new EccentricGroove(20, -1, Angle.Zero));
    }
}
