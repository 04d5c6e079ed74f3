using System.Text.Json.Nodes;
using static BracketGen.Cli.Tests.PageAnswers;

namespace BracketGen.Cli.Tests;

/// <summary>The page says of a kit what the command says, all of it, and hands out the same files.</summary>
public class PageKitTests
{
    [Theory]
    [InlineData("plover-alder-58-bare", true)]
    [InlineData("plover-alder-58-bare", false)]
    [InlineData("plover-alder-58", false)]
    [InlineData("whimbrel-hornbeam-70", false)]
    public async Task The_page_says_what_the_command_says(string job, bool withStrength)
    {
        using var place = new Workplace();
        var run = BracketGenProgram.Run(["kit", place.Job(job), "--into", place.Output, .. withStrength ? Array.Empty<string>() : ["--skip-strength"]]);
        await using var page = await On(place);
        var message = await Open($"jobs/{job}.toml", page);
        message["strength"] = withStrength;
        var answer = (await page.Json("kit", message))["answer"]!;

        string[] told =
        [
            (string)answer["heading"]!, (string)answer["verdict"]!, .. answer["noLists"] is { } none ? [(string)none!] : Array.Empty<string>(),
            (string)answer["set"]!, .. Texts(answer["heads"]), .. answer["rows"]!.AsArray().SelectMany(Texts), .. Texts(answer["account"]),
            .. answer["lists"]!.AsArray().SelectMany(l => Texts(l!["lines"]).Select(line => "- " + line).Prepend((string)l["heading"]!)),
        ];
        var command = ScreenText.OneLine(run.Output);
        var told1 = ScreenText.OneLine(string.Join(' ', told));
        Assert.StartsWith(told1, command, StringComparison.Ordinal);
        Assert.StartsWith("wrote ", command[told1.Length..].Trim(), StringComparison.Ordinal);
        Assert.Equal(run.ExitCode, (string)answer["state"]! switch { "passes" => 0, "not-proven" => 5, _ => 1 });

        foreach (var name in Texts(answer["files"]))
        {
            message["name"] = name;
            Assert.Equal(await File.ReadAllBytesAsync(place.Made(job, name)), await page.Bytes("kit-file", message));
        }
    }

    [Fact]
    public async Task A_mistake_in_a_list_is_that_of_the_command()
    {
        using var place = new Workplace();
        var list = place.PathOf("profiles", "parts", "saltmarsh.toml");
        File.WriteAllText(list, File.ReadAllText(list).Replace("price = 24", "price = \"dear\"", StringComparison.Ordinal));
        var run = BracketGenProgram.Run("kit", place.Job("plover-alder-58-bare"), "--into", place.Output);
        await using var page = await On(place);
        var reply = await page.Json("kit", await Open("jobs/plover-alder-58-bare.toml", page));
        Assert.Null(reply["answer"]);
        Assert.All(reply["errors"]!.AsArray(), e => Assert.Contains((string)e!["text"]!, run.Errors.Replace(place.PathOf("profiles") + Path.DirectorySeparatorChar, "", StringComparison.Ordinal), StringComparison.Ordinal));

        // A list that is not there is told as the command tells it.
        File.Delete(list);
        run = BracketGenProgram.Run("kit", place.Job("plover-alder-58-bare"), "--into", place.Output);
        reply = await page.Json("kit", await Open("jobs/plover-alder-58-bare.toml", page));
        Assert.NotEmpty(reply["errors"]!.AsArray());
        Assert.Equal(2, run.ExitCode);
    }

    private static async Task<JsonObject> Open(string job, PageAnswers page)
    {
        var message = await page.Open(job);
        var parts = await page.Json("parts", new JsonObject { ["job"] = job, ["text"] = message["files"]![job]!.DeepClone() });
        message["parts"] = parts["files"]!.DeepClone();
        return message;
    }
}
