using BracketGen.Drawing.Sheet;
using BracketGen.Geometry;
using BracketGen.Words.SetupSheet;

namespace BracketGen.Drawing.Setup;

/// <summary>The rows with boxes to tick, and the blanks for the readings.</summary>
internal static class SetupBoxes
{
    /// <summary>One check with its two boxes, no wider than a width (mm).</summary>
    public static SheetBlock Row(int number, string text, double width)
    {
        const double box = 4.2, column = 19, padding = 1.6, indent = 8, height = TextHeight.Small;
        var lines = TextFlow.Wrap(text, width - 2 * column - indent - padding, height);
        var step = TextFlow.LineSpacing * height;
        var tall = Math.Max(box, (TextFlow.Ascent + TextFlow.Descent) * height + (lines.Length - 1) * step) + 2 * padding;
        var first = -padding - TextFlow.Ascent * height;
        List<SheetItem> items =
        [
            Polyline.Rectangle(new(new(0, -tall), new(width, 0)), LineKind.Rule),
            new TextItem($"{number}.", new(padding, first), height),
            .. lines.Select((line, i) => new TextItem(line, new(indent, first - i * step), height)),
        ];
        foreach (var (label, i) in SetupChecks.Boxes.Select((l, i) => (l, i)))
        {
            var x = width - (SetupChecks.Boxes.Count - i) * column + 2;
            items.Add(Polyline.Rectangle(new(new(x, -padding - box), new(x + box, -padding)), LineKind.Box));
            items.Add(new TextItem(label, new(x + box + 1.6, first), height));
        }

        return new([.. items], new(new(0, -tall), new(width, 0)));
    }

    /// <summary>Blanks for what was read, and who answers for it.</summary>
    public static SheetBlock Readings(double width)
    {
        const double row = 8.5, height = TextHeight.Small;
        (double From, double To)[][] places = [[(0, 0.36), (0.38, 0.7), (0.72, 1)], [(0, 0.49), (0.51, 1)], [(0, 0.6), (0.62, 1)]];
        List<SheetItem> items = [];
        for (var i = 0; i < places.Length; i++)
        {
            var y = -(i + 1) * row + 1.5;
            foreach (var (label, (from, to)) in SetupChecks.Readings[i].Zip(places[i]))
            {
                var text = new TextItem(label, new(from * width, y), height);
                items.Add(text);
                items.Add(new Stroke(new Vector2(from * width + text.Width + 1.5, y - 0.9), new(to * width, y - 0.9), LineKind.Rule));
            }
        }

        return new([.. items], new(new(0, -places.Length * row), new(width, 0)));
    }
}
