using BracketGen.Design.Checks;
using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;
using BracketGen.TestSupport;
using BracketGen.Units;
using BracketGen.Words.Report;
using CsCheck;

namespace BracketGen.Mechanism.Tests;

public class OuterRouteTests
{
    /// <summary>
    /// The four CSC words of Dubins (1957) in the plane, in the form of A. M. Shkel and V. Lumelsky, «Classification of the Dubins
    /// set», Robotics and Autonomous Systems 34 (2001) 179-202, eqs. (12)-(15): distances in radii, start at the origin along α, end at
    /// (d, 0) along β. Returns the least length among those whose arcs turn by less than half a turn.
    /// </summary>
    private static double? Dubins(double d, double alpha, double beta, double most = 3.1) => DubinsWords(d, alpha, beta)
        .Where(w => w.T < most && w.Q < most).Select(w => (double?)(w.T + w.P + w.Q)).Min();

    private static List<(double T, double P, double Q)> DubinsWords(double d, double alpha, double beta)
    {
        static double Mod(double a) => a - 2 * Math.PI * Math.Floor(a / (2 * Math.PI) + 1e-12);
        double sa = Math.Sin(alpha), sb = Math.Sin(beta), ca = Math.Cos(alpha), cb = Math.Cos(beta), cab = Math.Cos(alpha - beta);
        var words = new List<(double T, double P, double Q)>();
        var p2 = 2 + d * d - 2 * cab + 2 * d * (sa - sb);
        if (p2 >= 0)
        {
            var turn = Math.Atan2(cb - ca, d + sa - sb);
            words.Add((Mod(-alpha + turn), Math.Sqrt(p2), Mod(beta - turn)));
        }

        p2 = 2 + d * d - 2 * cab + 2 * d * (sb - sa);
        if (p2 >= 0)
        {
            var turn = Math.Atan2(ca - cb, d - sa + sb);
            words.Add((Mod(alpha - turn), Math.Sqrt(p2), Mod(-beta + turn)));
        }

        p2 = -2 + d * d + 2 * cab + 2 * d * (sa + sb);
        if (p2 >= 0)
        {
            var p = Math.Sqrt(p2);
            var turn = Math.Atan2(-ca - cb, d + sa + sb) - Math.Atan2(-2, p);
            words.Add((Mod(-alpha + turn), p, Mod(-Mod(beta) + turn)));
        }

        p2 = d * d - 2 + 2 * cab - 2 * d * (sa + sb);
        if (p2 >= 0)
        {
            var p = Math.Sqrt(p2);
            var turn = Math.Atan2(ca + cb, d - sa - sb) - Math.Atan2(2, p);
            words.Add((Mod(alpha - turn), p, Mod(beta - turn)));
        }

        return words;
    }

    private static readonly Gen<(Vector3 From, Vector3 Leaving, Vector3 To, Vector3 Arriving)> Ends = Gen.Select(
        RandomDirection, RandomDirection, RandomDirection, Gen.Double[250, 900],
        (leaving, arriving, towards, distance) => (new Vector3(40, -60, 10), leaving, new Vector3(40, -60, 10) + distance * towards, arriving));

    private static Gen<Vector3> RandomDirection => Gen.Select(Gen.Double[-1, 1], Gen.Double[-1, 1], Gen.Double[-1, 1], (x, y, z) => new Vector3(x, y, z))
        .Where(v => v.Length is > 0.2 and < 1).Select(v => v.Unit);

    /// <summary>In a plane the route is Dubins' (of the words with arcs below half a turn), in whatever plane it lies.</summary>
    [Fact]
    public void In_a_plane_it_is_dubins_shortest_route() => Gen.Select(
        Gen.Double[4.2, 12], Gen.Double[-2.9, 2.9], Gen.Double[-2.9, 2.9], RandomDirection, RandomDirection).Check(300, t =>
    {
        var (d, alpha, beta, z, x) = t;
        if (z.Cross(x).Length < 0.1 || Dubins(d, alpha, beta) is not { } length)
        {
            return;
        }

        const double Radius = 70;
        var frame = Frame.FromZX(new(12, -5, 30), z, x);
        Vector3 Direction(double angle) => frame.ToWorldDirection(Vector3.From(Vector2.FromPolar(1, new(angle))));
        var route = OuterRoute.Shortest(
            frame.Origin, Direction(alpha), frame.ToWorld(new Vector2(d * Radius, 0)), Direction(beta), Radius);
        Assert.NotNull(route);
        Assert.InRange(route.Length / Radius, 0, length + 1e-6); // never longer than Dubins' own
        Assert.Equal(length, route.Length / Radius, 0.02 * length); // and equal but where an arc near half a turn is left out of the list
    });

    /// <summary>
    /// Near together arcs of up to three quarters are needed as well: then too the route is no longer than Dubins' shortest word, and it
    /// has bends of more than half a turn only where no word without them exists.
    /// </summary>
    [Fact]
    public void Near_together_it_is_no_longer_than_dubins() => Gen.Select(
        Gen.Double[0.1, 4.2], Gen.Double[-3.1, 3.1], Gen.Double[-3.1, 3.1], RandomDirection, RandomDirection).Check(300, t =>
    {
        var (d, alpha, beta, z, x) = t;
        const double Radius = 70;
        if (z.Cross(x).Length < 0.1 || (Dubins(d, alpha, beta) ?? Dubins(d, alpha, beta, 4.7)) is not { } length)
        {
            return;
        }

        var frame = Frame.FromZX(new(12, -5, 30), z, x);
        Vector3 Direction(double angle) => frame.ToWorldDirection(Vector3.From(Vector2.FromPolar(1, new(angle))));
        var route = OuterRoute.Shortest(
            frame.Origin, Direction(alpha), frame.ToWorld(new Vector2(d * Radius, 0)), Direction(beta), Radius);
        Assert.NotNull(route);
        Assert.InRange(route.Length / Radius, 0, length + 1e-9);
        if (Dubins(d, alpha, beta) is not null)
        {
            Assert.True(route.FirstBend <= Angle.Straight && route.LastBend <= Angle.Straight);
        }

        Assert.True(route.At(route.Length).Point.DistanceTo(route.To) < 1e-6);
        Assert.True(route.At(route.Length).Direction.AngleTo(route.Arriving).Radians < 1e-6);
    });

    /// <summary>
    /// All directions in steps of 15°, distances from 0.2 to 4.4 radii: none of these plane cases is missed or longer than Dubins' shortest
    /// word with arcs below half a turn or, where there is none, below three quarters.
    /// </summary>
    [Fact]
    public void No_plane_case_is_missed()
    {
        var frame = Frame.FromZX(new(12, -5, 30), new(0.3, 0.5, 0.8), new(1, 0.2, 0));
        Vector3 Direction(double angle) => frame.ToWorldDirection(Vector3.From(Vector2.FromPolar(1, new(angle))));
        var missed = new List<string>();
        var past = 0;
        for (var d = 0.2; d < 4.5; d += 0.7)
        {
            for (var a = 0; a < 24; a++)
            {
                for (var b = 0; b < 24; b++)
                {
                    // A little off the round angles, where two words meet.
                    double alpha = -3.1 + a * Math.PI / 12, beta = -3.07 + b * Math.PI / 12;
                    if ((Dubins(d, alpha, beta, Math.PI) ?? Dubins(d, alpha, beta, 4.7)) is not { } length)
                    {
                        continue;
                    }

                    const double Radius = 70;
                    past += Dubins(d, alpha, beta, Math.PI) is null ? 1 : 0;
                    var route = OuterRoute.Shortest(
                        frame.Origin, Direction(alpha), frame.ToWorld(new Vector2(d * Radius, 0)), Direction(beta), Radius);
                    if (route is null || route.Length / Radius > length + 1e-6)
                    {
                        missed.Add($"{d:0.0} {alpha:0.00} {beta:0.00}: {route?.Length / Radius} for {length}");
                    }
                }
            }
        }

        Assert.Empty(missed);
        Assert.True(past > 500); // cases that need more than half a turn
    }

    /// <summary>Every route begins, runs and ends as asked, with no bend tighter than its radius.</summary>
    [Fact]
    public void Routes_run_smoothly_from_end_to_end() => Ends.Check(150, t =>
    {
        if (OuterRoute.Shortest(t.From, t.Leaving, t.To, t.Arriving, 60) is not { } route)
        {
            return;
        }

        var (start, first) = route.At(0);
        var (end, last) = route.At(route.Length);
        Assert.True(start.DistanceTo(t.From) < 1e-9 && first.AngleTo(t.Leaving).Radians < 1e-7);
        Assert.True(end.DistanceTo(t.To) < 1e-5, $"It ends {end.DistanceTo(t.To)} mm off.");
        Assert.True(last.AngleTo(t.Arriving).Radians < 1e-6);
        const double Step = 0.5;
        double bent = 0;
        for (var at = 0.0; at + Step <= route.Length; at += Step)
        {
            var (p, a) = route.At(at);
            var (q, b) = route.At(at + Step);
            Assert.InRange(p.DistanceTo(q), Step * (1 - Step * Step / (24 * 60 * 60) - 1e-6), Step + 1e-9);
            Assert.InRange(a.AngleTo(b).Radians, 0, Step / 60 + 1e-7);
            bent += a.AngleTo(b).Radians;
        }

        Assert.Equal(route.TotalBend.Radians, bent, 0.02);
    });

    /// <summary>Far apart there is a route for nearly all directions, as Hota and Ghose state for distances beyond a few radii.</summary>
    [Fact]
    public void Far_apart_there_is_a_route()
    {
        var cases = Ends.Draw(200);
        Assert.All(cases, t => Assert.True(
            OuterRoute.Shortest(t.From, t.Leaving, t.To, t.Arriving, 40) is not null,
            $"{t.Leaving.AngleTo(t.To - t.From)} {t.Arriving.AngleTo(t.To - t.From)} {t.From.DistanceTo(t.To)}"));
    }

    /// <summary>Worked by hand: a quarter turn of 100 mm, 300 mm straight, a quarter turn back, in one plane.</summary>
    [Fact]
    public void A_step_aside_is_two_quarter_turns()
    {
        var route = OuterRoute.Shortest(Vector3.Zero, new(1, 0, 0), new(200, 500, 0), new(1, 0, 0), 100)!;
        Assert.Equal(90, route.FirstBend.Degrees, 1e-6);
        Assert.Equal(90, route.LastBend.Degrees, 1e-6);
        Assert.Equal(300, route.Straight, 1e-6);
        Assert.Equal(300 + Math.PI * 100, route.Length, 1e-9);
        Assert.Equal(180, route.TotalBend.Degrees, 1e-6);
        Assert.Equal(63, route.Points(10).Length); // 614.16 mm in 62 steps
        void On(double distance, double x, double y, double towardsX, double towardsY)
        {
            var (point, direction) = route.At(distance);
            Assert.True(point.DistanceTo(new(x, y, 0)) < 1e-6, $"{point}");
            Assert.True(direction.AngleTo(new(towardsX, towardsY, 0)).Radians < 1e-7, $"{direction}");
        }

        var (half, whole) = (25 * Math.PI, 50 * Math.PI);
        On(half, 50 * Math.Sqrt(2), 100 - 50 * Math.Sqrt(2), 1, 1);
        On(whole, 100, 100, 0, 1);
        On(whole + 120, 100, 220, 0, 1);
        On(whole + 300 + half, 200 - 50 * Math.Sqrt(2), 400 + 50 * Math.Sqrt(2), 1, 1);
    }

    /// <summary>Worked by hand: half a circle from side to side, two quarter turns with nothing straight between them.</summary>
    [Fact]
    public void A_half_circle_has_no_straight_part()
    {
        var route = OuterRoute.Shortest(Vector3.Zero, new(1, 0, 0), new(0, 200, 0), new(-1, 0, 0), 100)!;
        Assert.Equal(100 * Math.PI, route.Length, 1e-9);
        Assert.Equal(0, route.Straight, 1e-9);
        Assert.Equal(Math.PI / 2, route.FirstBend.Radians, 1e-9);
        var points = route.Points(25 * Math.PI + 1e-6);
        Assert.Equal(5, points.Length);
        foreach (var (point, x, y) in points.Zip([0, 50 * Math.Sqrt(2), 100, 50 * Math.Sqrt(2), 0], [0, 100 - 50 * Math.Sqrt(2), 100, 100 + 50 * Math.Sqrt(2), 200.0]))
        {
            Assert.True(point.DistanceTo(new(x, y, 0)) < 1e-9, $"{point}");
        }
    }

    [Fact]
    public void A_straight_way_needs_no_bend()
    {
        var route = OuterRoute.Shortest(Vector3.Zero, new(0, 1, 0), new(0, 400, 0), new(0, 1, 0), 80)!;
        Assert.Equal(400, route.Length, 1e-9);
        Assert.Equal(0, route.TotalBend.Radians, 1e-9);
        Assert.Equal([0.0, 100, 200, 300, 400], route.Points(100).Select(p => p.Y));
    }

    /// <summary>Side by side and back to back: the outer must swing out and come back, 270° at each end about lines 100 mm off.</summary>
    [Fact]
    public void Too_near_for_the_directions_takes_a_loop() =>
        Assert.True(OuterRoute.Shortest(Vector3.Zero, new(1, 0, 0), new(-20, 0, 0), new(1, 0, 0), 100)!.TotalBend > Angle.Straight);

    /// <summary>Where stop, bulkhead and both directions lie on one line, whatever is called a route leads there, and arrives the way it should.</summary>
    [Theory]
    [InlineData(-50, -1)]
    [InlineData(-300, -1)]
    [InlineData(-1000, -1)]
    [InlineData(300, -1)]
    [InlineData(-50, 1)]
    [InlineData(-300, 1)]
    [InlineData(300, 1)]
    public void On_one_line_a_route_leads_to_its_end(double x, double arriving)
    {
        Vector3 to = new(x, 0, 0), direction = new(arriving, 0, 0);
        foreach (var radius in new[] { 60.0, 100 })
        {
            if (OuterRoute.Shortest(Vector3.Zero, new(1, 0, 0), to, direction, radius) is { } route)
            {
                var (point, way) = route.At(route.Length);
                Assert.True(point.DistanceTo(to) < 1e-5 && way.DistanceTo(direction) < 1e-5, $"{route.Length} mm lead to {point}, {way}");
                Assert.True(route.Length >= Math.Abs(x) - 1e-9);
            }
            else
            {
                Assert.True(arriving < 0, "a way ahead, or two half turns, is missed");
            }
        }
    }
}
