using System.Text.Json.Nodes;
using BracketGen.Profiles.Editing;
using static BracketGen.Cli.Tests.PageAnswers;

namespace BracketGen.Cli.Tests;

/// <summary>The page says of test bends what the command says, and its edit gives the file that the command writes.</summary>
public class PageTestBendTests
{
    private const string Fabrication = "shops/saltmarsh-fabrication.toml", Vice = "shops/saltmarsh-vice.toml";

    [Theory]
    [InlineData(Fabrication, "DC01 2", "--die", "16", "100, 51.9, 51.9, 90, 2.6", "100, 51.9, 51.95, 90, 2.6")]
    [InlineData(Fabrication, "1.4301 3", "--die", "24", "100, 53, 53.1, 90, 3.7", "100, 53.1, 53.1, 90, 3.8, 3.02")]
    [InlineData(Fabrication, "DC01 2", "--die", "16", "100, 51.9, 51.9, 90, 3.2", "100, 51.9, 51.95, 90, 3.2")]
    [InlineData(Fabrication, "DC01 2", "--die", "16", "4 in, 52.7, 52.7, 90, 2.6")]
    [InlineData(Fabrication, "DC01 2", "--die", "16", "100, 51.9, 51.9, 90, 2.6", "100, 52.9, 52.9, 90, 2.6")]
    [InlineData(Fabrication, "DC01 2", "--die", "16", "100, 70, 70, 90, 2.6", "100, 70, 70, 90, 2.6")]
    [InlineData(Fabrication, "DC01 2", "--die", "16", "100, 51.9, 51.9, 90 V, 2.6")]
    [InlineData(Fabrication, "DC01 2", "--die", "16", "100, 51.9, 51.9, 90")]
    [InlineData(Vice, "S235JR 3", "--clamp", "bar R4", "100, 53.4, 53.4, 90, 4", "100, 53.4, 53.4, 90, 4")]
    public async Task The_page_says_what_the_command_says(string shop, string sheet, string option, string tool, params string[] strips)
    {
        using var place = new Workplace();
        var path = place.PathOf(["profiles", .. shop.Split('/')]);
        var before = await File.ReadAllTextAsync(path);
        string[] asked = ["test-bend", path, "--material", sheet.Split(' ')[0], "--thickness", sheet.Split(' ')[1], option, tool, .. strips.SelectMany(s => new[] { "--strip", s })];
        var run = BracketGenProgram.Run(asked);

        await using var page = await On(place);
        var message = new JsonObject { ["shop"] = shop, ["text"] = before };
        var choices = await page.Json("test-bend", (JsonObject)message.DeepClone());
        message["stock"] = Texts(choices["stock"]).ToList().FindIndex(s => s.StartsWith($"{sheet}.0 mm", StringComparison.Ordinal));
        message["tool"] = Texts(choices["tools"]).ToList().FindIndex(t => t == tool || t == $"die, opening {tool}.0 mm");
        var typed = new JsonArray();
        foreach (var strip in strips)
        {
            var values = strip.Split(", ");
            typed.Add((JsonNode)new JsonArray([.. (values.Length == 5 ? [.. values, ""] : values).Select(v => (JsonNode?)v)]));
        }

        message["strips"] = typed;
        var reply = await page.Json("test-bend", message);
        if (reply["answer"] is not { } answer)
        {
            Assert.Equal(2, run.ExitCode);
            Assert.Equal(ScreenText.OneLine(run.Errors).Replace("bracketgen: --strip", "Strip 1", StringComparison.Ordinal), (string)reply["problem"]!);
            return;
        }

        string[] told = [(string)answer["heading"]!, .. answer["rows"]!.AsArray().SelectMany(Texts), .. Texts(answer["told"])];
        Assert.Equal(
            ScreenText.OneLine(run.Output).Replace(" Nothing was written. Add --write to put k into the shop's file.", "", StringComparison.Ordinal), ScreenText.OneLine(string.Join(' ', told)));
        Assert.Equal(run.ExitCode, (string)answer["state"]! switch { "passes" => 0, "not-proven" => 5, _ => 1 });

        BracketGenProgram.Run([.. asked, "--write"]);
        var written = await File.ReadAllTextAsync(path);
        using var value = System.Text.Json.JsonDocument.Parse((answer["edit"]?["value"])?.ToJsonString() ?? "null");
        Assert.Equal(written, answer["edit"] is { } edit ? ProfileEditor.Apply(before, (string)edit["key"]!, value.RootElement) : before);
    }
}
