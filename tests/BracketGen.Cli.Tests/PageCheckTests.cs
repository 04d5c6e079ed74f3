using System.Net;
using System.Text;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using BracketGen.TestSupport;
using BracketGen.Web.Folder;
using BracketGen.Web.Memory;
using BracketGen.Web.Serving;

namespace BracketGen.Cli.Tests;

/// <summary>The page says of a bracket that is there already what the command says: the same words, the same numbers.</summary>
public sealed partial class PageCheckTests : IAsyncLifetime, IDisposable
{
    private const string JobPath = "jobs/plover-alder-58.toml";

    private readonly Workplace _place = new();
    private readonly HttpClient _client = new(new SocketsHttpHandler { UseProxy = false }) { Timeout = Timeout.InfiniteTimeSpan };
    private PageServer? _server;

    public static TheoryData<string> Brackets => [.. Directory.GetFiles(RepositoryRoot.PathOf("profiles", "brackets"), "*.toml").Select(f => Path.GetFileNameWithoutExtension(f)).Order()];

    public async Task InitializeAsync()
    {
        foreach (var drawing in Directory.GetFiles(RepositoryRoot.PathOf("profiles", "brackets"), "*.dxf"))
        {
            File.Copy(drawing, _place.PathOf("profiles", "brackets", Path.GetFileName(drawing)));
        }

        _server = await PageServer.Start(new WorkFolder(_place.PathOf("profiles")), new PageMemory(null), 0);
    }

    public async Task DisposeAsync() => await _server!.DisposeAsync();

    public void Dispose()
    {
        _client.Dispose();
        _place.Dispose();
    }

    [Theory]
    [MemberData(nameof(Brackets))]
    public async Task The_page_says_what_the_command_says(string bracket)
    {
        var run = BracketGenProgram.Run("check", _place.PathOf("profiles", "brackets", bracket + ".toml"), _place.PathOf(["profiles", .. JobPath.Split('/')]), "--all-checks");
        var command = ScreenText.OneLine(run.Output).Replace(_place.PathOf("profiles") + Path.DirectorySeparatorChar, "", StringComparison.Ordinal);
        var answer = await Answer($"brackets/{bracket}.toml");
        var lines = Lines((string)answer["parts"]!["trial"]!).ToList();
        Assert.True(lines.Count > 3);
        Assert.All(lines, line => Assert.Contains(line, command, StringComparison.Ordinal));

        // And the other way: of the command's sentences none is missing on the page, tables and what its checks mean aside.
        var page = string.Join(' ', lines);
        var sentences = run.Output.Split("\n\n").Select(p => ScreenText.OneLine(p).Replace(_place.PathOf("profiles") + Path.DirectorySeparatorChar, "", StringComparison.Ordinal));
        foreach (var told in sentences.SkipWhile(s => !s.StartsWith("Bolt it on", StringComparison.Ordinal) && !s.StartsWith("Its holes", StringComparison.Ordinal)))
        {
            Assert.Contains(Dash().Replace(told, " ").Trim(), page, StringComparison.Ordinal);
        }

        // Every check with its value and limit.
        var checks = (string?)answer["parts"]!["checks"] ?? "";
        Assert.True(checks.Length == 0 || Row().Count(checks) > 40);
        foreach (Match row in Row().Matches(checks))
        {
            var cells = Cell().Matches(row.Value).Select(c => Text(c.Groups["text"].Value)).ToList();
            Assert.Contains($"{Text(Code().Match(row.Value).Groups[1].Value)} {cells[^3]}", command, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task The_table_of_the_page_is_that_of_the_command()
    {
        string[] brackets = [.. new[] { "bought-tall-34", "market-upright-40", "shelf-upright-34" }];
        var run = BracketGenProgram.Run(["check", .. brackets.Select(b => _place.PathOf("profiles", "brackets", b + ".toml")), _place.PathOf(["profiles", .. JobPath.Split('/')]), "--ours"]);
        var command = ScreenText.OneLine(run.Output);
        foreach (var (bracket, i) in brackets.Append("").Select((b, i) => (b, i)))
        {
            var cells = (await Answer(bracket.Length > 0 ? $"brackets/{bracket}.toml" : ""))["row"]!.AsArray().Select(c => (string)c!);
            Assert.Contains(ScreenText.OneLine($"{i + 1} {string.Join(' ', cells)}"), command, StringComparison.Ordinal);
        }
    }

    private async Task<JsonNode> Answer(string bracket)
    {
        var files = new JsonObject();
        foreach (var (address, path) in new[] { ("open", JobPath), ("bracket", bracket) }.Where(a => a.Item2.Length > 0))
        {
            foreach (var (name, text) in (await Post(address, new JsonObject { ["path"] = path }))["files"]!.AsObject())
            {
                files[name] = text!.DeepClone();
            }
        }

        return (await Post("work", new JsonObject { ["job"] = JobPath, ["files"] = files, ["bracket"] = bracket, ["depth"] = "strength" }))["answer"]!;
    }

    private async Task<JsonNode> Post(string address, JsonObject message)
    {
        using var content = new StringContent(message.ToJsonString(), Encoding.UTF8, "application/json");
        using var response = await _client.PostAsync(_server!.Address + address, content);
        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        return JsonNode.Parse(await response.Content.ReadAsStringAsync())!;
    }

    private static IEnumerable<string> Lines(string html) => Line().Matches(html).Select(m => Text(m.Groups["text"].Value));

    private static string Text(string html) => ScreenText.OneLine(WebUtility.HtmlDecode(Tag().Replace(html, " ")));

    [GeneratedRegex("<(?:p|li)[^>]*>(?<text>.*?)</(?:p|li)>", RegexOptions.Singleline)]
    private static partial Regex Line();

    [GeneratedRegex("<tr[^>]*>.*?<code>.*?</tr>", RegexOptions.Singleline)]
    private static partial Regex Row();

    [GeneratedRegex("<(?:td|th)[^>]*>(?<text>.*?)</(?:td|th)>", RegexOptions.Singleline)]
    private static partial Regex Cell();

    [GeneratedRegex("<code>(.*?)</code>", RegexOptions.Singleline)]
    private static partial Regex Code();

    [GeneratedRegex("<[^>]+>")]
    private static partial Regex Tag();

    // The marks of a list.
    [GeneratedRegex(@"(?:^| )- (?=[A-Z])")]
    private static partial Regex Dash();
}
