using System.Collections.Immutable;
using BracketGen.Line.Combinations;
using BracketGen.Line.Numbering;
using BracketGen.Profiles.Family;

namespace BracketGen.Line.Solving;

/// <summary>What of the variants' own parts is to be recalled: what was given out and does not pass any more.</summary>
public static class NewRecalls
{
    /// <summary>The register with a line for each, and for each that passes again.</summary>
    /// <param name="register">The register.</param>
    /// <param name="rule">The shop's rule.</param>
    /// <param name="combinations">The combinations.</param>
    /// <param name="made">What was made of them, in the same order.</param>
    public static Register Add(Register register, NumberRule rule, ImmutableArray<Combination> combinations, ImmutableArray<Made> made)
    {
        // A part that never served a variant was never sold; a register without services does not tell.
        var sold = register.Services.Select(s => s.PartNumber).OfType<string>().Concat(rule.InStock).Concat(rule.Pinned).ToHashSet();
        var open = register.OpenRecalls.Select(r => r.Key).ToHashSet();
        List<RegisteredRecall> recalls = [];
        foreach (var (combination, done) in combinations.Zip(made))
        {
            if (done.Before is { IsRecalled: true } before && (register.Services.IsEmpty || sold.Contains(done.PartNumber)))
            {
                var recall = new RegisteredRecall(done.PartNumber, before.Revision, combination.Key, combination.Title, [.. before.Why]);
                if (!open.Contains(recall.Key))
                {
                    recalls.Add(recall);
                }
            }
            else if (done.HasPart && open.Contains((done.PartNumber, done.Revision, combination.Key)))
            {
                recalls.Add(new(done.PartNumber, done.Revision, combination.Key, combination.Title, []));
            }
        }

        return register.With(recalls);
    }
}
