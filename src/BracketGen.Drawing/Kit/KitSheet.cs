using System.Collections.Immutable;
using BracketGen.Design.Kit;
using BracketGen.Drawing.Setup;
using BracketGen.Drawing.Sheet;
using BracketGen.Words;
using BracketGen.Words.Kit;
using BracketGen.Words.SetupSheet;

namespace BracketGen.Drawing.Kit;

/// <summary>The kit on paper: what is taken and what it costs, what else was looked at, what to measure, what to look at on used parts.</summary>
/// <remarks>The same study gives the same sheets.</remarks>
public static class KitSheet
{
    private const double Margin = 4, Gap = 4.5;

    // What a cell has beside its text on both sides together (mm), as SheetTable sets it.
    private const double Padding = 2 * 0.7 * TextHeight.Small;

    // A table no higher than this (mm) goes on any sheet; a longer one is cut into several.
    private const double MostHeight = 150;

    /// <summary>The sheets.</summary>
    /// <param name="study">The study.</param>
    /// <param name="format">Sheet, upright.</param>
    public static ImmutableArray<SheetPage> Compose(KitStudy study, PageFormat format)
    {
        var flow = new PageFlow(format, Margin);
        var width = flow.Width;
        flow.Add(WarningBox.Draw(SetupText.Safety, Cautions.All, width, TextHeight.Small), Gap);
        flow.Add(Notes.Paragraph(KitText.Verdict(study), width, TextHeight.Normal, FontWeight.Bold), Gap);
        Heading(KitText.Set);
        Table(KitText.SetHeads, KitText.SetRows(study), [24, 10, 54, 44, 24], [1]);
        Lines([.. KitText.Costs(study), KitText.MakeOrBuy(study), KitText.Job(study), .. KitText.SetNotes(study), KitText.ByMeasurements]);
        if (KitText.OtherRows(study) is { IsEmpty: false } others)
        {
            Heading(KitText.Others);
            Table(KitText.OtherHeads, others, [22, 29, 25, 18, 12, 48], []);
        }

        if (KitText.Measures(study).ToArray() is { Length: > 0 } open)
        {
            Heading(KitText.ToMeasure);
            Lines(open);
        }

        if (KitText.Used(study).ToArray() is { Length: > 0 } used)
        {
            Heading(UsedText.Heading);
            foreach (var (need, looks) in used)
            {
                flow.Add(Notes.Paragraph(need, width, weight: FontWeight.Bold), 0.8, keepWithNext: true);
                Lines(looks);
            }
        }

        return flow.Pages((sheet, sheets) => SheetHead.Draw(study.Base.Solution!, KitText.Title, width, sheet, sheets));

        void Heading(string title) => flow.Add(Notes.Paragraph(title, width, TextHeight.Normal, FontWeight.Bold), 1.5, keepWithNext: true);

        void Lines(IReadOnlyList<string> lines)
        {
            foreach (var (line, i) in lines.Select((l, i) => (l, i)))
            {
                flow.Add(Notes.Paragraph(line, width), i + 1 < lines.Count ? 1 : Gap);
            }
        }

        // Cells are wrapped by hand, so that the columns share the width as they need it.
        void Table(IReadOnlyList<string> heads, ImmutableArray<ImmutableArray<string>> rows, double[] shares, int[] right)
        {
            var room = width - shares.Length * Padding - 1;
            double[] widths = [.. shares.Select(s => s / shares.Sum() * room)];
            IReadOnlyList<string>[] cells = [.. rows.Select(r => (IReadOnlyList<string>)[.. r.Select((c, i) => string.Join('\n', TextFlow.Wrap(c, widths[i], TextHeight.Small)))])];
            for (var from = 0; from < cells.Length;)
            {
                var count = cells.Length - from;
                while (count > 1 && Draw(from, count).Bounds.Height > MostHeight)
                {
                    count--;
                }

                flow.Add(Draw(from, count), from + count < cells.Length ? 0 : Gap);
                from += count;
            }

            SheetBlock Draw(int from, int count) => SheetTable.Draw("", heads, cells[from..(from + count)], right, maximumWidth: widths.Max());
        }
    }
}
