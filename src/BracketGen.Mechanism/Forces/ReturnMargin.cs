using System.Collections.Immutable;
using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;
using BracketGen.Mechanism.Motion;
using BracketGen.Mechanism.Pedals;
using BracketGen.Mechanism.Throttles;

namespace BracketGen.Mechanism.Forces;

/// <summary>What is left of the springs' closing torque at one opening after everything that hinders the return.</summary>
/// <remarks>
/// With the foot off, the quadrant must pull the wire back through the outer and lift the pedal: the tension at the pedal's end
/// is W dx/dp (virtual work of the pad load W), at the quadrant e^{μβ} times that and the closing drag of the cable (Euler-Eytelwein). A pedal that
/// lifts itself needs nothing; a wire cannot be pushed, so it does not help either. The springs' torque is read as the valve closes, so the drag
/// of the shaft while it moves is taken off in it; it counts once more for a valve that must break away from rest.
/// </remarks>
/// <param name="Opening">Opening of the valve.</param>
/// <param name="Spring">Closing torque of the springs (N·mm).</param>
/// <param name="Needed">Torque that friction, drag and pedal take (N·mm).</param>
public readonly record struct ReturnMargin(Angle Opening, double Spring, double Needed)
{
    /// <summary>
    /// Part of the springs' torque that must be left at every opening for a reliable return: half (common practice,
    /// no source). With one energy source failed, it must still be positive (49 CFR 571.124 S5).
    /// </summary>
    public const double SafeFraction = 0.5;

    /// <summary>Arm of the wire there (mm): torque for 1 N of drag.</summary>
    public double Arm { get; init; }

    /// <summary>Torque left to close the valve (N·mm); negative if it hangs open.</summary>
    public double Left => Spring - Needed;

    /// <summary>Part of the springs' torque that is left; negative infinity if the springs give none.</summary>
    public double Fraction => Spring > 0 ? Left / Spring : double.NegativeInfinity;

    /// <summary>The margin at equal steps of opening, from the closed to the wide-open stop.</summary>
    /// <param name="travel">The travel under load; its friction is used as it is (see <see cref="CableFriction.Worst"/>).</param>
    /// <param name="springs">The springs that work: all, the weakest, or those left when one has failed.</param>
    /// <param name="pedal">The pedal.</param>
    /// <param name="shaftDrag">Drag torque of the throttle shaft in its bearings (N·mm).</param>
    /// <param name="steps">Number of steps.</param>
    public static ImmutableArray<ReturnMargin> Over(
        LoadedTravel travel, ReturnSprings springs, Pedal pedal, double shaftDrag = 0, int steps = 48)
    {
        var lever = pedal.Lever;
        return [.. Enumerable.Range(0, steps + 1).Select(i =>
        {
            var fraction = (double)i / steps;
            var opening = fraction * travel.Travel.Rotation;
            var gain = lever.PullPerTravel(lever.PadAt(travel.PullAt(opening)));
            var atPedal = Math.Max(0, pedal.PadLoad.Max) / gain;
            var arm = travel.Wire(opening).Arm;
            return new ReturnMargin(opening, springs.TorqueAt(fraction), arm * travel.Friction.ToDrawBack(atPedal) + shaftDrag) { Arm = arm };
        })];
    }

    /// <summary>How much more closing drag (N) may come to what was counted until less than a part of the springs' torque is left somewhere; negative if less is left already.</summary>
    /// <param name="margins">The margin over the sweep.</param>
    /// <param name="fraction">The part that must be left.</param>
    public static double DragToSpare(ImmutableArray<ReturnMargin> margins, double fraction) =>
        margins.Min(m => ((1 - fraction) * m.Spring - m.Needed) / m.Arm);

    /// <summary>The opening with the smallest part left.</summary>
    public static ReturnMargin Least(ImmutableArray<ReturnMargin> margins) => margins.MinBy(m => m.Fraction);
}
