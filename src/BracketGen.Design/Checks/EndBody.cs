using System.Collections.Immutable;
using BracketGen.Mechanism.Cables;
using BracketGen.Strength.Parts;

namespace BracketGen.Design.Checks;

/// <summary>What hangs on the stop and swings with it: the parts of the outer's end, and some of the outer itself.</summary>
/// <remarks>
/// Round parts on one axis, solid steel unless weighed: the bore is left full, so that the frequency comes out low. The wire is left out: it slides in the outer, and what of it lies
/// between stop and quadrant weighs less than a gram (50 mm of 1.5 mm steel: 0.7 g).
/// </remarks>
/// <param name="Parts">The parts, from the quadrant's side to the outer.</param>
public sealed record EndBody(ImmutableArray<EndPart> Parts)
{
    /// <summary>Density of steel (t/mm³).</summary>
    private const double Steel = 7.85e-9;

    /// <summary>Length taken for the body of a ferrule (mm; common practice, no source).</summary>
    private const double FerruleLength = 20;

    /// <summary>Length taken for the head of an adjuster, which holds the outer, and how much wider than the outer it is (mm; common practice, no source).</summary>
    private const double HeadLength = 10, HeadWall = 2;

    /// <summary>Length taken for a collar (mm; common practice, no source).</summary>
    private const double CollarLength = 3;

    /// <summary>Thickness taken for a clip in a groove (mm; common practice, no source).</summary>
    private const double ClipThickness = 1;

    /// <summary>Part of the outer's circle that is steel where nobody weighed it (common practice, no source): a spiral of flat wire with liner and cover.</summary>
    private const double OuterSteel = 0.5;

    /// <summary>Length of outer that moves with the stop at most (mm); what is farther away lags behind.</summary>
    /// <remarks>
    /// A long beam shaken at its end weighs there as much as a piece of length 1/β at most, β⁴ = m ω²/(E I) (L. Cremer, M. Heckl, Structure-Borne Sound, impedance of a beam driven at its end; from memory).
    /// An outer as stiff as 1 N·m² with 0.15 kg/m has 1/β = 52 mm at 150 Hz, and less the faster it shakes and the softer it is.
    /// </remarks>
    private const double LargestShare = 50;

    /// <summary>Mass (t).</summary>
    public double Mass => Parts.Sum(p => p.Mass);

    /// <summary>Centre of gravity over the sheet's middle surface, towards the outer (mm).</summary>
    public double Centre => Parts.Sum(p => p.Mass * p.Centre) / Mass;

    /// <summary>Moment of inertia about the axis (t·mm²).</summary>
    public double AboutAxis => Parts.Sum(p => p.AboutAxis);

    /// <summary>Moment of inertia about a line across the axis through the centre of gravity (t·mm²).</summary>
    public double AboutAcross => Parts.Sum(p => p.AboutAcross + p.Mass * (p.Centre - Centre) * (p.Centre - Centre));

    /// <summary>The body on its seat.</summary>
    /// <param name="seatOnTop">Whether the outer comes from the top of the sheet.</param>
    public SeatBody On(bool seatOnTop) => new(Mass, seatOnTop ? Centre : -Centre, AboutAxis, AboutAcross);

    /// <summary>What hangs on a stop.</summary>
    /// <param name="cable">The cable.</param>
    /// <param name="thickness">Thickness of the sheet (mm).</param>
    /// <param name="freeOuter">Length of outer from the stop to what holds it next (mm); null where that is not known.</param>
    public static EndBody Of(Cable cable, double thickness, double? freeOuter)
    {
        var half = thickness / 2;
        EndPart[] end = cable.OuterEnd switch
        {
            // The screw at the end of its range on the outer's side, where it swings farthest out.
            ThreadedAdjuster a =>
            [
                EndPart.Nut(EndPartId.QuadrantNut, a, -half - a.NutHeight, Steel),
                EndPart.Round(EndPartId.Screw, a.Thread, -half - a.NutHeight, half + a.NutHeight + a.Range, Steel),
                EndPart.Nut(EndPartId.OuterNut, a, half, Steel),
                EndPart.Round(EndPartId.Head, Math.Max(a.Thread, cable.OuterDiameter + HeadWall), half + a.NutHeight + a.Range, half + a.NutHeight + a.Range + HeadLength, Steel),
            ],
            BulkheadFerrule b =>
            [
                EndPart.Nut(EndPartId.QuadrantNut, b, -half - b.NutHeight, Steel),
                EndPart.Round(EndPartId.Screw, b.Thread, -half - b.NutHeight - b.StandsOut(thickness), half + b.NutHeight, Steel),
                EndPart.Nut(EndPartId.OuterNut, b, half, Steel),
                EndPart.Round(EndPartId.Body, Math.Max(b.Thread, cable.OuterDiameter + HeadWall), half + b.NutHeight, half + b.NutHeight + FerruleLength, Steel),
            ],
            ClippedFerrule f =>
            [
                EndPart.Round(EndPartId.Clip, f.ClipDiameter, half - f.Grip - ClipThickness, half - f.Grip, Steel),
                EndPart.Round(EndPartId.Nose, f.NoseDiameter, half - f.NoseLength, half, Steel),
                EndPart.Round(EndPartId.Body, f.ShoulderDiameter, half, half + FerruleLength, Steel),
            ],
            PushInEnd p =>
            [
                EndPart.Round(EndPartId.Nose, p.HoleDiameter, half - p.Reach, half, Steel),
                EndPart.Round(EndPartId.Body, p.ShoulderDiameter, half, half + FerruleLength, Steel),
            ],
            SlottedClip c =>
            [
                EndPart.Round(EndPartId.Collar, c.CollarDiameter, half - c.NeckLength - CollarLength, half - c.NeckLength, Steel),
                EndPart.Round(EndPartId.Neck, c.NeckDiameter, half - c.NeckLength, half, Steel),
                EndPart.Round(EndPartId.Body, c.CollarDiameter, half, half + FerruleLength, Steel),
            ],
            _ =>
            [
                EndPart.Round(EndPartId.Nose, cable.OuterEnd.BodyDiameter, -half, half, Steel),
                EndPart.Round(EndPartId.Body, cable.OuterEnd.SeatDiameter, half, half + FerruleLength, Steel),
            ],
        };
        if (cable.EndMass is { } weighed)
        {
            var factor = weighed.Max / end.Sum(p => p.Mass);
            end = [.. end.Select(p => p.Times(factor))];
        }

        // As much of a rod held at both ends weighs on each (statics). It bends where it leaves the end, so it does not turn with it.
        var perLength = cable.OuterMass?.Max ?? OuterSteel * Steel * Math.PI / 4 * cable.OuterDiameter * cable.OuterDiameter;
        var share = Math.Min(LargestShare, freeOuter / 2 ?? LargestShare);
        return new([.. end, new(EndPartId.Outer, perLength * share, end.Max(p => p.To), end.Max(p => p.To), 0, 0)]);
    }
}

/// <summary>The parts of what hangs on a stop.</summary>
public enum EndPartId
{
    /// <summary>Locknut on the quadrant's side of the sheet.</summary>
    QuadrantNut,

    /// <summary>Threaded adjuster.</summary>
    Screw,

    /// <summary>Locknut on the outer's side of the sheet.</summary>
    OuterNut,

    /// <summary>Head of the adjuster: it holds the outer.</summary>
    Head,

    /// <summary>Nose of a ferrule, in its hole.</summary>
    Nose,

    /// <summary>Neck, in its slot.</summary>
    Neck,

    /// <summary>Collar on the quadrant's side.</summary>
    Collar,

    /// <summary>Body of a ferrule, on the outer's side.</summary>
    Body,

    /// <summary>Clip in the groove of a ferrule's nose.</summary>
    Clip,

    /// <summary>What of the outer moves with its end.</summary>
    Outer,
}

/// <summary>A round part of what hangs on a stop.</summary>
/// <param name="Id">Which it is.</param>
/// <param name="Mass">Mass (t).</param>
/// <param name="Centre">Centre of gravity over the sheet's middle surface, towards the outer (mm).</param>
/// <param name="To">Where it ends on the outer's side, likewise (mm).</param>
/// <param name="AboutAxis">Moment of inertia about its axis (t·mm²).</param>
/// <param name="AboutAcross">Moment of inertia about a line across it through its centre of gravity (t·mm²).</param>
public readonly record struct EndPart(EndPartId Id, double Mass, double Centre, double To, double AboutAxis, double AboutAcross)
{
    /// <summary>The same part with another mass.</summary>
    /// <param name="factor">Its mass over that of this one.</param>
    public EndPart Times(double factor) => this with { Mass = factor * Mass, AboutAxis = factor * AboutAxis, AboutAcross = factor * AboutAcross };

    /// <summary>A solid cylinder.</summary>
    /// <remarks>m r²/2 about the axis, m (3 r² + h²)/12 across (Machinery's Handbook, moments of inertia; from memory).</remarks>
    internal static EndPart Round(EndPartId id, double diameter, double from, double to, double density)
    {
        double square = diameter * diameter / 4, height = to - from, mass = density * Math.PI * square * height;
        return new(id, mass, (from + to) / 2, to, mass * square / 2, mass * (3 * square + height * height) / 12);
    }

    /// <summary>A hexagon with the end's thread in it.</summary>
    /// <remarks>Area √3/2 s², polar moment of area 5 √3/8 a⁴ of a regular hexagon with side a, s = √3 a across its flats (Roark's Formulas, properties of sections; from memory).</remarks>
    internal static EndPart Nut(EndPartId id, NuttedEnd a, double from, double density)
    {
        double side = a.AcrossFlats / Math.Sqrt(3), bore = a.Thread * a.Thread / 4;
        var mass = density * a.NutHeight * (3 * Math.Sqrt(3) / 2 * side * side - Math.PI * bore);
        var aboutAxis = density * a.NutHeight * (5 * Math.Sqrt(3) / 8 * side * side * side * side - Math.PI / 2 * bore * bore);
        return new(id, mass, from + a.NutHeight / 2, from + a.NutHeight, aboutAxis, aboutAxis / 2 + mass * a.NutHeight * a.NutHeight / 12);
    }
}
