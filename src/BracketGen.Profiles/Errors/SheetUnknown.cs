using System.Collections.Immutable;

namespace BracketGen.Profiles.Errors;

/// <summary>A sheet by its designation alone that is not in the library.</summary>
/// <param name="Known">The designations in the library.</param>
/// <param name="Nearest">The one that is spelled most like it; null where none is near.</param>
/// <param name="Numbers">Keys that say what the library would.</param>
public sealed record SheetUnknown(ImmutableArray<string> Known, string? Nearest, ImmutableArray<string> Numbers) : ProfileProblem;
