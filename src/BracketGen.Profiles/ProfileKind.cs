using System.Collections.Immutable;

namespace BracketGen.Profiles;

/// <summary>A kind of profile file.</summary>
/// <param name="Word">What <c>profile = </c> says.</param>
/// <param name="SchemaFile">Name of the schema's file.</param>
internal sealed record ProfileKind(string Word, string SchemaFile)
{
    public static readonly ProfileKind ThrottleBody = new("throttle body", "throttle-body.schema.json");
    public static readonly ProfileKind Vehicle = new("vehicle", "vehicle.schema.json");
    public static readonly ProfileKind Shop = new("shop", "shop.schema.json");
    public static readonly ProfileKind Job = new("job", "job.schema.json");

    public static readonly ProfileKind Family = new("family", "family.schema.json");

    public static readonly ProfileKind PackedJob = new("packed job", "packed-job.schema.json");

    public static readonly ProfileKind Bracket = new("bracket", "bracket.schema.json");

    public static readonly ProfileKind Parts = new("parts list", "parts.schema.json");

    public static readonly ProfileKind Order = new("order", "order.schema.json");

    public static readonly ImmutableArray<ProfileKind> All = [ThrottleBody, Vehicle, Shop, Job, Family, PackedJob, Bracket, Parts, Order];
}
