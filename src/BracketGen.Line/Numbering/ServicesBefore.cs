using BracketGen.Profiles.Family;

namespace BracketGen.Line.Numbering;

/// <summary>What was given out before, as the choice of parts looks at it.</summary>
/// <param name="Serving">Number of the part that serves a variant, by the variant's key: it stays where it still passes.</param>
/// <param name="Preferred">Numbers preferred where several parts would do as well.</param>
/// <param name="Pinned">Numbers that are always among the parts.</param>
public sealed record ServicesBefore(IReadOnlyDictionary<string, string> Serving, IReadOnlySet<string> Preferred, IReadOnlySet<string> Pinned)
{
    /// <summary>Nothing was given out.</summary>
    public static ServicesBefore None { get; } = new(new Dictionary<string, string>(), new HashSet<string>(), new HashSet<string>());

    /// <summary>What a register and the shop's rule say.</summary>
    /// <param name="register">The register.</param>
    /// <param name="rule">The rule.</param>
    /// <param name="anew">Whether the parts are chosen anew: then those that serve variants are only preferred, but for pinned ones.</param>
    public static ServicesBefore Of(Register register, NumberRule rule, bool anew)
    {
        var serving = register.Serving.Values.Where(s => s.PartNumber is not null).ToDictionary(s => s.Combination, s => s.PartNumber!);
        return new(anew ? serving.Where(s => rule.Pinned.Contains(s.Value)).ToDictionary() : serving, serving.Values.Concat(rule.InStock).Concat(rule.Pinned).ToHashSet(), rule.Pinned.ToHashSet());
    }
}
