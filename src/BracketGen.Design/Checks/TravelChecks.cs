using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Geometry;
using BracketGen.Mechanism.Motion;

namespace BracketGen.Design.Checks;

/// <summary>The checks that need no bracket: does the cable work the valve?</summary>
public static class TravelChecks
{
    /// <summary>Minimum number of return springs (49 CFR 571.124 S5: at least two sources of energy).</summary>
    public const int LeastSprings = 2;

    /// <summary>Room the wire needs in groove and slot beyond its own diameter (mm; common practice, no source).</summary>
    public const double WirePlay = 0.2;

    /// <summary>Whether a check is a matter of cable, pedal and throttle body alone, which no bracket can correct or spoil.</summary>
    public static bool IsBeyondTheBracket(Check check) =>
        OtherCableChecks.IsOne(check) || check.Definition.Scope == CheckScope.BeyondTheBracket;

    /// <summary>All travel checks, in the order a person would make them.</summary>
    /// <param name="job">The job, opening counter-clockwise.</param>
    /// <param name="travel">The travel found.</param>
    public static IEnumerable<Check> Of(Job job, Travel travel)
    {
        var (body, preferences) = (job.Body, job.Preferences);
        var (quadrant, cable) = (body.Quadrant, job.Vehicle.Cable);
        yield return new(CheckId.FreePlay, travel.FreePlay, preferences.MinFreePlay);
        yield return new(CheckId.ReturnSprings, body.Springs.Count, LeastSprings);
        yield return new(CheckId.WideOpen, travel.OverTravel, preferences.MinOverTravel);
        if (travel.ReachesWideOpen)
        {
            yield return new(CheckId.OverTravel, travel.OverTravel, preferences.MaxOverTravel);
        }

        yield return new(
            CheckId.PlatePastSquare, (body.ValveClosedAngle + quadrant.Rotation.Value).Radians, (Angle.Right + quadrant.Rotation.PlusMinus).Radians);
        yield return new(CheckId.MomentArm, travel.LeastArm, 0.5 * travel.Closed.Arm);
        yield return new(CheckId.WrapWideOpen, travel.WideOpen.Wrap.Radians, preferences.MinWrap.Radians);
        yield return new(CheckId.GrooveLength, (quadrant.GrooveExtent - travel.Closed.Wrap).Radians, quadrant.Pocket.PlusMinus.Radians);
        yield return new(CheckId.WireInGroove, quadrant.GrooveWidth, cable.WireDiameter + WirePlay);
        yield return new(CheckId.WireInSlot, quadrant.SlotWidth, cable.WireDiameter + WirePlay);
        foreach (var check in PocketChecks.Of(quadrant, cable, travel.Sweep).Concat(OtherCableChecks.Of(job)).Concat(JobFacts.Of(job).Quadrant))
        {
            yield return check;
        }
    }

    /// <summary>The checks of the stop's place: fleet angle, adjuster, and how near the fitting comes to it.</summary>
    public static IEnumerable<Check> OfStop(
        Vehicle vehicle, Preferences preferences, Travel travel, StopPlacement placement, StopSeat seat)
    {
        var cable = vehicle.Cable;
        yield return new(CheckId.FittingClearance, travel.LeastStraight - cable.Fitting.ReachRadius - seat.Protrusion, preferences.FittingClearance);
        yield return new(CheckId.FleetAngle, FleetAngle(travel, placement).Radians, cable.FleetLimit.Radians);
        if (cable.OuterEnd.AdjusterRange > 0)
        {
            yield return new(CheckId.AdjusterReserve, cable.OuterEnd.AdjusterRange / 2 - Math.Abs(placement.AdjusterShift), preferences.AdjusterReserve * cable.OuterEnd.AdjusterRange / 2);
        }
    }

    /// <summary>Largest angle between the wire and the groove's plane over the sweep.</summary>
    public static Angle FleetAngle(Travel travel, StopPlacement placement) =>
        new(Math.Atan2(Math.Abs(placement.Seat.Z), travel.LeastStraight));
}
