using System.Globalization;
using System.Text.Json;
using BracketGen.Cli.Terminal;
using BracketGen.Design.Inputs;
using BracketGen.Profiles.Family;
using BracketGen.Words.Report;

namespace BracketGen.Cli.Tests;

/// <summary>The jobs that ship with the program, run as a user runs them.</summary>
[Collection(ExampleOutputsCollection.Name)]
public class ExampleRunTests(ExampleOutputs outputs)
{
    public static TheoryData<string> Jobs => [.. Workplace.Jobs];

    [Theory]
    [MemberData(nameof(Jobs))]
    public void Every_file_is_there_and_nothing_else(string job) => Assert.Equal(
        Workplace.FilesOf(job).Select(f => $"{job}/{f}"),
        outputs.Files().Where(f => f.StartsWith(job + "/", StringComparison.Ordinal)));

    [Theory]
    [MemberData(nameof(Jobs))]
    public void The_exit_code_is_the_verdict(string job)
    {
        var result = outputs.Results[job];
        using var json = JsonDocument.Parse(File.ReadAllBytes(outputs.PathOf(job, Workplace.ResultFile)));
        var verdict = json.RootElement.GetProperty("verdict").GetString()!;
        var code = verdict switch { "passes" => ExitCode.Pass, "not proven" => ExitCode.NotProven, _ => ExitCode.CheckFailed };
        Assert.Equal(code, result.ExitCode);
        ScreenText.HasVerdict(result.Output, verdict.ToUpperInvariant());
        Assert.Empty(result.Errors);
    }

    [Fact]
    public void The_main_example_passes_once_its_strength_is_calculated()
    {
        Assert.Equal(ExitCode.NotProven, outputs.Results["plover-alder-58"].ExitCode);
        using var place = new Workplace();
        var result = place.MakeStrong("plover-alder-58");
        Assert.Equal(ExitCode.Pass, result.ExitCode);
        ScreenText.HasVerdict(result.Output, "PASSES");
    }

    [Fact]
    public void The_valve_that_does_not_open_fully_is_told()
    {
        var result = outputs.Results["dunlin-hornbeam-70"];
        Assert.Equal(ExitCode.CheckFailed, result.ExitCode);
        ScreenText.HasRow(result.Output, "FAILS", "wide-open");
        Assert.Contains("  wide-open: The valve may not reach its wide-open stop", result.Output, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Jobs))]
    public void Every_file_is_named_on_the_screen(string job)
    {
        foreach (var file in Workplace.FilesOf(job))
        {
            Assert.Contains($"  wrote {outputs.PathOf(job, file)}\n", outputs.Results[job].Output, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void The_same_input_gives_the_same_bytes()
    {
        using var again = new Workplace();
        foreach (var job in Workplace.Jobs)
        {
            var result = again.Make(job);
            Assert.Equal(
                outputs.Results[job].Output.Replace(outputs.Folder, "", StringComparison.Ordinal),
                result.Output.Replace(again.Output, "", StringComparison.Ordinal));
        }

        Assert.Equal(outputs.Files(), again.OutputFiles());
        Assert.All(again.OutputFiles(), f => Assert.Equal(
            File.ReadAllBytes(Path.Combine(outputs.Folder, f)), File.ReadAllBytes(Path.Combine(again.Output, f))));
    }

    [Theory]
    [MemberData(nameof(Jobs))]
    public void Travel_gives_the_same_travel_and_writes_nothing(string job)
    {
        using var place = new Workplace();
        var result = BracketGenProgram.Run("travel", place.Job(job));

        // Of a groove that is no circle about the shaft the pull depends a little on where the wire leaves it, which only a bracket fixes.
        double alone = Pull(result.Output), made = Pull(outputs.Results[job].Output);
        Assert.InRange(alone, made * (job.StartsWith("dunlin-rowan-64", StringComparison.Ordinal) ? 0.97 : 1), made * (job.StartsWith("dunlin-rowan-64", StringComparison.Ordinal) ? 1.03 : 1));

        // On a round groove without a bulkhead no bracket is designed: what rests on its give and its tolerances is not known, and said so.
        var isKnown = job is "plover-alder-58" or "plover-alder-58-bare" or "plover-alder-58-stud" or "plover-alder-58-slotted" or "dunlin-rowan-64" or "dunlin-rowan-64-rib";
        Assert.Contains(result.ExitCode, new[] { isKnown ? ExitCode.Pass : ExitCode.NotProven, ExitCode.CheckFailed });
        ScreenText.HasVerdict(result.Output, result.ExitCode switch { ExitCode.Pass => "PASSES", ExitCode.NotProven => "NOT PROVEN", _ => "FAILS" });
        Assert.False(Directory.Exists(place.Output));
    }

    private static double Pull(string screen)
    {
        const string label = "  pull from closed to wide open";
        var line = Assert.Single(screen.Split('\n'), l => l.StartsWith(label, StringComparison.Ordinal));
        return double.Parse(line[label.Length..].Split(' ', StringSplitOptions.RemoveEmptyEntries)[0], CultureInfo.InvariantCulture);
    }
}
