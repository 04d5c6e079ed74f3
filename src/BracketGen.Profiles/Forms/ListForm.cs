using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text.Json.Nodes;
using BracketGen.Design.Search;
using BracketGen.Geometry;
using BracketGen.Profiles.Toml;

namespace BracketGen.Profiles.Forms;

/// <summary>A list of values of one form.</summary>
internal sealed class ListForm<T>(Form<T> item, int least, int most) : Form<ImmutableArray<T>>
{
    public override string Allowed => string.Create(CultureInfo.InvariantCulture, $"a list of {least} to {most} items, each {item.Allowed}");

    public override bool TryRead(TomlValue value, string key, Reading reading, [MaybeNullWhen(false)] out ImmutableArray<T> result)
    {
        result = [];
        if (value is not TomlList list)
        {
            reading.Report(value, key, Allowed, value is TomlTable ? $"Write the header with two brackets: [[{key}]]." : "Put the items in brackets: [ … ].");
            return false;
        }

        if (list.Items.Count < least || list.Items.Count > most)
        {
            reading.Report(list.Place, key, string.Create(CultureInfo.InvariantCulture, $"{list.Items.Count} items"), Allowed, list.Items.Count < least ? "Add what is missing." : "Leave out what is not needed.");
            return false;
        }

        var items = ImmutableArray.CreateBuilder<T>();
        for (var i = 0; i < list.Items.Count; i++)
        {
            if (item.TryRead(list.Items[i], string.Create(CultureInfo.InvariantCulture, $"{key}[{i + 1}]"), reading, out var read))
            {
                items.Add(read);
            }
        }

        result = items.ToImmutable();
        return result.Length == list.Items.Count;
    }

    public override JsonObject Schema()
    {
        var schema = new JsonObject { ["type"] = "array", ["items"] = item.Schema(), ["maxItems"] = most };
        if (least > 0)
        {
            schema["minItems"] = least;
        }

        return schema;
    }

    public override JsonNode? Written(ImmutableArray<T> value) => new JsonArray([.. value.Select(item.Written)]);
}

/// <summary>Three coordinates in the throttle frame.</summary>
internal sealed class VectorForm(QuantityForm coordinate, string what, bool isDirection) : Form<Vector3>
{
    /// <summary>A point near the throttle body: within a metre of the throttle shaft.</summary>
    public static VectorForm Point { get; } = new(QuantityForm.Length(-1000, 1000), "a point", isDirection: false);

    /// <summary>A direction of any length but none.</summary>
    public static VectorForm Direction { get; } = new(QuantityForm.Number(-1000, 1000), "a direction", isDirection: true);

    public override string Allowed => $"{what} [x, y, z], each {coordinate.Allowed}";

    public override bool TryRead(TomlValue value, string key, Reading reading, [MaybeNullWhen(false)] out Vector3 result)
    {
        result = default;
        if (value is not TomlList { Items.Count: 3 } list)
        {
            reading.Report(value, key, Allowed, "Give three numbers in brackets.");
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
            reading.Report(value, key, "a direction [x, y, z] that is not zero", "Give the direction square to the face, for example [0, 0, 1].");
            return false;
        }

        return isRead;
    }

    public override JsonObject Schema() => new()
    {
        ["type"] = "array",
        ["items"] = coordinate.Schema(),
        ["minItems"] = 3,
        ["maxItems"] = 3,
    };
}
