using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Search;
using BracketGen.Design.Study;
using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;
using BracketGen.Mechanism.Motion;
using BracketGen.Profiles.Family;
using BracketGen.TestSupport;
using BracketGen.Words.Report;

namespace BracketGen.Design.Tests;

/// <summary>A bracket tried on a job that it was not made for.</summary>
public class GivenBracketTests
{
    public static TheoryData<string> Names => Examples.Names;

    // On its own job a bracket stands where it was made to stand, whichever way the body opens: two ways to the same numbers. Bolted on
    // the other way about, its stop may lie where no wire gets to.
    [Theory]
    [MemberData(nameof(Names))]
    public void On_its_own_job_it_is_the_same_solution(string name)
    {
        var solution = Designer.Solve(Examples.Read(name), SearchEffort.WithoutStrength);
        var mounts = MountMatch.Of(solution.Bracket!, solution.Job.Body.Mount).ToList();
        var given = mounts.Select(m => GivenBracket.On(solution.Job, solution.Bracket!, m)).OfType<Solution>().MinBy(s => Math.Abs(s.Placement!.AdjusterShift))!;
        Assert.Equal(solution.Placement!.AdjusterShift, given.Placement!.AdjusterShift, 1e-6);
        Assert.True(solution.Placement.Seat.DistanceTo(given.Placement.Seat) < 1e-6);
        Assert.True(solution.Placement.Direction.DistanceTo(given.Placement.Direction) < 1e-6);
        Assert.Equal(solution.Travel.OverTravel, given.Travel.OverTravel, 1e-6);
        Assert.Equal(solution.Verdict.Kind, given.Verdict.Kind);
        foreach (var check in solution.Checks.Where(c => !double.IsNaN(c.Value)))
        {
            Assert.Equal(check.Value, given.Checks.First(c => c.Code == check.Code).Value, 1e-4 * Math.Max(1, Math.Abs(check.Value)));
        }
    }

    // The wire's length from pocket to seat is fixed by the bracket: a cable longer by so much has its adjuster moved by so much.
    [Theory]
    [InlineData(-5)]
    [InlineData(-2)]
    [InlineData(3)]
    [InlineData(6)]
    public void The_adjuster_makes_up_for_a_longer_cable(double longer)
    {
        var solution = Designer.Solve(Examples.Read("plover-alder-58"), SearchEffort.WithoutStrength);
        var job = Longer(solution.Job, longer);
        var given = GivenBracket.On(job, solution.Bracket!, solution.Bracket!.Folded.Flanges[0])!;
        Assert.Equal(longer, given.Placement!.AdjusterShift, 1e-6);
        var half = job.Vehicle.Cable.OuterEnd.AdjusterRange / 2;
        Assert.Equal(Math.Abs(longer) <= half * (1 - job.Preferences.AdjusterReserve), given.Checks.Single(c => c.Code == "adjuster-reserve").Passes);
        Assert.Equal(Math.Abs(longer) <= half * (1 - job.Preferences.AdjusterReserve), given.NothingFails);
    }

    [Fact]
    public void Another_outer_end_or_another_pattern_is_turned_down()
    {
        var plover = Examples.Read("plover-alder-58");
        var solution = Designer.Solve(plover with { Preferences = plover.Preferences with { StopOpening = StopOpening.Hole } }, SearchEffort.WithoutStrength);
        var bracket = solution.Bracket!;
        Solution On(Job job) => GivenBracket.On(job, bracket, bracket.Folded.Flanges[0])!;
        Job With(OuterEnd end) => solution.Job with { Vehicle = solution.Job.Vehicle with { Cable = solution.Job.Vehicle.Cable with { OuterEnd = end } } };
        Assert.Contains(On(With(new ThreadedAdjuster(6, 1, 14, 10, 4))).Checks, c => c is { Code: "stop-play", Passes: false });
        Assert.Contains(On(With(new ThreadedAdjuster(10, 1, 14, 16, 5))).Checks, c => c is { Code: "stop-opening", Passes: false });
        Assert.Contains(On(With(new SlottedClip(8.7, 14, 4.5, 14))).Checks, c => c is { Code: "stop-slot", Passes: false });

        var mount = solution.Job.Body.Mount;
        var moved = mount with { Holes = [mount.Holes[0], mount.Holes[1] with { At = mount.Holes[1].At + new Vector3(0, 1, 0) }] };
        Assert.Empty(MountMatch.Of(bracket, moved));
        var job = solution.Job with { Body = solution.Job.Body with { Mount = moved } };
        Assert.Contains(On(job).Checks, c => c is { Code: "mount-pattern", Passes: false });
        Assert.False(On(job).Passes);
    }

    // A pattern of two holes fits on in two ways, one of three with sides of their own in one.
    [Fact]
    public void Patterns_fit_on_in_as_many_ways_as_they_are_like_themselves()
    {
        var compared = 0;
        RandomJobs.Job.Check(LongRun.Of(25), job =>
        {
            if (Designer.Solve(job, SearchEffort.WithoutStrength).Bracket is not { } bracket)
            {
                return;
            }

            var ways = MountMatch.Of(bracket, job.Body.Mount).ToList();
            Assert.Contains(ways, w => w.Origin.DistanceTo(bracket.Folded.Flanges[0].Origin) < 1e-6 && w.X.DistanceTo(bracket.Folded.Flanges[0].X) < 1e-6);
            var holes = bracket.Holes.Where(h => h.Purpose == HolePurpose.Bolt).ToArray();
            Assert.InRange(ways.Count, 1, holes.Length == 2 ? 2 : 8);
            foreach (var way in ways)
            {
                Assert.All(holes, h => Assert.True(job.Body.Mount.Holes.Min(t => t.At.DistanceTo(way.ToThrottle(h.Centre))) < MountMatch.MostOff + 0.05));
                Assert.True(way.Z.DistanceTo(job.Body.Mount.Plane.Normal) < 1e-9);
            }

            compared++;
        });
        Assert.True(compared > LongRun.AtLeast(8));
    }

    private static Job Longer(Job job, double by) => job with
    {
        Vehicle = job.Vehicle with
        {
            Cable = job.Vehicle.Cable with { FreeInnerLength = job.Vehicle.Cable.FreeInnerLength with { Value = job.Vehicle.Cable.FreeInnerLength.Value + by } },
        },
    };
}
