using System.Text.RegularExpressions;
using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Search;
using BracketGen.Design.Study;
using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;
using BracketGen.Mechanism.Throttles;
using BracketGen.Profiles.Family;
using BracketGen.Profiles.Interview;
using BracketGen.Profiles.Sections;
using BracketGen.SheetMetal.Shops;
using BracketGen.TestSupport;
using BracketGen.Words.Report;

namespace BracketGen.Design.Tests;

/// <summary>A body that opens clockwise is mirrored once on the way in, and the whole answer once on the way out.</summary>
public partial class OpeningSenseTests
{
    // Where it is asked which way a body opens: the mirror, the reader of the word, and the two places that write it.
    private static readonly string[] MayAsk =
    [
        "BracketGen.Mechanism/Throttles/OpeningSense.cs", "BracketGen.Design/Inputs/ThrottleBody.cs", "BracketGen.Profiles/Sections/ThrottleBodySection.cs",
        "ResultJson.cs", "JobInputs.cs",
    ];

    [Fact]
    public void No_other_place_asks_which_way_a_body_opens()
    {
        var root = RepositoryRoot.PathOf("src");
        var asking = Directory.GetFiles(root, "*.cs", SearchOption.AllDirectories)
            .Where(f => !f.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal))
            .Where(f => Question().IsMatch(File.ReadAllText(f)))
            .Select(f => Path.GetRelativePath(root, f).Replace(Path.DirectorySeparatorChar, '/')).ToList();
        Assert.All(asking, f => Assert.Contains(MayAsk, may => f.EndsWith(may, StringComparison.Ordinal)));
        Assert.All(MayAsk, may => Assert.Contains(asking, f => f.EndsWith(may, StringComparison.Ordinal)));
    }

    [Fact]
    public void The_mirror_image_of_a_job_is_mirrored_in_every_coordinate()
    {
        foreach (var name in (string[])["plover-alder-58", "dunlin-rowan-64"])
        {
            var job = Examples.Read(name);
            MirrorImage.Check(job, job.Mirrored());
            MirrorImage.Check(job.Mirrored(), job);
        }
    }

    [Fact]
    public void The_answer_to_the_mirrored_job_is_the_mirrored_answer()
    {
        foreach (var drawn in RandomJobs.Job.Draw(3))
        {
            var job = drawn.OpeningCounterClockwise();
            var at = job.Body.Mount.Holes[0].At + new Vector3(-150, 200, 60);
            job = job with { Bulkhead = new(at, new Vector3(0.6, -0.8, 0)), Shop = job.Shop with { Stock = job.Shop.Stock[..1] } };
            MirrorImage.Check(Designer.Solve(job, SearchEffort.WithoutStrength), Designer.Solve(job.Mirrored(), SearchEffort.WithoutStrength));
        }
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void With_a_hole_that_is_not_round(bool isSquare)
    {
        OuterEnd end = isSquare ? new PushInEnd(12, 18, 1.5, 3.5, 8, 14) { Corner = 0.5 } : new ThreadedAdjuster(8, 1, 14, 13, 5) { ThreadFlats = 7 };
        var plover = Examples.Read("plover-alder-58");
        var job = plover with { Vehicle = plover.Vehicle with { Cable = plover.Vehicle.Cable with { OuterEnd = end, Fitting = new(EndFittingKind.Barrel, 4, 8) } } };
        var solution = Designer.Solve(job, SearchEffort.WithoutStrength);
        Assert.NotNull(solution.Bracket!.Stop.Outline);
        MirrorImage.Check(solution.Bracket, Designer.Solve(job.Mirrored(), SearchEffort.WithoutStrength).Bracket!);
    }

    // Every check too, those at the ends of the slots among them.
    [Fact]
    public void With_slotted_mount_holes()
    {
        var plover = Examples.Read("plover-alder-58-slotted");
        var job = plover with { Preferences = plover.Preferences with { MountSlots = new(3, new BracketGen.Geometry.Vector3(0.2, 1, 0.1).Unit) } };
        var solution = Designer.Solve(job, SearchEffort.WithoutStrength);
        var mirrored = Designer.Solve(job.Mirrored(), SearchEffort.WithoutStrength);
        Assert.Contains(solution.Checks, c => c.IsAtSlotEnd);
        MirrorImage.Check(solution.Bracket!, mirrored.Bracket!);
        Assert.Equal(solution.Checks.Select(c => (c.Code, Math.Round(c.Value, 6))), mirrored.Checks.Select(c => (c.Code, Math.Round(c.Value, 6))));
    }

    [Fact]
    public void With_offers_strength_and_every_check()
    {
        var job = Examples.Read("dunlin-rowan-64");
        var effort = new SearchEffort(new StrengthDetail(8, 3, 2)) { WithOthers = true };
        var solution = Designer.Solve(job, effort);
        MirrorImage.Check(solution, Designer.Solve(job.Mirrored(), effort));
        MirrorImage.Check(TravelStudy.Of(job, 64, effort), TravelStudy.Of(job.Mirrored(), 64, effort));
        var mount = solution.Bracket!.Folded.Flanges[0];
        MirrorImage.Check(
            GivenBracket.On(job, solution.Bracket, mount)!,
            GivenBracket.On(job.Mirrored(), solution.Bracket.Mirrored(), mount.Mirrored())!);
    }

    [GeneratedRegex(@"\bOpeningSense\.\w|(?<!Text|QuestionId)\.Opens\b|\bOpens\.\w|\(Opens\)")]
    private static partial Regex Question();
}
