using System.Net;
using System.Text.Json;
using BracketGen.Profiles.Family;
using BracketGen.Words.Report;

namespace BracketGen.Web.Tests;

/// <summary>Profiles written back: only over what the page has seen.</summary>
public class SaveTests
{
    [Fact]
    public async Task A_profile_is_saved_where_nothing_changed_meanwhile()
    {
        await using var served = await Served.Start();
        var place = Path.Combine(served.Folder, "vehicles", "plover.toml");
        var was = File.ReadAllText(place);
        var text = was.Replace("138", "139", StringComparison.Ordinal);
        Assert.Equal("{\"changed\":[]}", (await served.Post("/save", Message("vehicles/plover.toml", text, was, false))).Text);
        Assert.Equal(text, File.ReadAllText(place));

        File.WriteAllText(place, "# somebody else was here\n");
        Assert.Equal("{\"changed\":[\"vehicles/plover.toml\"]}", (await served.Post("/save", Message("vehicles/plover.toml", was, text, false))).Text);
        Assert.Equal("# somebody else was here\n", File.ReadAllText(place));

        Assert.Equal("{\"changed\":[]}", (await served.Post("/save", Message("vehicles/plover.toml", was, text, true))).Text);
        Assert.Equal(was, File.ReadAllText(place));
    }

    [Fact]
    public async Task A_new_profile_gets_its_folder_and_one_that_is_there_is_not_lost()
    {
        await using var served = await Served.Start(withExamples: false);
        Assert.Equal("{\"changed\":[]}", (await served.Post("/save", Message("vehicles/new.toml", "a = 1\n", null, false))).Text);
        Assert.Equal("a = 1\n", File.ReadAllText(Path.Combine(served.Folder, "vehicles", "new.toml")));
        Assert.Equal("{\"changed\":[\"vehicles/new.toml\"]}", (await served.Post("/save", Message("vehicles/new.toml", "b = 1\n", null, false))).Text);
        Assert.Single(Directory.GetFiles(served.Folder, "*", SearchOption.AllDirectories));
    }

    [Fact]
    public async Task What_cannot_be_written_is_told()
    {
        await using var served = await Served.Start(withExamples: false);
        File.WriteAllText(Path.Combine(served.Folder, "vehicles"), "a file in the folder's place");
        var (status, text) = await served.Post("/save", Message("vehicles/new.toml", "a = 1\n", null, false));
        Assert.Equal(HttpStatusCode.Conflict, status);
        Assert.Contains("could not be written", text, StringComparison.Ordinal);
    }

    // The list was cut at 400 once, without a word.
    [Fact]
    public async Task Every_profile_is_listed_and_one_that_cannot_be_read_says_why()
    {
        await using var served = await Served.Start(withExamples: false);
        for (var i = 0; i < 450; i++)
        {
            File.WriteAllText(Path.Combine(served.Folder, $"vehicle-{i:000}.toml"), $"profile = \"vehicle\"\nname = \"V{i}\"\n");
        }

        File.WriteAllText(Path.Combine(served.Folder, "broken.toml"), "profile = \n");
        File.WriteAllBytes(Path.Combine(served.Folder, "bytes.toml"), [0xC3, 0x28]);
        File.WriteAllText(Path.Combine(served.Folder, "other.toml"), "a = 1\n");
        File.WriteAllText(Path.Combine(served.Folder, "job.toml"), "profile = \"job\"\nvehicle = \"vehicle-007.toml\"\nthrottle_body = \"gone.toml\"\n");
        using var shelf = JsonDocument.Parse((await served.Get("/shelf")).Text);
        var listed = shelf.RootElement.GetProperty("profiles").EnumerateArray().ToDictionary(
            p => p.GetProperty("path").GetString()!, p => p.GetProperty("problem").GetString());
        Assert.Equal(453, listed.Count);
        Assert.Contains("broken.toml", listed["broken.toml"], StringComparison.Ordinal);
        Assert.Contains("no UTF-8 text", listed["bytes.toml"], StringComparison.Ordinal);
        Assert.Contains("gone.toml: no such file", listed["job.toml"], StringComparison.Ordinal);
        Assert.Null(listed["vehicle-449.toml"]);
    }

    private static string Message(string path, string text, string? was, bool replace) => JsonSerializer.Serialize(
        new { files = new[] { new { path, text, was } }, replace });
}
