using BracketGen.SheetMetal.Standards;

namespace BracketGen.SheetMetal.Fasteners;

/// <summary>The sizes of a thread that its strength depends on.</summary>
/// <param name="Diameter">Nominal diameter d (mm).</param>
/// <param name="Pitch">Pitch P (mm).</param>
/// <param name="LeastMajor">Minimum major diameter of the screw, tolerance 6g (mm).</param>
/// <param name="MostPitchDiameterInside">Maximum pitch diameter of the tapped hole, tolerance 6H (mm).</param>
/// <param name="HeadBearing">Minimum diameter of the bearing face under a hexagon head (mm).</param>
public sealed record ScrewThread(
    double Diameter, double Pitch, double LeastMajor, double MostPitchDiameterInside, double HeadBearing)
{
    // ISO 965-2 (coarse threads, 6g and 6H) and ISO 4017 (dw, product grade A), from memory of the tables.
    private static readonly IReadOnlyDictionary<string, (double LeastMajor, double MostPitchDiameter, double HeadBearing)> Tables =
        new Dictionary<string, (double, double, double)>
        {
            ["M4"] = (3.838, 3.663, 5.88),
            ["M5"] = (4.826, 4.605, 6.88),
            ["M6"] = (5.794, 5.500, 8.88),
            ["M8"] = (7.760, 7.348, 11.63),
            ["M10"] = (9.732, 9.206, 14.63),
            ["M12"] = (11.701, 11.063, 16.63),
        };

    /// <summary>Pitch diameter d2 = d - 3/4 H with H = √3/2 P (mm), ISO 724.</summary>
    public double PitchDiameter => Diameter - 0.75 * Math.Sqrt(3) / 2 * Pitch;

    /// <summary>Core diameter d3 = d - 17/12 H (mm), ISO 898-1.</summary>
    public double CoreDiameter => Diameter - 17.0 / 12 * Math.Sqrt(3) / 2 * Pitch;

    /// <summary>Diameter of the stress area (mm): (d2 + d3) / 2, ISO 898-1.</summary>
    public double StressDiameter => (PitchDiameter + CoreDiameter) / 2;

    /// <summary>Stress area (mm²), ISO 898-1.</summary>
    public double StressArea => Math.PI / 4 * StressDiameter * StressDiameter;

    /// <summary>
    /// Area (mm²) that must shear for the thread of a tapped hole to strip: π Le d (1/2 + (d - D2) / (√3 P)) with the minimum major
    /// diameter d and the maximum pitch diameter D2 that the tolerances allow.
    /// </summary>
    /// <remarks>FED-STD-H28/2, shear area of internal threads.</remarks>
    /// <param name="engagement">Length Le of full thread that bears (mm).</param>
    public double StrippingArea(double engagement) =>
        Math.PI * engagement * LeastMajor * (0.5 + (LeastMajor - MostPitchDiameterInside) / (Math.Sqrt(3) * Pitch));

    /// <summary>The thread of a fastener.</summary>
    /// <exception cref="KeyNotFoundException">The tables do not have it; they have all of <see cref="MetricThread.All"/>.</exception>
    public static ScrewThread Of(MetricThread thread)
    {
        var (major, pitch, head) = Tables[thread.Name];
        return new(thread.Diameter, thread.Pitch, major, pitch, head);
    }
}
