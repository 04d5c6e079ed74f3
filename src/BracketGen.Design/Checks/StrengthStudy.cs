using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Geometry;
using BracketGen.Mechanism.Motion;
using BracketGen.Mechanism.Throttles;

namespace BracketGen.Design.Checks;

/// <summary>Makes a bracket's strength report, from the mechanism with the give that was found.</summary>
public static class StrengthStudy
{
    /// <summary>Steps over the sweep in which the largest tension is looked for.</summary>
    private const int Steps = 24;

    /// <summary>The strength report of a bracket.</summary>
    /// <param name="job">The job, opening counter-clockwise.</param>
    /// <param name="travel">The travel with the stop where the bracket holds it.</param>
    /// <param name="placement">Where that is.</param>
    /// <param name="bracket">The bracket.</param>
    /// <param name="detail">How finely it is meshed.</param>
    public static StrengthReport Of(
        Job job, Travel travel, StopPlacement placement, Bracket bracket, StrengthDetail detail)
    {
        var prepared = BracketModel.Of(bracket, job.Vehicle.Cable.OuterEnd).Prepare(detail.Size, detail.HoleSize, detail.BendRows);
        var atWideOpen = prepared.Under(ForceOf(1, travel.WideOpen));
        var give = LoadCase.SixFigures(Math.Max(0, atWideOpen.AlongForce));
        var mechanism = LoadedMechanism.Of(job, travel, placement, bracket, MechanismReport.UsualSamples, give);
        var (opening, atOpening) = LargestTension(mechanism, travel, job.Body.Springs);
        var (stamped, foot) = ProofTension(job, mechanism, atOpening);
        var underOpening = LoadCase.Of(prepared, opening.Opening == travel.WideOpen.Opening
            ? atWideOpen.Times(atOpening)
            : prepared.Under(ForceOf(atOpening, opening)));
        var underStamped = LoadCase.Of(prepared, atWideOpen.Times(stamped));
        var (material, modes) = (bracket.Stock.Material, prepared.LowestModes(StrengthReport.ModeCount));
        var report = new StrengthReport
        {
            Flat = prepared.Flat,
            Folded = prepared.Model.Mesh,
            GivePerTension = give,
            Opening = underOpening,
            Stamped = underStamped,
            LimitingFootForce = foot,
            Modes = modes,
            Frequencies = [.. modes.Select(m => LoadCase.SixFigures(m.Frequency))],
            FiringFrequency = job.Body.Engine?.FiringFrequency,
            YieldFactor = material.Yield / underStamped.LargestStress,
            EnduranceFactor = EnduranceFactor(underOpening.LargestStress, material.Endurance, material.Yield),
        };
        return report with { Checks = [.. StrengthChecks.Of(job, report)] };
    }

    /// <summary>Safety factor of a stress that comes and goes (MPa), by the Soderberg line.</summary>
    /// <remarks>
    /// σ_a/S_e + σ_m/S_y = 1/n with σ_a = σ_m = σ/2 (J. E. Shigley, C. R. Mischke, Mechanical Engineering Design, chapter on fatigue
    /// under fluctuating stress): the careful one of the usual lines, and the one that asks for no tensile strength.
    /// </remarks>
    public static double EnduranceFactor(double stress, double endurance, double yield) => 2 / (stress / endurance + stress / yield);

    // The outer pushes the stop towards the quadrant, along the wire, as hard as the wire pulls.
    private static Vector3 ForceOf(double tension, TautWire wire) => -tension * Vector3.From(wire.Direction);

    private static (TautWire Wire, double Tension) LargestTension(LoadedMechanism mechanism, Travel travel, ReturnSprings springs)
    {
        if (mechanism.Loaded is not { } loaded)
        {
            return (travel.WideOpen, travel.Sweep.Max(w => springs.TorqueAt(w.Opening.Radians / travel.Rotation.Radians) / Math.Max(1, w.Arm)));
        }

        // The wide-open stop is looked at last and stays where others are no worse: its direction is that of the proof load.
        return Enumerable.Range(0, Steps + 1)
            .Select(i => i == 0 ? travel.WideOpen : loaded.Wire((double)(Steps - i) / Steps * travel.Rotation))
            .Select(w => (w, loaded.TensionAt(w.Opening)))
            .MaxBy(p => p.Item2);
    }

    /// <summary>
    /// The wire's tension at the stop with the pedal stamped on: the floor stops the pedal, and what is pulled beyond the wide-open stop
    /// stretches wire, outer and bracket; but never more than the foot can give.
    /// </summary>
    private static (double Tension, double? Foot) ProofTension(Job job, LoadedMechanism mechanism, double opening)
    {
        var pedal = job.Vehicle.Pedal;
        var lever = pedal.Lever;

        // Friction in the outer keeps some of it from the stop; a worn-in outer keeps the least, so nothing is counted on.
        var byFoot = Math.Max(opening, pedal.ProofForce / lever.PullPerTravel(lever.FullStroke));
        if (mechanism.Loaded is not { } loaded || !double.IsFinite(loaded.TensionOnFloor))
        {
            return (byFoot, pedal.ProofForce);
        }

        // As far as things were measured, the floor may come later than thought.
        var more = mechanism.Uncertainty?.OverTravel is { } spread ? Math.Max(0, spread.Quantile(MechanismChecks.LeastWorking) - spread.Nominal) : 0;
        var byFloor = Math.Max(opening, loaded.TensionOnFloor + more / loaded.LostPerTension);
        return byFloor <= byFoot ? (byFloor, null) : (byFoot, pedal.ProofForce);
    }
}
