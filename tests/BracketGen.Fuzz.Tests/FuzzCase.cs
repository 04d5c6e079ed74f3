using BracketGen.Profiles.Interview;

namespace BracketGen.Fuzz.Tests;

/// <summary>The kinds of text that the program reads.</summary>
public enum InputKind
{
    /// <summary>A job's profile.</summary>
    Job,

    /// <summary>A throttle body's profile.</summary>
    ThrottleBody,

    /// <summary>A vehicle's profile.</summary>
    Vehicle,

    /// <summary>A shop's profile.</summary>
    Shop,

    /// <summary>A family's file.</summary>
    Family,

    /// <summary>The file of a bracket that is there already.</summary>
    Bracket,

    /// <summary>A list of parts at hand.</summary>
    Parts,

    /// <summary>A flat pattern in DXF that a bracket's file names.</summary>
    Drawing,

    /// <summary>The register of part numbers.</summary>
    Register,

    /// <summary>An order (CSV).</summary>
    Order,

    /// <summary>An order of a made line (TOML).</summary>
    LineOrder,

    /// <summary>An order of a made line (CSV).</summary>
    LineOrderCsv,

    /// <summary>What is kept of a made line (line.json).</summary>
    KeptLine,

    /// <summary>What is kept of a combination (made.json).</summary>
    Kept,

    /// <summary>Readings typed after fitting, one a line.</summary>
    Readings,

    /// <summary>Answers typed in an interview, one a line.</summary>
    Answers,

    /// <summary>The draft of an interview that ended early.</summary>
    Draft,
}

/// <summary>One hostile input.</summary>
/// <param name="Name">What to call it: a file of the corpus, or seed and number of a mutation.</param>
/// <param name="Kind">What it is read as.</param>
/// <param name="Path">Path in the tree of profiles; for the other kinds the seed's name.</param>
/// <param name="Bytes">The input.</param>
public sealed record FuzzCase(string Name, InputKind Kind, string Path, byte[] Bytes);
