using BracketGen.Design.Inputs;
using BracketGen.Geometry;
using BracketGen.Strength.Analysis;
using BracketGen.Strength.Parts;
using BracketGen.Strength.Shaking;

namespace BracketGen.Design.Checks;

/// <summary>What shaking of its mount does to one bracket, step by step: each step is made once, when it is first asked for. One thread at a time.</summary>
/// <param name="body">The throttle body.</param>
/// <param name="prepared">The bracket meshed and factorised.</param>
/// <param name="hours">How long the engine runs in the bracket's life (h).</param>
/// <param name="factor">Safety factor against cracking from a shaking and every opening together; with what is assumed at its unfavourable end where asked.</param>
internal sealed class ShakingStudy(ThrottleBody body, PreparedPart prepared, double hours, Func<ShakenStress, bool, double> factor)
{
    private ModalBasis? _basis;
    private ShakingStress? _stress;

    private ModalBasis Basis => _basis ??= prepared.Shaken(body.Shaking.Unfavourable.Append(body.Shaking.Base).Max(s => s.Highest));

    private ShakingStress Stress => _stress ??= ShakingResponse.Of(Basis, body.Shaking.Base);

    /// <summary>Whether enough is known to say how the mount shakes: an acceleration, or at least the engine that shakes it.</summary>
    public static bool IsKnown(ThrottleBody body) => body.Engine is not null || Decides(body, FrequencyRule.Separation);

    /// <summary>
    /// Whether a bracket that cracks from shaking is turned down: where the shaking is given or measured, and where it takes the place of the frequency rule. A test profile that is only
    /// assumed is a measure for comparison.
    /// </summary>
    public static bool Decides(ThrottleBody body, FrequencyRule rule) => body.Shaking.Evidence != Evidence.Assumed || rule == FrequencyRule.Response;

    /// <summary>Safety factor against cracking from shaking and every opening together.</summary>
    public double EnduranceFactor => LoadCase.SixFigures(FactorOf(Stress, false));

    /// <summary>The report.</summary>
    public ShakingReport Report()
    {
        var (shaking, most) = (body.Shaking, Stress.MostStressed);
        var (sine, alternating) = (Stress.Sine[most], Stress.Alternating[most]);
        return new()
        {
            Shaking = shaking,
            Modes = [.. Basis.Frequencies.Select((f, r) => new ShakenMode(LoadCase.SixFigures(f), LoadCase.SixFigures(Basis.LargestMassPart(r))))],
            Alternating = Stress.Alternating,
            LargestStress = LoadCase.SixFigures(Stress.Largest),
            SineStress = LoadCase.SixFigures(alternating.Top >= alternating.Bottom ? sine.Top : sine.Bottom),
            SineFrequency = LoadCase.SixFigures(Stress.SineFrequency),
            At = prepared.Flat.Nodes[most],
            EnduranceFactor = EnduranceFactor,
            EnduranceFactorAtWorst = shaking.IsAssumed ? LoadCase.SixFigures(shaking.Unfavourable.Min(s => FactorOf(ShakingResponse.Of(Basis, s), true))) : null,
        };
    }

    // Shaken about its first natural frequency as long as the engine runs, or at the frequency where the sine is worst where that is higher.
    private double FactorOf(ShakingStress stress, bool atWorst) =>
        factor(new(stress.Alternating, SecondsPerHour * hours * Math.Max(Basis.Frequencies[0], stress.SineFrequency)), atWorst);

    private const double SecondsPerHour = 3600;
}
