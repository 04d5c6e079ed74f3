using BracketGen.Geometry;
using BracketGen.TestSupport;
using CsCheck;

namespace BracketGen.Mechanism.Tests;

public class OuterRouteTests
{
    /// <summary>
    /// The four CSC words of Dubins (1957) in the plane, in the form of A. M. Shkel and V. Lumelsky, «Classification of the Dubins
    /// set», Robotics and Autonomous Systems 34 (2001) 179-202, eqs. (12)-(15): distances in radii, start at the origin along α, end at
    /// (d, 0) along β. Returns the least length among those whose arcs turn by less than half a turn.
    /// </summary>
    private static double? Dubins(double d, double alpha, double beta)
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

        var gentle = words.Where(w => w.T < 3.1 && w.Q < 3.1).Select(w => w.T + w.P + w.Q).ToList();
        return gentle.Count > 0 ? gentle.Min() : null;
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
        Assert.Equal(300 + Math.PI * 100, route.Length, 1e-6);
        Assert.Equal(180, route.TotalBend.Degrees, 1e-6);
        Assert.True(route.Points(10).Length >= 62);
    }

    [Fact]
    public void A_straight_way_needs_no_bend()
    {
        var route = OuterRoute.Shortest(Vector3.Zero, new(0, 1, 0), new(0, 400, 0), new(0, 1, 0), 80)!;
        Assert.Equal(400, route.Length, 1e-9);
        Assert.Equal(0, route.TotalBend.Radians, 1e-9);
    }

    /// <summary>Worked by hand: straight across a corner, the largest radius is that of the quarter circle through both ends.</summary>
    [Fact]
    public void A_longer_outer_takes_gentler_bends()
    {
        // From (0,0) along x to (300,300) along y: with radius r the way is 2(300 - r) + πr/2.
        OuterFit Fit(double length) => OuterRoute.Fit(Vector3.Zero, new(1, 0, 0), new(300, 300, 0), new(0, -1, 0), 60, length);
        double Way(double r) => 2 * (300 - r) + Math.PI * r / 2;
        Assert.Equal(Math.PI / 2, Fit(600).Route!.TotalBend.Radians, 0.6);
        var tooShort = Fit(400);
        Assert.Null(tooShort.Route);
        Assert.True(tooShort.Spare < 0);
        Assert.Contains("too short", tooShort.Problem, StringComparison.Ordinal);
        var fit = Fit(600);
        Assert.Null(fit.Problem);
        Assert.True(fit.Route!.Radius >= 60);
        Assert.Equal(600 - fit.Route.Length, fit.Spare, 1e-9);
        Assert.True(Way(60) > fit.Route.Radius);
    }

    [Fact]
    public void The_gentlest_route_uses_the_outer_up_or_cannot_be_gentler() => Ends.Check(25, t =>
    {
        if (OuterRoute.Shortest(t.From, t.Leaving, t.To, t.Arriving, 50) is not { } tight)
        {
            return;
        }

        var fit = OuterRoute.Fit(t.From, t.Leaving, t.To, -t.Arriving, 50, tight.Length * 1.05);
        Assert.True(fit.Route!.Radius >= 50);
        Assert.True(fit.Spare >= 0);
        var wider = OuterRoute.Shortest(t.From, t.Leaving, t.To, t.Arriving, fit.Route.Radius * 1.001);
        Assert.True(wider is null || wider.Length > tight.Length * 1.05);
    });

    /// <summary>Side by side and back to back: the outer must swing out and come back, 270° at each end about lines 100 mm off.</summary>
    [Fact]
    public void Too_near_for_the_directions_takes_a_loop()
    {
        var fit = OuterRoute.Fit(Vector3.Zero, new(1, 0, 0), new(-20, 0, 0), new(-1, 0, 0), 100, 400);
        Assert.Null(fit.Route);
        Assert.Contains("too short", fit.Problem, StringComparison.Ordinal);
        Assert.True(OuterRoute.Fit(Vector3.Zero, new(1, 0, 0), new(-20, 0, 0), new(-1, 0, 0), 100, 900).Route!.TotalBend > Angle.Straight);
    }
}
