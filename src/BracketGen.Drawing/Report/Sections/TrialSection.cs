using BracketGen.Design.Study;
using BracketGen.Drawing.Report.Html;
using BracketGen.Words.Checks;
using BracketGen.Words.Report;
using BracketGen.Words.Terminal;

namespace BracketGen.Drawing.Report.Sections;

/// <summary>What the command tells of a bracket that is there already: how it goes on, what corrects it, what was assumed.</summary>
internal static class TrialSection
{
    public static void Write(HtmlWriter html, TriedBracket tried)
    {
        var (bracket, trial, _) = tried;
        html.Line("p", TrialText.Heading(bracket, trial.Job), ("class", "tried"));
        if (trial.Solution is { } solution)
        {
            html.Line("p", TerminalWords.Verdict(VerdictText.Of(solution.Verdict, TrialText.Question)));
        }

        foreach (var line in TrialText.Fitted(trial, bracket.Drawn is not null))
        {
            html.Line("p", line, ("class", trial.Solution is null ? "problem" : null));
        }

        if (TrialText.Adjuster(trial) is { } adjuster)
        {
            html.Line("p", adjuster);
        }

        Correction(html, tried);
        html.Line("h3", TrialHeadings.Assumed);
        List(html, TrialText.Assumed(bracket, trial.Job));
    }

    private static void Correction(HtmlWriter html, TriedBracket tried)
    {
        if (tried.Trial.NothingFails)
        {
            return;
        }

        html.Line("h3", TrialHeadings.Correct);
        if (TrialText.Correction(tried) is not { } correction)
        {
            html.Line("p", TrialHeadings.NotLooked);
            return;
        }

        html.Line("p", correction.Before);
        if (correction.Remedies.Count > 0)
        {
            List(html, correction.Remedies);
        }

        if (correction.After is { } after)
        {
            html.Line("p", after);
        }
    }

    private static void List(HtmlWriter html, IEnumerable<string> lines)
    {
        using var list = html.Open("ul");
        foreach (var line in lines)
        {
            html.Line("li", line);
        }
    }
}
