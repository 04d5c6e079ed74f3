using System.Collections.Immutable;
using BracketGen.Design.Inputs;

namespace BracketGen.Design.Kit;

/// <summary>Whether a pedal is to be stopped before the floor, and whether a pedal stop can be set to where.</summary>
public static class PedalStopFit
{
    /// <summary>Heights above the floor under the pad (mm) at which a stop leaves as much over-travel as the job wants; null where none is needed.</summary>
    /// <param name="job">The job.</param>
    /// <param name="overTravel">Over-travel with the pedal on the floor (mm).</param>
    public static (double Min, double Max)? Wanted(Job job, double overTravel)
    {
        if (!(overTravel > job.Preferences.MaxOverTravel))
        {
            return null;
        }

        var (lever, wide) = (job.Vehicle.Pedal.Lever, job.Vehicle.Pedal.AvailablePull.Value - overTravel);
        double Height(double left) => lever.FullStroke - lever.PadAt(wide + left);
        return (Height(job.Preferences.MaxOverTravel), Height(job.Preferences.MinOverTravel));
    }

    /// <summary>The findings.</summary>
    /// <param name="part">The pedal stop.</param>
    /// <param name="wanted">Heights at which it may stand (mm).</param>
    public static ImmutableArray<FitFinding> Of(PedalStopMeasures part, (double Min, double Max) wanted)
    {
        // One height of its range must be wanted; where none is, the finding has the nearest.
        var nearest = Math.Clamp((wanted.Min + wanted.Max) / 2, part.Min, part.Max);
        return [FitFinding.Within(FitAspect.StopHeight, (nearest, nearest, nearest), wanted.Min, wanted.Max)];
    }
}
