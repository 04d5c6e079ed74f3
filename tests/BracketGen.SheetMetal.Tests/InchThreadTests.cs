using BracketGen.SheetMetal.Fasteners;
using BracketGen.SheetMetal.Standards;

namespace BracketGen.SheetMetal.Tests;

/// <summary>Inch threads and fine metric threads against published tables; inches.</summary>
public sealed class InchThreadTests
{
    private const double Inch = 25.4;

    // ASME B1.1, UNC, class 2B: maximum pitch diameter and stress area (square inches), as printed in a published table of internal UNC threads.
    [Theory]
    [InlineData("#8-32 UNC", 0.1475, 0.01400)]
    [InlineData("#10-24 UNC", 0.1672, 0.01750)]
    [InlineData("1/4-20 UNC", 0.2224, 0.03180)]
    [InlineData("5/16-18 UNC", 0.2817, 0.05240)]
    [InlineData("3/8-16 UNC", 0.3401, 0.07750)]
    [InlineData("7/16-14 UNC", 0.3972, 0.10600)]
    [InlineData("1/2-13 UNC", 0.4565, 0.14200)]
    public void Unc_limits_and_stress_areas(string name, double pitchDiameter, double area)
    {
        var sizes = Sizes(name);
        Assert.Equal(pitchDiameter, sizes.MostPitchDiameterInside / Inch, 1e-4);
        Assert.Equal(area, sizes.StressArea / Inch / Inch, 0.004 * area);
    }

    // The same for UNF, from memory of the standard's tables.
    [Theory]
    [InlineData("#10-32 UNF", 0.1736, 0.0200)]
    [InlineData("1/4-28 UNF", 0.2311, 0.0364)]
    [InlineData("5/16-24 UNF", 0.2902, 0.0580)]
    [InlineData("3/8-24 UNF", 0.3528, 0.0878)]
    [InlineData("7/16-20 UNF", 0.4104, 0.1187)]
    [InlineData("1/2-20 UNF", 0.4731, 0.1599)]
    public void Unf_limits_and_stress_areas(string name, double pitchDiameter, double area)
    {
        var sizes = Sizes(name);
        Assert.Equal(pitchDiameter, sizes.MostPitchDiameterInside / Inch, 1.5e-4);
        Assert.Equal(area, sizes.StressArea / Inch / Inch, 0.004 * area);
    }

    // ASME B1.1, class 2A: minimum major diameter, from memory.
    [Theory]
    [InlineData("#10-32 UNF", 0.1831)]
    [InlineData("1/4-20 UNC", 0.2408)]
    [InlineData("1/4-28 UNF", 0.2425)]
    [InlineData("5/16-18 UNC", 0.3026)]
    [InlineData("3/8-16 UNC", 0.3643)]
    [InlineData("1/2-13 UNC", 0.4876)]
    public void Minimum_major_diameters(string name, double major) => Assert.Equal(major, Sizes(name).LeastMajor / Inch, 1.5e-4);

    // ASME B18.2.8 as printed in a handbook of machinery: loose fit, minimum; and the metric drills nearest to close and normal fit.
    [Theory]
    [InlineData("#8-32 UNC", 0.213, 4.6, 5.0)]
    [InlineData("1/4-20 UNC", 0.297, 6.7, 7.1)]
    [InlineData("5/16-18 UNC", 0.359, 8.3, 8.7)]
    [InlineData("3/8-16 UNC", 0.422, 9.9, 10.2)]
    [InlineData("7/16-14 UNC", 0.484, 11.5, 11.8)]
    [InlineData("1/2-13 UNC", 0.609, 13.5, 14.25)]
    public void Clearance_holes(string name, double loose, double closeDrill, double normalDrill)
    {
        var thread = FastenerThread.Find(name)!;
        Assert.Equal(loose, thread.ClearanceCoarse / Inch, 0.0005);
        Assert.Equal(closeDrill, thread.ClearanceFine, 0.06);
        Assert.Equal(normalDrill, thread.ClearanceMedium, 0.15);
        Assert.True(thread.Diameter < thread.ClearanceFine && thread.ClearanceFine < thread.ClearanceMedium && thread.ClearanceMedium < thread.ClearanceCoarse);
    }

    // ASME B18.21.1, type A, as printed by the handbook and by a dealer; ASME B18.2.1 and B18.6.3, heads, as printed by makers of screws.
    [Theory]
    [InlineData("#8-32 UNC", 0.438, 0.049, 0.250, 0.110)]
    [InlineData("#10-32 UNF", 0.500, 0.049, 0.312, 0.120)]
    [InlineData("1/4-20 UNC", 0.625, 0.065, 0.438, 0.163)]
    [InlineData("5/16-24 UNF", 0.688, 0.065, 0.500, 0.211)]
    [InlineData("3/8-16 UNC", 0.812, 0.065, 0.562, 0.243)]
    [InlineData("7/16-20 UNF", 0.922, 0.065, 0.625, 0.291)]
    [InlineData("1/2-13 UNC", 1.062, 0.095, 0.750, 0.323)]
    public void Washers_and_heads(string name, double washer, double thickness, double flats, double head)
    {
        var thread = FastenerThread.Find(name)!;
        Assert.Equal((washer, thickness), (Math.Round(thread.WasherDiameter / Inch, 3), Math.Round(thread.WasherThickness / Inch, 3)));
        Assert.Equal(flats, thread.AcrossFlats / Inch, 0.0006);
        Assert.Equal(head, thread.HeadHeight / Inch, 1e-9);
    }

    // ISO 898-1, stress areas of fine threads (mm²), from memory.
    [Theory]
    [InlineData("M8x1", 39.2)]
    [InlineData("M10x1.25", 61.2)]
    [InlineData("M10x1", 64.5)]
    [InlineData("M12x1.5", 88.1)]
    [InlineData("M12x1.25", 92.1)]
    public void Fine_metric_threads(string name, double area)
    {
        var (fine, coarse) = (Sizes(name), Sizes(name.Split('x')[0]));
        Assert.Equal(area, fine.StressArea, 0.005 * area);

        // The deviations shrink with the pitch: the screw's crest lies higher, the tapped hole's flanks reach farther out.
        Assert.True(fine.LeastMajor > coarse.LeastMajor && fine.LeastMajor < fine.Diameter);
        Assert.InRange(fine.MostPitchDiameterInside - fine.PitchDiameter, 0.1, 0.2);
    }

    // The clamp force that dealers print for grade 5 is 0.75 of the proof stress, 85 ksi; the program's preload is near that: 0.9 of the yield with torsion.
    [Fact]
    public void A_grade_5_screw_is_near_the_dealers_clamp_force()
    {
        var sizes = Sizes("3/8-16 UNC");
        var printed = 0.75 * 85 * 6.894757 * sizes.StressArea;
        Assert.InRange(Tightening.PreloadAtYield(sizes, ScrewClass.UsualInch.Yield), 0.95 * printed, 1.15 * printed);
    }

    [Fact]
    public void Classes_go_with_their_threads()
    {
        Assert.All(FastenerThread.All, t => Assert.True(ScrewClass.UsualFor(t).IsFor(t)));
        FastenerThread number = FastenerThread.Find("#10-32 UNF")!, inch = FastenerThread.Find("1/4-28 UNF")!, metric = FastenerThread.Find("M6")!;
        Assert.Equal(["5.8", "8.8", "10.9", "A2-70", "A4-80"], ScrewClass.All.Where(c => c.IsFor(metric)).Select(c => c.Name));
        Assert.Equal(["grade 2", "grade 5", "grade 8", "F593 CW1"], ScrewClass.All.Where(c => c.IsFor(inch)).Select(c => c.Name));
        Assert.Equal(["60M"], ScrewClass.All.Where(c => c.IsFor(number)).Select(c => c.Name));

        // SAE J429, yield strengths in ksi, as printed by two makers of screws.
        Assert.Equal([57, 92, 130], ((string[])["grade 2", "grade 5", "grade 8"]).Select(n => Math.Round(ScrewClass.All.Single(c => c.Name == n).Yield / 6.894757)));
    }

    [Fact]
    public void An_inch_screw_is_as_long_as_dealers_keep_it()
    {
        // By hand: 3 + 1.651 + 9.525 = 14.18 mm, next eighth 5/8 in, 15.875: engagement 11.224.
        var screw = MountScrew.For(FastenerThread.Find("1/4-20 UNC")!, 3);
        Assert.Equal(5.0 / 8 * Inch, screw.Length, 1e-9);
        Assert.Equal(11.224, screw.Engagement, 1e-3);
    }

    private static ScrewThread Sizes(string name) => ScrewThread.Of(FastenerThread.Find(name)!);
}
