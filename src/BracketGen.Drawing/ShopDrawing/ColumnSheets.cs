using System.Collections.Immutable;
using BracketGen.Drawing.Sheet;
using BracketGen.Geometry;

namespace BracketGen.Drawing.ShopDrawing;

/// <summary>The room above the title block of a narrow sheet.</summary>
/// <param name="Frame">Room inside the frame (mm on paper).</param>
/// <param name="Foot">Where the title block ends.</param>
internal sealed record ColumnRoom(Bounds Frame, double Foot)
{
    /// <summary>Height of the room (mm).</summary>
    public double Height => Frame.Max.Y - Foot;

    /// <summary>Whether a block fits into it alone.</summary>
    public bool Holds(SheetBlock block) => block.Bounds.Width <= Frame.Width && block.Bounds.Height <= Height;
}

/// <summary>Lays blocks below each other on narrow sheets: views first and in their order, words where they leave room.</summary>
internal static class ColumnSheets
{
    /// <summary>Between blocks (mm on paper).</summary>
    public const double Gap = 6;

    /// <summary>The sheets.</summary>
    /// <param name="room">Room on each; all blocks fit into it alone.</param>
    /// <param name="warning">What stands at the head of the first sheet; null for nothing.</param>
    /// <param name="later">What stands at the head of the others; null for nothing.</param>
    /// <param name="safety">What stands at the foot of the first sheet.</param>
    /// <param name="views">Views with their scales.</param>
    /// <param name="words">Tables and notes.</param>
    public static ImmutableArray<MainSheets.Draft> Lay(
        ColumnRoom room, SheetBlock? warning, SheetBlock? later, SheetBlock safety, IReadOnlyList<(SheetBlock Block, string Scale)> views, IReadOnlyList<SheetBlock> words)
    {
        var sheets = ImmutableArray.CreateBuilder<MainSheets.Draft>();
        var waiting = new Queue<(SheetBlock Block, string Scale)>(views);
        var unsaid = words.ToList();
        while (sheets.Count == 0 || waiting.Count > 0 || unsaid.Count > 0)
        {
            List<SheetBlock> fixedBlocks = [];
            double top = room.Frame.Max.Y, foot = room.Foot;
            if ((sheets.Count == 0 ? warning : later) is { } head)
            {
                fixedBlocks.Add(head.UpperLeftAt(new(room.Frame.Min.X, top)));
                top = fixedBlocks[0].Bounds.Min.Y - Gap;
            }

            if (sheets.Count == 0)
            {
                if (top - foot >= safety.Bounds.Height)
                {
                    fixedBlocks.Add(safety.LowerLeftAt(new(room.Frame.Min.X, foot)));
                    foot = fixedBlocks[^1].Bounds.Max.Y + Gap;
                }
                else
                {
                    unsaid.Insert(0, safety);
                }
            }

            sheets.Add(Fill(room.Frame, top, foot, fixedBlocks, waiting, unsaid));
        }

        return sheets.ToImmutable();
    }

    private static MainSheets.Draft Fill(
        Bounds frame, double top, double foot, List<SheetBlock> fixedBlocks, Queue<(SheetBlock Block, string Scale)> waiting, List<SheetBlock> unsaid)
    {
        List<(SheetBlock Block, bool IsView)> placed = [];
        List<string> scales = [];
        var left = top - foot;
        bool Takes(SheetBlock block) => block.Bounds.Height + (placed.Count > 0 ? Gap : 0) <= left;
        void Take(SheetBlock block, bool isView)
        {
            left -= block.Bounds.Height + (placed.Count > 0 ? Gap : 0);
            placed.Add((block, isView));
        }

        while (waiting.TryPeek(out var view) && Takes(view.Block))
        {
            Take(view.Block, true);
            scales.Add(waiting.Dequeue().Scale);
        }

        // Words fill what the views leave, in their order but for those too tall.
        foreach (var block in unsaid.ToList())
        {
            if (Takes(block))
            {
                Take(block, false);
                unsaid.Remove(block);
            }
        }

        // Views stand in the middle, with what room is left shared out among them.
        var share = placed.Any(p => p.IsView) ? left / (placed.Count(p => p.IsView) + 1) : 0;
        var y = top;
        List<SheetBlock> blocks = [.. fixedBlocks];
        foreach (var (block, isView) in placed)
        {
            y -= isView ? share : 0;
            var x = isView ? frame.Centre.X - block.Bounds.Width / 2 : frame.Min.X;
            blocks.Add(block.UpperLeftAt(new(x, y)));
            y -= block.Bounds.Height + Gap;
        }

        return new([.. blocks], scales.Count == 0 ? "-" : string.Join(", ", scales.Distinct()));
    }
}
