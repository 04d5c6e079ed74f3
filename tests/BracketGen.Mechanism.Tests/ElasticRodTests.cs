using BracketGen.Geometry;
using BracketGen.Mechanism.Rods;
using BracketGen.TestSupport;
using CsCheck;

namespace BracketGen.Mechanism.Tests;

public class ElasticRodTests
{
    private static readonly Vector3 X = new(1, 0, 0);
    private static readonly Vector3 Y = new(0, 1, 0);
    private static readonly Vector3 Z = new(0, 0, 1);

    /// <summary>
    /// Lines of a rod of length one and stiffness one from the origin along x: the founders' table of check values, worked out by
    /// shooting (Taylor series of order 18) and by energy minimisation (agreement 5e-9), the rows in a plane also by Love's elliptic functions.
    /// </summary>
    public static TheoryData<string, double[], double[], double[]> Table => new()
    {
        // Name, direction and place of the far end, then bend (°), minimum radius, force, moment at the beginning and at the end.
        { "P1", [1, 0, 0], [.95, 0, 0], [103.03444, 0.35250771, 40.493971, 2.8368174, 2.8368174] },
        { "P2", [1, 0, 0], [.90, 0, 0], [146.49712, 0.24682054, 41.570256, 4.0515267, 4.0515267] },
        { "P3", [1, 0, 0], [.70, 0, 0], [259.55316, 0.13651153, 46.612121, 7.3253888, 7.3253888] },
        { "P4b", [1, 0, 0], [.50, 0, 0], [361.53475, 0.10753998, 41.840957, 8.7728310, 8.7728310] },
        { "P6b", [1, 0, 0], [.8, .3, 0], [187.44279, 0.24825084, 37.440196, 3.9847819, 3.9847819] },
        { "P7", [0, 1, 0], [.6, .6, 0], [90.045576, 0.39408157, 10.987021, 0.05558995, 0.05558995] },
        { "P8", [0, 1, 0], [.7, .3, 0], [132.30990, 0.24493184, 19.172609, 3.1470245, 0.27153848] },
        { "P9", [-1, 0, 0], [0, .5, 0], [180, 0.21058379, 11.053318, 0.66599642, 0.66599642] },
        { "S1", [0, 0, 1], [.6, .3, .4], [130.39127, 0.29289498, 15.408916, 2.0262804, 1.2074491] },
        { "S2", [0, 1, 0], [.5, .2, .5], [168.09633, 0.27357850, 12.634047, 2.8052535, 2.5702431] },
    };

    [Theory]
    [MemberData(nameof(Table))]
    public void Its_lines_are_those_of_the_table(string name, double[] direction, double[] at, double[] expected)
    {
        var to = new RodEnd(new(at[0], at[1], at[2]), new(direction[0], direction[1], direction[2]));
        var lines = ElasticRod.Lines(new(Vector3.Zero, X), to, 1);

        // P6b is a pair, one the mirror image of the other; every other row is alone, or turns freely about its axis and stands for all.
        Assert.Equal(name == "P6b" ? 2 : 1, lines.Length);
        Assert.All(lines, line =>
        {
            Assert.True(line.IsStable);
            Within(expected[0], line.Bend.Degrees, 4e-5);
            Within(expected[1], line.MinRadius, 4e-5);
            Within(expected[2], line.EndForce.Length, 4e-5);
            Assert.Equal(expected[3], line.StartMoment.Length, 3e-4);
            Assert.Equal(expected[4], line.EndMoment.Length, 3e-4);
        });
    }

    /// <summary>
    /// The line of least energy found by shooting with SciPy 1.10.1: t' = M × t, M' = F × t from the beginning (solve_ivp, DOP853, rtol 1e-10), F and the two
    /// unknown parts of M from place and direction at the far end (root, hybr) from 16 random starts; bend integrated beside.
    /// </summary>
    [Fact]
    public void Its_line_is_that_of_shooting()
    {
        var lines = ElasticRod.Lines(new(Vector3.Zero, X), new(new(250, 120, -80), new(0.2, 0.9, 0.4)), 420);
        Within(5.501095024 / 420, lines[0].Energy, 1e-5);
        Within(178.9121512, lines[0].Bend.Degrees, 1e-5);
        Within(86.288549, lines[0].MinRadius, 2e-5);
        Within(1.298858282e-4, lines[0].EndForce.Length, 2e-5);
        Within(0.00969549837, lines[0].StartMoment.Length, 5e-5);
        Within(0.00509919258, lines[0].EndMoment.Length, 5e-5);
        Assert.InRange(lines[0].TightestAt, 240, 241.5);
        Assert.True(lines[0].Points[lines[0].Points.Length / 2].DistanceTo(new(182.97379, -54.07428, -65.03656)) < 0.003);
    }

    /// <summary>The rows P4a and P6a: a line that keeps to its plane has one way out of it, and the energy is higher than beside it.</summary>
    [Theory]
    [InlineData(0.5, 0, 343.48904, 0.10056533)]
    [InlineData(0.8, 0.3, 177.65534, 0.20266487)]
    public void A_line_that_stays_in_its_plane_is_not_stable(double x, double y, double bend, double radius)
    {
        var way = new RodWay([X, X], [new(x, y, 0)], [1]);
        RodChain? coarse = null, fine = null;
        for (var links = 48; links <= 96; links *= 2)
        {
            coarse = fine;
            fine = new RodChain(way, links);
            if (coarse is null)
            {
                for (var i = 0; i < links; i++)
                {
                    // Bent in the plane alone, so that nothing leads out of it.
                    var s = (i + 0.5) / links;
                    fine.Links[i] = new Vector3(1, 2.2 * Math.Sin(2 * Math.PI * s) + 0.4 * y, 0).Unit;
                }
            }
            else
            {
                fine.LayAlong(coarse);
            }

            Assert.True(fine.Solve());
        }

        var line = Extrapolation.Of(coarse!, fine!, Vector3.Zero, 1);
        Assert.Equal(1, line.NegativeModes);
        Within(bend, line.Bend.Degrees, 1e-4);
        Within(radius, line.MinRadius, 1e-4);
        Assert.True(line.Energy > ElasticRod.Lines(new(Vector3.Zero, X), new(new(x, y, 0), X), 1)[0].Energy + 0.1);
    }

    /// <summary>Worked by hand: a straight rod between ends on one line; a rod with half a turn far apart has nearly none of its bend in the middle.</summary>
    [Fact]
    public void A_rod_as_long_as_its_way_is_straight()
    {
        var line = Assert.Single(ElasticRod.Lines(new(new(5, 5, 5), Y), new(new(5, 305, 5), Y), 300));
        Assert.Equal((0.0, double.PositiveInfinity, 0.0), (line.Bend.Radians, line.MinRadius, line.Energy));
        Assert.Equal(300, line.Length);
    }

    /// <summary>Too short: shorter than the distance, or so near to it that the ends could not turn.</summary>
    [Theory]
    [InlineData(299)]
    [InlineData(300)]
    [InlineData(300.0001)]
    public void A_rod_that_does_not_reach_has_no_line(double length)
    {
        var lay = ElasticRod.Lay(new(Vector3.Zero, Y), [], new(new(300, 0, 0), Z), length);
        Assert.True(lay.IsTooShort);
        Assert.Equal(300, lay.Chord);
        Assert.Equal((0.0, 0.0), (lay.MinRadius, lay.MaxBend.Radians));
    }

    /// <summary>Taut, the ends turn as a long rod does under a tension F: F = 4 (2 - cos(a/2) - cos(b/2))²/(L - D)², radius 1/(2 √F sin(a/2)) (Love, article 262).</summary>
    [Theory]
    [InlineData(0.02)]
    [InlineData(0.01)]
    public void A_taut_rod_turns_at_its_ends(double spare)
    {
        var line = Assert.Single(ElasticRod.Lines(new(Vector3.Zero, Y), new(new(1 - spare, 0, 0), Z), 1));
        var root = 2 * (2 - Math.Sqrt(2)) / spare;
        Within(root, Math.Sqrt(line.EndForce.Length), 3e-3);
        Within(1 / (Math.Sqrt(2) * root), line.MinRadius, 0.02);
    }

    /// <summary>Ends on one line, near together: the rod lies in a circle, its bend is a full turn, and no other line is stable.</summary>
    [Theory]
    [InlineData(0.3)]
    [InlineData(0.1)]
    [InlineData(0.02)]
    public void A_rod_far_too_long_has_a_loop(double apart)
    {
        var lay = ElasticRod.Lay(new(Vector3.Zero, X), [], new(new(apart, 0, 0), X), 1);
        Assert.True(lay.IsTooLong);
        Assert.Equal(360, lay.MaxBend.Degrees, 0.01);
        Assert.False(ElasticRod.Lay(new(Vector3.Zero, X), [], new(new(0.5, 0, 0), X), 1).IsTooLong);
    }

    /// <summary>Nearly closed, it is a circle: radius L/2π, energy 2π²/L (worked by hand).</summary>
    [Fact]
    public void A_closed_rod_is_a_circle()
    {
        var line = ElasticRod.Lines(new(Vector3.Zero, X), new(new(0.001, 0, 0), X), 1)[0];
        Within(2 * Math.PI * Math.PI, line.Energy, 2e-3);
        Within(1 / (2 * Math.PI), line.MinRadius, 4e-3);
    }

    private static Gen<Vector3> Direction => Gen.Select(Gen.Double[-1, 1], Gen.Double[-1, 1], Gen.Double[-1, 1], (x, y, z) => new Vector3(x, y, z))
        .Where(v => v.Length is > 0.2 and < 1).Select(v => v.Unit);

    private static Gen<(RodEnd From, RodEnd To, double Length)> Rods => Gen.Select(
        Direction, Direction, Direction, Gen.Double[0.2, 0.95], Gen.Double[150, 900],
        (leaving, arriving, towards, part, length) =>
            (new RodEnd(new(30, -40, 15), leaving), new RodEnd(new Vector3(30, -40, 15) + part * length * towards, arriving), length));

    /// <summary>Turned, mirrored, of another size, or read from its other end, the rod is the same.</summary>
    [Fact]
    public void It_does_not_care_where_it_lies() => Gen.Select(Rods, Direction, Gen.Double[0.3, 3], Gen.Double[0.2, 5]).Check(40, t =>
    {
        var ((from, to, length), axis, turn, scale) = t;
        var lines = ElasticRod.Lines(from, to, length);
        Assert.NotEmpty(lines);
        Vector3 Turned(Vector3 v) => scale * v.Rotate(axis, new(turn));
        Same(lines, ElasticRod.Lines(new(Turned(from.Point), Turned(from.Direction)), new(Turned(to.Point), Turned(to.Direction)), scale * length), scale);
        Same(lines, ElasticRod.Lines(
            new(from.Point.MirroredInY, from.Direction.MirroredInY), new(to.Point.MirroredInY, to.Direction.MirroredInY), length), 1);

        // From the other end other starts are tried; the line with the least energy is always among those found.
        var back = ElasticRod.Lines(new(to.Point, -to.Direction), new(from.Point, -from.Direction), length);
        Within(lines[0].Bend.Radians, back[0].Bend.Radians, 1e-4);
        Within(lines[0].StartMoment.Length, back[0].EndMoment.Length, 1e-3);
    });

    private static void Same(IReadOnlyList<ElasticLine> one, IReadOnlyList<ElasticLine> other, double scale)
    {
        Assert.Equal(one.Count, other.Count);
        foreach (var (a, b) in one.Zip(other))
        {
            Within(a.Bend.Radians, b.Bend.Radians, 1e-6);
            Within(a.MinRadius * scale, b.MinRadius, 1e-6);
            Within(a.EndForce.Length, b.EndForce.Length * scale * scale, 1e-6);
            Within(a.Energy, b.Energy * scale, 1e-6);
        }
    }

    /// <summary>The line begins, runs and ends as asked, its moments obey balance, and its points bend as much as it says.</summary>
    [Fact]
    public void Its_points_are_the_line() => Rods.Check(60, t =>
    {
        var line = ElasticRod.Lines(t.From, t.To, t.Length)[0];
        Assert.Equal(t.Length, line.Length, 1e-9 * t.Length);
        Assert.True(line.Points[0].DistanceTo(t.From.Point) < 1e-9, $"{line.Points[0]}");
        Assert.True(line.Points[^1].DistanceTo(t.To.Point) < 1e-6 * t.Length, $"{line.Points[^1]} {t.To.Point}");
        Assert.True(line.Directions[0].AngleTo(t.From.Direction).Radians < 1e-7 && line.Directions[^1].AngleTo(t.To.Direction).Radians < 1e-7, "direction");

        // Moments about the far end: ML = M0 - D × F, the whole rod in balance.
        var gap = t.To.Point - t.From.Point;
        var balance = line.EndMoment - line.StartMoment + gap.Cross(line.EndForce);
        Assert.True(balance.Length * t.Length < 0.02, $"{balance.Length * t.Length}");
        double bent = 0;
        for (var i = 0; i + 1 < line.Points.Length; i++)
        {
            bent += line.Directions[i].AngleTo(line.Directions[i + 1]).Radians;
            var step = line.Along[i + 1] - line.Along[i];
            Assert.InRange(line.Points[i].DistanceTo(line.Points[i + 1]), step * (1 - step * step / (23 * line.MinRadius * line.MinRadius)), step * (1 + 1e-5));
        }

        Within(bent, line.Bend.Radians, 3e-3);

        // The ends must turn at least from the one direction to the chord and on to the other.
        Assert.True(line.Bend.Radians >= t.From.Direction.AngleTo(t.To.Direction).Radians * (1 - 1e-4), "turn");
        Assert.True(line.Energy >= line.Bend.Radians * line.Bend.Radians / (2 * t.Length) * (1 - 1e-5), "Cauchy-Schwarz");
    });

    /// <summary>The force on the far end is the energy's change as that end moves, its moment the change as it turns: central differences.</summary>
    [Fact]
    public void Force_and_moment_are_the_energys_slopes() => Gen.Select(Rods, Direction).Check(30, t =>
    {
        var ((from, to, _), way) = t;
        var length = t.Item1.Length;
        var line = ElasticRod.Lines(from, to, length)[0];
        Vector3 Middle(ElasticLine l) => l.Points[l.Points.Length / 2];

        // The line that is nearest, not its twin on the other side of a plane.
        double Energy(RodEnd end) => ElasticRod.Lines(from, end, length).MinBy(l => Middle(l).DistanceTo(Middle(line)))!.Energy;
        var step = 2e-3 * length;
        var slope = (Energy(to with { Point = to.Point + step * way }) - Energy(to with { Point = to.Point - step * way })) / (2 * step);
        var size = line.EndForce.Length + line.Energy / length;
        Assert.True(Math.Abs(slope - line.EndForce.Dot(way)) < 2e-3 * size, $"force {slope} {line.EndForce.Dot(way)}");

        var turn = new Angle(2e-3);
        var bySize = line.EndMoment.Length + line.Energy;
        var turned = (Energy(to with { Direction = to.Direction.Rotate(way, turn) }) - Energy(to with { Direction = to.Direction.Rotate(way, -turn) }))
            / (2 * turn.Radians);
        Assert.True(Math.Abs(turned - line.EndMoment.Dot(way)) < 3e-3 * bySize, $"moment {turned} {line.EndMoment.Dot(way)}");
    });

    /// <summary>A support on the line that is there anyhow changes nothing: clamp or point, gripped or sliding.</summary>
    [Theory]
    [InlineData(true, true)]
    [InlineData(true, false)]
    [InlineData(false, true)]
    [InlineData(false, false)]
    public void A_support_on_its_line_changes_nothing(bool hasDirection, bool isGripped) => Rods.Check(8, t =>
    {
        var line = ElasticRod.Lines(t.From, t.To, t.Length)[0];
        var at = line.Points.Length / 3;
        var support = new RodSupport(line.Points[at], hasDirection ? line.Directions[at] : null, isGripped ? line.Along[at] : null);
        var lay = ElasticRod.Lay(t.From, [support], t.To, t.Length);
        Assert.Equal(hasDirection && isGripped ? 2 : 1, lay.Pieces.Length);
        Assert.Contains(Combined(lay), c => Math.Abs(c.Energy - line.Energy) < 1e-3 * line.Energy && Math.Abs(c.Bend - line.Bend.Radians) < 0.01);
    });

    private static IEnumerable<(double Energy, double Bend)> Combined(ElasticLines lay)
    {
        IEnumerable<(double Energy, double Bend)> all = [(0, 0)];
        foreach (var piece in lay.Pieces)
        {
            all = all.SelectMany(_ => piece.Lines, (sum, line) => (sum.Energy + line.Energy, sum.Bend + line.Bend.Radians));
        }

        return all;
    }

    /// <summary>Sliding, the rod has no more energy than gripped anywhere near, and so it rests.</summary>
    [Fact]
    public void A_sliding_rod_rests_where_its_energy_is_least()
    {
        RodEnd from = new(Vector3.Zero, X), to = new(new(280, 120, 0), Y);
        var at = new Vector3(150, -20, 40);
        ElasticLine Line(double? along) => Assert.Single(ElasticRod.Lay(from, [new(at, null, along)], to, 440).Pieces).Lines[0];
        var free = Line(null);
        var closest = Enumerable.Range(0, free.Points.Length).MinBy(i => free.Points[i].DistanceTo(at));
        Assert.True(free.Points[closest].DistanceTo(at) < 1e-6);
        var spare = free.Along[closest] - at.Length;
        foreach (var part in new[] { -0.3, -0.1, 0.1, 0.3 })
        {
            Assert.True(Line(free.Along[closest] + part * spare).Energy > free.Energy);
        }
    }

    /// <summary>Length given up to a support that does not reach it is said, not stretched.</summary>
    [Fact]
    public void A_piece_that_does_not_reach_is_too_short()
    {
        Assert.True(ElasticRod.Lay(new(Vector3.Zero, X), [new(new(100, 50, 0), X, 105)], new(new(300, 0, 0), X), 500).IsTooShort);
        Assert.False(ElasticRod.Lay(new(Vector3.Zero, X), [new(new(100, 50, 0), X, 125)], new(new(300, 0, 0), X), 500).IsTooShort);
    }

    /// <summary>Friction takes the largest bend, the radius check the smallest radius, over the lines without a loop.</summary>
    [Fact]
    public void The_worst_line_counts()
    {
        RodEnd from = new(Vector3.Zero, X), to = new(new(280, 120, 0), Y);
        var lay = ElasticRod.Lay(from, [], to, 900);
        var lines = Assert.Single(lay.Pieces).Lines.Where(l => !l.IsLooped).ToArray();
        Assert.Equal(lines.Max(l => l.Bend), lay.MaxBend);
        Assert.Equal(lines.Min(l => l.MinRadius), lay.MinRadius);
        var mirrored = lay.Mirrored();
        Assert.Equal(lay.MaxBend, mirrored.MaxBend);
        Assert.Equal(lay.Points.Select(p => p.MirroredInY), mirrored.Points);
    }

    private static void Within(double expected, double actual, double part) =>
        Assert.True(Math.Abs(actual - expected) <= part * Math.Abs(expected), $"{actual} is not {expected} within {part:g2} of it");
}
