using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Search;
using BracketGen.Design.Study;
using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;
using BracketGen.Mechanism.Grooves;
using BracketGen.Mechanism.Throttles;
using BracketGen.Profiles.Family;
using BracketGen.SheetMetal.Shops;
using BracketGen.TestSupport;
using BracketGen.Words.Report;
using BracketGen.Words.Worksheet;

namespace BracketGen.Design.Tests;

/// <summary>Clearances against plain sampling, which knows nothing of branch and bound.</summary>
public class ClearanceTests
{
    [Fact]
    public void Branch_and_bound_agrees_with_a_dense_sample() => RandomJobs.Job.Check(LongRun.Of(40), job =>
    {
        job = job.OpeningCounterClockwise();
        var body = job.Body;
        if (CandidateSearch.AtMidRange(job).FirstOrDefault() is not { } candidate)
        {
            return;
        }

        var moving = new MovingParts(body.Quadrant, job.Vehicle.Cable.Fitting);
        var found = Clearance.Least(candidate.Bracket.Folded, moving.Pieces, 0.05, 3);
        var sampled = SampledLeast(candidate.Bracket, moving.DistanceTo, 0.7);

        // The sample can only be too far away: by its own step, and by the edge it may miss.
        Assert.InRange(sampled - found, -0.0006, 0.05 + Math.Abs(sampled) / 50 + 1.2);
    });

    [Fact]
    public void No_passing_bracket_stands_in_the_swept_quadrant() => RandomJobs.Job.Check(LongRun.Of(40), job =>
    {
        var solution = Designer.Solve(job);
        if (solution.Bracket is null || solution.Checks.Any(c => c.Code == "moving-parts" && !c.Passes))
        {
            return;
        }

        // Swept by hand: the sector turned step by step, each point asked whether it is in it. In the frame as measured.
        var quadrant = job.Body.Quadrant;
        var sense = job.Body.Opens == OpeningSense.Clockwise ? -1 : 1;
        foreach (var point in Points(solution.Bracket, 1.5))
        {
            for (var step = 0; step <= 12; step++)
            {
                Assert.False(InSector(point, quadrant, sense, step / 12.0 * quadrant.Rotation.Value.Radians), $"{point} at step {step}");
            }
        }
    });

    [Fact]
    public void The_sector_distance_is_a_distance() => CsCheck.Gen.Select(CsCheck.Gen.Double[-60, 60], CsCheck.Gen.Double[-60, 60], CsCheck.Gen.Double[-20, 20],
        CsCheck.Gen.Double[-1, 1], CsCheck.Gen.Double[-1, 1], (x, y, z, dx, dy) => (new ThrottlePoint(x, y, z), new ThrottlePoint(x + dx, y + dy, z))).Check(3000, pair =>
    {
        var quadrant = RandomJobs.Job.Draw(1)[0].Body.Quadrant;
        var moving = new MovingParts(quadrant, new(EndFittingKind.Ball, 6, 6));

        // A signed distance changes by no more than the way gone.
        Assert.True(Math.Abs(moving.DistanceTo(pair.Item1) - moving.DistanceTo(pair.Item2)) <= pair.Item1.DistanceTo(pair.Item2) + 1e-9);
    });

    private static bool InSector(ThrottlePoint point, Quadrant quadrant, int sense, double opening)
    {
        if (Math.Abs(point.Z) > quadrant.Thickness / 2)
        {
            return false;
        }

        var radius = point.XY.Length;
        var behind = sense * (point.XY.Polar.Radians - quadrant.Pocket.Value.Radians) - opening;
        behind -= 2 * Math.PI * Math.Floor(behind / (2 * Math.PI));
        return radius < quadrant.HubRadius || (radius < quadrant.OuterRadius && behind < quadrant.GrooveExtent.Radians);
    }

    private static double SampledLeast(Bracket bracket, Func<ThrottlePoint, double> distance, double step) => Points(bracket, step).Min(distance);

    private static IEnumerable<ThrottlePoint> Points(Bracket bracket, double step)
    {
        var bounds = bracket.Flat.Blank.Outline.Bounds;
        for (var x = bounds.Min.X; x <= bounds.Max.X; x += step)
        {
            for (var y = bounds.Min.Y; y <= bounds.Max.Y; y += step)
            {
                if (bracket.Flat.Blank.Contains(new(x, y)))
                {
                    yield return bracket.Folded.Fold(new(x, y), 0);
                    yield return bracket.Folded.Fold(new(x, y), bracket.Stock.Thickness);
                }
            }
        }
    }
}
