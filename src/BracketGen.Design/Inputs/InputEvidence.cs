using BracketGen.Geometry;
using BracketGen.Mechanism.Grooves;

namespace BracketGen.Design.Inputs;

/// <summary>How an input of a job came to be known.</summary>
public static class InputEvidence
{
    /// <summary>The weakest evidence of an input's numbers; null for inputs that do not record it.</summary>
    /// <param name="job">The job.</param>
    /// <param name="input">The input.</param>
    public static Evidence? Of(Job job, InputId input)
    {
        var (cable, pedal, quadrant, springs) = (job.Vehicle.Cable, job.Vehicle.Pedal, job.Body.Quadrant, job.Body.Springs);
        return input switch
        {
            InputId.FreeInnerLength => cable.FreeInnerLength.Evidence,
            InputId.OuterLength => cable.OuterLength?.Evidence ?? Evidence.Assumed,
            InputId.OuterBends => cable.TotalBend.Evidence != Evidence.Assumed || job.Bulkhead is null || cable.OuterLength is null
                ? cable.TotalBend.Evidence
                : Evidence.Given,
            InputId.Friction => cable.Friction.Evidence,
            InputId.ClosingDrag => cable.ClosingDrag.Evidence,
            InputId.OpeningDrag => cable.OpeningDrag.Evidence,
            InputId.Sensor when job.Body.Sensor is { } sensor => sensor.Slot is null ? Evidence.Assumed : Evidence.Given,
            InputId.OuterStiffness => cable.OuterAxialStiffness.Evidence,
            InputId.OuterBore => cable.OuterBore is null ? Evidence.Assumed : Evidence.Given,
            InputId.EngineMovement => job.Movement.Evidence,
            InputId.ShaftDrag => job.Body.ShaftDrag.Evidence,
            InputId.AvailablePull => pedal.AvailablePull.Evidence,
            InputId.PadLoad => pedal.PadLoad.Evidence,
            InputId.Rotation => quadrant.Rotation.Evidence,
            InputId.Pocket => quadrant.Pocket.Evidence,
            InputId.ReturnSprings => (Evidence)Math.Min((int)springs.TorqueClosed.Evidence, (int)springs.TorqueOpen.Evidence),
            InputId.Groove => quadrant.Groove switch
            {
                CircularGroove circle => circle.PitchRadius.Evidence,
                EccentricGroove eccentric => eccentric.Radius.Evidence,
                _ => null,
            },
            _ => null,
        };
    }
}
