using System.Collections.Immutable;
using BracketGen.Geometry;

namespace BracketGen.Drawing.Sheet;

/// <summary>A warning that cannot be overlooked.</summary>
public static class WarningBox
{
    /// <summary>
    /// A framed box of <paramref name="width"/> (mm): the headline in large bold type on a dark ground, the lines below it. The
    /// block's upper left corner is the origin.
    /// </summary>
    /// <param name="headline">Headline.</param>
    /// <param name="lines">Lines below it, wrapped where they are too long.</param>
    /// <param name="width">Width of the box (mm).</param>
    /// <param name="body">Height of the lines' capitals (mm).</param>
    public static SheetBlock Draw(string headline, IReadOnlyList<string> lines, double width, double body = TextHeight.Normal)
    {
        const double padding = 3.5, large = TextHeight.Huge;
        var heads = TextFlow.WrapEvenly(headline, width - 2 * padding, large, FontWeight.Bold);
        var bodies = lines.SelectMany(l => TextFlow.Wrap(l, width - 2 * padding, body)).ToArray();
        double largeStep = TextFlow.LineSpacing * large, bodyStep = TextFlow.LineSpacing * body;

        var headFoot = -2 * padding - large - (heads.Length - 1) * largeStep;
        var foot = bodies.Length == 0 ? headFoot : headFoot - 2 * padding - body - (bodies.Length - 1) * bodyStep;
        var items = ImmutableArray.CreateBuilder<SheetItem>();
        items.Add(Fill.Rectangle(new(new(0, headFoot), new(width, 0)), Ink.Warning));
        items.AddRange(heads.Select((line, i) =>
            new TextItem(line, new(padding, -padding - large - i * largeStep), large, Weight: FontWeight.Bold, Ink: Ink.White)));
        items.AddRange(bodies.Select((line, i) =>
            new TextItem(line, new(padding, headFoot - padding - body - i * bodyStep), body, Ink: Ink.Warning)));
        items.Add(Polyline.Rectangle(new(new(0, foot), new(width, 0)), LineKind.Warning));
        return new(items.ToImmutable(), new Bounds(new(0, foot), new(width, 0)).Grow(0.5));
    }
}
