using BracketGen.Design.Inputs;

namespace BracketGen.Design.Checks;

/// <summary>The checks of a bracket's strength.</summary>
public static class StrengthChecks
{
    /// <summary>The first frequency over the engine's firing frequency that keeps the bracket out of resonance (common practice, no source).</summary>
    public const double LeastFrequencyRatio = 1.2;

    /// <summary>The checks of strength where it was not calculated: none of them is known.</summary>
    public static IEnumerable<Check> NotCalculated(Job job)
    {
        var preferences = job.Preferences;
        yield return new(CheckId.StampedYield, double.NaN, preferences.MinYieldFactor);
        yield return new(CheckId.Endurance, double.NaN, preferences.MinEnduranceFactor);
        yield return new(CheckId.StopGive, double.NaN, preferences.MaxGive);
        if (job.Body.Engine is { } engine)
        {
            yield return new(CheckId.Resonance, double.NaN, LeastFrequencyRatio * engine.FiringFrequency);
        }

        foreach (var check in JointChecks.NotCalculated(job))
        {
            yield return check;
        }
    }

    /// <summary>The checks of <paramref name="report"/>.</summary>
    /// <param name="job">The job.</param>
    /// <param name="report">The report; its own checks are not looked at.</param>
    public static IEnumerable<Check> Of(Job job, StrengthReport report)
    {
        var (preferences, hot) = (job.Preferences, report.Metal.Worst);
        yield return new(CheckId.StampedYield, report.YieldFactor, preferences.MinYieldFactor) { Unfavourable = hot?.Yield * report.YieldFactor };
        yield return new(CheckId.Endurance, report.EnduranceFactor, preferences.MinEnduranceFactor) { Unfavourable = report.EnduranceAtWorst };
        yield return new(CheckId.StopGive, report.Opening.Give, preferences.MaxGive) { Unfavourable = report.Opening.Give / hot?.Modulus };
        if (report.FiringFrequency is { } firing)
        {
            yield return new(CheckId.Resonance, report.Frequencies[0], LeastFrequencyRatio * firing)
            {
                Unfavourable = hot is { } worst ? Math.Sqrt(worst.Modulus) * report.Frequencies[0] : null,
            };
        }

        foreach (var check in JointChecks.Of(report.Joints, report.Metal))
        {
            yield return check;
        }
    }
}
