using System.Collections.Immutable;
using BracketGen.Drawing.Sheet;

namespace BracketGen.Drawing.Setup;

/// <summary>Lays blocks below each other, on as many sheets as they need.</summary>
/// <param name="format">Sheet.</param>
/// <param name="margin">Between frame and blocks (mm).</param>
internal sealed class PageFlow(PageFormat format, double margin)
{
    private readonly List<(SheetBlock Block, double Gap, bool KeepWithNext)> _blocks = [];
    private readonly HashSet<int> _breaks = [];

    /// <summary>Width that a block may have (mm).</summary>
    public double Width => format.Frame.Width - 2 * margin;

    /// <summary>Adds a block, with a gap (mm) below it; one that is kept with the next never stands last on a sheet.</summary>
    public void Add(SheetBlock block, double gap, bool keepWithNext = false) => _blocks.Add((block, gap, keepWithNext));

    /// <summary>What follows begins on a new sheet, unless this one is less than half full.</summary>
    public void Break() => _breaks.Add(_blocks.Count);

    /// <summary>The sheets, each under its head.</summary>
    /// <param name="head">Head of sheet number so and so of so many; always of the same height.</param>
    public ImmutableArray<SheetPage> Pages(Func<int, int, SheetBlock> head)
    {
        var top = format.Frame.Max.Y - margin - head(1, 1).Bounds.Height;
        var foot = format.Frame.Min.Y + margin;
        var left = format.Frame.Min.X + margin;
        List<List<SheetBlock>> sheets = [[]];
        var y = top;
        for (var i = 0; i < _blocks.Count; i++)
        {
            var isUsed = top - y > 0.5 * (top - foot);
            if (sheets[^1].Count > 0 && ((_breaks.Contains(i) && isUsed) || y - HeightFrom(i) < foot))
            {
                sheets.Add([]);
                y = top;
            }

            sheets[^1].Add(_blocks[i].Block.UpperLeftAt(new(left, y)));
            y -= _blocks[i].Block.Bounds.Height + _blocks[i].Gap;
        }

        return
        [
            .. sheets.Select((blocks, i) => new SheetPage(
                format,
                [.. head(i + 1, sheets.Count).UpperLeftAt(new(left, format.Frame.Max.Y - margin)).Items, .. blocks.SelectMany(b => b.Items)])),
        ];
    }

    private double HeightFrom(int index)
    {
        var height = _blocks[index].Block.Bounds.Height;
        for (; _blocks[index].KeepWithNext && index + 1 < _blocks.Count; index++)
        {
            height += _blocks[index].Gap + _blocks[index + 1].Block.Bounds.Height;
        }

        return height;
    }
}
