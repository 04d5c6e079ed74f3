using BracketGen.Design.Inputs;
using BracketGen.Mechanism.Cables;
using BracketGen.SheetMetal.Patterns;
using BracketGen.SheetMetal.Standards;

namespace BracketGen.Design.Part;

/// <summary>What the outer's end needs in the stop flange: the opening, and the metal around it.</summary>
/// <param name="Opening">Diameter of the hole, or width of the slot (mm).</param>
/// <param name="IsSlot">Whether it is a slot open to the edge.</param>
/// <param name="FittingPasses">Whether the end fitting can be brought through.</param>
/// <param name="SeatRadius">Radius that must lie on metal: nut, shoulder or collar (mm).</param>
/// <param name="RoomDiameter">Diameter that must stay free of other flanges on both sides: the spanner's or the shoulder's (mm).</param>
/// <param name="Protrusion">How far the end stands out of the seat's plane towards the quadrant, sheet included (mm).</param>
public sealed record StopSeat(
    double Opening, bool IsSlot, bool FittingPasses, double SeatRadius, double RoomDiameter, double Protrusion)
{
    /// <summary>Play of a ferrule's nose or neck in its opening (mm; common practice, no source).</summary>
    public const double FerrulePlay = 0.3;

    /// <summary>What <paramref name="cable"/> needs in sheet of <paramref name="thickness"/> (mm).</summary>
    public static StopSeat For(Cable cable, StopOpening wanted, double thickness)
    {
        var opening = cable.OuterEnd is ThreadedAdjuster adjuster
            ? MetricThread.ClearanceFor(adjuster.Thread)
            : cable.OuterEnd.BodyDiameter + FerrulePlay;
        var passes = cable.Fitting.PassageDiameter(cable.WireDiameter) < opening;
        var slot = cable.OuterEnd is SlottedClip
            || wanted == StopOpening.OpenSlot || (wanted == StopOpening.AsNeeded && !passes);
        return cable.OuterEnd switch
        {
            // The nut on the quadrant's side, and all the thread that may stand out with the adjuster at the end of its range.
            ThreadedAdjuster a => new(
                opening, slot, slot || passes, a.AcrossCorners / 2, SpannerDiameter(a.AcrossFlats),
                thickness + a.NutHeight + a.Range),
            SlottedClip c => new(opening, true, true, c.CollarDiameter / 2, c.CollarDiameter, thickness + c.NeckLength),
            _ => new(opening, slot, slot || passes, cable.OuterEnd.SeatDiameter / 2, cable.OuterEnd.SeatDiameter, thickness),
        };
    }

    /// <summary>Radius of metal (mm) wanted around the opening.</summary>
    /// <remarks>The seat with a millimetre to spare, the edge distance of a bolt hole, and a thickness and a half beside a slot.</remarks>
    public double MetalRadius(double thickness) => Math.Max(
        SeatRadius + 1,
        Math.Max(HoleDistances.AcrossForce(Opening, thickness), Opening / 2 + 1.5 * thickness));

    // Common practice, no source: the head of an open-ended spanner is about 2.2 times as wide as its opening; half of that
    // is swung clear when the spanner comes from the open side, so the nut's own corners and half the rest are kept free.
    private static double SpannerDiameter(double acrossFlats) => 1.6 * acrossFlats;
}
