using System.Collections.Immutable;
using BracketGen.Geometry;

namespace BracketGen.SheetMetal.Bending;

/// <summary>A strip that was cut to length, bent once and measured.</summary>
/// <remarks>
/// Legs are measured on the outside, each from its end to the point where the two outsides would meet. Then BA = L - a - b + 2 (r + t) tan(A/2) and
/// K = (BA/A - r)/t: geometry, with A the bend angle.
/// </remarks>
/// <param name="Blank">Length of the strip before bending (mm).</param>
/// <param name="LegA">One leg (mm).</param>
/// <param name="LegB">The other leg (mm).</param>
/// <param name="Turn">Bend angle: 0 for flat, below 180°.</param>
/// <param name="InsideRadius">Inside radius of the bend (mm).</param>
/// <param name="Thickness">Thickness (mm).</param>
public sealed record TestStrip(double Blank, double LegA, double LegB, Angle Turn, double InsideRadius, double Thickness)
{
    /// <summary>Bend allowance (mm).</summary>
    public double Allowance => Blank - LegA - LegB + 2 * (InsideRadius + Thickness) * Math.Tan(Turn.Magnitude.Radians / 2);

    /// <summary>K factor: distance of the neutral axis from the inside face over the thickness. Outside 0 to 0.5 something was measured wrong.</summary>
    public double K => (Allowance / Turn.Magnitude.Radians - InsideRadius) / Thickness;

    /// <summary>Whether <see cref="K"/> is one that a bend can have.</summary>
    public bool IsPlausible => K is >= 0 and <= 0.5;

    /// <summary>By how much K falls if one leg is read longer by <paramref name="reading"/> (mm): reading / (A t).</summary>
    public double KPerLeg(double reading) => reading / (Turn.Magnitude.Radians * Thickness);

    /// <summary>± of K if each leg is read to ± <paramref name="reading"/> (mm) and the two errors have nothing to do with each other: √2 times that of one.</summary>
    public double KPlusMinus(double reading) => Math.Sqrt(2) * KPerLeg(reading);
}

/// <summary>What two or three strips of one sheet on one die say together.</summary>
/// <param name="K">Mean of their K factors.</param>
/// <param name="Spread">Largest less smallest K factor.</param>
/// <param name="InsideRadius">Mean of their inside radii (mm).</param>
/// <param name="PlusMinus">± of the mean that comes from reading the legs.</param>
public sealed record TestStripResult(double K, double Spread, double InsideRadius, double PlusMinus)
{
    /// <summary>How exactly a leg is read with a calliper (mm; common practice, no source).</summary>
    public const double Reading = 0.1;

    /// <summary>Whether the strips differ by more than reading them explains: twice the ± of one strip, for each of the two that differ most.</summary>
    /// <remarks>Then one was read or cut wrong, or the sheet is not even.</remarks>
    public required bool IsSpreadTooLarge { get; init; }

    /// <summary>Evaluates strips.</summary>
    /// <param name="strips">One to ten of them, of the same thickness.</param>
    /// <param name="reading">± of a leg's reading (mm).</param>
    /// <exception cref="ArgumentException">There is none.</exception>
    public static TestStripResult Of(ImmutableArray<TestStrip> strips, double reading = Reading)
    {
        if (strips.IsDefaultOrEmpty)
        {
            throw new ArgumentException("At least one strip is needed.", nameof(strips));
        }

        var spread = strips.Max(s => s.K) - strips.Min(s => s.K);
        var one = strips.Max(s => s.KPlusMinus(reading));
        return new(strips.Average(s => s.K), spread, strips.Average(s => s.InsideRadius), one / Math.Sqrt(strips.Length))
        {
            IsSpreadTooLarge = spread > 2 * Math.Sqrt(2) * one,
        };
    }
}
