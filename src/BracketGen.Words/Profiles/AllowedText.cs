using System.Globalization;
using BracketGen.Profiles.Errors;
using BracketGen.Units;

namespace BracketGen.Words.Profiles;

/// <summary>What may stand in a profile, in words that fit after "allowed:".</summary>
internal static class AllowedText
{
    public static string Of(AllowedValue allowed, UnitSystem units) => allowed switch
    {
        AllowedQuantity quantity => Range(quantity, units),
        AllowedCount count => string.Create(CultureInfo.InvariantCulture, $"a whole number from {count.From} to {count.To}"),
        AllowedLine text => string.Create(CultureInfo.InvariantCulture, $"text in quotes, 1 to {text.Max} characters on one line"),
        AllowedWords words => Choice(words.Words),
        AllowedList list => string.Create(CultureInfo.InvariantCulture, $"a list of {list.From} to {list.To} items, each {Of(list.Item, units)}"),
        AllowedVector vector => $"{(vector.IsDirection ? "a direction" : "a point")} [x, y, z], each {Range(vector.Coordinate, units)}",
        AllowedFlangePoint { MayRound: true } corner => $"a corner [x, y] or [x, y, radius], x and y each {Range(corner.Coordinate, units)}",
        AllowedFlangePoint point => $"a point [x, y], each {Range(point.Coordinate, units)}",
        AllowedTable table => $"a table with the keys {string.Join(", ", table.Keys)}",
        AllowedKinds kinds => $"a table with {kinds.Tag} = {Choice(kinds.Words)}",
        AllowedPattern pattern => Pattern(pattern.Pattern, units),
        _ => throw new ArgumentException($"No words for {allowed}.", nameof(allowed)),
    };

    /// <summary>"a" or "b".</summary>
    public static string Choice(IEnumerable<string> words) => string.Join(" or ", words.Select(w => $"\"{w}\""));

    /// <summary>A number with the unit that a limit is shown in: the unit of a bare number, or the inch system's.</summary>
    public static string Amount(AllowedQuantity quantity, double internalValue, UnitSystem units)
    {
        var unit = UnitOf(quantity, units);
        return WithUnit(UnitSystems.Decimals(internalValue / unit.Factor, "0.####"), unit);
    }

    private static string Range(AllowedQuantity quantity, UnitSystem units)
    {
        // Rounded inwards: a limit as printed is allowed.
        const double scale = 1e4, slack = 1e-6;
        var unit = UnitOf(quantity, units);
        var (from, to) = (quantity.From * quantity.Unit.Factor / unit.Factor, quantity.To * quantity.Unit.Factor / unit.Factor);
        var last = UnitSystems.Decimals(Math.Floor(to * scale + slack) / scale, "0.####");
        return $"{UnitTable.With(unit.Kind)} from {UnitSystems.Decimals(Math.Ceiling(from * scale - slack) / scale, "0.####")} to {WithUnit(last, unit)}";
    }

    private static Unit UnitOf(AllowedQuantity quantity, UnitSystem units)
    {
        var kind = quantity.Unit.Kind;
        return units.UnitOf(kind) == UnitSystem.Metric.UnitOf(kind) ? quantity.Unit : units.UnitOf(kind);
    }

    private static string WithUnit(string number, Unit unit) =>
        unit == UnitTable.Degree ? number + "°" : unit.Name.Length == 0 ? number : $"{number} {unit.Name}";

    private static string Pattern(TextPattern pattern, UnitSystem units)
    {
        string Range(double from, double to) =>
            $"{UnitSystems.Decimals(units.In(Quantity.Length, from), "0.####")} to {units.WriteLimit(Quantity.Length, to)}";
        return pattern switch
        {
            TextPattern.Date => "a date: year-month-day",
            TextPattern.Code => "1 to 12 letters (A to Z) and digits, in quotes",
            TextPattern.PartNumber => "letters (A to Z), digits, - . _ and the words {vehicle} {throttle_body} {material} {option} {serial}, in quotes",
            TextPattern.Thread =>
                $"a thread such as \"M8x1\" or \"5/16-24\": diameter {Range(3, 30)}, pitch {Range(0.2, 4)}",
            TextPattern.ProfilePath => "a path from this file's folder, with forward slashes: \"../vehicles/name.toml\"",
            TextPattern.PackedPath => "a path with forward slashes and without \"..\": \"vehicles/name.toml\"",
            _ => "a whole file as text",
        };
    }
}
