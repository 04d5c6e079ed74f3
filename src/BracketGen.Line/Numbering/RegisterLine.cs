using System.Text.Json.Serialization;
using BracketGen.Line.Parts;

namespace BracketGen.Line.Numbering;

/// <summary>One line of the register: its head, a source, a revision of a part, which part serves a variant, or a recall.</summary>
/// <remarks>Which of them it is, the one name tells that is filled first.</remarks>
internal sealed record RegisterLine
{
    /// <summary>Head: name of the family.</summary>
    public string? Register { get; init; }

    /// <summary>Head: version of the layout.</summary>
    public int? Version { get; init; }

    /// <summary>Source: its hash.</summary>
    public string? Source { get; init; }

    /// <summary>Source: what it is called.</summary>
    public string? Called { get; init; }

    /// <summary>Source: what it says, by key; revision: what the part is, by label.</summary>
    public Dictionary<string, string>? Facts { get; init; }

    /// <summary>Revision: part number.</summary>
    public string? Part { get; init; }

    /// <summary>Revision: which.</summary>
    public string? Revision { get; init; }

    /// <summary>Revision: key of the combination.</summary>
    public string? Combination { get; init; }

    /// <summary>Revision: names of the combination, codes' meanings.</summary>
    public string? Names { get; init; }

    /// <summary>Revision: running number, where the rule has one.</summary>
    public int? Serial { get; init; }

    /// <summary>Revision: fingerprint of the part.</summary>
    public string? Fingerprint { get; init; }

    /// <summary>Revision: hashes of its sources.</summary>
    public string[]? Sources { get; init; }

    /// <summary>Revision: what is different from the one before; empty for the first.</summary>
    public string[]? Differences { get; init; }

    /// <summary>Revision: the part itself.</summary>
    public PartShape? Shape { get; init; }

    /// <summary>Service: key of the combination that is served.</summary>
    public string? Served { get; init; }

    /// <summary>Service: number of the part that serves it; left out where none does any more.</summary>
    public string? By { get; init; }

    /// <summary>Recall: number of the part.</summary>
    public string? Recall { get; init; }

    /// <summary>Service: why it is another than before. Recall: why; left out where it is withdrawn.</summary>
    public string[]? Why { get; init; }
}

/// <summary>Serialization of the register without reflection, one line each.</summary>
[JsonSerializable(typeof(RegisterLine))]
internal sealed partial class RegisterContext : JsonSerializerContext
{
    private static RegisterContext? _lines;

    /// <summary>Letters as they are: people read the register too.</summary>
    public static RegisterContext Lines => _lines ??= new(CompactJson.Options());
}
