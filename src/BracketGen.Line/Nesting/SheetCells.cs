namespace BracketGen.Line.Nesting;

/// <summary>Which cells of a sheet are taken: a column of bits along y for every step along x.</summary>
internal sealed class SheetCells
{
    private readonly ulong[][] _columns;
    private readonly int _height;
    private readonly int _words;
    private readonly ulong[] _blocked;
    private readonly ulong[] _spread;

    public SheetCells(int width, int height)
    {
        (_height, _words) = (height, (height + 63) / 64);
        _columns = [.. Enumerable.Range(0, width).Select(_ => new ulong[_words])];
        (_blocked, _spread) = (new ulong[_words], new ulong[_words]);
    }

    public int Width => _columns.Length;

    public int Height => _height;

    /// <summary>The place farthest left, and of those lowest, where the mask lies free, from column <paramref name="from"/> on; null where there is none up to <paramref name="last"/>.</summary>
    public (int X, int Y)? Find(CellMask mask, int from, int last)
    {
        if (mask.Height > _height)
        {
            return null;
        }

        for (var x = from; x <= Math.Min(last, Width - mask.Width); x++)
        {
            if (FreeIn(mask, x) is { } y)
            {
                return (x, y);
            }
        }

        return null;
    }

    /// <summary>Takes the cells for which this holds; it is asked with column and row.</summary>
    public void Take(Func<int, int, bool> isTaken)
    {
        for (var i = 0; i < Width; i++)
        {
            for (var j = 0; j < _height; j++)
            {
                if (isTaken(i, j))
                {
                    _columns[i][j >> 6] |= 1UL << (j & 63);
                }
            }
        }
    }

    /// <summary>The same cells taken, to go on from.</summary>
    public SheetCells Copy()
    {
        var copy = new SheetCells(Width, _height);
        for (var i = 0; i < Width; i++)
        {
            _columns[i].CopyTo(copy._columns[i], 0);
        }

        return copy;
    }

    /// <summary>Takes the mask's cells.</summary>
    public void Take(CellMask mask, int x, int y)
    {
        for (var i = 0; i < mask.Width; i++)
        {
            foreach (var (from, to) in mask.Columns[i])
            {
                for (var cell = y + from; cell <= y + to; cell++)
                {
                    _columns[x + i][cell >> 6] |= 1UL << (cell & 63);
                }
            }
        }
    }

    // For all places along y at once: a place is blocked where any run of the mask, shifted there, meets a taken cell.
    private int? FreeIn(CellMask mask, int x)
    {
        Array.Clear(_blocked);
        for (var i = 0; i < mask.Width; i++)
        {
            var column = _columns[x + i];
            if (IsEmpty(column))
            {
                continue;
            }

            foreach (var (from, to) in mask.Columns[i])
            {
                Array.Copy(column, _spread, _words);
                var have = 1;
                while (have <= to - from)
                {
                    var step = Math.Min(have, to - from + 1 - have);
                    ShiftDown(_spread, _spread, step);
                    have += step;
                }

                ShiftDown(_spread, _blocked, from);
            }
        }

        var most = _height - mask.Height;
        for (var word = 0; word < _words; word++)
        {
            var free = ~_blocked[word];
            if (free != 0)
            {
                var y = word * 64 + System.Numerics.BitOperations.TrailingZeroCount(free);
                return y <= most ? y : null;
            }
        }

        return null;
    }

    private static bool IsEmpty(ulong[] column)
    {
        foreach (var word in column)
        {
            if (word != 0)
            {
                return false;
            }
        }

        return true;
    }

    // into |= from >> by, over the whole column; both may be the same.
    private static void ShiftDown(ulong[] from, ulong[] into, int by)
    {
        int words = by >> 6, bits = by & 63;
        for (var i = 0; i + words < from.Length; i++)
        {
            var low = from[i + words] >> bits;
            var high = bits > 0 && i + words + 1 < from.Length ? from[i + words + 1] << (64 - bits) : 0;
            into[i] |= low | high;
        }
    }
}
