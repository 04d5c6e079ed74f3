using BracketGen.Drawing.Report.Html;
using BracketGen.Drawing.Report.Pictures;
using BracketGen.Drawing.Report.Scene;
using BracketGen.Geometry;
using BracketGen.Words.Report;

namespace BracketGen.Drawing.Report.Sections;

/// <summary>The folded bracket: a still view for paper and pages without script, and the one to turn.</summary>
internal static class SolidSection
{
    /// <summary>The view over the corner: x to the right, y up, z towards the eye.</summary>
    public static Frame Corner { get; } = Frame.FromZX(Vector3.Zero, new(0.55, 0.45, 0.7), new(0.7, 0, -0.55));

    public static void Write(HtmlWriter html, ReportScene scene)
    {
        var mesh = scene.Mesh!;
        var view = Corner;
        var bounds = Bounds.Around(mesh.Vertices.Select(v => SolidSvg.On(view, v))).Grow(4);
        using (html.Open("figure", ("class", "still")))
        {
            var box = $"{PathData.Number(bounds.Min.X)} {PathData.Number(bounds.Min.Y)} {PathData.Number(bounds.Width)} {PathData.Number(bounds.Height)}";
            using (html.Open("svg", ("viewBox", box), ("role", "img"), ("aria-label", SolidText.StillSpoken)))
            {
                SolidSvg.Write(html, mesh, view);
            }

            html.Line("figcaption", SolidText.StillCaption);
        }

        using var live = html.Open("div", ("class", "live"), ("id", "solid-live"), ("hidden", ""));
        html.Line("p", SolidText.Help, ("id", "solid-help"));
        html.Line("canvas", "", ("id", "solid-canvas"), ("tabindex", "0"), ("role", "img"), ("aria-label", SolidText.Spoken), ("aria-describedby", "solid-help"));
        using (html.Open("div", ("class", "controls"), ("role", "group"), ("aria-label", SolidText.View)))
        {
            foreach (var (name, yaw, pitch) in SolidText.Views)
            {
                html.Line("button", name, ("type", "button"), ("data-yaw", PathData.Number(yaw)), ("data-pitch", PathData.Number(pitch)));
            }

            html.Line("button", SolidText.Nearer, ("type", "button"), ("data-zoom", "1.25"));
            html.Line("button", SolidText.Farther, ("type", "button"), ("data-zoom", "0.8"));
        }

        if (scene.Solution.Strength is not null)
        {
            using var kinds = html.Open("fieldset", ("class", "controls"));
            html.Line("legend", SolidText.Sheet);
            Paint(html, "bare", SolidText.Bare, isChosen: true);
            Paint(html, "stress", SolidText.Stress);
            Paint(html, "swing", SolidText.Vibration);
        }

        using (html.Open("div", ("class", "controls"), ("role", "group"), ("aria-label", SolidText.ShownWithIt)))
        {
            Show(html, "moving", SolidText.Moving);
            Show(html, "mount", SolidText.Mount);
            if (scene.Job.Body.Casting is not null)
            {
                Show(html, "casting", SolidText.Casting);
            }

            if (SolidText.KeepOuts(scene.Job.Body) is { Length: > 0 } keepOuts)
            {
                Show(html, "keepout", keepOuts);
            }
        }

        html.Line("p", SolidText.About(scene.Job.Body));
    }

    private static void Paint(HtmlWriter html, string what, string label, bool isChosen = false)
    {
        using var box = html.Open("label", ("class", "show"));
        html.Void("input", ("type", "radio"), ("name", "paint"), ("value", what), ("checked", isChosen ? "" : null));
        html.Text(label);
    }

    private static void Show(HtmlWriter html, string what, string label)
    {
        using var box = html.Open("label", ("class", "show"));
        html.Void("input", ("type", "checkbox"), ("data-show", what), ("checked", ""));
        html.Line("span", "", ("class", "swatch " + what), ("aria-hidden", "true"));
        html.Text(label);
    }
}
