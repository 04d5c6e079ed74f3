using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Search;
using BracketGen.Design.Study;
using BracketGen.Profiles.Family;
using BracketGen.SheetMetal.Shops;
using BracketGen.TestSupport;
using BracketGen.Words.Report;

namespace BracketGen.Design.Tests;

/// <summary>The return lip: where it goes, what it does, and when it is taken.</summary>
public sealed class ReturnLipTests
{
    private static readonly Job Plover = Examples.Read("plover-alder-58");

    [Fact]
    public void Lips_leave_the_stop_where_it_is_and_nothing_overlaps_in_the_flat()
    {
        var drawn = 0;
        foreach (var solution in RandomSolutions.Samples.Take(150).Where(s => s.Bracket!.StopBend is not null))
        {
            var plain = solution.Bracket!;
            foreach (var lipped in ReturnLip.On(plain, solution.Job.Shop, 5))
            {
                drawn++;
                var (before, after) = (plain.FoldedSeat, lipped.FoldedSeat);
                Assert.True(before.Point.DistanceTo(after.Point) < 1e-9);
                Assert.True(before.Normal.DistanceTo(after.Normal) < 1e-9);
                Assert.Equal(plain.Flat.Bends.Length + 1, lipped.Flat.Bends.Length);
                Assert.True(lipped.Mass > plain.Mass);
                Assert.Empty(ReturnLip.On(lipped, solution.Job.Shop, 5));

                FoldBackTests.KeepsFlangesApart(lipped);

                // The lip stands square on the stop flange: its face's normal is at a right angle to the seat's.
                var lip = lipped.Lip!;
                Assert.Equal(0, lipped.Folded.Flanges[lip.To].Z.Dot(lipped.Folded.Flanges[lip.From].Z), 1e-9);
            }
        }

        Assert.True(drawn > LongRun.AtLeast(100), $"Only {drawn} lips were drawn.");
    }

    [Fact]
    public void Angle_section()
    {
        // EN 10056-1, equal angle 40 x 40 x 4: I = 4.47 cm⁴ with its rounded root and toes (from memory of the table); two plain
        // rectangles have a little more.
        Assert.InRange(StopGive.AngleSection(40, 36, 4), 4.47e4, 1.05 * 4.47e4);
        Assert.Equal(20 * 27 / 12.0, StopGive.AngleSection(20, 0, 3), 1e-9);
    }

    [Fact]
    public void A_lip_stiffens()
    {
        var offer = Designer.Solve(Plover, 1, StrengthDetail.Usual).Offers[0];
        var plain = offer.Candidate;
        var before = StrongOffers.Prove(Plover, offer, StrengthDetail.Usual);
        foreach (var lipped in ReturnLip.On(plain.Bracket, Plover.Shop, 5))
        {
            var after = StrongOffers.Prove(Plover, new(plain.With(Plover, lipped), []), StrengthDetail.Usual);
            Assert.True(after.Strength.GivePerTension < before.Strength.GivePerTension);
            Assert.True(StopGive.Of(lipped, 1) < StopGive.Of(plain.Bracket, 1));
        }
    }

    [Fact]
    public void It_is_taken_where_give_is_all_that_is_wanting_and_no_other_shape_is_there()
    {
        // The cheapest bracket alone, asked to give a little less than it does; what a lip does to the stress is left aside.
        var offer = Designer.Solve(Plover, 1, StrengthDetail.Usual).Offers[0];
        var strict = Plover with { Preferences = Plover.Preferences with { MaxGive = 0.999 * offer.GiveFound!.Value, MinYieldFactor = 0.1 } };
        Offer? Verify(Candidate c) => Ranking.Verify(c, strict);
        var proven = StrongOffers.Of(strict, [offer], [offer.Candidate], Verify, StrengthDetail.Usual);
        var taken = Assert.Single(proven);
        Assert.True(taken.IsStrong);
        Assert.NotNull(taken.Offer.Candidate.Bracket.Lip);
        Assert.All(taken.Offer.Checks, c => Assert.True(CandidateSearch.IsGoodEnough(c), c.Code));
        Assert.Contains(taken.Offer.Checks, c => c.Code == "lip-apart");

        // With the stress counted in, the lip's corners rule it out again: nothing is offered that is not strong.
        var counted = strict with { Preferences = strict.Preferences with { MinYieldFactor = 1.2 } };
        Assert.False(StrongOffers.Of(counted, [offer], [offer.Candidate], Verify, StrengthDetail.Usual)[0].IsStrong);
    }
}
