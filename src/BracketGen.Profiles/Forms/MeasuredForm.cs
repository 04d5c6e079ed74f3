using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using BracketGen.Geometry;
using BracketGen.Profiles.Toml;
using BracketGen.Units;

namespace BracketGen.Profiles.Forms;

/// <summary>A quantity, alone or with how well it was measured: <c>{ value = 31.5, plus_minus = 0.2 }</c>.</summary>
internal sealed class MeasuredForm : Form<Measured>
{
    private readonly QuantityForm _quantity;
    private readonly Section<Measured> _table;

    public MeasuredForm(QuantityForm quantity, double mostPlusMinus)
    {
        _quantity = quantity;
        var value = new Key<double>("value", quantity, "The reading.");
        var plusMinus = new Key<double>("plus_minus", new QuantityForm(quantity.Standard, 0, mostPlusMinus), "Half-width of the interval that surely holds the true value.");
        _table = new(
            "a reading with how well it was measured",
            [value, plusMinus],
            v => new Measured(v.Get(value), v.Get(plusMinus)),
            [
                new([value, plusMinus], v => CheckSign(v, value, plusMinus)),
                new([value, plusMinus], v => CheckUnits(v, value, plusMinus)),
            ]);
    }

    public override string Allowed => _quantity.Allowed;

    public override bool TryRead(TomlValue value, string key, Reading reading, [MaybeNullWhen(false)] out Measured result)
    {
        if (value is TomlTable)
        {
            return _table.TryRead(value, key, reading, out result);
        }

        var isRead = _quantity.TryRead(value, key, reading, out var number);
        result = new(number);
        return isRead;
    }

    public override JsonObject Schema()
    {
        var plain = _quantity.Schema();
        var forms = plain["anyOf"] is JsonArray several ? several.Select(s => s!.DeepClone()) : [plain];
        return new JsonObject { ["anyOf"] = new JsonArray([.. forms, _table.Schema()]) };
    }

    public override JsonNode? Written(Measured value) => value.PlusMinus == 0
        ? _quantity.Written(value.Value)
        : new JsonObject { ["value"] = _quantity.Written(value.Value), ["plus_minus"] = _quantity.Written(value.PlusMinus) };

    // Where the quantity is positive by nature, a reading that may be zero or less says that nothing was measured.
    private void CheckSign(SectionValues values, Key<double> value, Key<double> plusMinus)
    {
        if (_quantity.Least > 0 && values.Get(plusMinus) >= values.Get(value))
        {
            values.Report(plusMinus, $"less than the value, {_quantity.Show(values.Get(value))}", "The true value cannot be zero or less: measure again, or correct the number.");
        }
    }

    // «1.125 in ± 0.01» means hundredths of an inch to whoever wrote it; silently reading millimetres would be wrong.
    private static void CheckUnits(SectionValues values, Key<double> value, Key<double> plusMinus)
    {
        if (values.Written(value) is TomlText text && values.Written(plusMinus) is TomlNumber { Number: not 0 } bare
            && QuantityText.Split(text.Text) is var (_, unit))
        {
            values.Report(plusMinus, "a quantity with its unit, as the value has one", $"Write \"{bare.Written} {unit}\" if it is in the same unit.");
        }
    }
}
