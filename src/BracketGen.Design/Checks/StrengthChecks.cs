using BracketGen.Design.Inputs;
using BracketGen.Design.Part;

namespace BracketGen.Design.Checks;

/// <summary>The checks of a bracket's strength.</summary>
public static class StrengthChecks
{
    /// <summary>Yield strength over the stress as the bolts draw the second mount flange down by what shims leave of its gap (our judgement, no source): tightening bends nothing for good.</summary>
    public const double LeastDrawnFactor = 1;

    /// <summary>The checks of strength where it was not calculated: none of them is known.</summary>
    /// <param name="job">The job.</param>
    /// <param name="bracket">The bracket; null where there is none yet.</param>
    public static IEnumerable<Check> NotCalculated(Job job, Bracket? bracket)
    {
        var preferences = job.Preferences;
        yield return new(CheckId.StampedYield, double.NaN, preferences.MinYieldFactor);
        yield return new(CheckId.Endurance, double.NaN, preferences.MinEnduranceFactor);
        yield return new(CheckId.StopGive, double.NaN, preferences.MaxGive);
        if (job.Body.Mount.Ring is not null)
        {
            yield return new(CheckId.RingYield, double.NaN, preferences.MinYieldFactor);
            yield return new(CheckId.RingEndurance, double.NaN, preferences.MinEnduranceFactor);
        }

        if (job.Body.Mount.Second is not null)
        {
            yield return new(CheckId.SecondFaceDrawn, double.NaN, LeastDrawnFactor);
        }

        if (LowestFrequency(job) is { } lowest)
        {
            yield return new(CheckId.Resonance, double.NaN, lowest);
        }

        foreach (var check in JointChecks.NotCalculated(job, bracket))
        {
            yield return check;
        }

        yield return new(ShakingCheck(job, FrequencyRule.Separation), double.NaN, preferences.MinEnduranceFactor);
    }

    private static CheckId ShakingCheck(Job job, FrequencyRule rule) =>
        ShakingStudy.Decides(job.Body, rule) ? CheckId.ShakingEndurance : CheckId.ShakingTest;

    /// <summary>The lowest first natural frequency that the rule allows (Hz); null where the engine is not known.</summary>
    public static double? LowestFrequency(Job job) => job.Body.Engine is { } engine ? job.Preferences.MinFrequencyRatio * engine.FiringFrequency : null;

    /// <summary>The checks of <paramref name="report"/>.</summary>
    /// <param name="job">The job.</param>
    /// <param name="report">The report; its own checks are not looked at.</param>
    public static IEnumerable<Check> Of(Job job, StrengthReport report)
    {
        var (preferences, hot, soft) = (job.Preferences, report.Metal.Worst, Softest(report));
        yield return new(CheckId.StampedYield, report.YieldFactor, preferences.MinYieldFactor) { Unfavourable = hot?.Yield * report.YieldFactor };
        yield return new(CheckId.Endurance, report.EnduranceFactor, preferences.MinEnduranceFactor) { Unfavourable = report.EnduranceAtWorst };
        yield return new(CheckId.StopGive, report.Opening.Give, preferences.MaxGive) { Unfavourable = report.Opening.Give / soft };
        foreach (var check in report.Ring is { } ring ? OfRing(job, ring) : [])
        {
            yield return check;
        }

        if (report.DrawnFactor is { } drawn)
        {
            // Tightened cold.
            yield return new(CheckId.SecondFaceDrawn, drawn, LeastDrawnFactor);
        }

        if (LowestFrequency(job) is { } lowest)
        {
            yield return new(report.FrequencyRule == FrequencyRule.Response ? CheckId.FrequencyByResponse : CheckId.Resonance, report.Frequencies[0], lowest)
            {
                Unfavourable = soft is { } worst ? Math.Sqrt(worst) * report.Frequencies[0] : null,
            };
        }

        foreach (var check in JointChecks.Of(report.Joints, report.Metal))
        {
            yield return check;
        }

        yield return new(ShakingCheck(job, report.FrequencyRule), report.Shaking?.EnduranceFactor ?? double.NaN, preferences.MinEnduranceFactor)
        {
            Unfavourable = report.Shaking?.EnduranceFactorAtWorst,
            IsOnRing = report.Ring is not null,
        };
    }

    /// <summary>The checks of an adapter ring's strength.</summary>
    internal static IEnumerable<Check> OfRing(Job job, RingReport ring) =>
    [
        new(CheckId.RingYield, ring.YieldFactor, job.Preferences.MinYieldFactor) { Unfavourable = ring.Metal.Worst?.Yield * ring.YieldFactor },
        new(CheckId.RingEndurance, ring.EnduranceFactor, job.Preferences.MinEnduranceFactor) { Unfavourable = ring.EnduranceAtWorst },
    ];

    // What heat leaves of the stiffness where nobody measured the temperature: of bracket and ring the softer, as if both were; Math.Min gives no number where one of them is none.
    private static double? Softest(StrengthReport report) => report.Ring is { Metal.Worst: { } ring } && report.Metal.Worst is { } own ? Math.Min(ring.Modulus, own.Modulus) : report.Metal.Worst?.Modulus;
}
