using BracketGen.Profiles.Errors;
using BracketGen.Units;

namespace BracketGen.Words.Profiles;

/// <summary>What to do about a value that is not of its form.</summary>
internal static class ValueText
{
    public static string Advice(ValueWrong wrong, string key) => wrong.Mistake switch
    {
        ValueMistake.NotText => wrong.Allowed is AllowedPattern { Pattern: TextPattern.ProfilePath } ? "Put the path in quotes." : "Put the text in quotes.",
        ValueMistake.EmptyText => "Write the text between the quotes.",
        ValueMistake.LongText => "Shorten the text, without line breaks or tabs.",
        ValueMistake.NotThePattern => PatternAdvice(wrong.Allowed),
        ValueMistake.ThreadSize => "Measure the thread again.",
        ValueMistake.AbsolutePath => "Write the path as seen from this file's folder, so that the files can move together.",
        ValueMistake.Backslash => "Write forward slashes; they work on every system.",
        ValueMistake.NotACount => "Write a whole number, without quotes.",
        ValueMistake.NotAList => "Put the items in brackets: [ … ].",
        ValueMistake.HeaderNotRepeated => $"Write the header with two brackets: [[{key}]].",
        ValueMistake.FewItems => "Add what is missing.",
        ValueMistake.ManyItems => "Delete what is not needed.",
        ValueMistake.NotThreeNumbers => "Give three numbers in brackets.",
        ValueMistake.NotTwoNumbers => "Give two numbers in brackets.",
        ValueMistake.NotACorner => "Give two numbers in brackets, or three: the third is the radius of the rounding.",
        ValueMistake.ZeroDirection => "Give a direction of any length, for example [0, 0, 1].",
        ValueMistake.NotATable => key.Contains('[') ? "Write a table in braces: { … }." : $"Write a table under a header [{key}].",
        ValueMistake.NotFinite => "Give a finite number.",
        ValueMistake.QuotedNumber => "Write the number without quotes and without a unit.",
        ValueMistake.DecimalComma => "Write a decimal point, not a comma.",
        ValueMistake.NotANumber => wrong.Allowed is AllowedQuantity { Unit: var unit } && unit.Kind != Quantity.Number
            ? $"Give one number in {unit.Name}, or one in quotes with a unit."
            : "Give one number, without quotes.",
        ValueMistake.NoNumber when wrong.Allowed is AllowedQuantity quantity => $"{UnitsWanted(quantity)[..^1]}, for example \"{Example(quantity)}\".",
        ValueMistake.NoUnit when wrong.Allowed is AllowedQuantity quantity => $"Add a unit inside the quotes, or remove the quotes; {BareUnit(quantity.Unit)}.",
        _ => throw new ArgumentException($"No words for {wrong}.", nameof(wrong)),
    };

    public static string Advice(OutOfRange range, string read, UnitSystem units)
    {
        // What was written in another unit than the limits are shown in is given in theirs.
        var isOther = range.Written is not null || units == UnitSystem.Inch && units.UnitOf(range.Allowed.Unit.Kind) != UnitSystem.Metric.UnitOf(range.Allowed.Unit.Kind);
        var inTheirs = isOther ? $" {read} is {AllowedText.Amount(range.Allowed, range.Value, units)}." : "";
        return $"Check the number and its unit; {BareUnit(range.Allowed.Unit)}.{inTheirs}";
    }

    public static string Advice(UnitUnknown unit) =>
        $"There is no unit \"{unit.Word}\"{(unit.Nearest is null ? "." : $"; did you mean {unit.Nearest}?")} {UnitsWanted(unit.Allowed)}";

    /// <summary>"Give a length in mm, cm, m, in or ft."</summary>
    public static string UnitsWanted(AllowedQuantity quantity) =>
        $"Give {UnitTable.With(quantity.Unit.Kind)} in {UnitTable.NamesOf(quantity.Unit.Kind)}.";

    private static string BareUnit(Unit unit) => unit.Kind == Quantity.Number ? "it has no unit" : $"a number without a unit is in {unit.Name}";

    private static string Example(AllowedQuantity quantity) =>
        $"{UnitSystems.Decimals(Math.Round((quantity.From + quantity.To) / 2, 1), "0.#")} {quantity.Unit.Name}";

    private static string PatternAdvice(AllowedValue allowed) => allowed switch
    {
        AllowedPattern { Pattern: TextPattern.Date } => "Write the date like this: 2026-03-31.",
        AllowedPattern { Pattern: TextPattern.Code } => "It becomes part of part numbers and folder names: no spaces, no other characters.",
        AllowedPattern { Pattern: TextPattern.PartNumber } => "Write it like this: \"SF-{vehicle}-{throttle_body}\".",
        AllowedPattern { Pattern: TextPattern.Thread } => "Write diameter and pitch as on the thread gauge; only M4 to M12 may leave out their coarse pitch.",
        AllowedPattern { Pattern: TextPattern.ProfilePath } => "Write the path of a file between the quotes.",
        _ => "Pack the job again, or correct the path.",
    };
}
