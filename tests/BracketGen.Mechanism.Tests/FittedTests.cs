using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;
using BracketGen.Mechanism.Fitted;
using BracketGen.Mechanism.Motion;
using BracketGen.Mechanism.Pedals;
using BracketGen.Mechanism.Throttles;
using BracketGen.Units;
using BracketGen.Words.Fitted;
using BracketGen.Words.Report;

namespace BracketGen.Mechanism.Tests;

public class FittedTests
{
    private static readonly PositionSensor Sensor = new(0.5, 4.6, Angle.FromDegrees(82));

    private static readonly FittedExpectation Expected = new()
    {
        Travel = LoadedTravel.Solve(
            Cases.Alder, StopPlacement.At(Cases.Alder, 180, 2, Angle.FromDegrees(130))!.Seat.XY, 2, 48, new(300, 600, 2),
            CableFriction.None, CableCompliance.Rigid),
        Pedal = new(48, 2.5),
        Sensor = Sensor,
        Pitch = 1,
    };

    private static readonly FittedReadings Right = new() { StopVolts = 0.5, ClosedVolts = 0.5, FlooredVolts = 4.6, FreePlay = 2, PadTravel = 120 };

    private static string Said(Finding finding) => new FindingText(UnitSystem.Metric, 1).Of(finding);

    private static Finding Of(string id, FittedReadings readings, FittedExpectation? expected = null) =>
        Assert.Single(FittedVerdict.Of(readings, expected ?? Expected), f => f.Code == id);

    /// <summary>4.1 V over 82° is 0.05 V for a degree.</summary>
    [Fact]
    public void The_sensor_runs_straight()
    {
        Assert.Equal(0.05, Sensor.VoltsPerAngle * Math.PI / 180, 1e-12);
        Assert.Equal(2.55, Sensor.Volts(Angle.FromDegrees(41)), 1e-12);
        Assert.Equal(0.5, Sensor.Fraction(2.55), 1e-12);
        Assert.Equal(41, Sensor.Opening(2.55).Degrees, 1e-9);
        Assert.Equal(2, Sensor.DeadBand(0.6).Degrees, 1e-9);
        Assert.Equal(0, Sensor.DeadBand(0.45).Degrees);
        var low = new PositionSensor(0.4, 4.5, Angle.FromDegrees(82));
        Assert.Equal(2, low.TurnTo(PositionSensor.ClosedTarget).Degrees, 1e-9);
        Assert.Equal(0.5, low.Turned(low.TurnTo(0.5)).ClosedVolts, 1e-12);
        var falling = new PositionSensor(4.5, 0.4, Angle.FromDegrees(82));
        Assert.Equal(0.5, falling.Fraction(2.45), 1e-12);
        Assert.Equal(1, falling.DeadBand(4.45).Degrees, 1e-9);
        Assert.Throws<ArgumentException>(() => new PositionSensor(1, 1, new(1)));
    }

    [Fact]
    public void A_well_set_vehicle_is_well()
    {
        var findings = FittedVerdict.Of(Right, Expected);
        Assert.Equal(5, findings.Length);
        Assert.All(findings, f => Assert.Equal(FindingWeight.Good, f.Weight));
        Assert.StartsWith("PASSES", FindingText.Verdict(findings), StringComparison.Ordinal);
        Assert.Equal(new ClosingNotKnown(ClosingUnknown.NoStopReading), Assert.Single(FittedVerdict.Of(new(), Expected)));
    }

    /// <summary>5° open is 31.5 · 5 π/180 = 2.749 mm too tight; with the 2 mm wanted the end moves 4.749 mm, 4.7 turns.</summary>
    [Fact]
    public void A_valve_held_open_is_a_safety_finding_with_its_turns()
    {
        var finding = Of("closes", Right with { ClosedVolts = 0.75, FreePlay = 0 });
        Assert.Equal(FindingWeight.Safety, finding.Weight);
        Assert.Equal(-4.749, finding.AdjusterShift!.Value, 1e-3);
        Assert.Contains("5.0° open", Said(finding), StringComparison.Ordinal);
        Assert.Contains("towards the quadrant, which gives slack: 4.7 turns", Said(finding), StringComparison.Ordinal);
        var all = FittedVerdict.Of(Right with { ClosedVolts = 0.75, FreePlay = 0 }, Expected);
        Assert.Equal(FindingWeight.Safety, all[0].Weight);
    }

    [Theory]
    [InlineData(0.4, FindingWeight.Safety, -1.6, "Too little free play: 0.4 mm")]
    [InlineData(1.6, FindingWeight.Good, null, "right")]
    [InlineData(6, FindingWeight.Adjust, 4.0, "the first part of the pedal's travel does nothing. Move the outer's end 4.0 mm away from the quadrant, which takes up slack: 4.0 turns of the nuts (1.0 mm a turn).")]
    public void Free_play_is_judged(double slack, FindingWeight weight, double? shift, string text)
    {
        var finding = Of("free-play", Right with { FreePlay = slack });
        Assert.Equal(weight, finding.Weight);
        Assert.Equal(shift, finding.AdjusterShift is { } s ? Math.Round(s, 9) : null);
        Assert.Contains(text, Said(finding), StringComparison.Ordinal);
    }

    /// <summary>4.5 V is 80°: 2° missing, 31.5 · 2 π/180 = 1.0996 mm. Slack of 3 mm has it in hand, 1.5 mm has not.</summary>
    [Fact]
    public void A_valve_not_quite_open_is_mended_from_the_slack_or_not_at_all()
    {
        var mended = Of("wide-open", Right with { FlooredVolts = 4.5, FreePlay = 3 });
        Assert.Equal(1.0996, mended.AdjusterShift!.Value, 1e-4);
        Assert.Contains("98 % open (80.0° of 82.0°): 1.1 mm of pull is missing", Said(mended), StringComparison.Ordinal);
        Assert.Contains("1.1 turns", Said(mended), StringComparison.Ordinal);
        var not = Of("wide-open", Right with { FlooredVolts = 4.5, FreePlay = 1.5 });
        Assert.Null(not.AdjusterShift);
        Assert.Contains("The adjuster cannot give it: free play has only 0.5 mm in hand", Said(not), StringComparison.Ordinal);
    }

    [Fact]
    public void Dead_bands_are_found()
    {
        var fixedZero = Expected with { ControllerZero = 0.6 };
        Assert.Contains("until the valve is 2.0° open", Said(Of("dead-band", Right, fixedZero)), StringComparison.Ordinal);
        Assert.Equal(FindingWeight.Adjust, Of("dead-band", Right, fixedZero).Weight);
        Assert.Contains("may not idle", Said(Of("dead-band", Right, Expected with { ControllerZero = 0.4 })), StringComparison.Ordinal);
        Assert.Equal(FindingWeight.Good, Of("dead-band", Right, Expected with { ControllerZero = 0.5 }).Weight);
        var low = Expected with { Sensor = new PositionSensor(0.3, 4.4, Angle.FromDegrees(82)) };
        Assert.Contains("outside 0.45 to 0.55 V", Said(Of("dead-band", Right with { StopVolts = 0.3 }, low)), StringComparison.Ordinal);
        var falling = Expected with { Sensor = new PositionSensor(4.5, 0.4, Angle.FromDegrees(82)) };
        Assert.All(FittedVerdict.Of(Right with { StopVolts = 4.5, ClosedVolts = 4.5, FlooredVolts = 0.4 }, falling), f => Assert.Equal(FindingWeight.Good, f.Weight));
    }

    [Theory]
    [InlineData(100, "Carpet or a pedal stop takes 20.0 mm, 8.0 mm of pull.")]
    [InlineData(130, "It may strain the valve's stop.")]
    public void Pad_travel_is_held_against_what_was_measured(double travel, string text) =>
        Assert.Contains(text, Said(Of("pad-travel", Right with { PadTravel = travel })), StringComparison.Ordinal);

    /// <summary>Read at 0.82 V before, set back 6.4° to 0.5 V: a valve that sticks 6.4° open reads 0.82 V again, and was accepted on the reading from before.</summary>
    [Fact]
    public void A_reading_from_before_the_sensor_was_set_proves_nothing()
    {
        var expected = Expected with { Sensor = new PositionSensor(0.82, 4.92, Angle.FromDegrees(82)) { Slot = Angle.FromDegrees(10) } };
        var held = Assert.IsType<HeldOpen>(Of("closes", new() { StopVolts = 0.5, ClosedVolts = 0.82 }, expected));
        Assert.Equal(6.4, held.Open.Degrees, 1e-9);
        Assert.Equal(FindingWeight.Safety, held.Weight);
        var unread = FittedVerdict.Of(new() { ClosedVolts = 0.82, FlooredVolts = 4.6, FreePlay = 2 }, expected);
        Assert.Equal(["closes", "wide-open", "free-play"], unread.Select(f => f.Code));
        Assert.Equal([FindingWeight.NotProven, FindingWeight.NotProven, FindingWeight.Good], unread.Select(f => f.Weight));
        Assert.StartsWith("NOT PROVEN", FindingText.Verdict(unread), StringComparison.Ordinal);
        Assert.All(FittedVerdict.Of(Right, expected), f => Assert.Equal(FindingWeight.Good, f.Weight));
    }

    /// <summary>6.4° are not in a slot of 5° each way: with the cable off the valve does not rest on its stop.</summary>
    [Fact]
    public void A_stop_reading_beyond_the_slot_is_a_safety_finding()
    {
        var expected = Expected with { Sensor = new PositionSensor(0.5, 4.6, Angle.FromDegrees(82)) { Slot = Angle.FromDegrees(5) } };
        var finding = Of("stop-reading", Right with { StopVolts = 0.82, ClosedVolts = 0.82 }, expected);
        Assert.Equal(FindingWeight.Safety, finding.Weight);
        Assert.Contains("turned 6.4°, and its slot lets it turn 5.0° each way", Said(finding), StringComparison.Ordinal);
        Assert.DoesNotContain(FittedVerdict.Of(Right with { StopVolts = 0.74, ClosedVolts = 0.74 }, expected), f => f.Code == "stop-reading");
    }

    /// <summary>82°: 1 % is 0.82°, and 0.5° dead band more is 1.32°. A display at 0 % hides what lies before its step to 1 %.</summary>
    [Theory]
    [InlineData(0, 0, 1.3, FindingWeight.Good)]
    [InlineData(0, 0, 6.4, FindingWeight.NotProven)]
    [InlineData(0, 0, null, FindingWeight.NotProven)]
    [InlineData(0, 1, 1.3, FindingWeight.Safety)]
    [InlineData(2, 2, null, FindingWeight.Good)]
    [InlineData(2, 10, null, FindingWeight.Safety)]
    [InlineData(2, 1, null, FindingWeight.Adjust)]
    public void Percent_of_a_controller_is_judged_with_its_step(double stop, double closed, double? step, FindingWeight weight)
    {
        var readings = new FittedReadings { StopPercent = stop, ClosedPercent = closed, StepOpening = step is { } s ? Angle.FromDegrees(s) : null };
        Assert.Equal(weight, Of("closes", readings).Weight);
        Assert.All(FittedVerdict.Of(readings, Expected), f => Assert.NotEmpty(Said(f)));
    }

    [Fact]
    public void A_step_that_comes_late_is_a_dead_band()
    {
        Assert.Equal(1.32, FittedVerdict.MaxStep(Angle.FromDegrees(82)).Degrees, 1e-12);
        var late = Of("dead-band", new() { StopPercent = 0, ClosedPercent = 0, StepOpening = Angle.FromDegrees(2) });
        Assert.Equal(FindingWeight.Adjust, late.Weight);
        Assert.Contains("0 % until the valve is 2.0° open; at most 1.3° is right", Said(late), StringComparison.Ordinal);
        Assert.Equal(FindingWeight.Good, Of("dead-band", new() { StepOpening = Angle.FromDegrees(1) }).Weight);
        Assert.Contains("takes the closed valve for open", Said(Of("dead-band", new() { StopPercent = 3, ClosedPercent = 3 })), StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_said_in_inches_has_no_millimetres()
    {
        var words = new FindingText(UnitSystem.Inch, 1);
        foreach (var finding in FittedVerdict.Of(Right with { ClosedVolts = 0.75, FlooredVolts = 4.5, FreePlay = 0.2, PadTravel = 100 }, Expected))
        {
            Assert.DoesNotContain("mm", words.Of(finding), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Without_a_sensor_nothing_reads_the_opening() =>
        Assert.Equal(new ClosingNotKnown(ClosingUnknown.NoSensor), Of("closes", new() { FreePlay = 2 }, Expected with { Sensor = null }));

    [Fact]
    public void A_sensor_that_has_turned_is_told() =>
        Assert.Contains("The sensor has turned, or the first reading was not taken at the stop.", Said(Of("closes", Right with { ClosedVolts = 0.45 })), StringComparison.Ordinal);
}
