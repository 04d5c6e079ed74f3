using System.Collections.Immutable;
using BracketGen.Design.Study;
using BracketGen.Drawing.Inspecting;
using BracketGen.Drawing.Setup;
using BracketGen.Drawing.Sheet;
using BracketGen.Drawing.Views;
using BracketGen.Geometry;
using BracketGen.Words.SetupSheet;
using BracketGen.Words.ShopDrawing;

namespace BracketGen.Drawing.Orders;

/// <summary>A table on a sheet of an order.</summary>
/// <param name="Heading">Above it.</param>
/// <param name="Heads">Names of the columns.</param>
/// <param name="Rows">The rows.</param>
/// <param name="Shares">How the columns share the width.</param>
/// <param name="Right">Columns of numbers, from 0.</param>
public sealed record OrderTable(
    string Heading, ImmutableArray<string> Heads, ImmutableArray<ImmutableArray<string>> Rows, ImmutableArray<double> Shares, ImmutableArray<int> Right);

/// <summary>A sheet of an order: job card, pick list or packing list.</summary>
/// <param name="Title">What it is.</param>
/// <param name="Name">What it is of, in bold.</param>
/// <param name="Subject">More of that.</param>
/// <param name="Notes">Sentences below the tables.</param>
/// <param name="Tables">The tables.</param>
public sealed record OrderSheet(string Title, string Name, string Subject, ImmutableArray<OrderTable> Tables, ImmutableArray<string> Notes)
{
    private const double Margin = 4, Gap = 4.5;

    // What a cell has beside its text on both sides together (mm), as SheetTable sets it.
    private const double Padding = 2 * 0.7 * TextHeight.Small;

    // A table no higher than this (mm) goes on any sheet; a longer one is cut into several.
    private const double MostHeight = 150;

    // Steps of bending beside each other on an upright sheet.
    private const int StepsBeside = 3;

    /// <summary>The part whose picture stands beside the first table and whose order of bends follows; null for none. It has a bracket.</summary>
    public Solution? Part { get; init; }

    /// <summary>The pages.</summary>
    /// <param name="format">Sheet, upright.</param>
    public ImmutableArray<SheetPage> Compose(PageFormat format)
    {
        var flow = new PageFlow(format, Margin);
        for (var i = 0; i < Tables.Length; i++)
        {
            Add(flow, Tables[i], i == 0 ? Part : null);
        }

        if (Part is { Bracket: { Plan: { } plan } bracket, Job.Units: var units })
        {
            Heading(flow, BendStepText.Title);
            foreach (var steps in Enumerable.Range(0, plan.Steps.Length).Chunk(StepsBeside))
            {
                const double names = 42;
                var column = Math.Min(90, (flow.Width - names - 1) / steps.Length);
                foreach (var block in Cut(
                    [.. BendStepText.Heads(plan, steps)], [.. BendStepText.Rows(bracket, steps, units).Select(r => r.ToImmutableArray())],
                    [names - Padding, .. steps.Select(_ => column - Padding)], []))
                {
                    flow.Add(block, Gap);
                }

                foreach (var step in steps)
                {
                    var window = BendPicture.Of(plan, step).Before.Window;
                    var scale = Math.Min(1, Math.Min((flow.Width - BendPicture.Gap) / 2 / window.Width, 52 / window.Height));
                    flow.Add(Sheet.Notes.Paragraph(BendStepText.Step(plan, step), flow.Width, weight: FontWeight.Bold), 1, keepWithNext: true);
                    flow.Add(BendPicture.Draw(plan, step, scale), Gap);
                }
            }

            foreach (var note in BendStepText.Notes(bracket, units))
            {
                flow.Add(Sheet.Notes.Paragraph(note, flow.Width), 1);
            }
        }

        foreach (var note in Notes)
        {
            flow.Add(Sheet.Notes.Paragraph(note, flow.Width), 1);
        }

        return flow.Pages((sheet, sheets) => Head(flow.Width, sheet, sheets));
    }

    private static void Heading(PageFlow flow, string title) => flow.Add(Sheet.Notes.Paragraph(title, flow.Width, TextHeight.Normal, FontWeight.Bold), 1.5, keepWithNext: true);

    private static void Add(PageFlow flow, OrderTable table, Solution? pictured)
    {
        if (table.Heading.Length > 0)
        {
            Heading(flow, table.Heading);
        }

        var room = flow.Width - table.Shares.Length * Padding - 1;
        var blocks = Cut(table.Heads, table.Rows, [.. table.Shares.Select(s => s / table.Shares.Sum() * room)], table.Right).ToArray();
        if (pictured?.Bracket is { } bracket && blocks.Length > 0)
        {
            var beside = InspectionPicture.Draw(new(pictured, bracket), new(flow.Width - blocks[0].Bounds.Width - 2 * Gap, blocks[0].Bounds.Height));
            blocks[0] = blocks[0].And(beside.UpperRightAt(new(flow.Width, blocks[0].Bounds.Max.Y)));
        }

        for (var i = 0; i < blocks.Length; i++)
        {
            flow.Add(blocks[i], i + 1 < blocks.Length ? 0 : Gap);
        }
    }

    // Cells are wrapped by hand, so that the columns share the width as they are told; what is too high is cut into several tables.
    private static IEnumerable<SheetBlock> Cut(ImmutableArray<string> heads, ImmutableArray<ImmutableArray<string>> rows, double[] widths, ImmutableArray<int> right)
    {
        string Wrapped(string text, int column, FontWeight weight) => string.Join('\n', TextFlow.Wrap(text, widths[column], TextHeight.Small, weight));
        string[] head = [.. heads.Select((h, i) => Wrapped(h, i, FontWeight.Bold))];
        IReadOnlyList<string>[] cells = [.. rows.Select(r => (IReadOnlyList<string>)[.. r.Select((c, i) => Wrapped(c, i, FontWeight.Regular))])];
        for (var from = 0; from < cells.Length;)
        {
            // Rows are added as long as they go on; never all tried again from the longest, which takes the square of their number.
            var count = 1;
            while (from + count < cells.Length && Draw(from, count + 1).Bounds.Height <= MostHeight)
            {
                count++;
            }

            yield return Draw(from, count);
            from += count;
        }

        SheetBlock Draw(int from, int count) => SheetTable.Draw("", head, cells[from..(from + count)], right, maximumWidth: widths.Max() + 1);
    }

    private SheetBlock Head(double width, int sheet, int sheets)
    {
        const double tall = 21;
        return new(
            [
                new TextItem(Title, new(0, -TextHeight.Large - 1), TextHeight.Large, Weight: FontWeight.Bold),
                new TextItem(SetupText.Sheet(sheet, sheets), new(width, -TextHeight.Large - 1), TextHeight.Small, TextAlign.Right),
                TextLine.Fitting(Name, new(0, -11.5), TextHeight.Small, width, FontWeight.Bold),
                TextLine.Fitting(Subject, new(0, -16), TextHeight.Small, width),
                new Stroke(new Vector2(0, -18), new(width, -18), LineKind.Rule),
            ],
            new(new(0, -tall), new(width, 0)));
    }
}
