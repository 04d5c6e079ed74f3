using System.Text.Json.Nodes;
using BracketGen.Words.Page;
using static BracketGen.Cli.Tests.PageAnswers;

namespace BracketGen.Cli.Tests;

/// <summary>The page says of readings after fitting what the command says, its options called as the fields are.</summary>
public class PageFittedTests
{
    [Theory]
    [InlineData("plover-alder-58", "volts-stop 0.5", "volts-closed 0.5", "volts-floored 4.44", "free-play 2", "pedal-travel 173")]
    [InlineData("plover-alder-58", "volts-stop 500 mV", "volts-closed 700 mV", "free-play 0.02 in")]
    [InlineData("dunlin-rowan-64", "volts-stop 0.4", "volts-closed 0.4")]
    [InlineData("plover-alder-58", "volts-closed 0.52", "free-play 2")]
    [InlineData("whimbrel-hornbeam-70", "volts-stop 0.5", "volts-closed 0.5", "free-play 0.08 in")]
    [InlineData("plover-alder-58", "percent-stop 0", "percent-closed 0", "percent-step 0.4")]
    [InlineData("plover-alder-58", "percent-stop 0", "percent-closed 3", "pedal-travel 160 mm")]
    [InlineData("plover-alder-58", "volts-floored 4")]
    [InlineData("whimbrel-hornbeam-70", "free-play 0.08")]
    [InlineData("plover-alder-58-bare", "volts-stop 0.5")]
    public async Task The_page_says_what_the_command_says(string job, params string[] readings)
    {
        using var place = new Workplace();
        var given = readings.Select(r => r.Split(' ', 2)).ToDictionary(r => r[0], r => r[1]);
        var run = BracketGenProgram.Run(["fitted", place.Job(job), .. given.SelectMany(g => new[] { $"--{g.Key}", g.Value })]);
        await using var page = await On(place);
        var message = await page.Open($"jobs/{job}.toml");
        message["readings"] = new JsonObject(given.Select(g => KeyValuePair.Create(g.Key, (JsonNode?)g.Value)));
        var reply = await page.Json("fitted", message);
        if (reply["answer"] is not { } answer)
        {
            Assert.Equal(2, run.ExitCode);
            Assert.Equal(FittedWords.InFields(ScreenText.OneLine(run.Errors)), $"bracketgen: {reply["problem"]}");
            return;
        }

        string[] told = [(string)answer["heading"]!, .. answer["rows"]!.AsArray().SelectMany(Texts), (string)answer["verdict"]!];
        Assert.Equal(FittedWords.InFields(ScreenText.OneLine(run.Output)), ScreenText.OneLine(string.Join(' ', told)));
        Assert.Equal(run.ExitCode, (string)answer["state"]! switch { "passes" => 0, "not-proven" => 5, _ => 1 });
        Assert.DoesNotContain("--", string.Join(' ', told), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_reading_that_is_none_is_told_at_its_field()
    {
        using var place = new Workplace();
        var run = BracketGenProgram.Run("fitted", place.Job("plover-alder-58"), "--free-play", "2 V");
        await using var page = await On(place);
        var message = await page.Open("jobs/plover-alder-58.toml");
        message["readings"] = new JsonObject { ["free-play"] = "2 V", ["volts-stop"] = "0.5", ["volts-closed"] = "" };
        var reply = await page.Json("fitted", message);
        var (name, text) = Assert.Single(reply["mistakes"]!.AsObject());
        Assert.Equal("free-play", name);
        Assert.Contains((string)text!, ScreenText.OneLine(run.Errors), StringComparison.Ordinal);
        Assert.Null(reply["answer"]);
        message["readings"] = new JsonObject();
        Assert.Equal(FittedWords.Nothing, (string)(await page.Json("fitted", message))["problem"]!);
    }
}
