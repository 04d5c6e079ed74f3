using System.Text.Json;
using System.Text.Json.Serialization;
using BracketGen.Line.Combinations;
using BracketGen.Line.Lists;
using BracketGen.Line.Numbering;
using BracketGen.Line.Parts;

namespace BracketGen.Line.Orders;

/// <summary>A made line as it is kept for orders: its parts, and which of them serves which variant.</summary>
public sealed record KeptLine
{
    /// <summary>Name of the file in the line's folder.</summary>
    public const string FileName = "line.json";

    /// <summary>Version of the layout.</summary>
    public const int LayoutVersion = 1;

    /// <summary>Version of the layout that it was written in.</summary>
    public required int Layout { get; init; }

    /// <summary>Name of the family.</summary>
    public required string Family { get; init; }

    /// <summary>The parts that are made.</summary>
    public required KeptPart[] Parts { get; init; }

    /// <summary>The variants that have a part.</summary>
    public required KeptVariant[] Variants { get; init; }

    /// <summary>Hash of all the rest; null before it is written.</summary>
    public string? Seal { get; init; }

    /// <summary>That of a line.</summary>
    public static KeptLine Of(LineReport report) => new()
    {
        Layout = LayoutVersion,
        Family = report.Family.Family.Name,
        Parts = [.. report.Selection.Parts.Select(p => new KeptPart(p.Made.PartNumber, p.Made.Revision, PartShape.Of(p.Bracket)))],
        Variants =
        [
            .. report.Selection.Services.Select(s => new KeptVariant(
                s.Served.Combination.Key, s.Served.Made.PartNumber, s.Served.Made.Inputs, s.By.Made.PartNumber,
                [s.Mount.Origin.X, s.Mount.Origin.Y, s.Mount.Origin.Z, s.Mount.X.X, s.Mount.X.Y, s.Mount.X.Z, s.Mount.Z.X, s.Mount.Z.Y, s.Mount.Z.Z])),
        ],
    };

    /// <summary>The bytes of the file, sealed.</summary>
    public byte[] ToBytes() => Bytes(this with { Seal = SealOf(this) });

    /// <summary>What a file holds; null where it is none of this version, or damaged: a changed number would make another part.</summary>
    public static KeptLine? Read(ReadOnlySpan<byte> bytes)
    {
        try
        {
            return JsonSerializer.Deserialize(bytes, KeptLineContext.Kept.KeptLine) is { Layout: LayoutVersion } line && line.Seal == SealOf(line)
                ? line with { Seal = null } : null;
        }
        catch (Exception problem) when (problem is JsonException or ArgumentException)
        {
            return null;
        }
    }

    private static string SealOf(KeptLine line) => InputHash.OfBytes(Bytes(line with { Seal = null }));

    private static byte[] Bytes(KeptLine line) => JsonSerializer.SerializeToUtf8Bytes(line, KeptLineContext.Kept.KeptLine);
}

/// <summary>A part of a made line.</summary>
/// <param name="PartNumber">Part number.</param>
/// <param name="Revision">Revision.</param>
/// <param name="Shape">The part.</param>
public sealed record KeptPart(string PartNumber, string Revision, PartShape Shape);

/// <summary>A variant of a made line that has a part.</summary>
/// <param name="Combination">Its key.</param>
/// <param name="CatalogueNumber">The number that the register gave it.</param>
/// <param name="Inputs">Hash of what it was made from.</param>
/// <param name="Part">Number of the part that serves it.</param>
/// <param name="Mount">Where that part's mount flange lies on its throttle body: origin, x and z of the frame, throttle frame as measured (mm).</param>
public sealed record KeptVariant(string Combination, string CatalogueNumber, string Inputs, string Part, double[] Mount);

/// <summary>Serialization of a made line, without reflection.</summary>
[JsonSerializable(typeof(KeptLine))]
internal sealed partial class KeptLineContext : JsonSerializerContext
{
    private static KeptLineContext? _kept;

    /// <summary>Compact, letters as they are.</summary>
    public static KeptLineContext Kept => _kept ??= new(CompactJson.Options());
}
