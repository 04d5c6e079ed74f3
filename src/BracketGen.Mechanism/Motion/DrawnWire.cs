using System.Collections.Immutable;
using BracketGen.Geometry;
using BracketGen.Mechanism.Grooves;

namespace BracketGen.Mechanism.Motion;

/// <summary>The wire of a cable that the quadrant draws as the valve opens: it runs round the other way and is wound on.</summary>
/// <remarks>
/// Seen from behind, y reversed, such a wire is a wire that pulls, with the quadrant turning backwards: the same taut wire is solved there at the opening -θ.
/// Wire drawn(θ) = L(θ) - L(0); its slope is the moment arm, by which the wire's tension closes the valve (virtual work).
/// Lengths in mm.
/// </remarks>
public static class DrawnWire
{
    private const int Steps = 48;

    /// <summary>The wire at equal steps of opening, closed stop first; null if the groove covers the seat somewhere in the sweep. The arm is positive if the wire's tension closes the valve.</summary>
    /// <param name="quadrant">Groove, pocket and rotation; opening counter-clockwise, the groove running clockwise from the pocket.</param>
    /// <param name="seat">The seat (mm, in the groove's plane).</param>
    public static ImmutableArray<TautWire>? TrySweep(Quadrant quadrant, Vector2 seat)
    {
        var (mirrored, stop) = (quadrant.Mirrored(), seat.MirroredInY);
        var pocket = mirrored.PocketNormal;
        try
        {
            return
            [
                .. Enumerable.Range(0, Steps + 1).Select(i =>
                {
                    var opening = (double)i / Steps * quadrant.Rotation.Value;
                    return TautWire.Solve(mirrored, pocket, stop, -opening).Mirrored() with { Opening = opening };
                }),
            ];
        }
        catch (ArgumentException)
        {
            return null;
        }
    }

    /// <summary>The place of the seat for which the wire leaves the groove at a tangent angle on the closed stop; null if the wire is too short to get there.</summary>
    /// <param name="quadrant">As for <see cref="TrySweep"/>.</param>
    /// <param name="freeInnerLength">Seat to fitting centre with the adjuster at mid range (mm).</param>
    /// <param name="freePlay">Slack wanted at the closed stop (mm).</param>
    /// <param name="wrap">Wrap angle at the closed stop.</param>
    public static StopPlacement? At(Quadrant quadrant, double freeInnerLength, double freePlay, Angle wrap)
    {
        var mirrored = quadrant.Mirrored();
        return StopPlacement.At(mirrored, freeInnerLength, freePlay, mirrored.PocketNormal + wrap)?.Mirrored();
    }
}
