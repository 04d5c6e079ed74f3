using System.Collections.Immutable;
using System.Globalization;
using BracketGen.Profiles.Toml;
using BracketGen.Units;
using BracketGen.Words.Interview;

namespace BracketGen.Cli.Interview;

/// <summary>Reads the numbers of one answer as people write them, and asks wherever one may mean two things.</summary>
internal sealed class NumberReader(UnitMemory units, Conversation talk)
{
    /// <summary>The value, or what is wrong with it.</summary>
    /// <param name="parts">The numbers as typed: a value and its ±, or coordinates.</param>
    /// <param name="between">What stands between them where they are typed again; the last stands for all that follow.</param>
    /// <param name="standard">Unit of a bare number in the profile; null where no number is wanted.</param>
    /// <param name="compose">The value in TOML from its numbers in TOML.</param>
    public GivenAnswer Of(ImmutableArray<string> parts, string[] between, Unit? standard, Func<IReadOnlyList<string>, string> compose)
    {
        var read = parts.Select(HandWritten.Read).ToArray();
        if (standard is null || read.Any(r => r is null))
        {
            // No number at all: the profile's reader says what is wrong with it.
            return new(compose([.. parts.Select(TomlLiteral.Quoted)]), Join(between, parts), null);
        }

        var numbers = read.OfType<HandWritten>().ToImmutableArray();
        if (standard.Kind != Quantity.Number)
        {
            if (WithUnits(numbers, between, standard) is not { } whole)
            {
                return GivenAnswer.TakenBack;
            }

            numbers = whole;
        }

        if (Chosen(numbers, between) is not { } chosen)
        {
            return GivenAnswer.TakenBack;
        }

        return new(compose([.. chosen.Select(c => TomlOf(c, standard))]), Join(between, chosen.Select(Written)), null);
    }

    // Every number with its unit; null where the person has taken the answer back.
    private ImmutableArray<HandWritten>? WithUnits(ImmutableArray<HandWritten> numbers, string[] between, Unit standard)
    {
        foreach (var unit in numbers.Select(n => UnitTable.Find(n.Unit)).OfType<Unit>().Where(u => u.Kind == standard.Kind))
        {
            units.Say(standard, unit);
        }

        if (numbers.All(n => n.Unit.Length > 0))
        {
            return numbers;
        }

        var given = numbers.FirstOrDefault(n => n.Unit.Length > 0)?.Unit;
        if (given is not null)
        {
            // 1.125 in +/- 0.01: hundredths of an inch, says whoever wrote it. The profile's reader reports a unit that is none.
            var filled = Filled(numbers, given);
            var isClear = numbers.All(n => n.Unit.Length > 0 || n.IsZero) || UnitTable.Find(given)?.Kind != standard.Kind;
            return isClear || talk.Confirm(InterviewText.IsMeant(Text(filled, between))) == true ? filled : null;
        }

        var usual = units.Of(standard);
        if (numbers.All(n => n.IsZero))
        {
            return Filled(numbers, usual.Name);
        }

        if (units.Unsettled(standard) is { } said)
        {
            if (talk.Confirm(InterviewText.FromHereOn(Text(Filled(numbers, said.Name), between), said, usual)) is not { } isSaid)
            {
                return null;
            }

            units.Settle(standard, isSaid ? said : usual, isSaid ? usual : said);
            return Filled(numbers, units.Of(standard).Name);
        }

        // 7/64 is no way to write millimetres.
        if (usual == UnitTable.Millimetre && numbers.Any(n => n.IsFraction))
        {
            var inches = Filled(numbers, UnitTable.InchLength.Name);
            switch (talk.Confirm(InterviewText.IsMeant(Text(inches, between))))
            {
                case null:
                    return null;
                case true:
                    units.Say(standard, UnitTable.InchLength);
                    return inches;
                default:
                    break;
            }
        }

        return Filled(numbers, usual.Name);
    }

    private static ImmutableArray<HandWritten> Filled(ImmutableArray<HandWritten> numbers, string unit) =>
        [.. numbers.Select(n => n.Unit.Length > 0 ? n : n with { Unit = unit })];

    // One reading of each number; null where the person has taken the answer back.
    private ImmutableArray<(string Number, string Unit)>? Chosen(ImmutableArray<HandWritten> numbers, string[] between)
    {
        IEnumerable<ImmutableArray<(string, string)>> ways = [[]];
        foreach (var number in numbers)
        {
            ways = ways.SelectMany(w => number.Readings.Select(r => w.Add((r, number.Unit))));
        }

        var all = ways.ToArray();
        if (numbers.All(n => n.IsSure))
        {
            return all[0];
        }

        string[] written = [.. all.Select(w => Join(between, w.Select(Written)))];
        return all.Length == 1
            ? talk.Confirm(InterviewText.IsMeant(written[0])) == true ? all[0] : null
            : talk.Choose(InterviewText.WhichIsMeant, written) is { } which ? all[which] : null;
    }

    private static string Text(ImmutableArray<HandWritten> numbers, string[] between) =>
        Join(between, numbers.Select(n => Written((n.IsSure ? n.Readings[0] : string.Join(InterviewText.Or, n.Readings), n.Unit))));

    private static string Join(string[] between, IEnumerable<string> parts) =>
        string.Concat(parts.Select((p, i) => i == 0 ? p : between[Math.Min(i, between.Length) - 1] + p));

    private static string Written((string Number, string Unit) part) => part.Unit.Length == 0 ? part.Number : $"{part.Number} {part.Unit}";

    // A number in the profile's own unit stands bare, anything else in quotes with its unit.
    private static string TomlOf((string Number, string Unit) part, Unit standard)
    {
        if (part.Unit != standard.Name)
        {
            return TomlLiteral.Quoted(Written(part));
        }

        var value = QuantityText.Split(part.Number)!.Value.Number;
        var isPlain = !part.Number.Contains('/') && !part.Number.Contains('e', StringComparison.OrdinalIgnoreCase);
        return Math.Abs(value) < 1e9 && (isPlain || standard.Kind == Quantity.Number)
            ? value.ToString("0.############", CultureInfo.InvariantCulture)
            : TomlLiteral.Quoted(Written(part));
    }
}
