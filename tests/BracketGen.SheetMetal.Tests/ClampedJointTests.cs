using BracketGen.SheetMetal.Fasteners;
using BracketGen.SheetMetal.Standards;
using BracketGen.TestSupport;
using CsCheck;

namespace BracketGen.SheetMetal.Tests;

/// <summary>Sheet clamped on a boss: what VDI 2230 makes of one screw.</summary>
public sealed class ClampedJointTests
{
    private static readonly ClampedJoint Joint = new(MountScrew.For(FastenerThread.Find("M6")!, 3), 3, 6);

    [Fact]
    public void An_M6_in_three_millimetres_by_hand()
    {
        // A_N 28.274, d3 4.773, A_d3 17.894 mm². Head 3/(205000 x 28.274), thread (4.6 + 3)/(205000 x 17.894), boss 0.33 x 6/(70000 x 28.274).
        Assert.Equal(0.5176e-6 + 2.0718e-6 + 1.0004e-6, Joint.ScrewGive, 0.001e-6);

        // Steel over the whole washer: 4.6/(205000 x 78.886) = 0.2844e-6. 10 µm over both.
        Assert.Equal(0.010 / 3.8742e-6, Joint.EmbeddingLoss, 2.0);

        // 7 N m: 0.16 + µ (0.58 x 5.3505 + (8.88 + 6.6)/4) = 0.16 + 6.9733 µ; 0.08 and 6 % high, 0.16 and 6 % low.
        Assert.Equal(7000 * 1.06 / 0.71786, Joint.MaxPreload, 1.0);
        Assert.Equal(7000 * 0.94 / 1.27573 - 2581, Joint.MinClamp, 2.0);

        // Only the ring from the hole to the head, 27.72 mm², as soft as aluminium: 4.6/(70000 x 27.72) = 2.371e-6.
        Assert.Equal(2.371 / (2.371 + 3.590), Joint.LoadFactor, 1e-3);
    }

    [Fact]
    public void Tightened_alone_it_is_what_the_torque_leaves()
    {
        // Tension 10336/20.12 = 513.7; torsion 10336 (0.16 + 0.58 x 5.3505 x 0.08) / (π/16 x 5.062³) = 165.2, half of it: √(513.7² + 3 x 82.6²) = 533.3.
        Assert.Equal(640 / 533.3, Joint.ScrewFactor(default), 0.002);
        Assert.Equal(Joint.Screw.StrippingLoad / Joint.MaxPreload, Joint.StrippingFactor(default), 1e-12);

        // Head 8.88 and 1.6 x 1.6 of washer reach 11.44, hole 6.6: 68.58 mm².
        Assert.Equal(10336 / 68.58, Joint.Pressure(default), 0.1);
        Assert.Equal(double.PositiveInfinity, Joint.SlipFactor(default));
        Assert.Equal(double.PositiveInfinity, Joint.OpeningFactor(default));
    }

    [Fact]
    public void The_proof_load_of_the_class_is_not_passed_by_tightening()
    {
        // ISO 898-1 lists 11,600 N for M6 of class 8.8 (from memory).
        Assert.True(Joint.MaxPreload < 11_600);
    }

    [Fact]
    public void A_ring_opens_where_its_pressure_ends()
    {
        // Any text on strength: stress at the rim of a ring under force and bending, F/A - M r/I with I = π/64 (D⁴ - d⁴).
        const double pull = 300, tilt = 2500;
        var load = new JointLoad(pull, 0, tilt, 0);
        var closed = Joint.MinClamp / Joint.OpeningFactor(load);
        double area = Math.PI / 4 * (12 * 12 - 6.6 * 6.6), inertia = Math.PI / 64 * (Math.Pow(12, 4) - Math.Pow(6.6, 4));
        Assert.Equal(0, (closed - pull) / area - tilt * 6 / inertia, 1e-9);
    }

    [Fact]
    public void Twist_slips_where_pressure_times_radius_says()
    {
        // An even pressure on a ring, friction 0.1: moment µ p ∫ r 2πr dr = µ F 2/3 (r³ - r_h³)/(r² - r_h²), as of a disc clutch (Shigley, uniform pressure).
        const double steps = 20000;
        double moment = 0, area = 0;
        for (var i = 0; i < steps; i++)
        {
            var r = 3.3 + (i + 0.5) / steps * 2.7;
            moment += r * r;
            area += r;
        }

        Assert.Equal(1, Joint.SlipFactor(new(0, 0, 0, 0.1 * Joint.MinClamp * moment / area)), 1e-6);
        Assert.Equal(2, Joint.SlipFactor(new(-500, 0.1 * Joint.MinClamp / 2, 0, 0)), 1e-12);
    }

    [Fact]
    public void Tilt_pries_by_the_rim_of_the_washer()
    {
        // Statics: 6 N m over 6 mm are 1000 N more in the screw, if the joint lifts.
        Assert.Equal(1200, Joint.PullOf(new(200, 0, 6000, 0)), 1e-9);
        Assert.Equal(Joint.PullOf(new(20_000, 0, 0, 0)), Joint.MaxScrewForce(new(20_000, 0, 0, 0)));
    }

    [Fact]
    public void More_load_never_helps() => Repeatable.Check(
        Gen.Select(Gen.Double[0, 3000], Gen.Double[0, 3000], Gen.Double[0, 20_000], Gen.Double[1, 3]),
        200,
        of =>
        {
            var (pull, across, tilt, more) = of;
            JointLoad load = new(pull, across + 1, tilt + 1, 0), larger = load.Times(more);
            Assert.True(Joint.ScrewFactor(larger) <= Joint.ScrewFactor(load));
            Assert.True(Joint.StrippingFactor(larger) <= Joint.StrippingFactor(load));
            Assert.True(Joint.SlipFactor(larger) <= Joint.SlipFactor(load));
            Assert.True(Joint.OpeningFactor(larger) <= Joint.OpeningFactor(load));
            Assert.True(Joint.Pressure(larger) >= Joint.Pressure(load));
        });

    [Fact]
    public void A_boss_that_is_too_shallow_gets_a_shorter_screw_or_none()
    {
        var thread = FastenerThread.Find("M6")!;
        Assert.Equal(16, MountScrew.For(thread, 3, 13.9).Length);

        // 12 mm: 7.4 engaged, 9.9 needed. Below that nothing with six millimetres of thread fits: the usual screw stays and the boss fails it.
        Assert.Equal((12.0, 7.4), (MountScrew.For(thread, 3, 13).Length, Math.Round(MountScrew.For(thread, 3, 13).Engagement, 9)));
        Assert.Equal(16, MountScrew.For(thread, 3, 9).Length);
        Assert.True(MountScrew.For(thread, 3, 13).Preload < MountScrew.For(thread, 3, 16).Preload);
    }

    [Theory]
    [InlineData(235, 360.0, 490)] // S235
    [InlineData(295, 470.0, 710)] // E295
    [InlineData(125, 260.0, 230)] // AlMg4.5Mn F27
    [InlineData(205, 510.0, 460)] // X5CrNiMo17-12-2
    public void No_metal_of_the_guideline_s_table_takes_less_pressure_than_is_counted_on(double yield, double tensile, double listed)
    {
        // VDI 2230 Blatt 1, table A9 of 2003, as printed in the technical pages of a screw catalogue; yield strengths of the product standards from memory.
        var metal = new Shops.Material
        {
            Designation = "", Density = 1e-9, Modulus = 1, Poisson = 0.3, Yield = yield, MinTensile = tensile, Endurance = 1,
            MinRadiusAcrossGrain = 1, MinRadiusAlongGrain = 1, BendGroup = Bending.BendGroup.SoftSteelOrAluminium, Source = "",
        };
        Assert.True(metal.LimitingPressure <= listed);
        Assert.Equal(yield, (metal with { MinTensile = null }).LimitingPressure);
    }
}
