using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text.Json.Nodes;
using BracketGen.Geometry;
using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Toml;
using BracketGen.Units;

namespace BracketGen.Profiles.Forms;

/// <summary>Three coordinates in the throttle frame.</summary>
internal sealed class VectorForm(QuantityForm coordinate, bool isDirection) : Form<Vector3>
{
    /// <summary>A point near the throttle body: within a metre of the throttle shaft.</summary>
    public static VectorForm Point { get; } = new(QuantityForm.Length(-1000, 1000), isDirection: false);

    /// <summary>A direction of any length but none.</summary>
    public static VectorForm Direction { get; } = new(QuantityForm.Number(-1000, 1000), isDirection: true);

    public override AllowedValue Allowed => new AllowedVector(isDirection, coordinate.Range);

    public override bool TryRead(TomlValue value, string key, Reading reading, [MaybeNullWhen(false)] out Vector3 result)
    {
        result = default;
        if (value is not TomlList { Items.Count: 3 } list)
        {
            Report(value, key, reading, ValueMistake.NotThreeNumbers);
            return false;
        }

        var read = new double[3];
        var isRead = true;
        for (var i = 0; i < 3; i++)
        {
            isRead &= coordinate.TryRead(list.Items[i], string.Create(CultureInfo.InvariantCulture, $"{key}[{i + 1}]"), reading, out read[i]);
        }

        result = new(read[0], read[1], read[2]);
        if (isRead && isDirection && result.Length < Tolerance.NoDirection)
        {
            Report(value, key, reading, ValueMistake.ZeroDirection);
            return false;
        }

        return isRead;
    }

    public override Unit? UnitAt(ReadOnlySpan<string> path) => coordinate.UnitAt(path);

    public override JsonObject Schema(SharedSchemas shared)
    {
        var schema = shared.Use(isDirection ? "direction" : "point", () => new JsonObject
        {
            ["type"] = "array",
            ["items"] = isDirection || shared.IsInFull ? coordinate.Schema(shared) : coordinate.SharedSchema(shared),
            ["minItems"] = 3,
            ["maxItems"] = 3,
        });
        if (!isDirection && !shared.IsInFull)
        {
            schema["items"] = coordinate.Limits();
        }

        return schema;
    }
}
