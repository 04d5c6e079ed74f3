using BracketGen.Design.Inputs;
using BracketGen.Design.Study;
using BracketGen.Geometry;
using BracketGen.Words.Checks;

namespace BracketGen.Words.Report;

/// <summary>What an answer assumes.</summary>
public static class AssumedText
{
    /// <summary>Over the list.</summary>
    public const string Intro = "Nobody measured or gave these. The checks take common values for them. Measure those first on which the most checks rest.";

    /// <summary>A line for each assumed input, those first on which the most checks rest.</summary>
    public static IReadOnlyList<string> Of(Solution solution) =>
    [
        .. solution.Checks.SelectMany(c => c.Definition.Inputs.Distinct()).Where(i => InputEvidence.Of(solution.Job, i) == Evidence.Assumed)
            .GroupBy(i => i).OrderByDescending(g => g.Count()).ThenBy(g => g.Key)
            .Select(g => $"{Phrases.Capital(InputWords.Name(g.Key))}: {(g.Count() == 1 ? "one check rests" : $"{g.Count()} checks rest")} on it."),
    ];
}
