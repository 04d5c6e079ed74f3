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

/// <summary>Where a reading begins to mean something, to the last bit: 4 V over 1 rad, read to a quarter of a volt, is 1/16 rad.</summary>
public class FittedLimitTests
{
    private static readonly FittedExpectation Expected = new()
    {
        Travel = LoadedTravel.Solve(
            Cases.Alder, StopPlacement.At(Cases.Alder, 180, 2, Angle.FromDegrees(130))!.Seat.XY, 2, 48, new(300, 600, 2),
            CableFriction.None, CableCompliance.Rigid),
        Pedal = new(48, 2.5),
        Sensor = new(1, 5, new(1)),
        VoltsResolution = 0.25,
        Pitch = 1.25,
    };

    private static string Said(Finding finding, double? pitch = 1.25) => new FindingText(UnitSystem.Metric, pitch).Of(finding);

    private static Finding Of(string id, FittedReadings readings, FittedExpectation? expected = null) =>
        Assert.Single(FittedVerdict.Of(readings, expected ?? Expected), f => f.Code == id);

    /// <summary>A difference of just what can be read is not spoken of, one bit more is.</summary>
    [Fact]
    public void Voltages_are_read_no_finer_than_they_can_be()
    {
        void At(string id, FindingWeight beyond, double limit, double outwards, Func<double, FittedReadings> readings, FittedExpectation expected)
        {
            Assert.Equal(FindingWeight.Good, Of(id, readings(limit), expected).Weight);
            Assert.Equal(beyond, Of(id, readings(limit + outwards / 1024), expected).Weight);
        }

        At("closes", FindingWeight.Safety, 1.25, 1, v => new() { StopVolts = 1, ClosedVolts = v }, Expected);
        At("closes", FindingWeight.Adjust, 0.75, -1, v => new() { StopVolts = 1, ClosedVolts = v }, Expected);
        At("wide-open", FindingWeight.Adjust, 4.75, -1, v => new() { StopVolts = 1, FlooredVolts = v }, Expected);
        var zero = Expected with { ControllerZero = 1 };
        At("dead-band", FindingWeight.Adjust, 1.25, 1, v => new() { StopVolts = v }, zero with { Sensor = new(1.25, 5.25, new(1)) });
        At("dead-band", FindingWeight.Adjust, 0.75, -1, v => new() { StopVolts = v }, zero);
    }

    /// <summary>The controller's zero is held against the reading on the stop, whatever the pedal does; 0.26 V more is read as 3.7° open.</summary>
    [Fact]
    public void The_dead_band_is_judged_by_the_reading_on_the_stop()
    {
        var zero = Expected with { ControllerZero = 1 };
        Assert.Equal(FindingWeight.Good, Of("dead-band", new() { StopVolts = 1, ClosedVolts = 1.26 }, zero).Weight);
        Assert.DoesNotContain(FittedVerdict.Of(new() { ClosedVolts = 1 }, zero), f => f.Code == "dead-band");
    }

    [Theory]
    [InlineData(115, FindingWeight.Good)]
    [InlineData(125, FindingWeight.Good)]
    [InlineData(114.9, FindingWeight.Adjust)]
    [InlineData(125.1, FindingWeight.Adjust)]
    public void Pad_travel_is_measured_to_five_millimetres(double travel, FindingWeight weight) =>
        Assert.Equal(weight, Of("pad-travel", new() { PadTravel = travel }).Weight);

    /// <summary>Where at least 3 mm is needed by now though 2 mm was wanted, 2 mm is too little, and the way out is to 3 mm.</summary>
    [Fact]
    public void Advice_on_free_play_never_leads_to_less_than_is_needed()
    {
        var finding = Of("free-play", new() { FreePlay = 2 }, Expected with { MinFreePlay = 3 });
        Assert.Equal((FindingWeight.Safety, (double?)-1), (finding.Weight, finding.AdjusterShift));
    }

    /// <summary>2 mm wanted, at least 1 mm: half as much more or less is let be.</summary>
    [Theory]
    [InlineData(0.99, FindingWeight.Safety)]
    [InlineData(1, FindingWeight.Good)]
    [InlineData(3, FindingWeight.Good)]
    [InlineData(3.01, FindingWeight.Adjust)]
    public void Slack_is_let_be_within_half_of_what_was_wanted(double slack, FindingWeight weight) =>
        Assert.Equal(weight, Of("free-play", new() { FreePlay = slack }).Weight);

    /// <summary>1.5 mm short at 1.25 mm a turn is 1.2 turns.</summary>
    [Fact]
    public void Little_slack_is_told_with_its_turns()
    {
        var finding = Of("free-play", new() { FreePlay = 0.5 }, Expected with { MinFreePlay = 0.25 });
        Assert.Equal(FindingWeight.Adjust, finding.Weight);
        Assert.Equal(
            "Free play is 0.5 mm, not 2.0 mm: there is little in hand. Move the outer's end 1.5 mm towards the quadrant, which gives slack: 1.2 turns of the nuts (1.25 mm a turn).",
            Said(finding));
        Assert.EndsWith(
            "Move the outer's end 1.5 mm towards the quadrant, which gives slack.",
            Said(Of("free-play", new() { FreePlay = 0.5 }, Expected with { MinFreePlay = 0.25, Pitch = null }), pitch: null), StringComparison.Ordinal);
    }

    /// <summary>Slack that holds just the missing pull is given, one that lacks a bit of it is not.</summary>
    [Fact]
    public void Just_enough_slack_mends_the_opening()
    {
        var bare = Expected with { MinFreePlay = 0 };
        var pull = Of("wide-open", new() { StopVolts = 1, FlooredVolts = 4.5, FreePlay = 40 }, bare).AdjusterShift!.Value;
        Assert.Equal(pull, Of("wide-open", new() { StopVolts = 1, FlooredVolts = 4.5, FreePlay = pull }, bare).AdjusterShift);
        Assert.Null(Of("wide-open", new() { StopVolts = 1, FlooredVolts = 4.5, FreePlay = Math.BitDecrement(pull) }, bare).AdjusterShift);
    }

    /// <summary>The controller's zero 0.5 V below, at 4 V/rad, is 7.2°; where the zero is learned 0.45 to 0.55 V is right.</summary>
    [Fact]
    public void A_zero_too_low_and_a_reading_too_low()
    {
        Assert.Contains(
            "takes the closed valve for 7.2° open", Said(Of("dead-band", new() { StopVolts = 1 }, Expected with { ControllerZero = 0.5 })),
            StringComparison.Ordinal);
        FittedExpectation With(double closed, double open) => Expected with { Sensor = new(closed, open, new(1)) };
        foreach (var (volts, weight) in new[] { (0.45, FindingWeight.Good), (0.55, FindingWeight.Good), (0.44, FindingWeight.Adjust), (0.56, FindingWeight.Adjust) })
        {
            Assert.Equal(weight, Of("dead-band", new() { StopVolts = volts }, With(0.5, 4.4)).Weight);
        }

        Assert.Equal(FindingWeight.Good, Of("dead-band", new() { StopVolts = 4.4 }, With(4.4, 0.5)).Weight);
    }

    [Fact]
    public void A_sensor_that_cannot_be_one_is_refused()
    {
        Assert.Contains(
            "reads the same at both stops", Assert.Throws<ArgumentException>(() => new PositionSensor(1, 1, new(1))).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => new PositionSensor(1, 2, Angle.Zero));
        Assert.Throws<ArgumentOutOfRangeException>(() => new PositionSensor(1, 2, new(-1)));
    }

    /// <summary>Turned by a tenth of a radian at 4 V/rad it reads 0.4 V more at both stops, and the valve turns as far between them.</summary>
    [Fact]
    public void A_turned_sensor_reads_more_at_both_stops()
    {
        var turned = Expected.Sensor!.Turned(new(0.1));
        Assert.Equal((1.4, 5.4, 1.0), (turned.ClosedVolts, turned.OpenVolts, turned.Rotation.Radians));
    }
}
