using BracketGen.Design.Checks;
using BracketGen.Design.Study;
using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;

namespace BracketGen.Design.Tests;

/// <summary>What hangs on the stop: by hand, part by part.</summary>
public sealed class EndBodyTests
{
    private static readonly Cable Plover = Examples.Read("plover-alder-58").Vehicle.Cable;

    [Fact]
    public void An_adjuster_hangs_with_screw_nuts_head_and_outer()
    {
        // M8x1, nuts 13 across flats and 5 high, range 14, in 3 mm of sheet; steel 7.85 g/cm³, worked out by hand with areas of circle and hexagon (√3/2 s²).
        var end = EndBody.Of(Plover, 3, null);
        double Mass(EndPartId id) => 1e6 * end.Parts.Single(p => p.Id == id).Mass;
        Assert.Equal(Math.PI / 4 * 64 * 27 * 7.85e-3, Mass(EndPartId.Screw), 1e-9);
        Assert.Equal((0.8660254 * 169 - Math.PI / 4 * 64) * 5 * 7.85e-3, Mass(EndPartId.QuadrantNut), 1e-6);
        Assert.Equal(Mass(EndPartId.QuadrantNut), Mass(EndPartId.OuterNut), 1e-9);
        Assert.Equal(Math.PI / 4 * 64 * 10 * 7.85e-3, Mass(EndPartId.Head), 1e-9);
        Assert.Equal(50 * Math.PI / 4 * 25 / 2 * 7.85e-3, Mass(EndPartId.Outer), 1e-9);

        // The nuts balance; the screw runs from -6.5 to 20.5, the head on to 30.5, where the outer begins.
        var moment = 7 * Mass(EndPartId.Screw) + 25.5 * Mass(EndPartId.Head) + 30.5 * Mass(EndPartId.Outer);
        Assert.Equal(moment / (1e6 * end.Mass), end.Centre, 1e-9);
        Assert.Equal(end.Centre, end.On(seatOnTop: true).Height);
        Assert.Equal(-end.Centre, end.On(seatOnTop: false).Height);
    }

    [Fact]
    public void A_body_of_two_equal_cylinders_in_line_has_the_inertia_of_one_twice_as_long()
    {
        // A clip whose neck is as thick as its collars is one bar: m (3 r² + h²)/12 about its middle, m r²/2 about its axis (Machinery's Handbook, from memory).
        var end = EndBody.Of(Plover with { OuterEnd = new SlottedClip(14, 14, 3), OuterMass = new(0) }, 3, 0);
        double mass = 7.85e-9 * Math.PI * 49 * 26;
        Assert.Equal(mass, end.Mass, 1e-9 * mass);
        Assert.Equal(mass * 49 / 2, end.AboutAxis, 1e-9);
        Assert.Equal(mass * (3 * 49 + 26 * 26) / 12, end.AboutAcross, 1e-9);
        Assert.Equal(1.5 + 20 - 13, end.Centre, 1e-9);
    }

    [Theory]
    [InlineData(40, 20)]
    [InlineData(100, 50)]
    [InlineData(600, 50)]
    public void Half_of_the_free_outer_hangs_on_the_stop_up_to_50_mm(double free, double counts)
    {
        var end = EndBody.Of(Plover with { OuterMass = new(1e-7, 2e-8) }, 3, free);
        Assert.Equal(1.2e-7 * counts, end.Parts[^1].Mass, 1e-15);
    }

    [Fact]
    public void Weighed_parts_count_with_their_upper_end()
    {
        var end = EndBody.Of(Plover with { EndMass = new(2e-5, 1e-6) }, 3, null);
        Assert.Equal(2.1e-5, end.Parts.Where(p => p.Id != EndPartId.Outer).Sum(p => p.Mass), 1e-12);
        var (given, assumed) = (end.Parts, EndBody.Of(Plover, 3, null).Parts);
        Assert.Equal(assumed[0].Mass / assumed[1].Mass, given[0].Mass / given[1].Mass, 1e-12);
    }

    [Fact]
    public void A_stiffness_that_nobody_measured_is_named_as_a_remedy()
    {
        var job = Examples.Read("plover-alder-58");
        Assert.DoesNotContain(Setting.Of(job), s => s.Input == ChangedInput.OuterStiffness);
        var assumed = job with { Vehicle = job.Vehicle with { Cable = Plover with { OuterAxialStiffness = Cable.AssumedStiffness } } };
        var setting = Assert.Single(Setting.Of(assumed), s => s.Input == ChangedInput.OuterStiffness);
        Assert.Equal((490_000, 50_000), (setting.At(1), setting.At(setting.Most)));
        Assert.Equal(new Measured(300_000), setting.Applied(assumed, 20).Vehicle.Cable.OuterAxialStiffness);
    }
}
