using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using BracketGen.Profiles.Errors;
using Tomlyn;
using Tomlyn.Parsing;
using Tomlyn.Syntax;

namespace BracketGen.Profiles.Toml;

/// <summary>From the bytes of a file to its tree of values.</summary>
internal static partial class TomlFile
{
    /// <summary>Maximum length of a profile (bytes): a hundred times more than any real one.</summary>
    public const int MaxBytes = 1 << 20;

    private const int MaxBrokenLines = 50;
    private const int MaxSentence = 240;

    // The parser takes time by the square of what stands in one line; the longest that means something are a tenth of this.
    private const int MaxInLine = 8000;

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
            reading.Report(new(path, line, column), "", e.BytesUnknown is { Length: > 0 } unknown ? $"0x{unknown[0]:X2}" : "", new NotToml(SyntaxMistake.NotUtf8, ""));
            return null;
        }
    }

    /// <summary>The root table of a text; null, with what is wrong reported, where nothing of it can be read.</summary>
    public static TomlTable? Parse(string path, string text, Reading reading)
    {
        // A broken line must not hide the errors of all the others: it is reported, emptied, and the rest is parsed again.
        var source = new Source(path, text.Split('\n'), reading);
        if (Array.FindIndex(source.Lines, l => l.Length > MaxInLine) is >= 0 and var tooLong)
        {
            source.Report(tooLong, 0, "", SyntaxMistake.LongLine, MaxInLine.ToString(CultureInfo.InvariantCulture));
            return null;
        }

        for (var attempt = 0; attempt < MaxBrokenLines; attempt++)
        {
            if (source.Document() is not { } document)
            {
                return null;
            }

            if (document.Diagnostics.Where(d => d.Kind == DiagnosticMessageKind.Error).MinBy(d => (d.Span.Start.Line, d.Span.Start.Column)) is not { } first)
            {
                var root = new TreeBuilder(path, source.Text, reading).Build(document);
                if (attempt == 0 && reading.IsClean(path))
                {
                    source.ReportLeftovers();
                }

                return root;
            }

            if (!source.TakeOut(first))
            {
                return null;
            }
        }

        return null;
    }

    // The text as far as it is still to be parsed, line by line.
    private sealed class Source(string path, string[] lines, Reading reading)
    {
        private bool _isCut;

        public string[] Lines { get; private set; } = lines;

        public string Text { get; private set; } = string.Join('\n', lines);

        public void Report(int line, int column, string key, SyntaxMistake mistake, string detail) =>
            reading.Report(new(path, line + 1, column + 1), key, Line(line), new NotToml(mistake, detail));

        /// <summary>The parsed text; null, reported, where the parser gives up.</summary>
        public DocumentSyntax? Document()
        {
            try
            {
                return SyntaxParser.Parse(Text, path, validate: false);
            }
            catch (TomlException e)
            {
                Report((e.Line ?? 1) - 1, e.Line is null ? 0 : (e.Column ?? 1) - 1, "", SyntaxMistake.Other, Sentence(e.Message));
            }
            catch (ArgumentException)
            {
                // The parser takes an escape for half a pair of letters at its word, and cannot hold it.
                Report(Math.Max(0, Array.FindIndex(Lines, l => HalfLetter().IsMatch(l))), 0, "", SyntaxMistake.HalfLetter, "");
            }

            return null;
        }

        // The tree builder reports what people do; the parser's own validation knows the rarer corners of the format.
        public void ReportLeftovers()
        {
            foreach (var d in SyntaxParser.Parse(Text, path, validate: true).Diagnostics.Where(d => d.Kind == DiagnosticMessageKind.Error))
            {
                Report(d.Span.Start.Line, d.Span.Start.Column, "", SyntaxMistake.Other, Sentence(d.Message));
            }
        }

        /// <summary>Reports a broken line and takes it out; false where no more can be read.</summary>
        public bool TakeOut(DiagnosticMessage broken)
        {
            var number = broken.Span.Start.Line;
            var line = number < Lines.Length ? Lines[number] : "";
            var key = KeyStart().Match(line);
            var isFirstHere = !reading.IsHushed(path, number + 1);
            if (_isCut)
            {
                return false;
            }

            if (isFirstHere)
            {
                var (mistake, detail) = MistakeIn(line, broken.Message);
                Report(number, broken.Span.Start.Column, key.Success ? key.Groups["key"].Value : "", mistake, detail);
                reading.Hush(path, number + 1);
            }

            if (isFirstHere && key.Success)
            {
                Lines[number] = key.Value + " \"\"";
            }
            else if (isFirstHere && line.TrimStart().StartsWith('['))
            {
                // What stands under the header goes to a table that nobody asks for.
                reading.SetPartial(path);
                Lines[number] = string.Create(CultureInfo.InvariantCulture, $"[\"broken {number}\"]");
            }
            else
            {
                // No telling where this one ends: what comes before it is still read.
                reading.SetPartial(path);
                _isCut = true;
                Lines = Lines[..Math.Min(number, Lines.Length)];
            }

            Text = string.Join('\n', Lines);
            return true;
        }

        // Shortened; empty past the end of the file.
        private string Line(int number)
        {
            var line = number >= 0 && number < Lines.Length ? Lines[number].Trim() : "";
            return new Excerpt(line, 0, line.Length).ToString();
        }
    }

    private static (SyntaxMistake Mistake, string Detail) MistakeIn(string line, string message) =>
        UnquotedUnit().Match(line) is { Success: true } unit ? (SyntaxMistake.UnquotedUnit, unit.Groups["value"].Value.Trim())
        : DecimalComma().IsMatch(line) ? (SyntaxMistake.DecimalComma, "")
        : UnquotedWord().Match(line) is { Success: true } word ? (SyntaxMistake.UnquotedWord, word.Groups["value"].Value.Trim())
        : line.TrimStart().StartsWith('[') ? (SyntaxMistake.Header, "")
        : (SyntaxMistake.Line, Sentence(message));

    // The parser may quote what it read, however long that is.
    private static string Sentence(string message) =>
        message.Length > MaxSentence ? message[..MaxSentence] + "…" : message.EndsWith('.') ? message : message + ".";

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
