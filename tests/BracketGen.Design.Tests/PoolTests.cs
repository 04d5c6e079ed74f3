using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Search;
using BracketGen.TestSupport;
using CsCheck;

namespace BracketGen.Design.Tests;

/// <summary>What the pool holds: every shape folds exactly to the stop, and more stock, dies or allowed sheets only ever add to it.</summary>
public sealed class PoolTests
{
    [Fact]
    public void Every_shape_folds_exactly_and_lies_flat_without_overlap()
    {
        var made = new Dictionary<string, int> { ["one bend"] = 0, ["two bends"] = 0, ["return lip"] = 0, ["return lip on two bends"] = 0, ["return flange of the mount flange"] = 0, ["return flange of the middle flange"] = 0, ["notch"] = 0 };
        Gen.Select(RandomJobs.Job, Gen.Int[1, 9]).Check(LongRun.Of(60), drawn =>
        {
            var (job, every) = drawn;
            var i = 0;
            foreach (var (place, draft) in Drafts(job.OpeningCounterClockwise()))
            {
                // A few of each job, more of those that are rare.
                var kind = KindOf(draft);
                if (i++ % (kind is "one bend" or "two bends" ? 40 + every : every) != 0 || !draft.KeepsApart || BracketShape.Finish(draft) is not { } bracket)
                {
                    continue;
                }

                made[kind]++;
                var (point, normal) = bracket.FoldedSeat;
                Assert.True(point.DistanceTo(place.Placement.Seat) < 1e-9, $"{kind}: {point.DistanceTo(place.Placement.Seat)} mm off");
                Assert.True(normal.DistanceTo(place.Placement.Direction) < 1e-9);
                Assert.All(bracket.Holes.Zip(job.Body.Mount.Holes), h => Assert.Equal(0, bracket.Flat.ZoneOf(h.First.Centre).Flange));
                Assert.Equal((bracket.Stop.Flange, null), bracket.Flat.ZoneOf(bracket.Stop.Centre));
                FoldBackTests.KeepsFlangesApart(bracket);

                // Flanges and bends are the whole blank, and nothing twice.
                var flat = bracket.Flat;
                var area = Enumerable.Range(0, flat.FlangeCount).Sum(f => flat.FlangeRegion(f).Area) + flat.Bends.Sum(b => b.Allowance * b.Length);
                Assert.Equal(flat.Blank.Area, area, 1e-6);
                Assert.Equal(flat.Blank.Area * flat.Thickness * bracket.Stock.Material.Density, bracket.Mass, 1e-15);
            }
        });
        Assert.All(made, k => Assert.True(k.Value > LongRun.AtLeast(60), $"{k.Key}: {k.Value} made"));
    }

    [Fact]
    public void A_flange_in_a_notch_has_its_wings_flat_on_the_mount_face()
    {
        int one = 0, two = 0;
        RandomSolutions.Notched.Check(LongRun.Of(300), solution =>
        {
            if (solution?.Bracket is not { } bracket)
            {
                return;
            }

            FoldBackTests.KeepsFlangesApart(bracket);
            var (flat, bend) = (bracket.Flat, bracket.Flat.Bends[0]);
            var wings = bracket.Holes.Where(h => h.Purpose == HolePurpose.Bolt && bend.Depth(h.Centre) > bend.Allowance).ToList();
            foreach (var wing in wings)
            {
                // A bolt past the bend's line stays where it was, on the mount face.
                Assert.Equal((0, null), flat.ZoneOf(wing.Centre));
                Assert.Equal(0, bracket.Folded.Flanges[0].ToLocal(bracket.Folded.Fold(wing.Centre, 0).Vector).Z, 1e-9);
                Assert.True(flat.Blank.Outline.DistanceTo(wing.Centre.Vector) > wing.MetalRadius - 1e-6);
            }

            var sides = wings.Select(w => (w.Centre - bend.Middle).Dot(bend.Along) > 0).Distinct().Count();
            (one, two) = (one + (sides == 1 ? 1 : 0), two + (sides == 2 ? 1 : 0));
            Assert.Equal(flat.Blank.Area, flat.FlangeRegion(0).Area + flat.FlangeRegion(1).Area + bend.Allowance * bend.Length, 1e-6);
        });
        Assert.True(one > LongRun.AtLeast(20) && two > LongRun.AtLeast(60), $"{one} with one wing, {two} with two");
    }

    [Fact]
    public void A_flange_in_a_notch_is_meshed_whole_and_its_wings_carry_it()
    {
        var held = 0;
        foreach (var bracket in RandomSolutions.Notched.Draw(LongRun.Of(60)).Select(s => s?.Bracket).OfType<Bracket>())
        {
            var part = BracketModel.Of(bracket, EndBody.Of(Examples.Read("plover-alder-58").Vehicle.Cable, bracket.Stock.Thickness, null));
            var mesh = part.Mesh(4, 1.5);
            Assert.Equal(bracket.Flat.Blank.Area, mesh.Area, 0.01 * bracket.Flat.Blank.Area);
            // Beam theory orders the search, and knows little of a mount flange that twists between far bolts.
            var ratio = part.Prepare(mesh).Under(bracket.FoldedSeat.Normal).AlongForce / StopGive.Of(bracket, 1);
            Assert.InRange(ratio, 0.1, 10);
            held++;
        }

        Assert.True(held > LongRun.AtLeast(20), $"only {held} held");
    }

    // By finite elements, which know nothing of the beam estimate: each against the same bracket without.
    [Fact]
    public void Return_lips_and_return_flanges_stiffen()
    {
        var job = Examples.Read("dunlin-rowan-64").OpeningCounterClockwise();
        var drafts = Drafts(job).Where(d => d.Draft.KeepsApart).ToList();
        foreach (var kind in new[] { "return lip", "return flange of the mount flange", "return flange of the middle flange" })
        {
            var all = drafts.Where(d => KindOf(d.Draft) == kind).ToList();
            for (var k = 1; k <= 3; k++)
            {
                var (place, stiff) = all[k * all.Count / 4];
                var plain = drafts.First(d => d.Place.Placement == place.Placement && d.Draft.Choice.Stock == stiff.Choice.Stock && d.Draft.Choice.Die == stiff.Choice.Die && d.Draft.SeatOnTop == stiff.SeatOnTop && d.Draft.Bends.SequenceEqual(stiff.Bends[..^1])).Draft;
                double Give(BracketDraft draft)
                {
                    var bracket = BracketShape.Finish(draft)!;
                    return BracketModel.Of(bracket, EndBody.Of(job.Vehicle.Cable, bracket.Stock.Thickness, null)).Prepare(4, 1.5).Under(bracket.FoldedSeat.Normal).AlongForce;
                }

                Assert.True(Give(stiff) < Give(plain), kind);
                Assert.True(stiff.Give(1) < plain.Give(1), kind);
            }
        }
    }

    [Fact]
    public void The_bound_holds_for_every_shape()
    {
        var compared = new Dictionary<string, int>();
        RandomJobs.Job.Check(LongRun.Of(20), job =>
        {
            job = job.OpeningCounterClockwise();
            var range = job.Vehicle.Cable.OuterEnd.AdjusterRange;
            foreach (var (place, draft) in Drafts(job).Where((d, i) => KindOf(d.Draft) is not ("one bend" or "two bends") || i % 20 == 0))
            {
                if (BracketShape.Finish(draft) is { } bracket)
                {
                    var cost = BracketCost.Of(bracket, place.Placement, draft.Give(place.Tension), range, job.Shop.Rates);
                    Assert.True(CostBound.Of(draft, draft.Give(place.Tension), range) <= cost.Total);
                    Assert.True(draft.LeastCut <= bracket.Flat.Blank.CutLength, $"{KindOf(draft)}: {draft.LeastCut} over {bracket.Flat.Blank.CutLength}");
                    Assert.True(CostBound.LeastMass(draft) <= bracket.Mass, KindOf(draft));
                    Assert.True(CostBound.OfAny(draft.Choice.Sheet, draft.Joints.Count) <= CostBound.WithoutGive(draft, range), KindOf(draft));
                    Assert.Equal(StopGive.Of(bracket, place.Tension), draft.Give(place.Tension), 1e-9);
                    compared[KindOf(draft)] = compared.GetValueOrDefault(KindOf(draft)) + 1;
                }
            }
        });
        Assert.True(compared.Count == 7 && compared.Values.Min() > LongRun.AtLeast(20), string.Join(", ", compared));
    }

    [Fact]
    public void Another_die_only_adds_brackets() => OnlyAdds(job => job with { Shop = job.Shop with { Dies = job.Shop.Dies.RemoveAt((int)(job.Vehicle.Cable.FreeInnerLength.Value * 7) % job.Shop.Dies.Length) } });

    [Fact]
    public void Another_sheet_only_adds_brackets() => OnlyAdds(job => job with { Shop = job.Shop with { Stock = job.Shop.Stock.RemoveAt((int)(job.Vehicle.Cable.FreeInnerLength.Value * 7) % job.Shop.Stock.Length) } });

    [Fact]
    public void A_wider_range_of_thickness_only_adds_brackets() => OnlyAdds(job => job with { Preferences = job.Preferences with { MinThickness = 2.4, MaxThickness = 4.5 } });

    private static void OnlyAdds(Func<Job, Job> less)
    {
        int before = 0, after = 0;
        RandomJobs.Job.Check(LongRun.Of(20), job =>
        {
            var most = Keys(job.OpeningCounterClockwise());
            var few = Keys(less(job).OpeningCounterClockwise());
            Assert.Subset(most, few);
            (before, after) = (before + few.Count, after + most.Count);
        });
        Assert.True(before > LongRun.AtLeast(2000) && after > before, $"{before} of {after}");
    }

    private static IEnumerable<(Place Place, BracketDraft Draft)> Drafts(Job job) =>
        from bends in Enumerable.Range(1, 2)
        from stiffened in new[] { false, true }
        from place in CandidateSearch.PlacesAtMidRange(job, bends)
        from tools in CandidateSearch.ToolsFor(job)
        from draft in tools.Drafts(place.Placement, bends, stiffened)
        select (place, draft);

    // With all its numbers and what it would cost: nothing of it may depend on what else there is.
    private static HashSet<string> Keys(Job job) =>
        [
            .. Drafts(job).Select(d => string.Join(' ', [
                $"{d.Draft.Choice.Stock.Material.Designation} {d.Draft.Choice.Stock.Thickness} {d.Draft.Choice.Die!.Opening} {d.Draft.SeatOnTop} {d.Place.Placement.Seat}",
                $"{CostBound.Of(d.Draft, d.Draft.Give(d.Place.Tension), job.Vehicle.Cable.OuterEnd.AdjusterRange):R}", .. d.Draft.Bends.Select(b => b.ToString()),
            ])),
        ];

    private static string KindOf(BracketDraft draft) =>
        draft.Bends is [{ Relief: > 0 }]
            ? "notch"
            : (draft.LipHeight is null, draft.Joints.Count) switch
            {
                (true, 1) => "one bend",
                (true, _) => "two bends",
                _ when draft.Bends[^1].From < draft.Joints.Count => draft.Bends[^1].From == 0 ? "return flange of the mount flange" : "return flange of the middle flange",
                (false, 1) => "return lip",
                _ => "return lip on two bends",
            };
}
