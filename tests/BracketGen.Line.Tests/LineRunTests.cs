using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Search;
using BracketGen.Design.Study;
using BracketGen.Line.Combinations;
using BracketGen.Line.Numbering;
using BracketGen.Line.Parts;
using BracketGen.Line.Solving;
using BracketGen.Mechanism.Cables;
using BracketGen.Profiles.Family;
using BracketGen.Profiles.Forms;
using BracketGen.SheetMetal.Shops;
using BracketGen.Words.Report;
using BracketGen.Words.Worksheet;

namespace BracketGen.Line.Tests;

/// <summary>A line is made once, goes on where it was stopped, and notices what was changed.</summary>
public class LineRunTests
{
    [Fact]
    public void What_is_unchanged_is_not_made_again()
    {
        using var rig = new LineRig();
        var first = rig.Make(Estuary.WithSmall);
        Assert.All(first.Made, m => Assert.Equal(Outcome.NotProven, m!.Outcome));
        Assert.Equal(0, first.Kept);
        Assert.Equal(6, rig.Register.Revisions.Length);
        var (files, register) = (rig.Contents(), rig.Register.Bytes);
        var times = Times(rig);
        var second = rig.Make(Estuary.WithSmall);
        Assert.Equal(6, second.Kept);
        Assert.Equal(files, rig.Contents());
        Assert.Equal(times, Times(rig));
        Assert.Equal(register, rig.Register.Bytes);

        // Comments and spacing mean nothing; another program makes all anew, to the same bytes but for the hash that says so.
        var commented = Estuary.WithSmall.With("vehicles/plover.toml", "# looked at again\n" + Text("vehicles/plover.toml"));
        Assert.Equal(6, rig.Make(commented).Kept);
        Assert.Equal(0, rig.Make(Estuary.WithSmall, program: "2").Kept);
        Assert.Equal(
            files.Where(f => !f.Key.EndsWith("made.json", StringComparison.Ordinal)),
            rig.Contents().Where(f => !f.Key.EndsWith("made.json", StringComparison.Ordinal)));
        Assert.Equal(register, rig.Register.Bytes);
    }

    [Fact]
    public void A_changed_profile_raises_the_revision_of_the_parts_it_touches_only()
    {
        using var rig = new LineRig();
        rig.Make(Estuary.WithSmall);
        var before = rig.Register;
        var changed = Estuary.Edit(Estuary.WithSmall, "vehicles/plover.toml", "free_inner_length = { value = 138,", "free_inner_length = { value = 170,");
        var run = rig.Make(changed);
        Assert.Equal(4, run.Kept);
        var added = rig.Register.Revisions.Skip(before.Revisions.Length).ToArray();
        Assert.Equal(["PLV-A58-S", "PLV-R64-S"], added.Select(r => r.Combination));
        Assert.All(added, r =>
        {
            Assert.Equal("B", r.Revision);
            Assert.Contains("vehicle PLV, cable.free_inner_length.value: 138, now 170", r.Differences);
            Assert.Contains(r.Differences, d => d.StartsWith("stop: ", StringComparison.Ordinal) || d.StartsWith("bend 1: ", StringComparison.Ordinal));
        });
        Assert.All(run.Offered.Zip(run.Made), p => Assert.Equal(p.First.Vehicle.Code == "PLV" ? "B" : "A", p.Second!.Revision));
        Assert.True(rig.Register.Bytes.AsSpan().StartsWith(before.Bytes));

        // The part number on the sheet carries the revision; once done, nothing is to do.
        Assert.Contains("SF-PLV-A58-S B", File.ReadAllText(Path.Combine(rig.Combinations.Of("PLV-A58-S"), CombinationSolver.CutFile)));
        Assert.Equal(6, rig.Make(changed).Kept);
    }

    [Fact]
    public void A_change_that_leaves_the_part_as_it_is_raises_no_revision()
    {
        using var rig = new LineRig();
        rig.Make(Estuary.WithSmall);
        var register = rig.Register.Bytes;
        var changed = Estuary.Edit(Estuary.WithSmall, "vehicles/plover.toml", "lever_ratio = 3.4", "lever_ratio = 3.5");
        var run = rig.Make(changed);
        Assert.Equal(4, run.Kept);
        Assert.Equal(register, rig.Register.Bytes);
        Assert.All(run.Made, m => Assert.Equal("A", m!.Revision));
    }

    // Stopped after every number of combinations in turn, and then run to the end: the same bytes as in one go.
    [Fact]
    public void Stopped_and_gone_on_it_comes_to_the_same_bytes()
    {
        using var whole = new LineRig();
        whole.Make(Estuary.WithSmall);
        var expected = whole.Contents();
        for (var after = 1; after < 6; after++)
        {
            using var rig = new LineRig();
            using var stop = new CancellationTokenSource();
            var stopped = rig.Make(Estuary.WithSmall, stop: stop.Token, threads: 1 + after % 2, tell: p =>
            {
                Assert.True(p.Kept <= p.Done && p.Failing <= p.Done && p.Of == 6);
                if (p.Done >= after)
                {
                    stop.Cancel();
                }
            });
            Assert.InRange(stopped.Made.Count(m => m is not null), after, after + 1);
            Assert.Equal(stopped.Made.Contains(null), rig.Register.Revisions.IsEmpty);
            var rest = rig.Make(Estuary.WithSmall);
            Assert.Equal(stopped.Made.Count(m => m is not null), rest.Kept);
            Assert.Equal(expected, rig.Contents());
            Assert.Equal(whole.Register.Bytes, rig.Register.Bytes);
        }
    }

    // What a hard end can leave behind: half a file, a file without what is kept of it, a file that is not what was written.
    [Fact]
    public void Whatever_is_damaged_is_made_again()
    {
        using var rig = new LineRig();
        rig.Make(Estuary.WithSmall);
        var expected = rig.Contents();
        string At(string key, string file) => Path.Combine(rig.Combinations.Of(key), file);
        File.WriteAllText(At("PLV-A58-S", CombinationSolver.CutFile), "0\nSECTION");
        File.Delete(At("PLE-A58-S", CombinationSolver.ResultFile));
        File.WriteAllText(At("WHI-A58-S", "made.json"), "{\"layout\":1,");
        File.WriteAllText(At("WHI-R64-S", "flat-pattern.dxf.part"), "half");
        File.Delete(At("WHI-R64-S", "made.json"));
        Assert.Equal(2, rig.Make(Estuary.WithSmall).Kept);
        Assert.Equal(expected, rig.Contents());
    }

    [Fact]
    public void One_bad_profile_does_not_stop_the_others()
    {
        using var rig = new LineRig();
        var run = rig.Make(Estuary.Edit(Estuary.WithSmall, "vehicles/plover.toml", "wire_diameter = 1.5", "wire_diameter = \"thin\""));
        Assert.Equal(4, run.Made.Count(m => m!.HasPart));
        var broken = run.Made.Where(m => m!.Outcome == Outcome.Broken).ToArray();
        Assert.Equal(2, broken.Length);
        Assert.All(broken, m => Assert.Contains("wire_diameter", m!.Reasons[0]));

        // Once corrected, the rest stays.
        Assert.Equal(4, rig.Make(Estuary.WithSmall).Kept);
        Assert.Equal(6, rig.Register.Revisions.Length);
    }

    [Fact]
    public void A_failing_combination_has_reasons_and_no_cut_file()
    {
        using var rig = new LineRig();
        var run = rig.Make(Estuary.Edit(Estuary.WithSmall, "vehicles/plover.toml", "available_pull = { value = 51,", "available_pull = { value = 40,"));
        var fails = run.Made.Where(m => m!.Outcome == Outcome.Fails).ToArray();
        Assert.Equal(2, fails.Length);
        Assert.All(fails, m => Assert.Contains(m!.Reasons, r => r.StartsWith("Over-travel with the valve wide open", StringComparison.Ordinal)));
        Assert.False(File.Exists(Path.Combine(rig.Combinations.Of("PLV-A58-S"), CombinationSolver.CutFile)));
        Assert.True(File.Exists(Path.Combine(rig.Combinations.Of("PLV-A58-S"), CombinationSolver.ResultFile)));
    }

    [Fact]
    public void Parts_come_back_from_the_disk_to_the_last_bit()
    {
        using var rig = new LineRig();
        var run = rig.Make(Estuary.WithSmall);
        foreach (var (combination, made) in run.Offered.Zip(run.Made))
        {
            var bracket = Designer.Solve(CombinationJob.Of(run.Family, combination, "", ""), SearchEffort.WithoutStrength).Bracket!;
            var kept = Made.Read(File.ReadAllBytes(Path.Combine(rig.Combinations.Of(combination.Key), "made.json")))!;
            var back = kept.Part!.ToBracket(run.Family, combination.Vehicle.Value!.Cable, combination.Option.Option.Preferences.StopOpening)!;
            Assert.Equal(bracket.Flat.Blank.Outline, back.Flat.Blank.Outline);
            Assert.Equal(
                bracket.Flat.Bends.Select(b => (b.From, b.To, b.Start, b.End, b.Turn, b.InsideRadius, b.Allowance, b.Rule.Name)),
                back.Flat.Bends.Select(b => (b.From, b.To, b.Start, b.End, b.Turn, b.InsideRadius, b.Allowance, b.Rule.Name)));
            Assert.Equal(bracket.Holes.AsEnumerable(), back.Holes.AsEnumerable());
            Assert.Equal(bracket.Stock, back.Stock);
            Assert.Equal(bracket.Seat, back.Seat);
            Assert.True(bracket.FoldedSeat.Point.DistanceTo(back.FoldedSeat.Point) < 1e-9);
            Assert.Equal(PartFingerprint.Of(bracket), PartFingerprint.Of(back));
            Assert.Equal(made!.ToBytes(), kept.ToBytes());
        }
    }

    private static string Text(string file) => System.Text.Encoding.UTF8.GetString(Estuary.WithSmall.Read(file, 1 << 20).Bytes.Span);

    private static Dictionary<string, DateTime> Times(LineRig rig) =>
        Directory.GetFiles(rig.Folder, "*", SearchOption.AllDirectories).ToDictionary(f => f, File.GetLastWriteTimeUtc);
}
