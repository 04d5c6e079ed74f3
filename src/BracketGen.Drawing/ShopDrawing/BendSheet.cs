using System.Collections.Immutable;
using BracketGen.Drawing.Sheet;
using BracketGen.Drawing.Views;
using BracketGen.Geometry;
using BracketGen.SheetMetal.Forming;
using BracketGen.Words.ShopDrawing;

namespace BracketGen.Drawing.ShopDrawing;

/// <summary>The sheet for whoever bends the part: the order of bends, step by step, with a picture of each before and after.</summary>
internal sealed class BendSheet(BracketScene scene, BendPlan plan)
{
    private const double Gap = 5;

    /// <summary>Columns of the table are not squeezed below this (mm): where they would be, more sheets are taken.</summary>
    private const double LeastColumn = 62;

    /// <summary>Nor are they wider than this (mm).</summary>
    private const double MostColumn = 110;

    /// <summary>First column of the table (mm).</summary>
    private const double Names = 46;

    /// <summary>Pictures lower than this (mm) show nothing.</summary>
    private const double LeastPicture = 32;

    /// <summary>Notes are not squeezed below this width (mm).</summary>
    private const double LeastWords = 80;

    /// <summary>The sheets without their title blocks.</summary>
    /// <param name="format">Their format.</param>
    /// <param name="title">The room the title block takes.</param>
    public ImmutableArray<MainSheets.Draft> Compose(PageFormat format, Bounds title)
    {
        var frame = format.Frame.Grow(-Gap);
        var perSheet = Math.Max(1, Math.Min(plan.Steps.Length, (int)((frame.Width - Names) / LeastColumn)));
        return [.. Enumerable.Range(0, plan.Steps.Length).Chunk(perSheet).SelectMany((steps, i) => Compose(frame, title, steps, i == 0))];
    }

    private IEnumerable<MainSheets.Draft> Compose(Bounds frame, Bounds title, int[] steps, bool isFirst)
    {
        var units = scene.Solution.Job.Units;
        var column = Math.Min(MostColumn, (frame.Width - Names) / steps.Length);
        var beside = title.Min.X - Gap - frame.Min.X;
        List<SheetBlock> blocks = [];
        var room = frame;
        if (new WarningBlocks(scene.Solution, scene.Value).SeeSheetOne(frame.Width) is { } warning)
        {
            blocks.Add(warning.UpperLeftAt(new(frame.Min.X, frame.Max.Y)));
            room = room with { Max = new(room.Max.X, blocks[0].Bounds.Min.Y - Gap) };
        }

        var foot = title.Max.Y;
        if (isFirst)
        {
            var isBeside = beside >= LeastWords;
            var notes = Notes.Numbered(BendStepText.NotesHeading, [.. BendStepText.Notes(scene.Bracket, units).Select(scene.Value.Styled)], isBeside ? beside : frame.Width);
            blocks.Add(notes.LowerLeftAt(new(frame.Min.X, isBeside ? frame.Min.Y : foot + Gap)));
            foot = Math.Max(foot, blocks[^1].Bounds.Max.Y);
        }

        var table = SheetTable.Draw(
            BendStepText.Title, BendStepText.Heads(plan, steps), [.. BendStepText.Rows(scene.Bracket, steps, units).Select(r => (IReadOnlyList<string>)[.. r.Select(scene.Value.Styled)])],
            maximumWidth: Math.Min(column, Names + 10) - 4).LowerLeftAt(new(frame.Min.X, foot + Gap));

        // Pictures above the table, or to its right where that leaves them larger.
        var right = new Bounds(new(table.Bounds.Max.X + 2 * Gap, Math.Max(foot, title.Max.Y) + Gap), room.Max);
        room = room with { Min = new(frame.Min.X, table.Bounds.Max.Y + Gap) };
        if (right.Width >= steps.Length * LeastColumn && ScaleIn(right, steps) > 1.02 * ScaleIn(room, steps))
        {
            table = table.UpperLeftAt(new(frame.Min.X, right.Max.Y));
            room = right;
        }

        if (room.Height < LeastPicture + HeadHeight)
        {
            // Pictures on a sheet of their own.
            yield return new([.. blocks, table], "-");
            blocks = [];
            room = frame with { Min = new(frame.Min.X, title.Max.Y + Gap) };
        }
        else
        {
            blocks.Add(table);
        }

        for (var i = 0; i < steps.Length; i++)
        {
            blocks.AddRange(Pictures(steps[i], Share(room, i, steps.Length)));
        }

        yield return new([.. blocks], "-");
    }

    private static Bounds Share(Bounds room, int i, int count)
    {
        var share = room.Width / count;
        return new(new(room.Min.X + i * share, room.Min.Y), new(room.Min.X + (i + 1) * share - (i + 1 < count ? Gap : 0), room.Max.Y));
    }

    private double ScaleIn(Bounds room, int[] steps) => steps.Select((step, i) =>
    {
        var window = BendPicture.Of(plan, step).Before.Window;
        var share = Share(room, i, steps.Length);
        return Scale(window, share with { Max = new(share.Max.X, share.Max.Y - HeadHeight / 2) }).Scale;
    }).Min();

    // Beside each other or one above the other, whichever is larger.
    private static (double Scale, bool IsRow) Scale(Bounds window, Bounds inner)
    {
        var row = Math.Min((inner.Width - BendPicture.Gap) / 2 / window.Width, (inner.Height - BendPicture.Caption) / window.Height);
        var stack = Math.Min(inner.Width / window.Width, (inner.Height - BendPicture.Gap - 2 * BendPicture.Caption) / 2 / window.Height);
        return (Math.Min(MostScale, Math.Max(row, stack)), row >= stack);
    }

    private const double HeadHeight = 12;

    private IEnumerable<SheetBlock> Pictures(int step, Bounds room)
    {
        var window = BendPicture.Of(plan, step).Before.Window;
        var head = SheetBlock.Around([new TextItem(BendStepText.Step(plan, step), Vector2.Zero, TextHeight.Normal, Weight: FontWeight.Bold)]).UpperLeftAt(new(room.Min.X, room.Max.Y));
        yield return head;
        var inner = room with { Max = new(room.Max.X, head.Bounds.Min.Y - 2) };
        var (scale, isRow) = Scale(window, inner);
        yield return BendPicture.Draw(plan, step, scale, isRow).UpperLeftAt(new(inner.Min.X, inner.Max.Y));
    }

    /// <summary>Pictures are no larger than this: thick lines look clumsy.</summary>
    private const double MostScale = 2;
}
