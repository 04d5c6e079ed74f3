using System.Collections.Immutable;
using System.Globalization;

namespace BracketGen.Line.Lists;

/// <summary>A cell of a list: a text, or a number.</summary>
/// <param name="Text">As text.</param>
/// <param name="Number">As a number; null where it is none.</param>
public readonly record struct ListCell(string Text, double? Number)
{
    /// <summary>A text.</summary>
    public static implicit operator ListCell(string text) => new(text, null);

    /// <summary>A whole number.</summary>
    public static implicit operator ListCell(int number) => new(number.ToString(CultureInfo.InvariantCulture), number);

    /// <summary>A number rounded to some digits after the point.</summary>
    public static ListCell Of(double number, int digits)
    {
        var rounded = Math.Round(number, digits, MidpointRounding.AwayFromZero) + 0.0;
        return new(rounded.ToString(CultureInfo.InvariantCulture), rounded);
    }
}

/// <summary>A list for the shop's own systems.</summary>
/// <param name="Name">Its name, at most 31 letters.</param>
/// <param name="Columns">Names of the columns: letters a to z, digits and underscores.</param>
/// <param name="Rows">The rows.</param>
public sealed record ListTable(string Name, ImmutableArray<string> Columns, ImmutableArray<ImmutableArray<ListCell>> Rows);
