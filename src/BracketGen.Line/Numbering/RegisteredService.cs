using System.Collections.Immutable;

namespace BracketGen.Line.Numbering;

/// <summary>Which part serves a variant from now on.</summary>
/// <param name="Combination">Key of the variant.</param>
/// <param name="Names">Its names.</param>
/// <param name="PartNumber">The part; null where none serves it any more.</param>
/// <param name="Revision">Its revision; null where none serves it any more.</param>
/// <param name="Why">Why it is another than before, a line each; empty for the first.</param>
public sealed record RegisteredService(string Combination, string Names, string? PartNumber, string? Revision, ImmutableArray<string> Why);

/// <summary>A revision that no longer passes on a variant that it was given out for, or that passes again.</summary>
/// <param name="PartNumber">The part.</param>
/// <param name="Revision">Its revision.</param>
/// <param name="Combination">Key of the variant.</param>
/// <param name="Names">Names of the variant.</param>
/// <param name="Why">Why, a line each; empty where it passes again.</param>
public sealed record RegisteredRecall(string PartNumber, string Revision, string Combination, string Names, ImmutableArray<string> Why)
{
    internal (string, string, string) Key => (PartNumber, Revision, Combination);
}
