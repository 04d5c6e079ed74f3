using BracketGen.Design.Checks;
using BracketGen.Drawing.Report.Html;
using BracketGen.Drawing.Report.Scene;
using BracketGen.Words.Checks;
using BracketGen.Words.Report;

namespace BracketGen.Drawing.Report.Sections;

/// <summary>Every check with value, limit, margin and a bar of the margin, by what a failure would mean: first what does not pass or is near its limit, the others folded.</summary>
internal static class ChecksSection
{
    /// <summary>Anchor of a check.</summary>
    public static string Anchor(Check check) => "check-" + check.Code;

    public static void Write(HtmlWriter html, ReportScene scene)
    {
        html.Line("p", ChecksText.HowToRead);
        foreach (var group in scene.Solution.Checks.GroupBy(c => c.Kind).OrderBy(g => g.Key))
        {
            var (failed, notKnown) = (group.Count(c => c.Fails), group.Count(c => c.State == CheckState.NotKnown));
            html.Line("h3", ChecksText.Heading(group.Key, failed, notKnown, group.Count()));
            html.Line("p", ChecksText.Meaning(group.Key), ("class", "meaning"));
            var first = group.Where(c => !c.Passes || IsNear(c)).ToArray();
            if (first.Length > 0)
            {
                Table(html, scene, group.Key, first);
            }

            var others = group.Except(first).ToArray();
            if (others.Length > 0)
            {
                using var folded = html.Open("details", ("class", "passes"), ("id", "passes-" + group.Key.ToString().ToLowerInvariant()));
                html.Line("summary", ChecksText.Others(others.Length, first.Length));
                Table(html, scene, group.Key, others);
            }
        }
    }

    // What says yes or no, or counts, sits on its limit when it passes and is not near anything.
    private static bool IsNear(Check check) => check.Margin > 0 && check.Spare < ChecksText.NearSpare;

    // On a narrow screen the rows are laid out as cards, which takes their meaning from the elements: the roles give it back.
    private static void Table(HtmlWriter html, ReportScene scene, CheckKind kind, IReadOnlyList<Check> checks)
    {
        using var table = html.Open("table", ("class", "checks"), ("role", "table"));
        html.Line("caption", ChecksText.Caption(kind), ("class", "unseen"));
        using (html.Open("thead", ("role", "rowgroup")))
        {
            using var row = html.Open("tr", ("role", "row"));
            using (html.Open("th", ("scope", "col"), ("role", "columnheader")))
            {
                html.Line("span", ChecksText.Result, ("class", "unseen"));
            }

            for (var i = 0; i < ChecksText.Heads.Count; i++)
            {
                html.Line("th", ChecksText.Heads[i], ("scope", "col"), ("role", "columnheader"), ("class", i == 0 ? null : "n"));
            }
        }

        using var body = html.Open("tbody", ("role", "rowgroup"));
        foreach (var check in checks)
        {
            Row(html, scene, check);
        }
    }

    private static void Row(HtmlWriter html, ReportScene scene, Check check)
    {
        var state = check.Passes ? "ok" : check.Kind == CheckKind.Advice || !check.Fails ? "advice" : "fail";
        using var row = html.Open("tr", ("role", "row"), ("id", Anchor(check)), ("class", state));
        using (html.Open("td", ("role", "cell"), ("class", "mark")))
        {
            html.Line("span", CheckText.Mark(check));
        }

        using (html.Open("th", ("scope", "row"), ("role", "rowheader")))
        {
            using var details = html.Open("details", ("open", check.Passes ? null : ""));
            using (html.Open("summary"))
            {
                html.Text(check.Title() + " ");
                html.Line("code", check.Code);
            }

            html.Line("p", ChecksText.IfItFails(check));
            html.Line("p", ChecksText.Source(check), ("class", "source"));
        }

        html.Line("td", CheckText.Value(check, scene.Units), ("role", "cell"), ("class", "n"), ("data-head", ChecksText.Heads[1]));
        html.Line("td", CheckText.Limit(check, scene.Units), ("role", "cell"), ("class", "n"), ("data-head", ChecksText.Heads[2]));
        using var margin = html.Open("td", ("role", "cell"), ("class", "n margin"), ("data-head", ChecksText.Heads[3]));
        html.Line("span", CheckText.Margin(check, scene.Units));
        MarginBar.Write(html, check);
    }
}
