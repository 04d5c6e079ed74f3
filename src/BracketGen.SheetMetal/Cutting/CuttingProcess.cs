namespace BracketGen.SheetMetal.Cutting;

/// <summary>How the shop cuts sheet.</summary>
public enum CuttingProcess
{
    /// <summary>Laser.</summary>
    Laser,

    /// <summary>Plasma.</summary>
    Plasma,

    /// <summary>Water jet.</summary>
    WaterJet,
}

/// <summary>Limits of a cutting process that its physics sets.</summary>
public static class CuttingLimits
{
    /// <summary>Smallest hole (mm) cut clean in sheet of <paramref name="thickness"/> (mm).</summary>
    /// <remarks>Common practice, no source: the thickness for laser and water jet, 1.5 times the thickness for plasma; at least 1 mm.</remarks>
    public static double SmallestHole(CuttingProcess process, double thickness) =>
        Math.Max(1, process == CuttingProcess.Plasma ? 1.5 * thickness : thickness);

    /// <summary>Quality class of ISO 9013 that the process must hold: 1 for laser and water jet, 2 for plasma.</summary>
    public static int ToleranceClass(CuttingProcess process) => process == CuttingProcess.Plasma ? 2 : 1;
}
