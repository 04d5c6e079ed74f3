using BracketGen.Design.Inputs;
using BracketGen.Mechanism.Cables;
using BracketGen.SheetMetal.Patterns;
using BracketGen.SheetMetal.Shops;
using BracketGen.SheetMetal.Standards;

namespace BracketGen.Design.Part;

/// <summary>What the outer's end needs in the stop flange: the opening, and the metal around it.</summary>
/// <param name="Opening">Diameter of the hole, or width of the slot (mm).</param>
/// <param name="IsSlot">Whether it is a slot open to the edge.</param>
/// <param name="Passage">Narrowest opening that the end fitting has to go through (mm): hole or nut; null where the outer end slips in from the side.</param>
/// <param name="FittingSize">Opening that the end fitting needs (mm), with <see cref="FittingPlay"/>.</param>
/// <param name="SeatRadius">Radius that must lie on metal: nut, shoulder or collar (mm).</param>
/// <param name="RoomDiameter">Diameter that must stay free of other flanges on both sides: the spanner's or the shoulder's (mm).</param>
/// <param name="Protrusion">How far the end stands out of the seat's plane towards the quadrant, sheet included (mm).</param>
public sealed record StopSeat(
    double Opening, bool IsSlot, double? Passage, double FittingSize, double SeatRadius, double RoomDiameter, double Protrusion)
{
    /// <summary>Outline of the opening, laid along the y axis, which a mirror image keeps; null where it is round, and for a slot.</summary>
    public HoleOutline? Outline { get; init; }

    /// <summary>How far the opening reaches from its centre (mm).</summary>
    public double Reach => Outline?.Reach(Opening) ?? Opening / 2;

    /// <summary>Play of a ferrule's nose or neck in its opening (mm; common practice, no source).</summary>
    public const double FerrulePlay = 0.3;

    /// <summary>By how much a hole may be larger than an end that snaps into it was made for (mm; common practice, no source): its barbs then still hold.</summary>
    private const double PushInPlay = 0.1;

    /// <summary>By how much (mm) an opening may be larger than <paramref name="end"/> wants it.</summary>
    public static double MaxPlay(OuterEnd end) => end is PushInEnd ? PushInPlay : FerrulePlay;

    /// <summary>Play (mm) with which an outer end still goes in by hand (common practice, no source).</summary>
    public const double LeastPlay = 0.1;

    /// <summary>Play that an end fitting needs to go through an opening by hand (mm; common practice, no source).</summary>
    public const double FittingPlay = 0.2;

    /// <summary>Whether the cable goes on: the outer end slips in from the side, or the end fitting goes through all that is on its way.</summary>
    public bool CableGoesOn => Passage is not { } passage || passage >= FittingSize;

    /// <summary>What <paramref name="cable"/> needs in a sheet: <paramref name="thickness"/> (mm) bare, with room for its <paramref name="finish"/>.</summary>
    public static StopSeat For(Cable cable, StopOpening wanted, double thickness, Finish finish)
    {
        var thread = cable.OuterEnd as NuttedEnd;
        var opening = finish.HoleAllowance + (cable.OuterEnd switch
        {
            NuttedEnd threaded => FastenerThread.ClearanceFor(threaded.Thread),
            PushInEnd made => made.HoleDiameter,
            var end => end.BodyDiameter + FerrulePlay,
        });

        // Both ends of a throttle cable's wire are swaged on: nothing is drawn out of its outer. In a round hole the fitting goes first, and the nut on the
        // quadrant's side comes off over it; the adjuster itself is fixed on the outer, and the wire is in it already.
        // A hole with flats lets through no more than its width across them.
        var coated = (thread?.ThreadFlats + FerrulePlay) ?? opening - finish.HoleAllowance;
        var passage = cable.OuterEnd is NuttedEnd a ? Math.Min(coated, a.NutBore) : coated;
        var needed = cable.Fitting.PassageDiameter(cable.WireDiameter) + FittingPlay;
        var slot = cable.OuterEnd is SlottedClip
            || (cable.OuterEnd is not PushInEnd && (wanted == StopOpening.OpenSlot || (wanted == StopOpening.AsNeeded && passage < needed)));

        // A slot as wide as the thread's flats keeps it from turning as well as a hole with flats does.
        double? flats = thread?.ThreadFlats + FerrulePlay + finish.HoleAllowance;
        var seat = new StopSeat(slot ? flats ?? opening : opening, slot, slot ? null : passage, needed, cable.OuterEnd.SeatDiameter / 2, cable.OuterEnd.SeatDiameter, thickness)
        {
            Outline = slot ? null
                : flats is { } across ? new FlatSidedHole(new(0, 1), across)
                : cable.OuterEnd is PushInEnd { Corner: { } corner } ? new SquareHole(new(0, 1), corner)
                : null,
        };
        return cable.OuterEnd switch
        {
            // The nut on the quadrant's side, and all the thread that may stand out with the adjuster at the end of its range.
            NuttedEnd t => seat with
            {
                SeatRadius = t.AcrossCorners / 2,
                RoomDiameter = SpannerDiameter(t.AcrossFlats),
                Protrusion = thickness + t.NutHeight + t.StandsOut(thickness),
            },
            ClippedFerrule f => seat with { RoomDiameter = Math.Max(f.ShoulderDiameter, f.ClipDiameter), Protrusion = f.NoseLength },
            PushInEnd p => seat with { Protrusion = p.Reach },
            SlottedClip c => seat with { Protrusion = thickness + c.NeckLength },
            _ => seat,
        };
    }

    /// <summary>Whether two openings have the same shape, whichever way they are turned; null is round.</summary>
    /// <param name="one">One of them.</param>
    /// <param name="other">The other one.</param>
    public static bool SameShape(HoleOutline? one, HoleOutline? other) => one is null ? other is null : other is not null && one with { Along = other.Along } == other;

    /// <summary>Minimum opening (mm) into which an outer's end goes by hand: the fine clearance hole of its thread (ISO 273), or a tenth of a millimetre more than its body (common practice, no source).</summary>
    /// <param name="end">The outer's end.</param>
    public static double MinOpening(OuterEnd end) => end switch
    {
        NuttedEnd t => FastenerThread.All.FirstOrDefault(m => Math.Abs(m.Diameter - t.Thread) < Geometry.Tolerance.SameSize)?.ClearanceFine ?? Math.Round(1.05 * t.Thread, 1),
        PushInEnd p => p.HoleDiameter,
        _ => end.BodyDiameter + LeastPlay,
    };

    /// <summary>Radius of metal (mm) wanted around the opening.</summary>
    /// <remarks>The seat with a millimetre to spare, the edge distance of a bolt hole, and a thickness and a half beside a slot.</remarks>
    public double MetalRadius(double thickness) => Math.Max(
        SeatRadius + 1,
        Math.Max(HoleDistances.AcrossForce(2 * Reach, thickness), Reach + 1.5 * thickness));

    // Common practice, no source: the head of an open-ended spanner is about 2.2 times as wide as its opening; half of that
    // is swung clear when the spanner comes from the open side, so the nut's own corners and half the rest are kept free.
    private static double SpannerDiameter(double acrossFlats) => 1.6 * acrossFlats;
}
