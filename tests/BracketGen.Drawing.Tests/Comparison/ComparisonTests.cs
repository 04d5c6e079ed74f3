using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Drawing.Dxf;
using BracketGen.Drawing.Result;
using BracketGen.Drawing.Solid;
using BracketGen.Drawing.Solid.Brep;
using BracketGen.Drawing.Solid.Step;
using BracketGen.Drawing.Tests.ShopDrawing;
using BracketGen.Profiles.Family;
using BracketGen.TestSupport;
using BracketGen.TestSupport.Comparison;
using BracketGen.Words.Report;

namespace BracketGen.Drawing.Tests.Comparison;

/// <summary>The comparison of two releases finds every number that was changed by hand, and nothing where nothing was changed.</summary>
public partial class ComparisonTests
{
    private const string Dxf = "flat-pattern.dxf", Step = "solid.step";

    private static readonly Changes Shipped = Changes.Parse(File.ReadAllText(RepositoryRoot.PathOf("tests", "BracketGen.Bench", "Same", "changes.toml")));

    // The files compared here are all written by the present release.
    private static readonly Changes Present = Shipped.WithinRelease();

    private static readonly string
        Result = Encoding.UTF8.GetString(ResultJson.Write(ExampleSolutions.First, [])),
        Cut = Encoding.ASCII.GetString(new DxfWriter().Write(FlatPatternDxf.Compose(ExampleSolutions.First.Bracket!, ExampleSolutions.First.Job, []))),
        Solid = Encoding.ASCII.GetString(StepWriter.Write(FoldedBrep.Of(ExampleSolutions.First.Bracket!.Folded), SolidInfo.Of(ExampleSolutions.First)));

    [Fact]
    public void Equal_files_are_equal()
    {
        var findings = new Findings();
        ResultComparison.Of(Result, Result, Present, findings);
        DxfComparison.Of(Dxf, Cut, Cut, Shipped, findings);
        StepComparison.Of(Step, Solid, Solid, findings);
        Assert.Empty(findings.Differences);
        Assert.Empty(findings.Added);
        Assert.Null(findings.Farthest);
        Assert.True(findings.Numbers > 1000);
    }

    [Fact]
    public void Every_number_of_a_result_that_changed_is_found()
    {
        // Strength is printed to six digits and compared to as many.
        foreach (var number in Places(JsonNumber(), Result, 23))
        {
            var findings = new Findings();
            ResultComparison.Of(Result, Changed(Result, number, 1e-3), Present, findings);
            Assert.Single(findings.Differences);
        }
    }

    [Fact]
    public void Every_coordinate_of_a_cut_file_that_changed_is_found()
    {
        foreach (var number in Places(DxfReal(), Cut, 19))
        {
            var findings = new Findings();
            DxfComparison.Of(Dxf, Cut, Changed(Cut, number, 1e-6), Shipped, findings);
            Assert.Single(findings.Differences);
        }
    }

    [Fact]
    public void Every_number_of_a_solid_that_changed_is_found()
    {
        foreach (var number in Places(StepReal(), Solid, 61))
        {
            var findings = new Findings();
            StepComparison.Of(Step, Solid, Changed(Solid, number, 1e-6), findings);
            Assert.Single(findings.Differences);
        }
    }

    [Fact]
    public void A_missing_entity_is_found()
    {
        var findings = new Findings();
        DxfComparison.Of(Dxf, Cut, CircleEntity().Replace(Cut, "", 1), Shipped, findings);
        StepComparison.Of(Step, Solid, CartesianPoint().Replace(Solid, "", 1), findings);
        Assert.Contains(findings.Differences, d => d.File == Dxf && d.Kind.Contains("CIRCLE", StringComparison.Ordinal));
        Assert.Contains(findings.Differences, d => d.File == Step && d.Kind == "CARTESIAN_POINT");
    }

    [Fact]
    public void A_reference_to_another_point_is_found()
    {
        var findings = new Findings();
        StepComparison.Of(
            Step, "#1=CARTESIAN_POINT('',(0.,0.));\n#2=CARTESIAN_POINT('',(0.,0.));\n#3=VERTEX_POINT('',#1);\n",
            "#1=CARTESIAN_POINT('',(0.,0.));\n#2=CARTESIAN_POINT('',(0.,0.));\n#3=VERTEX_POINT('',#2);\n", findings);
        Assert.Equal("VERTEX_POINT", Assert.Single(findings.Differences).Kind);
    }

    [Fact]
    public void Numbers_of_instances_and_words_do_not_count()
    {
        var findings = new Findings();
        StepComparison.Of(
            Step, "#1=CARTESIAN_POINT('it''s; one',(1.,2.));\n#2=VERTEX_POINT('',#1);\n", "#7=CARTESIAN_POINT('other',(1.,2.));\n#8=PRODUCT('new');\n#9=VERTEX_POINT('',#7);\n",
            findings);
        Assert.Equal("PRODUCT", Assert.Single(findings.Differences).Kind);
        Assert.Equal(2, findings.Numbers);
    }

    [Fact]
    public void What_moved_is_compared_where_it_is_now()
    {
        var changes = Changes.Parse("""
            [result]
            "travel.least" = "travel.range.min"
            "checks[].margin" = "checks[].spare.value"
            "checks[].passes" = "checks[].state"
            "note" = "gone"
            [lists]
            "checks" = "id"
            [texts]
            compared = ["verdict", "checks[].id"]
            [values."checks[].id"]
            sensor-least = "sensor-min"
            [values."checks[].passes"]
            true = "passes"
            false = "fails"
            [values.verdict]
            pass = ["passes", "not proven"]
            """);
        const string Before = """
            { "verdict": "pass", "note": 5, "travel": { "least": 1.5, "points": [[1, 2], [3, 4]] },
              "checks": [{ "id": "sensor-least", "title": "old words", "margin": 0.1, "passes": true }, { "id": "wrap", "margin": 2, "passes": false }] }
            """;
        const string After = """
            { "verdict": "not proven", "travel": { "range": { "min": 1.5 }, "points": [[1, 2], [3, 4]] }, "new": 7,
              "checks": [{ "id": "wrap", "spare": { "value": 2 }, "state": "fails" }, { "id": "sensor-min", "title": "new words", "spare": { "value": 0.1 }, "state": "passes" }] }
            """;
        Findings Of(string after)
        {
            var findings = new Findings();
            ResultComparison.Of(Before, after, changes, findings);
            return findings;
        }

        var same = Of(After);
        Assert.Empty(same.Differences);
        Assert.Equal(["new"], same.Added);
        Assert.Equal(["note"], same.Gone);
        Assert.Equal(7, same.Numbers);

        // One change at a time: a moved number, a state, a verdict that was not allowed, a number that is gone, one too many.
        (string From, string To, string Where)[] planted =
        [
            ("\"min\": 1.5", "\"min\": 1.6", "travel.least"),
            ("\"value\": 0.1", "\"value\": 0.2", "checks[sensor-min].margin"),
            ("\"fails\"", "\"passes\"", "checks[wrap].passes"),
            ("not proven", "unsafe", "verdict"),
            ("\"min\": 1.5", "\"min\": null", "travel.least"),
            ("\"min\": 1.5", "\"other\": 1.5", "travel.least"),
            ("[3, 4]", "[3, 4, 5]", "travel.points[1][2]"),
            ("[1, 2], ", "", "travel.points[0][0]"),
        ];
        foreach (var (from, to, where) in planted)
        {
            var found = Of(After.Replace(from, to, StringComparison.Ordinal));
            Assert.Contains(found.Differences, d => d.Where == where);
        }
    }

    [Theory]
    [InlineData(1.0, 1.0 + 5e-10, true)]
    [InlineData(0.0, 2e-9, false)]
    [InlineData(1e6, 1e6 + 5e-4, true)]
    [InlineData(1e6, 1e6 + 5e-3, false)]
    [InlineData(1.0, double.NaN, false)]
    [InlineData(double.NaN, double.NaN, true)]
    public void Numbers_are_the_same_within_the_tolerance_only(double before, double after, bool isSame)
    {
        var findings = new Findings();
        findings.Number(Dxf, "", "", before, after);
        Assert.Equal(isSame, findings.Differences.Count == 0);
    }

    [Fact]
    public void Exit_codes_may_change_as_the_table_says_only()
    {
        var changes = Changes.Parse("[exit_codes]\n0 = [0, 5]\n");
        Assert.True(changes.AllowsExit(0, 5));
        Assert.True(changes.AllowsExit(1, 1));
        Assert.False(changes.AllowsExit(0, 1));
        Assert.False(changes.AllowsExit(1, 0));
    }

    // Every so many of the numbers, the first among them.
    private static IEnumerable<Group> Places(Regex number, string text, int every)
    {
        var all = number.Matches(text).Select(m => m.Groups["number"]).ToArray();
        Assert.True(all.Length > 5 * every);
        return all.Where((_, i) => i % every == 0);
    }

    private static string Changed(string text, Group number, double by)
    {
        var value = double.Parse(number.Value, CultureInfo.InvariantCulture);
        var changed = (value + (by * Math.Max(1, Math.Abs(value)))).ToString("0.0##############", CultureInfo.InvariantCulture);
        return text[..number.Index] + changed + text[(number.Index + number.Length)..];
    }

    [GeneratedRegex(@"(?<=[:\[,]\s*)(?<number>-?[0-9]+(\.[0-9]+)?)(?=\s*[,\]}])", RegexOptions.CultureInvariant)]
    private static partial Regex JsonNumber();

    [GeneratedRegex(@"^ ([1-5][0-9])\n(?<number>-?[0-9.]+)$", RegexOptions.CultureInvariant | RegexOptions.Multiline)]
    private static partial Regex DxfReal();

    [GeneratedRegex(@"(?<=[(,])(?<number>-?[0-9]+\.[0-9]*)(?=[,)])", RegexOptions.CultureInvariant)]
    private static partial Regex StepReal();

    [GeneratedRegex(@"  0\nCIRCLE\n(?:(?!  0\n).*\n)*", RegexOptions.CultureInvariant)]
    private static partial Regex CircleEntity();

    [GeneratedRegex(@"^#[0-9]+=CARTESIAN_POINT.*\n", RegexOptions.CultureInvariant | RegexOptions.Multiline)]
    private static partial Regex CartesianPoint();
}
