using BracketGen.Design.Checks;

namespace BracketGen.Words.Checks;

/// <summary>What to measure again for a check, in words.</summary>
public static class MeasureText
{
    /// <summary>The measurement, or why none helps.</summary>
    public static string Of(MeasureAgain again) => again.Help switch
    {
        MeasureHelp.Measure => $"Measure again: {again.Input}.",
        MeasureHelp.FailsAsMeasured => NoneHelps,
        _ => "No better measurement helps: the tolerances of cutting, bending and bolting alone are too much. Work to finer tolerances, or fit an adjuster with more range.",
    };

    /// <summary>Said if the check fails with the values as they are.</summary>
    public const string NoneHelps = "No better measurement helps: it fails with the values as they are. Change the design.";
}
