using BracketGen.Design.Checks;
using BracketGen.Geometry;

namespace BracketGen.Drawing.Result;

/// <summary>Whether the bracket bends, shakes or cracks. Stresses in MPa, lengths in mm, forces in N, frequencies in Hz.</summary>
public sealed record ResultStrength(
    int Nodes, double GivePerNewton, ResultLoadCase Opening, ResultLoadCase Stamped, double? LimitingFootForce, double YieldFactor,
    double EnduranceFactor, IReadOnlyList<double> Frequencies, double? FiringFrequency);

/// <summary>One load at the stop: tension of the wire, give along it, largest stress and where it is on the flat pattern.</summary>
public sealed record ResultLoadCase(double Tension, double Give, double LargestStress, IReadOnlyList<double> At);

/// <summary>Makes the strength part of the result.</summary>
internal static class StrengthResult
{
    /// <summary>The strength report for result.json; null where strength was not looked at.</summary>
    /// <param name="report">The report.</param>
    /// <param name="isMirrored">Whether the bracket is the mirror image of the one that was calculated.</param>
    public static ResultStrength? Of(StrengthReport? report, bool isMirrored) => report is null
        ? null
        : new(
            report.Prepared.Flat.Nodes.Length, report.GivePerTension, CaseOf(report, report.Opening, isMirrored),
            CaseOf(report, report.Stamped, isMirrored), report.LimitingFootForce, ResultJson.Round(report.YieldFactor),
            ResultJson.Round(report.EnduranceFactor), report.Frequencies,
            report.FiringFrequency is { } f ? ResultJson.Round(f) : null);

    private static ResultLoadCase CaseOf(StrengthReport report, LoadCase load, bool isMirrored)
    {
        var bounds = report.Prepared.Part.Flat.Outline.Bounds;
        var x = isMirrored ? bounds.Max.X - load.At.X : load.At.X - bounds.Min.X;
        return new(
            ResultJson.Round(load.Tension), load.Give, load.LargestStress,
            [ResultJson.Round(x), ResultJson.Round(load.At.Y - bounds.Min.Y)]);
    }
}
