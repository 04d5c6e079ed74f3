using BracketGen.Design.Checks;

namespace BracketGen.Design.Search;

/// <summary>How far a search goes.</summary>
/// <param name="Strength">How finely brackets are meshed to see whether they bend, shake or crack; null where that is not looked at.</param>
public sealed record SearchEffort(StrengthDetail? Strength)
{
    /// <summary>Enough for the whole pool of each shipped job.</summary>
    public const int UsualSolves = 6_000;

    /// <summary>How many brackets are judged by finite elements at most: a count, so that the same input gives the same answer on every machine.</summary>
    public int MaxSolves { get; init; } = UsualSolves;

    /// <summary>How many shapes are looked at, at most; all where nothing else is said.</summary>
    public int MaxShapes { get; init; } = int.MaxValue;

    /// <summary>Whether other brackets that pass are looked for beside the best.</summary>
    public bool WithOthers { get; init; }

    /// <summary>All that <c>make</c> looks at.</summary>
    public static SearchEffort Whole { get; } = new(StrengthDetail.Usual) { WithOthers = true };

    /// <summary>The best bracket with its strength, and no others.</summary>
    public static SearchEffort BestOnly { get; } = new(StrengthDetail.Usual);

    /// <summary>The best bracket by all but its strength.</summary>
    public static SearchEffort WithoutStrength { get; } = new((StrengthDetail?)null);
}
