using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Toml;
using BracketGen.Units;

namespace BracketGen.Profiles.Forms;

/// <summary>A number, bare in its standard unit or in quotes with any unit of its kind; read into internal units.</summary>
/// <param name="standard">Unit of a bare number.</param>
/// <param name="min">Minimum, in the standard unit.</param>
/// <param name="max">Maximum, in the standard unit.</param>
internal sealed class QuantityForm(Unit standard, double min, double max) : Form<double>
{
    // A limit written in another unit may miss itself by a rounding: 12 in is 304.79999999999995 mm.
    private const double Rounding = 1e-12;

    public static QuantityForm Number(double min, double max) => new(UnitTable.One, min, max);

    public static QuantityForm Length(double min, double max) => new(UnitTable.Millimetre, min, max);

    public static QuantityForm Force(double min, double max) => new(UnitTable.Newton, min, max);

    public static QuantityForm Volts(double min, double max) => new(UnitTable.Volt, min, max);

    public static QuantityForm Angle(double min, double max) => new(UnitTable.Degree, min, max);

    public Unit Standard => standard;

    /// <summary>Minimum, in the internal unit.</summary>
    public double Min => min * standard.Factor;

    public AllowedQuantity Range => new(standard, min, max);

    public override AllowedValue Allowed => Range;

    private bool IsPlain => standard.Kind == Quantity.Number;

    public override bool TryRead(TomlValue value, string key, Reading reading, [MaybeNullWhen(false)] out double result)
    {
        var (read, problem) = Read(value);
        result = read;
        if (problem is not null)
        {
            value.Report(key, reading, problem);
        }

        return problem is null;
    }

    public override JsonObject Schema(SharedSchemas shared)
    {
        if (IsPlain)
        {
            return new() { ["type"] = "number", ["minimum"] = min, ["maximum"] = max };
        }

        if (shared.IsInFull)
        {
            var number = Limits();
            number["type"] = "number";
            number["title"] = standard.Name;
            return new() { ["anyOf"] = new JsonArray(number, Text()) };
        }

        var schema = SharedSchema(shared);
        foreach (var (name, limit) in Limits().ToArray())
        {
            schema[name] = limit!.DeepClone();
        }

        return schema;
    }

    /// <summary>A reference to the schema of all values of this kind, without the limits.</summary>
    public JsonObject SharedSchema(SharedSchemas shared) => IsPlain ? new() { ["type"] = "number" } : shared.Use(
        SharedName, () => new JsonObject { ["anyOf"] = new JsonArray(new JsonObject { ["type"] = "number", ["title"] = standard.Name }, Text()) });

    /// <summary>Name of that schema: length, torque; modulus, which is a stress in another unit.</summary>
    public string SharedName => standard == UnitTable.Gigapascal ? "modulus" : standard.Kind.ToString().ToLowerInvariant();

    /// <summary>The limits alone; a schema applies them to bare numbers only.</summary>
    public JsonObject Limits() => new() { ["minimum"] = min, ["maximum"] = max };

    public override JsonNode? Written(double value) => JsonValue.Create(Math.Round(value / standard.Factor, 9));

    public override Unit? UnitAt(ReadOnlySpan<string> path) => path.IsEmpty ? standard : null;

    private JsonObject Text()
    {
        var words = UnitTable.All.Where(u => u.Kind == standard.Kind).SelectMany(u => u.Spellings).Select(s => s.Replace(" ", UnitTable.Between, StringComparison.Ordinal));
        return new() { ["type"] = "string", ["pattern"] = $"^[ \\t]*({QuantityText.NumberPattern})[ \\t]*({string.Join('|', words)})[ \\t]*$" };
    }

    private (double Value, ProfileProblem? Problem) Read(TomlValue value) => value switch
    {
        TomlNumber number => InRange(number.Number, standard, written: null),
        TomlText text when IsPlain => Wrong(ValueMistake.QuotedNumber),
        TomlText text => Read(text.Text),
        _ => Wrong(ValueMistake.NotANumber),
    };

    private (double Value, ProfileProblem? Problem) Read(string text)
    {
        if (QuantityText.Split(text) is not var (number, word))
        {
            return Wrong(text.Contains(',') ? ValueMistake.DecimalComma : ValueMistake.NoNumber);
        }

        if (word.Length == 0)
        {
            return Wrong(ValueMistake.NoUnit);
        }

        return UnitTable.Find(word) is not { } unit
                ? (0, new UnitUnknown(Range, word, Nearest.To(word, UnitTable.All.Where(u => u.Kind == standard.Kind).Select(u => u.Name))))
            : unit.Kind != standard.Kind ? (0, new UnitWrong(Range, unit))
            : InRange(number, unit, unit);
    }

    private (double Value, ProfileProblem? Problem) InRange(double number, Unit unit, Unit? written)
    {
        if (!double.IsFinite(number))
        {
            return Wrong(ValueMistake.NotFinite);
        }

        var value = number * unit.Factor;
        var slack = Rounding * Math.Max(Math.Abs(min), Math.Abs(max)) * standard.Factor;
        return (value, value >= min * standard.Factor - slack && value <= max * standard.Factor + slack ? null : new OutOfRange(Range, value, written));
    }

    private (double Value, ProfileProblem? Problem) Wrong(ValueMistake mistake) => (0, new ValueWrong(mistake, Allowed));
}
