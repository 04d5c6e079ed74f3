using System.Collections.Frozen;
using BracketGen.Geometry;

namespace BracketGen.Drawing.Dxf;

/// <summary>Letters of single strokes, six units high and four wide, for marking metal.</summary>
/// <remarks>
/// A machine follows strokes as they are. Text in a file would be drawn by whatever font the reader has, as outlines, or
/// not at all. Capitals only: small letters are drawn as capitals.
/// </remarks>
public static class StrokeFont
{
    /// <summary>Height of a capital in the font's units.</summary>
    public const int Height = 6;

    /// <summary>From one letter to the next in the font's units.</summary>
    public const int Advance = 6;

    // Each stroke is a chain of points, two digits a point: x 0 to 4, y 0 to 6. Strokes are parted by commas.
    private static readonly FrozenDictionary<char, string> Strokes = new Dictionary<char, string>
    {
        [' '] = "",
        ['A'] = "0004264440,0242",
        ['B'] = "00063645443303,3342413000",
        ['C'] = "4536160501103041",
        ['D'] = "00062644422000",
        ['E'] = "46060040,0333",
        ['F'] = "460600,0333",
        ['G'] = "45361605011030414323",
        ['H'] = "0006,4046,0343",
        ['I'] = "1030,2026,1636",
        ['J'] = "0110203136",
        ['K'] = "0006,4602,1340",
        ['L'] = "060040",
        ['M'] = "0006234640",
        ['N'] = "00064046",
        ['O'] = "103041453616050110",
        ['P'] = "00063645443303",
        ['Q'] = "103041453616050110,2240",
        ['R'] = "00063645443303,2340",
        ['S'] = "453616050413334241301001",
        ['T'] = "0646,2620",
        ['U'] = "060110304146",
        ['V'] = "062046",
        ['W'] = "0610233046",
        ['X'] = "0046,0640",
        ['Y'] = "062346,2320",
        ['Z'] = "06460040",
        ['0'] = "103041453616050110,1135",
        ['1'] = "152620,1030",
        ['2'] = "05163645440040",
        ['3'] = "0516364544334241301001,1333",
        ['4'] = "30360242",
        ['5'] = "460603334241301001",
        ['6'] = "4536160501103041423303",
        ['7'] = "064610",
        ['8'] = "13040516364544331302011030414233",
        ['9'] = "4313040516364541301001",
        ['-'] = "1333",
        ['.'] = "2021",
        [','] = "2110",
        [':'] = "2122,2425",
        ['/'] = "0046",
        ['+'] = "0343,2125",
        ['='] = "0242,0444",
        ['_'] = "0040",
        ['('] = "36242230",
        [')'] = "16242210",
        ['#'] = "1016,3036,0242,0444",
        ['±'] = "0343,2125,0040",
        ['×'] = "0145,0541",
        ['°'] = "2435261524",
        ['Ø'] = "103041453616050110,0046",
    }.ToFrozenDictionary();

    /// <summary>Whether there is a letter for <paramref name="character"/>.</summary>
    public static bool Knows(char character) => Strokes.ContainsKey(char.ToUpperInvariant(character));

    /// <summary>The strokes of <paramref name="character"/>, each at least two points, in the font's units.</summary>
    /// <exception cref="ArgumentException">The font has no such letter.</exception>
    public static IEnumerable<IReadOnlyList<Vector2>> Of(char character)
    {
        if (!Strokes.TryGetValue(char.ToUpperInvariant(character), out var strokes))
        {
            throw new ArgumentException($"There is no letter for marking \"{character}\".", nameof(character));
        }

        return strokes.Split(',', StringSplitOptions.RemoveEmptyEntries)
            .Select(s => s.Chunk(2).Select(p => new Vector2(p[0] - '0', p[1] - '0')).ToList());
    }
}
