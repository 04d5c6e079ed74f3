using System.Numerics;

namespace BracketGen.Line.Sharing;

/// <summary>A set of rows, a bit each.</summary>
internal readonly struct RowSet
{
    private readonly ulong[] _words;

    private RowSet(ulong[] words) => _words = words;

    /// <summary>No row of <paramref name="rows"/>.</summary>
    public static RowSet Empty(int rows) => new(new ulong[(rows + 63) / 64]);

    /// <summary>Whether it has a row.</summary>
    public bool Has(int row) => (_words[row >> 6] >> (row & 63) & 1) != 0;

    /// <summary>Puts a row into it.</summary>
    public void Add(int row) => _words[row >> 6] |= 1UL << (row & 63);

    /// <summary>How many rows it has.</summary>
    public int Count
    {
        get
        {
            var count = 0;
            foreach (var word in _words)
            {
                count += BitOperations.PopCount(word);
            }

            return count;
        }
    }

    /// <summary>Whether another set has all its rows.</summary>
    public bool IsWithin(RowSet other)
    {
        for (var i = 0; i < _words.Length; i++)
        {
            if ((_words[i] & ~other._words[i]) != 0)
            {
                return false;
            }
        }

        return true;
    }
}
