using BracketGen.Geometry;
using BracketGen.Mechanism.Numerics;

namespace BracketGen.Mechanism.Cables;

/// <summary>The wire's tension lost to friction in the bends of the outer and to drag.</summary>
/// <remarks>
/// Euler-Eytelwein (capstan): a wire that slides through a bend of angle β with friction μ needs e^{μβ} times the tension at
/// the far end, however the bend is shaped. Bends in different planes add up. To that comes the drag F0, the pull that draws the wire with nothing on the far end:
/// T_pull = T_far e^{μβ} + F0. Drag that arises far from the pull is multiplied on its way, so the two directions have a value each, measured where the pull is:
/// opening at the pedal's end, closing at the end fitting.
/// </remarks>
/// <param name="Coefficient">Friction coefficient μ of the wire in the outer.</param>
/// <param name="TotalBend">Total bend angle β of the outer, all bends added without sign.</param>
public sealed record CableFriction(Measured Coefficient, Angle TotalBend)
{
    /// <summary>Pull at the pedal's end (N) that draws the wire with the end fitting free.</summary>
    public double OpeningDrag { get; init; }

    /// <summary>Pull at the end fitting (N) that draws the wire back with the pedal's end free.</summary>
    public double ClosingDrag { get; init; }

    /// <summary>No friction.</summary>
    public static readonly CableFriction None = new(0, Angle.Zero);

    /// <summary>e^{μβ}.</summary>
    public double Ratio => Math.Exp(Coefficient.Value * TotalBend.Radians);

    /// <summary>Tension at the pedal (N) that moves the wire towards it against <paramref name="tension"/> at the quadrant: opening.</summary>
    public double Opening(double tension) => tension * Ratio + OpeningDrag;

    /// <summary>Tension left at the pedal (N) while the quadrant pulls the wire back with <paramref name="tension"/>: closing.</summary>
    public double Closing(double tension) => Math.Max(0, (tension - ClosingDrag) / Ratio);

    /// <summary>Tension at the quadrant (N) that pulls the wire back against <paramref name="tension"/> at the pedal.</summary>
    public double ToDrawBack(double tension) => tension * Ratio + ClosingDrag;

    /// <summary>Mean tension along the outer, opening, for 1 N at the quadrant, with the bend spread evenly: (e^{μβ} - 1)/(μβ).</summary>
    public double MeanRatio
    {
        get
        {
            var x = Coefficient.Value * TotalBend.Radians;
            return x < MechanismTolerance.FewTerms ? 1 + x / 2 : (Math.Exp(x) - 1) / x;
        }
    }

    /// <summary>The maximum friction within its ±.</summary>
    public CableFriction Worst() => this with { Coefficient = Coefficient.Max };
}
