using System.Text.RegularExpressions;

namespace BracketGen.Cli.Tests;

/// <summary>What the program prints, read as a person reads it.</summary>
internal static class ScreenText
{
    /// <summary>The words with one space between them: a sentence that was wrapped is whole again.</summary>
    public static string OneLine(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    /// <summary>Asserts that the verdict stands above everything but the heading, and is said again at the end, and that there is no third.</summary>
    /// <param name="screen">What was printed.</param>
    /// <param name="banner">The verdict in capitals.</param>
    public static void HasVerdict(string screen, string banner)
    {
        var verdict = $"  Verdict: {banner}";
        var paragraphs = screen.TrimEnd('\n').Split("\n\n");
        Assert.StartsWith(verdict, screen.Split('\n')[1], StringComparison.Ordinal);
        Assert.StartsWith(verdict, paragraphs[^1], StringComparison.Ordinal);
        Assert.Equal(2, screen.Split("Verdict: ").Length - 1);
    }

    /// <summary>Asserts that the table of checks has a row with this mark and code.</summary>
    public static void HasRow(string screen, string mark, string code) =>
        Assert.Matches($"(?m)^  {Regex.Escape(mark)} +{Regex.Escape(code)} ", screen);
}
