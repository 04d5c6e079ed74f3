using System.Collections.Immutable;
using BracketGen.Drawing.Report.Html;
using BracketGen.Profiles.Family;
using BracketGen.Profiles.Forms;

namespace BracketGen.Line.Numbering;

/// <summary>What is different between two lists of facts, in lines that people read.</summary>
public static class Difference
{
    /// <summary>«pedal.available_pull.value: 51, now 52», in the order of the new facts; what is gone comes last.</summary>
    /// <param name="what">Where the facts stand: «vehicle PLV»; empty to leave it out.</param>
    /// <param name="before">The facts before.</param>
    /// <param name="now">The facts now.</param>
    public static IEnumerable<string> Between(string what, ImmutableArray<Fact> before, ImmutableArray<Fact> now)
    {
        var lead = what.Length > 0 ? what + ", " : "";
        var old = Dictionary(before);
        var found = Dictionary(now);
        foreach (var fact in now)
        {
            if (!old.TryGetValue(fact.Key, out var value))
            {
                yield return $"{lead}{fact.Key}: nothing before, now {fact.Value}";
            }
            else if (value != fact.Value)
            {
                yield return $"{lead}{fact.Key}: {value}, now {fact.Value}";
            }
        }

        foreach (var fact in before.Where(f => !found.ContainsKey(f.Key)))
        {
            yield return $"{lead}{fact.Key}: {fact.Value}, now nothing";
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
