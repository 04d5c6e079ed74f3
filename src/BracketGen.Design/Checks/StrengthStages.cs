using BracketGen.Design.Part;
using BracketGen.Geometry;
using BracketGen.Mechanism.Motion;
using BracketGen.Strength.Analysis;
using BracketGen.Strength.Parts;

namespace BracketGen.Design.Checks;

/// <summary>The strength of one bracket on one mesh, step by step: each step is made once, when it is first asked for. One thread at a time.</summary>
/// <param name="tension">How hard the wire pulls at its stop.</param>
/// <param name="bracket">The bracket.</param>
/// <param name="prepared">The bracket meshed and factorised.</param>
internal sealed class StrengthStages(StopTension tension, Bracket bracket, PreparedPart prepared)
{
    private SeatResponse? _atWideOpen;
    private LoadCase? _opening;

    // 1 N with the valve wide open: in proportion to it all that pulls the same way.
    private SeatResponse AtWideOpen => _atWideOpen ??= prepared.Under(ForceOf(1, tension.Stop.Travel.WideOpen));

    /// <summary>Give of the stop along the wire for 1 N of tension, valve wide open (mm/N).</summary>
    public double Give => LoadCase.SixFigures(Math.Max(0, AtWideOpen.AlongForce));

    /// <summary>The stop under the largest tension of an ordinary opening.</summary>
    public LoadCase Opening => _opening ??= LoadCase.Of(prepared, tension.IsLargestWideOpen
        ? AtWideOpen.Times(tension.Largest)
        : prepared.Under(ForceOf(tension.Largest, tension.AtLargest)));

    /// <summary>The checks that the largest stress and the give fail for certain, the first of them; null where none does.</summary>
    /// <remarks>The proof load is its lower bound (<see cref="StopTension.ProofAtLeast"/>), so the yield factor is an upper bound; the others are as in the report.</remarks>
    public Check? WeakInStress()
    {
        var preferences = tension.Stop.Job.Preferences;
        var material = bracket.Stock.Material;
        var proof = LoadCase.SixFigures((1 - JudgeTolerance.RoundOff) * tension.ProofAtLeast(Give) * AtWideOpen.Solution.LargestStress);
        Check[] checks =
        [
            new(CheckId.StampedYield, material.Yield / proof, preferences.MinYieldFactor),
            new(CheckId.Endurance, StrengthStudy.EnduranceFactor(Opening.LargestStress, material.Endurance, material.Yield), preferences.MinEnduranceFactor),
            new(CheckId.StopGive, Opening.Give, preferences.MaxGive),
        ];
        return Array.Find(checks, c => c.Fails);
    }

    /// <summary>The check of the first frequency where an upper bound of it shows that it fails; null where it does not show.</summary>
    public Check? WeakInFrequency()
    {
        if (tension.Stop.Job.Body.Engine is not { } engine)
        {
            return null;
        }

        var check = new Check(CheckId.Resonance, LoadCase.SixFigures(Modes[0].Frequency), StrengthChecks.LeastFrequencyRatio * engine.FiringFrequency);
        return check.Fails ? check : null;
    }

    private System.Collections.Immutable.ImmutableArray<Mode>? _modes;

    private System.Collections.Immutable.ImmutableArray<Mode> Modes => _modes ??= prepared.LowestModes(StrengthReport.ModeCount);

    /// <summary>The whole report.</summary>
    public StrengthReport Report()
    {
        var mechanism = LoadedMechanism.Of(tension.Stop, bracket, MechanismReport.UsualSamples, Give);
        var (proof, foot) = tension.ProofOf(mechanism);
        var stamped = LoadCase.Of(prepared, AtWideOpen.Times(proof));
        var material = bracket.Stock.Material;
        var report = new StrengthReport
        {
            Flat = prepared.Flat,
            Folded = prepared.Model.Mesh,
            GivePerTension = Give,
            Opening = Opening,
            Stamped = stamped,
            LimitingFootForce = foot,
            Modes = Modes,
            Frequencies = [.. Modes.Select(m => LoadCase.SixFigures(m.Frequency))],
            FiringFrequency = tension.Stop.Job.Body.Engine?.FiringFrequency,
            YieldFactor = material.Yield / stamped.LargestStress,
            EnduranceFactor = StrengthStudy.EnduranceFactor(Opening.LargestStress, material.Endurance, material.Yield),
        };
        return report with { Checks = [.. StrengthChecks.Of(tension.Stop.Job, report)] };
    }

    // The outer pushes the stop towards the quadrant, along the wire, as hard as the wire pulls.
    private static Vector3 ForceOf(double tension, TautWire wire) => -tension * Vector3.From(wire.Direction);
}
