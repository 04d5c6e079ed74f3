using BracketGen.SheetMetal.Fasteners;
using BracketGen.SheetMetal.Standards;
using BracketGen.TestSupport;
using CsCheck;

namespace BracketGen.SheetMetal.Tests;

/// <summary>What bears round a screw in a slotted hole, beside closed forms and counting; and the joint on it.</summary>
public sealed class SlotContactTests
{
    private static readonly Gen<SlotContact> Contacts =
        from radius in Gen.Double[4, 12]
        from part in Gen.Double[0.2, 0.9]
        from ahead in Gen.Double[0, 8]
        from behind in Gen.Double[0, 8]
        select new SlotContact(radius, 2 * part * radius, ahead, behind);

    // Ring: π (R² - h²); π/4 (R⁴ - h⁴); mean radius 2/3 (R³ - h³)/(R² - h²), as for a disc clutch under even pressure (Shigley and Mischke; from memory).
    [Fact]
    public void Without_travel_it_is_a_ring() => Contacts.Check(100, c =>
    {
        var (ring, r, h) = (c with { Ahead = 0, Behind = 0 }, c.Radius, c.Width / 2);
        Assert.Equal(Math.PI * (r * r - h * h), ring.Area, 2e-3 * ring.Area);
        Assert.Equal(Math.PI / 4 * (Math.Pow(r, 4) - Math.Pow(h, 4)), ring.Inertia, 2e-3 * ring.Inertia);
        Assert.Equal(2.0 / 3 * (r * r * r - h * h * h) / (r * r - h * h), ring.MeanRadius, 2e-3 * r);
    });

    // Two segments of a circle, each R² acos(h/R) - h √(R² - h²) (Machinery's Handbook, segments; from memory). About the line across the slot: that of the disc
    // less the strip's, 2 ∫ 2/3 (R² - y²)^1.5 dy, found by 10,000 strips here.
    [Fact]
    public void A_slot_right_across_leaves_two_segments() => Contacts.Check(60, c =>
    {
        var (across, r, h) = (c with { Ahead = 20, Behind = 20 }, c.Radius, c.Width / 2);
        Assert.Equal(2 * (r * r * Math.Acos(h / r) - h * Math.Sqrt(r * r - h * h)), across.Area, 3e-3 * r * r);
        var strip = Enumerable.Range(0, 10_000).Select(i => (i + 0.5) / 10_000 * h).Sum(y => Math.Pow(r * r - y * y, 1.5)) * 4.0 / 3 * h / 10_000;
        Assert.Equal(Math.PI / 4 * Math.Pow(r, 4) - strip, across.Inertia, 3e-3 * Math.Pow(r, 4));
    });

    // Counted on a fine grid of points of the disc outside the slot.
    [Fact]
    public void Any_position_is_as_counted() => Contacts.Check(25, c =>
    {
        var (h, step) = (c.Width / 2, c.Radius / 300);
        double area = 0, inertia = 0, arm = 0;
        for (var x = -c.Radius + step / 2; x < c.Radius; x += step)
        {
            for (var y = -c.Radius + step / 2; y < c.Radius; y += step)
            {
                var along = Math.Clamp(x, -c.Behind, c.Ahead);
                if (x * x + y * y < c.Radius * c.Radius && (x - along) * (x - along) + y * y > h * h)
                {
                    (area, inertia, arm) = (area + step * step, inertia + x * x * step * step, arm + Math.Sqrt(x * x + y * y) * step * step);
                }
            }
        }

        Assert.Equal(area, c.Area, 0.01 * c.Radius * c.Radius);
        Assert.Equal(inertia, c.Inertia, 0.01 * Math.Pow(c.Radius, 4));
        Assert.Equal(arm / area, c.MeanRadius, 0.02 * c.Radius);
    });

    private static readonly ClampedJoint Round = new(MountScrew.For(FastenerThread.Find("M6")!, 3), 3, 6);

    private static readonly ClampedJoint Slotted = Round with { Slot = (6.6, 1.5, 1.5) };

    [Fact]
    public void A_slot_bears_less_and_nothing_but_friction_holds_along_it()
    {
        JointLoad load = new(100, 400, 300, 0) { Along = 100 };
        Assert.True(Slotted.Pressure(load) > Round.Pressure(load));
        Assert.True(Slotted.BossPressure(load) < Slotted.Pressure(load));
        Assert.True(Slotted.OpeningFactor(load) < Round.OpeningFactor(load));

        // EN 1993-1-8, table 3.6: k_s 0.63 for a long slot along the load (from memory). 0.10 where nobody tried; 0.20 at the most, class D of table 3.7.
        Assert.Equal(0.63 * Slotted.SlipFactor(load), Slotted.SlotSlipFactor(load), 1e-9);
        Assert.Equal(0.63 * 1.6 * Slotted.SlipFactor(load), (Slotted with { FaceFriction = 0.16 }).SlotSlipFactor(load), 1e-9);
        Assert.Equal(0.63 * 2 * Slotted.SlipFactor(load), (Slotted with { FaceFriction = 0.5 }).SlotSlipFactor(load), 1e-9);
        Assert.Equal(4 * Slotted.SlotSlipFactor(load), Slotted.SlotSlipFactorAlong(load), 1e-9);

        // A friction that was tried and is lower counts in a round hole too; a higher one does not.
        Assert.Equal(0.6 * Round.SlipFactor(load), (Round with { FaceFriction = 0.06 }).SlipFactor(load), 1e-9);
        Assert.Equal(Round.SlipFactor(load), (Round with { FaceFriction = 0.3 }).SlipFactor(load), 1e-9);
    }

    [Fact]
    public void Without_travel_the_joint_is_that_of_a_round_hole()
    {
        var none = Round with { Slot = (6.6, 0, 0) };
        JointLoad load = new(100, 400, 300, 50);
        Assert.Equal(Round.Pressure(load), none.Pressure(load), 0.01 * Round.Pressure(load));
        Assert.Equal(Round.SlipFactor(load), none.SlipFactor(load), 0.01 * Round.SlipFactor(load));
        Assert.Equal(Round.OpeningFactor(load), none.OpeningFactor(load), 0.01 * Round.OpeningFactor(load));
    }
}
