using BracketGen.Design.Checks;
using BracketGen.Design.Study;
using BracketGen.Drawing.Report.Html;
using BracketGen.Units;
using BracketGen.Words.Checks;

namespace BracketGen.Drawing.Report.Sections;

/// <summary>Every check with value, limit, margin and a bar of the margin, by what a failure would mean.</summary>
internal static class ChecksSection
{
    /// <summary>Anchor of a check.</summary>
    public static string Anchor(Check check) => "check-" + check.Code;

    public static void Write(HtmlWriter html, ReportScene scene)
    {
        html.Line("p", "The bar shows the margin as a part of the limit: to the right of the mark there is some to spare, a full bar is as much again as the limit itself; to the left it has failed. Each title opens to say what a failure means, and where the limit comes from.");
        foreach (var group in scene.Solution.Checks.GroupBy(c => c.Kind).OrderBy(g => g.Key))
        {
            var failed = group.Count(c => !c.Passes);
            html.Line("h3", $"{Heading(group.Key)}: {(failed == 0 ? $"all {group.Count()} pass" : $"{failed} of {group.Count()} {(group.Key == CheckKind.Advice ? "to do" : "failed")}")}");
            html.Line("p", Meaning(group.Key), ("class", "meaning"));
            Table(html, scene, group);
        }
    }

    // On a narrow screen the rows are laid out as cards, which takes their meaning from the elements: the roles give it back.
    private static void Table(HtmlWriter html, ReportScene scene, IGrouping<CheckKind, Check> checks)
    {
        using var table = html.Open("table", ("class", "checks"), ("role", "table"));
        html.Line("caption", $"Checks of {CheckText.Kind(checks.Key)}", ("class", "unseen"));
        using (html.Open("thead", ("role", "rowgroup")))
        {
            using var row = html.Open("tr", ("role", "row"));
            foreach (var head in (string[])["", "check", "value", "limit", "margin"])
            {
                if (head.Length == 0)
                {
                    using var mark = html.Open("th", ("scope", "col"), ("role", "columnheader"));
                    html.Line("span", "result", ("class", "unseen"));
                }
                else
                {
                    html.Line("th", head, ("scope", "col"), ("role", "columnheader"), ("class", head == "check" ? null : "n"));
                }
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
        var state = check.Passes ? "ok" : check.Kind == CheckKind.Advice ? "advice" : "fail";
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

            html.Line("p", $"If it fails: {check.Consequence()}");
            html.Line("p", $"Limit from: {check.Source()}.", ("class", "source"));
        }

        html.Line("td", CheckText.Value(check, scene.Units), ("role", "cell"), ("class", "n"), ("data-head", "value"));
        html.Line("td", CheckText.Limit(check, scene.Units), ("role", "cell"), ("class", "n"), ("data-head", "limit"));
        using var margin = html.Open("td", ("role", "cell"), ("class", "n margin"), ("data-head", "margin"));
        html.Line("span", CheckText.Margin(check, scene.Units));
        MarginBar.Write(html, check);
    }

    private static string Heading(CheckKind kind) => kind switch
    {
        CheckKind.Safety => "Safety",
        CheckKind.Function => "Function",
        CheckKind.Making => "Making",
        _ => "Advice",
    };

    private static string Meaning(CheckKind kind) => kind switch
    {
        CheckKind.Safety => "Where one of these fails somebody can be hurt; the cut file is withheld.",
        CheckKind.Function => "Where one of these fails it will not work as wanted.",
        CheckKind.Making => "Where one of these fails it cannot be made, or not well.",
        _ => "Where one of these fails it works, with something more to be done.",
    };
}
