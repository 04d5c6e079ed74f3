using System.Text.Json;
using System.Text.Json.Serialization;
using BracketGen.Design.Checks;
using BracketGen.Line.Combinations;
using BracketGen.Line.Numbering;
using BracketGen.Line.Parts;

namespace BracketGen.Line.Solving;

/// <summary>How a variant ended.</summary>
public enum Outcome
{
    /// <summary>It has a bracket, and every check passes.</summary>
    Passes,

    /// <summary>It has a bracket, and no check fails, but something that matters is not known.</summary>
    NotProven,

    /// <summary>A check fails: it has no part in the line.</summary>
    Fails,

    /// <summary>A safety check fails: it has no part in the line.</summary>
    Unsafe,

    /// <summary>A profile could not be read, or the program failed.</summary>
    Broken,
}

/// <summary>What was made of a combination: kept beside its files, so that the next run knows whether they still hold.</summary>
/// <remarks>Lengths in mm, masses in g.</remarks>
public sealed record Made
{
    /// <summary>Version of the layout.</summary>
    public const int LayoutVersion = 7;

    // It lacks nothing but what was given out before: enough to know a part by.
    private const int LayoutBefore = 6;

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

    /// <summary>Why it has no part in the line, a line each; empty where it has one.</summary>
    public required string[] Reasons { get; init; }

    /// <summary>Part number; empty where there is no part and never was one.</summary>
    public required string PartNumber { get; init; }

    /// <summary>Its running number; null where it has none.</summary>
    public int? Serial { get; init; }

    /// <summary>Revision; empty where there is no part and never was one.</summary>
    public required string Revision { get; init; }

    /// <summary>The revision given out before, where it does not serve any more; null where it does, or there is none.</summary>
    public Outdated? Before { get; init; }

    /// <summary>What would be different if the part were drawn anew, a line each; null where nothing would.</summary>
    public string[]? Redraw { get; init; }

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

    /// <summary>Whether it has a part in the line.</summary>
    [JsonIgnore]
    public bool HasPart => Outcome is Outcome.Passes or Outcome.NotProven;

    /// <summary>The bytes of the file it is kept in, sealed.</summary>
    public byte[] ToBytes() => Bytes(this with { Seal = SealOf(this) });

    private static string SealOf(Made made) => InputHash.OfBytes(Bytes(made with { Seal = null }));

    private static byte[] Bytes(Made made) => JsonSerializer.SerializeToUtf8Bytes(made, MadeContext.Kept.Made);

    /// <summary>What a file holds; null where it is none of this version, or damaged: a changed number would make another part.</summary>
    public static Made? Read(ReadOnlySpan<byte> bytes)
    {
        try
        {
            return JsonSerializer.Deserialize(bytes, MadeContext.Kept.Made) is { Layout: LayoutVersion or LayoutBefore } made && made.Seal == SealOf(made)
                ? made with { Seal = null } : null;
        }
        catch (Exception problem) when (problem is JsonException or ArgumentException)
        {
            return null; // The second: a number too large for a double is read as infinity, which cannot be written and so not be sealed.
        }
    }
}

/// <summary>A revision that was given out and does not serve its variant any more.</summary>
/// <param name="Revision">The revision.</param>
/// <param name="IsRecalled">Whether it no longer passes; false where another was asked for.</param>
/// <param name="Why">Why, a line each.</param>
public sealed record Outdated(string Revision, bool IsRecalled, string[] Why);

/// <summary>A file of a combination.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Hash">Hash of its bytes.</param>
public sealed record MadeFile(string Name, string Hash);

/// <summary>How well a part fits a variant.</summary>
/// <param name="AdjusterShift">Where the adjuster is off mid range (mm), positive where it takes up wire.</param>
/// <param name="AdjusterRange">Its whole range (mm).</param>
/// <param name="Margins">Margins of all checks.</param>
/// <param name="ToProve">What to measure or calculate before the answer can be "passes", a sentence each; empty if it passes.</param>
public sealed record Fit(double AdjusterShift, double AdjusterRange, FitMargin[] Margins, string[] ToProve)
{
    /// <summary>The check with the least spare; null where there is none.</summary>
    [JsonIgnore]
    public FitMargin? Tightest => Margins.MinBy(m => m.Spare);

    /// <summary>What the checks come to.</summary>
    [JsonIgnore]
    public VerdictKind Verdict => ToProve.Length == 0 ? VerdictKind.Passes : VerdictKind.NotProven;
}

/// <summary>A check of a fit, as it is kept.</summary>
/// <param name="Id">Which check.</param>
/// <param name="Value">Value, internal unit.</param>
/// <param name="Limit">Limit, internal unit.</param>
/// <param name="Number">Number of the thing it speaks of; null where there is only one.</param>
/// <param name="Subject">Its name; null where there is none.</param>
/// <param name="IsVariant">The second of two cases that the check's words tell apart.</param>
public sealed record FitMargin(CheckId Id, double Value, double Limit, int? Number, string? Subject, bool IsVariant)
{
    /// <summary>The check again.</summary>
    [JsonIgnore]
    public Check Check => new(Id, Value, Limit) { Number = Number, Subject = Subject, IsVariant = IsVariant };

    /// <summary>Its name in files.</summary>
    [JsonIgnore]
    public string Code => Check.Code;

    /// <summary>Its spare, to a millionth: less is round-off.</summary>
    [JsonIgnore]
    public double Spare => Math.Round(Check.Spare, 6) + 0.0;
}

/// <summary>Serialization of what was made, without reflection.</summary>
[JsonSerializable(typeof(Made))]
internal sealed partial class MadeContext : JsonSerializerContext
{
    private static MadeContext? _kept;

    /// <summary>Compact, names for outcomes, letters as they are.</summary>
    public static MadeContext Kept => _kept ??= new(CompactJson.Options(new JsonStringEnumConverter<Outcome>(), new JsonStringEnumConverter<CheckId>()));
}
