using System.Collections.Immutable;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using BracketGen.Design.Inputs;
using BracketGen.Profiles.Forms;
using BracketGen.Profiles.Sections;
using BracketGen.SheetMetal.Shops;

namespace BracketGen.Profiles;

/// <summary>JSON Schemas (draft 2020-12) of the profile files, so that editors complete and check while one types.</summary>
/// <remarks>Made from the declarations the reader itself works by, so they cannot differ.</remarks>
public static class ProfileSchema
{
    /// <summary>File name and text of every schema; line ends are line feeds.</summary>
    public static ImmutableArray<(string File, string Text)> All =>
    [
        Schema(ProfileKind.ThrottleBody, ThrottleBodySection.Form.Schema),
        Schema(ProfileKind.Vehicle, VehicleSection.Form.Schema),
        Schema(ProfileKind.Shop, ShopSection.Form.Schema),
        Schema(ProfileKind.Job, JobSection.Form.Schema),
        Schema(ProfileKind.Family, FamilySection.Form.Schema),
        Schema(ProfileKind.PackedJob, PackedJobSection.Form.Schema),
    ];

    private const string Units =
        "A bare number is in mm, degrees, N m, MPa, GPa (modulus) or kg/m3; a text may carry a unit: \"1.125 in\", \"12 lbf in\".";

    private static (string File, string Text) Schema(ProfileKind kind, Func<(string, string, string)?, JsonObject> schemaOf)
    {
        var schema = new JsonObject
        {
            ["$schema"] = "https://json-schema.org/draft/2020-12/schema",
            ["title"] = "BracketGen profile: " + kind.Word,
            ["description"] = Units,
        };
        var body = schemaOf((ProfileReader.ProfileKey, kind.Word, "What this file is."));
        foreach (var (name, value) in body.ToArray())
        {
            body.Remove(name);
            schema[name] = value;
        }

        return (kind.SchemaFile, Text(schema));
    }

    private static string Text(JsonObject schema)
    {
        using var stream = new MemoryStream();
        // Degree signs and dots between units stay readable; the file is never put into a web page.
        var options = new JsonWriterOptions { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };
        using (var writer = new Utf8JsonWriter(stream, options))
        {
            schema.WriteTo(writer);
        }

        return Encoding.UTF8.GetString(stream.GetBuffer(), 0, (int)stream.Length) + "\n";
    }
}
