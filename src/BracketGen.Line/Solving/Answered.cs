using BracketGen.Design.Part;
using BracketGen.Design.Study;
using BracketGen.Line.Combinations;

namespace BracketGen.Line.Solving;

/// <summary>What a combination comes to before it has a number: numbers are given in order, and only to what has a part.</summary>
/// <param name="Combination">The combination.</param>
public sealed record Answered(Combination Combination)
{
    /// <summary>What an earlier run made of it, where that still holds; else the rest says what is to be made.</summary>
    public Made? Kept { get; init; }

    /// <summary>How it ends.</summary>
    public Outcome Outcome { get; init; }

    /// <summary>Why it has no part in the line, a line each.</summary>
    public string[] Reasons { get; init; } = [];

    /// <summary>The job solved; null where it could not be.</summary>
    public Solution? Solution { get; init; }

    /// <summary>The part; null where there is none.</summary>
    public Bracket? Bracket { get; init; }

    /// <summary>Its fingerprint: the register's where it is the part given out; null where there is none.</summary>
    public string? Fingerprint { get; init; }

    /// <summary>The revision given out before, where it does not serve any more.</summary>
    public Outdated? Before { get; init; }

    /// <summary>What would be different if the part were drawn anew.</summary>
    public string[]? Redraw { get; init; }

    /// <summary>Whether it has a part.</summary>
    public bool HasPart => Kept?.HasPart ?? Bracket is not null;
}
