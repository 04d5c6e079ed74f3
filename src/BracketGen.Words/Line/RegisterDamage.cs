namespace BracketGen.Words.Line;

/// <summary>Why a register cannot be used.</summary>
/// <param name="Line">Line of the file, from 1; null if the damage is not in one line.</param>
public abstract record RegisterDamage(int? Line)
{
    /// <summary>The system cannot read the file.</summary>
    public sealed record Unread(string Problem) : RegisterDamage((int?)null);

    /// <summary>The file is not text.</summary>
    public sealed record NotText() : RegisterDamage((int?)null);

    /// <summary>The file ends within a line.</summary>
    public sealed record CutShort() : RegisterDamage((int?)null);

    /// <summary>The first line is not the head of a register.</summary>
    public sealed record NoHead() : RegisterDamage(1);

    /// <summary>A line is not one JSON value of the register.</summary>
    public sealed record NotJson(int At) : RegisterDamage(At);

    /// <summary>A line is neither a source nor a revision.</summary>
    public sealed record UnknownLine(int At) : RegisterDamage(At);

    /// <summary>A variant has two part numbers.</summary>
    public sealed record SecondNumber(int At, string Variant, string PartNumber, string Before) : RegisterDamage(At);

    /// <summary>A revision is given out twice.</summary>
    public sealed record SecondTime(int At, string PartNumber, string Revision) : RegisterDamage(At);

    /// <summary>The damage, to follow "the register is damaged: ".</summary>
    public string Text => (Line is { } line ? $"line {Counted.Number(line)}: " : "") + this switch
    {
        Unread d => d.Problem,
        NotText => "it is not text in UTF-8",
        CutShort => "its last line has no end, so part of it is missing",
        NoHead => "it is not the head of a register that this version of the program writes",
        NotJson => "it cannot be read",
        UnknownLine => "it is neither a source nor a revision",
        SecondNumber d => $"{d.Variant} gets the number {d.PartNumber}, but already has the number {d.Before}",
        SecondTime d => $"{d.PartNumber} revision {d.Revision} is given out a second time",
        _ => throw new InvalidOperationException("A damage of an unknown kind."),
    };
}
