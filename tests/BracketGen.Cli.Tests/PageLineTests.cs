using System.Text.Json.Nodes;
using BracketGen.Design.Search;
using BracketGen.Design.Study;
using BracketGen.Drawing.Dxf;
using BracketGen.Line.Combinations;
using BracketGen.Profiles;
using BracketGen.Storage;
using static BracketGen.Cli.Tests.PageAnswers;

namespace BracketGen.Cli.Tests;

/// <summary>The page makes a product line as the command does: the same files in the same place, the same words, the same lock.</summary>
public sealed class PageLineTests : IDisposable
{
    private const string Path1 = "families/slough.toml";

    private readonly Workplace _place = new();

    // Two materials and two options, one of them with its own preferences; one variant is not sold.
    public PageLineTests() => File.WriteAllText(_place.PathOf("profiles", "families", "slough.toml"), """
        profile = "family"
        name = "Slough line"
        shop = "../shops/saltmarsh-fabrication.toml"
        vehicles = [{ code = "PLV", file = "../vehicles/plover.toml" }, { code = "PLE", file = "../vehicles/plover-estate.toml" }]
        throttle_bodies = [{ code = "A58", file = "../throttle-bodies/alder-58.toml" }]
        materials = [{ code = "S", name = "steel", designations = ["S235JR", "DC01"] }, { code = "L", name = "aluminium", designations = ["EN AW-5754 H22"] }]
        exclusions = [{ vehicle = "PLE", material = "L", option = "T", reason = "nobody asked for it" }]

        [[options]]
        code = "N"
        name = "usual"

        [[options]]
        code = "T"
        name = "more play"
        [options.preferences]
        free_play = { value = 2.2, plus_minus = 0.5 }

        [preferences]
        free_play = { value = 2, plus_minus = 0.5 }
        min_over_travel = 0.5

        [life]
        temperature = 80

        [numbers]
        rule = "SF-{vehicle}{throttle_body}{material}{option}"

        [document]
        title = "Bracket \"{vehicle}\", {throttle_body}"
        date = 2026-03-02
        creator = "Saltmarsh drawing office"

        [cutting]
        quantity = 3

        """.ReplaceLineEndings("\n"));

    public void Dispose() => _place.Dispose();

    [Fact]
    public async Task A_line_is_made_as_the_command_makes_it_and_a_variant_is_opened_as_a_job()
    {
        await using var page = await On(_place);
        var before = await page.Json("line", Message());
        Assert.Equal(["Alder 58, steel, usual", "Alder 58, steel, more play", "Alder 58, aluminium, usual", "Alder 58, aluminium, more play"], Texts(before["columns"]));
        Assert.Equal(7, Cells(before).Count(c => (string)c["word"]! == "not made yet"));
        var excluded = Cells(before).Single(c => (string)c["key"]! == "PLE-A58-L-T");
        Assert.Equal(("not sold", "not sold: nobody asked for it"), ((string)excluded["word"]!, (string)excluded["why"]![0]!));
        Assert.Null(before["run"]);

        var run = await Made(page, Message());
        var family = _place.PathOf("profiles", "families", "slough.toml");
        var command = BracketGenProgram.Run("line", family, "--into", _place.Output, "--skip-strength", "--register", _place.PathOf("other.register.jsonl"));
        Assert.True(File.Exists(_place.PathOf("profiles", "families", "slough.register.jsonl")));
        string Short(string text, string folder) => text.Replace(folder + Path.DirectorySeparatorChar, "", StringComparison.Ordinal).TrimEnd();
        Assert.Equal(Short(command.Output, _place.Output), ((string)run["output"]!).Replace("output" + Path.DirectorySeparatorChar, "", StringComparison.Ordinal).TrimEnd());
        Assert.Contains((string)run["progress"]!, command.Errors, StringComparison.Ordinal);
        Assert.Equal("", (string)run["errors"]!);
        Assert.Equal(Contents(_place.PathOf("output", "slough")), Contents(_place.PathOf("profiles", "output", "slough")));

        var after = await page.Json("line", Message());
        Assert.Contains((string)after["outcome"]!, command.Output, StringComparison.Ordinal);
        Assert.Equal(7, Cells(after).Count(c => (string)c["state"]! == "not-proven"));

        // Each variant as a job: solved by itself it is cut as in the line.
        foreach (var key in new[] { "PLV-A58-S-N", "PLV-A58-L-T", "PLE-A58-S-T" })
        {
            var message = Message();
            message["key"] = key;
            var opened = await page.Json("line-job", message);
            var files = opened["files"]!.AsObject().Aggregate(MemoryFileSource.Empty, (all, f) => all.With(f.Key, (string)f.Value!));
            var job = ProfileReader.ReadJob((string)opened["job"]!, files);
            Assert.Empty(job.Errors);
            var its = FamilyReader.Read(family, new DiskFileSource()).Value!;
            var wanted = CombinationJob.Of(its, FamilyCombinations.Of(its).Offered.Single(c => c.Key == key), job.Value!.Document.PartNumber!, job.Value.Document.Revision!);
            Assert.Equal((wanted.Document, wanted.Units, wanted.Life.ToString(), wanted.Preferences.FreePlay), (job.Value.Document, job.Value.Units, job.Value.Life.ToString(), job.Value.Preferences.FreePlay));
            Assert.Equal(wanted.Preferences.Materials.AsEnumerable(), job.Value.Preferences.Materials);
            var solution = Designer.Solve(job.Value, SearchEffort.WithoutStrength);
            Assert.Equal(
                await File.ReadAllBytesAsync(_place.PathOf("profiles", "output", "slough", "combinations", key, "flat-pattern.dxf")),
                new DxfWriter().Write(FlatPatternDxf.Compose(solution.Bracket!, solution.Job, [])));
        }

        // A change of a profile is seen; the next run leaves the others alone.
        _place.Edit("vehicles/plover-estate.toml", "free_inner_length = { value = 141", "free_inner_length = { value = 141.5");
        Assert.Equal(3, Cells(await page.Json("line", Message())).Count(c => (string)c["word"]! == "changed since it was made"));
        var third = await Made(page, Message());
        Assert.Equal("", (string)third["errors"]!);
        Assert.Contains("4 unchanged", (string)third["progress"]!, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_stopped_run_leaves_whole_files_and_the_next_goes_on()
    {
        await using (var page = await On(_place))
        {
            await page.Json("line-run", Message());
            await page.Json("line-stop", Message());
            var run = await Ended(page);
            Assert.True(((string)run["errors"]!).StartsWith("Stopped: ", StringComparison.Ordinal) || ((string)run["output"]!).Length > 0, run.ToJsonString());
            var line = _place.PathOf("profiles", "output", "slough");
            Assert.DoesNotContain(Directory.EnumerateFiles(line, "*", new EnumerationOptions { RecurseSubdirectories = true, AttributesToSkip = 0 }), f => f.EndsWith(".part", StringComparison.Ordinal) || f.EndsWith(".old", StringComparison.Ordinal));
            if (((string)run["errors"]!).StartsWith("Stopped: ", StringComparison.Ordinal))
            {
                Assert.False(File.Exists(Path.Combine(line, "catalogue.html")));
            }

            // The program is ended while a line is made: what is begun is finished.
            await page.Json("line-run", Message());
        }

        await using var again = await On(_place);
        await Made(again, Message());
        BracketGenProgram.Run("line", _place.PathOf("profiles", "families", "slough.toml"), "--into", _place.Output, "--skip-strength");
        Assert.Equal(Contents(_place.PathOf("output", "slough")), Contents(_place.PathOf("profiles", "output", "slough")));
    }

    [Fact]
    public async Task Another_run_a_mistake_and_a_link_are_told()
    {
        await using var page = await On(_place);
        using (var held = FolderLock.TryTake(_place.PathOf("profiles", "output", "slough")))
        {
            Assert.NotNull(held);
            var run = await Made(page, Message());
            Assert.StartsWith("another run is at work in output/slough", ((string)run["errors"]!).Replace('\\', '/'), StringComparison.Ordinal);
        }

        Directory.Delete(_place.PathOf("profiles", "output"), recursive: true);
        Directory.CreateDirectory(_place.PathOf("elsewhere"));
        Directory.CreateSymbolicLink(_place.PathOf("profiles", "output"), _place.PathOf("elsewhere"));
        await Assert.ThrowsAnyAsync<Xunit.Sdk.XunitException>(() => page.Json("line-run", Message()));
        Assert.Empty(Directory.GetFileSystemEntries(_place.PathOf("elsewhere")));
        Directory.Delete(_place.PathOf("profiles", "output"));
        Directory.CreateDirectory(_place.PathOf("profiles", "output", "slough", "combinations"));
        Directory.CreateSymbolicLink(_place.PathOf("profiles", "output", "slough", "combinations", "PLV-A58-S-N"), _place.PathOf("elsewhere"));
        await Assert.ThrowsAnyAsync<Xunit.Sdk.XunitException>(() => page.Json("line-run", Message()));
        Assert.Empty(Directory.GetFileSystemEntries(_place.PathOf("elsewhere")));

        _place.Edit("families/slough.toml", "quantity = 3", "quantity = -3");
        var command = BracketGenProgram.Run("line", _place.PathOf("profiles", "families", "slough.toml"), "--into", _place.Output);
        var error = Assert.Single((await page.Json("line", Message()))["errors"]!.AsArray());
        Assert.Contains((string)error!["text"]!, command.Errors, StringComparison.Ordinal);
    }

    private static JsonObject Message() => new() { ["path"] = Path1, ["strength"] = false };

    private static List<JsonNode> Cells(JsonNode line) => [.. line["rows"]!.AsArray().SelectMany(r => r!["cells"]!.AsArray()).Select(c => c!)];

    private static async Task<JsonNode> Made(PageAnswers page, JsonObject message)
    {
        await page.Json("line-run", message);
        return await Ended(page);
    }

    private static async Task<JsonNode> Ended(PageAnswers page)
    {
        while (true)
        {
            var run = (await page.Json("line-state", Message()))["run"]!;
            if (!(bool)run["isRunning"]!)
            {
                return run;
            }

            await Task.Delay(50);
        }
    }

    private static SortedDictionary<string, string> Contents(string folder) => new(
        Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories).Where(f => Path.GetFileName(f) != FolderLock.FileName)
            .ToDictionary(f => Path.GetRelativePath(folder, f), f => Convert.ToHexString(File.ReadAllBytes(f))), StringComparer.Ordinal);
}
