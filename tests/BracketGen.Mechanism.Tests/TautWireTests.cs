using BracketGen.Design.Checks;
using BracketGen.Geometry;
using BracketGen.Mechanism.Grooves;
using BracketGen.Mechanism.Motion;
using BracketGen.TestSupport;
using BracketGen.Units;
using BracketGen.Words.Report;
using CsCheck;

namespace BracketGen.Mechanism.Tests;

public class TautWireTests
{
    private static readonly Gen<(Quadrant Quadrant, Vector2 Stop, Angle Opening)> Any = Gen.Select(
        Cases.Grooves, Gen.Double[-0.1, 2.4], Gen.Double[60, 200], Gen.Double[0.05, 1.4],
        (groove, leaving, straight, opening) =>
        {
            // A quadrant whose pocket lies in the middle of its table, where it has one.
            var pocket = groove is TabulatedGroove { IsClosed: false } table
                ? table.Points[table.Points.Length / 3].Polar.Degrees
                : 20;
            var quadrant = Cases.Quadrant(groove, pocketDegrees: pocket);
            var normal = quadrant.PocketNormal + new Angle(leaving);
            var stop = groove.PointWithNormal(normal) + straight * Vector2.FromPolar(1, normal).Left;
            return (quadrant, stop, new Angle(opening));
        });

    /// <summary>
    /// Virtual work: whatever the groove, on it or lifted off, the moment arm is the pull per opening, dL/dθ = -arm. Checked by a
    /// five-point difference to 1e-6 of the arm.
    /// </summary>
    [Fact]
    public void The_moment_arm_is_the_pull_per_opening() => Any.Check(600, t =>
    {
        double Length(double step) => TautWire.Solve(t.Quadrant, t.Stop, t.Opening + new Angle(step)).Length;
        var wire = TautWire.Solve(t.Quadrant, t.Stop, t.Opening);
        if (Math.Abs(wire.Wrap.Radians) < 0.01)
        {
            return; // Where it lifts off the arm has a kink, and no difference is good to 1e-6.
        }

        const double H = 2e-3;
        var slope = (8 * (Length(H) - Length(-H)) - (Length(2 * H) - Length(-2 * H))) / (12 * H);
        var scale = t.Quadrant.Groove.Support(t.Quadrant.PocketNormal);

        // A table's third derivative jumps at its rows, which costs the difference formula digits, not the arm.
        Assert.Equal(-slope, wire.Arm, t.Quadrant.Groove is TabulatedGroove ? 2e-5 * scale : 1e-6 * scale);
    });

    /// <summary>The same as an integral, which needs no smoothness: pull(θ) is the area under the arm (Gauss-Legendre by pieces).</summary>
    [Fact]
    public void The_pull_is_the_integral_of_the_arm() => Any.Check(25, t =>
    {
        const int Pieces = 1500;
        double sum = 0, step = t.Opening.Radians / Pieces, offset = step / (2 * Math.Sqrt(3));
        for (var i = 0; i < Pieces; i++)
        {
            var middle = (i + 0.5) * step;
            sum += TautWire.Solve(t.Quadrant, t.Stop, new(middle - offset)).Arm + TautWire.Solve(t.Quadrant, t.Stop, new(middle + offset)).Arm;
        }

        var pull = TautWire.Solve(t.Quadrant, t.Stop, Angle.Zero).Length - TautWire.Solve(t.Quadrant, t.Stop, t.Opening).Length;
        Assert.Equal(sum * step / 2, pull, 1e-5);
    });

    /// <summary>The straight part is a tangent, its distance from the shaft is the arm, and it ends at the stop.</summary>
    [Fact]
    public void The_straight_wire_is_a_tangent_that_ends_at_the_stop() => Any.Check(400, t =>
    {
        var wire = TautWire.Solve(t.Quadrant, t.Stop, t.Opening);
        Assert.True((wire.From + wire.Straight * wire.Direction).DistanceTo(t.Stop) < 1e-8);
        Assert.Equal(wire.Arm, wire.From.Cross(wire.Direction), 1e-9);
        if (!wire.LiftedOff)
        {
            for (var turn = -1.5; turn <= 1.5; turn += 0.3)
            {
                var point = t.Quadrant.Groove.PointWithNormal(wire.Leaving - t.Opening + new Angle(turn)).Rotate(t.Opening);
                Assert.True(
                    t.Quadrant.Groove is TabulatedGroove { IsClosed: false }
                    || (point - wire.From).Cross(wire.Direction) <= 1e-8, "The groove crosses the wire.");
            }
        }
    });

    /// <summary>Closed form on a circle about the shaft: pull = Rθ, ℓ = sqrt(D² - R²), φ = polar - acos(R/D).</summary>
    [Fact]
    public void On_a_constant_radius_the_pull_is_the_arc()
    {
        var stop = Vector2.FromPolar(120, Angle.FromDegrees(230));
        var closed = TautWire.Solve(Cases.Alder, stop, Angle.Zero);
        Assert.Equal(Math.Sqrt(120 * 120 - 31.5 * 31.5), closed.Straight, 1e-10);
        Assert.Equal(230 - Angle.FromDegrees(1).Degrees * Math.Acos(31.5 / 120) * 180 / Math.PI, closed.Leaving.Degrees, 1e-9);
        Assert.Equal(closed.Straight + 31.5 * (closed.Leaving.Radians - Cases.Alder.Pocket.Value.Radians), closed.Length, 1e-9);
        for (var opening = 0.0; opening < 1.4; opening += 0.1)
        {
            var wire = TautWire.Solve(Cases.Alder, stop, new(opening));
            Assert.Equal(31.5 * opening, closed.Length - wire.Length, 1e-9);
            Assert.Equal(31.5, wire.Arm, 1e-12);
            Assert.Equal(closed.Leaving.Radians, wire.Leaving.Radians, 1e-12);
        }
    }

    /// <summary>
    /// Closed form on the eccentric circle: seen from its own centre c(θ) the wire is a tangent to a circle of radius ρ, so
    /// L = sqrt(D(θ)² - ρ²) + ρ (φ(θ) - θ - ν₀) with D(θ) = |stop - c(θ)|, φ = polar(stop - c) - acos(ρ/D).
    /// </summary>
    [Fact]
    public void The_eccentric_circle_has_a_closed_form() => Gen.Select(
        Gen.Double[20, 40], Gen.Double[0, 0.5], Gen.Double[-3, 3], Gen.Double[100, 200], Gen.Double[0, 1.4]).Check(200, t =>
    {
        var (rho, e, gamma, distance, opening) = (t.Item1, t.Item2 * t.Item1, t.Item3, t.Item4, t.Item5);
        var quadrant = Cases.Quadrant(new EccentricGroove(rho, e, new(gamma)));
        var stop = Vector2.FromPolar(distance, Angle.FromDegrees(215));
        var wire = TautWire.Solve(quadrant, stop, new(opening));
        double cx = e * Math.Cos(gamma + opening), cy = e * Math.Sin(gamma + opening);
        double dx = stop.X - cx, dy = stop.Y - cy, d = Math.Sqrt(dx * dx + dy * dy);
        var phi = Math.Atan2(dy, dx) - Math.Acos(rho / d);
        var pocket = quadrant.Pocket.Value.Radians + Math.Asin(e / rho * Math.Sin(quadrant.Pocket.Value.Radians - gamma));
        var wrap = phi - opening - pocket;
        wrap -= 2 * Math.PI * Math.Floor((wrap + Math.PI / 2) / (2 * Math.PI));
        if (wrap > 0)
        {
            Assert.Equal(Math.Sqrt(d * d - rho * rho) + rho * wrap, wire.Length, 1e-9);
            Assert.Equal(rho + cx * Math.Cos(phi) + cy * Math.Sin(phi), wire.Arm, 1e-9); // ρ + c·n
        }
    });

    /// <summary>The general solver against the two closed forms: the same curves without the shortcut.</summary>
    [Fact]
    public void The_search_finds_what_the_closed_forms_say() => Gen.Select(
        Gen.Double[20, 40], Gen.Double[0, 0.9], Gen.Double[-3, 3], Gen.Double[1e-4, 100], Gen.Double[-9, 9]).Check(500, t =>
    {
        var (rho, offset, gamma, beyond, around) = (t.Item1, t.Item2 * t.Item1, t.Item3, t.Item4, t.Item5);
        EccentricGroove known = new(rho, offset, new(gamma));
        WavyGroove searched = new(rho, offset, 0, 0, gamma, 0, 0);
        var stop = Vector2.FromPolar(offset, new(gamma + 0.3)) + Vector2.FromPolar(rho + beyond, new(around));
        var difference = known.LeavingNormal(stop, new(0.3)) - searched.LeavingNormal(stop, new(0.3));
        Assert.Equal(0, difference.Normalised.Radians, 1e-11);
    });

    /// <summary>After lift-off the wire is the straight line from the fitting: plain triangle geometry.</summary>
    [Fact]
    public void Lifted_off_the_wire_runs_straight_from_the_fitting()
    {
        // The stop lies so that the wrap is gone before the valve is open.
        var quadrant = Cases.Alder;
        var stop = quadrant.Groove.PointWithNormal(Angle.FromDegrees(60)) + 90 * Vector2.FromPolar(1, Angle.FromDegrees(150));
        var before = TautWire.Solve(quadrant, stop, Angle.FromDegrees(39.999));
        var after = TautWire.Solve(quadrant, stop, Angle.FromDegrees(40.001));
        Assert.False(before.LiftedOff);
        Assert.True(after.LiftedOff);
        Assert.Equal(before.Length, after.Length, 2e-3);
        Assert.Equal(before.Arm, after.Arm, 1e-3);

        var wire = TautWire.Solve(quadrant, stop, Angle.FromDegrees(70));
        var fitting = Vector2.FromPolar(31.5, Angle.FromDegrees(90));
        Assert.True(wire.LiftedOff);
        Assert.Equal(-30, wire.Wrap.Degrees, 1e-9);
        Assert.Equal(fitting.DistanceTo(stop), wire.Length, 1e-9);
        Assert.Equal(fitting.Cross(stop) / fitting.DistanceTo(stop), wire.Arm, 1e-9); // area of the triangle over its base
        Assert.True(wire.Arm < 31.5);
    }

    [Fact]
    public void Along_the_way_the_length_has_no_jumps() => Any.Check(60, t =>
    {
        var last = TautWire.Solve(t.Quadrant, t.Stop, Angle.Zero);
        for (var opening = 0.01; opening < 1.43; opening += 0.01)
        {
            var wire = TautWire.Solve(t.Quadrant, t.Stop, new(opening));
            Assert.InRange(Math.Abs(wire.Length - last.Length), 0, 0.02 * t.Stop.Length);
            last = wire;
        }
    });

    [Fact]
    public void Long_grooves_take_long_wraps()
    {
        var quadrant = Cases.Alder with { GrooveExtent = Angle.FromDegrees(340) };
        Angle leaving = new(quadrant.Pocket.Value.Radians + Angle.FromDegrees(330).Radians);
        var stop = quadrant.Groove.PointWithNormal(leaving) + 80 * Vector2.FromPolar(1, leaving).Left;
        Assert.Equal(330, TautWire.Solve(quadrant, stop, Angle.Zero).Wrap.Degrees, 1e-9);
        Assert.Equal(250, TautWire.Solve(quadrant, stop, Angle.FromDegrees(80)).Wrap.Degrees, 1e-9);
    }

    /// <summary>
    /// A leaving angle is found up to a turn; which turn is meant, by the wrap it was placed at: short of the pocket (lifted off), or more
    /// than the groove holds, so that this is seen.
    /// </summary>
    [Theory]
    [InlineData(170, 200)]
    [InlineData(170, -85)]
    [InlineData(60, 150)]
    [InlineData(60, -120)]
    [InlineData(359, 350)]
    [InlineData(360, -3)]
    public void The_turn_of_the_wrap_is_told(double extent, double wrap)
    {
        var quadrant = Cases.Alder with { GrooveExtent = Angle.FromDegrees(extent) };
        var leaving = quadrant.PocketNormal + Angle.FromDegrees(wrap);
        var stop = quadrant.Groove.PointWithNormal(leaving) + 80 * Vector2.FromPolar(1, leaving).Left;
        var wire = TautWire.Solve(quadrant, stop, Angle.Zero);
        Assert.Equal(wrap, wire.Wrap.Degrees, 1e-9);
        Assert.Equal(wrap < 0, wire.LiftedOff);
    }

    [Fact]
    public void A_wire_that_just_touches_has_not_lifted_off() =>
        Assert.False((TautWire.Solve(Cases.Alder, new(-80, 40), Angle.Zero) with { Wrap = Angle.Zero }).LiftedOff);

    /// <summary>
    /// Tangents from a point to an ellipse in closed form: scaled to the unit circle the point is (x/a, y/b) = q, the tangents touch where its
    /// parameter is that of q ± acos(1/|q|), with normals along (cos t/a, sin t/b). The wire leaves at the clockwise one. Flat ellipses and
    /// stops close to them are the hardest grooves of all.
    /// </summary>
    [Fact]
    public void The_search_finds_the_tangents_of_an_ellipse() => Gen.Select(
        Gen.Double[0.05, 0.95], Gen.Double[-6, 1.5], Gen.Double[-Math.PI, Math.PI], Gen.Double[-3, 3]).Check(3000, t =>
    {
        var (flat, beyond, around, turn) = (t.Item1, Math.Pow(10, t.Item2), t.Item3, t.Item4);
        EllipticGroove groove = new(40, 40 * flat);
        var touching = new Vector2(groove.A * Math.Cos(around), groove.B * Math.Sin(around));
        var stop = touching + beyond * new Vector2(Math.Cos(around) / groove.A, Math.Sin(around) / groove.B).Unit;
        Vector2 q = new(stop.X / groove.A, stop.Y / groove.B);
        var at = q.Polar.Radians - Math.Atan2(Math.Sqrt((q.Length - 1) * (q.Length + 1)), 1);
        var expected = Math.Atan2(Math.Sin(at) / groove.B, Math.Cos(at) / groove.A);
        var found = groove.LeavingNormal(stop.Rotate(new(turn)), new(turn)).Radians - turn;
        Assert.Equal(0, new Angle(found - expected).Normalised.Radians, 1e-7);
    });

    /// <summary>Against the groove, or a hair inside it, no wire can run to the stop; a hair outside it can.</summary>
    [Fact]
    public void The_groove_itself_is_no_place_for_a_stop()
    {
        Vector2 on = new(30, 0);
        foreach (var groove in new Groove[] { new CircularGroove(30), new EccentricGroove(22, 8, Angle.Zero), new WavyGroove(30, 0, 0, 0, 0, 0, 0) })
        {
            var error = Assert.Throws<ArgumentException>(() => groove.LeavingNormal(on, Angle.Zero));
            Assert.Contains("The stop at (30.0, 0.0) mm lies inside or against the groove", error.Message, StringComparison.Ordinal);
            Assert.Equal(0, groove.LeavingNormal(new(30 + 1e-9, 0), Angle.Zero).Radians, 1e-4);
        }

        EllipticGroove flat = new(40, 5);
        for (var around = 0.05; around < 6.2; around += 0.05)
        {
            Vector2 touching = new(40 * Math.Cos(around), 5 * Math.Sin(around));
            Assert.Throws<ArgumentException>(() => flat.LeavingNormal(0.9999 * touching, Angle.Zero));
            flat.LeavingNormal(1.0001 * touching, Angle.Zero);
        }
    }

    [Fact]
    public void A_stop_inside_the_groove_is_refused() => Gen.Select(Cases.Grooves, Gen.Double[0, 0.95]).Check(100, t =>
    {
        var quadrant = Cases.Quadrant(t.Item1);
        var stop = t.Item2 * quadrant.FittingAt(Angle.Zero);
        if (t.Item1 is not TabulatedGroove { IsClosed: false })
        {
            var error = Assert.Throws<ArgumentException>(() => TautWire.Solve(quadrant, stop, Angle.Zero));
            Assert.Contains("no wire can run to it", error.Message, StringComparison.Ordinal);
        }
    });
}
