using System.Globalization;
using BracketGen.Design.Checks;
using BracketGen.Design.Search;
using BracketGen.Design.Study;
using BracketGen.Drawing.Report.Html;
using BracketGen.Drawing.Report.Scene;
using BracketGen.Mechanism;

namespace BracketGen.Drawing.Report.Sections;

/// <summary>How sure the answer is, with everything measured only as well as it was.</summary>
internal static class SureSection
{
    /// <summary>Smaller parts of the spread are not worth a line.</summary>
    private const double LeastShare = 0.005;

    public static void Write(HtmlWriter html, ReportScene scene)
    {
        var mechanism = scene.Solution.Mechanism!;
        var sure = mechanism.Uncertainty!;
        var samples = sure.Run.Count;
        html.Line("p", $"Every measurement was let vary within its ±, and every dimension within what cutting, bending and bolting leave, in {samples.ToString("#,0", CultureInfo.InvariantCulture)} samples.");
        var rows = new List<IReadOnlyList<string>>
        {
            Row("can be made to close", mechanism.Closes, samples),
            Row("opens fully", sure.ReachesWideOpen, samples),
        };
        if (mechanism.AdjusterRange > 0)
        {
            rows.Add(Row("the adjuster suffices to set the free play", sure.WithinAdjuster, samples));
        }

        HtmlTable.Write(html, "Probabilities", ["requirement", "probability", "standard error"], rows, [1, 2]);
        IReadOnlyList<string> Spread(string name, OutputSpread s) =>
            [name, scene.Length(s.Nominal), $"{scene.Length(s.Quantile(0.01))} to {scene.Length(s.Quantile(0.99))}", $"{scene.Length(s.Least)} to {scene.Length(s.Most)}"];
        List<IReadOnlyList<string>> spreads = [Spread("over-travel, free play set", sure.OverTravel), Spread("free play before anyone sets it", sure.FreePlayUntouched)];
        if (mechanism.AdjusterRange > 0)
        {
            spreads.Add(Spread("adjuster off mid range", sure.AdjusterNeed));
        }

        HtmlTable.Write(html, "How far it may be off", ["quantity", "as measured", "98 of 100", "worst cases"], spreads, [1, 2, 3]);
        if (mechanism.AdjusterRange > 0)
        {
            html.Line("p", $"An adjuster of {scene.Length(sure.AdjusterRangeFor(MechanismChecks.LeastWorking))} is enough in 99 of 100 cases, one of {scene.Length(sure.AdjusterRangeFor(1))} in all; there is {scene.Length(mechanism.AdjusterRange)}.");
        }

        Ranking(html, mechanism, sure);
    }

    private static void Ranking(HtmlWriter html, MechanismReport mechanism, TravelUncertainty sure)
    {
        var (requirement, contributions) = sure.Ranking;
        html.Line("h3", "What to measure again");
        if (contributions.IsEmpty)
        {
            html.Line("p", "Nothing was given a ±.");
            return;
        }

        html.Line("p", contributions.Any(c => c.MeasuredAgain)
            ? $"First: {mechanism.MeasureAgain}. The ranking is for «{requirement}», the requirement that is nearest to failing."
            : $"No measurement: only finer work helps. The ranking is for «{requirement}», the requirement that is nearest to failing.");
        using var list = html.Open("ol", ("class", "shares"));
        foreach (var c in contributions.Where(c => c.Share >= LeastShare))
        {
            using var item = html.Open("li");
            html.Line("span", c.Name, ("class", "name"));
            html.Line("span", $"{(100 * c.Share).ToString("0", CultureInfo.InvariantCulture)} % of the spread{(c.MeasuredAgain ? "" : "; a tolerance: only finer work helps")}", ("class", "share"));
            using var bar = html.Open("svg", ("class", "bar"), ("viewBox", "0 0 100 10"), ("preserveAspectRatio", "none"), ("aria-hidden", "true"));
            html.Void("path", ("class", "track"), ("d", "M0 0H100V10H0Z"));
            html.Void("path", ("class", c.MeasuredAgain ? "share" : "tolerance"), ("d", $"M0 2H{PathData.Number(Math.Clamp(100 * c.Share, 0, 100))}V8H0Z"));
        }
    }

    private static IReadOnlyList<string> Row(string name, Probability p, int samples) =>
    [
        name,
        p.Value is > 0 and < 1 ? (Math.Floor(10_000 * p.Value) / 100).ToString("0.00", CultureInfo.InvariantCulture) + " %" : p.Value >= 1 ? "100 %" : "0 %",
        p.Value is > 0 and < 1
            ? "± " + (100 * p.StandardError).ToString("0.00", CultureInfo.InvariantCulture) + " %"
            : $"{(p.Value >= 1 ? "all" : "none")} of {samples.ToString("#,0", CultureInfo.InvariantCulture)}",
    ];
}
