using System.Collections.Immutable;
using BracketGen.Geometry;
using BracketGen.Mechanism.Motion;
using BracketGen.Mechanism.Pedals;

namespace BracketGen.Mechanism.Forces;

/// <summary>What the foot feels at one opening: more going down than coming up, by the friction in the outer.</summary>
/// <param name="Opening">Opening of the valve.</param>
/// <param name="PadTravel">Travel of the pad (mm).</param>
/// <param name="Tension">Tension at the quadrant (N).</param>
/// <param name="Pressing">Foot force while the pedal goes down (N).</param>
/// <param name="Releasing">Foot force while the pedal comes up (N); negative if it would not come up by itself.</param>
public readonly record struct FootForce(Angle Opening, double PadTravel, double Tension, double Pressing, double Releasing)
{
    /// <summary>The loop of foot force over the sweep, from the closed to the wide-open stop, at equal steps of opening.</summary>
    /// <remarks>
    /// F = T_pedal dp/dx - W, dp/dx of the lever (virtual work), W the pad load, which itself opens the valve. Going down T_pedal = T e^{μβ} + F0 with T that opens
    /// the valve against springs and shaft drag; coming up (T - F0) e^{-μβ} with T that the springs give (Euler-Eytelwein, and the drag F0 of either direction).
    /// </remarks>
    /// <param name="travel">The travel under load.</param>
    /// <param name="pedal">The pedal.</param>
    /// <param name="steps">Number of steps.</param>
    public static ImmutableArray<FootForce> Loop(LoadedTravel travel, Pedal pedal, int steps = 48)
    {
        var lever = pedal.Lever;
        return [.. Enumerable.Range(0, steps + 1).Select(i =>
        {
            var opening = (double)i / steps * travel.Travel.Rotation;
            var tension = travel.TensionAt(opening);
            var pad = lever.PadAt(travel.PullAt(opening));
            var gain = lever.PullPerTravel(pad);
            return new FootForce(
                opening, pad, tension,
                travel.Friction.Opening(tension) * gain - pedal.PadLoad.Value,
                travel.Friction.Closing(travel.ClosingTensionAt(opening)) * gain - pedal.PadLoad.Value);
        })];
    }
}
