using System.Globalization;
using BracketGen.Geometry;

namespace BracketGen.SheetMetal.Standards;

/// <summary>A fastener thread with the sizes that go with it.</summary>
/// <remarks>
/// Metric. Clearance holes: ISO 273. Widths across flats: ISO 272. Plain washers, normal series: ISO 7089. Pitches: ISO 261.
/// Head heights: ISO 4017. Nuts: ISO 4032 (from memory). Values for M4 to M12 written from the published tables.
/// Inch. Clearance holes: ASME B18.2.8 (drill sizes; the loose fits as printed in a handbook of machinery, the others checked against its table of metric drills). Heads: ASME B18.2.1 as printed by two makers of screws;
/// number sizes have the regular hexagon of ASME B18.6.3. Washers: ASME B18.21.1, type A, narrow, as printed by the handbook and a dealer. Nuts: ASME B18.2.2, number sizes
/// ASME B18.6.3 (from memory).
/// </remarks>
/// <param name="Name">"M6", "M8x1", "1/4-20 UNC".</param>
/// <param name="Diameter">Nominal diameter (mm).</param>
/// <param name="Pitch">Pitch (mm).</param>
/// <param name="ClearanceFine">Clearance hole, fine series or close fit (mm).</param>
/// <param name="ClearanceMedium">Clearance hole, medium series or normal fit (mm).</param>
/// <param name="ClearanceCoarse">Clearance hole, coarse series or loose fit (mm).</param>
/// <param name="AcrossFlats">Width across flats of the head (mm).</param>
/// <param name="HeadHeight">Height of a hexagon head (mm).</param>
/// <param name="WasherDiameter">Outer diameter of a plain washer (mm).</param>
/// <param name="WasherThickness">Thickness of a plain washer (mm).</param>
public sealed record FastenerThread(
    string Name, double Diameter, double Pitch, double ClearanceFine, double ClearanceMedium, double ClearanceCoarse,
    double AcrossFlats, double HeadHeight, double WasherDiameter, double WasherThickness)
{
    private const double InchLength = 25.4;

    private static readonly FastenerThread[] MetricCoarse =
    [
        new("M4", 4, 0.7, 4.3, 4.5, 4.8, 7, 2.8, 9, 0.8) { NutHeight = 3.2 },
        new("M5", 5, 0.8, 5.3, 5.5, 5.8, 8, 3.5, 10, 1) { NutHeight = 4.7 },
        new("M6", 6, 1, 6.4, 6.6, 7, 10, 4, 12, 1.6) { NutHeight = 5.2 },
        new("M8", 8, 1.25, 8.4, 9, 10, 13, 5.3, 16, 1.6) { NutHeight = 6.8 },
        new("M10", 10, 1.5, 10.5, 11, 12, 16, 6.4, 20, 2) { NutHeight = 8.4 },
        new("M12", 12, 1.75, 13, 13.5, 14.5, 18, 7.5, 24, 2.5) { NutHeight = 10.8 },
    ];

    // Diameter, threads per inch coarse and fine (0: none), clearance holes close, normal and loose, across flats of head and nut, heights of head and nut, washer's diameter and thickness; inches.
    private static readonly (string Size, double Diameter, int Coarse, int Fine, double Close, double Normal, double Loose, double Head, double Nut, double HeadHeight, double NutHeight, double Washer, double Thickness)[] InchSizes =
    [
        ("#8", 0.164, 32, 0, 0.180, 0.196, 0.213, 0.250, 0.344, 0.110, 0.130, 0.438, 0.049),
        ("#10", 0.190, 24, 32, 0.206, 0.221, 0.238, 0.312, 0.375, 0.120, 0.130, 0.500, 0.049),
        ("1/4", 0.250, 20, 28, 17.0 / 64, 9.0 / 32, 19.0 / 64, 7.0 / 16, 7.0 / 16, 0.163, 0.226, 0.625, 0.065),
        ("5/16", 0.3125, 18, 24, 21.0 / 64, 11.0 / 32, 23.0 / 64, 0.5, 0.5, 0.211, 0.273, 0.688, 0.065),
        ("3/8", 0.375, 16, 24, 25.0 / 64, 13.0 / 32, 27.0 / 64, 9.0 / 16, 9.0 / 16, 0.243, 0.337, 0.812, 0.065),
        ("7/16", 0.4375, 14, 20, 29.0 / 64, 15.0 / 32, 31.0 / 64, 0.625, 11.0 / 16, 0.291, 0.385, 0.922, 0.065),
        ("1/2", 0.5, 13, 20, 17.0 / 32, 9.0 / 16, 39.0 / 64, 0.75, 0.75, 0.323, 0.448, 1.062, 0.095),
    ];

    /// <summary>The threads the program knows: metric coarse, metric fine, then inch, each by size.</summary>
    public static IReadOnlyList<FastenerThread> All { get; } =
    [
        .. MetricCoarse,
        Fine("M8", 1), Fine("M10", 1.25), Fine("M10", 1), Fine("M12", 1.5), Fine("M12", 1.25),
        .. InchSizes.SelectMany(s => ((string Series, int PerInch)[])[("UNC", s.Coarse), ("UNF", s.Fine)], (s, series) => (Size: s, Series: series))
            .Where(t => t.Series.PerInch > 0).Select(t => Inch(t.Size, t.Series.Series, t.Series.PerInch)),
    ];

    /// <summary>Which standards it belongs to.</summary>
    public ThreadSystem System { get; private init; } = ThreadSystem.Metric;

    /// <summary>Whether it has a fine pitch: not the one that goes with the diameter alone.</summary>
    public bool IsFine { get; private init; }

    /// <summary>Whether the size is a number, below 1/4 in: a machine screw, for which SAE J429 has no grades.</summary>
    public bool IsNumberSize => Name[0] == '#';

    /// <summary>Maximum height of a hexagon nut (mm).</summary>
    public required double NutHeight { get; init; }

    /// <summary>Width across flats of a hexagon nut (mm).</summary>
    public double NutAcrossFlats
    {
        get => _nutAcrossFlats ?? AcrossFlats;
        private init => _nutAcrossFlats = value;
    }

    private readonly double? _nutAcrossFlats;

    /// <summary>The thread called <paramref name="name"/>, or null.</summary>
    public static FastenerThread? Find(string name) =>
        All.FirstOrDefault(t => string.Equals(t.Name, name.Trim(), StringComparison.OrdinalIgnoreCase));

    /// <summary>The thread of a system, diameter and pitch (mm), or null.</summary>
    public static FastenerThread? Find(ThreadSystem system, double diameter, double pitch) =>
        All.FirstOrDefault(t => t.System == system && Math.Abs(t.Diameter - diameter) < Tolerance.SameSize && Math.Abs(t.Pitch - pitch) < Tolerance.SameSize);

    /// <summary>Medium clearance hole (mm) for any threaded body: the table's value, or a tenth more than the thread if it is not in the table.</summary>
    public static double ClearanceFor(double diameter) =>
        MetricCoarse.FirstOrDefault(t => Math.Abs(t.Diameter - diameter) < Tolerance.SameSize)?.ClearanceMedium ?? Math.Round(diameter * 1.1, 1);

    /// <summary>Diameter (mm) of the room that a socket needs round head or nut.</summary>
    /// <remarks>Common practice, no source: outside of a thin-walled hand socket, 1.4 times the width across flats and 1 mm more.</remarks>
    public double SocketDiameter => SocketFor(AcrossFlats);

    /// <summary>The same for a width across flats (mm) of its own.</summary>
    public double SocketFor(double acrossFlats) => 1.4 * acrossFlats + 1;

    private static FastenerThread Fine(string size, double pitch)
    {
        var coarse = MetricCoarse.First(t => t.Name == size);
        return coarse with { Name = string.Create(CultureInfo.InvariantCulture, $"{size}x{pitch}"), Pitch = pitch, IsFine = true };
    }

    private static FastenerThread Inch(
        (string Size, double Diameter, int Coarse, int Fine, double Close, double Normal, double Loose, double Head, double Nut, double HeadHeight, double NutHeight, double Washer, double Thickness) of, string series, int perInch) =>
        new(
            string.Create(CultureInfo.InvariantCulture, $"{of.Size}-{perInch} {series}"), of.Diameter * InchLength, InchLength / perInch, of.Close * InchLength, of.Normal * InchLength, of.Loose * InchLength,
            of.Head * InchLength, of.HeadHeight * InchLength, of.Washer * InchLength, of.Thickness * InchLength)
        {
            System = ThreadSystem.Inch,
            IsFine = series == "UNF",
            NutHeight = of.NutHeight * InchLength,
            NutAcrossFlats = of.Nut * InchLength,
        };
}
