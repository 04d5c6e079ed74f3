using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Geometry;
using BracketGen.Mechanism.Motion;

namespace BracketGen.Design.Checks;

/// <summary>The stop of a bracket that lies where it lies: the adjuster makes up what the cable has more or less.</summary>
internal static class SeatedStop
{
    /// <summary>Where the stop is; null where no wire reaches its seat.</summary>
    /// <param name="job">The job, opening counter-clockwise.</param>
    /// <param name="placed">The bracket in place.</param>
    public static StopPlacement? Of(Job job, Bracket placed)
    {
        // The wire taut from the pocket to the seat is as long as it must be.
        var (seat, normal) = placed.FoldedSeat;
        if (WireTo(job.Body, seat) is not { } wire)
        {
            return null;
        }

        var freePlay = job.Preferences.FreePlay.Value;
        var shift = job.Vehicle.Cable.FreeInnerLength.Value - freePlay - wire.Length;
        return new(wire.Leaving, seat, normal, wire.Straight, shift, freePlay) { GrooveLeft = job.Body.Quadrant.GrooveExtent - wire.Wrap };
    }

    /// <summary>The taut wire from the pocket to a seat, valve closed; null where none gets there.</summary>
    /// <param name="body">The throttle body, opening counter-clockwise.</param>
    /// <param name="seat">The seat.</param>
    public static TautWire? WireTo(ThrottleBody body, ThrottlePoint seat)
    {
        try
        {
            return TautWire.Solve(body.Quadrant, seat.XY, Angle.Zero);
        }
        catch (ArgumentException)
        {
            return null; // The seat lies inside the groove.
        }
    }

    /// <summary>How far the wire leans from the stop's own direction over the sweep (rad).</summary>
    public static double Askew(StopPlacement placement, Travel travel) =>
        Math.Acos(Math.Clamp(placement.Direction.Dot(Vector3.From(travel.Closed.Direction)), -1, 1)) + travel.Wander.Radians;
}
