using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Geometry;
using BracketGen.Mechanism;
using BracketGen.Units;

namespace BracketGen.Design.Checks;

/// <summary>The checks that need no bracket: does the cable work the valve?</summary>
public static class TravelChecks
{
    /// <summary>Least number of return springs (49 CFR 571.124 S5: at least two sources of energy).</summary>
    public const int LeastSprings = 2;

    /// <summary>Room the wire needs in groove and slot beyond its own diameter (mm; common practice, no source).</summary>
    public const double WirePlay = 0.2;

    /// <summary>Whether a check is a matter of cable, pedal and throttle body alone, which no bracket can mend or spoil.</summary>
    public static bool IsBeyondTheBracket(Check check) =>
        check.Id is "free-play" or "return-springs" or "wide-open" or "over-travel" or "wire-in-groove" or "wire-in-slot";

    /// <summary>All travel checks, in the order a person would make them.</summary>
    /// <param name="body">The throttle body.</param>
    /// <param name="vehicle">The vehicle.</param>
    /// <param name="preferences">The limits wanted.</param>
    /// <param name="travel">The travel found.</param>
    public static IEnumerable<Check> Of(ThrottleBody body, Vehicle vehicle, Preferences preferences, Travel travel)
    {
        var quadrant = body.Quadrant;
        var cable = vehicle.Cable;
        yield return new(
            "free-play", "Free play at the closed stop", CheckKind.Safety, Quantity.Length,
            travel.FreePlay, Bound.AtLeast, preferences.MinFreePlay, Sources.Preference,
            "Without slack in the wire the cable, not the valve's own stop, decides where the valve closes: it can hang open. Give more free play.");
        yield return new(
            "return-springs", "Return springs that close the valve alone", CheckKind.Safety, Quantity.Number,
            body.Springs.Count, Bound.AtLeast, LeastSprings, Sources.TwoSprings,
            "When the only spring breaks, nothing closes the valve. Fit a second, independent return spring.");
        yield return new(
            "wide-open", "Pull left at the floor with the valve wide open", CheckKind.Function, Quantity.Length,
            travel.OverTravel, Bound.AtLeast, preferences.MinOverTravel, Sources.Preference,
            "The valve does not surely reach its wide-open stop: the engine will not give full power.");
        yield return new(
            "over-travel", "Over-travel of the pedal past wide open", CheckKind.Advice, Quantity.Length,
            travel.OverTravel, Bound.AtMost, preferences.MaxOverTravel, Sources.Preference,
            "A stamped pedal strains the valve's stop, the cable and the bracket. Fit a pedal stop where the valve is just wide open.");
        yield return new(
            "moment-arm", "Least moment arm of the wire over the sweep", CheckKind.Safety, Quantity.Length,
            travel.LeastArm, Bound.AtLeast, 0.5 * travel.Closed.Arm, Sources.CommonPractice,
            "The wire pulls ever more along the quadrant instead of turning it: it can pass the centre and hold the valve open.");
        yield return new(
            "wrap-wide-open", "Wire still in the groove at the wide-open stop", CheckKind.Safety, Quantity.Angle,
            travel.WideOpen.Wrap.Radians, Bound.AtLeast, preferences.MinWrap.Radians, Sources.Preference,
            "The wire lifts out of the groove before the valve is open, and can catch beside it on the way back. Let the wire leave farther round the quadrant.");
        yield return new(
            "groove-length", "Groove left behind the wire at the closed stop", CheckKind.Safety, Quantity.Angle,
            quadrant.GrooveExtent - travel.Closed.Wrap.Radians, Bound.AtLeast, 0, Sources.Profile,
            "The wire runs off the end of the groove with the valve closed, and can jump out. Let the wire leave nearer to the pocket.");
        yield return new(
            "wire-in-groove", "Groove width for the wire", CheckKind.Safety, Quantity.Length,
            quadrant.GrooveWidth, Bound.AtLeast, cable.WireDiameter + WirePlay, Sources.CommonPractice,
            "The wire is pinched in the groove and may not come back. Use a thinner wire or another quadrant.");
        yield return new(
            "wire-in-slot", "Pocket slot width for the wire", CheckKind.Function, Quantity.Length,
            quadrant.SlotWidth, Bound.AtLeast, cable.WireDiameter + WirePlay, Sources.CommonPractice,
            "The wire does not go into the pocket's slot.");
    }

    /// <summary>The checks of the stop's place: fleet angle, adjuster, and how near the fitting comes to it.</summary>
    public static IEnumerable<Check> OfStop(
        Vehicle vehicle, Preferences preferences, Travel travel, StopPlacement placement, StopSeat seat)
    {
        var cable = vehicle.Cable;
        yield return new(
            "fitting-clearance", "End fitting to the stop, nearest", CheckKind.Safety, Quantity.Length,
            travel.LeastStraight - cable.Fitting.ReachRadius - seat.Protrusion, Bound.AtLeast, preferences.FittingClearance,
            Sources.Preference,
            "The end fitting runs against the stop before the valve is open, and can jam there. More free wire is needed between quadrant and stop.");
        yield return new(
            "fleet-angle", "Fleet angle at the groove", CheckKind.Safety, Quantity.Angle,
            FleetAngle(travel, placement).Radians, Bound.AtMost, cable.FleetLimit, Sources.Profile,
            "The wire rubs on the groove's flank and can climb out of it. Bring the stop into the groove's plane.");
        if (cable.OuterEnd.AdjusterRange > 0)
        {
            yield return new(
                "adjuster-reserve", "Adjuster travel left both ways", CheckKind.Function, Quantity.Length,
                cable.OuterEnd.AdjusterRange / 2 - Math.Abs(placement.AdjusterShift), Bound.AtLeast,
                preferences.AdjusterReserve * cable.OuterEnd.AdjusterRange / 2, Sources.Preference,
                "The adjuster is used up by the design: nothing is left to set the free play on the vehicle.");
        }
    }

    /// <summary>Largest angle between the wire and the groove's plane over the sweep.</summary>
    public static Angle FleetAngle(Travel travel, StopPlacement placement) =>
        new(Math.Atan2(Math.Abs(placement.Seat.Z), travel.LeastStraight));
}
