using BracketGen.Profiles.Family;

namespace BracketGen.Words.Line;

/// <summary>Why a line of an order cannot be used.</summary>
/// <param name="Line">Line of the file, from 1.</param>
public abstract record OrderProblem(int Line)
{
    /// <summary>The file is not text.</summary>
    public sealed record NotText() : OrderProblem(1);

    /// <summary>The first line does not name the columns.</summary>
    public sealed record NoColumns(string Read) : OrderProblem(1);

    /// <summary>The first line names a column twice, or one that does not exist.</summary>
    public sealed record BadColumn(string Read) : OrderProblem(1);

    /// <summary>There is no line with an item.</summary>
    public sealed record Nothing() : OrderProblem(1);

    /// <summary>A quoted cell has no end.</summary>
    public sealed record OpenQuote(int At) : OrderProblem(At);

    /// <summary>A line has another number of cells than the first.</summary>
    public sealed record OtherCells(int At, int Read, int Wanted) : OrderProblem(At);

    /// <summary>A line names no product, or several.</summary>
    public sealed record NotOneName(int At, int Read) : OrderProblem(At);

    /// <summary>A quantity is not a whole number in the range.</summary>
    public sealed record BadQuantity(int At, string Read, int Max) : OrderProblem(At);

    /// <summary>Units are not known.</summary>
    public sealed record BadUnits(int At, string Read) : OrderProblem(At);

    /// <summary>A cell is too long, or has a control character in it.</summary>
    public sealed record BadText(int At, string Read, int Max) : OrderProblem(At);

    /// <summary>More lines than an order may have.</summary>
    public sealed record ManyLines(int At, int Max) : OrderProblem(At);

    /// <summary>All quantities together are too many.</summary>
    public sealed record ManyPieces(int At, int Max) : OrderProblem(At);

    /// <summary>The line does not have the product.</summary>
    public sealed record Unknown(int At, OrderedBy By, string Read, string? Near) : OrderProblem(At);

    /// <summary>A part number that belongs to a variant which another part serves.</summary>
    public sealed record NotMade(int At, string Read, string ServedBy) : OrderProblem(At);

    /// <summary>The variant has no bracket.</summary>
    public sealed record NoBracket(int At, string Read, string Variant) : OrderProblem(At);

    /// <summary>The family does not sell the variant.</summary>
    public sealed record NotSold(int At, string Read, string Variant, string Reason) : OrderProblem(At);

    /// <summary>The files changed since the line was made.</summary>
    public sealed record Changed(int At, string Read, string Variant) : OrderProblem(At);

    private const string Columns = "part_number, variant or catalogue_number (at least one of them), quantity, and, if you like, customer_reference and units";

    /// <summary>The problem: where, what was read, what is allowed.</summary>
    public string Text => $"line {Counted.Number(Line)}: " + this switch
    {
        NotText => "the file is not text in UTF-8; save it as CSV in UTF-8",
        NoColumns p => $"read \"{Short(p.Read)}\"; the first line names the columns: {Columns}",
        BadColumn p => $"read the column \"{Short(p.Read)}\", which is there twice or is not known; the columns are {Columns}",
        Nothing => "nothing is ordered; write a line for each product",
        OpenQuote => "a quotation mark has no second one; close it",
        OtherCells p => $"read {Counted.Of(p.Read, "cell")}; the first line has {Counted.Number(p.Wanted)}",
        NotOneName p => $"read {Counted.Of(p.Read, "name")} of a product; write one of part_number, variant and catalogue_number",
        BadQuantity p => $"read \"{Short(p.Read)}\"; quantity is a whole number from 1 to {Counted.Number(p.Max)}",
        BadUnits p => $"read \"{Short(p.Read)}\"; units are mm or in",
        BadText p => $"read \"{Short(p.Read)}\"; at most {Counted.Number(p.Max)} letters without control characters are allowed",
        ManyLines p => $"an order has at most {Counted.Number(p.Max)} lines; split it into several files",
        ManyPieces p => $"with this line the order exceeds {Counted.Number(p.Max)} pieces; split it into several files",
        Unknown p => $"read {Name(p.By)} \"{Short(p.Read)}\", which the line does not have{(p.Near is { } near ? $"; do you mean \"{near}\"?" : $"; {Where(p.By)} has all of them")}",
        NotMade p => $"the part {Short(p.Read)} is not made: {p.ServedBy} serves its variant. Write {p.ServedBy}, or write {Short(p.Read)} as catalogue_number",
        NoBracket p => $"{Short(p.Read)}: the variant {p.Variant} has no bracket; fits.csv of the line gives the reasons",
        NotSold p => $"{Short(p.Read)}: the variant {p.Variant} is not sold: {p.Reason}",
        Changed p => $"{Short(p.Read)}: the files or the program changed since the variant {p.Variant} was made; make the line again",
        _ => throw new InvalidOperationException("A problem of an unknown kind."),
    };

    private static string Name(OrderedBy by) => by switch
    {
        OrderedBy.Part => "the part number",
        OrderedBy.Variant => "the variant",
        _ => "the catalogue number",
    };

    private static string Where(OrderedBy by) => by == OrderedBy.Variant ? "fits.csv of the line" : by == OrderedBy.Part ? "parts.csv of the line" : "the register of the line";

    // A cell may be as long as the file.
    private static string Short(string text) =>
        new([.. (text.Length > 60 ? text[..60] + "..." : text).Select(c => char.IsControl(c) ? ' ' : c)]);
}
