using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using BracketGen.Line.Combinations;
using BracketGen.Line.Numbering;
using BracketGen.Line.Parts;
using BracketGen.Profiles.Forms;
using BracketGen.Words.Checks;

namespace BracketGen.Line.Solving;

/// <summary>How a combination ended.</summary>
public enum Outcome
{
    /// <summary>A bracket passes every check.</summary>
    Passes,

    /// <summary>A check fails: it is not part of the line.</summary>
    Fails,

    /// <summary>A profile could not be read, or the program met something it does not know.</summary>
    Broken,
}

/// <summary>What was made of a combination: kept beside its files, so that the next run knows whether they still hold.</summary>
/// <remarks>Lengths in mm, masses in g.</remarks>
public sealed record Made
{
    /// <summary>Version of the layout.</summary>
    public const int LayoutVersion = 2;

    /// <summary>Version of the layout that it was written in.</summary>
    public required int Layout { get; init; }

    /// <summary>Key of the combination.</summary>
    public required string Combination { get; init; }

    /// <summary>Hash of what it was made from, the program's version among it.</summary>
    public required string Inputs { get; init; }

    /// <summary>What else was asked for: options of the command that change the files.</summary>
    public required string Asked { get; init; }

    /// <summary>How it ended.</summary>
    public required Outcome Outcome { get; init; }

    /// <summary>Why it is not part of the line, a line each; empty where it passes.</summary>
    public required string[] Reasons { get; init; }

    /// <summary>Part number.</summary>
    public required string PartNumber { get; init; }

    /// <summary>Revision.</summary>
    public required string Revision { get; init; }

    /// <summary>Fingerprint of the part; null where none passes.</summary>
    public string? Fingerprint { get; init; }

    /// <summary>The part; null where none passes.</summary>
    public PartShape? Part { get; init; }

    /// <summary>Margins with this part; null where none passes.</summary>
    public Fit? Fit { get; init; }

    /// <summary>Name and hash of every file beside it.</summary>
    public required MadeFile[] Files { get; init; }

    /// <summary>Hash of all the rest; null before it is written.</summary>
    public string? Seal { get; init; }

    /// <summary>The bytes of the file it is kept in, sealed.</summary>
    public byte[] ToBytes() => Bytes(this with { Seal = SealOf(this) });

    private static string SealOf(Made made) => InputHash.OfBytes(Bytes(made with { Seal = null }));

    private static byte[] Bytes(Made made) => JsonSerializer.SerializeToUtf8Bytes(made, MadeContext.Kept.Made);

    /// <summary>What a file holds; null where it is none of this version, or damaged: a changed number would make another part.</summary>
    public static Made? Read(ReadOnlySpan<byte> bytes)
    {
        try
        {
            return JsonSerializer.Deserialize(bytes, MadeContext.Kept.Made) is { Layout: LayoutVersion } made && made.Seal == SealOf(made)
                ? made with { Seal = null } : null;
        }
        catch (Exception problem) when (problem is JsonException or ArgumentException)
        {
            return null; // The second: a number too large for a double is read as infinity, which cannot be written and so not be sealed.
        }
    }
}

/// <summary>A file of a combination.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Hash">Hash of its bytes.</param>
public sealed record MadeFile(string Name, string Hash);

/// <summary>How well a part fits a combination.</summary>
/// <param name="AdjusterShift">Where the adjuster stands off mid range (mm), positive where it takes up wire.</param>
/// <param name="AdjusterRange">Its whole range (mm).</param>
/// <param name="Margins">Margins of all checks.</param>
public sealed record Fit(double AdjusterShift, double AdjusterRange, FitMargin[] Margins)
{
    /// <summary>The check with the least to spare; null where there is none.</summary>
    public FitMargin? Tightest => Margins.MinBy(m => m.Spare);
}

/// <summary>The margin of a check.</summary>
/// <param name="Id">Id of the check.</param>
/// <param name="Title">What is checked.</param>
/// <param name="Value">Value with its unit, as people read it.</param>
/// <param name="Limit">Limit, likewise.</param>
/// <param name="Margin">Margin, likewise.</param>
/// <param name="Spare">Margin over the limit's size (over a millimetre, five degrees, a newton, where the limit is smaller).</param>
public sealed record FitMargin(string Id, string Title, string Value, string Limit, string Margin, double Spare);

/// <summary>Serialization of what was made, without reflection.</summary>
[JsonSerializable(typeof(Made))]
internal sealed partial class MadeContext : JsonSerializerContext
{
    private static MadeContext? _kept;

    /// <summary>Compact, names for outcomes, letters as they are.</summary>
    public static MadeContext Kept => _kept ??= new(new JsonSerializerOptions
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
        UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    });
}
