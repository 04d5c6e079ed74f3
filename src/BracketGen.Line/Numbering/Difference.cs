using System.Collections.Immutable;
using BracketGen.Profiles.Family;
using BracketGen.Words.Line;

namespace BracketGen.Line.Numbering;

/// <summary>What is different between two lists of facts.</summary>
public static class Difference
{
    /// <summary>The changes, in the order of the new facts; what is gone comes last.</summary>
    /// <param name="source">Where the facts stand: "vehicle PLV"; empty for the part itself.</param>
    /// <param name="before">The facts before.</param>
    /// <param name="now">The facts now.</param>
    public static IEnumerable<FactChange> Between(string source, ImmutableArray<Fact> before, ImmutableArray<Fact> now)
    {
        var old = Dictionary(before);
        var found = Dictionary(now);
        foreach (var fact in now)
        {
            if (!old.TryGetValue(fact.Key, out var value))
            {
                yield return new(source, fact.Key, null, fact.Value);
            }
            else if (value != fact.Value)
            {
                yield return new(source, fact.Key, value, fact.Value);
            }
        }

        foreach (var fact in before.Where(f => !found.ContainsKey(f.Key)))
        {
            yield return new(source, fact.Key, fact.Value, null);
        }
    }

    private static Dictionary<string, string> Dictionary(ImmutableArray<Fact> facts)
    {
        var dictionary = new Dictionary<string, string>();
        foreach (var fact in facts)
        {
            dictionary[fact.Key] = fact.Value;
        }

        return dictionary;
    }
}
