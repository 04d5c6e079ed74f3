using System.Collections.Immutable;
using BracketGen.Design.Part;
using BracketGen.Line.Combinations;
using BracketGen.Line.Numbering;
using BracketGen.Units;
using BracketGen.Words.Line;

namespace BracketGen.Line.Solving;

/// <summary>What a run has to add to the register.</summary>
public static class NewRevisions
{
    /// <summary>The register with a line for every part that is new or different, and with what those were made from.</summary>
    /// <param name="register">The register as it was read.</param>
    /// <param name="combinations">The combinations.</param>
    /// <param name="made">What was made of them, in the same order.</param>
    /// <param name="inputs">What they were made from.</param>
    /// <param name="parts">The parts that pass.</param>
    /// <param name="units">The family's units.</param>
    public static Register Add(
        Register register, ImmutableArray<Combination> combinations, ImmutableArray<Made> made, CombinationInputs inputs,
        IEnumerable<LinePart> parts, UnitSystem units)
    {
        var brackets = parts.ToDictionary(p => p.Combination.Key, p => p.Bracket);
        var revisions = new List<RegisteredRevision>();
        var sources = new List<Source>();
        foreach (var (combination, done) in combinations.Zip(made))
        {
            register.Latest.TryGetValue(combination.Key, out var before);
            if (done.Fingerprint is not { } fingerprint || before?.Fingerprint == fingerprint)
            {
                continue;
            }

            var from = inputs.Of(combination);
            var bracket = brackets[combination.Key];
            sources.AddRange(from);
            revisions.Add(new(
                done.PartNumber, done.Revision, combination.Key, combination.Title, done.Serial, fingerprint,
                PartFactsText.Of(bracket, units), [.. from.Select(s => s.Hash)], before is null ? [] : [.. Changes(register, before, from, bracket)])
            {
                Shape = done.Part,
            });
        }

        return revisions.Count == 0 ? register : register.With(revisions, sources);
    }

    // First what changed in the files, then what that made of the part, in the units that the register has the part in.
    private static IEnumerable<string> Changes(Register register, RegisteredRevision before, ImmutableArray<Source> now, Bracket bracket)
    {
        foreach (var source in now.Where(s => !before.Sources.Contains(s.Hash)))
        {
            var old = before.Sources.Select(register.SourceOf).FirstOrDefault(s => s?.Name == source.Name);
            foreach (var line in old is null ? [RevisionText.NewSource(source.Name)] : Difference.Between(source.Name, old.Facts, source.Facts).Select(RevisionText.Of))
            {
                yield return line;
            }
        }

        var part = PartFactsText.Of(bracket, PartFactsText.UnitsOf(before.Facts));
        foreach (var change in Difference.Between("", before.Facts, part))
        {
            yield return RevisionText.Of(change);
        }
    }
}
