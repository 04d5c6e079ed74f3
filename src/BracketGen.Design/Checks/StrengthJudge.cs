using System.Runtime.CompilerServices;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Strength.Parts;

namespace BracketGen.Design.Checks;

/// <summary>Judges the strength of the brackets of one job by stages, the cheapest first: the verdict is that of <see cref="StrengthStudy"/>.</summary>
/// <remarks>
/// A stage rejects a bracket only where the whole study would reject it too (docs/strength.md). Brackets that pass have the report of <see cref="StrengthStudy.Of"/>, to the
/// last bit. Thread-safe.
/// </remarks>
/// <param name="job">The job, opening counter-clockwise.</param>
/// <param name="detail">How finely brackets are meshed.</param>
/// <param name="rule">How the first natural frequency is judged.</param>
internal sealed class StrengthJudge(Job job, StrengthDetail detail, FrequencyRule rule)
{
    private readonly ConditionalWeakTable<StopMechanism, StopTension> _atStops = [];

    /// <summary>The finding on a bracket.</summary>
    /// <param name="stop">The mechanism at the stop that it holds.</param>
    /// <param name="bracket">The bracket.</param>
    public StrengthFinding Judge(StopMechanism stop, Bracket bracket) => Judge(_atStops.GetValue(stop, s => new(s)), bracket);

    private StrengthFinding Judge(StopTension tension, Bracket bracket)
    {
        var metal = StrengthMetal.Of(job, bracket.Stock.Material);
        var part = BracketModel.Of(bracket, tension.Stop.EndIn(bracket.Stock.Thickness), metal, JobFacts.Of(job).Ring?.Base);
        if (WeakByBound(tension, bracket, part, metal) is { } certain)
        {
            return new(null, certain, StrengthMeans.Bound);
        }

        if (detail.Size < StrengthDetail.Coarse.Size && new StrengthScreen(tension, StrengthDetail.Coarse.Prepare(part), rule == FrequencyRule.Separation ? StrengthChecks.LowestFrequency(job) : null).Fails() is { } far)
        {
            return new(null, far, StrengthMeans.Coarse);
        }

        var first = new StrengthStages(tension, bracket, detail.Prepare(part), rule) { IsFirst = detail.MostMeshes > 1 };
        if (Weak(first) is { } soon)
        {
            return soon;
        }

        var stages = SettledStrength.Of(first, detail);
        if (first.IsFirst && Weak(stages) is { } settled)
        {
            return settled;
        }

        var report = stages.Report();
        return new(report, report.Checks.FirstOrDefault(c => c.Fails && c.Kind != CheckKind.Advice), StrengthMeans.Full);
    }

    // The proof load with every spread takes thousands of samples, so it comes when all else has passed.
    private static StrengthFinding? Weak(StrengthStages stages) =>
        stages.WeakInStress() is { } weak ? new(null, weak, StrengthMeans.Stress)
        : stages.WeakInFrequency() is { } low ? new(null, low, StrengthMeans.Frequency)
        : stages.WeakInProof() is { } stamped ? new(null, stamped, StrengthMeans.Stress)
        : stages.WeakAtMount() is { } loose ? new(null, loose, StrengthMeans.Stress)
        : stages.WeakInShaking() is { } shaken ? new(null, shaken, StrengthMeans.Shaking)
        : null;

    // Each bound less the mesh's own error: what fails it fails on the mesh too.
    private Check? WeakByBound(StopTension tension, Bracket bracket, FoldedPart part, StrengthMetal metal)
    {
        var bounds = StrengthBounds.Of(bracket, part);
        if (!bounds.AreKnown)
        {
            return null;
        }

        var preferences = job.Preferences;
        const double stress = 1 - JudgeTolerance.MeshStress, give = 1 - JudgeTolerance.MeshGive, frequency = 1 + JudgeTolerance.MeshFrequency;
        var opening = stress * tension.Largest * bounds.StressAtLeast(tension.UnitForceAtLargest);
        var proof = stress * tension.ProofAtLeast(tension.LargestGive, tension.SpreadAtLeast(bracket)) * bounds.StressAtLeast(tension.UnitForce);
        Check[] checks =
        [
            new(CheckId.StopGive, give * tension.Largest * bounds.GiveAtLeast(tension.UnitForceAtLargest), preferences.MaxGive),
            new(CheckId.StampedYield, metal.Yield / proof, preferences.MinYieldFactor),

            // Cut edges, shaking and a stress that is always there only lower it.
            new(CheckId.Endurance, StrengthStudy.EnduranceFactor(opening, metal.Line.Amplitude(job.Life.Openings), metal.Yield), preferences.MinEnduranceFactor),
        ];
        return Array.Find(checks, c => c.Fails) ?? (rule == FrequencyRule.Separation && StrengthChecks.LowestFrequency(job) is { } lowest
            && new Check(CheckId.Resonance, frequency * bounds.FrequencyAtMost(part.SeatBody), lowest) is { Fails: true } low
            ? low : null);
    }
}
