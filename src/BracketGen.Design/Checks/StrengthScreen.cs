using BracketGen.Strength.Parts;

namespace BracketGen.Design.Checks;

/// <summary>Give and first frequency of one bracket on a coarse mesh: they reject only what misses a limit by more than a stated multiple of that mesh's error.</summary>
/// <remarks>
/// The error is measured against the usual mesh (<see cref="JudgeTolerance"/>); what was rejected is compared with the whole study over the pools of the shipped jobs and of random ones. Stresses
/// of the coarse mesh reject nothing: between two bends that lie close together they were up to 3.7 times those of the usual mesh.
/// </remarks>
/// <param name="tension">How hard the wire pulls at its stop.</param>
/// <param name="prepared">The bracket meshed coarsely and factorised.</param>
/// <param name="lowest">The lowest first natural frequency that is allowed (Hz); null where another rule decides.</param>
internal sealed class StrengthScreen(StopTension tension, PreparedPart prepared, double? lowest)
{
    /// <summary>The first check that fails by so much; its value is the coarse mesh's less its error, so that the true value is no better. Null where none does.</summary>
    public Check? Fails()
    {
        var opening = Math.Max(0, prepared.Under(tension.UnitForceAtLargest).AlongForce);
        return First(errors => new(CheckId.StopGive, tension.Largest * opening / (1 + errors * JudgeTolerance.CoarseGive), tension.Stop.Job.Preferences.MaxGive))
            ?? (lowest is { } limit ? First(errors => new(CheckId.Resonance, (1 + errors * JudgeTolerance.CoarseFrequency) * prepared.FirstFrequencyCloselyAtMost(), limit)) : null);
    }

    // Decided with the multiple, said with the error alone.
    private static Check? First(Func<double, Check> of) => of(JudgeTolerance.CoarseErrors).Fails ? of(1) : null;
}
