using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Study;
using BracketGen.Drawing.Dxf;
using BracketGen.Drawing.Result;
using BracketGen.Drawing.Sheet;
using BracketGen.Geometry;
using BracketGen.Profiles;
using BracketGen.Storage;
using BracketGen.TestSupport;
using BracketGen.Units;
using BracketGen.Words.Worksheet;

namespace BracketGen.Cli.Tests;

/// <summary>
/// The files of a job, read and folded by a program that shares nothing with this one: clean, closed, of the right size, and the stop
/// where the cable wants it.
/// </summary>
[Collection(ExampleOutputsCollection.Name)]
public class CutFileTests(ExampleOutputs outputs)
{
    [SkippableFact]
    public void Cut_files_of_the_examples_fold_to_the_right_part()
    {
        var found = FoldBack.Of(outputs.Folder);
        Assert.Equal(Workplace.Jobs, found.Keys.Order());
        foreach (var name in Workplace.Jobs)
        {
            var read = ProfileReader.ReadJob(RepositoryRoot.PathOf("profiles", "jobs", name + ".toml"), new DiskFileSource());
            Holds(name, Designer.Solve(read.Value!), found[name]);
        }
    }

    [SkippableFact]
    public void Cut_files_of_random_jobs_fold_to_the_right_part()
    {
        using var place = new Workplace();

        // Any bracket that the search shaped, not only the best: what is wrong in one of them is wrong in the program.
        var solutions = RandomSolutions.FirstShaped.Draw(LongRun.Of(180), stream: 7)
            .Concat(RandomSolutions.Shaped.Draw(LongRun.Of(60), stream: 8))
            .Concat(RandomSolutions.FirstShapedTwice.Draw(LongRun.Of(60), stream: 9))
            .OfType<Solution>()
            .Take(LongRun.Of(260))
            .Select((solution, i) => (Name: $"random-{i:000}", solution))
            .ToDictionary(s => s.Name, s => s.solution);
        Assert.True(solutions.Count >= LongRun.AtLeast(200));
        Assert.All(new[] { 1, 2 }, bends => Assert.True(
            solutions.Values.Count(s => s.Bracket!.Flat.Bends.Length == bends) > 2, $"too few with {bends} bends"));
        Assert.Contains(solutions.Values, s => s.Job.Units == UnitSystem.Inch);
        foreach (var (name, solution) in solutions)
        {
            WholeFiles.Write(
                place.PathOf("output", name),
                [
                    (Workplace.CutFile, new DxfWriter().Write(FlatPatternDxf.Compose(solution.Bracket!, solution.Job, []))),
                    (Workplace.ResultFile, ResultJson.Write(solution, [])),
                ],
                []);
        }

        var found = FoldBack.Of(place.Output);
        Assert.Equal(solutions.Keys.Order(), found.Keys.Order());
        foreach (var (name, solution) in solutions)
        {
            Holds(name, solution, found[name]);
        }
    }

    private static void Holds(string name, Solution solution, FoldBack found)
    {
        Assert.True(found.Problems.Length == 0, $"{name}: {string.Join("; ", found.Problems)}");
        // What is drilled is not cut.
        var drilled = HoleMaking.Drilled(solution.Bracket!, solution.Job).Select(h => h.Centre.Vector).ToList();
        var blank = solution.Bracket!.Flat.Blank;
        blank = new(blank.Outline, blank.Holes.Where(h => !drilled.Any(d => d.DistanceTo(h.Bounds.Centre) < 1e-6)));
        void Near(string what, double expected, double actual, double within) =>
            Assert.True(Math.Abs(expected - actual) <= within, $"{name}: {what} is {actual:R}, not {expected:R}");
        Near("largest gap", 0, found.Gap, 1e-6);
        Near("area", blank.Area, found.Area, 1e-5);
        Near("cut length", blank.CutLength, found.Perimeter, 1e-6);
        Near("count of fold lines over bends", 0, found.FoldLines, 0);
        Near("hole off its table", 0, found.OffTable, 1e-6);
        Near("fold line off the middle of its strip", 0, found.OffFold, 1e-6);
        Near("allowance off its rule", 0, found.OffRule, 1e-6);
        Near("handedness", 0, found.RightHanded, 1e-6);
        Near("stop off its place", 0, found.Seat, 0.001);
        Near("stop off its direction", 0, found.Direction, 0.01);
        foreach (var (bolt, hole) in found.Bolts.Zip(solution.Job.Body.Mount.Holes))
        {
            Near("bolt hole off its boss", 0, new ThrottlePoint(bolt[0], bolt[1], bolt[2]).DistanceTo(hole.At + hole.SpacerLength * solution.Job.Body.Mount.Plane.Normal), 0.001 + Tolerance.OffPlane);
        }

        Assert.Equal(solution.Job.Body.Mount.Holes.Length, found.Bolts.Length);
    }
}
