using BracketGen.Design.Checks;
using BracketGen.Design.Part;
using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;
using BracketGen.Mechanism.Forces;
using BracketGen.Mechanism.Grooves;
using BracketGen.Mechanism.Motion;
using BracketGen.Mechanism.Pedals;
using BracketGen.Mechanism.Throttles;
using BracketGen.TestSupport;
using BracketGen.Words.Report;
using CsCheck;

namespace BracketGen.Mechanism.Tests;

public class ForceTests
{
    private static readonly ReturnSprings Springs = new(new(300, 30), new(600, 60), 2);
    private static readonly CableFriction Friction = new(new(0.12, 0.03), Angle.FromDegrees(150));
    private static readonly Pedal Pedal = new(48, 2.5);

    private static readonly Vector2 Seat =
        StopPlacement.At(Cases.Alder, 180, 2, Angle.FromDegrees(130))!.Seat.XY;

    private static LoadedTravel Solve(
        CableCompliance? compliance = null, CableFriction? friction = null, Quadrant? quadrant = null, double pull = 48) =>
        LoadedTravel.Solve(
            quadrant ?? Cases.Alder, Seat, 2, pull, Springs, friction ?? Friction, compliance ?? CableCompliance.Rigid);

    /// <summary>
    /// Ratios e^{μβ} of the Euler-Eytelwein formula as printed in textbook tables of rope friction (to three figures, from memory):
    /// half a turn and whole turns round a post.
    /// </summary>
    [Theory]
    [InlineData(0.1, 180, 1.37)]
    [InlineData(0.3, 180, 2.57)]
    [InlineData(0.1, 360, 1.87)]
    [InlineData(0.2, 360, 3.51)]
    [InlineData(0.3, 360, 6.59)]
    [InlineData(0.5, 360, 23.1)]
    [InlineData(0.2, 720, 12.3)]
    public void The_capstan_ratio_is_the_textbooks(double friction, double degrees, double ratio) =>
        Assert.Equal(ratio, new CableFriction(friction, Angle.FromDegrees(degrees)).Ratio, 0.006 * ratio);

    /// <summary>The capstan equation dT/dβ = μT, integrated in small steps (Euler's own derivation), and its mean over the bend.</summary>
    [Fact]
    public void Tension_grows_as_the_differential_equation_says()
    {
        const int Steps = 200_000;
        double tension = 20, sum = 0, step = Friction.TotalBend.Radians / Steps;
        for (var i = 0; i < Steps; i++)
        {
            var next = tension * (1 + Friction.Coefficient.Value * step);
            sum += (tension + next) / 2;
            tension = next;
        }

        Assert.Equal(tension, Friction.Opening(20), 1e-4);
        Assert.Equal(sum / Steps / 20, Friction.MeanRatio, 1e-6);
        Assert.Equal(20, Friction.Closing(Friction.Opening(20)), 1e-12);
        Assert.Equal(1, CableFriction.None.MeanRatio);
        Assert.Equal(new CableFriction(0, new(3)).MeanRatio, new CableFriction(1e-9, new(3)).MeanRatio, 1e-8);
    }

    /// <summary>T = τ/R: 300 N·mm on 31.5 mm is 9.524 N; through e^{0.12·150°} = 1.3691 and a lever of 2.5.</summary>
    [Fact]
    public void Foot_force_is_tension_through_outer_and_lever()
    {
        var loop = FootForce.Loop(Solve(), Pedal);
        Assert.Equal(9.524, loop[0].Tension, 1e-3);
        Assert.Equal(9.524 * 1.3691 / 2.5, loop[0].Pressing, 1e-3);
        Assert.Equal(9.524 / 1.3691 / 2.5, loop[0].Releasing, 1e-3);
        Assert.Equal(2 * 2.5, loop[0].PadTravel, 1e-9);
        Assert.Equal(600 / 31.5, loop[^1].Tension, 1e-9);
    }

    /// <summary>
    /// Energy: without friction and load the foot's work over the sweep is what the springs store, (300 + 600)/2 · 82°, whatever the
    /// groove and lever; friction adds its part going down and keeps it coming up.
    /// </summary>
    [Theory]
    [InlineData(0)]
    [InlineData(0.4)]
    public void The_feet_work_is_the_springs_energy(double eccentricity)
    {
        var quadrant = Cases.Alder with { Groove = new EccentricGroove(31.5, 31.5 * eccentricity, new(2)) };
        var seat = StopPlacement.At(quadrant, 180, 2, Angle.FromDegrees(130))!.Seat.XY;
        var pedal = Pedal with { Table = new([new(0, 0), new(30, 15), new(80, 36), new(150, 70)]) };
        double Work(CableFriction friction, Func<FootForce, double> force)
        {
            var travel = LoadedTravel.Solve(quadrant, seat, 2, 70, Springs, friction, CableCompliance.Rigid);
            var loop = FootForce.Loop(travel, pedal, 2000);
            return loop.Zip(loop.Skip(1), (a, b) => (force(a) + force(b)) / 2 * (b.PadTravel - a.PadTravel)).Sum();
        }

        var stored = (300 + 600) / 2.0 * Angle.FromDegrees(82).Radians;
        Assert.Equal(stored, Work(CableFriction.None, f => f.Pressing), 0.01);
        Assert.Equal(stored, Work(CableFriction.None, f => f.Releasing), 0.01);
        Assert.Equal(stored * Friction.Ratio, Work(Friction, f => f.Pressing), 0.01);
        Assert.Equal(stored / Friction.Ratio, Work(Friction, f => f.Releasing), 0.01);
    }

    /// <summary>
    /// Steel wire of 1.5 mm, 900 mm long, 55 % metal: L/(EA) = 900/(200000 · 0.55 · 1.7671) = 4.630e-3 mm/N (Hooke).
    /// </summary>
    [Fact]
    public void Lost_motion_is_hookes_law()
    {
        CableCompliance cable = new() { WireLength = 900, WireDiameter = 1.5, Fill = 0.55, OuterLength = 500, OuterAxialStiffness = 100_000, Bracket = 0.002 };
        Assert.Equal(4.630e-3, cable.Wire, 1e-6);
        Assert.Equal(4.630e-3 + 1 / 200.0 + 0.002, cable.PerTension(CableFriction.None), 1e-6);
        Assert.Equal((4.630e-3 + 1 / 200.0) * Friction.MeanRatio + 0.002, cable.PerTension(Friction), 1e-6);
        Assert.Equal(0, CableCompliance.Rigid.PerTension(Friction));
    }

    /// <summary>Closed form on a round quadrant: p(θ) = f + Rθ + c τ(θ)/R is linear in θ, so the opening reached is too.</summary>
    [Fact]
    public void On_a_round_quadrant_the_loaded_travel_is_linear()
    {
        CableCompliance cable = new() { WireLength = 900, WireDiameter = 1.5, Fill = 0.55, OuterLength = 500, OuterAxialStiffness = 30_000 };
        var travel = Solve(cable, pull: 46);
        double c = travel.LostPerTension, rotation = Angle.FromDegrees(82).Radians;
        Assert.Equal(c * 300 / 31.5, travel.LostAtFirstMove, 1e-12);
        Assert.Equal(c * 600 / 31.5, travel.LostAtWideOpen, 1e-12);
        var expected = (46 - 2 - c * 300 / 31.5) / (31.5 + c * 300 / rotation / 31.5);
        Assert.Equal(expected, travel.Reached.Radians, 1e-11);
        Assert.Equal(46, travel.PullAt(travel.Reached), 1e-9);
        Assert.Equal(travel.Travel.OverTravel - travel.LostAtWideOpen, travel.OverTravel, 1e-12);
        Assert.Equal(Solve(pull: 46).Reached.Radians, Solve(pull: 46).Travel.Reached.Radians, 1e-11);
        Assert.Equal(Angle.Zero, travel.OpeningAt(2));
    }

    /// <summary>Pedal on the floor past wide open: the over-travel stretches the wire, T = T(Θ) + over-travel/c.</summary>
    [Fact]
    public void Over_travel_stretches_the_wire_against_the_stop()
    {
        CableCompliance cable = new() { WireLength = 900, WireDiameter = 1.5, Fill = 0.55 };
        var travel = Solve(cable);
        Assert.True(travel.OverTravel > 0);
        Assert.Equal(48, 2 + travel.Travel.PullToWideOpen + travel.LostPerTension * travel.TensionOnFloor, 1e-9);
        Assert.Equal(double.PositiveInfinity, Solve().TensionOnFloor);
        var tooShort = Solve(cable, pull: 40);
        Assert.Equal(tooShort.TensionAt(tooShort.Reached), tooShort.TensionOnFloor, 1e-12);
    }

    /// <summary>3 mm too short on 31.5 mm: the valve stands 3/31.5 rad = 5.457° open; with free play it is closed.</summary>
    [Fact]
    public void A_wire_too_short_holds_the_valve_open()
    {
        LoadedTravel With(double freePlay, CableCompliance cable) =>
            LoadedTravel.Solve(Cases.Alder, Seat, freePlay, 48, Springs, Friction, cable);
        Assert.Equal(5.457, With(-3, CableCompliance.Rigid).OpeningAt(0).Degrees, 1e-3);
        Assert.Equal(0, With(2, CableCompliance.Rigid).OpeningAt(0).Radians);
        Assert.InRange(With(-3, new() { WireLength = 900, WireDiameter = 1.5, Fill = 0.5 }).OpeningAt(0).Degrees, 5.2, 5.45);
    }

    [Fact]
    public void Openings_and_pulls_belong_together() => Gen.Select(Gen.Double[0, 0.5], Gen.Double[-3, 3], Gen.Double[0.02, 0.98]).Check(60, t =>
    {
        var quadrant = Cases.Alder with { Groove = new EccentricGroove(30, 30 * t.Item1, new(t.Item2)) };
        var placed = StopPlacement.At(quadrant, 180, 2, Angle.FromDegrees(140))!;
        CableCompliance cable = new() { WireLength = 900, WireDiameter = 1.5, Fill = 0.55, Bracket = 0.01 };
        var travel = LoadedTravel.Solve(quadrant, placed.Seat.XY, 2, 80, Springs, Friction, cable);
        var opening = t.Item3 * travel.Travel.Rotation;
        Assert.Equal(opening.Radians, travel.OpeningAt(travel.PullAt(opening)).Radians, 1e-9);
    });

    [Fact]
    public void A_wire_that_passes_the_shaft_is_refused()
    {
        var quadrant = Cases.Quadrant(new CircularGroove(30), rotationDegrees: 190, pocketDegrees: 0);
        var error = Assert.Throws<ArgumentException>(() => LoadedTravel.Solve(
            quadrant, new(-100, 0), 2, 60, Springs, Friction, CableCompliance.Rigid));
        Assert.Contains("passes the throttle shaft", error.Message, StringComparison.Ordinal);
    }

    /// <summary>
    /// Worked by hand: 8 N of pedal weight at a pad of ratio 2.5 is 20 N in the wire, times 1.3691 at the quadrant, times 31.5 mm is
    /// 862.5 N·mm: more than the springs' 300 N·mm at the closed stop. 1 N leaves 300 - 107.8.
    /// </summary>
    [Theory]
    [InlineData(8, 862.5)]
    [InlineData(1, 107.82)]
    [InlineData(-5, 0)]
    public void A_heavy_pedal_holds_the_valve_open(double load, double needed)
    {
        var margins = ReturnMargin.Over(Solve(), Springs, Pedal with { PadLoad = load });
        var least = ReturnMargin.Least(margins);
        Assert.Equal(needed, margins[0].Needed, 0.05);
        Assert.Equal((300 - needed) / 300, least.Fraction, 1e-3);
        Assert.Equal(300 - needed, least.Left, 0.05);
        Assert.Equal(Angle.Zero, least.Opening);
        Assert.Equal(1 - needed / 600, margins[^1].Fraction, 1e-3);
    }

    [Fact]
    public void Shaft_friction_and_drag_take_their_part()
    {
        var margins = ReturnMargin.Over(Solve(friction: Friction with { ClosingDrag = 2, OpeningDrag = 3 }), Springs, Pedal, shaftDrag: 25);
        Assert.All(margins, m => Assert.Equal(2 * 31.5 + 25, m.Needed, 1e-9));
    }

    /// <summary>49 CFR 571.124 S5: with one of two energy sources gone the other must still close the valve.</summary>
    [Fact]
    public void One_failed_spring_leaves_the_others()
    {
        Assert.Equal(new(new(150, 15), new(300, 30), 1), Springs.OneFailed());
        Assert.Equal(new(0, 0, 0), Springs.OneFailed().OneFailed() with { TorqueClosed = 0, TorqueOpen = 0 });
        Assert.Equal(0, Springs.OneFailed().OneFailed().TorqueAt(0.5));
        Assert.Equal(270, Springs.Weakest().TorqueAt(0));
        Assert.Equal(double.NegativeInfinity, ReturnMargin.Over(Solve(), Springs.OneFailed().OneFailed(), Pedal)[0].Fraction);
        var worse = Friction.Worst();
        Assert.True(worse.Ratio > Friction.Ratio);
    }

    /// <summary>
    /// Drag by hand, 3 N opening and 2 N closing beside μβ = 0.314 (ratio 1.3691): opening against 20 N takes 30.38 N, closing with 20 N leaves (20 - 2)/1.3691 =
    /// 13.147 N, and drawing back against those takes the 20 N again. A pedal that weighs 3 N on the pad takes as much off the foot's force.
    /// </summary>
    [Fact]
    public void Drag_and_the_pedals_weight_have_their_sign()
    {
        var dragging = Friction with { ClosingDrag = 2, OpeningDrag = 3 };
        Assert.Equal(20 * 1.36911 + 3, dragging.Opening(20), 1e-3);
        Assert.Equal(13.147, dragging.Closing(20), 1e-3);
        Assert.Equal(20, dragging.ToDrawBack(dragging.Closing(20)), 1e-12);
        Assert.Equal(0, dragging.Closing(1.5));
        FootForce bare = FootForce.Loop(Solve(), Pedal)[0], weighed = FootForce.Loop(Solve(), Pedal with { PadLoad = 3 })[0];
        Assert.Equal(bare.Pressing - 3, weighed.Pressing, 1e-12);
        Assert.Equal(bare.Releasing - 3, weighed.Releasing, 1e-12);
    }

    /// <summary>The mean of e^{xs} over s from 0 to 1 by Simpson's rule, whose error here is below 1e-17: little friction and least.</summary>
    [Theory]
    [InlineData(1e-3)]
    [InlineData(8e-6)]
    [InlineData(1e-9)]
    public void The_mean_along_a_nearly_straight_outer(double x) => Assert.Equal(
        (1 + 4 * Math.Exp(x / 2) + Math.Exp(x)) / 6, new CableFriction(x, new(1)).MeanRatio, 2e-11);

    /// <summary>Just wide open with nothing that gives way: the tension is the springs', 600 N·mm on 31.5 mm.</summary>
    [Fact]
    public void Without_over_travel_the_floor_holds_what_the_springs_ask()
    {
        var pull = Solve().Travel.PullToWideOpen;
        var travel = LoadedTravel.Solve(Cases.Alder, Seat, 0, pull, Springs, Friction, CableCompliance.Rigid);
        Assert.Equal(0, travel.OverTravel);
        Assert.Equal(600 / 31.5, travel.TensionOnFloor, 1e-9);
    }

    /// <summary>
    /// A soft cable on a groove whose arm grows fast: the pull rises, falls and rises again, and the valve is where it is asked for
    /// the first time, at the tip of the peak too. Beside it every hundredth of a degree tried in turn.
    /// </summary>
    [Fact]
    public void The_opening_is_the_first_that_asks_for_as_much()
    {
        var quadrant = Cases.Alder with { Groove = new EccentricGroove(31.5, 25, Angle.FromDegrees(-60)) };
        var seat = StopPlacement.At(quadrant, 180, 2, Angle.FromDegrees(130))!.Seat.XY;
        CableCompliance cable = new() { WireLength = 900, WireDiameter = 1.5, Bracket = 1 };
        var travel = LoadedTravel.Solve(quadrant, seat, 2, 90, new(300, 300, 1), CableFriction.None, cable);
        var tried = Enumerable.Range(0, 8201).Select(i => travel.PullAt(Angle.FromDegrees(i / 100.0))).ToArray();
        var peak = tried.Take(4000).Max();
        double[] pulls =
        [
            .. Enumerable.Range(0, 60).Select(i => tried.Min() - 1 + (tried.Max() - tried.Min() + 2) * i / 59),
            peak - 0.1, peak - 0.01, peak - 1e-4, peak,
        ];
        var openings = travel.OpeningsAt(pulls);
        for (var i = 0; i < pulls.Length; i++)
        {
            var first = Array.FindIndex(tried, t => t >= pulls[i]);
            Assert.Equal(first < 0 ? 82 : first / 100.0, openings[i].Degrees, 0.0101);
            Assert.Equal(openings[i], travel.OpeningAt(pulls[i]));
        }

        Assert.Contains(tried.Zip(tried.Skip(1)), t => t.Second < t.First); // otherwise this checks little
    }

    /// <summary>
    /// Random soft cables on eccentric grooves, most of them with peaks: no opening is missed that asks for the pull before the one found. Beside it
    /// every two-thousandth of the sweep tried in turn, and pulls that only just reach one of its peaks.
    /// </summary>
    [Fact]
    public void No_place_where_the_valve_could_hang_is_missed() => Gen.Select(
        Gen.Double[0.55, 0.9], Gen.Double[-3.1, 3.1], Gen.Double[0.05, 3], Gen.Double[0.2, 3], Gen.Double[20, 200], Gen.Double[0, 0.999])
        .Check(60, t =>
    {
        var (offset, direction, give, springs, straight, part) = t;
        var quadrant = Cases.Alder with { Groove = new EccentricGroove(31.5, offset * 31.5, new(direction)) };
        if (StopPlacement.At(quadrant, straight + 60, 2, Angle.FromDegrees(130)) is not { } placed
            || BracketGen.Mechanism.Motion.Travel.TrySolve(quadrant, placed.Seat.XY, 2, 90) is not { LeastArm: > 0 })
        {
            return;
        }

        CableCompliance cable = new() { WireLength = 900, WireDiameter = 1.5, Bracket = give };
        var travel = LoadedTravel.Solve(quadrant, placed.Seat.XY, 2, 90, new(300 * springs, 300, 1), CableFriction.None, cable);
        const int Steps = 2000;
        var tried = Enumerable.Range(0, Steps + 1).Select(i => travel.PullAt((double)i / Steps * travel.Travel.Rotation)).ToArray();
        var peaks = Enumerable.Range(1, Steps - 1).Where(i => tried[i] > tried[i - 1] && tried[i] > tried[i + 1]).Select(i => tried[i]);
        double[] pulls = [tried.Min() + part * (tried.Max() - tried.Min()), .. peaks.Select(p => p - 1e-9), .. peaks.Select(p => p - 1e-3)];
        foreach (var (pull, opening) in pulls.Zip(travel.OpeningsAt(pulls)))
        {
            var first = Array.FindIndex(tried, p => p >= pull);
            var found = opening.Radians / travel.Travel.Rotation.Radians * Steps;
            Assert.True(first < 0 || found <= first + 1e-6, $"{found} is past {first} at {pull}");
            Assert.True(found >= 1 || found == 0 || tried[0] < pull);
            Assert.True(travel.PullAt(opening) >= pull - 1e-6 || opening == travel.Travel.Rotation);

            // And it is the first: nothing before it asks for as much.
            Assert.All(tried.Take((int)Math.Floor(found - 1e-6)), p => Assert.True(p < pull + 1e-9));
        }
    });

    /// <summary>The arm's slope is its change, wrapped and lifted off: central differences; and no smaller arm lies between the sweep's steps.</summary>
    [Fact]
    public void The_least_arm_is_found_between_the_steps() => Gen.Select(
        Gen.Double[0.3, 0.95], Gen.Double[-3.1, 3.1], Gen.Double[40, 200]).Check(60, t =>
    {
        var quadrant = Cases.Alder with { Groove = new EccentricGroove(31.5, t.Item1 * 31.5, new(t.Item2)) };
        if (StopPlacement.At(quadrant, t.Item3 + 60, 2, Angle.FromDegrees(130)) is not { } placed
            || BracketGen.Mechanism.Motion.Travel.TrySolve(quadrant, placed.Seat.XY, 2, 90) is not { } travel)
        {
            return;
        }

        TautWire At(double part) => TautWire.Solve(quadrant, placed.Seat.XY, part * travel.Rotation);
        var tried = Enumerable.Range(0, 3001).Min(i => At(i / 3000.0).Arm);
        Assert.True(travel.LeastArm <= tried + 1e-9, $"{travel.LeastArm} {tried}");
        const double Step = 1e-5;
        var slope = (At(0.4 + Step).Arm - At(0.4 - Step).Arm) / (2 * Step * travel.Rotation.Radians);
        Assert.Equal(slope, At(0.4).ArmSlope, 1e-3 * (1 + Math.Abs(slope)));
    });

    [Fact]
    public void Without_springs_none_can_fail()
    {
        var none = new ReturnSprings(300, 600, 0).OneFailed();
        Assert.Equal((0.0, 0.0, 0), (none.TorqueAt(0), none.TorqueAt(1), none.Count));
        Assert.Equal(200, new ReturnSprings(300, 600, 3).OneFailed().TorqueAt(0), 1e-12); // two of three
    }
}
