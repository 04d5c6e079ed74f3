using BracketGen.Cli.Terminal;
using BracketGen.Design.Inputs;
using BracketGen.Line.Solving;
using BracketGen.Profiles.Family;
using BracketGen.Words.Report;

namespace BracketGen.Cli.Tests;

/// <summary>Command lines, good and bad.</summary>
public class CommandLineTests
{
    [Theory]
    [InlineData]
    [InlineData("make")]
    [InlineData("travel")]
    [InlineData("fitted")]
    [InlineData("worksheet")]
    [InlineData("begin")]
    public void Help_tells_the_exit_codes(params string[] command)
    {
        var result = BracketGenProgram.Run([.. command, "--help"]);
        Assert.Equal(0, result.ExitCode);
        foreach (var code in new[] { "0 every check passes", "1 unsafe or a check fails", "2 bad input", "3 outputs could not be written", "4 stopped before the end", "5 not proven" })
        {
            Assert.Contains(code, ScreenText.OneLine(result.Output), StringComparison.Ordinal);
        }
    }

    // The same files as make on the shipped example; again it is the same, and what somebody changed is not written over.
    [Fact]
    public void The_demo_is_the_shipped_example()
    {
        using var place = new Workplace();
        var folder = place.PathOf("demo");
        string[] command = ["demo", "--into", folder, "--leave-closed"];
        var first = BracketGenProgram.Run(command);
        var (made, output) = (place.MakeStrong("plover-alder-58"), Path.Combine(folder, "output", "plover-alder-58"));
        Assert.Equal((made.ExitCode, ""), (first.ExitCode, first.Errors));
        foreach (var file in Directory.GetFiles(Path.Combine(place.Output, "plover-alder-58")))
        {
            Assert.Equal(File.ReadAllBytes(file), File.ReadAllBytes(Path.Combine(output, Path.GetFileName(file))));
        }

        Assert.Contains("Open the report in a browser", ScreenText.OneLine(first.Output), StringComparison.Ordinal);
        Assert.Equal(first, BracketGenProgram.Run(command));
        var vehicle = Path.Combine(folder, "vehicles", "plover.toml");
        File.AppendAllText(vehicle, "# mine\n");
        var refused = BracketGenProgram.Run(command);
        Assert.Equal(ExitCode.BadInput, refused.ExitCode);
        Assert.Contains($"{vehicle} is there already", refused.Errors, StringComparison.Ordinal);
        Assert.EndsWith("# mine\n", File.ReadAllText(vehicle), StringComparison.Ordinal);
    }

    // Each line begins with a command that there is.
    [Fact]
    public void Without_a_command_three_lines_say_what_to_do_first()
    {
        var result = BracketGenProgram.Run([]);
        Assert.Equal((0, ""), (result.ExitCode, result.Errors));
        var lines = result.Output.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(3, lines.Length);
        foreach (var line in lines)
        {
            var command = line.Split(':')[0].Split(' ');
            Assert.Equal("bracketgen", command[0]);
            Assert.Equal(0, BracketGenProgram.Run(command[1] == "--help" ? ["--help"] : [command[1], "--help"]).ExitCode);
        }
    }

    [Theory]
    [InlineData("--date", "2026-02-30")]
    [InlineData("--date", "02.03.2026")]
    [InlineData("--date", "2026-3-2")]
    [InlineData("--accept-danger", "no-such-check")]
    [InlineData("--no-such-option")]
    public void A_bad_option_is_bad_input_and_nothing_is_written(params string[] options)
    {
        using var place = new Workplace();
        var result = place.Make("plover-alder-58", options);
        Assert.Equal(ExitCode.BadInput, result.ExitCode);
        Assert.Contains(options[^1], result.Errors, StringComparison.Ordinal);
        Assert.Empty(result.Output);
        Assert.False(Directory.Exists(place.Output));
    }

    [Theory]
    [InlineData("no-such-command")]
    [InlineData("make")]
    [InlineData("travel")]
    [InlineData("fitted")]
    [InlineData("begin", "vehicle")]
    public void An_unfinished_command_line_is_bad_input(params string[] arguments)
    {
        var result = BracketGenProgram.Run(arguments);
        Assert.Equal(ExitCode.BadInput, result.ExitCode);
        Assert.Contains("--help", result.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_good_date_is_on_the_drawing_and_in_the_result()
    {
        using var place = new Workplace();
        Assert.Equal(ExitCode.NotProven, place.Make("plover-alder-58", "--date", "2026-11-09").ExitCode);
        Assert.Contains("\"date\": \"2026-11-09\"", File.ReadAllText(place.Made("plover-alder-58", Workplace.ResultFile)), StringComparison.Ordinal);
        Assert.Contains("2026-11-09", PdfText.Of(place.Made("plover-alder-58", Workplace.DrawingFile)).Select(w => w.Text));
    }

    [Fact]
    public void Paper_is_as_asked_or_as_the_job_says_and_no_other_than_the_four()
    {
        using var place = new Workplace();
        string Format(string file) => PdfText.Sizes(place.Made("plover-alder-58", file))[0];
        place.Make("plover-alder-58", "--paper", "B");
        Assert.Equal("432 x 279", Format(Workplace.DrawingFile));
        Assert.Equal("216 x 279", Format(Workplace.SetupFile));

        place.Edit("jobs/plover-alder-58.toml", "[document]", "[document]\npaper = \"A4\"");
        place.Make("plover-alder-58");
        Assert.Equal("210 x 297", Format(Workplace.DrawingFile));
        Assert.Equal("210 x 297", Format(Workplace.SetupFile));
        Assert.Equal(ExitCode.BadInput, place.Make("plover-alder-58", "--paper", "A2").ExitCode);
    }

    [Theory]
    [InlineData("make")]
    [InlineData("travel")]
    public void A_job_that_is_not_there_is_bad_input(string command)
    {
        using var place = new Workplace();
        var result = BracketGenProgram.Run(command, place.Job("no-such-job"));
        Assert.Equal(ExitCode.BadInput, result.ExitCode);
        Assert.Contains("no-such-job.toml", result.Errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("make")]
    [InlineData("travel")]
    public void Every_mistake_of_every_file_is_told_at_once(string command)
    {
        using var place = new Workplace();
        place.Edit("throttle-bodies/alder-58.toml", "bore = 58", "bore = \"58 lbf\"");
        place.Edit("throttle-bodies/alder-58.toml", "hub_radius = 14", "hub_radios = 14");
        place.Edit("vehicles/plover.toml", "wire_diameter = 1.5", "wire_diameter = -1.5");
        place.Edit("jobs/plover-alder-58.toml", "units = \"mm\"", "units = \"furlong\"");
        string[] options = command == "make" ? ["--into", place.Output] : [];
        var result = BracketGenProgram.Run([command, place.Job("plover-alder-58"), .. options]);
        Assert.Equal(ExitCode.BadInput, result.ExitCode);
        foreach (var told in new[] { "58 lbf", "hub_radios", "wire_diameter", "furlong" })
        {
            Assert.Contains(told, result.Errors, StringComparison.Ordinal);
        }

        Assert.Contains("nothing was computed", result.Errors, StringComparison.Ordinal);
        Assert.Empty(result.Output);
        Assert.False(Directory.Exists(place.Output));
    }

    [Fact]
    public void A_file_that_is_no_TOML_is_bad_input()
    {
        using var place = new Workplace();
        File.WriteAllText(place.Job("plover-alder-58"), "profile = \"job\nunits = [");
        var result = place.Make("plover-alder-58");
        Assert.Equal(ExitCode.BadInput, result.ExitCode);
        Assert.Contains("plover-alder-58.toml:1", result.Errors, StringComparison.Ordinal);
        Assert.False(Directory.Exists(place.Output));
    }
}
