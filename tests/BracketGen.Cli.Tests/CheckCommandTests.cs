using BracketGen.Cli.Terminal;

namespace BracketGen.Cli.Tests;

/// <summary>The command that tries a bracket that is there already.</summary>
public class CheckCommandTests
{
    private static readonly string[] Job = ["profiles", "jobs", "plover-alder-58.toml"];

    [Fact]
    public void A_bracket_of_ours_written_and_read_again_passes()
    {
        using var place = new Workplace();
        var file = place.PathOf("profiles", "brackets", "ours.toml");
        var written = BracketGenProgram.Run("check", place.PathOf(Job), "--write-ours", file);
        Assert.Equal(ExitCode.Pass, written.ExitCode);
        var run = BracketGenProgram.Run("check", file, place.PathOf(Job));
        Assert.Equal(ExitCode.Pass, run.ExitCode);
        var text = ScreenText.OneLine(run.Output);
        Assert.Contains("PASSES every check of this bracket as measured, on this vehicle", text, StringComparison.Ordinal);
        Assert.Contains("H1 on tapped hole 1 and H2 on tapped hole 2", text, StringComparison.Ordinal);
        Assert.Contains("Set the adjuster at mid range", text, StringComparison.Ordinal);
        Assert.DoesNotContain("corrects it", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Brackets_are_compared_in_one_table_with_what_to_correct()
    {
        using var place = new Workplace();
        string[] brackets = [.. new[] { "bought-tall-34", "market-upright-40", "shelf-upright-34" }.Select(b => place.PathOf("profiles", "brackets", b + ".toml"))];
        var run = BracketGenProgram.Run(["check", .. brackets, place.PathOf(Job), "--ours"]);
        Assert.Equal(ExitCode.Pass, run.ExitCode);
        var text = ScreenText.OneLine(run.Output);
        Assert.Contains("Any one of these corrects it. Each was tried whole: with it nothing fails.", text, StringComparison.Ordinal);
        Assert.Contains("Put a spacer of 2.0 mm under the mount flange", text, StringComparison.Ordinal);
        Assert.Contains("Drill the bolt holes to 6.6 mm, from 6.4 mm. File the slot to 9.0 mm, from 8.2 mm.", text, StringComparison.Ordinal);
        Assert.Contains("do not go onto the 2 tapped holes", text, StringComparison.Ordinal);
        foreach (var row in new[] { "1 Tall upright 34 FAILS", "2 Market stall, 40 mm FAILS", "3 Upright 34 UNSAFE", "4 our own, to be made PASSES" })
        {
            Assert.Contains(row, text, StringComparison.Ordinal);
        }

        Assert.Contains("11.50 EUR", text, StringComparison.Ordinal);
        Assert.Contains("cannot be helped", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_mount_on_two_faces_is_refused_with_what_to_do()
    {
        using var place = new Workplace();
        var result = BracketGenProgram.Run("check", place.PathOf("profiles", "brackets", "market-upright-40.toml"), place.PathOf("profiles", "jobs", "dunlin-rowan-64-rib.toml"));
        Assert.Equal(ExitCode.BadInput, result.ExitCode);
        Assert.Contains("The mount of Rowan 64 with rib has a second face.", result.Errors, StringComparison.Ordinal);
        Assert.Contains("Take [mount.second_face] out", result.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void What_makes_no_sense_is_refused()
    {
        using var place = new Workplace();
        var alone = BracketGenProgram.Run("check", place.PathOf(Job));
        Assert.Equal(ExitCode.BadInput, alone.ExitCode);
        Assert.Contains("check BRACKET JOB", alone.Errors, StringComparison.Ordinal);
        var swapped = BracketGenProgram.Run("check", place.PathOf(Job), place.PathOf("profiles", "brackets", "market-upright-40.toml"));
        Assert.Equal(ExitCode.BadInput, swapped.ExitCode);
        Assert.Contains("a job is needed here", ScreenText.OneLine(swapped.Errors), StringComparison.Ordinal);
        var failing = BracketGenProgram.Run("check", place.PathOf("profiles", "brackets", "market-upright-40.toml"), place.PathOf(Job), "--skip-strength");
        Assert.Equal(ExitCode.CheckFailed, failing.ExitCode);
    }
}
