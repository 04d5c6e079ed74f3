using BracketGen.Design.Checks;
using BracketGen.Drawing.Report.Html;
using BracketGen.Geometry;
using BracketGen.Units;

namespace BracketGen.Drawing.Report.Sections;

/// <summary>A bar for a check's margin.</summary>
internal static class MarginBar
{
    private const double Width = 100, Height = 10, Mark = 28;

    /// <summary>The margin as part of the limit; of a least part of a whole, as part of what is left up to the whole.</summary>
    /// <remarks>Where the limit is less than a millimetre, 5° or one, as part of those: near nothing there is nothing to divide by.</remarks>
    public static double Part(Check check) => check.Margin / check switch
    {
        { Unit: Quantity.Fraction, Bound: Bound.AtLeast, Limit: < 1 } => 1 - check.Limit,
        { Unit: Quantity.Angle } => Math.Max(Math.Abs(check.Limit), Angle.FromDegrees(5).Radians),
        _ => Math.Max(Math.Abs(check.Limit), 1),
    };

    public static void Write(HtmlWriter html, Check check)
    {
        // A value that is not a number fails, and has no margin to show: the whole failing side.
        var part = Math.Clamp(Part(check) is var p && double.IsNaN(p) ? -1 : p, -1, 1);
        using var svg = html.Open("svg", ("class", "bar"), ("viewBox", "0 0 100 10"), ("preserveAspectRatio", "none"), ("aria-hidden", "true"));
        html.Void("path", ("class", "track"), ("d", $"M0 0H{PathData.Number(Width)}V{PathData.Number(Height)}H0Z"));
        var end = Mark + part * (part < 0 ? Mark : Width - Mark);
        html.Void("path", ("class", "fill"), ("d", $"M{PathData.Number(Mark)} 2H{PathData.Number(end)}V8H{PathData.Number(Mark)}Z"));
        html.Void("path", ("class", "limit"), ("d", $"M{PathData.Number(Mark)} 0V{PathData.Number(Height)}"));
    }
}
