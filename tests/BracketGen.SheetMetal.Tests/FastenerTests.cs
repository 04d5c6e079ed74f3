using BracketGen.SheetMetal.Fasteners;
using BracketGen.SheetMetal.Standards;

namespace BracketGen.SheetMetal.Tests;

/// <summary>Screws: sizes, preload, torque and engagement, against published tables.</summary>
public class FastenerTests
{
    [Theory] // ISO 898-1, table of stress areas of coarse threads (mm²).
    [InlineData("M4", 8.78)]
    [InlineData("M5", 14.2)]
    [InlineData("M6", 20.1)]
    [InlineData("M8", 36.6)]
    [InlineData("M10", 58.0)]
    [InlineData("M12", 84.3)]
    public void Stress_areas_are_those_of_ISO_898_1(string name, double area) =>
        Assert.Equal(area, ScrewThread.Of(FastenerThread.Find(name)!).StressArea, 0.005 * area);

    [Theory] // ISO 724, pitch diameters (mm).
    [InlineData("M4", 3.545)]
    [InlineData("M5", 4.480)]
    [InlineData("M6", 5.350)]
    [InlineData("M8", 7.188)]
    [InlineData("M10", 9.026)]
    [InlineData("M12", 10.863)]
    public void Pitch_diameters_are_those_of_ISO_724(string name, double diameter) =>
        Assert.Equal(diameter, ScrewThread.Of(FastenerThread.Find(name)!).PitchDiameter, 0.0006);

    // VDI 2230 Blatt 1, table A1, hexagon head, property class 8.8: assembly preload (kN) and tightening torque (N m); the torques for
    // 0.14 as reprinted in machine manuals, all of it otherwise from memory.
    [Theory]
    [InlineData("M4", 0.12, 4.4, 3.0)]
    [InlineData("M5", 0.12, 7.2, 5.9)]
    [InlineData("M6", 0.12, 10.2, 10.1)]
    [InlineData("M8", 0.12, 18.6, 24.6)]
    [InlineData("M10", 0.12, 29.6, 48)]
    [InlineData("M12", 0.12, 43.0, 84)]
    [InlineData("M4", 0.14, 4.3, 3.3)]
    [InlineData("M5", 0.14, 7.0, 6.5)]
    [InlineData("M6", 0.14, 9.9, 11.3)]
    [InlineData("M8", 0.14, 18.1, 27.3)]
    [InlineData("M10", 0.14, 28.8, 54)]
    [InlineData("M12", 0.14, 41.9, 93)]
    public void Preload_and_torque_are_those_of_VDI_2230(string name, double friction, double kilonewtons, double newtonMetres)
    {
        var thread = FastenerThread.Find(name)!;
        var sizes = ScrewThread.Of(thread);
        var preload = Tightening.PreloadAtYield(sizes, friction: friction);
        Assert.Equal(kilonewtons, preload / 1000, 0.015 * kilonewtons);
        Assert.Equal(newtonMetres, Tightening.Torque(sizes, preload, thread.ClearanceMedium, friction) / 1000, 0.03 * newtonMetres);
    }

    [Fact]
    public void And_so_they_are_for_a_fine_thread()
    {
        // VDI 2230:2003, table of fine threads as reprinted in fastener catalogues: M8 x 1, 8.8, friction 0.12: 20.2 kN, 26.1 N m.
        var fine = new ScrewThread(8, 1, 7.794, 7.5, 11.63);
        var preload = Tightening.PreloadAtYield(fine);
        Assert.Equal(20.2, preload / 1000, 0.1);
        Assert.Equal(26.1, Tightening.Torque(fine, preload, 9) / 1000, 0.6);
    }

    [Fact]
    public void Stripping_is_that_of_the_handbook_s_worked_example()
    {
        // Worked example in the abstract of a chapter on screw threads, Taylor & Francis, doi 10.1201/9781482273786-99: M10 x 1.5 in aluminium of 130 MPa shear strength, least major diameter
        // 9.968 (no allowance), largest pitch diameter inside 9.206: 69 600 N need 21.6 mm of engagement.
        var thread = new ScrewThread(10, 1.5, 9.968, 9.206, 14.63);
        Assert.Equal(21.6, 69_600 / (130 * thread.StrippingArea(1)), 0.06);
    }

    [Fact]
    public void Screws_are_long_enough_no_longer_than_need_be_and_the_boss_keeps_its_thread()
    {
        foreach (var thread in FastenerThread.All)
        {
            foreach (var thickness in (double[])[1.5, 2, 2.5, 3, 4, 5, 6])
            {
                var screw = MountScrew.For(thread, thickness);
                Assert.Equal(screw.Length, thickness + thread.WasherThickness + screw.Engagement, 1e-12);
                Assert.InRange(screw.Engagement, 1.5 * thread.Diameter, 1.5 * thread.Diameter + (thread.System == ThreadSystem.Inch ? 6.35 : 5));
                Assert.True(screw.ThreadNeeded > screw.Engagement);
                Assert.True(2 * screw.Preload <= screw.StrippingLoad + 1e-9);
                Assert.InRange(screw.Torque, screw.TorqueFor(screw.Preload) - 500, screw.TorqueFor(screw.Preload));
                Assert.True(screw.Torque > 0);
                Assert.True(screw.With(thread.Diameter).Torque <= screw.Torque);
            }
        }
    }

    [Fact]
    public void An_M6_in_three_millimetres_is_16_long_and_gets_seven_newton_metres()
    {
        // By hand: 3 + 1.6 + 9 = 13.6, next 16, engagement 11.4; area of M6 12.18 mm² a millimetre, 10.6 mm bear, 110 MPa: 14.2 kN; half of it
        // 7.1 kN; 0.16 + 0.12 (0.58 x 5.350 + (8.88 + 6.6) / 4) = 0.997 mm: 7.08 N m.
        var screw = MountScrew.For(FastenerThread.Find("M6")!, 3);
        Assert.Equal(16, screw.Length);
        Assert.Equal(11.4, screw.Engagement, 1e-12);
        Assert.Equal(7100, screw.Preload, 20.0);
        Assert.True(screw.IsLimitedByBoss);
        Assert.Equal(7000, screw.Torque);
    }

    [Fact]
    public void An_M8_in_three_millimetres_by_hand()
    {
        // 3 + 1.6 + 12 = 16.6, next 20, engagement 15.4; 1 mm of tip (0.8 x 1.25) does not bear; thread wanted 15.4 + 0.5 + 2.5.
        var thread = FastenerThread.Find("M8")!;
        var screw = MountScrew.For(thread, 3);
        Assert.Equal((20.0, 15.4, 18.4), (screw.Length, Math.Round(screw.Engagement, 12), Math.Round(screw.ThreadNeeded, 12)));
        Assert.Equal(110 * ScrewThread.Of(thread).StrippingArea(14.4), screw.StrippingLoad, 1e-6);
    }

    /// <summary>M4 in 1.2 mm: with its washer of 0.8 mm an 8 mm screw goes in by just one and a half diameters, and that is enough.</summary>
    [Fact]
    public void Just_enough_engagement_is_enough() => Assert.Equal(8, MountScrew.For(FastenerThread.Find("M4")!, 1.2).Length);

    [Fact]
    public void Sheet_too_thick_for_every_screw_is_refused() =>
        Assert.Throws<InvalidOperationException>(() => MountScrew.For(FastenerThread.Find("M12")!, 100));
}
