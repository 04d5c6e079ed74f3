using System.Collections.Immutable;
using BracketGen.Line.Combinations;
using BracketGen.Profiles.Family;
using BracketGen.Words.Line;

namespace BracketGen.Line.Numbering;

/// <summary>The part numbers of a line's combinations: those in the register keep theirs, the others get one when they have a bracket.</summary>
public sealed class NumberPlan
{
    private readonly NumberRule _rule;
    private readonly Register _register;

    private NumberPlan(NumberRule rule, Register register) => (_rule, _register) = (rule, register);

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

        foreach (var (number, isPinned) in rule.Pinned.Select(n => (n, true)).Concat(rule.InStock.Select(n => (n, false))).Where(n => !register.Owners.ContainsKey(n.Item1)))
        {
            conflicts.Add(new NumberConflict.NotGiven(number, isPinned ? "pinned" : "in_stock"));
        }

        var plan = new NumberPlan(rule, register);
        var taken = new Dictionary<string, string>(StringComparer.OrdinalIgnoreCase);
        foreach (var combination in combinations)
        {
            if (plan.Conflict(combination) is { } conflict)
            {
                conflicts.Add(conflict);
            }

            // A running number passes over those that are taken.
            if (plan.NumberOf(combination) is { } number && !taken.TryAdd(number, combination.Key) && plan.Known(combination) is null)
            {
                conflicts.Add(new NumberConflict.Twice(number, combination.Key, taken[number]));
            }
        }

        return conflicts.Count > 0 ? (null, conflicts.ToImmutable()) : (plan, []);
    }

    private NumberConflict? Conflict(Combination combination)
    {
        var key = combination.Key;
        if (Known(combination) is not { } known)
        {
            return NumberOf(combination) is { } number && _register.Owners.TryGetValue(number, out var owner) && owner != key
                ? new NumberConflict.Taken(number, key, owner) : null;
        }

        var byRule = PartNumber.Of(_rule, combination, known.Serial ?? 0);
        return byRule != known.PartNumber ? new NumberConflict.OtherNumber(key, known.PartNumber, byRule)
            : combination.IsReadable && known.Names != combination.Title
            ? new NumberConflict.OtherMeaning(key, known.PartNumber, known.Names, combination.Title)
            : Revision.Next(_rule.Revisions, known.Revision) is null ? new NumberConflict.OtherRevisions(known.PartNumber, known.Revision) : null;
    }

    /// <summary>The latest revision that the register has for a combination; null where it has none.</summary>
    public RegisteredRevision? Known(Combination combination) => _register.Latest.GetValueOrDefault(combination.Key);

    /// <summary>The part number that a combination has or would get; null where it would be the next running number.</summary>
    public string? NumberOf(Combination combination) =>
        Known(combination)?.PartNumber ?? (PartNumber.HasSerial(_rule) ? null : PartNumber.Of(_rule, combination, 0));

    /// <summary>Running numbers for those that have none yet.</summary>
    public RunningNumbers Running() => new(_rule, _register);

    /// <summary>The revision of a part that has this fingerprint: the register's where the part is the same, else the next; empty for what has neither part nor number.</summary>
    /// <param name="combination">The combination.</param>
    /// <param name="fingerprint">Fingerprint of the part; null where there is none, which leaves the revision as it is.</param>
    public string RevisionOf(Combination combination, string? fingerprint)
    {
        if (Known(combination) is not { } known)
        {
            return fingerprint is null ? "" : Revision.First(_rule.Revisions);
        }

        return fingerprint is null || known.Fingerprint == fingerprint ? known.Revision : Revision.Next(_rule.Revisions, known.Revision)!;
    }
}
