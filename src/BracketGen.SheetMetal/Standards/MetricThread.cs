using BracketGen.Geometry;

namespace BracketGen.SheetMetal.Standards;

/// <summary>A metric fastener thread with the sizes that go with it.</summary>
/// <remarks>
/// Clearance holes: ISO 273. Widths across flats: ISO 272. Plain washers, normal series: ISO 7089. Coarse pitch: ISO 261.
/// Head heights: ISO 4017. Values for M4 to M12 written from the published tables.
/// </remarks>
/// <param name="Name">"M6".</param>
/// <param name="Diameter">Nominal diameter (mm).</param>
/// <param name="Pitch">Coarse pitch (mm), ISO 261.</param>
/// <param name="ClearanceFine">Clearance hole, fine series (mm), ISO 273.</param>
/// <param name="ClearanceMedium">Clearance hole, medium series (mm), ISO 273.</param>
/// <param name="ClearanceCoarse">Clearance hole, coarse series (mm), ISO 273.</param>
/// <param name="AcrossFlats">Width across flats of head and nut (mm), ISO 272.</param>
/// <param name="HeadHeight">Height of a hexagon head (mm), ISO 4017.</param>
/// <param name="WasherDiameter">Outer diameter of a plain washer (mm), ISO 7089.</param>
/// <param name="WasherThickness">Thickness of a plain washer (mm), ISO 7089.</param>
public sealed record MetricThread(
    string Name, double Diameter, double Pitch, double ClearanceFine, double ClearanceMedium, double ClearanceCoarse,
    double AcrossFlats, double HeadHeight, double WasherDiameter, double WasherThickness)
{
    /// <summary>The threads the program knows, by size.</summary>
    public static IReadOnlyList<MetricThread> All { get; } =
    [
        new("M4", 4, 0.7, 4.3, 4.5, 4.8, 7, 2.8, 9, 0.8),
        new("M5", 5, 0.8, 5.3, 5.5, 5.8, 8, 3.5, 10, 1),
        new("M6", 6, 1, 6.4, 6.6, 7, 10, 4, 12, 1.6),
        new("M8", 8, 1.25, 8.4, 9, 10, 13, 5.3, 16, 1.6),
        new("M10", 10, 1.5, 10.5, 11, 12, 16, 6.4, 20, 2),
        new("M12", 12, 1.75, 13, 13.5, 14.5, 18, 7.5, 24, 2.5),
    ];

    /// <summary>The thread called <paramref name="name"/>, or null.</summary>
    public static MetricThread? Find(string name) =>
        All.FirstOrDefault(t => string.Equals(t.Name, name.Trim(), StringComparison.OrdinalIgnoreCase));

    /// <summary>Medium clearance hole (mm) for any threaded body: the table's value, or a tenth more than the thread if it is not in the table.</summary>
    public static double ClearanceFor(double diameter) =>
        All.FirstOrDefault(t => Math.Abs(t.Diameter - diameter) < Tolerance.SameSize)?.ClearanceMedium ?? Math.Round(diameter * 1.1, 1);

    /// <summary>Diameter (mm) of the room that a socket needs round head or nut.</summary>
    /// <remarks>Common practice, no source: outside of a thin-walled hand socket, 1.4 times the width across flats and 1 mm more.</remarks>
    public double SocketDiameter => 1.4 * AcrossFlats + 1;
}
