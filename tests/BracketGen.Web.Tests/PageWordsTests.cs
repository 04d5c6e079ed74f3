using System.Globalization;
using System.Net;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using BracketGen.Geometry;
using BracketGen.Profiles.Family;
using BracketGen.Profiles.Forms;
using BracketGen.TestSupport;
using BracketGen.Words.Page;
using BracketGen.Words.Report;

namespace BracketGen.Web.Tests;

/// <summary>The page's scripts and its document hold no prose and no conversion factor: both come from the program.</summary>
public partial class PageWordsTests
{
    // Kinds of profiles, selectors, a media query, and the head of a profile.
    private static readonly string[] NoProse =
    [
        "throttle body", "packed job", "input[type=text], textarea, select", "#view-panels details[open] summary code", "#body-checks summary code",
        "#profile-panel details[data-group]", ".panes-switch button", "(prefers-color-scheme: dark)",
        "#:schema ../schemas/….schema.json profile = \"…\" name = …  # … ",
    ];

    private static readonly string[] NamesOfCode = ["Enter", "Escape", "Quick", "Word", "Count", "Point", "Text", "Measured", "Tab", "Home", "End", "A", "B"];

    private static string[] Files => [.. Directory.GetFiles(RepositoryRoot.PathOf("src", "BracketGen.Web", "Page"), "*.js").Select(f => Path.GetFileName(f)!)];

    private static readonly string[] Documents = ["index.html", "pairing.html"];

    public static TheoryData<string> Scripts => new(Files);

    private static string Read(string file) => File.ReadAllText(RepositoryRoot.PathOf("src", "BracketGen.Web", "Page", file));

    [Theory]
    [MemberData(nameof(Scripts))]
    public void A_script_holds_no_prose(string file)
    {
        var found = ScriptText.LiteralsOf(Read(file)).Select(t => Tag().Replace(t, "")).Where(t => !NoProse.Contains(t) && !NamesOfCode.Contains(t) && (TwoWords().IsMatch(t) || Label().IsMatch(t)));
        Assert.Empty(found);
    }

    // The reader of literals itself: it must find what is hidden behind comments, expressions and nested templates.
    [Fact]
    public void The_reader_finds_every_literal()
    {
        const string script = "/* 'no' */ const a = b / 2 / c, r = /['\"`]/g; // \"no\"\nf('one', `two ${x ? `three ${y}` : \"four\"} five`, 'it\\'s');";
        Assert.Equal(["one", "three …", "four", "two … five", "it's"], ScriptText.LiteralsOf(script));
        Assert.Matches(TwoWords(), "Take it away");
        Assert.Matches(Label(), "Close");
    }

    [Fact]
    public void Every_word_that_the_page_uses_is_there_and_every_word_is_used()
    {
        var used = new HashSet<string>();
        var whole = new HashSet<string>();
        foreach (var file in Files)
        {
            var script = Read(file);
            var alias = Alias().Match(script) is { Success: true } said ? said.Groups[1].Value : "";
            foreach (Match use in Use().Matches(script))
            {
                var section = use.Groups["section"].Value;
                used.Add($"{section}.{use.Groups["name"].Value}");
            }

            whole.UnionWith(WholeSection().Matches(script).Select(m => m.Groups[1].Value));
            used.UnionWith(Said().Matches(script).Select(m => $"{alias}.{m.Groups[1].Value}"));
        }

        used.UnionWith(Documents.SelectMany(file => Placeholder().Matches(Read(file))).Select(m => m.Groups[1].Value));
        var there = PageWords.Sections.SelectMany(s => s.Value.Keys.Select(name => $"{s.Key}.{name}")).ToList();
        Assert.Empty(used.Where(u => !whole.Contains(u.Split('.')[0])).Except(there));
        Assert.Empty(there.Where(t => !whole.Contains(t.Split('.')[0])).Except(used));
    }

    [Fact]
    public async Task The_document_comes_with_its_words_filled_in()
    {
        await using var served = await Served.Start();
        var (status, text) = await served.Get("/");
        Assert.Equal(HttpStatusCode.OK, status);
        Assert.DoesNotContain("{{", text, StringComparison.Ordinal);
        Assert.Contains("<button type=\"button\" id=\"do-start\">Jobs</button>", text, StringComparison.Ordinal);
        var json = JsonNode.Parse(WordsElement().Match(text).Groups[1].Value)!;
        Assert.Equal("Begin", (string?)json["words"]!["start"]!["begin"]);

        // No text and no label of the document is its own.
        var own = string.Concat(Documents.Select(Read));
        Assert.DoesNotContain(
            Between().Matches(own).Select(m => m.Groups[1].Value.Trim()),
            t => t.Length > 0 && t != "mm" && !t.StartsWith("{{", StringComparison.Ordinal));
        Assert.All(Labels().Matches(own), m => Assert.StartsWith("{{", m.Groups[1].Value, StringComparison.Ordinal));
    }

    // NIST Special Publication 811 (2008), appendix B.8: 1 in = 25.4 mm, 1 lbf = 4.448 222 N, 1 lbf in = 0.112 984 8 N m, 1 lbf/in = 0.175 126 8 N/mm, 1 ksi = 6.894 757 MPa.
    [Theory]
    [InlineData("mm", "in", 25.4)]
    [InlineData("N", "lbf", 4.448222)]
    [InlineData("N m", "lbf in", 0.1129848)]
    [InlineData("N/mm", "lbf/in", 0.1751268)]
    [InlineData("MPa", "ksi", 6.894757)]
    public void The_page_converts_with_the_programs_factors(string metric, string inch, double factor)
    {
        var unit = Assert.Single(PageWords.Units, u => u.Metric == metric);
        Assert.Equal(inch, unit.Inch);
        Assert.Equal(factor, unit.Factor, factor * 1e-6);
    }

    [Theory]
    [MemberData(nameof(Scripts))]
    public void A_script_holds_no_conversion_factor(string file)
    {
        var numbers = Decimal().Matches(Read(file)).Select(m => double.Parse(m.Value, CultureInfo.InvariantCulture)).ToList();
        Assert.DoesNotContain(numbers, n => PageWords.Units.Any(u => Math.Abs(n - u.Factor) < 1e-3 * u.Factor) || n is 0.45359237 or 9.80665);
    }

    [SkippableTheory]
    [InlineData("types")]
    [InlineData("lint")]
    public void The_scripts_are_checked(string what)
    {
        var npm = OutsideTool.Require("npm");
        var tests = RepositoryRoot.PathOf("tests", "browser");
        OutsideTool.Require(Path.Combine(tests, "node_modules", "typescript", "package.json"));
        var said = npm.RunOrFail(["run", "--silent", "--prefix", tests, what], timeout: TimeSpan.FromMinutes(4));
        Assert.True(said.Length == 0, said);
    }

    [GeneratedRegex(@"\p{L}{2,}[,.:;]?\s+\p{L}{2,}")]
    private static partial Regex TwoWords();

    [GeneratedRegex(@"^\p{Lu}\p{Ll}*[.!?…]?$")]
    private static partial Regex Label();

    [GeneratedRegex("<[^>]*>")]
    private static partial Regex Tag();

    [GeneratedRegex(@"const said = words\.(\w+);")]
    private static partial Regex Alias();

    [GeneratedRegex(@"\bsaid\.(\w+)")]
    private static partial Regex Said();

    [GeneratedRegex(@"\bwords\.(?<section>\w+)\.(?<name>\w+)")]
    private static partial Regex Use();

    [GeneratedRegex(@"\bwords\.(\w+)(?:\[|\)| )")]
    private static partial Regex WholeSection();

    [GeneratedRegex(@"\{\{(\w+\.[\w-]+)\}\}")]
    private static partial Regex Placeholder();

    [GeneratedRegex("<script type=\"application/json\" id=\"words\">([^<]*)</script>")]
    private static partial Regex WordsElement();

    [GeneratedRegex(">([^<>]*)<")]
    private static partial Regex Between();

    [GeneratedRegex("(?:aria-label|title|placeholder|alt)=\"([^\"]*)\"")]
    private static partial Regex Labels();

    [GeneratedRegex(@"\d+\.\d+")]
    private static partial Regex Decimal();
}
