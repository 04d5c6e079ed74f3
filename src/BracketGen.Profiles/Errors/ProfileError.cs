using BracketGen.Units;

namespace BracketGen.Profiles.Errors;

/// <summary>One mistake in a profile file, as data; BracketGen.Words says it in sentences.</summary>
/// <param name="File">Path of the file.</param>
/// <param name="Line">Line, from 1; 0 where the file as a whole is meant.</param>
/// <param name="Column">Column, from 1, counted in characters; 0 where the file as a whole is meant.</param>
/// <param name="Key">Key with the tables it stands in: mount.holes[2].thread; items of a list are counted from 1. Empty where there is none.</param>
/// <param name="Read">What the file has, shortened; empty where it has nothing.</param>
/// <param name="Problem">What is wrong with it.</param>
public sealed record ProfileError(string File, int Line, int Column, string Key, string Read, ProfileProblem Problem)
{
    /// <summary>How many mistakes it stands for.</summary>
    public int Count => Problem is MoreMistakes more ? more.Count : 1;

    /// <summary>Units of the job or family that is read; null where the file is read alone and has none.</summary>
    public UnitSystem? Units { get; init; }

    /// <summary>Whether something is not there, rather than wrong.</summary>
    public bool IsMissing => Problem is KeyMissing or AlternativeMissing or KindMissing or KindNeedsKey;

    /// <summary>Whether it may be put right by saying more: a key, the numbers of a sheet, more entries of a list.</summary>
    public bool IsUnfinished => IsMissing || Problem is SheetUnknown or Contradiction { What: Contradictory.FinishWithoutThickness } or ValueWrong { Mistake: ValueMistake.FewItems };
}
