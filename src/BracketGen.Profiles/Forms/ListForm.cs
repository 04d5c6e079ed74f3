using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text.Json.Nodes;
using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Toml;
using BracketGen.Units;

namespace BracketGen.Profiles.Forms;

/// <summary>A list of values of one form.</summary>
internal sealed class ListForm<T>(Form<T> item, int min, int max) : Form<ImmutableArray<T>>
{
    public override AllowedValue Allowed => new AllowedList(min, max, item.Allowed);

    public override bool TryRead(TomlValue value, string key, Reading reading, [MaybeNullWhen(false)] out ImmutableArray<T> result)
    {
        result = [];
        if (value is not TomlList list)
        {
            Report(value, key, reading, value is TomlTable ? ValueMistake.HeaderNotRepeated : ValueMistake.NotAList);
            return false;
        }

        if (list.Items.Count < min || list.Items.Count > max)
        {
            reading.Report(
                list.Place, key, list.Items.Count.ToString(CultureInfo.InvariantCulture),
                new ValueWrong(list.Items.Count < min ? ValueMistake.FewItems : ValueMistake.ManyItems, Allowed));

            // What is in a short list is looked at all the same; of a long one there is no end.
            if (list.Items.Count > max)
            {
                return false;
            }
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
        return result.Length == list.Items.Count && result.Length >= min;
    }

    public override JsonObject Schema(SharedSchemas shared)
    {
        var schema = new JsonObject { ["type"] = "array", ["items"] = item.Schema(shared), ["maxItems"] = max };
        if (min > 0)
        {
            schema["minItems"] = min;
        }

        return schema;
    }

    public override Unit? UnitAt(ReadOnlySpan<string> path) => item.UnitAt(path);

    public override JsonNode? Written(ImmutableArray<T> value) => new JsonArray([.. value.Select(item.Written)]);
}
