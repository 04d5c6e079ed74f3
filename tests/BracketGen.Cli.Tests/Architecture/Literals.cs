using System.Text.RegularExpressions;

namespace BracketGen.Cli.Tests.Architecture;

/// <summary>The text between quotation marks in a source file.</summary>
internal static partial class Literals
{
    // Names, units and designations are shorter.
    private const int MostWords = 4;

    /// <summary>Literals of more than four words, with their line: sentences. What a failed precondition or exception says does not count.</summary>
    public static IEnumerable<(int Line, string Text)> Sentences(string source)
    {
        var code = Comment().Replace(source, "");
        return Literal().Matches(code)
            .Where(m => Word().Count(Hole().Replace(m.Value, " ")) > MostWords && !ForProgrammers(code, m.Index))
            .Select(m => (code.AsSpan(0, m.Index).Count('\n') + 1, m.Value));
    }

    // Between the end of the statement before and the literal.
    private static bool ForProgrammers(string code, int at)
    {
        var start = code.AsSpan(0, at).LastIndexOfAny(';', '{', '}') + 1;
        return Thrown().IsMatch(code.AsSpan(start, at - start));
    }

    // Line breaks stay, for the count of lines.
    [GeneratedRegex("""^[ \t]*//.*$""", RegexOptions.Multiline)]
    private static partial Regex Comment();

    [GeneratedRegex("\"\"\"[^\"].*?\"\"\"|\"(?:[^\"\\\\\\n]|\\\\.)*\"", RegexOptions.Singleline)]
    private static partial Regex Literal();

    [GeneratedRegex("""\{[^}]*\}""")]
    private static partial Regex Hole();

    [GeneratedRegex("[A-Za-z][A-Za-z'’-]+")]
    private static partial Regex Word();

    [GeneratedRegex("""Exception\(|: base\(|ThrowIf""")]
    private static partial Regex Thrown();
}
