using System.Buffers.Binary;
using System.Collections.Frozen;

namespace BracketGen.Drawing.Sheet;

/// <summary>The embedded font's measures, so that the box of every text is known before it is drawn.</summary>
/// <remarks>
/// Reads what it needs of the TrueType file itself (ISO/IEC 14496-22: tables cmap format 4, hmtx, loca, glyf, OS/2). Text is
/// set glyph after glyph without kerning, as the PDF writer sets it.
/// </remarks>
public sealed class SheetFont
{
    /// <summary>Family name of the font, as the files carry it.</summary>
    public const string Family = "BracketGen Sheet";

    private static readonly Lazy<SheetFont> RegularFont = new(() => new("BracketGenSheet-Regular"));
    private static readonly Lazy<SheetFont> BoldFont = new(() => new("BracketGenSheet-Bold"));

    private readonly FrozenDictionary<int, Glyph> _glyphs;
    private readonly double _capHeight;

    private SheetFont(string name)
    {
        Name = name;
        File = Load(name);
        var tables = Tables(File);
        var unitsPerEm = U16(tables["head"] + 18);
        _capHeight = I16(tables["OS/2"] + 88);
        EmPerCapHeight = unitsPerEm / _capHeight;
        _glyphs = ReadGlyphs(tables).ToFrozenDictionary();
    }

    /// <summary>Name of the font file without its ending; what the PDF calls it.</summary>
    public string Name { get; }

    /// <summary>How much larger than its capitals the font's em is: the font size for a wanted cap height.</summary>
    public double EmPerCapHeight { get; }

    /// <summary>The TrueType file, for pages that carry the font with them.</summary>
    public ReadOnlyMemory<byte> TrueType => File;

    /// <summary>The same for the PDF library, which takes an array and leaves it as it is.</summary>
    internal byte[] File { get; }

    /// <summary>The font of a weight.</summary>
    public static SheetFont Of(FontWeight weight) => (weight == FontWeight.Bold ? BoldFont : RegularFont).Value;

    /// <summary>Whether the font has a glyph for every character of <paramref name="text"/>.</summary>
    public bool Covers(string text) => text.EnumerateRunes().All(r => _glyphs.ContainsKey(r.Value));

    /// <summary>Length of <paramref name="text"/> along its baseline (mm) at a cap <paramref name="height"/> (mm).</summary>
    public double Width(string text, double height) =>
        text.EnumerateRunes().Sum(r => GlyphOf(r.Value).Advance) * height / _capHeight;

    /// <summary>
    /// Lowest and highest ink of <paramref name="text"/> against its baseline (mm) at a cap <paramref name="height"/> (mm); both
    /// zero for blanks.
    /// </summary>
    public (double Bottom, double Top) Ink(string text, double height)
    {
        double bottom = 0, top = 0;
        foreach (var rune in text.EnumerateRunes())
        {
            var glyph = GlyphOf(rune.Value);
            bottom = Math.Min(bottom, glyph.Bottom);
            top = Math.Max(top, glyph.Top);
        }

        return (bottom * height / _capHeight, top * height / _capHeight);
    }

    private Glyph GlyphOf(int character) => _glyphs.TryGetValue(character, out var glyph) ? glyph : _glyphs['?'];

    private static byte[] Load(string name)
    {
        using var stream = typeof(SheetFont).Assembly.GetManifestResourceStream($"BracketGen.Drawing.Fonts.{name}.ttf")
            ?? throw new InvalidOperationException($"The program was built without its font {name}.");
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }

    private static Dictionary<string, int> Tables(byte[] file)
    {
        var tables = new Dictionary<string, int>();
        var count = BinaryPrimitives.ReadUInt16BigEndian(file.AsSpan(4));
        for (var i = 0; i < count; i++)
        {
            var record = file.AsSpan(12 + 16 * i, 16);
            tables[System.Text.Encoding.ASCII.GetString(record[..4])] = BinaryPrimitives.ReadInt32BigEndian(record[8..]);
        }

        return tables;
    }

    private Dictionary<int, Glyph> ReadGlyphs(Dictionary<string, int> tables)
    {
        int hmtx = tables["hmtx"], loca = tables["loca"], glyf = tables["glyf"];
        var metrics = U16(tables["hhea"] + 34);
        var longLoca = I16(tables["head"] + 50) != 0;
        int Offset(int glyph) => longLoca ? (int)U32(loca + 4 * glyph) : 2 * U16(loca + 2 * glyph);

        Glyph Read(int glyph)
        {
            var advance = U16(hmtx + 4 * Math.Min(glyph, metrics - 1));
            var at = Offset(glyph);
            return Offset(glyph + 1) == at ? new(advance, 0, 0) : new(advance, I16(glyf + at + 4), I16(glyf + at + 8));
        }

        var glyphs = new Dictionary<int, Glyph>();
        foreach (var (character, glyph) in ReadCharacters(tables["cmap"]))
        {
            glyphs[character] = Read(glyph);
        }

        return glyphs;
    }

    private IEnumerable<(int Character, int Glyph)> ReadCharacters(int cmap)
    {
        var table = Enumerable.Range(0, U16(cmap + 2))
            .Select(i => cmap + (int)U32(cmap + 4 + 8 * i + 4))
            .First(t => U16(t) == 4);
        var segments = U16(table + 6) / 2;
        int ends = table + 14, starts = ends + 2 * segments + 2, deltas = starts + 2 * segments, ranges = deltas + 2 * segments;
        for (var s = 0; s < segments; s++)
        {
            int end = U16(ends + 2 * s), start = U16(starts + 2 * s), delta = I16(deltas + 2 * s), range = U16(ranges + 2 * s);
            for (var c = start; c <= end && c != 0xFFFF; c++)
            {
                var glyph = range == 0 ? c : U16(ranges + 2 * s + range + 2 * (c - start));
                glyph = glyph == 0 ? 0 : (glyph + delta) & 0xFFFF;
                if (glyph != 0)
                {
                    yield return (c, glyph);
                }
            }
        }
    }

    private int U16(int at) => BinaryPrimitives.ReadUInt16BigEndian(File.AsSpan(at));

    private int I16(int at) => BinaryPrimitives.ReadInt16BigEndian(File.AsSpan(at));

    private uint U32(int at) => BinaryPrimitives.ReadUInt32BigEndian(File.AsSpan(at));

    private readonly record struct Glyph(double Advance, double Bottom, double Top);
}
