using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using AngleSharp.Dom;
using BracketGen.Design.Inputs;
using BracketGen.Design.Study;
using BracketGen.Drawing.Report;
using BracketGen.Drawing.Tests.ShopDrawing;
using BracketGen.Profiles.Family;
using BracketGen.SheetMetal.Shops;
using BracketGen.Words;
using BracketGen.Words.Checks;
using BracketGen.Words.Report;

namespace BracketGen.Drawing.Tests.Report;

/// <summary>The page is sound, stands alone, and says the same every time.</summary>
public partial class ReportMarkupTests
{
    [Fact]
    public void Every_page_is_well_formed() => ReportCases.Each((_, page, _) =>
    {
        // ReportCases has parsed it as HTML with every mistake an error (AngleSharp, WHATWG HTML); as XML it must hold too.
        var bare = ScriptOrStyle().Replace(page, "<$1/>");
        Assert.Equal("html", XDocument.Parse(bare).Root!.Name.LocalName);
    });

    [Fact]
    public void Identifiers_are_unique_and_what_refers_to_them_finds_them() => ReportCases.Each((_, _, document) =>
    {
        var ids = document.All.Select(e => e.Id ?? "").Where(i => i.Length > 0).ToList();
        Assert.Equal(ids.Count, ids.Distinct().Count());
        foreach (var element in document.All)
        {
            string[] named = ["aria-labelledby", "aria-describedby", "for"];
            foreach (var id in named.SelectMany(a => (element.GetAttribute(a) ?? "").Split(' ', StringSplitOptions.RemoveEmptyEntries)))
            {
                Assert.Contains(id, ids);
            }

            if (element.GetAttribute("href") is { } href)
            {
                Assert.StartsWith("#", href, StringComparison.Ordinal);
                Assert.Contains(href[1..], ids);
            }
        }
    });

    [Fact]
    public void Nothing_is_fetched_from_anywhere() => ReportCases.Each((_, page, document) =>
    {
        string[] fetching = ["src", "srcset", "action", "formaction", "poster", "data", "background", "xlink:href"];
        Assert.DoesNotContain(document.All, e => fetching.Any(e.HasAttribute));
        Assert.DoesNotContain(document.All, e => e.LocalName is "link" or "base" or "iframe" or "object" or "embed" or "form" or "image" or "use");

        // The only address is the name of the HTML namespace, which nobody fetches.
        Assert.Equal(1, page.Split("://").Length - 1);
        Assert.DoesNotContain("url(", page, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("@import", page, StringComparison.OrdinalIgnoreCase);
    });

    [Fact]
    public void The_policy_allows_the_pages_own_script_alone() => ReportCases.Each((_, _, document) =>
    {
        var policy = document.QuerySelector("meta[http-equiv='Content-Security-Policy']")!.GetAttribute("content")!;
        Assert.StartsWith("default-src 'none';", policy, StringComparison.Ordinal);
        var scripts = document.Scripts.Where(s => s.Type != "application/json").ToList();
        var sum = Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(Assert.Single(scripts).Text)));
        Assert.Contains($"script-src 'sha256-{sum}';", policy, StringComparison.Ordinal);
        Assert.DoesNotContain(document.All, e => e.Attributes.Any(a => a.Name.StartsWith("on", StringComparison.OrdinalIgnoreCase)));
    });

    [Fact]
    public void Headings_go_down_one_level_at_a_time() => ReportCases.Each((_, _, document) =>
    {
        var levels = document.QuerySelectorAll("h1, h2, h3, h4, h5, h6").Select(h => h.LocalName[1] - '0').ToList();
        Assert.Equal(1, levels[0]);
        Assert.Equal(1, levels.Count(l => l == 1));
        Assert.All(levels.Zip(levels.Skip(1)), pair => Assert.True(pair.Second <= pair.First + 1, $"h{pair.First} is followed by h{pair.Second}"));
    });

    [Fact]
    public void Sections_pictures_controls_and_table_heads_have_names() => ReportCases.Each((_, _, document) =>
    {
        Assert.All(document.QuerySelectorAll("section"), s => Assert.True(s.HasAttribute("aria-labelledby")));
        Assert.All(document.QuerySelectorAll("svg"), s => Assert.True(s.GetAttribute("aria-hidden") == "true" || s.GetAttribute("aria-label")?.Length > 10));
        Assert.All(document.QuerySelectorAll("th"), h =>
        {
            Assert.Contains(h.GetAttribute("scope"), new[] { "row", "col" });
            Assert.NotEqual("", h.TextContent.Trim());
        });
        Assert.All(document.QuerySelectorAll("table"), t => Assert.NotNull(t.QuerySelector("caption")));
        foreach (var input in document.QuerySelectorAll("input"))
        {
            Assert.True(input.Ancestors<IElement>().Any(a => a.LocalName == "label") || document.QuerySelector($"label[for='{input.Id}']") is not null);
        }
    });

    [Fact]
    public void No_number_is_not_a_number() => ReportCases.Each((_, page, document) =>
    {
        var said = document.Body!.TextContent + string.Concat(document.QuerySelectorAll("svg *").SelectMany(e => e.Attributes).Select(a => a.Value));
        foreach (var script in document.QuerySelectorAll("script"))
        {
            said = said.Replace(script.TextContent, "", StringComparison.Ordinal);
        }

        Assert.DoesNotContain("NaN", said, StringComparison.Ordinal);
        Assert.DoesNotContain("Infinity", said, StringComparison.Ordinal);
        Assert.DoesNotContain("\u221e", page, StringComparison.Ordinal);
        Assert.DoesNotContain("-0.0 mm", said, StringComparison.Ordinal);

        // JSON has no such numbers: were there one, it would not have been written, or not be read.
        using var data = JsonDocument.Parse(document.GetElementById("data")!.TextContent);
        Assert.True(data.RootElement.TryGetProperty("sweep", out JsonElement _));
    });

    [Fact]
    public void The_same_solution_gives_the_same_bytes()
    {
        foreach (var (_, solution) in ReportCases.All.Take(6))
        {
            Assert.Equal(JobReport.Write(solution, []), JobReport.Write(solution, []));
        }
    }

    [Fact]
    public void What_a_user_wrote_stays_text()
    {
        const string hostile = "</script></style><script>alert(1)</script><!-- \" ' &amp; <b onclick=x> ]]> \u0007\u202e\ud800";
        var job = ExampleSolutions.First.Job;
        job = job with
        {
            Body = job.Body with { Name = hostile, KeepOuts = [.. job.Body.KeepOuts.Select(k => k with { Name = hostile })] },
            Vehicle = job.Vehicle with { Name = hostile },
            Shop = job.Shop with
            {
                Name = hostile,
                Stock = [.. job.Shop.Stock.Select(s => s with { Material = s.Material with { Designation = hostile, Source = hostile } })],
            },
            Document = job.Document with { Title = hostile, PartNumber = hostile, Revision = hostile, Creator = hostile, Approver = hostile },
            Preferences = job.Preferences with { Materials = [] },
        };
        var page = ReportCases.Text(Designer.Solve(job));
        var document = ReportCases.Parse(page);
        var usual = ReportCases.Parse(ReportCases.Text(ExampleSolutions.First));
        Assert.Equal(2, document.Scripts.Length);
        Assert.Single(document.QuerySelectorAll("style"));
        Assert.Empty(document.QuerySelectorAll("b"));
        Assert.DoesNotContain(document.Descendants(), n => n.NodeType == NodeType.Comment);
        Assert.Equal(usual.Scripts.Last().Text, document.Scripts.Last().Text);
        Assert.Contains("</script></style><script>alert(1)</script><!-- \" ' &amp; <b onclick=x> ]]> ", document.QuerySelector("h1")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("alert(1)", document.QuerySelector(".subject")!.TextContent, StringComparison.Ordinal);
        Assert.Equal("html", XDocument.Parse(ScriptOrStyle().Replace(page, "<$1/>")).Root!.Name.LocalName);
    }

    [Fact]
    public void What_a_solution_lacks_is_left_out_and_the_rest_stands()
    {
        var by = ReportCases.All.TakeWhile(c => !c.Name.StartsWith("sample", StringComparison.Ordinal)).ToDictionary(c => c.Name, c => ReportCases.Parse(ReportCases.Text(c.Solution)));
        Assert.NotNull(by["plover-alder-58"].GetElementById("chart-volts"));
        Assert.Null(by["no sensor"].GetElementById("chart-volts"));
        Assert.NotNull(by["no sensor"].GetElementById("chart-foot"));
        Assert.Null(by["no mechanism"].GetElementById("chart-foot"));
        Assert.NotNull(by["no mechanism"].GetElementById("chart-pull"));
        Assert.Null(by["no mechanism"].GetElementById("sure"));
        string[] bracketOnly = ["solid", "flat", "offers"];
        Assert.All(bracketOnly, id => Assert.NotNull(by["plover-alder-58"].GetElementById(id)));
        Assert.All(bracketOnly, id => Assert.Null(by["no bracket"].GetElementById(id)));
        Assert.NotNull(by["no bracket"].GetElementById("sweep"));
        Assert.Contains(VerdictFacts.Remedies, by["no bracket"].GetElementById("verdict")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void The_verdict_stands_first_then_the_cautions_what_is_assumed_and_the_checks()
    {
        foreach (var (_, solution) in ReportCases.All.Take(8))
        {
            var document = ReportCases.Parse(ReportCases.Text(solution));
            string[] assumed = AssumedText.Of(solution).Count > 0 ? ["assumed"] : [];
            Assert.Equal(["verdict", "cautions", .. assumed, "checks", "sweep"], document.QuerySelectorAll("section").Take(4 + assumed.Length).Select(s => s.Id));
            Assert.Equal(AssumedText.Of(solution), document.QuerySelectorAll("#assumed li").Select(l => ReportCases.Plain(l.TextContent)));
            Assert.All(Cautions.All, c => Assert.Contains(c, ReportCases.Plain(document.GetElementById("cautions")!.TextContent), StringComparison.Ordinal));
            Assert.Equal(solution.Dangers.Count(), document.QuerySelectorAll(".warning .large").Length);
        }
    }

    [GeneratedRegex("<(script|style)[^>]*>.*?</\\1>", RegexOptions.Singleline)]
    private static partial Regex ScriptOrStyle();
}
