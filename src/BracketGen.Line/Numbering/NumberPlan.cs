using System.Collections.Immutable;
using BracketGen.Line.Combinations;
using BracketGen.Profiles.Family;
using BracketGen.Words.Line;

namespace BracketGen.Line.Numbering;

/// <summary>The part number of every combination, before any is solved: those in the register keep theirs.</summary>
public sealed class NumberPlan
{
    private readonly NumberRule _rule;
    private readonly Register _register;
    private readonly Dictionary<string, (string Number, int? Serial)> _numbers;

    private NumberPlan(NumberRule rule, Register register, Dictionary<string, (string, int?)> numbers) =>
        (_rule, _register, _numbers) = (rule, register, numbers);

    /// <summary>The plan, or every conflict with the register.</summary>
    /// <param name="family">Name of the family.</param>
    /// <param name="rule">The shop's rule.</param>
    /// <param name="combinations">The combinations offered, in order.</param>
    /// <param name="register">The register.</param>
    public static (NumberPlan? Plan, ImmutableArray<NumberConflict> Conflicts) Of(
        string family, NumberRule rule, ImmutableArray<Combination> combinations, Register register)
    {
        var conflicts = ImmutableArray.CreateBuilder<NumberConflict>();
        if (register.Family != family)
        {
            conflicts.Add(new NumberConflict.OtherFamily(register.Family, family));
        }

        var numbers = new Dictionary<string, (string, int?)>();
        var taken = new Dictionary<string, string>(StringComparer.OrdinalIgnoreCase);
        var next = Math.Max(rule.FirstSerial, register.Revisions.Max(r => r.Serial + 1) ?? 0);
        foreach (var combination in combinations)
        {
            register.Latest.TryGetValue(combination.Key, out var known);
            int? serial = PartNumber.HasSerial(rule) ? known?.Serial ?? (known is null ? next++ : null) : null;
            var number = PartNumber.Of(rule, combination, serial ?? 0);
            if (Conflict(rule, register, combination, number, taken) is { } conflict)
            {
                conflicts.Add(conflict);
            }

            taken.TryAdd(number, combination.Key);
            numbers[combination.Key] = (number, serial);
        }

        return conflicts.Count > 0 ? (null, conflicts.ToImmutable()) : (new(rule, register, numbers), []);
    }

    private static NumberConflict? Conflict(NumberRule rule, Register register, Combination combination, string number, Dictionary<string, string> taken)
    {
        var key = combination.Key;
        if (register.Latest.TryGetValue(key, out var known))
        {
            if (known.PartNumber != number)
            {
                return new NumberConflict.OtherNumber(key, known.PartNumber, number);
            }

            if (combination.IsReadable && known.Names != combination.Title)
            {
                return new NumberConflict.OtherMeaning(key, known.PartNumber, known.Names, combination.Title);
            }

            if (Revision.Next(rule.Revisions, known.Revision) is null)
            {
                return new NumberConflict.OtherRevisions(known.PartNumber, known.Revision);
            }
        }

        return register.Owners.TryGetValue(number, out var owner) && owner != key ? new NumberConflict.Taken(number, key, owner)
            : taken.TryGetValue(number, out var other) ? new NumberConflict.Twice(number, key, other)
            : null;
    }

    /// <summary>The part number of a combination.</summary>
    public string NumberOf(Combination combination) => _numbers[combination.Key].Number;

    /// <summary>Its running number; null where the rule has none.</summary>
    public int? SerialOf(Combination combination) => _numbers[combination.Key].Serial;

    /// <summary>The revision of a part that has this fingerprint: the register's where the part is the same, else the next.</summary>
    /// <param name="combination">The combination.</param>
    /// <param name="fingerprint">Fingerprint of the part; null where there is none, which leaves the revision as it is.</param>
    public string RevisionOf(Combination combination, string? fingerprint)
    {
        if (!_register.Latest.TryGetValue(combination.Key, out var known))
        {
            return Revision.First(_rule.Revisions);
        }

        return fingerprint is null || known.Fingerprint == fingerprint ? known.Revision : Revision.Next(_rule.Revisions, known.Revision)!;
    }
}
