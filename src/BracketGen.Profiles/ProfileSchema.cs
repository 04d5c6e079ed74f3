using System.Collections.Immutable;
using System.Text.Json.Nodes;
using BracketGen.Profiles.Forms;
using BracketGen.Profiles.Sections;

namespace BracketGen.Profiles;

/// <summary>JSON Schemas (draft 2020-12) of the profile files, so that editors complete and check while one types.</summary>
/// <remarks>Made from the declarations the reader itself works by, so they cannot differ.</remarks>
public static class ProfileSchema
{
    /// <summary>File name and text of every schema, shared definitions under <c>$defs</c>; line ends are line feeds.</summary>
    public static ImmutableArray<(string File, string Text)> All => Written(isInFull: false);

    /// <summary>The same schemas without references, for a form that is made from them.</summary>
    public static ImmutableArray<(string File, string Text)> InFull => Written(isInFull: true);

    private const string Units =
        "A bare number is in mm, degrees, N m, MPa, GPa (modulus) or kg/m3; a text may carry a unit: \"1.125 in\", \"12 lbf in\".";

    private static ImmutableArray<(string File, string Text)> Written(bool isInFull) =>
    [
        Schema(ProfileKind.ThrottleBody, ThrottleBodySection.Form, isInFull),
        Schema(ProfileKind.Vehicle, VehicleSection.Form, isInFull),
        Schema(ProfileKind.Shop, ShopSection.Form, isInFull),
        Schema(ProfileKind.Job, JobSection.Form, isInFull),
        Schema(ProfileKind.Family, FamilySection.Form, isInFull),
        Schema(ProfileKind.PackedJob, PackedJobSection.Form, isInFull),
        Schema(ProfileKind.Bracket, (first, shared) => new()
        {
            ["type"] = "object",
            ["oneOf"] = new JsonArray((JsonNode)BracketSection.Form.Schema(first, shared), FlatBracketSection.Form.Schema(first, shared)),
        }, isInFull),
        Schema(ProfileKind.Parts, PartsSection.Form, isInFull),
        Schema(ProfileKind.Order, OrderSection.Form, isInFull),
    ];

    private static (string File, string Text) Schema<T>(ProfileKind kind, Section<T> form, bool isInFull) => Schema(kind, (first, shared) => form.Schema(first, shared), isInFull);

    private static (string File, string Text) Schema(ProfileKind kind, Func<(string Name, string Word, string Help), SharedSchemas, JsonObject> form, bool isInFull)
    {
        var schema = new JsonObject
        {
            ["$schema"] = "https://json-schema.org/draft/2020-12/schema",
            ["title"] = "BracketGen profile: " + kind.Word,
            ["description"] = Units,
        };
        var shared = new SharedSchemas(isInFull);
        var body = form((ProfileReader.ProfileKey, kind.Word, "What this file is."), shared);
        foreach (var (name, value) in body.ToArray())
        {
            body.Remove(name);
            schema[name] = value;
        }

        if (shared.Definitions is { } definitions)
        {
            schema["$defs"] = definitions;
        }

        return (kind.SchemaFile, SchemaText.Of(schema));
    }
}
