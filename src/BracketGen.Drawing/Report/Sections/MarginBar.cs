using BracketGen.Design.Checks;
using BracketGen.Drawing.Report.Html;

namespace BracketGen.Drawing.Report.Sections;

/// <summary>A bar for a check's spare.</summary>
internal static class MarginBar
{
    private const double Width = 100, Height = 10, Mark = 28;

    public static void Write(HtmlWriter html, Check check)
    {
        // What was not calculated has no spare to show.
        var part = double.IsNaN(check.Spare) ? 0 : Math.Clamp(check.Spare, -1, 1);
        using var svg = html.Open("svg", ("class", "bar"), ("viewBox", "0 0 100 10"), ("preserveAspectRatio", "none"), ("aria-hidden", "true"));
        html.Void("path", ("class", "track"), ("d", $"M0 0H{PathData.Number(Width)}V{PathData.Number(Height)}H0Z"));
        var end = Mark + part * (part < 0 ? Mark : Width - Mark);
        html.Void("path", ("class", "fill"), ("d", $"M{PathData.Number(Mark)} 2H{PathData.Number(end)}V8H{PathData.Number(Mark)}Z"));
        html.Void("path", ("class", "limit"), ("d", $"M{PathData.Number(Mark)} 0V{PathData.Number(Height)}"));
    }
}
