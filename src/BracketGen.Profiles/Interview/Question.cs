namespace BracketGen.Profiles.Interview;

/// <summary>How an answer is written into a profile.</summary>
public enum AnswerForm
{
    /// <summary>A number, bare or with a unit.</summary>
    Quantity,

    /// <summary>The same, with "+/-" and its ±.</summary>
    Measured,

    /// <summary>Free text.</summary>
    Text,

    /// <summary>One of a few words.</summary>
    Word,

    /// <summary>Three numbers.</summary>
    Point,

    /// <summary>A direction: three numbers, two angles, or a word.</summary>
    Direction,

    /// <summary>One number or more.</summary>
    List,

    /// <summary>One text or more, with commas between.</summary>
    Texts,

    /// <summary>A number that only steers the questions and is not written.</summary>
    Count,
}

/// <summary>One question of the interview; BracketGen.Words asks it in a sentence.</summary>
/// <param name="Id">Which it is.</param>
/// <param name="Section">Header it is written under: empty for the top of the file, [cable], [[mount.holes]] 2.</param>
/// <param name="Key">Key it is written as.</param>
/// <param name="Form">How.</param>
/// <param name="Default">What an empty answer means; null where an answer is wanted, empty where the key is then left out.</param>
/// <param name="Words">The words allowed, for <see cref="AnswerForm.Word"/>.</param>
public sealed record Question(QuestionId Id, string Section, string Key, AnswerForm Form, string? Default = null, params string[] Words)
{
    /// <summary>Name among the answers.</summary>
    public string Name => $"{Section} {Key}";

    /// <summary>Number of the hole or keep-out that is asked for, from 1; 0 where there is one only.</summary>
    public int Item { get; init; }

    /// <summary>Name of what is asked about, where it has one: a cable, a material. Empty otherwise.</summary>
    public string About { get; init; } = "";

    /// <summary>Whether any other text is an answer as well, for <see cref="AnswerForm.Word"/>.</summary>
    public bool TakesOther { get; init; }

    /// <summary>A line of the profile that goes before the answer, where there is one; empty otherwise.</summary>
    public string Before { get; init; } = "";

    /// <summary>Whether one ± for all three numbers may follow, for <see cref="AnswerForm.Point"/>; it is written as plus_minus.</summary>
    public bool TakesPlusMinus { get; init; }

    /// <summary>Whether it is part of a table that is looked at as a whole, when its last row is there.</summary>
    public bool IsOfTable { get; init; }

    /// <summary>The key with the tables it stands in, as mistakes name it: mount.holes[2].at.</summary>
    public string Path
    {
        get
        {
            var (header, number) = Section.IndexOf(' ') is > 0 and var gap ? (Section[..gap], Section[(gap + 1)..]) : (Section, "");
            var tables = header.Trim('[', ']') + (header.StartsWith("[[", StringComparison.Ordinal) ? $"[{number}]" : "");
            return tables.Length == 0 ? Key : $"{tables}.{Key}";
        }
    }

    /// <summary>Smallest answer, for <see cref="AnswerForm.Count"/>.</summary>
    public int Min { get; init; }

    /// <summary>Largest answer, for <see cref="AnswerForm.Count"/>.</summary>
    public int Max { get; init; } = 12;
}
