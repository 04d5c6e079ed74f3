using BracketGen.Cli.Terminal;

namespace BracketGen.Cli.Tests;

/// <summary>The command that takes the readings of a finished bracket.</summary>
public class InspectTests
{
    private const string Job = "plover-alder-58";

    [Fact]
    public void Without_readings_it_lists_what_to_measure()
    {
        using var place = new Workplace();
        var run = BracketGenProgram.Run("inspect", place.PathOf("profiles", "jobs", Job + ".toml"));
        Assert.Equal(ExitCode.Pass, run.ExitCode);
        Assert.Contains("H1 to H2, centre to centre", ScreenText.OneLine(run.Output), StringComparison.Ordinal);
        Assert.Contains("from the mount face", ScreenText.OneLine(run.Output), StringComparison.Ordinal);
    }

    [Fact]
    public void A_bracket_as_drawn_passes_and_one_a_size_off_is_told_so()
    {
        using var place = new Workplace();
        string[] all = ["D1=6.62", "D2=6.6", "D3=9.05", "D4=34.05", "D5=90.2", "D6=52.2", "D7=25.5", "D8=24.1"];
        var good = BracketGenProgram.Run(["inspect", place.PathOf("profiles", "jobs", Job + ".toml"), .. all]);
        Assert.Equal(ExitCode.Pass, good.ExitCode);
        Assert.Contains("The bracket is as drawn.", ScreenText.OneLine(good.Output), StringComparison.Ordinal);

        // What nobody measured is no pass.
        var part = BracketGenProgram.Run("inspect", place.PathOf("profiles", "jobs", Job + ".toml"), "D1=6.62", "D4=34.05");
        Assert.Equal(ExitCode.NotProven, part.ExitCode);
        Assert.Contains("What was measured is as drawn.", ScreenText.OneLine(part.Output), StringComparison.Ordinal);
        Assert.Contains("Not proven: D2, D3, D5, D6, D7, D8 were not measured.", ScreenText.OneLine(part.Output), StringComparison.Ordinal);
        var off = BracketGenProgram.Run("inspect", place.PathOf("profiles", "jobs", Job + ".toml"), "--skip-strength", "D1=7.4");
        Assert.Contains("OUT", ScreenText.OneLine(off.Output), StringComparison.Ordinal);
        Assert.Contains("The bracket is not as drawn.", ScreenText.OneLine(off.Output), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("D1", "Write the number of the dimension")]
    [InlineData("D1=six", "not understood")]
    [InlineData("D77=6", "is no dimension of this bracket")]
    [InlineData("D1=60", "another dimension or another bracket")]
    [InlineData("D6=52.2", "needs all its readings: D7 and D8 are missing")]
    public void What_makes_no_sense_is_refused(string reading, string says)
    {
        using var place = new Workplace();
        var run = BracketGenProgram.Run("inspect", place.PathOf("profiles", "jobs", Job + ".toml"), reading);
        Assert.Equal(ExitCode.BadInput, run.ExitCode);
        Assert.Contains(says, ScreenText.OneLine(run.Errors), StringComparison.Ordinal);
    }

    [Fact]
    public void A_reading_is_given_once()
    {
        using var place = new Workplace();
        var run = BracketGenProgram.Run("inspect", place.PathOf("profiles", "jobs", Job + ".toml"), "D1=6.6", "d1=6.7");
        Assert.Equal(ExitCode.BadInput, run.ExitCode);
        Assert.Contains("given twice", ScreenText.OneLine(run.Errors), StringComparison.Ordinal);
    }
}
