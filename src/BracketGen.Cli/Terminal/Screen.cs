using System.Text;

namespace BracketGen.Cli.Terminal;

/// <summary>What stands out on a terminal.</summary>
internal enum Tone
{
    /// <summary>Plain text.</summary>
    Plain,

    /// <summary>Unsafe or failed.</summary>
    Bad,

    /// <summary>Not known, or to do.</summary>
    Open,

    /// <summary>As it should be.</summary>
    Good,

    /// <summary>A heading.</summary>
    Strong,
}

/// <summary>A terminal or a file: its width, and whether it takes colour.</summary>
/// <remarks>Colour only on a terminal that is not told otherwise by NO_COLOR (no-color.org). What is piped is plain and 100 columns wide.</remarks>
internal sealed class Screen(TextWriter output, int width, bool hasColour)
{
    /// <summary>Columns for a window narrower than this are not narrowed further.</summary>
    public const int MinWidth = 80;

    /// <summary>Lines longer than this are hard to read, however wide the window is.</summary>
    private const int MaxWidth = 120;

    /// <summary>Width of what is piped.</summary>
    private const int PipedWidth = 100;

    private const string Indent = "  ";

    /// <summary>Width in columns.</summary>
    public int Width => width;

    /// <summary>Standard output as it is.</summary>
    public static Screen OfConsole()
    {
        var isTerminal = !Console.IsOutputRedirected;
        return new(
            Console.Out,
            isTerminal ? Math.Clamp(WindowWidth(), MinWidth, MaxWidth) : PipedWidth,
            isTerminal && string.IsNullOrEmpty(Environment.GetEnvironmentVariable("NO_COLOR")));
    }

    /// <summary>An empty line.</summary>
    public void Line() => output.WriteLine();

    /// <summary>Lines as they are.</summary>
    /// <param name="lines">Makes them, with colours or without.</param>
    public void Picture(Func<bool, IReadOnlyList<string>> lines)
    {
        foreach (var line in lines(hasColour))
        {
            output.WriteLine(line);
        }
    }

    /// <summary>A paragraph, wrapped; further lines stand <paramref name="hang"/> columns farther in.</summary>
    public void Paragraph(string text, Tone ink = Tone.Plain, int hang = 0)
    {
        var first = true;
        foreach (var line in Wrap(text, width - Indent.Length, hang))
        {
            output.WriteLine(Indent + (first ? "" : new string(' ', hang)) + Coloured(line, ink));
            first = false;
        }
    }

    /// <summary>Columns as wide as their widest cell; the last takes what is left and is wrapped.</summary>
    /// <param name="rows">Rows of cells.</param>
    /// <param name="ink">Tone of a row's first cell; null for plain.</param>
    public void Table(IReadOnlyList<string[]> rows, Func<int, Tone>? ink = null)
    {
        if (rows.Count == 0)
        {
            return;
        }

        var last = rows.Max(r => r.Length) - 1;
        var widths = Enumerable.Range(0, last).Select(i => rows.Max(r => i < r.Length ? r[i].Length : 0)).ToArray();
        var left = Indent.Length + widths.Sum() + 2 * last;
        for (var number = 0; number < rows.Count; number++)
        {
            var row = rows[number];
            var line = new StringBuilder(Indent);
            for (var i = 0; i < last; i++)
            {
                var cell = i < row.Length ? row[i] : "";
                line.Append(i == 0 && ink is not null ? Coloured(cell, ink(number)) : cell).Append(' ', widths[i] - cell.Length + 2);
            }

            var tail = row.Length > last ? row[last] : "";
            var wrapped = Wrap(tail, Math.Max(MinTail, width - left), 0).ToList();
            output.WriteLine((line + wrapped[0]).TrimEnd());
            foreach (var more in wrapped.Skip(1))
            {
                output.WriteLine(new string(' ', left) + more);
            }
        }
    }

    // A last column narrower than this reads worse than a line that is too long.
    private const int MinTail = 16;

    private static int WindowWidth()
    {
        try
        {
            return Console.WindowWidth;
        }
        catch (Exception problem) when (problem is IOException or PlatformNotSupportedException)
        {
            return MinWidth;
        }
    }

    private static IEnumerable<string> Wrap(string text, int columns, int hang)
    {
        var rest = text;
        for (var room = columns; ; room = columns - hang)
        {
            if (rest.Length <= room)
            {
                yield return rest;
                yield break;
            }

            var cut = rest.LastIndexOf(' ', room);
            if (cut <= 0)
            {
                cut = rest.IndexOf(' ', room);
                if (cut < 0)
                {
                    yield return rest;
                    yield break;
                }
            }

            yield return rest[..cut];
            rest = rest[(cut + 1)..];
        }
    }

    private string Coloured(string text, Tone ink) => !hasColour || text.Length == 0 || ink == Tone.Plain
        ? text
        : $"\u001b[{ink switch { Tone.Bad => "1;31", Tone.Open => "33", Tone.Good => "32", _ => "1" }}m{text}\u001b[0m";
}
