using BracketGen.Geometry;
using BracketGen.Mechanism.Numerics;

namespace BracketGen.Mechanism.Cables;

/// <summary>The wire's tension lost to friction in the bends of the outer.</summary>
/// <remarks>
/// Euler-Eytelwein (capstan): a wire that slides through a bend of angle β with friction μ needs e^{μβ} times the tension at
/// the far end, however the bend is shaped. Bends in different planes add up.
/// </remarks>
/// <param name="Coefficient">Friction coefficient μ of the wire in the outer.</param>
/// <param name="TotalBend">Total bend angle β of the outer, all bends added without sign.</param>
/// <param name="Drag">Tension (N) lost even in a straight outer: dirt, seals; zero if not known.</param>
public sealed record CableFriction(Measured Coefficient, Angle TotalBend, double Drag = 0)
{
    /// <summary>No friction.</summary>
    public static readonly CableFriction None = new(0, Angle.Zero);

    /// <summary>e^{μβ}.</summary>
    public double Ratio => Math.Exp(Coefficient.Value * TotalBend.Radians);

    /// <summary>Tension at the pedal (N) that moves the wire towards it against <paramref name="tension"/> at the quadrant: opening.</summary>
    public double Opening(double tension) => tension * Ratio + Drag;

    /// <summary>Tension left at the pedal (N) while the quadrant pulls the wire back with <paramref name="tension"/>: closing.</summary>
    public double Closing(double tension) => Math.Max(0, (tension - Drag) / Ratio);

    /// <summary>Tension at the quadrant (N) that pulls the wire back against <paramref name="tension"/> at the pedal.</summary>
    public double ToDrawBack(double tension) => tension * Ratio + Drag;

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
