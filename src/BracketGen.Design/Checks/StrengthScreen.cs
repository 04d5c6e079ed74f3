using BracketGen.Design.Part;
using BracketGen.Strength.Parts;

namespace BracketGen.Design.Checks;

/// <summary>The strength of one bracket on a coarse mesh: it rejects only what misses a limit by more than a stated multiple of that mesh's error.</summary>
/// <remarks>The error is measured against the usual mesh (<see cref="JudgeTolerance"/>); what was rejected is compared with the whole study over the pools of the shipped jobs and of random ones.</remarks>
/// <param name="tension">How hard the wire pulls at its stop.</param>
/// <param name="bracket">The bracket.</param>
/// <param name="prepared">The bracket meshed coarsely and factorised.</param>
internal sealed class StrengthScreen(StopTension tension, Bracket bracket, PreparedPart prepared)
{
    /// <summary>The first check that fails by so much; its value is the coarse mesh's less its error, so that the true value is no better. Null where none does.</summary>
    public Check? Fails()
    {
        var atWideOpen = prepared.Under(tension.UnitForce);
        var opening = tension.IsLargestWideOpen ? atWideOpen : prepared.Under(tension.UnitForceAtLargest);
        return First(errors => InStress(atWideOpen, opening, errors))
            ?? (tension.Stop.Job.Body.Engine is { } engine ? First(errors => [InFrequency(engine.FiringFrequency, errors)]) : null);
    }

    // Decided with the multiple, said with the error alone.
    private static Check? First(Func<double, Check[]> of) =>
        Array.FindIndex(of(JudgeTolerance.CoarseErrors), c => c.Fails) is >= 0 and var first ? of(1)[first] : null;

    private Check[] InStress(SeatResponse atWideOpen, SeatResponse opening, double errors)
    {
        var (material, preferences) = (bracket.Stock.Material, tension.Stop.Job.Preferences);
        double stress = 1 / (1 + errors * JudgeTolerance.CoarseStress), give = 1 / (1 + errors * JudgeTolerance.CoarseGive);

        // The proof load falls as the give grows, and the coarse mesh is too stiff.
        var proof = stress * tension.ProofAtLeast(Math.Max(0, atWideOpen.AlongForce) / give, tension.SpreadAtLeast(bracket)) * atWideOpen.Solution.LargestStress;
        return
        [
            new(CheckId.StampedYield, material.Yield / proof, preferences.MinYieldFactor),
            new(CheckId.Endurance, StrengthStudy.EnduranceFactor(stress * tension.Largest * opening.Solution.LargestStress, material.Endurance, material.Yield), preferences.MinEnduranceFactor),
            new(CheckId.StopGive, give * tension.Largest * Math.Max(0, opening.AlongForce), preferences.MaxGive),
        ];
    }

    private Check InFrequency(double firing, double errors) => new(
        CheckId.Resonance, (1 + errors * JudgeTolerance.CoarseFrequency) * prepared.FirstFrequencyCloselyAtMost(), StrengthChecks.LeastFrequencyRatio * firing);
}
