using System.Collections.Immutable;
using BracketGen.Design.Part;
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
    private ImmutableArray<Mode>? _modes;
    private LoadedMechanism? _mechanism;
    private (LoadCase Case, double? Foot)? _stamped;

    // 1 N with the valve wide open: in proportion to it all that pulls the same way.
    private SeatResponse AtWideOpen => _atWideOpen ??= prepared.Under(tension.UnitForce);

    /// <summary>Give of the stop along the wire for 1 N of tension, valve wide open (mm/N).</summary>
    public double Give => LoadCase.SixFigures(Math.Max(0, AtWideOpen.AlongForce));

    /// <summary>The stop under the largest tension of an ordinary opening.</summary>
    public LoadCase Opening => _opening ??= LoadCase.Of(prepared, tension.IsLargestWideOpen
        ? AtWideOpen.Times(tension.Largest)
        : prepared.Under(tension.Largest * tension.UnitForceAtLargest));

    /// <summary>The checks that the largest stress and the give fail for certain, the first of them; null where none does.</summary>
    /// <remarks>The proof load is its lower bound (<see cref="StopTension.ProofAtLeast"/>), so the yield factor is an upper bound; the others are as in the report.</remarks>
    public Check? WeakInStress()
    {
        var preferences = tension.Stop.Job.Preferences;
        var proof = LoadCase.SixFigures((1 - JudgeTolerance.RoundOff) * tension.ProofAtLeast(Give, tension.SpreadAtLeast(bracket)) * AtWideOpen.Solution.LargestStress);
        Check[] checks =
        [
            new(CheckId.StampedYield, bracket.Stock.Material.Yield / proof, preferences.MinYieldFactor),
            new(CheckId.Endurance, EnduranceFactor, preferences.MinEnduranceFactor),
            new(CheckId.StopGive, Opening.Give, preferences.MaxGive),
        ];
        return Array.Find(checks, c => c.Fails);
    }

    /// <summary>The check of the first frequency where an upper bound of it shows that it fails; null where none does, and where the engine is not known.</summary>
    /// <remarks>Rayleigh's quotient on the same mesh is never below the frequency found on it.</remarks>
    public Check? WeakInFrequency()
    {
        if (tension.Stop.Job.Body.Engine is not { } engine)
        {
            return null;
        }

        var limit = StrengthChecks.LeastFrequencyRatio * engine.FiringFrequency;
        Check AtMost(double bound) => new(CheckId.Resonance, LoadCase.SixFigures((1 + JudgeTolerance.RoundOff) * bound), limit);
        return AtMost(prepared.FirstFrequencyAtMost()) is { Fails: true } low ? low
            : AtMost(prepared.FirstFrequencyCloselyAtMost()) is { Fails: true } closer ? closer
            : null;
    }

    private ImmutableArray<Mode> Modes => _modes ??= prepared.LowestModes(StrengthReport.ModeCount);

    /// <summary>The stop with the pedal stamped to the floor, and the foot force (N) that makes this load where the foot is what limits it.</summary>
    private (LoadCase Case, double? Foot) Stamped
    {
        get
        {
            if (_stamped is null)
            {
                var (proof, foot) = tension.ProofOf(Mechanism);
                _stamped = (LoadCase.Of(prepared, AtWideOpen.Times(proof)), foot);
            }

            return _stamped.Value;
        }
    }

    private LoadedMechanism Mechanism => _mechanism ??= LoadedMechanism.Of(tension.Stop, bracket, MechanismReport.UsualSamples, Give);

    private double OuterStiffnessAtLimit => LoadCase.SixFigures(tension.StiffnessFor(
        Mechanism, Give, bracket.Stock.Material.Yield / tension.Stop.Job.Preferences.MinYieldFactor / AtWideOpen.Solution.LargestStress));

    private double YieldFactor => bracket.Stock.Material.Yield / Stamped.Case.LargestStress;

    private double EnduranceFactor => StrengthStudy.EnduranceFactor(Opening.LargestStress, bracket.Stock.Material.Endurance, bracket.Stock.Material.Yield);

    /// <summary>The check of the proof load with all that the spread of the measurements adds, where it fails; null where it does not.</summary>
    public Check? WeakInProof() =>
        new Check(CheckId.StampedYield, YieldFactor, tension.Stop.Job.Preferences.MinYieldFactor) is { Fails: true } weak ? weak : null;

    /// <summary>The whole report.</summary>
    public StrengthReport Report()
    {
        var (stamped, foot) = Stamped;
        var report = new StrengthReport
        {
            Flat = prepared.Flat,
            Folded = prepared.Model.Mesh,
            GivePerTension = Give,
            Opening = Opening,
            Stamped = stamped,
            LimitingFootForce = foot,
            OuterStiffness = tension.Stop.Job.Vehicle.Cable.OuterAxialStiffness,
            OuterStiffnessAtLimit = OuterStiffnessAtLimit,
            End = tension.Stop.EndIn(bracket.Stock.Thickness),
            Modes = Modes,
            Frequencies = [.. Modes.Select(m => LoadCase.SixFigures(m.Frequency))],
            FiringFrequency = tension.Stop.Job.Body.Engine?.FiringFrequency,
            YieldFactor = YieldFactor,
            EnduranceFactor = EnduranceFactor,
        };
        return report with { Checks = [.. StrengthChecks.Of(tension.Stop.Job, report)] };
    }
}
