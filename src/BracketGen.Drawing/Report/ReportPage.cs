using BracketGen.Drawing.Report.Html;
using BracketGen.Drawing.Report.Scene;
using BracketGen.Drawing.Report.Sections;
using BracketGen.Words.Report;
using BracketGen.Words.Results;

namespace BracketGen.Drawing.Report;

/// <summary>The whole page: head, sections in their order, footer, script.</summary>
internal static class ReportPage
{
    /// <summary>The sections in the order of the page. A new one needs its line here and a file in Sections.</summary>
    public static readonly ReportSection[] All =
    [
        new("verdict", PageText.Verdict, VerdictSection.Write),
        new("trial", TrialHeadings.Section, (html, scene) => TrialSection.Write(html, scene.Tried!), s => s.Tried is not null),
        new("cautions", PageText.Cautions, CautionSection.Write),
        new("assumed", PageText.Assumed, AssumedSection.Write, AssumedSection.Has),
        new("checks", PageText.Checks, ChecksSection.Write),
        new("sweep", PageText.Sweep, SweepSection.Write),
        new("solid", PageText.Solid, SolidSection.Write, s => s.Solution.Bracket is not null),
        new("charts", PageText.Charts, ChartsSection.Write),
        new("failures", PageText.Failures, FailureSection.Write, s => s.Solution.Mechanism?.Return is not null),
        new("cables", PageText.Cables, CablesSection.Write, s => OtherCableText.Has(s.Job)),
        new("sure", PageText.Sure, SureSection.Write, s => s.Solution.Mechanism?.Uncertainty is not null),

        new("strength", PageText.Strength, StrengthSection.Write, s => s.Solution.Bracket is not null),
        new("offers", PageText.Offers, OffersSection.Write, s => !s.Solution.Offers.IsEmpty),
        new("flat", PageText.Flat, FlatSection.Write, s => s.Solution.Bracket is not null),
        new("inputs", PageText.Inputs, InputsSection.Write),
    ];

    public static string Compose(ReportScene scene)
    {
        var sections = All.Where(s => s.Has?.Invoke(scene) ?? true).ToList();
        var html = new HtmlWriter();
        html.Markup("<!DOCTYPE html>\n");
        using (html.Open("html", ("lang", "en"), ("xmlns", "http://www.w3.org/1999/xhtml")))
        {
            PageHead.Write(html, scene.Tried is { } tried ? TrialHeadings.Title(tried.Bracket) : PageText.WindowTitle(scene.Job));
            using (html.Open("body"))
            {
                html.Line("a", PageText.SkipToVerdict, ("class", "skip"), ("href", "#verdict"));
                PageHeader.Write(html, scene, sections);
                using (html.Open("main"))
                {
                    foreach (var section in sections)
                    {
                        var heading = section.Id + "-heading";
                        using var element = html.Open("section", ("id", section.Id), ("aria-labelledby", heading));
                        html.Line("h2", section.Heading, ("id", heading));
                        section.Write(html, scene);
                    }
                }

                PageFooter.Write(html, scene);
                html.Markup($"<script type=\"application/json\" id=\"data\">{PageData.Json(scene)}</script>\n");
                html.Markup($"<script>{PageFiles.Script}</script>\n");
            }
        }

        return html.ToString();
    }
}
