using BracketGen.SheetMetal.Fasteners;
using BracketGen.SheetMetal.Standards;

namespace BracketGen.SheetMetal.Tests;

/// <summary>Bolts with nuts and studs: lengths, preload, give, and what the nut carries.</summary>
public sealed class NutJointTests
{
    private static readonly FastenerThread M6 = FastenerThread.Find("M6")!;

    private static MountScrew Bolt(double diameter = 6.6, double flange = 6) => MountScrew.For(M6, 3, null, new ThroughHole(diameter, flange, null));

    private static MountScrew Stud(double? depth, double standsOut = 12) => MountScrew.For(M6, 3, depth, new MountStud(standsOut));

    [Fact]
    public void A_bolt_reaches_through_sheet_flange_washers_and_nut()
    {
        // By hand: 3 + 6 + 2 x 1.6 + 5.2 + 2 = 19.4, next 20. Behind the flange 20 - 3 - 1.6 - 6 = 9.4.
        Assert.Equal(20, Bolt().Length);
        Assert.Equal(9.4, Bolt().RoomNeeded(3), 1e-12);
        Assert.Equal((2, true, false), (Bolt().Washers, Bolt().HasNut, Bolt().HoldsInBoss));

        // Inches: 3 + 6 + 2 x 1.651 + 5.7404 + 2 x 1.27 = 20.58 mm; 7/8 in is 22.225.
        Assert.Equal(7.0 / 8 * 25.4, MountScrew.For(FastenerThread.Find("1/4-20 UNC")!, 3, null, new ThroughHole(7.1, 6, null)).Length, 1e-9);
    }

    [Fact]
    public void A_stud_needs_sheet_washer_nut_and_a_pitch()
    {
        Assert.Equal(3 + 1.6 + 5.2 + 1, Stud(9).StudNeeded(3), 1e-12);
        Assert.Equal((1, true, true), (Stud(9).Washers, Stud(9).HasNut, Stud(9).HoldsInBoss));
    }

    [Fact]
    public void The_torque_stretches_no_bolt_at_minimum_friction_with_a_wrench_that_reads_low()
    {
        // VDI 2230 Blatt 1, table A1 (from memory): M6, 8.8, friction 0.08: 11.1 kN and 7.7 N m. 7.7/1.06 is 7.26, rounded down to 7.
        Assert.Equal(7000, Bolt().Torque);
        var joint = new ClampedJoint(Bolt(), 3, 6);
        Assert.InRange(joint.MaxPreload, 9_000, 11_100);
        Assert.True(joint.ScrewFactor(default) >= 1 / Tightening.Utilisation);
        foreach (var thread in FastenerThread.All)
        {
            foreach (var friction in ScrewFriction.All)
            {
                var bolt = MountScrew.For(thread, 3, null, new ThroughHole(thread.ClearanceMedium, 8, null)) with { Class = ScrewClass.UsualFor(thread), Friction = friction };
                Assert.True(new ClampedJoint(bolt, 3, thread.WasherDiameter / 2).ScrewFactor(default) >= 1 / Tightening.Utilisation);
            }
        }
    }

    [Fact]
    public void Give_and_embedding_by_hand()
    {
        // A_N 28.274, A_d3 17.894 mm². Bolt: head 3/(205000 x 28.274), thread (12.2 + 3)/(205000 x 17.894), nut 2.4/(205000 x 28.274).
        var through = new ClampedJoint(Bolt(), 3, 6);
        Assert.Equal(3 + 6 + 2 * 1.6, through.Grip, 1e-12);
        Assert.Equal(0.5176e-6 + 4.1436e-6 + 0.4141e-6, through.ScrewGive, 0.001e-6);

        // 15 µm over it and steel over the whole washer: 12.2/(205000 x 78.886) = 0.7544e-6.
        Assert.Equal(0.015 / (5.0753e-6 + 0.7544e-6), through.EmbeddingLoss, 3.0);

        // Stud: nut 2.4, thread 4.6 + 6, boss 0.33 x 6/(70000 x 28.274); 13 µm.
        var stud = new ClampedJoint(Stud(9), 3, 6);
        Assert.Equal(0.4141e-6 + 2.8896e-6 + 1.0004e-6, stud.ScrewGive, 0.001e-6);
        Assert.Equal(0.013 / (4.3041e-6 + 0.2844e-6), stud.EmbeddingLoss, 3.0);
    }

    [Fact]
    public void A_wide_hole_leaves_less_face()
    {
        ClampedJoint close = new(Bolt(), 3, 6), wide = new(Bolt(7.5), 3, 6);
        JointLoad load = new(100, 200, 1000, 500);
        Assert.True(wide.Pressure(load) > close.Pressure(load));
        Assert.True(wide.LoadFactor > close.LoadFactor);
        Assert.Equal(0.75, new ThroughHole(7.5, 6, null).Play(M6), 1e-12);

        // By hand: washer and head reach 11.44, hole 7.5: 58.61 mm².
        Assert.Equal(wide.MaxPreload / 58.61, wide.Pressure(default), 0.2);
    }

    [Fact]
    public void A_nut_of_its_class_carries_what_its_screw_does()
    {
        // ISO 898-2 lists 17,200 N for the nut M6 of class 8 (from memory: 855 MPa); the program takes 800.
        Assert.InRange(Bolt().NutLoad, 15_500, 17_200);
        Assert.All(ScrewClass.All, c => Assert.True(c.Nut.Proof >= c.Yield));

        // SAE J995 as printed: 109 ksi for grade 5 fine, 150 ksi for grade 8.
        Assert.Equal([109, 150], ((string[])["grade 5", "grade 8"]).Select(n => Math.Round(ScrewClass.All.Single(c => c.Name == n).Nut.Proof / 6.894757)));
        var joint = new ClampedJoint(Bolt(), 3, 6);
        Assert.Equal(Bolt().NutLoad / joint.MaxPreload, joint.NutFactor(default), 1e-12);
        Assert.Equal(0.5, joint.NutFactor(new(2 * Bolt().NutLoad, 0, 0, 0)), 1e-12);
    }

    [Fact]
    public void A_stud_that_sits_shallow_is_tightened_less()
    {
        Assert.True(Stud(5).IsLimitedByBoss);
        Assert.True(Stud(5).Torque < Stud(12).Torque);
        Assert.Equal(Stud(6), Stud(null)); // not measured: one diameter
    }

    [Fact]
    public void A_spacer_lengthens_the_bolt_and_tilts_under_the_force_along_the_face()
    {
        // By hand: 3 + 8 + 1.6 + 9 = 21.6, next 25; grip 12.6; steel over the washer: 12.6/(205000 x 78.886) = 0.7791e-6, thread (12.6 + 3)/(205000 x 17.894) = 4.2527e-6; 12 µm.
        var screw = MountScrew.For(M6, 3 + 8, null, new TappedHole()) with { Spacer = new(8, M6) };
        Assert.Equal(25, screw.Length);
        var joint = new ClampedJoint(screw, 3 + 8, 6);
        Assert.Equal(0.012 / (0.5176e-6 + 4.2527e-6 + 1.0004e-6 + 0.7791e-6), joint.EmbeddingLoss, 3.0);
        Assert.Equal(new JointLoad(1, 100, 800 + 50, 3), new JointLoad(1, 100, 50, 3).Below(8));

        // Ring of 12 and 6.6 mm: 78.886 mm²; 600 N mm over 6 mm are 100 N.
        Assert.Equal(joint.MaxPreload / 78.886, joint.SpacerStress(default), 0.1);
        Assert.Equal((joint.MaxScrewForce(new(0, 0, 600, 0)) + 100) / 78.886, joint.SpacerStress(new(0, 0, 600, 0)), 0.1);
        Assert.Equal(0, new ClampedJoint(Bolt(), 3, 6).SpacerStress(default));
    }

    [Fact]
    public void What_nobody_ordered_counts_as_the_weakest()
    {
        Assert.Equal("5.8", ScrewClass.WeakestFor(M6).Name);
        Assert.Equal("grade 2", ScrewClass.WeakestFor(FastenerThread.Find("1/4-28 UNF")!).Name);
        Assert.All(FastenerThread.All, t => Assert.Equal(ScrewClass.All.Where(c => c.IsFor(t)).Min(c => c.Yield), ScrewClass.WeakestFor(t).Yield));
    }
}
