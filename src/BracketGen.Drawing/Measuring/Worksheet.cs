using System.Collections.Immutable;
using BracketGen.Drawing.Sheet;
using BracketGen.Units;
using BracketGen.Words.Worksheet;

namespace BracketGen.Drawing.Measuring;

/// <summary>The measuring worksheet: what to measure on vehicle and throttle body, from where, with what, and blanks to fill in.</summary>
/// <remarks>The same format gives the same pages.</remarks>
public static class Worksheet
{
    /// <summary>Room for a sketch (mm).</summary>
    internal const double SketchWidth = 78;

    private const double Margin = 4, Between = 4;

    // Height of a row of blanks: rows spread where the sheet has room for it.
    private const double BlankRow = 6.6, WideRow = 11.5, RowStep = 0.1;

    /// <summary>The pages.</summary>
    /// <param name="format">Sheet, upright.</param>
    /// <param name="units">Unit of the lengths to write down.</param>
    public static ImmutableArray<SheetPage> Compose(PageFormat format, UnitSystem units)
    {
        var (body, vehicle) = (WorksheetSections.OfThrottleBody(units), WorksheetSections.OfVehicle(units));
        return
        [
            .. Pages(format, WorksheetText.ThrottleBodyTitle, WorksheetText.ThrottleBody, WorksheetText.Measuring, WorksheetText.Readings, body),
            .. Pages(format, WorksheetText.VehicleTitle, WorksheetText.Vehicle, WorksheetText.Measuring, WorksheetText.Readings, vehicle),
            .. Pages(format, WorksheetText.FittedTitle, WorksheetText.Both, WorksheetText.Fitted, WorksheetText.Settings, [WorksheetSections.AfterFitting(units)]),
        ];
    }

    private static IEnumerable<SheetPage> Pages(
        PageFormat format, string title, string named, IReadOnlyList<string> words, string readings, IReadOnlyList<WorksheetSection> sections)
    {
        var frame = format.Frame;
        var left = frame.Min.X + Margin;
        var width = frame.Width - 2 * Margin;
        var next = 0;
        foreach (var count in Split([.. sections.Select(s => Height(s, BlankRow))], [.. sections.Select(s => Height(s, WideRow))], Room(Start(0)), Room(Start(1))))
        {
            var (page, y) = Start(next);
            var onPage = sections.Skip(next).Take(count).ToArray();
            var row = BlankRow;
            while (row + RowStep <= WideRow && onPage.Sum(s => Height(s, row + RowStep)) - Between <= Room((page, y)))
            {
                row += RowStep;
            }

            foreach (var section in onPage)
            {
                var block = Section(section, width, row);
                page = page.With(block.UpperLeftAt(new(left, y)));
                y -= block.Bounds.Height + Between;
            }

            next += count;
            yield return page;
        }

        (SheetPage Page, double Y) Start(int from) =>
            from == 0 ? Begin(format, title, named, words, readings) : Begin(format, WorksheetText.Continued(title), named, [], "");

        double Room((SheetPage Page, double Y) start) => start.Y - frame.Min.Y - Margin;

        double Height(WorksheetSection section, double row) => Section(section, width, row).Bounds.Height + Between;
    }

    // How many sections each sheet holds, in their order: as few sheets as there can be, and of these ways the one whose emptiest sheet is fullest.
    // Heights include the space below a section.
    private static ImmutableArray<int> Split(double[] lowest, double[] highest, double firstRoom, double room)
    {
        return Best(0).Counts;

        (ImmutableArray<int> Counts, double Empty) Best(int from)
        {
            if (from == lowest.Length)
            {
                return ([], 0);
            }

            var space = (from == 0 ? firstRoom : room) + Between;
            (ImmutableArray<int> Counts, double Empty)? best = null;
            for (var count = 1; from + count <= lowest.Length && (count == 1 || lowest[from..(from + count)].Sum() <= space); count++)
            {
                var rest = Best(from + count);
                var empty = Math.Max(rest.Empty, space - highest[from..(from + count)].Sum());
                if (best is not { } known || (rest.Counts.Length + 1, empty).CompareTo((known.Counts.Length, known.Empty)) < 0)
                {
                    best = ([count, .. rest.Counts], empty);
                }
            }

            return best!.Value;
        }
    }

    private static (SheetPage Page, double Y) Begin(PageFormat format, string title, string named, IReadOnlyList<string> words, string readings)
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

        if (readings.Length == 0)
        {
            return (page, y);
        }

        var note = Notes.Paragraph(readings, width).UpperLeftAt(new(left, y));
        return (page.With(note), note.Bounds.Min.Y - 2.5);
    }

    private static SheetBlock Section(WorksheetSection section, double width, double row)
    {
        const double padding = 2.5;
        var items = ImmutableArray.CreateBuilder<SheetItem>();
        items.Add(new TextItem(section.Title, new(padding, -padding - TextHeight.Normal), TextHeight.Normal, Weight: FontWeight.Bold));
        var top = -padding - TextHeight.Normal - 3.5;
        var sketch = Sketches.Of(section);
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
            y = Fill(items, blank, left, room, y, row);
        }

        var foot = Math.Min(y, sketch.Bounds.Min.Y) - padding;
        items.Insert(0, Polyline.Rectangle(new(new(0, foot), new(width, 0)), LineKind.Rule));
        return new(items.ToImmutable(), new(new(0, foot), new(width, 0)));
    }

    // Letter, what, the blanks and their unit. The words stand above the blanks where there is no room before them.
    private static double Fill(ImmutableArray<SheetItem>.Builder items, Blank blank, double left, double room, double y, double row)
    {
        const double letter = 6.5, gap = 1.5, unit = 10;
        var font = SheetFont.Of(FontWeight.Regular);
        var line = TextFlow.LineSpacing * TextHeight.Small;
        var size = blank switch { { Unit: "", Fields.Length: 1 } => 24.0, { Fields.Length: 1 } => 15, { Fields.Length: > 3 } => 12, _ => 13 };
        var fields = blank.Fields.Select(f => (Before: f, Label: f.Length == 0 ? 0 : font.Width(f, TextHeight.Small) + 1)).ToArray();
        var needed = fields.Sum(f => f.Label + size) + (fields.Length - 1) * gap;
        var x = left + room - (blank.Unit.Length == 0 && fields.Length == 1 ? 0 : unit) - needed;
        var what = left + letter;
        var beside = font.Width(blank.What, TextHeight.Small) <= x - what - gap;
        ImmutableArray<string> texts = beside ? [blank.What] : TextFlow.Wrap(blank.What, room - letter, TextHeight.Small);
        var first = y - row + 1.2;
        var baseline = beside ? first : first - (texts.Length - 1) * line - 5.4;
        if (blank.Letter.Length > 0)
        {
            items.Add(new TextItem(blank.Letter, new(left, first), TextHeight.Small, Weight: FontWeight.Bold));
        }

        items.AddRange(texts.Select((text, i) => new TextItem(text, new(what, first - i * line), TextHeight.Small)));
        foreach (var (before, label) in fields)
        {
            if (label > 0)
            {
                items.Add(new TextItem(before, new(x, baseline), TextHeight.Small));
            }

            items.Add(Rule(x + label, x + label + size, baseline));
            x += label + size + gap;
        }

        if (blank.Unit.Length > 0)
        {
            items.Add(new TextItem(blank.Unit, new(x - gap + 1, baseline), TextHeight.Small));
        }

        return baseline - 1.2;
    }

    private static Stroke Rule(double from, double to, double y) => new(new(from, y - 0.9), new(to, y - 0.9), LineKind.Rule);
}
