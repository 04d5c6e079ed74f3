using System.Globalization;

namespace BracketGen.Words;

/// <summary>Small pieces that many sentences are made of.</summary>
public static class Phrases
{
    /// <summary>"A", "A and B", "A, B and C".</summary>
    public static string List(IReadOnlyList<string> names) => names.Count < 2 ? names[0] : $"{string.Join(", ", names.SkipLast(1))} and {names[^1]}";

    /// <summary>The same text on one line: its blanks are no-break blanks. A number and its unit stay together.</summary>
    public static string Tied(string text) => text.Replace(' ', '\u00A0');

    /// <summary>A whole number with its thousands parted: "8,192".</summary>
    public static string Count(int number) => number.ToString("#,0", CultureInfo.InvariantCulture);

    /// <summary>A plain number with two decimals at most.</summary>
    public static string Plain(double number) => number.ToString("0.##", CultureInfo.InvariantCulture);

    /// <summary>A date as ISO 8601 writes it.</summary>
    public static string Date(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    /// <summary>The text with a capital letter at its head.</summary>
    public static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
