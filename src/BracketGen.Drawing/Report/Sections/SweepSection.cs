using BracketGen.Drawing.Report.Html;
using BracketGen.Drawing.Report.Pictures;
using BracketGen.Drawing.Report.Scene;
using BracketGen.Words.Report;

namespace BracketGen.Drawing.Report.Sections;

/// <summary>The sweep: two still pictures, one that moves where scripts run, and the numbers of every position.</summary>
internal static class SweepSection
{
    public static void Write(HtmlWriter html, ReportScene scene)
    {
        var motion = scene.Motion;
        var picture = new SweepSvg(scene);
        SweepPosition first = motion.Positions[0], last = motion.Positions[^1];
        html.Line("p", SweepText.Intro);
        using (html.Open("div", ("class", "stills")))
        {
            Still(html, picture, first, SweepText.Released);
            Still(html, picture, last, SweepText.OnFloor);
        }

        Strip(html, scene);
        Controls(html);
        using var details = html.Open("details");
        html.Line("summary", SweepText.Numbers);
        Table(html, scene);
    }

    private static void Still(HtmlWriter html, SweepSvg picture, SweepPosition position, string caption)
    {
        using var figure = html.Open("figure");
        picture.Write(html, position, SweepText.StillSpoken(caption, position.Wire.Opening));
        html.Line("figcaption", SweepText.StillCaption(caption, position.Wire.Opening));
    }

    /// <summary>The pedal's stroke in three parts: slack, the valve's travel, what is left over.</summary>
    private static void Strip(HtmlWriter html, ReportScene scene)
    {
        var travel = scene.Solution.Travel;
        var lever = scene.Job.Vehicle.Pedal.Lever;
        double Part(double pull) => Math.Clamp(100 * lever.PadAt(Math.Clamp(pull, 0, travel.AvailablePull)) / lever.FullStroke, 0, 100);
        double moves = Part(travel.FreePlay), open = Part(travel.FreePlay + travel.PullToWideOpen);
        using var figure = html.Open("figure", ("class", "pedal"));
        using (html.Open("svg", ("viewBox", "0 0 100 6"), ("preserveAspectRatio", "none"), ("aria-hidden", "true")))
        {
            foreach (var (style, from, to) in new[] { ("slack", 0, moves), ("opens", moves, open), ("over", open, 100) })
            {
                html.Void("path", ("class", style), ("d", $"M{PathData.Number(from)} 0H{PathData.Number(to)}V6H{PathData.Number(from)}Z"));
            }
        }

        html.Line("figcaption", SweepText.Strip(travel, moves / 100, open / 100));
    }

    /// <summary>Hidden until the script takes them over.</summary>
    private static void Controls(HtmlWriter html)
    {
        using var live = html.Open("div", ("class", "live"), ("id", "sweep-live"), ("hidden", ""));
        using (html.Open("div", ("class", "controls")))
        {
            html.Line("button", SweepText.Play, ("type", "button"), ("id", "sweep-play"));
            using var label = html.Open("label", ("for", "sweep-at"));
            html.Text(SweepText.Slider);
        }

        html.Void("input", ("type", "range"), ("id", "sweep-at"), ("min", "0"), ("max", "100"), ("step", "1"), ("value", "0"));
        using var numbers = html.Open("dl", ("class", "facts numbers"), ("id", "sweep-numbers"));
        foreach (var head in SweepText.Heads)
        {
            using var one = html.Open("div");
            html.Line("dt", head);
            html.Line("dd", "-", ("class", "value"));
        }
    }

    private static void Table(HtmlWriter html, ReportScene scene)
    {
        using var frame = html.Open("div", ("class", "scroll"), ("tabindex", "0"), ("role", "region"), ("aria-label", SweepText.Table));
        using var table = html.Open("table", ("id", "sweep-table"));
        html.Line("caption", SweepText.Caption);
        using (html.Open("thead"))
        {
            using var row = html.Open("tr");
            html.Line("th", SweepText.Position, ("scope", "col"));
            foreach (var head in SweepText.Heads)
            {
                html.Line("th", head, ("scope", "col"), ("class", "n"));
            }
        }

        using var body = html.Open("tbody");
        var positions = scene.Motion.Positions;
        for (var i = 0; i < positions.Count; i++)
        {
            var position = positions[i];
            using var row = html.Open("tr", ("class", position.Name.Length == 0 && i % 6 != 1 ? "fine" : null));
            html.Line("th", position.Name.Length > 0 ? position.Name : SweepText.Between(i), ("scope", "row"));
            foreach (var text in (string[])
            [
                scene.Angle(position.Wire.Opening), scene.Part(position.Part), scene.Length(position.Pull), scene.Length(position.Wire.Straight),
                position.Wire.LiftedOff ? SweepText.LiftedOff : scene.Angle(position.Wire.Wrap), scene.Length(position.Wire.Arm),
            ])
            {
                html.Line("td", text, ("class", "n"));
            }
        }
    }
}
