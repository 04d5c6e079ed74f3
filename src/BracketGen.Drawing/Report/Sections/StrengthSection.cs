using BracketGen.Design.Checks;
using BracketGen.Design.Part;
using BracketGen.Design.Study;
using BracketGen.Drawing.Dxf.Format;
using BracketGen.Drawing.Report.Html;
using BracketGen.Drawing.Report.Pictures;
using BracketGen.Drawing.Sheet;
using BracketGen.Drawing.ShopDrawing;
using BracketGen.Drawing.Text;
using BracketGen.SheetMetal;
using BracketGen.Units;
using BracketGen.Words.Checks;

namespace BracketGen.Drawing.Report.Sections;

/// <summary>Whether the bracket bends, shakes or cracks: loads, factors, frequencies, and where it is stressed.</summary>
internal static class StrengthSection
{
    public static void Write(HtmlWriter html, ReportScene scene)
    {
        if (scene.Solution.Strength is not { } report)
        {
            html.Line("p", "Strength was NOT calculated: whether the bracket bends, shakes or cracks is not known.");
            return;
        }

        var units = scene.Units;
        HtmlTable.Facts(html, Facts(scene, report));
        HtmlTable.Write(
            html, $"Loads at the stop, lengths in {scene.Value.UnitName}", StrengthText.LoadHeads(units), StrengthText.Loads(scene.Solution, report, scene.Value), [1, 2, 3]);
        using (html.Open("div", ("class", "stressed")))
        {
            Stress(html, scene, report);
            Vibration(html, scene, report);
        }

        using var notes = html.Open("ul", ("class", "notes"));
        foreach (var note in StrengthText.Notes(report, units))
        {
            html.Line("li", note);
        }
    }

    /// <summary>The largest stress of both sides at each node, in the job's unit.</summary>
    public static IReadOnlyList<double> StressesOf(ReportScene scene, StrengthReport report) =>
        [.. report.Stamped.Response.Solution.Stresses.Select(s => StrengthText.InUnit(s.Largest, scene.Units))];

    private static IEnumerable<Fact> Facts(ReportScene scene, StrengthReport report)
    {
        foreach (var check in report.Checks)
        {
            yield return new(check.Title(), CheckText.Value(check, scene.Units), $"{CheckText.Limit(check, scene.Units)}{(check.Passes ? "" : ": FAILED")}");
        }
    }

    private static void Stress(HtmlWriter html, ReportScene scene, StrengthReport report)
    {
        var values = StressesOf(scene, report);
        var colours = ValueScale.UpTo(values.Max());
        var unit = StrengthText.StressUnit(scene.Units);
        using var figure = html.Open("figure");
        html.Line("h3", "Stress with the pedal stamped on");
        new FlatValuesSvg(scene, report).Write(
            html, values, colours, $"Stress on the flat pattern, at most {StrengthText.Stress(report.Stamped.LargestStress, scene.Units)} {unit} in the place marked with a ring.", report.Stamped.At);
        FlatValuesSvg.Scale(html, colours, unit);
        html.Line("figcaption", $"On the flat pattern; the ring is where it is largest. The sheet yields at {StrengthText.Stress(scene.Solution.Bracket!.Stock.Material.Yield, scene.Units)} {unit}.");
    }

    private static void Vibration(HtmlWriter html, ReportScene scene, StrengthReport report)
    {
        if (report.Modes.IsEmpty)
        {
            return;
        }

        double[] values = [.. report.Modes[0].Shape.Select(s => s.Length)];
        var most = values.Max();
        var colours = new ValueScale(1);
        using var figure = html.Open("figure");
        html.Line("h3", $"First vibration, {StrengthText.Frequency(report.Frequencies[0])} Hz");
        new FlatValuesSvg(scene, report).Write(
            html, [.. values.Select(v => v / most)], colours, "How far each place of the flat pattern moves in the first natural vibration, as part of the most.", null);
        FlatValuesSvg.Scale(html, colours, "");
        html.Line("figcaption", "How far each place swings, as part of the most; what it is in mm depends on what shakes it.");
    }
}
