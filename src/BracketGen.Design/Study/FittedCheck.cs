using System.Collections.Immutable;
using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Mechanism.Cables;
using BracketGen.Mechanism.Fitted;

namespace BracketGen.Design.Study;

/// <summary>Readings taken on the vehicle held against what a job expects.</summary>
public static class FittedCheck
{
    /// <summary>The findings; null where by the job the wire passes the throttle shaft within the sweep and nothing can be expected.</summary>
    /// <param name="job">The job.</param>
    /// <param name="report">Its mechanism.</param>
    /// <param name="readings">What was read.</param>
    public static ImmutableArray<Finding>? Of(Job job, MechanismReport report, FittedReadings readings) => report.Loaded is { } loaded
        ? FittedVerdict.Of(readings, new()
        {
            Travel = loaded,
            Pedal = job.Vehicle.Pedal,
            Sensor = report.Sensor,
            ControllerZero = job.Vehicle.Controller.ZeroVolts,
            Pitch = job.Vehicle.Cable.OuterEnd is ThreadedAdjuster adjuster ? adjuster.Pitch : null,
            MinFreePlay = job.Preferences.MinFreePlay,
        })
        : null;
}
