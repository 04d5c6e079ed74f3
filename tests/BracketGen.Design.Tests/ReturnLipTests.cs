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
            foreach (var lipped in ReturnLip.On(plain, solution.Job))
            {
                drawn++;
                var (before, after) = (plain.FoldedSeat, lipped.FoldedSeat);
                Assert.True(before.Point.DistanceTo(after.Point) < 1e-9);
                Assert.True(before.Normal.DistanceTo(after.Normal) < 1e-9);
                Assert.Equal(plain.Flat.Bends.Length + 1, lipped.Flat.Bends.Length);
                Assert.True(lipped.Mass > plain.Mass);
                Assert.Empty(ReturnLip.On(lipped, solution.Job));

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
        var plain = Designer.Solve(Plover, SearchEffort.BestOnly).Search!.Best!.Candidate;
        var before = StrengthOf(plain);
        foreach (var lipped in ReturnLip.On(plain.Bracket, Plover))
        {
            var after = StrengthOf(plain.With(Plover, lipped));
            Assert.True(after.GivePerTension < before.GivePerTension);
            Assert.True(StopGive.Of(lipped, 1) < StopGive.Of(plain.Bracket, 1));
        }
    }

    [Fact]
    public void The_pool_has_lips()
    {
        var lipped = CandidateSearch.All(Plover).Where(c => c.Bracket.Lip is not null).ToList();
        Assert.NotEmpty(lipped);
        Assert.Contains(lipped, CandidateSearch.Promising);
    }

    private static StrengthReport StrengthOf(Candidate candidate) =>
        StrengthStudy.Of(Plover, candidate.Travel, candidate.Placement, candidate.Bracket, StrengthDetail.Usual);
}
