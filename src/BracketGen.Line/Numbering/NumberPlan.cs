using System.Collections.Immutable;
using BracketGen.Line.Combinations;
using BracketGen.Profiles.Family;
using BracketGen.Profiles.Forms;
using BracketGen.Words.Checks;

namespace BracketGen.Line.Numbering;

/// <summary>The part number of every combination, before any is solved: those in the register keep theirs.</summary>
public sealed class NumberPlan
{
    private readonly NumberRule _rule;
    private readonly Register _register;
    private readonly Dictionary<string, (string Number, int? Serial)> _numbers;

    private NumberPlan(NumberRule rule, Register register, Dictionary<string, (string, int?)> numbers) =>
        (_rule, _register, _numbers) = (rule, register, numbers);

    /// <summary>The plan, or every conflict with the register, in words.</summary>
    /// <param name="family">Name of the family.</param>
    /// <param name="rule">The shop's rule.</param>
    /// <param name="combinations">The combinations offered, in order.</param>
    /// <param name="register">The register.</param>
    public static (NumberPlan? Plan, ImmutableArray<string> Conflicts) Of(
        string family, NumberRule rule, ImmutableArray<Combination> combinations, Register register)
    {
        var conflicts = ImmutableArray.CreateBuilder<string>();
        if (register.Family != family)
        {
            conflicts.Add($"The register is that of the line «{register.Family}», not of «{family}». Name the right register, or give the line its old name.");
        }

        var numbers = new Dictionary<string, (string, int?)>();
        var taken = new Dictionary<string, string>(StringComparer.OrdinalIgnoreCase);
        var next = Math.Max(rule.FirstSerial, register.Revisions.Max(r => r.Serial + 1) ?? 0);
        foreach (var combination in combinations)
        {
            register.Latest.TryGetValue(combination.Key, out var known);
            int? serial = PartNumber.HasSerial(rule) ? known?.Serial ?? (known is null ? next++ : null) : null;
            var number = PartNumber.Of(rule, combination, serial ?? 0);
            if (known is not null && known.PartNumber != number)
            {
                conflicts.Add(
                    $"{combination.Key} has the number {known.PartNumber} in the register; by the rule it would now be {number}. Put the rule back as it was, or begin another register.");
            }
            else if (known is not null && combination.IsReadable && known.Names != combination.Title)
            {
                conflicts.Add(
                    $"{combination.Key} was «{known.Names}» when {known.PartNumber} was given out, and would now be «{combination.Title}». A code that was given out stays what it was: take a new one.");
            }
            else if (known is not null && Revision.Next(rule.Revisions, known.Revision) is null)
            {
                conflicts.Add($"{known.PartNumber} has the revision {known.Revision} in the register, which the rule does not count on from. Put the rule back as it was.");
            }
            else if (register.Owners.TryGetValue(number, out var owner) && owner != combination.Key)
            {
                conflicts.Add($"{number} would be the number of {combination.Key}, but was given to {owner}. Change a code, or the rule.");
            }
            else if (taken.TryGetValue(number, out var other))
            {
                conflicts.Add($"{number} would be the number of {combination.Key} and of {other}. Change a code, or the rule.");
            }

            taken.TryAdd(number, combination.Key);
            numbers[combination.Key] = (number, serial);
        }

        return conflicts.Count > 0 ? (null, conflicts.ToImmutable()) : (new(rule, register, numbers), []);
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
