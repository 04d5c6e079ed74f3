using BracketGen.Design.Checks;
using BracketGen.Geometry;
using BracketGen.Units;
using BracketGen.Words.Results;

namespace BracketGen.Drawing.Result;

/// <summary>Whether the bracket bends, shakes or cracks. Stresses in MPa, lengths in mm, forces in N, frequencies in Hz.</summary>
public sealed record ResultStrength(
    int Nodes, double GivePerNewton, ResultLoadCase Opening, ResultLoadCase Stamped, double? LimitingFootForce, double YieldFactor,
    double EnduranceFactor, IReadOnlyList<double> Frequencies, double? FiringFrequency, double OuterStiffness, double? OuterStiffnessAtLimit, double EndMass, double EndCentre,
    IReadOnlyList<ResultEndPart> EndParts);

/// <summary>A part of what hangs on the stop: mass in g, centre of gravity from the middle of the sheet towards the outer.</summary>
public sealed record ResultEndPart(string Part, double Mass, double Centre);

/// <summary>One load at the stop: tension of the wire, give along it, largest stress and where it is on the flat pattern.</summary>
public sealed record ResultLoadCase(double Tension, double Give, double LargestStress, IReadOnlyList<double> At);

/// <summary>Makes the strength part of the result.</summary>
internal static class StrengthResult
{
    /// <summary>The strength report for result.json; null where strength was not looked at.</summary>
    /// <param name="report">The report.</param>
    /// <param name="corner">Lower left corner of the flat pattern, from which places are counted.</param>
    public static ResultStrength? Of(StrengthReport? report, Vector2 corner) => report is null
        ? null
        : new(
            report.Flat.Nodes.Length, report.GivePerTension, CaseOf(report.Opening, corner),
            CaseOf(report.Stamped, corner), report.LimitingFootForce, ResultJson.Round(report.YieldFactor),
            ResultJson.Round(report.EnduranceFactor), report.Frequencies,
            report.FiringFrequency is { } f ? ResultJson.Round(f) : null, ResultJson.Round(report.OuterStiffness.Max),
            double.IsFinite(report.OuterStiffnessAtLimit) ? report.OuterStiffnessAtLimit : null, ResultJson.Round(Grams(report.End.Mass)), ResultJson.Round(report.End.Centre),
            [.. report.End.Parts.Select(p => new ResultEndPart(StrengthText.PartName(p.Id), ResultJson.Round(Grams(p.Mass)), ResultJson.Round(p.Centre)))]);

    private static double Grams(double mass) => mass / UnitTable.Gram.Factor;

    private static ResultLoadCase CaseOf(LoadCase load, Vector2 corner) => new(
        ResultJson.Round(load.Tension), load.Give, load.LargestStress,
        [ResultJson.Round(load.At.X - corner.X), ResultJson.Round(load.At.Y - corner.Y)]);
}
