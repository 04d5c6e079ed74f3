using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Search;
using BracketGen.Design.Study;
using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;
using BracketGen.Mechanism.Grooves;
using BracketGen.Mechanism.Motion;
using BracketGen.Mechanism.Pedals;
using BracketGen.Mechanism.Throttles;
using BracketGen.Profiles.Family;
using BracketGen.SheetMetal.Cutting;
using BracketGen.SheetMetal.Shops;
using BracketGen.TestSupport;
using BracketGen.Words.Checks;
using BracketGen.Words.Report;

namespace BracketGen.Design.Tests;

/// <summary>The whole mechanism of an answer, and its checks.</summary>
public class MechanismReportTests
{
    private static readonly Job Plover = Examples.Read("plover-alder-58");
    private static readonly Solution Answer = Designer.Solve(Plover);

    // A bend that opens by δ turns all behind it about its axis: the seat moves by δ a × (P - A), a the axis (rigid rotation).
    [Fact]
    public void A_bend_angle_moves_the_seat_about_the_bends_axis()
    {
        var bracket = Answer.Bracket!;
        var seat = bracket.FoldedSeat.Point;
        var tolerances = SeatTolerances.Of(bracket, CuttingProcess.Laser, Plover.Vehicle.Cable.OuterEnd);
        for (var i = 0; i < bracket.Flat.Bends.Length; i++)
        {
            var (point, axis) = bracket.Folded.AxisOf(bracket.Flat.Bends[i]);
            var moved = axis.Cross(seat - point).XY;
            var tolerance = tolerances.Single(t => t.Name == $"bend {i + 1}, angle");
            Assert.Equal(0, tolerance.Shift.DistanceTo(moved), 1e-2);
            Assert.Equal(1, new Angle(tolerance.PlusMinus).Degrees, 1e-9);
        }
    }

    // ISO 9013 class 1, t 1 to 3.15, nominal 3 to 10: ±0.15; ISO 273 medium hole for M6: 6.6, at most 6.75, so 0.375 play each way.
    [Fact]
    public void Cut_and_bolts_have_the_standards_tolerances()
    {
        var tolerances = SeatTolerances.Of(Answer.Bracket!, CuttingProcess.Laser, Plover.Vehicle.Cable.OuterEnd);
        Assert.InRange(Answer.Bracket!.Stock.Thickness, 1, 3.15);
        Assert.All(tolerances.Where(t => t.Name.StartsWith("cut", StringComparison.Ordinal)), t => Assert.Equal(0.15, t.PlusMinus));
        Assert.All(tolerances.Where(t => t.Name.StartsWith("bolts", StringComparison.Ordinal)), t => Assert.Equal(0.375, t.PlusMinus, 1e-9));
        Assert.All(tolerances.Where(t => t.Name.StartsWith("cut", StringComparison.Ordinal)), t => Assert.InRange(t.Shift.Length, 0, 1 + 1e-6));
    }

    [Theory]
    [InlineData("plover-alder-58")]
    [InlineData("dunlin-rowan-64")]
    public void A_mirrored_job_has_the_same_mechanism(string name)
    {
        var job = Examples.Read(name) with { Bulkhead = Plover.Bulkhead };
        Solution one = Designer.Solve(job), other = Designer.Solve(job.Mirrored());
        Assert.Equal(
            one.Checks.Select(c => (c.Code, Math.Round(c.Value, 4))),
            other.Checks.Select(c => (c.Code, Math.Round(c.Value, 4))));
        var (a, b) = (one.Mechanism!, other.Mechanism!);
        Assert.Equal(a.Outer!.Shortest!.Length, b.Outer!.Shortest!.Length, 1e-4);
        Assert.Equal(a.Outer.Order, b.Outer.Order);
        Assert.Equal(a.Outer.Points(10).Length, b.Outer.Points(10).Length);
        Assert.All(a.Outer.Points(10).Zip(b.Outer.Points(10)), p => Assert.True(p.First.Mirrored().DistanceTo(p.Second) < 1e-3));
    }

    // Pull of an eccentric circle by the taut string: dL/dθ = -h at the leaving normal; where the wire keeps its direction the
    // pull is ρ Θ + e [sin(φ - γ) - sin(φ - Θ - γ)]. It keeps it the better the farther the stop is.
    [Fact]
    public void An_eccentric_groove_pulls_by_its_arm()
    {
        var quadrant = Examples.Read("dunlin-rowan-64").Body.OpeningCounterClockwise().Quadrant;
        var groove = Assert.IsType<EccentricGroove>(quadrant.Groove);
        var leaving = quadrant.PocketNormal + quadrant.Rotation.Value + Angle.FromDegrees(30);
        var seat = groove.PointWithNormal(leaving) + 1e5 * Vector2.FromPolar(1, leaving).Left;
        var rotation = quadrant.Rotation.Value.Radians;
        var by = (leaving - groove.Direction).Radians;
        Assert.Equal(
            groove.Radius.Value * rotation + groove.Offset * (Math.Sin(by) - Math.Sin(by - rotation)),
            Travel.Solve(quadrant, seat, 2, 60).PullToWideOpen, 1e-2);
    }

    [Fact]
    public void Changing_direction_at_the_outers_end_is_held_against_its_limit()
    {
        var job = Examples.Read("dunlin-rowan-64");
        var tight = job with { Vehicle = job.Vehicle with { Cable = job.Vehicle.Cable with { WanderLimit = new(1e-3) } } };
        Assert.True(Check(Designer.Solve(job), "outer-side-load").Passes);
        Assert.False(Check(Designer.Solve(tight), "outer-side-load").Passes);
        Assert.Equal(0, Check(Answer, "outer-side-load").Value, 1e-9); // a round groove keeps the wire's direction
    }

    // T1 = T2 e^{μβ} (Euler-Eytelwein): a pad load W over the lever's ratio i asks the springs for i W e^{μβ} R at every opening; drag F0 for F0 R, the shaft for its own torque.
    [Fact]
    public void A_heavy_pedal_is_a_danger()
    {
        var pedal = Plover.Vehicle.Pedal with { PadLoad = 2 };
        var cable = Plover.Vehicle.Cable with { Friction = 0.15, TotalBend = Math.PI };
        var solution = Designer.Solve(Plover with { Bulkhead = null, Vehicle = Plover.Vehicle with { Pedal = pedal, Cable = cable } });
        var needed = (2 * 3.4 * Math.Exp(0.15 * Math.PI) + 1.5 * 1.5) * 31.5 + 1.5 * 15;
        var least = Plover.Body.Springs.TorqueClosed.Min;
        Assert.Equal(1 - needed / least, Check(solution, "return-margin").Value, 1e-9);
        Assert.Equal(1 - needed / 240, Check(solution, "return-one-failed").Value, 1e-9);
        Assert.Contains(solution.Dangers, d => d.Code == "return-one-failed" || d.Code == "return-margin");
        Assert.False(solution.Passes);
    }

    [Fact]
    public void Lost_motion_is_taken_off_the_over_travel()
    {
        var soft = Plover with { Vehicle = Plover.Vehicle with { Cable = Plover.Vehicle.Cable with { OuterAxialStiffness = 4_500 } } };
        var solution = Designer.Solve(soft);
        Assert.True(Check(solution, "wide-open").Passes);
        Assert.False(Check(solution, "wide-open-loaded").Passes);
        Assert.Equal(solution.Travel.OverTravel - solution.Mechanism!.Loaded!.LostAtWideOpen, Check(solution, "wide-open-loaded").Value, 1e-9);
    }

    // With one reading uncertain, uniform over its ±, the probability is a length over a length: the adjuster gives wire up to
    // range/2, so the minimum free play f is there as long as the free inner length is not shorter than nominal by more than
    // range/2 + slack - f.
    [Fact]
    public void The_probability_of_closing_is_exact_for_one_reading()
    {
        const double plusMinus = 8, range = 8;
        var exact = Plover with
        {
            Vehicle = new(
                "Plover",
                Plover.Vehicle.Cable with { FreeInnerLength = new(138, plusMinus), OuterEnd = new ThreadedAdjuster(8, 1, range, 13, 5), Friction = 0 },
                Plover.Vehicle.Pedal with { AvailablePull = 51 }),
            Preferences = Plover.Preferences with { FreePlay = 2, MinFreePlay = 1 },
            Body = Plover.Body with
            {
                Quadrant = Plover.Body.Quadrant with
                {
                    Groove = new CircularGroove(31.5),
                    Rotation = Plover.Body.Quadrant.Rotation.Value,
                    Pocket = Plover.Body.Quadrant.Pocket.Value,
                },
            },
        };
        var (travel, _) = Designer.CheckTravel(exact);
        var report = MechanismReport.Of(exact, travel, null, null);
        var spare = range / 2 + 2 - 1;
        Assert.Equal((plusMinus + spare) / (2 * plusMinus), report.Closes.Value, 2e-3);
        var check = report.Checks.Single(c => c.Code == "probability-closes");
        Assert.True(check.IsDanger);
        Assert.Contains("free inner length", check.Consequence(), StringComparison.Ordinal);
    }

    [Fact]
    public void The_outers_way_is_checked_where_the_job_gives_the_bulkhead()
    {
        Assert.True(Check(Answer, "outer-route").Passes);
        Assert.True(Check(Answer, "outer-bend-radius").Passes);
        Assert.DoesNotContain(Designer.Solve(Plover with { Bulkhead = null }).Checks, c => c.Code.StartsWith("outer-r", StringComparison.Ordinal));
        var shorter = Plover with { Vehicle = Plover.Vehicle with { Cable = Plover.Vehicle.Cable with { OuterLength = 200 } } };
        var solution = Designer.Solve(shorter);
        Assert.False(Check(solution, "outer-length").Passes);
        Assert.False(solution.Mechanism!.Outer!.IsLaid);
        Assert.IsType<OuterTooShort>(solution.Mechanism.Outer.Problem);
        Assert.Equal(0, Check(solution, "outer-bend-radius").Value);
    }

    private static Job WithOuter(Measured? length, Measured? bend = null) => Plover with
    {
        Vehicle = Plover.Vehicle with
        {
            Cable = Plover.Vehicle.Cable with { OuterLength = length, TotalBend = bend ?? Plover.Vehicle.Cable.TotalBend },
        },
    };

    private static MechanismReport At(Measured? length, Measured? bend = null) =>
        MechanismReport.Of(WithOuter(length, bend), Answer.Travel, Answer.Placement, Answer.Bracket, 64);

    /// <summary>Issue case: outers of 430 to 1500 mm had the bends of the shortest route. As rods they have more with every length, up to a loop.</summary>
    [Fact]
    public void Spare_outer_adds_bends_and_is_said()
    {
        var bends = new[] { 420.0, 450, 500, 600, 800 }.Select(l => At(l).Friction.TotalBend.Degrees).ToArray();
        Assert.Equal(bends.Order(), bends);
        Assert.True(bends[^1] > 300 && bends[0] < 90);
        MechanismReport well = At(450), spare = At(600);
        Assert.True(Spare(well).Passes);
        Assert.Null(well.Outer!.Order);
        Assert.True(Spare(spare).Fails);

        // What is named to order lies well, and so does one a centimetre shorter.
        var order = spare.Outer!.Order!.Value;
        Assert.True(Spare(At(order)).Passes && Spare(At(order - 10)).Passes);
        Assert.True(At(order).Outer!.MinRadius >= Plover.Vehicle.Cable.MinBendRadius);
        Assert.Equal(order, At(300).Outer!.Order);
        Assert.Equal(order, At(null).Outer!.Order);
        static Check Spare(MechanismReport report) => report.Checks.Single(c => c.Id == CheckId.OuterSpare);
    }

    /// <summary>Friction takes the larger of what was measured and what is calculated; a bulkhead does not hide the measurement.</summary>
    [Fact]
    public void The_larger_of_measured_and_calculated_bends_counts()
    {
        var calculated = At(450).Friction.TotalBend.Degrees;
        Angle less = Angle.FromDegrees(calculated - 30), more = Angle.FromDegrees(calculated + 30);
        Assert.Equal(calculated, At(450, new(less.Radians)).Friction.TotalBend.Degrees, 1e-9);
        Assert.Equal(calculated + 30, At(450, new(more.Radians)).Friction.TotalBend.Degrees, 1e-9);
        Assert.Equal(calculated + 32, At(450, new(more.Radians, 2 * Math.PI / 180)).Friction.TotalBend.Degrees, 1e-9);
    }

    /// <summary>The worst within the length's ± counts: most bends, smallest radius.</summary>
    [Fact]
    public void The_lengths_plus_minus_counts()
    {
        var report = At(new Measured(450, 20));
        Assert.Equal(At(470).Friction.TotalBend.Degrees, report.Friction.TotalBend.Degrees, 1e-9);
        Assert.Equal(Math.Min(At(430).Outer!.MinRadius, At(470).Outer!.MinRadius), report.Outer!.MinRadius, 1e-9);
    }

    /// <summary>An outer that was not measured: its radius is not known, the usual bends stand in, and up to a full turn is looked at.</summary>
    [Fact]
    public void Without_its_length_nothing_is_claimed()
    {
        var report = At(null);
        Assert.Equal(CheckState.NotKnown, report.Checks.Single(c => c.Id == CheckId.OuterBendRadius).State);
        Assert.Equal(180, report.Friction.TotalBend.Degrees, 1e-9);
        Assert.NotNull(report.Return!.AtWorst);
        Assert.True(report.Return.AtWorst.Value.All < At(450).Return!.All.Min(m => m.Fraction));
    }

    /// <summary>A clip aside leads the outer through it and adds bends; one on the line changes nothing.</summary>
    [Fact]
    public void A_clip_leads_the_outer()
    {
        var line = At(450).Outer!.AtLengths[0].Pieces[0].Lines[0];
        var middle = line.Points.Length / 2;
        MechanismReport Through(params OuterClip[] clips) => MechanismReport.Of(
            WithOuter(450) with { Bulkhead = Plover.Bulkhead! with { Clips = [.. clips] } }, Answer.Travel, Answer.Placement, Answer.Bracket, 64);
        var on = Through(new OuterClip(new(line.Points[middle]), line.Directions[middle], line.Along[middle]));
        Assert.Equal(2, on.Outer!.AtLengths[0].Pieces.Length);
        Assert.Equal(line.Bend.Degrees, on.Friction.TotalBend.Degrees, 0.05);
        var inside = (line.Points[0] + 2 * line.Points[middle] + line.Points[^1]) / 4;
        var aside = Through(new OuterClip(new(inside)));
        Assert.True(aside.Outer!.IsLaid, $"{aside.Outer.AtLengths[0].Pieces.Length}");
        Assert.Contains(aside.Outer.AtLengths[0].Points, p => p.DistanceTo(inside) < 0.01);
        Assert.True(Math.Abs((aside.Friction.TotalBend - on.Friction.TotalBend).Degrees) > 1);
    }

    // The route's ends and directions are those of stop and bulkhead, and its bends are what friction takes.
    [Fact]
    public void The_way_runs_from_the_stop_to_the_bulkhead()
    {
        var route = Answer.Mechanism!.Outer!.Shortest!;
        var bulkhead = Plover.Bulkhead!;
        Assert.Equal(0, route.At(0).Point.DistanceTo(Answer.Placement!.Seat.Vector), 1e-6);
        Assert.Equal(0, route.At(route.Length).Point.DistanceTo(bulkhead.Point.Vector), 1e-4);
        Assert.Equal(Math.PI, route.At(route.Length).Direction.AngleTo(bulkhead.Direction).Radians, 1e-4);
        var line = Answer.Mechanism.Outer.AtLengths[0];
        Assert.Equal(line.MaxBend, Answer.Mechanism.Friction.TotalBend);
        Assert.Equal(0, line.Points[0].DistanceTo(Answer.Placement.Seat.Vector), 1e-6);
        Assert.Equal(0, line.Points[^1].DistanceTo(bulkhead.Point.Vector), 1e-3);
        Assert.Equal(Plover.Vehicle.Cable.OuterLength!.Value.Value, route.Length + Answer.Mechanism.Outer.Spare, 1e-6);
    }

    [Fact]
    public void A_controller_with_a_fixed_zero_may_have_no_dead_band()
    {
        var job = Examples.Read("dunlin-rowan-64");
        var late = job with
        {
            Vehicle = job.Vehicle with { Controller = new() { ZeroVolts = 0.6 } },
            Body = job.Body with { Sensor = job.Body.Sensor! with { Slot = Angle.Zero } },
        };
        var check = Check(Designer.Solve(late), "dead-band");
        Assert.False(check.Passes);
        Assert.Equal(80 * (0.6 - 0.48) / (4.55 - 0.48), new Angle(check.Value).Degrees, 1e-9); // linear between the two readings
    }

    // 0.9 V closed, 4.5 V wide open over 72°: 0.05 V for a degree, so a zero of 0.5 V takes the closed valve for 8° open.
    [Theory]
    [InlineData(0.9, 0.5, 0.0, "controller-zero", CheckState.Fails, 8)]
    [InlineData(0.9, 0.5, 5.0, "controller-zero", CheckState.Fails, 3)]
    [InlineData(0.9, 0.5, 10.0, "controller-zero", CheckState.Passes, 0)]
    [InlineData(0.9, 0.5, null, "controller-zero", CheckState.NotKnown, 0)]
    [InlineData(0.4, 0.5, 0.0, "dead-band", CheckState.Fails, 2)]
    [InlineData(0.4, 0.5, null, "dead-band", CheckState.NotKnown, 0)]
    [InlineData(0.48, 0.5, null, "dead-band", CheckState.Passes, 0)]
    [InlineData(0.5, null, 0.0, "sensor-closed", CheckState.Passes, 0)]
    [InlineData(0.44, null, 0.0, "sensor-closed", CheckState.Fails, 0.06)]
    [InlineData(0.56, null, 0.0, "sensor-closed", CheckState.Fails, 0.06)]
    [InlineData(0.44, null, 2.0, "sensor-closed", CheckState.Passes, 0)]
    [InlineData(0.44, null, null, "sensor-closed", CheckState.NotKnown, 0)]
    public void The_closed_reading_is_judged_before_cutting(double closed, double? zero, double? slot, string id, CheckState state, double value)
    {
        var check = Sensed(new(closed, closed + 3.6, Angle.FromDegrees(72)) { Slot = slot is { } s ? Angle.FromDegrees(s) : null }, zero, id);
        Assert.Equal(state, check.State);
        Assert.Equal(value, zero is null ? check.Value : new Angle(check.Value).Degrees, 1e-9);
    }

    // Set from 0.9 V to 0.5 V, the upper end goes with it: 5.1 V is 4.7 V then, and 5.2 V is beyond what follows the shaft.
    [Fact]
    public void The_range_is_judged_as_it_will_be_set()
    {
        PositionSensor Of(double open) => new(0.9, open, Angle.FromDegrees(72)) { Slot = Angle.FromDegrees(20) };
        Assert.Equal(4.7, Sensed(Of(5.1), null, "sensor-max").Value, 1e-12);
        Assert.Equal(4.75, Sensed(Of(5.1), null, "sensor-max").Limit);
        Assert.Equal(4.8, Sensed(Of(5.1) with { MaxVolts = 5 }, null, "sensor-max").Limit); // the controller's own
        Assert.True(Sensed(Of(5.2), null, "sensor-max").Fails);
    }

    private static Check Sensed(PositionSensor sensor, double? zero, string id)
    {
        var job = Plover with
        {
            Vehicle = Plover.Vehicle with { Controller = new() { ZeroVolts = zero, MaxVolts = 4.8 } },
            Body = Plover.Body with { Sensor = sensor },
        };
        return MechanismReport.Of(job, Answer.Travel, Answer.Placement, null, samples: 16).Checks.Single(c => c.Code == id);
    }

    [Fact]
    public void A_study_of_the_travel_alone_has_the_numbers_of_the_answer()
    {
        var job = Examples.Read("dunlin-rowan-64");
        var (study, solution) = (TravelStudy.Of(job), Designer.Solve(job, SearchEffort.BestOnly));
        Assert.True(study.StopIsDesigned);
        Assert.Equal(solution.Travel.PullToWideOpen, study.Travel.PullToWideOpen, 1e-9);
        Assert.All(study.Checks, c => Assert.Equal(Check(solution, c.Code), c));
        Assert.False(TravelStudy.Of(Plover with { Bulkhead = null }).StopIsDesigned);
    }

    [Fact]
    public void A_wire_that_passes_the_shaft_leaves_nothing_to_say_but_does_not_throw()
    {
        var quadrant = Plover.Body.Quadrant with { Pocket = Angle.Zero, Rotation = new Angle(3), GrooveExtent = new(3.1) };
        var past = Travel.Solve(quadrant, new(-60, 30), 2, 51);
        Assert.True(past.LeastArm < 0);
        var report = MechanismReport.Of(Plover, past, null, null);
        Assert.Null(report.Loaded);
        Assert.Null(report.Progression);
        Assert.Empty(report.Returns);

        // What could not be calculated is not known, and never passes.
        Assert.Equal(
            ["wide-open-loaded", "return-margin", "return-one-failed", "closing-time", "foot-force", "probability-closes", "probability-in-groove"],
            report.Checks.Where(c => c.State == CheckState.NotKnown).Select(c => c.Code));
        Assert.NotEqual(VerdictKind.Passes, Verdict.Of(report.Checks).Kind);
    }

    private static Check Check(Solution solution, string id) => solution.Checks.Single(c => c.Code == id);
}
