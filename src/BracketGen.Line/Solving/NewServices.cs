using System.Collections.Immutable;
using BracketGen.Line.Combinations;
using BracketGen.Line.Numbering;
using BracketGen.Profiles.Family;
using BracketGen.Words.Line;

namespace BracketGen.Line.Solving;

/// <summary>What a choice of parts has to add to the register: which part serves which variant from now on, why it is another, and what to recall.</summary>
/// <param name="family">The family.</param>
/// <param name="combinations">What is sold and what is not.</param>
/// <param name="made">What was made of the offered, in the same order.</param>
/// <param name="strength">How finely brackets are meshed for their strength.</param>
/// <param name="asked">Why the choice is another than before where nothing failed: what was asked for; null for nothing.</param>
public sealed class NewServices(LoadedFamily family, FamilyCombinations combinations, ImmutableArray<Made> made, Design.Checks.StrengthDetail? strength, string? asked)
{
    /// <summary>The register with a line for every variant that is served otherwise than before, and for every part given out that fails on one.</summary>
    /// <param name="register">The register, this run's revisions in it.</param>
    /// <param name="selection">The parts and whom they serve.</param>
    public Register Add(Register register, PartSelection selection)
    {
        var services = selection.Services.ToDictionary(s => s.Served.Combination.Key);
        var variants = combinations.Offered.Zip(made, (c, m) => (c.Key, c.Title, Combination: (Combination?)c, Made: (Made?)m, NotSold: (string?)null))
            .Concat(combinations.Excluded.Select(e => (e.Combination.Key, e.Combination.Title, (Combination?)null, (Made?)null, (string?)LineText.NotSoldBecause(e.Reason))))
            .ToList();
        var known = variants.Select(v => v.Key).ToHashSet();
        variants.AddRange(register.Serving.Values.Where(s => !known.Contains(s.Combination)).Select(s => (s.Combination, s.Names, (Combination?)null, (Made?)null, (string?)IssuedText.VariantGone)));
        var open = register.OpenRecalls.Select(r => r.Key).ToHashSet();
        var parts = made.Where(m => m.HasPart).Select(m => (m.PartNumber, m.Revision)).ToHashSet();
        List<RegisteredService> changed = [];
        List<RegisteredRecall> recalls = [];
        foreach (var (key, title, combination, done, notSold) in variants)
        {
            var before = register.Serving.GetValueOrDefault(key);
            var now = services.GetValueOrDefault(key);
            var (number, revision) = (now?.By.Made.PartNumber, now?.By.Made.Revision);
            if (now is not null && open.Contains((number!, revision!, key)))
            {
                recalls.Add(new(number!, revision!, key, title, []));
            }

            if (before?.PartNumber == number && before?.Revision == revision)
            {
                continue;
            }

            var lost = selection.Lost.GetValueOrDefault(key);
            changed.Add(new(key, title, number, revision, before is null ? [] : [.. Why(before, now, done, notSold, lost)]));
            if (before?.PartNumber is { } old && combination is not null && old != done!.PartNumber && Fails(register, parts, before, combination, done, lost) is { Length: > 0 } why
                && !open.Contains((old, before.Revision!, key)))
            {
                recalls.Add(new(old, before.Revision!, key, title, [.. why]));
            }
        }

        return register.With(changed).With(recalls);
    }

    // The variant's own part is looked at where it is solved. Where the number has another shape by now, the one that was given out is tried.
    private string[] Fails(Register register, HashSet<(string, string)> parts, RegisteredService before, Combination combination, Made done, string[]? lost)
    {
        if (lost is not null && parts.Contains((before.PartNumber!, before.Revision!)))
        {
            return lost;
        }

        return combination.IsReadable
            ? IssuedPart.On(family, CombinationJob.Of(family, combination, "", ""), register.Find(before.PartNumber!, before.Revision)?.Shape, strength, done.Fit?.ToProve).Why
            : [];
    }

    private IEnumerable<string> Why(RegisteredService before, Service? now, Made? done, string? notSold, string[]? lost)
    {
        if (notSold is not null)
        {
            return [notSold];
        }

        if (now is null)
        {
            return done is { Reasons.Length: > 0 } ? done.Reasons : [IssuedText.NoBracket];
        }

        if (before.PartNumber is null)
        {
            return [IssuedText.ServedAgain];
        }

        if (now.By.Made.PartNumber == before.PartNumber)
        {
            return now.By.Made.Before is { } outdated ? outdated.Why : [IssuedText.NewRevision];
        }

        return lost is not null ? lost
            : family.Family.Numbers.Pinned.Contains(now.By.Made.PartNumber) ? [IssuedText.IsPinned(now.By.Made.PartNumber)]
            : asked is not null ? [asked]
            : [IssuedText.NotMade(before.PartNumber)];
    }
}
