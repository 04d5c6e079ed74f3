using BracketGen.Geometry;

namespace BracketGen.Mechanism.Throttles;

/// <summary>A butterfly valve with its shaft across a round bore: how much of the bore is open.</summary>
/// <remarks>
/// The open area projected along the bore, J. B. Heywood, <i>Internal Combustion Engine Fundamentals</i>, 1988, eq. 7.18. The plate
/// is an ellipse that shuts the bore at the closed angle ψ₀; at ψ = ψ₀ + θ its projection is an ellipse of half axes D/2 and
/// k D/2, k = cos ψ/cos ψ₀, and the shaft a strip of half width a D/2, a = d/D:
/// A/A_bore = 1 - k + (2/π) [ a √(1 - a²/k²) + k asin(a/k) - a √(1 - a²) - asin a ], as long as k > a; from there on the plate is
/// hidden behind the shaft, and 1 - (2/π)(a √(1 - a²) + asin a) stays open. The signs of the two arcsines are those that the
/// projection gives: only they close the valve at ψ₀ and meet the maximum area of about πD²/4 - dD that Heywood states. The
/// thickness of the plate is left out.
/// </remarks>
/// <param name="Bore">Diameter D of the bore (mm).</param>
/// <param name="Shaft">Diameter d of the throttle shaft across the bore (mm), less than the bore; zero for none.</param>
/// <param name="ClosedAngle">Angle ψ₀ between the plate and the bore's cross-section at the closed stop, 0 to below 90°.</param>
public sealed record ButterflyValve(double Bore, double Shaft, Angle ClosedAngle)
{
    /// <summary>Area of the bore's cross-section (mm²).</summary>
    public double BoreArea => Math.PI * Bore * Bore / 4;

    /// <summary>Open area (mm²) at <paramref name="opening"/> from the closed stop.</summary>
    public double Area(Angle opening) => AreaFraction(opening) * BoreArea;

    /// <summary>Open area over the area of the bore.</summary>
    public double AreaFraction(Angle opening)
    {
        var (a, k) = (Shaft / Bore, Foreshortening(opening));
        if (k <= a)
        {
            return 1 - 2 / Math.PI * (a * Math.Sqrt(1 - a * a) + Math.Asin(a));
        }

        return 1 - k + 2 / Math.PI * (a * Math.Sqrt(1 - a * a / (k * k)) + k * Math.Asin(a / k) - a * Math.Sqrt(1 - a * a) - Math.Asin(a));
    }

    /// <summary>k: the plate's projected width over the bore. Past 90° it grows again.</summary>
    private double Foreshortening(Angle opening) =>
        Math.Abs(Math.Cos((ClosedAngle + opening).Radians)) / Math.Cos(ClosedAngle.Radians);
}
