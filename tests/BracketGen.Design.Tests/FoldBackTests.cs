using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Search;
using BracketGen.Design.Study;
using BracketGen.Geometry;
using BracketGen.Mechanism.Motion;
using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Family;
using BracketGen.Profiles.Toml;
using BracketGen.SheetMetal.Patterns;
using BracketGen.SheetMetal.Shops;
using BracketGen.TestSupport;
using BracketGen.Words.Report;
using BracketGen.Words.Worksheet;

namespace BracketGen.Design.Tests;

/// <summary>The flat pattern, folded back, lands the stop where the cable wants it and lies on the mount face.</summary>
public class FoldBackTests
{
    private const double Place = 0.001;
    private static readonly double Direction = Angle.FromDegrees(0.01).Radians;

    public static TheoryData<string> Names => Examples.Names;

    [Theory]
    [MemberData(nameof(Names))]
    public void Examples_land_on_the_stop(string name)
    {
        var solution = Designer.Solve(Examples.Read(name));
        Assert.NotNull(solution.Bracket);
        Lands(solution.Bracket, solution.Placement!, solution.Job.Body);
    }

    [Fact]
    public void Every_bracket_of_thousands_of_random_jobs_lands_on_the_stop()
    {
        var landed = new int[3];
        RandomJobs.Job.Check(LongRun.Of(10_000), job =>
        {
            job = job.OpeningCounterClockwise();
            var body = job.Body;
            for (var bends = 0; bends < landed.Length; bends++)
            {
                foreach (var candidate in CandidateSearch.AtMidRange(job, bends).Take(1))
                {
                    Lands(candidate.Bracket, candidate.Placement, body);
                    Lands(candidate.Bracket.Mirrored(), candidate.Placement.Mirrored(), Mirror(body));
                    KeepsFlangesApart(candidate.Bracket);
                    landed[bends]++;
                }
            }
        });
        Assert.True(landed[1] > LongRun.AtLeast(5000) && landed[2] > LongRun.AtLeast(5000), $"only {string.Join(", ", landed)} brackets were shaped");
    }

    // NetTopologySuite, which knows nothing of how the outline was drawn, finds a simple polygon whose flanges do not overlap.
    internal static void KeepsFlangesApart(Bracket bracket)
    {
        var blank = Polygon(bracket.Flat.Blank.Outline);
        Assert.True(blank.IsValid);
        Assert.Equal(bracket.Flat.Blank.Outline.SignedArea, blank.Area, 0.01 * blank.Area);
        var flanges = Enumerable.Range(0, bracket.Flat.FlangeCount).Select(i => Polygon(bracket.Flat.FlangeRegion(i).Outline)).ToList();
        for (var i = 0; i < flanges.Count; i++)
        {
            for (var j = i + 1; j < flanges.Count; j++)
            {
                // Two that share a bend are its allowance apart, or its relief cuts; others as far as a cut between them needs.
                var shared = bracket.Flat.Bends.FirstOrDefault(b => b.From == i && b.To == j);
                var least = shared is null ? 2.9 : (shared.Relief > 0 ? Math.Min(shared.Relief, shared.Allowance) : shared.Allowance) - 1e-6;
                Assert.True(flanges[i].Distance(flanges[j]) > least, $"flanges {i} and {j} are {flanges[i].Distance(flanges[j])} mm apart");
            }
        }
    }

    private static NetTopologySuite.Geometries.Polygon Polygon(Contour contour)
    {
        var points = contour.Flatten(0.05).Select(p => new NetTopologySuite.Geometries.Coordinate(p.X, p.Y)).ToList();
        return new(new([.. points, points[0]]));
    }

    private static ThrottleBody Mirror(ThrottleBody body) => body with { Mount = body.Mount.Mirrored() };

    private static void Lands(Bracket bracket, StopPlacement placement, ThrottleBody body)
    {
        // Refolded from nothing but what the shop gets: the blank's outline, its bends and where the mount flange lies.
        var folded = new FoldedSheet(bracket.Flat, bracket.Folded.Flanges[0]);
        var stop = folded.Fold(bracket.Stop.Centre, bracket.SeatOnTop ? bracket.Stock.Thickness : 0);
        Assert.InRange(stop.DistanceTo(placement.Seat), 0, Place);
        var top = folded.TopAt(bracket.Stop.Centre);
        Assert.InRange((bracket.SeatOnTop ? top : -top).AngleTo(placement.Direction).Radians, 0, Direction);
        foreach (var (hole, mount) in bracket.Holes.Zip(body.Mount.Holes))
        {
            // On the boss, or on the spacer that stands on it.
            Assert.InRange(folded.Fold(hole.Centre, 0).DistanceTo(mount.At + mount.SpacerLength * body.Mount.Plane.Normal), 0, Place + Tolerance.OffPlane);
        }

        Assert.InRange(folded.TopAt(bracket.Holes[0].Centre).AngleTo(body.Mount.Plane.Normal).Radians, 0, Direction);
        Assert.All(bracket.Holes.Where(h => !h.IsSlot), h => Assert.True(bracket.Flat.Blank.Outline.Contains(h.Centre.Vector)));
    }
}
