namespace BracketGen.Words.Line;

/// <summary>Why a variant cannot get its part number.</summary>
public abstract record NumberConflict
{
    /// <summary>The register is that of another family.</summary>
    public sealed record OtherFamily(string Registered, string Family) : NumberConflict;

    /// <summary>By the rule the variant would get another number than it has.</summary>
    public sealed record OtherNumber(string Variant, string Registered, string ByRule) : NumberConflict;

    /// <summary>A code of the variant now means something else.</summary>
    public sealed record OtherMeaning(string Variant, string PartNumber, string Registered, string Now) : NumberConflict;

    /// <summary>The rule does not continue from the registered revision.</summary>
    public sealed record OtherRevisions(string PartNumber, string Revision) : NumberConflict;

    /// <summary>The number belongs to another variant in the register.</summary>
    public sealed record Taken(string PartNumber, string Variant, string Owner) : NumberConflict;

    /// <summary>The rule gives two variants one number.</summary>
    public sealed record Twice(string PartNumber, string Variant, string Other) : NumberConflict;

    /// <summary>A number that is pinned or in stock is in no register.</summary>
    public sealed record NotGiven(string PartNumber, string Key) : NumberConflict;

    /// <summary>The conflict in a sentence or two, with what to do.</summary>
    public string Text => this switch
    {
        OtherFamily c => $"The register belongs to the line \"{c.Registered}\", not to \"{c.Family}\". Name the right register, or give the line its old name.",
        OtherNumber c =>
            $"{c.Variant} has the number {c.Registered} in the register; by the rule it would now be {c.ByRule}. Restore the old rule, or start another register.",
        OtherMeaning c =>
            $"{c.Variant} was \"{c.Registered}\" when {c.PartNumber} was given out, and would now be \"{c.Now}\". A code keeps its meaning once a number is given out: use a new code.",
        OtherRevisions c => $"{c.PartNumber} has the revision {c.Revision} in the register, and the rule does not continue from it. Restore the old rule.",
        Taken c => $"{c.Variant} would get the number {c.PartNumber}, which was given to {c.Owner}. Change a code, or the rule.",
        Twice c => $"{c.Variant} and {c.Other} would both get the number {c.PartNumber}. Change a code, or the rule.",
        NotGiven c => $"numbers.{c.Key} names {c.PartNumber}, and the register has no such number. Correct the number, or take it out.",
        _ => throw new InvalidOperationException("A conflict of an unknown kind."),
    };
}
