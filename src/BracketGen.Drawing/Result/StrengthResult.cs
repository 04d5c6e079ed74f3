using BracketGen.Design.Checks;
using BracketGen.Geometry;
using BracketGen.Words;

namespace BracketGen.Drawing.Result;

/// <summary>Whether the bracket bends, shakes or cracks. Stresses in MPa, lengths in mm, forces in N, frequencies in Hz.</summary>
public sealed record ResultStrength(
    int Nodes, double GivePerNewton, ResultLoadCase Opening, ResultLoadCase Stamped, double? LimitingFootForce, double YieldFactor,
    double EnduranceFactor, IReadOnlyList<double> Frequencies, double? FiringFrequency, ResultLife Life, IReadOnlyList<ResultJoint> Joints);

/// <summary>The place that decides how long the bracket lasts: alternating stress permitted there and found (MPa), stress that is always there (MPa), where it is on the flat pattern (mm); temperature in °C, null where nobody measured it.</summary>
public sealed record ResultLife(double Openings, double? Temperature, double Permitted, double Found, double Constant, bool AtCutEdge, IReadOnlyList<double> At);

/// <summary>One screw of the mount: torque in N·m, clamp forces with every spread (N), and what the pedal stamped on puts on it (N, N·mm).</summary>
public sealed record ResultJoint(string Hole, string Screw, string Class, double Torque, double MinClamp, double MaxPreload, double Pull, double Across, double Tilt);

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
            report.FiringFrequency is { } f ? ResultJson.Round(f) : null,
            LifeOf(report, corner), [.. report.Joints.Select(JointOf)]);

    private static ResultLife LifeOf(StrengthReport report, Vector2 corner) => new(
        report.Life.Cycles, report.Metal.Temperature, report.Life.Permitted, report.Life.Openings, report.Life.Constant, report.Life.IsAtEdge,
        [ResultJson.Round(report.Life.At.X - corner.X), ResultJson.Round(report.Life.At.Y - corner.Y)]);

    private static ResultJoint JointOf(BoltedJoint joint) => new(
        joint.Hole, ScrewText.Size(joint.Joint.Screw), joint.Joint.Screw.Class.Name, ResultJson.Round(joint.Joint.Screw.Torque / 1000), ResultJson.Round(joint.Joint.MinClamp),
        ResultJson.Round(joint.Joint.MaxPreload), ResultJson.Round(joint.Stamped.Pull), ResultJson.Round(joint.Stamped.Across), ResultJson.Round(joint.Stamped.Tilt));

    private static ResultLoadCase CaseOf(LoadCase load, Vector2 corner) => new(
        ResultJson.Round(load.Tension), load.Give, load.LargestStress,
        [ResultJson.Round(load.At.X - corner.X), ResultJson.Round(load.At.Y - corner.Y)]);
}
