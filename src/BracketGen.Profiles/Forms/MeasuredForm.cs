using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using BracketGen.Geometry;
using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Toml;
using BracketGen.Units;

namespace BracketGen.Profiles.Forms;

/// <summary>A quantity, alone or with its ±: <c>{ value = 31.5, plus_minus = 0.2 }</c>.</summary>
internal sealed class MeasuredForm : Form<Measured>
{
    private const string ValueKey = "value", PlusMinusKey = "plus_minus";

    private readonly QuantityForm _quantity, _plusMinus;
    private readonly Section<Measured> _table;
    private readonly double? _usual;

    /// <param name="quantity">The quantity.</param>
    /// <param name="maxPlusMinus">The largest ± that is allowed, in its unit.</param>
    /// <param name="usual">The ± that a reading without one has, in its unit; it is then assumed. Null where it counts as exact.</param>
    public MeasuredForm(QuantityForm quantity, double maxPlusMinus, double? usual = null)
    {
        _quantity = quantity;
        _usual = usual;
        _plusMinus = new(quantity.Standard, 0, maxPlusMinus);
        var value = new Key<double>(ValueKey, quantity, "The reading.");
        var plusMinus = new Key<double>(PlusMinusKey, _plusMinus, "How far the reading may be off, each way.");
        _table = new(
            [value, plusMinus],
            v => new Measured(v.Get(value), v.Get(plusMinus)),
            [
                new([value, plusMinus], v => CheckSign(v, value, plusMinus)),
                new([value, plusMinus], v => CheckUnits(v, value, plusMinus)),
            ]);
    }

    public override AllowedValue Allowed => _quantity.Allowed;

    public override bool TryRead(TomlValue value, string key, Reading reading, [MaybeNullWhen(false)] out Measured result)
    {
        if (value is TomlTable)
        {
            return _table.TryRead(value, key, reading, out result);
        }

        var isRead = _quantity.TryRead(value, key, reading, out var number);
        result = _usual is { } usual ? new(number, usual * _quantity.Standard.Factor, Evidence.Assumed) : new(number);
        return isRead;
    }

    public override JsonObject Schema(SharedSchemas shared)
    {
        if (shared.IsInFull)
        {
            var plain = _quantity.Schema(shared);
            var forms = plain["anyOf"] is JsonArray several ? several.Select(s => s!.DeepClone()) : [plain];
            return new JsonObject { ["anyOf"] = new JsonArray([.. forms, _table.Schema(shared)]) };
        }

        var schema = shared.Use("measured_" + _quantity.SharedName, () => new JsonObject { ["anyOf"] = new JsonArray(_quantity.SharedSchema(shared), SharedTable(shared)) });
        foreach (var (name, limit) in _quantity.Limits().ToArray())
        {
            schema[name] = limit!.DeepClone();
        }

        schema["properties"] = new JsonObject { [ValueKey] = _quantity.Limits(), [PlusMinusKey] = _plusMinus.Limits() };
        return schema;
    }

    // The table with the shared schemas of its numbers; the limits stand with each key.
    private JsonObject SharedTable(SharedSchemas shared)
    {
        var table = _table.Schema(shared);
        foreach (var (name, schema) in table["properties"]!.AsObject().ToArray())
        {
            var plain = _quantity.SharedSchema(shared);
            plain["description"] = schema!["description"]!.DeepClone();
            table["properties"]![name] = plain;
        }

        return table;
    }

    public override JsonNode? Written(Measured value) => value.PlusMinus == 0
        ? _quantity.Written(value.Value)
        : new JsonObject { [ValueKey] = _quantity.Written(value.Value), [PlusMinusKey] = _quantity.Written(value.PlusMinus) };

    public override Unit? UnitAt(ReadOnlySpan<string> path) => _quantity.UnitAt(path);

    // Where the quantity is positive by nature, a reading that may be zero or less says that nothing was measured.
    private void CheckSign(SectionValues values, Key<double> value, Key<double> plusMinus)
    {
        if (_quantity.Min > 0 && values.Get(plusMinus) >= values.Get(value))
        {
            values.Report(plusMinus, new Compared(Relation.LessThan, ValueKey, _quantity.Standard.Kind, values.Get(value), CompareReason.Positive));
        }
    }

    // "1.125 in ± 0.01" means hundredths of an inch to whoever wrote it; silently reading millimetres would be wrong.
    private static void CheckUnits(SectionValues values, Key<double> value, Key<double> plusMinus)
    {
        if (values.Written(value) is TomlText text && values.Written(plusMinus) is TomlNumber { Number: not 0 } bare
            && QuantityText.Split(text.Text) is var (_, unit))
        {
            values.Report(plusMinus, new PlusMinusWithoutUnit(bare.Written.ToString(), unit));
        }
    }
}
