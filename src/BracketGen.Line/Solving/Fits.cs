using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Study;
using BracketGen.Geometry;
using BracketGen.Mechanism;
using BracketGen.Units;
using BracketGen.Words.Checks;

namespace BracketGen.Line.Solving;

/// <summary>Reads margins and reasons off a solution.</summary>
public static class Fits
{
    /// <summary>The margins of a solution that has a bracket: of its checks of safety and function.</summary>
    public static Fit Of(Solution solution) => new(
        Math.Round(solution.Placement!.AdjusterShift, 6) + 0.0, solution.Job.Vehicle.Cable.OuterEnd.AdjusterRange,
        [.. solution.Checks.Where(TellsOfFit).Select(c => MarginOf(c, solution.Job.Units))]);

    /// <summary>Why a solution does not pass, a line for each check that fails; with a remedy where one is known.</summary>
    public static string[] Reasons(Solution solution)
    {
        var units = solution.Job.Units;
        return [.. solution.Checks.Where(c => !c.Passes && c.Kind != CheckKind.Advice).Select(c =>
            $"{c.Title()}: {CheckText.Value(c, units)}, {CheckText.Limit(c, units)}")];
    }

    // What no bracket changes tells nothing. Making is drawn to its limits on purpose, a probability is near one or it fails, and yes and no have nothing to spare.
    private static bool TellsOfFit(Check check) =>
        check.Kind is CheckKind.Safety or CheckKind.Function && double.IsFinite(check.Value)
        && !TravelChecks.IsBeyondTheBracket(check) && (check.Unit != Quantity.Number || check.Limit is not (0 or 1))
        && !check.Code.StartsWith("probability-", StringComparison.Ordinal);

    private static FitMargin MarginOf(Check check, UnitSystem units) => new(
        check.Code, check.Title(), CheckText.Value(check, units), CheckText.Limit(check, units), CheckText.Margin(check, units), Spare(check));

    private static double Spare(Check check)
    {
        var least = check.Unit switch
        {
            Quantity.Angle => Angle.FromDegrees(5).Radians,
            Quantity.Fraction => 0.1,
            _ => 1,
        };
        return Math.Round(check.Margin / Math.Max(Math.Abs(check.Limit), least), 6) + 0.0;
    }
}
