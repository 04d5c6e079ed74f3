using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Search;
using BracketGen.Design.Study;
using BracketGen.Geometry;
using BracketGen.SheetMetal.Patterns;
using BracketGen.TestSupport;
using CsCheck;
using Xunit;
using Check = BracketGen.Design.Checks.Check;

namespace BracketGen.Design.Tests;

/// <summary>An adapter ring under the flange bolts.</summary>
public sealed class AdapterRingTests
{
    private static readonly Job Job = Examples.Read("whimbrel-hornbeam-70-ring");

    private static readonly MountFace Mount = Job.Body.Mount;

    private static MountFace With(Func<AdapterRing, AdapterRing> change) => Mount with { Ring = change(Mount.Ring!) };

    private static Check Of(MountFace mount, CheckId id) => RingChecks.Of(mount).Single(c => c.Id == id);

    private static AdapterRing EachBolt(AdapterRing ring, Func<FlangeBolt, FlangeBolt> change) => ring with { Bolts = [.. ring.Bolts.Select(change)] };

    [Fact]
    public void The_shipped_ring_has_metal_round_every_hole_and_the_bore_free()
    {
        var shape = RingShape.Of(Mount)!;
        Assert.All(RingChecks.Of(Mount), c => Assert.True(c.Passes, c.Code));
        Assert.Equal(Mount.Holes.Length + Mount.Ring!.Bolts.Length, shape.Holes.Length);
        Assert.Equal(shape.Holes.Length + 1, shape.Blank.Holes.Length);
        foreach (var (hole, at) in shape.Holes.Zip(Mount.Holes.Select(h => h.At).Concat(Mount.Ring.Bolts.Select(b => b.At))))
        {
            Assert.Equal(0, Mount.Plane.FootOf(at.Vector).DistanceTo(shape.Frame.ToWorld(hole.Centre.Vector)), 1e-9);
        }
    }

    // Rings with holes anywhere: nothing overlaps, nothing sticks out, the same comes out again, and what the check says is what a look at the contours finds.
    [Fact]
    public void Any_ring_keeps_its_holes_inside_and_apart()
    {
        var made = 0;
        Repeatable.Check(
            Gen.Select(Gen.Double[0, 360], Gen.Int[2, 6], Gen.Double[25, 50], Gen.Double[8, 40], Gen.Double[15, 45], Gen.Int[1, 3], Gen.Double[3, 8]), 400, c =>
            {
                var (turn, bolts, bore, beyond, beside, holes, thickness) = c;
                var frame = MountFrame.Of(Mount).Frame;
                ThrottlePoint At(double degrees, double radius, double height) => new(frame.ToWorld(Vector2.FromPolar(radius, Angle.FromDegrees(turn + degrees)), height));
                var ring = Mount.Ring! with
                {
                    Sheet = Mount.Ring!.Sheet with { Thickness = thickness },
                    BoreCentre = new(frame.Origin),
                    BoreRadius = bore,
                    Bolts = [.. Enumerable.Range(0, bolts).Select(i => Mount.Ring!.Bolts[0] with { At = At(360.0 / bolts * i, bore + 12, -thickness) })],
                };
                var mount = new MountFace(new(frame.Origin, frame.Z), [.. Enumerable.Range(0, holes).Select(i => Mount.Holes[0] with { At = At(beside + 25 * i, bore + beyond + 12, 0) })]) { Ring = ring };
                var shape = RingShape.Of(mount)!;
                Assert.Equal(shape.Blank, RingShape.Of(mount)!.Blank);
                var blank = shape.Blank;
                foreach (var hole in shape.Holes)
                {
                    Assert.True(blank.Outline.Contains(hole.Centre.Vector));
                    Assert.True(blank.Outline.DistanceTo(hole.Centre.Vector) >= HoleDistances.AcrossForce(hole.Diameter, thickness) - 1e-9);
                }

                Assert.True(shape.Bore.Radius >= bore + shape.ShiftAt(new(shape.Bore.Centre)));
                Assert.True(blank.Outline.DistanceTo(shape.Bore.Centre) >= shape.Bore.Radius + RingShape.LeastLand - 1e-9);
                var edge = Of(mount, CheckId.RingHoleEdge);
                if (edge.Passes)
                {
                    made++;
                    foreach (var (one, i) in shape.Holes.Select((h, i) => (h, i)))
                    {
                        Assert.True(one.Centre.DistanceTo(new(shape.Bore.Centre)) - shape.Bore.Radius >= 1.2 * one.Diameter - 1e-6);
                        Assert.All(shape.Holes[..i], other => Assert.True(one.Centre.DistanceTo(other.Centre) >= (one.Diameter + other.Diameter) / 2));
                    }

                    // Area by the contours is that of the hull less the circles: none lies in another.
                    var circles = shape.Holes.Sum(h => Math.PI * h.Diameter * h.Diameter / 4) + Math.PI * shape.Bore.Radius * shape.Bore.Radius;
                    Assert.Equal(blank.Outline.SignedArea - circles, blank.Area, 1e-6 * blank.Area);
                }
            });
        Assert.True(made > 20, $"{made} rings were sound");
    }

    [Fact]
    public void A_longer_bolt_is_taken_where_the_ring_leaves_too_little_thread_and_its_hole_must_be_deep_enough()
    {
        // M6 needs 9 mm. Of 12 mm today the ring of 6 leaves 6: the next length that makes up 3 mm is 45 in place of 40, with 11.
        var thin = With(r => EachBolt(r, b => b with { Length = 40, Engagement = 12 }));
        var t = thin.Ring!.Thickness;
        var screw = RingChecks.Screws(thin)[0].Screw;
        Assert.Equal(12 + 45 - 40 - t, screw.Engagement, 1e-9);
        Assert.Equal(45, screw.Length);
        Assert.True(Of(thin, CheckId.RingBoltEngagement).Passes);
        Assert.DoesNotContain(RingChecks.Of(thin), c => c.Id == CheckId.RingBoltDepth); // It goes less deep than today.

        // Today 8: the longer one with 45 has 8 + 5 - t, one more step is needed, and it goes deeper than today.
        var shallow = With(r => EachBolt(r, b => b with { Length = 40, Engagement = 8 }));
        var longer = RingChecks.Screws(shallow)[0].Screw;
        Assert.True(longer.Engagement is >= 9 and > 8);
        Assert.Equal(CheckState.NotKnown, Of(shallow, CheckId.RingBoltDepth).State);
        Assert.True(Of(With(r => EachBolt(r, b => b with { Length = 40, Engagement = 8, ThreadDepth = 10 })), CheckId.RingBoltDepth).Fails);
        Assert.True(Of(With(r => EachBolt(r, b => b with { Length = 40, Engagement = 8, ThreadDepth = 25 })), CheckId.RingBoltDepth).Passes);

        // Longer than any that dealers keep: today's bolt, and it fails.
        Assert.True(Of(With(r => EachBolt(r, b => b with { Length = 140, Engagement = 8 })), CheckId.RingBoltEngagement).Fails);
    }

    [Fact]
    public void A_hole_too_near_to_bore_or_bolt_is_told()
    {
        var bolt = Mount.Ring!.Bolts[0].At.Vector;
        var near = Mount with { Holes = Mount.Holes.SetItem(0, Mount.Holes[0] with { At = new(Mount.Plane.FootOf(bolt) + new Vector3(0, 12, 0)) }) };
        Assert.True(Of(near, CheckId.RingToolRoom).Fails);
        var wide = With(r => r with { BoreRadius = r.BoreRadius + 6 });
        Assert.True(Of(wide, CheckId.RingHoleEdge).Fails);
        Assert.True(Of(wide, CheckId.RingBore).Passes); // The bore is cut as it must be; the holes are then too near.
    }

    [Fact]
    public void A_mirrored_ring_is_the_mirror_image()
    {
        var mirrored = RingShape.Of(Mount.Mirrored())!;
        Assert.Equal(RingShape.Of(Mount)!.Blank.Area, mirrored.Blank.Area, 1e-6);
        Assert.Equal(Mount, Mount.Mirrored().Mirrored());
        Assert.All(RingChecks.Of(Mount).Zip(RingChecks.Of(Mount.Mirrored())), p => Assert.Equal(p.First.Value, p.Second.Value, 1e-9));
    }

    private static readonly Solution WithoutStrength = Designer.Solve(Job, SearchEffort.WithoutStrength);

    [Fact]
    public void The_bracket_keeps_clear_of_the_heads_and_its_strength_is_that_on_the_ring()
    {
        var solution = WithoutStrength;
        Assert.Contains(solution.Checks, c => c.Id == CheckId.RingHeadRoom);

        // Not calculated: nothing of the ring passes.
        Assert.All(solution.Checks.Where(c => c.Id is CheckId.RingYield or CheckId.RingEndurance), c => Assert.Equal(CheckState.NotKnown, c.State));

        var job = Job.OpeningCounterClockwise();
        var (bracket, placement, travel) = (solution.Bracket!, solution.Placement!, solution.Travel);
        var detail = StrengthDetail.Usual with { MostMeshes = 1 };
        var on = StrengthStudy.Of(job, travel, placement, bracket, detail);
        var bare = job with { Body = job.Body with { Mount = job.Body.Mount with { Ring = null } } };
        var firm = StrengthStudy.Of(bare, travel, placement, bracket, detail);
        Assert.True(on.GivePerTension > firm.GivePerTension);
        Assert.True(on.Frequencies[0] < firm.Frequencies[0]);
        Assert.Null(on.Shaking);
        Assert.True(double.IsNaN(on.Checks.Single(c => c.Id is CheckId.ShakingTest or CheckId.ShakingEndurance).Value));
        Assert.NotNull(on.Ring);
        Assert.Contains(on.Checks, c => c.Id == CheckId.RingYield);
        Assert.Equal(Mount.Ring!.Bolts.Length, on.Joints.Count(j => j.IsFlangeBolt));

        // All that pulls at the stop passes through the flange bolts.
        Assert.All(on.Joints.Where(j => j.IsFlangeBolt), j => Assert.True(j.Stamped.Across > 0));

        // A thicker ring gives less and is stressed less.
        var thick = job with { Body = job.Body with { Mount = job.Body.Mount with { Ring = job.Body.Mount.Ring! with { Sheet = job.Body.Mount.Ring!.Sheet with { Thickness = 10 } } } } };
        var stiffer = StrengthStudy.Of(thick, travel, placement, bracket, detail);
        Assert.True(stiffer.GivePerTension < on.GivePerTension);
        Assert.True(stiffer.Ring!.OpeningStress < on.Ring!.OpeningStress);
    }

    [Fact]
    public void Play_of_the_flange_bolts_moves_the_stop()
    {
        var bracket = WithoutStrength.Bracket!;
        var names = SeatTolerances.OfMount(bracket, Mount).Where(t => t.Name.StartsWith("ring, ", StringComparison.Ordinal)).ToArray();
        Assert.NotEmpty(names);
        Assert.Empty(SeatTolerances.OfMount(bracket, Mount with { Ring = null }).Where(t => t.Name.StartsWith("ring, ", StringComparison.Ordinal)));

        // M6 in 6.6, ISO 2768-1 m over a ring of this size, and ± 0.2 of each bolt.
        Assert.All(names.Where(n => n.Name.Contains("along", StringComparison.Ordinal)), n => Assert.InRange(n.PlusMinus, 0.3 + 0.2, 0.3 + 0.5 + 0.2 + 1e-9));
    }
}
