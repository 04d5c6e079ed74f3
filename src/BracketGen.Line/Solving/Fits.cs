using BracketGen.Design.Checks;
using BracketGen.Design.Study;
using BracketGen.Units;
using BracketGen.Words.Checks;

namespace BracketGen.Line.Solving;

/// <summary>Reads margins and reasons off a solution.</summary>
public static class Fits
{
    /// <summary>The fit of a solution that has a bracket: margins of its checks of safety and function, and what is open.</summary>
    public static Fit Of(Solution solution) => new(
        Math.Round(solution.Placement!.AdjusterShift, 6) + 0.0, solution.Job.Vehicle.Cable.OuterEnd.AdjusterRange,
        [.. solution.Checks.Where(TellsOfFit).Select(c => new FitMargin(c.Id, c.Value, c.Limit, c.Number, c.Subject, c.IsVariant))],
        [.. VerdictText.ToProve(solution.Verdict)]);

    /// <summary>What the checks of a solution come to.</summary>
    public static Outcome OutcomeOf(Solution solution) => solution.Verdict.Kind switch
    {
        VerdictKind.Unsafe => Outcome.Unsafe,
        VerdictKind.Fails => Outcome.Fails,
        VerdictKind.NotProven => solution.Bracket is null ? Outcome.Fails : Outcome.NotProven,
        _ => Outcome.Passes,
    };

    /// <summary>Why a solution fails, a line for each check that fails.</summary>
    public static string[] Reasons(Solution solution)
    {
        var units = solution.Job.Units;
        return [.. solution.Checks.Where(c => c.Fails && c.Kind != CheckKind.Advice).Select(c =>
            $"{c.Title()}: {CheckText.Value(c, units)}, {CheckText.Limit(c, units)}")];
    }

    // What no bracket changes tells nothing. Making is drawn to its limits on purpose, a probability is near one or it fails, and yes and no have nothing to spare.
    private static bool TellsOfFit(Check check) =>
        check.Kind is CheckKind.Safety or CheckKind.Function && double.IsFinite(check.Value) && double.IsFinite(check.Limit)
        && !TravelChecks.IsBeyondTheBracket(check) && (check.Unit != Quantity.Number || check.Limit is not (0 or 1))
        && !check.Code.StartsWith("probability-", StringComparison.Ordinal);
}
