using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text.Json.Nodes;
using BracketGen.Design.Checks;
using BracketGen.Geometry;
using BracketGen.Profiles.Toml;
using BracketGen.Units;

namespace BracketGen.Profiles.Forms;

/// <summary>A number, bare in its standard unit or in quotes with any unit of its kind; read into internal units.</summary>
/// <param name="standard">Unit of a bare number.</param>
/// <param name="least">Least value allowed, in the standard unit.</param>
/// <param name="most">Greatest value allowed, in the standard unit.</param>
internal sealed class QuantityForm(Unit standard, double least, double most) : Form<double>
{
    // A limit written in another unit may miss itself by a rounding: 12 in is 304.79999999999995 mm.
    private const double Rounding = 1e-12;

    public static QuantityForm Number(double least, double most) => new(UnitTable.One, least, most);

    public static QuantityForm Length(double least, double most) => new(UnitTable.Millimetre, least, most);

    public static QuantityForm Force(double least, double most) => new(UnitTable.Newton, least, most);

    public static QuantityForm Volts(double least, double most) => new(UnitTable.Volt, least, most);

    public static QuantityForm Angle(double least, double most) => new(UnitTable.Degree, least, most);

    public Unit Standard => standard;

    public double Least => least * standard.Factor;

    public override string Allowed
    {
        get
        {
            var unit = standard.Kind == Quantity.Number ? "" : " " + standard.Name;
            return $"{UnitTable.With(standard.Kind)} from {Plain(least)} to {Plain(most)}{unit}";
        }
    }

    public override bool TryRead(TomlValue value, string key, Reading reading, [MaybeNullWhen(false)] out double result)
    {
        if (Convert(value, key, reading) is not { } converted)
        {
            result = 0;
            return false;
        }

        result = converted;
        var slack = Rounding * Math.Max(Math.Abs(least), Math.Abs(most)) * standard.Factor;
        if (converted >= least * standard.Factor - slack && converted <= most * standard.Factor + slack)
        {
            return true;
        }

        var inStandard = value is TomlText ? $" {value.Written} is {Show(converted)}." : "";
        reading.Report(value, key, Allowed, $"Check the number and its unit; {BareUnit}.{inStandard}");
        return false;
    }

    /// <summary>A value in internal units as a person reads it, in the standard unit.</summary>
    public string Show(double internalValue)
    {
        var unit = standard.Kind == Quantity.Number ? "" : " " + standard.Name;
        return (internalValue / standard.Factor).ToString("0.####", CultureInfo.InvariantCulture) + unit;
    }

    public override JsonObject Schema()
    {
        var number = new JsonObject { ["type"] = "number", ["minimum"] = least, ["maximum"] = most };
        if (standard.Kind == Quantity.Number)
        {
            return number;
        }

        number["title"] = standard.Name;
        return new JsonObject { ["anyOf"] = new JsonArray(number, new JsonObject { ["type"] = "string", ["pattern"] = Pattern }) };
    }

    public override JsonNode? Written(double value) => JsonValue.Create(Math.Round(value / standard.Factor, 9));

    private string BareUnit => standard.Kind == Quantity.Number ? "it has no unit" : $"a number without a unit is in {standard.Name}";

    private string UnitsWanted => $"Give {UnitTable.With(standard.Kind)} in {UnitTable.NamesOf(standard.Kind)}";

    private string Pattern
    {
        get
        {
            var words = UnitTable.All.Where(u => u.Kind == standard.Kind).SelectMany(u => u.Spellings).Select(s => s.Replace(" ", UnitTable.Between, StringComparison.Ordinal));
            return $"^[ \\t]*({QuantityText.NumberPattern})[ \\t]*({string.Join('|', words)})[ \\t]*$";
        }
    }

    private double? Convert(TomlValue value, string key, Reading reading)
    {
        switch (value)
        {
            case TomlNumber { Number: var number } when double.IsFinite(number):
                return number * standard.Factor;
            case TomlNumber:
                reading.Report(value, key, Allowed, "Give a finite number.");
                return null;
            case TomlText text:
                return FromText(text, key, reading);
            default:
                reading.Report(value, key, Allowed, standard.Kind == Quantity.Number
                    ? "Give one number, without quotes."
                    : $"Give one number in {standard.Name}, or one in quotes with a unit.");
                return null;
        }
    }

    private double? FromText(TomlText text, string key, Reading reading)
    {
        if (standard.Kind == Quantity.Number)
        {
            reading.Report(text, key, Allowed, "Write the number without quotes and without a unit.");
            return null;
        }

        if (QuantityText.Split(text.Text) is not var (number, word))
        {
            var advice = text.Text.Contains(',') ? "Write the decimal sign as a point." : $"{UnitsWanted}, for example \"{Example}\".";
            reading.Report(text, key, Allowed, advice);
            return null;
        }

        if (word.Length == 0)
        {
            reading.Report(text, key, Allowed, $"Add a unit inside the quotes, or leave the quotes away; {BareUnit}.");
            return null;
        }

        if (UnitTable.Find(word) is not { } unit)
        {
            var near = Nearest.To(word, UnitTable.All.Where(u => u.Kind == standard.Kind).Select(u => u.Name));
            reading.Report(text, key, Allowed, $"«{word}» is no unit known here{(near is null ? "." : $"; did you mean {near}?")} {UnitsWanted}.");
            return null;
        }

        if (unit.Kind != standard.Kind)
        {
            reading.Report(text, key, Allowed, $"{unit.Name} is a unit of {UnitTable.With(unit.Kind).Split(' ')[1]}. {UnitsWanted}.");
            return null;
        }

        if (!double.IsFinite(number))
        {
            reading.Report(text, key, Allowed, "Give a finite number.");
            return null;
        }

        return number * unit.Factor;
    }

    private string Example => $"{Plain(Math.Round((least + most) / 2, 1))} {standard.Name}";

    private static string Plain(double value) => value.ToString("0.######", CultureInfo.InvariantCulture);
}
