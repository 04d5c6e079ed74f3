using System.Globalization;

namespace BracketGen.Words;

/// <summary>Counts with their noun: "1 part", "2 parts".</summary>
public static class Counted
{
    /// <summary>A count and its noun in the singular or plural.</summary>
    /// <param name="count">How many.</param>
    /// <param name="one">The noun in the singular.</param>
    /// <param name="many">The noun in the plural, if it is not formed with an s.</param>
    public static string Of(int count, string one, string? many = null) => $"{Number(count)} {(count == 1 ? one : many ?? one + "s")}";

    /// <summary>The count alone.</summary>
    public static string Number(int count) => count.ToString(CultureInfo.InvariantCulture);

    /// <summary>A verb that goes with a count: "is" or "are".</summary>
    public static string Verb(int count, string one, string many) => count == 1 ? one : many;
}
