using System.Collections.Immutable;
using System.Globalization;

namespace BracketGen.Drawing.Sheet;

/// <summary>Running text on a sheet.</summary>
public static class Notes
{
    /// <summary>
    /// Numbered notes under a heading, wrapped to <paramref name="width"/> (mm). The block's upper left corner is the origin.
    /// </summary>
    public static SheetBlock Numbered(string heading, IReadOnlyList<string> notes, double width, double height = TextHeight.Small)
    {
        var items = ImmutableArray.CreateBuilder<SheetItem>();
        var step = TextFlow.LineSpacing * height;
        var y = -TextFlow.Ascent * height;
        if (heading.Length > 0)
        {
            items.Add(new TextItem(heading, new(0, y), height, Weight: FontWeight.Bold));
            y -= step * 1.15;
        }

        var indent = SheetFont.Of(FontWeight.Regular).Width(notes.Count.ToString(CultureInfo.InvariantCulture) + ".  ", height);
        for (var i = 0; i < notes.Count; i++)
        {
            items.Add(new TextItem((i + 1).ToString(CultureInfo.InvariantCulture) + ".", new(0, y), height));
            foreach (var line in TextFlow.Wrap(notes[i], width - indent, height))
            {
                items.Add(new TextItem(line, new(indent, y), height));
                y -= step;
            }

            y -= 0.15 * step;
        }

        return new(items.ToImmutable(), new(new(0, y + 1.15 * step - TextFlow.Descent * height), new(width, 0)));
    }

    /// <summary>A paragraph wrapped to <paramref name="width"/> (mm). The block's upper left corner is the origin.</summary>
    public static SheetBlock Paragraph(
        string text, double width, double height = TextHeight.Small, FontWeight weight = FontWeight.Regular, Ink ink = Ink.Black)
    {
        var step = TextFlow.LineSpacing * height;
        var lines = TextFlow.Wrap(text, width, height, weight);
        return new(
            [.. lines.Select((line, i) => new TextItem(line, new(0, -TextFlow.Ascent * height - i * step), height, Weight: weight, Ink: ink))],
            new(new(0, -(TextFlow.Ascent + TextFlow.Descent) * height - (lines.Length - 1) * step), new(width, 0)));
    }
}
