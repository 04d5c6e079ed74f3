using BracketGen.Geometry;
using BracketGen.Mechanism.Grooves;

namespace BracketGen.Mechanism.Motion;

/// <summary>Where the seat must be, and the wire direction from the quadrant to it.</summary>
/// <remarks>Throttle frame, in the groove's plane (z = 0), so the fleet angle is zero.</remarks>
/// <param name="Leaving">Tangent angle φ at the closed stop: outward normal of the wire's line.</param>
/// <param name="Seat">The seat P (mm).</param>
/// <param name="Direction">From the quadrant towards the stop, length one: the seat's normal.</param>
/// <param name="Straight">Straight length from the groove to the seat at the closed stop (mm).</param>
/// <param name="AdjusterShift">How far the adjuster is off mid range (mm), positive if it takes up wire.</param>
/// <param name="FreePlay">Free play at the closed stop (mm).</param>
public sealed record StopPlacement(
    Angle Leaving, ThrottlePoint Seat, Vector3 Direction, double Straight, double AdjusterShift, double FreePlay) : IMirrored<StopPlacement>
{
    /// <summary>Groove left behind the wire at the closed stop.</summary>
    public Angle GrooveLeft { get; init; }

    /// <summary>The one place of the stop for a tangent angle, or null if the wire is too short to get there.</summary>
    /// <remarks>
    /// The path at the closed stop is the free inner length less what the adjuster takes up less the free play; the part off
    /// the groove is straight: ℓ = F - x - f - arc(φ).
    /// </remarks>
    /// <param name="quadrant">The quadrant.</param>
    /// <param name="freeInnerLength">Seat to fitting centre with the adjuster at mid range (mm).</param>
    /// <param name="freePlay">Free play wanted at the closed stop (mm).</param>
    /// <param name="leaving">Tangent angle at the closed stop, on the turn that follows the pocket's normal.</param>
    /// <param name="adjusterShift">How far the adjuster is off mid range (mm).</param>
    public static StopPlacement? At(
        Quadrant quadrant, double freeInnerLength, double freePlay, Angle leaving, double adjusterShift = 0)
    {
        var groove = quadrant.Groove;
        var straight = freeInnerLength - adjusterShift - freePlay - groove.ArcBetween(quadrant.PocketNormal, leaving);
        if (!(straight > 0))
        {
            return null;
        }

        var direction = Vector2.FromPolar(1, leaving).Left;
        var seat = groove.PointWithNormal(leaving) + straight * direction;
        return new(leaving, new(Vector3.From(seat)), Vector3.From(direction), straight, adjusterShift, freePlay)
        {
            GrooveLeft = quadrant.PocketNormal + quadrant.GrooveExtent - leaving,
        };
    }

    /// <inheritdoc/>
    public StopPlacement Mirrored() => this with
    {
        Leaving = -Leaving,
        Seat = Seat.Mirrored(),
        Direction = Direction.MirroredInY,
    };
}
