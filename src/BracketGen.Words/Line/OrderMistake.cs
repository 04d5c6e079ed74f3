namespace BracketGen.Words.Line;

/// <summary>A mistake in an order.</summary>
/// <param name="Line">Line of the file, from 1.</param>
public abstract record OrderMistake(int Line)
{
    /// <summary>The first line does not name the columns.</summary>
    public sealed record NoColumns(string Read) : OrderMistake(1);

    /// <summary>A line is too short.</summary>
    public sealed record MissingColumn(int At) : OrderMistake(At);

    /// <summary>The line does not make such a part.</summary>
    public sealed record UnknownPart(int At, string PartNumber) : OrderMistake(At);

    /// <summary>A quantity is not a whole number in the range.</summary>
    public sealed record BadQuantity(int At, string Read, int Max) : OrderMistake(At);

    /// <summary>All quantities together are too many.</summary>
    public sealed record TooMany(int At, int Max) : OrderMistake(At);

    /// <summary>The mistake: where, what was read, what is allowed.</summary>
    public string Text => $"line {Counted.Number(Line)}: " + this switch
    {
        NoColumns m => $"read \"{m.Read}\"; the first line names the columns part_number and quantity",
        MissingColumn => "a column is missing",
        UnknownPart m => $"{m.PartNumber} is no part that the line makes; if a variant uses a shared part, order the shared part's number",
        BadQuantity m => $"\"{m.Read}\" is not a quantity from 1 to {Counted.Number(m.Max)}",
        TooMany m => $"with this line the order exceeds {Counted.Number(m.Max)} pieces; split it into several files",
        _ => throw new InvalidOperationException("A mistake of an unknown kind."),
    };
}
