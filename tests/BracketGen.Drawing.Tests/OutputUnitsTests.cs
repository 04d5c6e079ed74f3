using System.Text;
using System.Text.RegularExpressions;
using AngleSharp.Dom;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Study;
using BracketGen.Drawing.Dxf;
using BracketGen.Drawing.Dxf.Model;
using BracketGen.Drawing.Measuring;
using BracketGen.Drawing.Sheet;
using BracketGen.Drawing.Solid;
using BracketGen.Drawing.Tests.Report;
using BracketGen.Drawing.Tests.ShopDrawing;
using BracketGen.Profiles.Family;
using BracketGen.Profiles.Forms;
using BracketGen.SheetMetal.Shops;
using BracketGen.TestSupport;
using BracketGen.Units;
using BracketGen.Words.Checks;
using BracketGen.Words.CutFile;
using BracketGen.Words.Report;
using BracketGen.Words.Worksheet;
using UglyToad.PdfPig;

namespace BracketGen.Drawing.Tests;

/// <summary>An inch job is in inches throughout, and a metric one in millimetres: every file of it, but result.json and the bars of the template.</summary>
public partial class OutputUnitsTests
{
    private static readonly string[] TemplateBars = ["100 mm", "3 in"];

    [Theory]
    [InlineData(UnitSystem.Metric)]
    [InlineData(UnitSystem.Inch)]
    public void Every_file_of_an_example_is_in_the_units_of_the_job(UnitSystem units)
    {
        foreach (var (name, solution) in ExampleSolutions.All)
        {
            InUnits(name, solution with { Job = solution.Job with { Units = units } });
        }
    }

    [Theory]
    [InlineData(UnitSystem.Metric)]
    [InlineData(UnitSystem.Inch)]
    public void So_is_every_file_of_other_jobs(UnitSystem units)
    {
        foreach (var (solution, i) in RandomSolutions.Samples.Take(10).Select((s, i) => (s, i)))
        {
            InUnits($"random {i}", solution with { Job = solution.Job with { Units = units } });
        }
    }

    [Theory]
    [InlineData(UnitSystem.Metric)]
    [InlineData(UnitSystem.Inch)]
    public void So_is_the_worksheet(UnitSystem units)
    {
        var pages = Worksheet.Compose(PageFormat.A4, units);

        // A capital alone is a letter of a sketch, unless it stands behind a blank: those are looked at one by one.
        var texts = pages.SelectMany(p => p.Items).OfType<TextItem>().Select(t => t.Text).Where(t => t is not "N");
        var text = " " + string.Join(" \n ", texts) + " ";
        foreach (var blank in WorksheetSections.OfThrottleBody(units).Concat(WorksheetSections.OfVehicle(units)).Append(WorksheetSections.AfterFitting(units)).SelectMany(s => s.Blanks))
        {
            Assert.Contains(blank.Unit, units == UnitSystem.Inch ? ["", "deg", "V", "in", "lbf", "lbf in", "lb"] : (string[])["", "deg", "V", "mm", "N", "N m", "g"]);
        }

        Assert.DoesNotMatch(units == UnitSystem.Inch ? @"(?<=_|\s)(mm|N|N m|MPa)(?=\s)" : @"(?<=_|\s)(lbf|lbf in|ksi)(?=\s)", text);
        Assert.Contains(units == UnitSystem.Inch ? "lbf in" : "N m", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_foreign_unit_is_found()
    {
        Assert.Matches(Foreign(UnitSystem.Inch), "the mass is 80 g, bare");
        Assert.Matches(Foreign(UnitSystem.Inch), "12.5\u00A0N m");
        Assert.Matches(Foreign(UnitSystem.Metric), "0.118 in, steel");
        Assert.DoesNotMatch(Foreign(UnitSystem.Inch), "0.118 in, M6 x 16 - 8.8");
        Assert.DoesNotMatch(Foreign(UnitSystem.Metric), "3 mm, 12 N");
    }

    private static void InUnits(string name, Solution solution)
    {
        var units = solution.Job.Units;
        var path = FlatPatternDxf.PathFor(solution);
        var files = JobFiles.Of(solution, [.. solution.Dangers.Select(d => d.Code)], new(DxfVersion.R2000, null, path is { Contours: not null } ? path : null));
        List<(string What, string Text)> texts =
        [
            .. files.Written.Where(f => f.Name.EndsWith(".pdf", StringComparison.Ordinal)).Select(f => (f.Name, TextOf(f.Bytes))),
            .. files.Written.Where(f => f.Name.EndsWith(".dxf", StringComparison.Ordinal)).Select(f => (f.Name, CommentsOf(f.Bytes))),
            .. files.Written.Where(f => f.Name.EndsWith(".html", StringComparison.Ordinal)).Select(f => (f.Name, PageOf(Encoding.UTF8.GetString(f.Bytes)))),
            ("kerf note", string.Join(' ', KerfText.OnDrawing(solution.Job.Shop.Kerf, units))),
        ];
        if (solution.Bracket is not null)
        {
            var info = SolidInfo.Of(solution);
            texts.Add(("solid", string.Join(' ', info.Warnings.Append(info.Sheet))));
        }

        // A source is quoted as the profile gives it, and an inch screw has its length in inches wherever it is ordered.
        foreach (var (what, said) in texts)
        {
            var text = solution.Job.Shop.Stock.Select(s => s.Material.Source).Distinct().Aggregate(ReportCases.Plain(said), (t, source) => t.Replace(source, "", StringComparison.Ordinal));
            text = InchScrew().Replace(text, "$1");
            var found = Foreign(units).Match(text);
            Assert.False(found.Success, found.Success ? $"{name}, {what}: \"{text[Math.Max(0, found.Index - 60)..Math.Min(text.Length, found.Index + 40)]}\"" : "");
        }
    }

    private static Regex Foreign(UnitSystem units) => units == UnitSystem.Inch ? NotInInches() : NotInMetric();

    private static string TextOf(byte[] pdf)
    {
        using var document = PdfDocument.Open(pdf);
        return string.Join('\n', document.GetPages().SelectMany(p =>
        {
            // Text by text as it was written: words side by side on the paper may be parts of different ones.
            var texts = p.Letters.GroupBy(l => l.TextSequence).OrderBy(g => g.Key).Select(g => string.Concat(g.Select(l => l.Value))).ToList();
            return texts.Exists(t => t.Contains("template 1:1", StringComparison.Ordinal)) ? texts.Except(TemplateBars) : texts;
        }));
    }

    // Group code 999 is a comment (DXF Reference).
    private static string CommentsOf(byte[] dxf)
    {
        var lines = Encoding.ASCII.GetString(dxf).Split('\n').Select(l => l.Trim()).ToArray();
        return string.Join('\n', lines.Zip(lines.Skip(1)).Where((pair, i) => i % 2 == 0 && pair.First == "999").Select(pair => pair.Second));
    }

    private static string PageOf(string html)
    {
        var document = ReportCases.Parse(html);
        foreach (var hidden in document.QuerySelectorAll("script, style"))
        {
            hidden.Remove();
        }

        var spoken = document.All.Select(e => e.GetAttribute("aria-label")).OfType<string>();
        var leaves = document.All.SelectMany(e => e.ChildNodes.OfType<IText>()).Select(t => t.Text);
        return string.Join('\n', leaves.Concat(spoken));
    }

    // A unit after a number, with a blank between them or none.
    [GeneratedRegex(@"\d[ \u00A0]?(mm²?|N|N m|N mm|kN|MPa|GPa|g|kg)(?![\w/])")]
    private static partial Regex NotInInches();

    [GeneratedRegex(@"\d[ \u00A0]?(in²?|lbf|lbf in|ksi|psi|lb)(?![\w/])")]
    private static partial Regex NotInMetric();

    [GeneratedRegex(@"(UN[CF]) x\s+(\d+-)?\d+(/\d+)? in")]
    private static partial Regex InchScrew();
}
