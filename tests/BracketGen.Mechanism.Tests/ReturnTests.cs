using System.Collections.Immutable;
using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;
using BracketGen.Mechanism.Forces;
using BracketGen.Mechanism.Grooves;
using BracketGen.Mechanism.Motion;
using BracketGen.Mechanism.Pedals;
using BracketGen.Mechanism.Throttles;
using BracketGen.TestSupport;
using CsCheck;

namespace BracketGen.Mechanism.Tests;

/// <summary>Drag, springs one by one, and the time the valve takes to close.</summary>
public class ReturnTests
{
    private static readonly Vector2 Seat = StopPlacement.At(Cases.Alder, 180, 2, Angle.FromDegrees(130))!.Seat.XY;

    /// <summary>
    /// Both directions beside the differential equation itself: dT = μ T dβ + f dβ along an outer whose every bit takes μ T and a part of its own, integrated from the free end (Runge-Kutta).
    /// Without load at the far end it gives the drag F0 as a spring balance reads it, and with a load T1 it must give T1 e^{μβ} + F0: the drag is multiplied on its way, and that is in F0.
    /// </summary>
    [Fact]
    public void Drag_and_load_add_up_as_along_the_outer() => Gen.Select(Gen.Double[0, 0.4], Gen.Double[0.5, 8], Gen.Double[0, 3], Gen.Double[0, 40]).Check(100, t =>
    {
        var (mu, bend, ownDrag, load) = t;
        double Along(double tension)
        {
            const int steps = 400;
            var h = bend / steps;
            double Slope(double at) => mu * at + ownDrag;
            for (var i = 0; i < steps; i++)
            {
                var k1 = Slope(tension);
                var k2 = Slope(tension + h / 2 * k1);
                var k3 = Slope(tension + h / 2 * k2);
                tension += h / 6 * (k1 + 2 * k2 + 2 * k3 + Slope(tension + h * k3));
            }

            return tension;
        }

        CableFriction friction = new(mu, new(bend)) { OpeningDrag = Along(0), ClosingDrag = Along(0) };
        Assert.Equal(Along(load), friction.Opening(load), 1e-6 * Along(load) + 1e-9);
        Assert.Equal(Along(load), friction.ToDrawBack(load), 1e-6 * Along(load) + 1e-9);
        Assert.Equal(load, friction.Closing(Along(load)), 1e-6 * Along(load) + 1e-6);
    });

    /// <summary>The case that was seen to pass: friction 0.5 over two turns and a pedal that lifts itself. 10 N of drag on 31.5 mm takes 315 of 300 N·mm.</summary>
    [Fact]
    public void Without_load_at_the_pedal_the_drag_is_what_holds_the_valve()
    {
        CableFriction slack = new(0.5, new(4 * Math.PI));
        Pedal lifted = new(48, 2.5) { PadLoad = -1 };
        ReturnSprings springs = new(300, 600, 2);
        ReturnMargin Worst(CableFriction f) => ReturnMargin.Least(ReturnMargin.Over(LoadedTravel.Solve(Cases.Alder, Seat, 2, 48, springs, f, CableCompliance.Rigid), springs, lifted));
        Assert.Equal(1, Worst(slack).Fraction);
        Assert.Equal(-0.05, Worst(slack with { ClosingDrag = 10 }).Fraction, 1e-9);
    }

    /// <summary>Opening, the shaft's drag is overcome twice over the torque read as it closes, and the cable's drag comes on top: by hand.</summary>
    [Fact]
    public void The_foot_feels_the_opening_drag()
    {
        CableFriction friction = new(0.12, Angle.FromDegrees(150)) { OpeningDrag = 4, ClosingDrag = 3 };
        CableCompliance cable = new() { WireLength = 900, WireDiameter = 1.5, Fill = 0.55, OuterLength = 500, OuterAxialStiffness = 30_000, Bracket = 0.01 };
        var travel = LoadedTravel.Solve(Cases.Alder, Seat, 2, 48, new(300, 600, 2), friction, cable, shaftDrag: 12);
        var e = Math.Exp(0.12 * Angle.FromDegrees(150).Radians);
        var foot = FootForce.Loop(travel, new(48, 2.5));
        Assert.Equal((324 / 31.5 * e + 4) / 2.5, foot[0].Pressing, 1e-9);
        Assert.Equal((300 / 31.5 - 3) / e / 2.5, foot[0].Releasing, 1e-9);
        Assert.Equal(cable.PerTension(friction) * 324 / 31.5 + 4 * (cable.Wire + 1 / 60.0), travel.LostAtFirstMove, 1e-12);
        Assert.Equal(travel.Travel.FreePlay + travel.LostAtFirstMove, travel.PullAt(Angle.Zero), 1e-9);
    }

    [Fact]
    public void Of_springs_measured_one_by_one_the_strongest_fails()
    {
        var springs = ReturnSprings.Of([new(new(100, 10), new(300, 20)), new(new(180, 5), new(250, 30)), new(new(90, 8), new(90, 8))]);
        Assert.Equal((new Measured(370, 23), new Measured(640, 58), 3), (springs.TorqueClosed, springs.TorqueOpen, springs.Count));

        // The strongest is another one at each end of the sweep.
        Assert.Equal((new Measured(190, 18), new Measured(340, 38), 2), (springs.OneFailed().TorqueClosed, springs.OneFailed().TorqueOpen, springs.OneFailed().Count));
        for (var i = 0; i < 3; i++)
        {
            var left = springs.Without(i);
            Assert.True(left.TorqueAt(0) >= springs.OneFailed().TorqueAt(0) && left.TorqueAt(0.4) >= springs.OneFailed().TorqueAt(0.4) && left.TorqueAt(1) >= springs.OneFailed().TorqueAt(1));
        }

        Assert.Equal(90 - 8 + 100 - 10, springs.Weakest().OneFailed().TorqueAt(0), 1e-12);

        // Not measured one by one: the strongest of two may be 1.2 of an equal part, which leaves 0.8 of one.
        Assert.Equal(0.8 * 150, new ReturnSprings(300, 600, 2).OneFailed(ReturnSprings.StrongestAtWorst).TorqueAt(0), 1e-12);
        Assert.Equal(springs, springs with { Each = [.. springs.Each] });
    }

    private static ImmutableArray<ReturnMargin> Sweep(int steps, double rotation, Func<double, double> torque) =>
        [.. Enumerable.Range(0, steps + 1).Select(i => new ReturnMargin(new(rotation * i / steps), torque(rotation * i / steps), 0))];

    /// <summary>A constant torque turns through Θ in √(2 Θ J/M); exact for any number of steps (uniformly accelerated motion).</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(48)]
    public void A_constant_torque_closes_in_the_time_of_free_fall(int steps) => Assert.Equal(
        Math.Sqrt(2 * 1.4 * 0.3 / 250), ClosingMotion.Time(Sweep(steps, 1.4, _ => 250), _ => 0.3), 1e-12);

    /// <summary>A torsion spring M = k θ let go at Θ reaches θ = 0 after a quarter of its period, π/2 √(J/k), wherever it began (simple harmonic motion).</summary>
    [Theory]
    [InlineData(0.2)]
    [InlineData(1.5)]
    public void A_torsion_spring_closes_in_a_quarter_of_its_period(double rotation)
    {
        var quarter = Math.PI / 2 * Math.Sqrt(0.3 / 400);
        double By(int steps) => ClosingMotion.Time(Sweep(steps, rotation, at => 400 * at + 1e-9), _ => 0.3);
        Assert.Equal(quarter, By(48), 4e-3 * quarter);
        Assert.Equal(quarter, By(10_000), 2e-5 * quarter);
    }

    /// <summary>A preloaded spring, M = M0 + k θ: (π/2 - asin(a/A))/ω with a = M0/k, A = Θ + a, ω = √(k/J), from the same motion.</summary>
    [Fact]
    public void A_preloaded_spring_closes_in_part_of_it()
    {
        double k = 400, preload = 250, rotation = 1.45, inertia = 0.3;
        var a = preload / k;
        var exact = Math.Acos(a / (rotation + a)) / Math.Sqrt(k / inertia);
        Assert.Equal(exact, ClosingMotion.Time(Sweep(48, rotation, at => preload + k * at), _ => inertia), 5e-4 * exact);
    }

    /// <summary>Where the inertia changes with the opening the energy decides: ½ J ω² = M (Θ - θ), so t = ∫ √(J/(2 M (Θ - θ))) dθ; with J = J0 (Θ - θ) it is Θ √(J0/(2 M)).</summary>
    [Fact]
    public void A_changing_inertia_follows_the_energy()
    {
        const int steps = 4000;
        double rotation = 1.4, torque = 250, slope = 0.3;
        double Inertia(int i) => slope * (rotation - rotation * i / steps);
        var exact = rotation * Math.Sqrt(slope / (2 * torque));

        // ω begins at √(2 M/J0) at once, while the step from rest counts it as risen evenly: the first step alone takes twice as long.
        Assert.Equal(exact * (1 + 1.0 / steps), ClosingMotion.Time(Sweep(steps, rotation, _ => torque), Inertia), 1e-9);
    }

    [Fact]
    public void A_valve_that_hangs_never_closes() => Assert.Equal(
        double.PositiveInfinity, ClosingMotion.Time(Sweep(48, 1.4, at => at - 0.7), _ => 0.3));

    /// <summary>
    /// Steel of 7.85 g/cm³ by hand: plate of 58 mm, 2 mm thick, π/4 · 7.85e-6 · 2 · 29⁴ = 8.72 kg mm²; shaft of 8 mm, 118 mm long, 0.37; quadrant of 34.5 mm, 9 mm thick, 157.2.
    /// </summary>
    [Fact]
    public void The_inertia_is_that_of_discs_and_cylinders()
    {
        var quadrant = Cases.Alder with { OuterRadius = 34.5, Thickness = 9 };
        Assert.Equal(8.72 + 0.37 + 157.2, 1000 * ShaftInertia.Estimate(new(58, 8, Angle.Zero), quadrant), 0.1);
    }
}
