using System.Text;
using AngleSharp.Html.Dom;
using AngleSharp.Html.Parser;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Search;
using BracketGen.Design.Study;
using BracketGen.Drawing.Report;
using BracketGen.Drawing.Tests.ShopDrawing;
using BracketGen.Mechanism.Cables;
using BracketGen.TestSupport;

namespace BracketGen.Drawing.Tests.Report;

/// <summary>Solutions that a report is written of, from those that carry everything to those that carry next to nothing.</summary>
internal static class ReportCases
{
    private static readonly Lazy<IReadOnlyList<(string Name, Solution Solution)>> Made = new(() =>
    [
        .. ExampleSolutions.All,
        ("no sensor", Designer.Solve(ExampleSolutions.First.Job with { Body = ExampleSolutions.First.Job.Body with { Sensor = null } })),
        ("no mechanism", ExampleSolutions.First with { Mechanism = null }),
        ("no bracket", NoBracket()),
        ("one spring", OneSpring()),
        .. RandomSolutions.Samples.Take(LongRun.Of(24)).Select((s, i) => ($"sample {i}", s)),
        .. RandomJobs.Job.Draw(LongRun.Of(8)).Select((job, i) => ($"random job {i}", Designer.Solve(job))),
    ]);

    /// <summary>All of them, made once.</summary>
    public static IReadOnlyList<(string Name, Solution Solution)> All => Made.Value;

    private static readonly Lazy<IReadOnlyList<(string Name, Solution Solution, string Page, IHtmlDocument Document)>> Parsed =
        new(() => [.. All.Select(c => (c.Name, c.Solution, Text(c.Solution))).Select(c => (c.Name, c.Solution, c.Item3, Parse(c.Item3)))]);

    /// <summary>The page as text.</summary>
    public static string Text(Solution solution) => Encoding.UTF8.GetString(JobReport.Write(solution, []));

    /// <summary>The page as a browser understands it; a mistake in the markup is an error.</summary>
    public static IHtmlDocument Parse(string page)
    {
        try
        {
            return new HtmlParser(new HtmlParserOptions { IsStrictMode = true }).ParseDocument(page);
        }
        catch (HtmlParseException mistake)
        {
            var at = mistake.Position.Position;
            throw new InvalidOperationException($"Mistake {mistake.Code} in the markup: {page[Math.Max(0, at - 160)..Math.Min(page.Length, at + 40)]}", mistake);
        }
    }

    /// <summary>Text with plain spaces.</summary>
    public static string Plain(string text) => text.Replace('\u00a0', ' ').Trim();

    /// <summary>Runs <paramref name="check"/>, which must change nothing, on every page; a failure names its case.</summary>
    public static void Each(Action<Solution, string, IHtmlDocument> check)
    {
        foreach (var (name, solution, page, document) in Parsed.Value)
        {
            try
            {
                check(solution, page, document);
            }
            catch (Exception e)
            {
                throw new InvalidOperationException($"{name}: {e.Message}", e);
            }
        }
    }

    private static Solution NoBracket()
    {
        var job = ExampleSolutions.First.Job;
        var cable = job.Vehicle.Cable with { FreeInnerLength = 30 };
        var solution = Designer.Solve(job with { Vehicle = job.Vehicle with { Cable = cable } });
        Assert.Null(solution.Bracket);
        return solution with { Diagnosis = Diagnosis.Of(solution, SearchEffort.WithoutStrength) };
    }

    private static Solution OneSpring()
    {
        var job = ExampleSolutions.First.Job;
        var solution = Designer.Solve(job with { Body = job.Body with { Springs = job.Body.Springs with { Count = 1 } } });
        Assert.NotEmpty(solution.Dangers);
        return solution;
    }
}
