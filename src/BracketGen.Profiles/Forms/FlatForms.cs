using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text.Json.Nodes;
using BracketGen.Design.Part;
using BracketGen.Geometry;
using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Toml;

namespace BracketGen.Profiles.Forms;

/// <summary>Two coordinates on a flange, and where it is a corner the radius of its rounding as a third number.</summary>
internal sealed class FlangeCornerForm(bool mayRound) : Form<FlangeCorner>
{
    // A bracket that holds a cable is no larger (mm).
    private static readonly QuantityForm Coordinate = QuantityForm.Length(-500, 500), Rounding = QuantityForm.Length(0, 200);

    public override AllowedValue Allowed => new AllowedFlangePoint(mayRound, Coordinate.Range);

    public override bool TryRead(TomlValue value, string key, Reading reading, [MaybeNullWhen(false)] out FlangeCorner result)
    {
        result = default;
        if (value is not TomlList list || list.Items.Count < 2 || list.Items.Count > (mayRound ? 3 : 2))
        {
            Report(value, key, reading, mayRound ? ValueMistake.NotACorner : ValueMistake.NotTwoNumbers);
            return false;
        }

        var read = new double[3];
        var isRead = true;
        for (var i = 0; i < list.Items.Count; i++)
        {
            isRead &= (i < 2 ? Coordinate : Rounding).TryRead(list.Items[i], string.Create(CultureInfo.InvariantCulture, $"{key}[{i + 1}]"), reading, out read[i]);
        }

        result = new(new(read[0], read[1]), read[2]);
        return isRead;
    }

    // Two coordinates, each with its limits; the radius has its own.
    public override JsonObject Schema(SharedSchemas shared)
    {
        var items = new JsonArray((JsonNode)Coordinate.Schema(shared), (JsonNode)Coordinate.Schema(shared));
        if (mayRound)
        {
            items.Add((JsonNode)Rounding.Schema(shared));
        }

        return new() { ["type"] = "array", ["prefixItems"] = items, ["minItems"] = 2, ["maxItems"] = mayRound ? 3 : 2 };
    }
}

/// <summary>Two coordinates on a flange.</summary>
internal sealed class FlangePointForm : Form<FlatPoint>
{
    private static readonly FlangeCornerForm Plain = new(mayRound: false);

    public override AllowedValue Allowed => Plain.Allowed;

    public override bool TryRead(TomlValue value, string key, Reading reading, [MaybeNullWhen(false)] out FlatPoint result)
    {
        var isRead = Plain.TryRead(value, key, reading, out var corner);
        result = corner.At;
        return isRead;
    }

    public override JsonObject Schema(SharedSchemas shared) => Plain.Schema(shared);
}
