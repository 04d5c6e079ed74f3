using System.Collections.Immutable;
using BracketGen.Line.Combinations;
using BracketGen.Profiles.Family;

namespace BracketGen.Line.Solving;

/// <summary>Brings the passing combinations back with their brackets, whether they were made now or by an earlier run.</summary>
public static class LineParts
{
    /// <summary>The passing combinations, in order.</summary>
    /// <param name="family">The family.</param>
    /// <param name="combinations">The combinations.</param>
    /// <param name="made">What was made of them, in the same order.</param>
    public static ImmutableArray<LinePart> Of(LoadedFamily family, ImmutableArray<Combination> combinations, ImmutableArray<Made> made) =>
    [
        .. from pair in combinations.Zip(made)
           where pair.Second.Part is not null
           let job = CombinationJob.Of(family, pair.First, pair.Second.PartNumber, pair.Second.Revision)
           let bracket = pair.Second.Part!.ToBracket(family, job.Vehicle.Cable, job.Preferences.StopOpening)
           where bracket is not null
           select new LinePart(pair.First, pair.Second, bracket, job),
    ];
}
