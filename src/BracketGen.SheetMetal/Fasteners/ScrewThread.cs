using BracketGen.SheetMetal.Standards;

namespace BracketGen.SheetMetal.Fasteners;

/// <summary>The sizes of a thread that its strength depends on.</summary>
/// <param name="Diameter">Nominal diameter d (mm).</param>
/// <param name="Pitch">Pitch P (mm).</param>
/// <param name="LeastMajor">Minimum major diameter of the screw, tolerance 6g or class 2A (mm).</param>
/// <param name="MostPitchDiameterInside">Maximum pitch diameter of the tapped hole, tolerance 6H or class 2B (mm).</param>
/// <param name="HeadBearing">Minimum diameter of the bearing face under a hexagon head (mm).</param>
public sealed record ScrewThread(
    double Diameter, double Pitch, double LeastMajor, double MostPitchDiameterInside, double HeadBearing)
{
    // ISO 965-2 (coarse threads, 6g and 6H) and ISO 4017 (dw, product grade A), from memory of the tables; fine threads from the deviations of ISO 965-1 (from memory).
    private static readonly IReadOnlyDictionary<string, (double LeastMajor, double MostPitchDiameter, double HeadBearing)> Tables =
        new Dictionary<string, (double, double, double)>
        {
            ["M4"] = (3.838, 3.663, 5.88),
            ["M5"] = (4.826, 4.605, 6.88),
            ["M6"] = (5.794, 5.500, 8.88),
            ["M8"] = (7.760, 7.348, 11.63),
            ["M10"] = (9.732, 9.206, 14.63),
            ["M12"] = (11.701, 11.063, 16.63),
            ["M8x1"] = (7.794, 7.500, 11.63),
            ["M10x1.25"] = (9.760, 9.348, 14.63),
            ["M10x1"] = (9.794, 9.500, 14.63),
            ["M12x1.5"] = (11.732, 11.216, 16.63),
            ["M12x1.25"] = (11.760, 11.368, 16.63),
        };

    /// <summary>Pitch diameter d2 = d - 3/4 H with H = √3/2 P (mm), ISO 724 and ASME B1.1.</summary>
    public double PitchDiameter => Diameter - 0.75 * Math.Sqrt(3) / 2 * Pitch;

    /// <summary>Core diameter d3 = d - 17/12 H (mm), ISO 898-1; the root of an inch thread with a rounded root (UNR) is as deep.</summary>
    public double CoreDiameter => Diameter - 17.0 / 12 * Math.Sqrt(3) / 2 * Pitch;

    /// <summary>Diameter of the stress area (mm): (d2 + d3) / 2, ISO 898-1; for inch threads d - 0.9743 P, ASME B1.1.</summary>
    public double StressDiameter => IsInch ? Diameter - InchStress * Pitch : (PitchDiameter + CoreDiameter) / 2;

    /// <summary>Stress area (mm²), ISO 898-1 and ASME B1.1.</summary>
    public double StressArea => Math.PI / 4 * StressDiameter * StressDiameter;

    /// <summary>Whether the stress area is that of ASME B1.1.</summary>
    public bool IsInch { get; init; }

    private const double InchStress = 0.9743;

    /// <summary>
    /// Area (mm²) that must shear for the thread of a tapped hole to strip: π Le d (1/2 + (d - D2) / (√3 P)) with the minimum major
    /// diameter d and the maximum pitch diameter D2 that the tolerances allow.
    /// </summary>
    /// <remarks>FED-STD-H28/2, shear area of internal threads.</remarks>
    /// <param name="engagement">Length Le of full thread that bears (mm).</param>
    public double StrippingArea(double engagement) =>
        Math.PI * engagement * LeastMajor * (0.5 + (LeastMajor - MostPitchDiameterInside) / (Math.Sqrt(3) * Pitch));

    /// <summary>The thread of a fastener.</summary>
    /// <exception cref="KeyNotFoundException">The tables do not have it; they have all of <see cref="FastenerThread.All"/>.</exception>
    public static ScrewThread Of(FastenerThread thread)
    {
        if (thread.System == ThreadSystem.Inch)
        {
            return Unified(thread);
        }

        var (major, pitch, head) = Tables[thread.Name];
        return new(thread.Diameter, thread.Pitch, major, pitch, head);
    }

    /// <summary>The limits of an inch thread, class 2A and 2B.</summary>
    /// <remarks>
    /// ASME B1.1 (formulas from memory; they give the limits of its printed tables): tolerance of the pitch diameter 2A: 0.0015 D^⅓ + 0.0015 √Le + 0.015 P^⅔ in inches, Le = D;
    /// allowance 0.3 and tolerance 2B 1.3 times that; tolerance of the major diameter 0.060 P^⅔. The bearing face of the head is 0.9 across flats or more (ASME B18.2.1, from memory).
    /// </remarks>
    private static ScrewThread Unified(FastenerThread thread)
    {
        const double inch = 25.4;
        double diameter = thread.Diameter / inch, pitch = thread.Pitch / inch, root = Math.Pow(pitch, 2.0 / 3);
        var tolerance = 0.0015 * Math.Cbrt(diameter) + 0.0015 * Math.Sqrt(diameter) + 0.015 * root;
        var sizes = new ScrewThread(thread.Diameter, thread.Pitch, thread.Diameter - inch * (0.3 * tolerance + 0.060 * root), 0, 0.9 * thread.AcrossFlats) { IsInch = true };
        return sizes with { MostPitchDiameterInside = sizes.PitchDiameter + inch * 1.3 * tolerance };
    }
}
