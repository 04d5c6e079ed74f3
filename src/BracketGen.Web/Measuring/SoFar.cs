using System.Globalization;
using System.Text.Json.Nodes;
using BracketGen.Drawing.Measuring;
using BracketGen.Geometry;
using BracketGen.Profiles;
using BracketGen.Profiles.Editing;
using BracketGen.Units;

namespace BracketGen.Web.Measuring;

/// <summary>Reads what a profile holds so far, whatever is missing or wrong in it, and draws it.</summary>
internal static class SoFar
{
    /// <summary>The picture of a vehicle's cable or of a throttle body, an SVG document; of a throttle body also its scale, where it has the shaft's axis, and how far to the right the view along it goes.</summary>
    /// <param name="kind"><c>vehicle</c> or <c>throttle body</c>.</param>
    /// <param name="text">The profile so far.</param>
    public static (string Svg, (double Scale, Vector2 Shaft, double Right)? Place) Picture(string kind, string text)
    {
        var values = ProfileValues.Of(text);
        if (kind == ProfileKind.Vehicle.Word)
        {
            return (SoFarPicture.Of(Cable(values)), null);
        }

        var (svg, scale, shaft, right) = SoFarPicture.ToScale(Body(values));
        return (svg, (scale, shaft, right));
    }

    /// <summary>A throttle body.</summary>
    public static BodySoFar Body(JsonObject values)
    {
        var quadrant = values["quadrant"] as JsonObject;
        var groove = quadrant?["groove"] as JsonObject;
        var pocket = quadrant?["pocket"] as JsonObject;
        var bore = values["bore_axis"] as JsonObject;
        var mount = values["mount"] as JsonObject;
        return new()
        {
            OpensClockwise = Text(values["opens"]) == "clockwise",
            ShaftDiameter = Length(values["shaft_diameter"]),
            Bore = Length(values["bore"]),
            Groove = Length(quadrant?["pitch_radius"]) is { } pitch ? (Vector2.Zero, pitch)
                : Length(groove?["radius"]) is { } radius && Length(groove?["offset"]) is { } offset && Turn(groove?["direction"]) is { } to ? (Vector2.FromPolar(offset, new(to)), radius) : null,
            GroovePoints = [.. Each(groove?["points"]).Select(p => Turn(p["angle"]) is { } angle && Length(p["radius"]) is { } r ? Vector2.FromPolar(r, new(angle)) : (Vector2?)null).OfType<Vector2>()],
            OuterRadius = Length(quadrant?["outer_radius"]),
            HubRadius = Length(quadrant?["hub_radius"]),
            Thickness = Length(quadrant?["thickness"]),
            PocketAngle = Turn(quadrant?["pocket_angle"]),
            PocketSize = Length(pocket?["diameter"]) ?? Length(pocket?["width"]),
            Rotation = Turn(quadrant?["rotation"]),
            GrooveExtent = Turn(quadrant?["groove_extent"]),
            BoreZ = Length(bore?["z"]),
            BoreDirection = Turn(bore?["direction"]),
            CastingDiameter = Length(bore?["outside_diameter"]),
            Casting = Length(bore?["ahead"]) is { } ahead && Length(bore?["behind"]) is { } behind ? (ahead, behind) : null,
            Normal = Point(mount?["normal"], n => Number(n)),
            Holes = [.. Each(mount?["holes"]).Select((hole, i) => (Number: i + 1, At: Point(hole["at"], Length), Boss: Length(hole["boss_diameter"]))).Where(h => h.At is not null).Select(h => (h.Number, h.At!.Value, h.Boss))],
            KeepOuts = [.. Each(values["keep_out"]).Select(k => (Name: Text(k["name"]) ?? "", Min: Point(k["min"], Length), Max: Point(k["max"], Length))).Where(k => k.Min is not null && k.Max is not null).Select(k => (k.Name, k.Min!.Value, k.Max!.Value))],
        };
    }

    /// <summary>A vehicle's cable and pedal.</summary>
    public static CableSoFar Cable(JsonObject values)
    {
        var cable = values["cable"] as JsonObject;
        var fitting = cable?["fitting"] as JsonObject;
        var end = cable?["outer_end"] as JsonObject;
        var pedal = values["pedal"] as JsonObject;
        var pull = Length(pedal?["available_pull"]);
        return new()
        {
            Wire = Length(cable?["wire_diameter"]),
            Outer = Length(cable?["outer_diameter"]),
            FreeInnerLength = Length(cable?["free_inner_length"]),
            IsBall = Text(fitting?["kind"]) == "ball",
            IsAlongWire = Text(fitting?["kind"]) == "nipple",
            FittingDiameter = Length(fitting?["diameter"]),
            FittingLength = Length(fitting?["length"]),
            EndWidth = Length(end?["across_flats"]) ?? Length(end?["shoulder_diameter"]) ?? Length(end?["collar_diameter"]),
            Range = Length(end?["range"]),
            Pull = pull,
            PadTravel = Number(pedal?["lever_ratio"]) * pull ?? Each(pedal?["table"]).Select(p => Length(p["pad"])).Max(),
        };
    }

    private static IEnumerable<JsonObject> Each(JsonNode? list) => (list as JsonArray)?.Select(i => i as JsonObject ?? []) ?? [];

    private static string? Text(JsonNode? node) => node is JsonValue value && value.TryGetValue<string>(out var text) ? text : null;

    // Numbers without a unit are mm and degrees in every profile.
    private static double? Length(JsonNode? node) => Read(node, UnitTable.Millimetre);

    private static double? Turn(JsonNode? node) => Read(node, UnitTable.Degree);

    private static double? Number(JsonNode? node) => node is JsonValue value && value.TryGetValue<double>(out var number) ? number
        : double.TryParse(Text(node), NumberStyles.Float, CultureInfo.InvariantCulture, out var written) && double.IsFinite(written) ? written : null;

    private static Vector3? Point(JsonNode? node, Func<JsonNode?, double?> read) =>
        node is JsonArray { Count: 3 } list && read(list[0]) is { } x && read(list[1]) is { } y && read(list[2]) is { } z ? new(x, y, z) : null;

    private static double? Read(JsonNode? node, Unit bare)
    {
        var written = node is JsonObject pair ? pair["value"] : node;
        var read = written is JsonValue value && value.TryGetValue<double>(out var number) ? number * bare.Factor
            : Text(written) is { } text && QuantityText.Split(text) is var (amount, word) && (word.Length == 0 ? bare : UnitTable.Find(word)) is { } unit && unit.Kind == bare.Kind ? amount * unit.Factor
            : (double?)null;
        return read is { } finite && double.IsFinite(finite) ? finite : null;
    }
}
