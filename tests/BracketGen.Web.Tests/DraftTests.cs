using System.Net;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace BracketGen.Web.Tests;

/// <summary>What was typed and not saved is kept beside its job, offered when the job is opened, and is no profile.</summary>
public class DraftTests
{
    private const string Job = "jobs/plover-alder-58.toml", Body = "throttle-bodies/alder-58.toml";

    [Fact]
    public async Task It_is_kept_offered_and_taken_away()
    {
        await using var page = await Served.Start();
        var files = await Files(page);
        files[Body] = files[Body].Replace("bore = 58", "bore = 57", StringComparison.Ordinal);

        Assert.Equal(HttpStatusCode.OK, (await Keep(page, Job, files)).Status);

        Assert.True(File.Exists(Path.Combine(page.Folder, Job + ".unsaved")));
        Assert.Equal([Job], await Drafts(page));
        var opened = await Open(page);
        Assert.True((bool)opened["isSaved"]!);
        var (path, text) = Assert.Single(opened["unsaved"]!.AsObject());
        Assert.Equal(Body, path);
        Assert.Equal(files[Body], (string)text!);
        Assert.Contains("bore = 58", (string)opened["files"]![Body]!, StringComparison.Ordinal);

        Assert.Equal(HttpStatusCode.OK, (await Keep(page, Job, [])).Status);
        Assert.Empty(await Drafts(page));
        Assert.Empty((await Open(page))["unsaved"]!.AsObject());
        Assert.Equal(HttpStatusCode.OK, (await Keep(page, Job, [])).Status);
    }

    [Fact]
    public async Task A_job_that_was_never_saved_opens_from_its_draft()
    {
        await using var page = await Served.Start(withExamples: false);
        Dictionary<string, string> files = new() { ["jobs/new.toml"] = "profile = \"job\"\nthrottle_body = \"../throttle-bodies/new.toml\"\n", ["throttle-bodies/new.toml"] = "not TOML at all [" };

        await Keep(page, "jobs/new.toml", files);

        var opened = await Open(page, "jobs/new.toml");
        Assert.False((bool)opened["isSaved"]!);
        Assert.Equal(files["throttle-bodies/new.toml"], (string)opened["files"]!["throttle-bodies/new.toml"]!);
        var shelf = JsonNode.Parse((await page.Get("/shelf")).Text)!;
        Assert.Empty(shelf["profiles"]!.AsArray());
        Assert.Equal("jobs/new.toml", (string)shelf["unsaved"]![0]!);
    }

    [Fact]
    public async Task A_damaged_draft_is_left_alone_and_the_job_opens()
    {
        await using var page = await Served.Start();
        var draft = Path.Combine(page.Folder, Job + ".unsaved");
        File.WriteAllText(draft, "profile = \"packed job\"\njob = \"jobs/other.toml\"\n");

        var opened = await Open(page);

        Assert.Empty(opened["unsaved"]!.AsObject());
        Assert.True(File.Exists(draft));
    }

    [Theory]
    [InlineData("../out.toml")]
    [InlineData("/etc/passwd.toml")]
    [InlineData("jobs/.hidden.toml")]
    [InlineData("jobs/plover-alder-58.txt")]
    [InlineData("jobs/plover-alder-58.toml.unsaved")]
    public async Task Nothing_is_kept_outside_the_folder_s_jobs(string job)
    {
        await using var page = await Served.Start();

        foreach (var files in new[] { await Files(page), [] })
        {
            Assert.Equal(HttpStatusCode.BadRequest, (await Keep(page, job, files)).Status);
        }

        Assert.Empty(Directory.EnumerateFiles(page.Folder, "*.unsaved", SearchOption.AllDirectories));
    }

    private static async Task<Dictionary<string, string>> Files(Served page) =>
        (await Open(page))["files"]!.AsObject().ToDictionary(f => f.Key, f => (string)f.Value!);

    private static async Task<JsonNode> Open(Served page, string job = Job) =>
        JsonNode.Parse((await page.Post("/open", JsonSerializer.Serialize(new { path = job, example = false }))).Text)!;

    private static Task<(HttpStatusCode Status, string Text)> Keep(Served page, string job, Dictionary<string, string> files) =>
        page.Post("/keep", JsonSerializer.Serialize(new { job, files }));

    private static async Task<string[]> Drafts(Served page) =>
        [.. JsonNode.Parse((await page.Get("/shelf")).Text)!["unsaved"]!.AsArray().Select(p => (string)p!)];
}
