using System.Net;
using System.Text;
using System.Text.Json.Nodes;
using BracketGen.Design.Checks;
using BracketGen.Design.Study;
using BracketGen.Drawing.Report;
using BracketGen.Profiles;
using BracketGen.Web.Desk;
using BracketGen.Web.Folder;
using BracketGen.Web.Serving;
using BracketGen.Words.Profiles;
using BracketGen.Words.Terminal;

namespace BracketGen.Web.Tests;

/// <summary>A bracket that is there already, checked on the page's job: read from the folder alone, answered as the command answers.</summary>
public class BracketTests
{
    private const string Job = "jobs/plover-alder-58.toml", Drawn = "brackets/catalogue-upright-34.toml", Drawing = "brackets/catalogue-upright-34.dxf", Shelf = "brackets/shelf-upright-34.toml";

    public static TheoryData<string> Shipped => [.. Examples.List().Where(e => e.Kind == "bracket").Select(e => e.Path)];

    [Fact]
    public async Task The_folders_brackets_and_drawings_are_listed_and_one_that_lacks_its_drawing_says_so()
    {
        await using var served = await Served.Start();
        File.Delete(Path.Combine(served.Folder, Drawing));
        File.WriteAllText(Path.Combine(served.Folder, "brackets", "other.DXF"), "0\nEOF\n");
        Directory.CreateDirectory(Path.Combine(served.Folder, ".hidden"));
        File.WriteAllText(Path.Combine(served.Folder, ".hidden", "no.dxf"), "0\nEOF\n");
        var shelf = JsonNode.Parse((await served.Get("/shelf")).Text)!;
        Assert.Equal(["brackets/other.DXF"], shelf["drawings"]!.AsArray().Select(d => (string)d!));
        var brackets = shelf["profiles"]!.AsArray().Where(p => (string)p!["kind"]! == "bracket").ToDictionary(p => (string)p!["path"]!, p => (string?)p!["problem"]);
        Assert.Equal(Examples.List().Count(e => e.Kind == "bracket"), brackets.Count);
        Assert.Contains($"{Drawing}: no such file", brackets[Drawn], StringComparison.Ordinal);
        Assert.Null(brackets[Shelf]);
    }

    // The drawing goes to the page and back to the letter, whatever letters it was written in.
    [Fact]
    public async Task A_drawing_keeps_its_bytes()
    {
        await using var served = await Served.Start();
        byte[] bytes = [.. Enumerable.Range(0, 256).Select(i => (byte)i)];
        await File.WriteAllBytesAsync(Path.Combine(served.Folder, Drawing), bytes);
        var opened = JsonNode.Parse((await served.Post("/bracket", Message(Drawn))).Text)!;
        var text = (string)opened["files"]![Drawing]!;
        Assert.Equal(256, text.Length);
        var save = new JsonObject { ["files"] = new JsonArray((JsonNode)new JsonObject { ["path"] = "brackets/copy.dxf", ["text"] = text, ["was"] = null }) };
        Assert.Equal(HttpStatusCode.OK, (await served.Post("/save", save.ToJsonString())).Status);
        Assert.Equal(bytes, await File.ReadAllBytesAsync(Path.Combine(served.Folder, "brackets/copy.dxf")));
    }

    [Theory]
    [InlineData("../outside.dxf")]
    [InlineData("../../outside.dxf")]
    [InlineData("/etc/outside.dxf")]
    [InlineData(".hidden.dxf")]
    [InlineData("..\\\\outside.dxf")]
    [InlineData("outside.txt")]
    [InlineData("link.dxf")]
    public async Task A_drawing_outside_the_folder_is_not_read_and_not_written(string named)
    {
        await using var served = await Served.Start();
        var outside = Path.Combine(Path.GetDirectoryName(served.Folder)!, "outside.dxf");
        try
        {
            File.WriteAllText(outside, "secret");
            File.WriteAllText(Path.Combine(served.Folder, "outside.txt"), "secret");
            File.CreateSymbolicLink(Path.Combine(served.Folder, "brackets", "link.dxf"), outside);
            var place = Path.Combine(served.Folder, Drawn);
            File.WriteAllText(place, File.ReadAllText(place).Replace("catalogue-upright-34.dxf", named, StringComparison.Ordinal));
            var (status, text) = await served.Post("/bracket", Message(Drawn));
            Assert.Equal(HttpStatusCode.OK, status);
            Assert.DoesNotContain("secret", text, StringComparison.Ordinal);
            // The folder itself has no such link.
            foreach (var path in named == "link.dxf" ? [$"brackets/{named}"] : new[] { $"brackets/{named}", named })
            {
                Assert.Equal(HttpStatusCode.NotFound, (await served.Post("/read", Message(path))).Status);
                var save = $$"""{"files":[{"path":"{{path}}","text":"written","was":null}],"replace":true}""";
                Assert.Equal(HttpStatusCode.Conflict, (await served.Post("/save", save)).Status);
            }

            Assert.Equal("secret", File.ReadAllText(outside));
            Assert.Equal(HttpStatusCode.NotFound, (await served.Post("/open", Message(Drawing))).Status);
            Assert.Equal(HttpStatusCode.NotFound, (await served.Post("/bracket", Message(Drawing))).Status);
        }
        finally
        {
            File.Delete(outside);
        }
    }

    [Theory]
    [MemberData(nameof(Shipped))]
    public async Task The_answer_is_that_of_the_solver(string bracket)
    {
        await using var served = await Served.Start();
        var desk = Desk(bracket);
        var job = desk.Read().Value!;
        var tried = TriedBracket.Of(ProfileReader.ReadBracket(bracket, Sources(desk), job.Shop).Value!, job, StrengthDetail.Usual);
        var answer = JsonNode.Parse((await served.Post("/work", Work(desk, bracket, "strength"))).Text)!["answer"]!;
        var (parts, data) = ReportParts.Of(tried);
        Assert.Equal(parts.Select(p => p.Id), answer["parts"]!.AsObject().Select(p => p.Key));
        foreach (var (id, html) in parts)
        {
            Assert.Equal(html.Replace(" style=\"", " data-style=\"", StringComparison.Ordinal), (string)answer["parts"]![id]!);
        }

        Assert.Equal(data is null, answer["data"] is null);
        Assert.Equal(TrialText.Row(1, tried)[1..], answer["row"]!.AsArray().Select(c => (string)c!));
        Assert.Equal(TrialText.Heads, answer["heads"]!.AsArray().Select(c => (string)c!));
        Assert.Contains("<svg", (string)answer["parts"]!["flat"]!, StringComparison.Ordinal);

        var (status, report) = await served.Post("/report", Work(desk, bracket));
        Assert.Equal(tried.Trial.Solution is null ? HttpStatusCode.Conflict : HttpStatusCode.OK, status);
        Assert.Equal(JobReport.Write(tried) is { } bytes ? Encoding.UTF8.GetString(bytes) : "There is no report: the bracket does not go on this throttle body, so nothing of it was calculated.\n", report);
    }

    // Before the whole is calculated nothing passes, and nothing is said of what corrects it.
    [Fact]
    public async Task The_quick_answer_says_what_is_still_open()
    {
        await using var served = await Served.Start();
        var answer = JsonNode.Parse((await served.Post("/work", Work(Desk(Drawn), Drawn))).Text)!["answer"]!;
        Assert.Equal("not-proven", (string)answer["verdict"]!["state"]!);
        Assert.Null(answer["row"]);
        answer = JsonNode.Parse((await served.Post("/work", Work(Desk(Shelf), Shelf))).Text)!["answer"]!;
        Assert.Equal("unsafe", (string)answer["verdict"]!["state"]!);
        Assert.Contains("Not looked for yet.", (string)answer["parts"]!["trial"]!, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_bracket_or_drawing_that_is_not_there_is_told()
    {
        await using var served = await Served.Start();
        var (status, text) = await served.Post("/bracket", Message("brackets/gone.toml"));
        Assert.Equal((HttpStatusCode.NotFound, "brackets/gone.toml: no such file in the working folder.\n"), (status, text));
        var desk = Desk(Drawn);
        desk = desk with { Files = desk.Files.Remove(Drawing) };
        var error = Assert.Single(await Errors(served, desk, Drawn));
        Assert.Equal("flat_pattern", (string)error["key"]!);
        Assert.Equal("Choose another one, or put it back into the folder.", (string)error["advice"]!);
    }

    // What the command says of a file names keys and headers; beside a field it is named as the field is.
    [Theory]
    [InlineData("[[holes]]\nat = [0, 0]\n", "", "", "")]
    [InlineData("included_angle = 90\n", "", "bends[1].included_angle", "Not given yet. Included angle between the two flanges, with a bevel protractor: 90 for a square bend. Without a ±: assumed, 1 degree.")]
    [InlineData("bend_layer = \"BEND\"", "bend_layer = \"BENDS\"", "bend_layer", "Correct the name, including capital letters.")]
    [InlineData("on = [52, 40]", "on = [52, 60]", "stop.on", "The nearest circle is")]
    [InlineData("material = \"S235JR\"", "material = \"brass\"", "material", "")]
    [InlineData("[[bends]]", "[[bends]]\nallowance = 8\nk_factor = 0.4", "bends[1].k_factor", "Clear all but one of them.")]
    public async Task Mistakes_are_named_as_the_fields_are(string old, string changed, string key, string advice)
    {
        await using var served = await Served.Start();
        var desk = Desk(Drawn);
        var text = desk.Files[Drawn].Replace(old, changed, StringComparison.Ordinal);
        Assert.NotEqual(desk.Files[Drawn], text);
        var errors = await Errors(served, desk with { Files = desk.Files.SetItem(Drawn, text) }, Drawn);
        Assert.Equal(key.Length > 0, errors.Any(e => (string)e["key"]! == key && ((string)e["advice"]!).StartsWith(advice, StringComparison.Ordinal)));
        Assert.All(errors, NoWritingOfFiles);
    }

    [Theory]
    [InlineData("0\nSECTION\n2\nENTITIES\n0\nLINE\n8\nOUTLINE\n10\n0\n20\n0\n11\n50\n21\n0\n0\nLINE\n8\nBEND\n10\n0\n20\n5\n11\n50\n21\n5\n0\nENDSEC\n0\nEOF\n")]
    [InlineData("not a drawing")]
    [InlineData("0\nSECTION\n2\nENTITIES\n0\nENDSEC\n0\nEOF\n")]
    public async Task A_drawing_without_an_outline_is_told_where_it_is_chosen(string drawing)
    {
        await using var served = await Served.Start();
        var desk = Desk(Drawn);
        desk = desk with { Files = desk.Files.SetItem(Drawing, drawing) };
        var errors = await Errors(served, desk, Drawn);
        var error = Assert.Single(errors);
        Assert.True((string)error["file"]! == Drawing || (string)error["key"]! == "flat_pattern", (string)error["text"]!);
        Assert.Equal(ProfileReader.ReadBracket(Drawn, Sources(desk)).Errors.Select(ProfileErrorText.Format), errors.Select(e => (string)e["text"]!));
        Assert.All(errors, NoWritingOfFiles);
    }

    // Of an empty form nothing is wrong: it is open.
    [Theory]
    [InlineData("profile = \"bracket\"\nname = \"N\"\n")]
    [InlineData("profile = \"bracket\"\nname = \"N\"\nflat_pattern = \"\"\n")]
    [InlineData("profile = \"bracket\"\nname = \"N\"\noutline = [[]]\n\n[[holes]]\n\n[[bends]]\noutline = [[]]\nline = [[]]\n\n[stop]\nat = [1, 2, 3]\n")]
    public async Task An_empty_form_is_open_and_not_wrong(string text)
    {
        await using var served = await Served.Start();
        var desk = Desk(Drawn);
        var errors = await Errors(served, desk with { Files = desk.Files.SetItem(Drawn, text) }, Drawn);
        Assert.NotEmpty(errors);
        Assert.All(errors, e => Assert.True((bool)e["open"]!, (string)e["text"]!));
        Assert.All(errors, NoWritingOfFiles);
    }

    [Fact]
    public async Task A_drawing_is_no_part_of_a_shared_job()
    {
        await using var served = await Served.Start();
        var (_, packed) = await served.Post("/pack", Work(Desk(Drawn), Drawn));
        Assert.DoesNotContain(".dxf\"\ntext", packed, StringComparison.Ordinal);
        Assert.Empty(ProfileReader.ReadJob("shared.toml", MemoryFileSource.Empty.With("shared.toml", packed)).Errors);
    }

    private static void NoWritingOfFiles(JsonNode error) =>
        Assert.All(new[] { "allowed", "advice" }, part => Assert.DoesNotMatch(@"\[\[|\[[a-z_]{2,}\]|[a-z]_[a-z]| = ", (string)error[part]!));

    private static async Task<List<JsonNode>> Errors(Served served, JobDesk desk, string bracket)
    {
        var reply = JsonNode.Parse((await served.Post("/work", Work(desk, bracket))).Text)!;
        return [.. reply["errors"]!.AsArray().Select(e => e!)];
    }

    private static JobDesk Desk(string bracket)
    {
        var desk = JobDesk.Open(Job, Examples.Read)!;
        return desk with { Files = desk.Files.AddRange(JobDesk.FilesOf(bracket, Examples.Read)!) };
    }

    private static MemoryFileSource Sources(JobDesk desk) => desk.Files.Aggregate(MemoryFileSource.Empty, (all, f) => all.With(f.Key, WorkFolder.BytesOf(f.Key, f.Value)));

    private static string Message(string path) => new JsonObject { ["path"] = path }.ToJsonString();

    private static string Work(JobDesk desk, string bracket, string depth = "quick") => new JsonObject
    {
        ["job"] = desk.Job,
        ["files"] = new JsonObject(desk.Files.Select(f => KeyValuePair.Create(f.Key, (JsonNode?)f.Value))),
        ["bracket"] = bracket,
        ["depth"] = depth,
    }.ToJsonString();
}
