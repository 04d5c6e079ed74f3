using System.Globalization;
using BracketGen.SheetMetal.Cutting;
using BracketGen.SheetMetal.Patterns;
using BracketGen.SheetMetal.Standards;

namespace BracketGen.SheetMetal.Tests;

/// <summary>Tables against the standards they were copied from.</summary>
public class StandardTableTests
{
    // ISO 273: clearance holes, series fine, medium, coarse; typed from a public reprint of its table ("Clearance Hole Sizes conform to ISO 273", read 2026-11-28).
    [Theory]
    [InlineData("M4", 4.3, 4.5, 4.8)]
    [InlineData("M5", 5.3, 5.5, 5.8)]
    [InlineData("M6", 6.4, 6.6, 7)]
    [InlineData("M8", 8.4, 9, 10)]
    [InlineData("M10", 10.5, 11, 12)]
    [InlineData("M12", 13, 13.5, 14.5)]
    public void Iso_273(string name, double fine, double medium, double coarse)
    {
        var thread = FastenerThread.Find(name)!;
        Assert.Equal((fine, medium, coarse), (thread.ClearanceFine, thread.ClearanceMedium, thread.ClearanceCoarse));
    }

    // ISO 272: widths across flats; ISO 7089: outer diameter of plain washers (both from memory of the standards' tables).
    [Theory]
    [InlineData("M4", 7, 9)]
    [InlineData("M5", 8, 10)]
    [InlineData("M6", 10, 12)]
    [InlineData("M8", 13, 16)]
    [InlineData("M10", 16, 20)]
    [InlineData("M12", 18, 24)]
    public void Iso_272_and_7089(string name, double flats, double washer)
    {
        var thread = FastenerThread.Find(name)!;
        Assert.Equal((flats, washer), (thread.AcrossFlats, thread.WasherDiameter));
    }

    // ISO 2768-1, tables 1 and 3, class m; typed from two public reprints of them (read 2026-11-28).
    [Theory]
    [InlineData(0.5, 0.1)]
    [InlineData(6, 0.1)]
    [InlineData(6.1, 0.2)]
    [InlineData(30, 0.2)]
    [InlineData(30.1, 0.3)]
    [InlineData(120, 0.3)]
    [InlineData(120.5, 0.5)]
    [InlineData(400, 0.5)]
    [InlineData(400.5, 0.8)]
    [InlineData(1000, 0.8)]
    [InlineData(1000.5, 1.2)]
    [InlineData(2000, 1.2)]
    public void Iso_2768_linear(double size, double deviation) => Assert.Equal(deviation, GeneralTolerance.Linear(size));

    [Theory]
    [InlineData(10, 60)]
    [InlineData(50, 30)]
    [InlineData(120, 20)]
    [InlineData(400, 10)]
    [InlineData(401, 5)]
    public void Iso_2768_angular(double leg, double minutes) => Assert.Equal(minutes / 60, GeneralTolerance.Angular(leg).Degrees, 1e-12);

    [Theory]
    [InlineData(0.4)]
    [InlineData(2000.1)]
    [InlineData(-10)]
    [InlineData(double.NaN)]
    public void Iso_2768_does_not_guess_outside_its_table(double size)
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => GeneralTolerance.Linear(size));
        Assert.Contains("ISO 2768-1 covers 0.5 to 2000 mm", error.Message, StringComparison.Ordinal);
    }

    // ISO 9013, limit deviations of classes 1 and 2, typed from a public reprint of its tables ("ISO 9013 Thermal Cutting Dimensional Tolerances", read 2026-11-28), sizes 0 to 3, 3 to 10, 10 to 35, 35 to 125, 125 to 315, 315 to 1000.
    [Theory]
    [InlineData(1, 2, "0.10 0.15 0.20 0.25 0.25 0.35")]
    [InlineData(1, 5, "0.20 0.20 0.25 0.25 0.30 0.40")]
    [InlineData(1, 8, "- 0.25 0.30 0.30 0.35 0.45")]
    [InlineData(1, 12, "- 0.30 0.35 0.40 0.45 0.55")]
    [InlineData(2, 2, "0.6 0.6 0.7 0.7 0.8 0.9")]
    [InlineData(2, 5, "0.7 0.8 0.9 0.9 1.1 1.2")]
    [InlineData(2, 8, "- 1 1.1 1.3 1.4 1.5")]
    [InlineData(2, 12, "- 1.8 1.8 1.8 1.9 2.3")]
    public void Iso_9013(int quality, double thickness, string row)
    {
        double[] sizes = [2, 8, 30, 100, 300, 900];
        foreach (var (size, printed) in sizes.Zip(row.Split(' ')).Where(p => p.Second != "-"))
        {
            Assert.Equal(double.Parse(printed, CultureInfo.InvariantCulture), CutTolerance.Linear(quality, size, thickness));
        }
    }

    [Fact]
    public void Iso_9013_says_nothing_where_no_value_is_known()
    {
        Assert.Null(CutTolerance.Linear(2, 30, 15.1));
        Assert.Null(CutTolerance.Linear(1, 30, 20));
        Assert.Null(CutTolerance.Linear(1, 1000.1, 2));
        Assert.Null(CutTolerance.Linear(3, 30, 2));
    }

    // Thicker sheet is never held closer than thinner, nor a longer dimension closer than a shorter one, nor plasma closer than a laser, whatever tables end where.
    [Fact]
    public void Thicker_sheet_is_never_held_closer()
    {
        double[] sizes = [0.3, 2, 3.1, 6.6, 10, 11, 34, 50, 125, 200, 400, 999, 1500, 3000], sheets = [1, 2, 3.15, 3.2, 4, 6.3, 6.4, 8, 12, 20];
        foreach (var quality in (int[])[1, 2])
        {
            foreach (var size in sizes)
            {
                Assert.Equal(sheets.Select(t => CutTolerance.Deviation(quality, size, t)).Order(), sheets.Select(t => CutTolerance.Deviation(quality, size, t)));
            }

            foreach (var sheet in sheets)
            {
                Assert.Equal(sizes.Select(s => CutTolerance.Deviation(quality, s, sheet)).Order(), sizes.Select(s => CutTolerance.Deviation(quality, s, sheet)));
                Assert.All(sizes, s => Assert.True(CutTolerance.Deviation(2, s, sheet) >= CutTolerance.Deviation(1, s, sheet)));
            }
        }
    }

    /// <summary>The last size of each range and the last thickness of each table belong to it: over ... up to in ISO 9013's headings.</summary>
    [Fact]
    public void Iso_9013_ranges_hold_their_upper_limits()
    {
        Assert.Equal(0.10, CutTolerance.Linear(1, 3, 2));
        Assert.Equal(0.35, CutTolerance.Linear(1, 1000, 3.15));
        Assert.Equal(0.40, CutTolerance.Linear(1, 1000, 6.3));
        Assert.Equal(0.9, CutTolerance.Linear(2, 1000, 3.15));
    }

    /// <summary>Names are found however they are typed; a body that is no thread of the table gets a hole a tenth larger than itself.</summary>
    [Fact]
    public void Threads_and_holes_that_are_in_no_table()
    {
        Assert.Equal(FastenerThread.All[2], FastenerThread.Find(" m6 "));
        Assert.Null(FastenerThread.Find("M7"));
        Assert.All(FastenerThread.All.Where(t => t.System == ThreadSystem.Metric), t => Assert.Equal(t.ClearanceMedium, FastenerThread.ClearanceFor(t.Diameter)));
        Assert.Equal(7.7, FastenerThread.ClearanceFor(7), 1e-12);
        Assert.Equal(15, FastenerThread.Find("M6")!.SocketDiameter, 1e-12); // 1.4 x 10 + 1
    }

    // EN 1993-1-8, table 3.3: least end and edge distance 1.2 d0.
    [Fact]
    public void En_1993_edge_distance() => Assert.Equal(7.92, HoleDistances.AcrossForce(6.6, 4), 1e-12);

    // EN 1993-1-3, table 8.4 (from memory): sheet under 3 mm, e1 at least 1.0 d0 along the force and e2 at least 1.5 d0 across; the larger with table 3.3.
    [Fact]
    public void En_1993_edge_distance_in_thin_sheet()
    {
        Assert.Equal(7.92, HoleDistances.AlongForce(6.6), 1e-12);
        Assert.Equal(9.9, HoleDistances.AcrossForce(6.6, 2.5), 1e-12);
        Assert.Equal(7.92, HoleDistances.AcrossForce(6.6, 3), 1e-12);
    }

    // Common practice, no source: two thicknesses between hole and bend.
    [Fact]
    public void Holes_keep_two_thicknesses_from_a_bend() => Assert.Equal(6, HoleDistances.EdgeToBend(3));

    // Common practice, no source: the smallest hole is one thickness, one and a half with plasma, and a millimetre at least; plasma is
    // asked for class 2 of ISO 9013, the others for class 1.
    [Theory]
    [InlineData(CuttingProcess.Laser, 3, 3, 1)]
    [InlineData(CuttingProcess.WaterJet, 3, 3, 1)]
    [InlineData(CuttingProcess.Plasma, 3, 4.5, 2)]
    [InlineData(CuttingProcess.Laser, 0.8, 1, 1)]
    [InlineData(CuttingProcess.Plasma, 0.5, 1, 2)]
    public void Cutting_has_its_limits(CuttingProcess process, double thickness, double hole, int quality)
    {
        Assert.Equal(hole, CuttingLimits.SmallestHole(process, thickness));
        Assert.Equal(quality, CuttingLimits.ToleranceClass(process));
    }
}
