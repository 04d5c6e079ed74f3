using System.Numerics;

namespace BracketGen.Line.Sharing;

/// <summary>A set of rows, a bit each.</summary>
internal readonly struct RowSet
{
    private readonly ulong[] _words;

    private RowSet(ulong[] words) => _words = words;

    /// <summary>No row of <paramref name="rows"/>.</summary>
    public static RowSet Empty(int rows) => new(new ulong[(rows + 63) / 64]);

    /// <summary>Whether it has no row.</summary>
    public bool IsEmpty => !_words.AsSpan().ContainsAnyExcept(0UL);

    /// <summary>Whether it has a row.</summary>
    public bool Has(int row) => (_words[row >> 6] >> (row & 63) & 1) != 0;

    /// <summary>Puts a row into it.</summary>
    public void Add(int row) => _words[row >> 6] |= 1UL << (row & 63);

    /// <summary>Puts all rows of another set into it.</summary>
    public void Add(RowSet other)
    {
        for (var i = 0; i < _words.Length; i++)
        {
            _words[i] |= other._words[i];
        }
    }

    /// <summary>How many rows it has in common with another set.</summary>
    public int CountWith(RowSet other)
    {
        var count = 0;
        for (var i = 0; i < _words.Length; i++)
        {
            count += BitOperations.PopCount(_words[i] & other._words[i]);
        }

        return count;
    }

    /// <summary>A new set of its rows that another does not have.</summary>
    public RowSet Without(RowSet other)
    {
        var rest = new ulong[_words.Length];
        for (var i = 0; i < rest.Length; i++)
        {
            rest[i] = _words[i] & ~other._words[i];
        }

        return new(rest);
    }
}
