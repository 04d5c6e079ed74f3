using BracketGen.Design.Checks;
using BracketGen.Design.Part;
using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;
using BracketGen.Mechanism.Grooves;
using BracketGen.Mechanism.Motion;
using BracketGen.Mechanism.Pedals;
using BracketGen.Mechanism.Throttles;
using BracketGen.TestSupport;
using BracketGen.Words.Report;
using CsCheck;

namespace BracketGen.Mechanism.Tests;

public class ValveTests
{
    private static readonly Gen<(ButterflyValve Valve, Angle Opening)> Any = Gen.Select(
        Gen.Double[30, 90], Gen.Double[0, 0.4], Gen.Double[0, 15], Gen.Double[0, 100],
        (bore, shaft, closed, psi) => (new ButterflyValve(bore, shaft * bore, Angle.FromDegrees(closed)), Angle.FromDegrees(psi)));

    /// <summary>
    /// The projection itself, drawn line by line across the bore: bore chord less plate chord outside the shaft's strip. It shares
    /// nothing with the formula.
    /// </summary>
    private static double Projected(ButterflyValve valve, Angle opening)
    {
        const int Lines = 40_000;
        double radius = valve.Bore / 2, half = valve.Shaft / 2, open = 0;
        var minor = radius * Math.Abs(Math.Cos((valve.ClosedAngle + opening).Radians)) / Math.Cos(valve.ClosedAngle.Radians);
        for (var i = 0; i < Lines; i++)
        {
            var y = radius * (i + 0.5) / Lines;
            if (y <= half)
            {
                continue;
            }

            var bore = Math.Sqrt(radius * radius - y * y);
            var plate = y < minor ? radius * Math.Sqrt(1 - y * y / (minor * minor)) : 0;
            open += Math.Max(0, bore - plate);
        }

        return 4 * open * radius / Lines / valve.BoreArea;
    }

    /// <summary>Heywood 1988, eq. 7.18, against direct numerical projection.</summary>
    [Fact]
    public void The_area_is_the_projection() => Any.Where(t => (t.Valve.ClosedAngle + t.Opening).Degrees < 100).Check(60, t =>
    {
        // Past 90° a plate that shows more than it did shut is no longer a throttle.
        if (Math.Abs(Math.Cos((t.Valve.ClosedAngle + t.Opening).Radians)) < Math.Cos(t.Valve.ClosedAngle.Radians))
        {
            Assert.Equal(Projected(t.Valve, t.Opening), t.Valve.AreaFraction(t.Opening), 2e-4);
        }
    });

    /// <summary>Heywood 1988, eq. 7.18 with shaft diameter 0: A/A_bore = 1 - cos ψ/cos ψ₀.</summary>
    [Theory]
    [InlineData(0, 30, 0.13397)]
    [InlineData(0, 60, 0.5)]
    [InlineData(0, 90, 1)]
    [InlineData(10, 50, 0.49229)] // 1 - cos 60°/cos 10°
    public void Without_a_shaft_it_is_the_ellipse(double closed, double opening, double fraction) => Assert.Equal(
        fraction, new ButterflyValve(58, 0, Angle.FromDegrees(closed)).AreaFraction(Angle.FromDegrees(opening)), 1e-5);

    /// <summary>
    /// Heywood 1988 below eq. 7.18: the largest area is about πD²/4 - dD (a thin shaft), reached where cos ψ = a cos ψ₀. For
    /// a 58 mm bore and 4 mm shaft that is 2410.1 mm², and the exact strip is 0.02 % smaller in what it hides.
    /// </summary>
    [Fact]
    public void The_largest_area_is_the_bore_less_the_shaft()
    {
        ButterflyValve valve = new(58, 4, Angle.FromDegrees(6));
        var open = Math.Acos(4 / 58.0 * Math.Cos(valve.ClosedAngle.Radians)) - valve.ClosedAngle.Radians;
        Assert.Equal(Math.PI * 58 * 58 / 4 - 4 * 58, valve.Area(new(open)), 0.3);
        Assert.Equal(valve.Area(new(open)), valve.Area(new(open - 1e-7)), 1e-3);
        Assert.Equal(valve.Area(new(open)), valve.Area(Angle.FromDegrees(84)), 1e-9);
    }

    [Fact]
    public void A_closed_valve_is_closed() => Any.Check(200, t =>
    {
        Assert.Equal(0, t.Valve.AreaFraction(Angle.Zero), 1e-14);
        Assert.InRange(t.Valve.AreaFraction(new(1e-3)), -1e-15, 0.01);
    });

    private static LoadedTravel Travel(Groove groove, CableCompliance compliance)
    {
        var quadrant = Cases.Alder with { Groove = groove };
        var seat = StopPlacement.At(quadrant, 180, 2, Angle.FromDegrees(130))!.Seat.XY;
        return LoadedTravel.Solve(quadrant, seat, 2, 48, new(300, 600, 2), CableFriction.None, compliance);
    }

    /// <summary>Round quadrant, constant lever: valve % is straight between first move (2/48) and wide open (47.08/48).</summary>
    [Fact]
    public void The_progression_of_a_round_quadrant_is_straight_to_the_valve()
    {
        ButterflyValve valve = new(58, 8, Angle.FromDegrees(6));
        var progression = Progression.Of(Travel(new CircularGroove(31.5), CableCompliance.Rigid), new ConstantLever(2.5, 120), valve);
        Assert.Equal(101, progression.Points.Length);
        Assert.Equal(2 / 48.0, progression.PedalAtFirstMove, 1e-12);
        foreach (var point in progression.Points)
        {
            var expected = Math.Clamp((point.Pedal * 48 - 2) / (31.5 * Angle.FromDegrees(82).Radians), 0, 1);
            Assert.Equal(expected, point.Valve, 1e-9);
            Assert.Equal(valve.AreaFraction(Angle.FromDegrees(82 * expected)) / valve.AreaFraction(Angle.FromDegrees(82)), point.Area, 1e-9);
        }

        // A tenth of the stroke is 4.8 mm, 8.73°: the area there over the area at 82°, over a tenth.
        var tenth = valve.AreaFraction(new(4.8 / 31.5)) / valve.AreaFraction(Angle.FromDegrees(82));
        Assert.Equal(tenth / 0.1, progression.Suddenness, 1e-9);
        Assert.True(progression.Suddenness < Progression.Sudden);
    }

    /// <summary>A groove that is small off idle turns the valve faster there; one that is large, slower.</summary>
    [Fact]
    public void Suddenness_tells_grooves_apart()
    {
        ButterflyValve valve = new(58, 8, Angle.FromDegrees(6));
        ConstantLever lever = new(2.5, 120);
        double Of(double direction) =>
            Progression.Of(Travel(new EccentricGroove(27, 9, Angle.FromDegrees(direction)), CableCompliance.Rigid), lever, valve).Suddenness;
        var round = Progression.Of(Travel(new CircularGroove(31.5), CableCompliance.Rigid), lever, valve).Suddenness;
        Assert.True(Of(130) < round && round < Of(-50), $"{Of(130)} {round} {Of(-50)}");
    }

    [Fact]
    public void Lost_motion_moves_the_first_move_back()
    {
        ButterflyValve valve = new(58, 8, Angle.FromDegrees(6));
        var travel = Travel(new CircularGroove(31.5), new() { WireLength = 900, WireDiameter = 1.5, Bracket = 0.05 });
        var progression = Progression.Of(travel, new ConstantLever(2.5, 120), valve);
        Assert.Equal((2 + travel.LostAtFirstMove) / 48, progression.PedalAtFirstMove, 1e-12);
        Assert.All(progression.Points.Zip(progression.Points.Skip(1)), p => Assert.True(p.Second.Area >= p.First.Area - 1e-12));
    }

    /// <summary>Equal steps of pedal from released to floor, as many as are asked for.</summary>
    [Fact]
    public void The_pedal_goes_down_in_equal_steps()
    {
        var progression = Progression.Of(
            Travel(new CircularGroove(31.5), CableCompliance.Rigid), new ConstantLever(2.5, 120), new(58, 8, Angle.FromDegrees(6)), steps: 4);
        Assert.Equal([0, 0.25, 0.5, 0.75, 1], progression.Points.Select(p => p.Pedal));
        Assert.Equal(0, progression.Points[0].Area, 1e-15);
        Assert.Equal(1, progression.Points[^1].Area);
    }

    [Fact]
    public void Progressions_are_equal_where_all_of_them_is()
    {
        Progression one = new([new(0, 0, 0), new(1, 1, 1)], 0.05, 1.5);
        Assert.Equal(one, new([new(0, 0, 0), new(1, 1, 1)], 0.05, 1.5));
        Assert.Equal(one.GetHashCode(), new Progression([new(0, 0, 0), new(1, 1, 1)], 0.05, 1.5).GetHashCode());
        Assert.False(one.Equals(null));
        Assert.NotEqual(one, one with { PedalAtFirstMove = 0.06 });
        Assert.NotEqual(one, one with { Suddenness = 1.6 });
        Assert.NotEqual(one, one with { Points = [new(0, 0, 0), new(1, 1, 0.9)] });
    }
}
