using BracketGen.Design.Inputs;

namespace BracketGen.Design.Checks;

/// <summary>The cables that the vehicle brings besides the one from the pedal: a throttle body with one groove has no place for them.</summary>
public static class OtherCableChecks
{
    /// <summary>The checks of every other cable, in the order of the vehicle's file; their numbers count the cables.</summary>
    /// <param name="job">The job, opening counter-clockwise.</param>
    public static IEnumerable<Check> Of(Job job) => job.Vehicle.OtherCables.SelectMany((cable, i) => job.UseOf(cable) is { Fate: CableFate.InGroove }
        ? OtherWireChecks.Of(job, JobFacts.Of(job).OtherWires.First(w => w.Number == i + 1))
        : LeftOut(cable, job.UseOf(cable), i + 1));

    /// <summary>Whether a check is one of these.</summary>
    public static bool IsOne(Check check) => check.Duty is not null;

    // What nobody said is not known; a gearbox without its cable is a danger until the job says what serves it.
    private static IEnumerable<Check> LeftOut(OtherCable cable, CableUse use, int number)
    {
        Check About(CheckId id, double value) => new(id, value, 1) { Number = number, Subject = cable.Name, Duty = cable.Duty };
        var isHooked = use.Fate == CableFate.HookedElsewhere;
        if (isHooked)
        {
            yield return About(CheckId.CableElsewhere, 0);
        }
        else
        {
            yield return About(CheckId.CableLaidBy, use.Fate == CableFate.NotSaid ? double.NaN : use.Fate == CableFate.TakenOut ? 1 : OffPedal(cable, use));
            if (cable.HasActuator && use.Fate != CableFate.TakenOut)
            {
                yield return About(CheckId.CableActuatorDead, use.IsActuatorDead switch { null => double.NaN, true => 1, false => 0 });
            }
        }

        yield return About(cable.Duty == CableDuty.KickDown ? CheckId.KickDownServed : CheckId.CableWork, isHooked || use.ServedBy is not null ? 1 : 0);
    }

    // A second cable still hooked to the pedal can hold it down, however well its other end is tied back.
    private static double OffPedal(OtherCable cable, CableUse use) =>
        cable.IsOnPedal == false ? 1 : use.IsOffPedal switch { null => double.NaN, true => 1, false => 0 };
}
