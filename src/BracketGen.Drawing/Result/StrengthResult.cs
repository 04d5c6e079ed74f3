using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Geometry;
using BracketGen.Units;
using BracketGen.Words;
using BracketGen.Words.Checks;
using BracketGen.Words.Results;

namespace BracketGen.Drawing.Result;

/// <summary>Whether the bracket bends, shakes or cracks. Stresses in MPa, lengths in mm, forces in N, frequencies in Hz.</summary>
public sealed record ResultStrength(
    int Nodes, double? MeshError, double GivePerNewton, ResultLoadCase Opening, ResultLoadCase Stamped, double? LimitingFootForce, double YieldFactor,
    double EnduranceFactor, IReadOnlyList<double> Frequencies, double? FiringFrequency, string FrequencyRule,
    ResultShaking? Shaking, IReadOnlyList<ResultCrossing> Crossings, ResultLife Life, IReadOnlyList<ResultJoint> Joints,
    double OuterStiffness, double? OuterStiffnessAtLimit, double EndMass, double EndCentre, IReadOnlyList<ResultEndPart> EndParts)
{
    /// <summary>The adapter ring; null where there is none.</summary>
    public ResultRingStrength? Ring { get; init; }
}

/// <summary>The strength of an adapter ring: stresses in MPa, frequency in Hz.</summary>
public sealed record ResultRingStrength(double YieldFactor, double EnduranceFactor, double StampedStress, double OpeningStress, double OwnFrequency);

/// <summary>The place that decides how long the bracket lasts: alternating stress permitted there and found (MPa), stress that is always there (MPa), where it is on the flat pattern (mm); temperature in °C, null where nobody measured it.</summary>
public sealed record ResultLife(double Openings, double? Temperature, double Permitted, double Found, double Constant, bool AtCutEdge, IReadOnlyList<double> At);

/// <summary>One screw of the mount: torque in N·m, clamp forces with every spread (N), and what the pedal stamped on puts on it (N, N·mm).</summary>
public sealed record ResultJoint(string Hole, string Screw, string Class, double Torque, double MinClamp, double MaxPreload, double Pull, double Across, double Tilt);

/// <summary>A part of what hangs on the stop: mass in g, centre of gravity from the middle of the sheet towards the outer.</summary>
public sealed record ResultEndPart(string Part, double Mass, double Centre);

/// <summary>One load at the stop: tension of the wire, give along it, largest stress and where it is on the flat pattern.</summary>
public sealed record ResultLoadCase(double Tension, double Give, double LargestStress, IReadOnlyList<double> At);

/// <summary>What shaking of the mount does: alternating stress to each side in MPa, frequencies in Hz.</summary>
public sealed record ResultShaking(
    string Profile, string Evidence, double Damping, double DampingPlusMinus, string DampingEvidence, IReadOnlyList<ResultShakenMode> Modes,
    double LargestStress, IReadOnlyList<double> At, double SineStress, double SineFrequency, double EnduranceFactor, double? EnduranceFactorAtWorst);

/// <summary>A natural vibration and its effective mass, as a part of the mass that moves.</summary>
public sealed record ResultShakenMode(double Frequency, double MassPart);

/// <summary>A speed (1/min) at which an order of the engine meets a natural frequency.</summary>
public sealed record ResultCrossing(double Order, int Mode, double Speed);

/// <summary>Makes the strength part of the result.</summary>
internal static class StrengthResult
{
    /// <summary>The strength report for result.json; null where strength was not looked at.</summary>
    /// <param name="report">The report.</param>
    /// <param name="corner">Lower left corner of the flat pattern, from which places are counted.</param>
    /// <param name="engine">The engine; null where it is not told.</param>
    public static ResultStrength? Of(StrengthReport? report, Vector2 corner, Engine? engine) => report is null
        ? null
        : new(
            report.Flat.Nodes.Length, report.MeshError is { } error ? ResultJson.Round(error) : null, report.GivePerTension, CaseOf(report.Opening, corner),
            CaseOf(report.Stamped, corner), report.LimitingFootForce, ResultJson.Round(report.YieldFactor),
            ResultJson.Round(report.EnduranceFactor), report.Frequencies,
            report.FiringFrequency is { } f ? ResultJson.Round(f) : null, ShakingText.Word(report.FrequencyRule),
            report.Shaking is { } shaking ? ShakingOf(shaking, corner) : null,
            engine is null ? [] : [.. OrderCrossing.Of(engine, report.Frequencies).Select(c => new ResultCrossing(c.Order, c.Mode, ResultJson.Round(c.Speed)))],
            LifeOf(report, corner), [.. report.Joints.Select(JointOf)],
            ResultJson.Round(report.OuterStiffness.Max),
            double.IsFinite(report.OuterStiffnessAtLimit) ? report.OuterStiffnessAtLimit : null, ResultJson.Round(Grams(report.End.Mass)), ResultJson.Round(report.End.Centre),
            [.. report.End.Parts.Select(p => new ResultEndPart(StrengthText.PartName(p.Id), ResultJson.Round(Grams(p.Mass)), ResultJson.Round(p.Centre)))])
        {
            Ring = report.Ring is { } ring
                ? new(ResultJson.Round(ring.YieldFactor), ResultJson.Round(ring.EnduranceFactor), ring.StampedStress, ring.OpeningStress, ring.OwnFrequency)
                : null,
        };

    private static ResultShaking ShakingOf(ShakingReport report, Vector2 corner) => new(
        ShakingText.Word(report.Shaking.Profile), EvidenceText.Name(report.Shaking.Evidence), report.Shaking.Damping.Value, report.Shaking.Damping.PlusMinus,
        EvidenceText.Name(report.Shaking.Damping.Evidence), [.. report.Modes.Select(m => new ResultShakenMode(m.Frequency, m.MassPart))], report.LargestStress,
        [ResultJson.Round(report.At.X - corner.X), ResultJson.Round(report.At.Y - corner.Y)], report.SineStress, report.SineFrequency, report.EnduranceFactor, report.EnduranceFactorAtWorst);

    private static ResultLife LifeOf(StrengthReport report, Vector2 corner) => new(
        report.Life.Cycles, report.Metal.Temperature, report.Life.Permitted, report.Life.Openings, report.Life.Constant, report.Life.IsAtEdge,
        [ResultJson.Round(report.Life.At.X - corner.X), ResultJson.Round(report.Life.At.Y - corner.Y)]);

    private static ResultJoint JointOf(BoltedJoint joint) => new(
        joint.Hole, ScrewText.Size(joint.Joint.Screw), joint.Joint.Screw.Class.Name, ResultJson.Round(joint.Joint.Screw.Torque / 1000), ResultJson.Round(joint.Joint.MinClamp),
        ResultJson.Round(joint.Joint.MaxPreload), ResultJson.Round(joint.Stamped.Pull), ResultJson.Round(joint.Stamped.Across), ResultJson.Round(joint.Stamped.Tilt));

    private static double Grams(double mass) => mass / UnitTable.Gram.Factor;

    private static ResultLoadCase CaseOf(LoadCase load, Vector2 corner) => new(
        ResultJson.Round(load.Tension), load.Give, load.LargestStress,
        [ResultJson.Round(load.At.X - corner.X), ResultJson.Round(load.At.Y - corner.Y)]);
}
