using System.Collections.Immutable;
using BracketGen.Drawing.Sheet;
using BracketGen.Units;
using BracketGen.Words.Worksheet;

namespace BracketGen.Drawing.Measuring;

/// <summary>The measuring worksheet: what to measure on vehicle and throttle body, from where, with what, and blanks to fill in.</summary>
/// <remarks>The same format gives the same pages.</remarks>
public static class Worksheet
{
    private const double Margin = 4, SketchWidth = 78, Between = 4, BlankRow = 6.6;

    /// <summary>The pages.</summary>
    /// <param name="format">Sheet, upright.</param>
    /// <param name="units">Unit of the lengths to write down.</param>
    public static ImmutableArray<SheetPage> Compose(PageFormat format, UnitSystem units)
    {
        var (body, vehicle) = (WorksheetSections.OfThrottleBody(units), WorksheetSections.OfVehicle(units));
        return
        [
            .. Pages(format, WorksheetText.ThrottleBodyTitle, WorksheetText.ThrottleBody, WorksheetText.Measuring, body),
            .. Pages(format, WorksheetText.VehicleTitle, WorksheetText.Vehicle, WorksheetText.Measuring, vehicle),
            .. Pages(format, WorksheetText.FittedTitle, WorksheetText.Both, WorksheetText.Fitted, [WorksheetSections.AfterFitting(units)]),
        ];
    }

    private static IEnumerable<SheetPage> Pages(
        PageFormat format, string title, string named, IReadOnlyList<string> words, IReadOnlyList<WorksheetSection> sections)
    {
        var frame = format.Frame;
        var left = frame.Min.X + Margin;
        var width = frame.Width - 2 * Margin;
        var (page, y) = Begin(format, title, named, words);
        foreach (var section in sections)
        {
            var block = Section(section, width);
            if (y - block.Bounds.Height < frame.Min.Y + Margin)
            {
                yield return page;
                (page, y) = Begin(format, WorksheetText.Continued(title), named, []);
            }

            page = page.With(block.UpperLeftAt(new(left, y)));
            y -= block.Bounds.Height + Between;
        }

        yield return page;
    }

    private static (SheetPage Page, double Y) Begin(PageFormat format, string title, string named, IReadOnlyList<string> words)
    {
        var frame = format.Frame;
        var (left, width) = (frame.Min.X + Margin, frame.Width - 2 * Margin);
        var y = frame.Max.Y - Margin - TextHeight.Large;
        var page = new SheetPage(format).With(new TextItem(title, new(left, y), TextHeight.Large, Weight: FontWeight.Bold));
        y -= 9;
        page = page.With(
            new TextItem(named + ":", new(left, y), TextHeight.Small), Rule(left + 48, left + width * 0.6, y),
            new TextItem(WorksheetText.DateAndName, new(left + width * 0.62, y), TextHeight.Small), Rule(left + width * 0.62 + 21, left + width, y));
        y -= 5;
        if (words.Count > 0)
        {
            var warning = WarningBox.Draw(WorksheetText.Safety, words, width).UpperLeftAt(new(left, y));
            page = page.With(warning);
            y = warning.Bounds.Min.Y - 3;
        }

        return (page, y);
    }

    private static SheetBlock Section(WorksheetSection section, double width)
    {
        const double padding = 2.5;
        var items = ImmutableArray.CreateBuilder<SheetItem>();
        items.Add(new TextItem(section.Title, new(padding, -padding - TextHeight.Normal), TextHeight.Normal, Weight: FontWeight.Bold));
        var top = -padding - TextHeight.Normal - 3.5;
        var sketch = Sketches.Of(section.Sketch);
        sketch = sketch.UpperLeftAt(new(padding + Math.Max(0, (SketchWidth - sketch.Bounds.Width) / 2), top - 2));
        items.AddRange(sketch.Items);

        var left = padding + SketchWidth + 3;
        var room = width - left - padding;
        var y = top;
        foreach (var (label, text) in new[] { (WorksheetText.Tools, section.Tools), (WorksheetText.Mistake, section.Mistake) })
        {
            var words = Notes.Paragraph(label + text, room).UpperLeftAt(new(left, y));
            items.AddRange(words.Items);
            y = words.Bounds.Min.Y - 0.8;
        }

        y -= 1;
        foreach (var blank in section.Blanks)
        {
            y = Fill(items, blank, left, room, y);
        }

        var foot = Math.Min(y, sketch.Bounds.Min.Y) - padding;
        items.Insert(0, Polyline.Rectangle(new(new(0, foot), new(width, 0)), LineKind.Rule));
        return new(items.ToImmutable(), new(new(0, foot), new(width, 0)));
    }

    // Letter, what, blank line, unit, and ± with a blank of its own.
    private static double Fill(ImmutableArray<SheetItem>.Builder items, Blank blank, double left, double room, double y)
    {
        const double letter = 5, unit = 11, plusMinus = 15, line = 20;
        var what = left + letter;
        var lineFrom = left + room - line - unit - (blank.PlusMinus ? plusMinus : 0);
        var texts = TextFlow.Wrap(blank.What, lineFrom - what - 1.5, TextHeight.Small);
        var baseline = y - BlankRow + 1.2;
        if (blank.Letter.Length > 0)
        {
            items.Add(new TextItem(blank.Letter, new(left, baseline), TextHeight.Small, Weight: FontWeight.Bold));
        }

        items.AddRange(texts.Select((text, i) => new TextItem(text, new(what, baseline - i * TextFlow.LineSpacing * TextHeight.Small), TextHeight.Small)));
        var wide = blank.Unit.Length == 0 ? unit : 0;
        items.Add(Rule(lineFrom, lineFrom + line + wide, baseline));
        if (blank.Unit.Length > 0)
        {
            items.Add(new TextItem(blank.Unit, new(lineFrom + line + 1, baseline), TextHeight.Small));
        }

        if (blank.PlusMinus)
        {
            items.Add(new TextItem("±", new(left + room - plusMinus, baseline), TextHeight.Small));
            items.Add(Rule(left + room - plusMinus + 4, left + room, baseline));
        }

        return y - BlankRow - (texts.Length - 1) * TextFlow.LineSpacing * TextHeight.Small;
    }

    private static Stroke Rule(double from, double to, double y) => new(new(from, y - 0.9), new(to, y - 0.9), LineKind.Rule);
}
