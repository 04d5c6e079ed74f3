using BracketGen.Cli.Terminal;
using BracketGen.Design.Inputs;
using BracketGen.Profiles.Family;
using BracketGen.Words.Report;

namespace BracketGen.Cli.Tests;

/// <summary>What travel says of the whole mechanism, the verdict on readings after fitting, and the worksheet.</summary>
public class MechanismCommandTests
{
    [Fact]
    public void Travel_tells_progression_forces_return_and_how_sure_it_is()
    {
        using var place = new Workplace();
        var result = BracketGenProgram.Run("travel", place.Job("plover-alder-58"));
        Assert.Equal(ExitCode.Pass, result.ExitCode);
        var said = ScreenText.OneLine(result.Output);
        foreach (var told in new[]
        {
            "flow area", "foot down", "foot up", "sensor", "off-idle gain", "lost motion", "outer to the bulkhead", "springs left to close",
            "with one spring broken", "can be made to close", "opens fully", "adjuster needed", "Measure these again first", "of the spread",
        })
        {
            Assert.Contains(told, said, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Readings_as_designed_are_right()
    {
        using var place = new Workplace();
        var result = BracketGenProgram.Run(
            "fitted", place.Job("plover-alder-58"), "--volts-stop", "0.5", "--volts-closed", "0.5", "--volts-floored", "4.44", "--free-play", "2", "--pedal-travel", "173");
        Assert.Equal(ExitCode.Pass, result.ExitCode);
        Assert.Contains("Verdict: PASSES. The readings are right.", ScreenText.OneLine(result.Output), StringComparison.Ordinal);
    }

    [Fact]
    public void A_valve_that_does_not_close_forbids_the_start_and_says_the_turns()
    {
        using var place = new Workplace();
        var result = BracketGenProgram.Run("fitted", place.Job("plover-alder-58"), "--volts-stop", "500 mV", "--volts-closed", "700 mV", "--free-play", "0.02 in");
        Assert.Equal(ExitCode.CheckFailed, result.ExitCode);
        Assert.Contains("Verdict: UNSAFE. DO NOT START THE ENGINE.", ScreenText.OneLine(result.Output), StringComparison.Ordinal);
        Assert.Contains("turns of the nuts (1.0 mm a turn)", ScreenText.OneLine(result.Output), StringComparison.Ordinal);
    }

    [Fact]
    public void A_dead_band_is_said_with_the_sensors_turn()
    {
        using var place = new Workplace();
        var result = BracketGenProgram.Run("fitted", place.Job("dunlin-rowan-64"), "--volts-stop", "0.4", "--volts-closed", "0.4");
        Assert.Equal(ExitCode.CheckFailed, result.ExitCode);
        Assert.Contains("Dead band", result.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_the_reading_on_the_stop_closing_is_not_proven()
    {
        using var place = new Workplace();
        var result = BracketGenProgram.Run("fitted", place.Job("plover-alder-58"), "--volts-closed", "0.52", "--free-play", "2");
        Assert.Equal(ExitCode.NotProven, result.ExitCode);
        Assert.Contains("--volts-stop", ScreenText.OneLine(result.Output), StringComparison.Ordinal);
        Assert.Contains("Verdict: NOT PROVEN.", ScreenText.OneLine(result.Output), StringComparison.Ordinal);
    }

    [Fact]
    public void A_job_in_inches_is_answered_in_inches_and_wants_the_unit()
    {
        using var place = new Workplace();
        var result = BracketGenProgram.Run("fitted", place.Job("whimbrel-hornbeam-70"), "--volts-stop", "0.5", "--volts-closed", "0.5", "--free-play", "0.08 in");
        Assert.Equal(ExitCode.Pass, result.ExitCode);
        Assert.Contains("Free play is 0.08", ScreenText.OneLine(result.Output), StringComparison.Ordinal);
        Assert.DoesNotContain(" mm", result.Output, StringComparison.Ordinal);
        var bare = BracketGenProgram.Run("fitted", place.Job("whimbrel-hornbeam-70"), "--free-play", "0.08");
        Assert.Equal(ExitCode.BadInput, bare.ExitCode);
        Assert.Contains("without a unit", bare.Errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--percent-closed", "120")]
    [InlineData("--percent-step", "2 V")]
    [InlineData("--volts-closed", "half")]
    [InlineData("--volts-closed", "0.5 mm")]
    [InlineData("--free-play", "2 V")]
    [InlineData("--pedal-travel", "1000000")]
    public void A_reading_that_is_none_is_bad_input(string option, string text)
    {
        using var place = new Workplace();
        var result = BracketGenProgram.Run("fitted", place.Job("plover-alder-58"), option, text);
        Assert.Equal(ExitCode.BadInput, result.ExitCode);
        Assert.Contains(option, result.Errors, StringComparison.Ordinal);
        Assert.Contains("Allowed", result.Errors, StringComparison.Ordinal);
        Assert.Empty(result.Output);
    }

    [Fact]
    public void No_reading_or_no_sensor_is_bad_input()
    {
        using var place = new Workplace();
        Assert.Equal(ExitCode.BadInput, BracketGenProgram.Run("fitted", place.Job("plover-alder-58")).ExitCode);
        place.Edit("throttle-bodies/alder-58.toml", "[sensor] #", "#");
        place.Edit("throttle-bodies/alder-58.toml", "closed_volts = 0.52\nopen_volts = 4.46\nslot = 10\n", "");
        var result = BracketGenProgram.Run("fitted", place.Job("plover-alder-58"), "--volts-closed", "0.5");
        Assert.Equal(ExitCode.BadInput, result.ExitCode);
        Assert.Contains("[sensor]", result.Errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("A4", "mm")]
    [InlineData("A", "lbf in")]
    public void The_worksheet_is_written(string paper, string unit)
    {
        using var place = new Workplace();
        Assert.Equal(ExitCode.Pass, BracketGenProgram.Run("worksheet", "--into", place.Output, "--paper", paper).ExitCode);
        var words = string.Join(' ', PdfText.Of(Path.Combine(place.Output, "measuring-worksheet.pdf")).Select(w => w.Text));
        Assert.Contains(unit, words, StringComparison.Ordinal);
    }

    [Fact]
    public void A_worksheet_on_paper_that_is_not_known_is_bad_input()
    {
        using var place = new Workplace();
        Assert.Equal(ExitCode.BadInput, BracketGenProgram.Run("worksheet", "--into", place.Output, "--paper", "A0").ExitCode);
        Assert.False(Directory.Exists(place.Output));
    }
}
