using BracketGen.Design.Checks;
using BracketGen.Design.Study;
using BracketGen.Drawing.Fitted;
using BracketGen.Drawing.Report.Html;
using BracketGen.Drawing.Report.Pictures;
using BracketGen.Drawing.Report.Scene;
using BracketGen.Words;
using BracketGen.Words.Checks;
using BracketGen.Words.Report;
using BracketGen.Words.Results;

namespace BracketGen.Drawing.Report.Sections;

/// <summary>The answer in plain words: pass or fail, what a failure means, what would correct it, and the main numbers.</summary>
internal static class VerdictSection
{
    public static void Write(HtmlWriter html, ReportScene scene)
    {
        using (html.Open("div", ("class", "answer")))
        {
            Answer(html, scene);
            Fitted(html, scene);
        }

        Rest(html, scene);
    }

    /// <summary>The same without the bracket in its place, for a page that shows that beside it.</summary>
    public static void WithoutPicture(HtmlWriter html, ReportScene scene)
    {
        using (html.Open("div", ("class", "answer")))
        {
            Answer(html, scene);
        }

        Rest(html, scene);
    }

    private static void Rest(HtmlWriter html, ReportScene scene)
    {
        var solution = scene.Solution;

        if (VerdictText.ToProve(solution.Verdict) is { Count: > 0 } open)
        {
            html.Line("h3", VerdictFacts.ToProve);
            List(html, open);
        }

        Failures(html, scene);
        Remedies(html, scene);
        if (solution.Diagnosis is { } diagnosis)
        {
            Diagnosed(html, scene, diagnosis);
        }

        html.Line("h3", VerdictFacts.AtAGlance);
        HtmlTable.Facts(html, VerdictFacts.Of(scene.Solution));
    }

    private static void Answer(HtmlWriter html, ReportScene scene)
    {
        var solution = scene.Solution;
        using var answer = html.Open("div", ("class", "verdict " + Style(solution.Verdict.Kind)));
        html.Line("p", Word(solution), ("class", "word"));
        html.Line("p", VerdictText.Of(solution.Verdict));
        if (ChosenText.Of(solution) is { } chosen)
        {
            html.Line("p", chosen);
        }

        html.Line("p", TravelText.Summary(scene.Job, solution.Travel));
    }

    /// <summary>The bracket in its place; nothing where there is none.</summary>
    public static void Fitted(HtmlWriter html, ReportScene scene)
    {
        if (scene.Solution.Bracket is not null)
        {
            using var figure = html.Open("figure", ("class", "fitted"));
            FittedSvg.Write(html, scene);
            html.Line("figcaption", FittedPicture.Of(scene.Solution).Caption);
        }
    }

    /// <summary>The verdict in a word or two.</summary>
    public static string Word(Solution solution) => Phrases.Capital(VerdictText.Name(solution.Verdict.Kind));

    private static string Style(VerdictKind kind) => kind switch
    {
        VerdictKind.Unsafe => "danger",
        VerdictKind.Fails => "fail",
        VerdictKind.NotProven => "open",
        _ => "pass",
    };

    private static void Failures(HtmlWriter html, ReportScene scene)
    {
        var failed = scene.Solution.Checks.Where(c => !c.Passes).OrderBy(c => c.Kind).ToList();
        if (failed.Count == 0)
        {
            return;
        }

        html.Line("h3", VerdictFacts.Failures(failed.All(c => c.Kind == CheckKind.Advice)));
        using var list = html.Open("ul", ("class", "failures"));
        foreach (var check in failed)
        {
            using var item = html.Open("li", ("class", check.Kind == CheckKind.Advice || !check.Fails ? "advice" : check.IsDanger ? "danger" : "fail"));
            using (html.Open("p"))
            {
                html.Line("strong", CheckText.Mark(check));
                html.Text(" ");
                html.Line("a", check.Title(), ("href", "#" + ChecksSection.Anchor(check)));
                html.Text($": {CheckText.Value(check, scene.Units)}, {CheckText.Limit(check, scene.Units)}.");
            }

            // What is to be measured or calculated stands above, once for all checks that wait for it.
            if (!VerdictText.ToProve(scene.Solution.Verdict).Contains(check.Consequence()))
            {
                html.Line("p", check.Consequence());
            }
        }
    }

    private static void Remedies(HtmlWriter html, ReportScene scene)
    {
        if (TravelText.PedalStop(scene.Job, scene.Solution.Travel) is { } stop)
        {
            html.Line("p", stop);
        }
    }

    private static void Diagnosed(HtmlWriter html, ReportScene scene, Diagnosis diagnosis)
    {
        if (!diagnosis.Obstacles.IsEmpty)
        {
            html.Line("h3", VerdictFacts.Causes);
            if (DiagnosisText.Searched(scene.Solution) is { } searched)
            {
                html.Line("p", searched);
            }

            List(html, diagnosis.Obstacles.Select(o => DiagnosisText.Obstacle(o, scene.Units)));
        }

        html.Line("h3", VerdictFacts.Remedies);
        if (diagnosis.Ways.IsEmpty)
        {
            html.Line("p", DiagnosisText.NoneFound(diagnosis));
            return;
        }

        html.Line("p", DiagnosisText.AnyOne);
        List(html, diagnosis.Ways.Select(w => DiagnosisText.Way(w, scene.Units)));
    }

    private static void List(HtmlWriter html, IEnumerable<string> items)
    {
        using var list = html.Open("ul");
        foreach (var item in items)
        {
            html.Line("li", item);
        }
    }
}
