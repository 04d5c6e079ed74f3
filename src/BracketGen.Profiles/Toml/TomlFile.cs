using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using Tomlyn;
using Tomlyn.Parsing;
using Tomlyn.Syntax;

namespace BracketGen.Profiles.Toml;

/// <summary>From the bytes of a file to its tree of values.</summary>
internal static partial class TomlFile
{
    /// <summary>Longest profile accepted (bytes): a hundred times more than any real one.</summary>
    public const int Most = 1 << 20;

    private const int MostBrokenLines = 50;
    private const int MostSentence = 240;

    // The parser takes time by the square of what stands in one line; the longest that means something are a tenth of this.
    private const int MostInLine = 8000;
    private const string AllowedSyntax = "TOML: [table] headers and «key = value» lines";

    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>The file's root table, or null where an error was reported that leaves nothing to read.</summary>
    public static TomlTable? Read(string path, ReadOnlyMemory<byte> bytes, Reading reading)
    {
        var text = Decode(path, bytes, reading);
        return text is null ? null : Parse(path, text, reading);
    }

    private static string? Decode(string path, ReadOnlyMemory<byte> bytes, Reading reading)
    {
        try
        {
            var text = Strict.GetString(bytes.Span);
            return text.StartsWith('\uFEFF') ? text[1..] : text;
        }
        catch (DecoderFallbackException e)
        {
            var before = bytes.Span[..Math.Clamp(e.Index, 0, bytes.Length)];
            var line = before.Count((byte)'\n') + 1;
            var column = Encoding.UTF8.GetString(before[(before.LastIndexOf((byte)'\n') + 1)..]).EnumerateRunes().Count() + 1;
            var read = e.BytesUnknown is { Length: > 0 } unknown ? $"byte 0x{unknown[0]:X2}" : "a byte that is not UTF-8";
            reading.Report(new(path, line, column), "", read, "text in UTF-8", "Save the file as UTF-8 in the editor.");
            return null;
        }
    }

    /// <summary>The root table of a text that is TOML throughout; null, with what is wrong reported, where it is none.</summary>
    public static TomlTable? Parse(string path, string text, Reading reading)
    {
        // A broken line must not hide the errors of all the others: it is reported, emptied, and the rest is parsed again.
        var lines = text.Split('\n');
        if (Array.FindIndex(lines, l => l.Length > MostInLine) is >= 0 and var tooLong)
        {
            reading.Report(
                new(path, tooLong + 1, 1), "", Line(lines, tooLong).ToString(), $"lines of at most {MostInLine} letters",
                "This is hardly a profile: check the path, or write lists over several lines.");
            return null;
        }

        var isCut = false;
        for (var attempt = 0; attempt < MostBrokenLines; attempt++)
        {
            DocumentSyntax document;
            try
            {
                document = SyntaxParser.Parse(text, path, validate: false);
            }
            catch (TomlException e)
            {
                var at = e.Line is { } l && e.Column is { } c ? new Place(path, l, c) : new Place(path, 1, 1);
                reading.Report(at, "", Line(lines, at.Line - 1).ToString(), AllowedSyntax, Sentence(e.Message));
                return null;
            }

            catch (ArgumentException)
            {
                // The parser takes an escape for half a pair of letters at its word, and cannot hold it.
                var bad = Math.Max(0, Array.FindIndex(lines, l => HalfLetter().IsMatch(l)));
                reading.Report(new(path, bad + 1, 1), "", Line(lines, bad).ToString(), AllowedSyntax, "An escape such as \\uD800 stands for no letter: write the letter itself.");
                return null;
            }

            if (document.Diagnostics.Where(d => d.Kind == DiagnosticMessageKind.Error).MinBy(d => (d.Span.Start.Line, d.Span.Start.Column)) is not { } first)
            {
                var root = new TreeBuilder(path, text, reading).Build(document);
                if (root is not null && attempt == 0 && reading.Errors.All(e => e.File != path))
                {
                    ReportLeftovers(path, lines, text, reading);
                }

                return root;
            }

            var number = first.Span.Start.Line;
            var line = number < lines.Length ? lines[number] : "";
            var key = KeyStart().Match(line);
            var isFirstHere = !reading.IsHushed(path, number + 1);
            if (isCut)
            {
                return null;
            }

            if (isFirstHere)
            {
                reading.Report(
                    new(path, number + 1, first.Span.Start.Column + 1),
                    key.Success ? key.Groups["key"].Value : "",
                    Line(lines, number).ToString(),
                    AllowedSyntax,
                    AdviceFor(line, first.Message));
                reading.Hush(path, number + 1);
            }

            if (isFirstHere && key.Success)
            {
                lines[number] = key.Value + " \"\"";
            }
            else if (isFirstHere && line.TrimStart().StartsWith('['))
            {
                // What stands under the header goes to a table that nobody asks for.
                reading.SetPartial(path);
                lines[number] = string.Create(CultureInfo.InvariantCulture, $"[\"broken {number}\"]");
            }
            else
            {
                // No telling where this one ends: what stands before it is still read.
                reading.SetPartial(path);
                isCut = true;
                lines = lines[..Math.Min(number, lines.Length)];
            }

            text = string.Join('\n', lines);
        }

        return null;
    }

    // The tree builder reports what people do; the parser's own validation knows the rarer corners of the format.
    private static void ReportLeftovers(string path, string[] lines, string text, Reading reading)
    {
        foreach (var d in SyntaxParser.Parse(text, path, validate: true).Diagnostics.Where(d => d.Kind == DiagnosticMessageKind.Error))
        {
            var start = d.Span.Start;
            reading.Report(new(path, start.Line + 1, start.Column + 1), "", Line(lines, start.Line).ToString(), AllowedSyntax, Sentence(d.Message));
        }
    }

    private static Excerpt Line(string[] lines, int number)
    {
        var line = number >= 0 && number < lines.Length ? lines[number].Trim() : "";
        return line.Length > 0 ? new(line, 0, line.Length) : new("the end of the file", 0, 19);
    }

    private static string AdviceFor(string line, string message) =>
        UnquotedUnit().Match(line) is { Success: true } unit ? $"Put a value with its unit in quotes: \"{unit.Groups["value"].Value.Trim()}\"."
        : DecimalComma().IsMatch(line) ? "Write the decimal sign as a point."
        : UnquotedWord().Match(line) is { Success: true } word ? $"Put words in quotes: \"{word.Groups["value"].Value.Trim()}\"."
        : line.TrimStart().StartsWith('[') ? "Write a header as [name], or as [[name]] where there may be several."
        : Sentence(message) + " See also that brackets, braces and quotes are closed on this line and the one before.";

    // The parser may quote what it read, however long that is.
    private static string Sentence(string message) =>
        message.Length > MostSentence ? message[..MostSentence] + "…" : message.EndsWith('.') ? message : message + ".";

    [GeneratedRegex(@"^[ \t]*(?<key>[A-Za-z0-9_.-]+)[ \t]*=", RegexOptions.CultureInvariant)]
    private static partial Regex KeyStart();

    [GeneratedRegex(@"=[ \t]*(?<value>[+-]?[0-9][0-9.]*[ \t]*[A-Za-z°][A-Za-z0-9·/ ]*?)[ \t]*(#.*)?\r?$", RegexOptions.CultureInvariant)]
    private static partial Regex UnquotedUnit();

    [GeneratedRegex(@"\\u[dD][89a-fA-F]|\\U(?!000|0010)|\\U0000[dD][89a-fA-F]", RegexOptions.CultureInvariant)]
    private static partial Regex HalfLetter();

    [GeneratedRegex(@"=[ \t]*[+-]?[0-9]+,[0-9]", RegexOptions.CultureInvariant)]
    private static partial Regex DecimalComma();

    [GeneratedRegex(@"=[ \t]*(?<value>[A-Za-z][A-Za-z0-9 -]*?)[ \t]*(#.*)?\r?$", RegexOptions.CultureInvariant)]
    private static partial Regex UnquotedWord();
}
