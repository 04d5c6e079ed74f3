using System.Text;
using BracketGen.Line.Combinations;
using BracketGen.Line.Numbering;
using BracketGen.Profiles;
using BracketGen.Profiles.Family;
using BracketGen.Profiles.Forms;
using BracketGen.TestSupport;
using BracketGen.Words.Checks;
using BracketGen.Words.Report;

namespace BracketGen.Line.Tests;

/// <summary>Part numbers, revisions and the register.</summary>
public class NumberingTests
{
    // ASME Y14.35 leaves out I, O, Q, S, X and Z (from memory of the standard); after Y comes AA.
    [Theory]
    [InlineData("A", "B")]
    [InlineData("H", "J")]
    [InlineData("N", "P")]
    [InlineData("P", "R")]
    [InlineData("R", "T")]
    [InlineData("W", "Y")]
    [InlineData("Y", "AA")]
    [InlineData("AY", "BA")]
    [InlineData("YY", "AAA")]
    [InlineData("I", null)]
    [InlineData("", null)]
    public void Letters_follow_each_other(string revision, string? next) => Assert.Equal(next, Revision.Next(RevisionStyle.Letters, revision));

    [Theory]
    [InlineData("1", "2")]
    [InlineData("9", "10")]
    [InlineData("A", null)]
    [InlineData("-1", null)]
    public void Numbers_follow_each_other(string revision, string? next) => Assert.Equal(next, Revision.Next(RevisionStyle.Numbers, revision));

    [Fact]
    public void Numbers_follow_the_shops_rule()
    {
        var family = Estuary.Read();
        var combinations = FamilyCombinations.Of(family);
        Assert.Equal(26, combinations.Offered.Length);
        Assert.Equal(4, combinations.Excluded.Length);
        var plan = NumberPlan.Of(family.Family.Name, family.Family.Numbers, combinations.Offered, Register.Empty(family.Family.Name)).Plan!;
        Assert.Equal("SF-DUNA58-S", plan.NumberOf(combinations.Offered[0]));
        Assert.Equal(combinations.Offered.Length, combinations.Offered.Select(plan.NumberOf).Distinct().Count());
        var counted = NumberPlan.Of("n", new("E{serial}", 7, 3, RevisionStyle.Numbers), combinations.Offered, Register.Empty("n")).Plan!;
        Assert.All(combinations.Offered, c => Assert.Null(counted.NumberOf(c)));
        var running = counted.Running();
        var given = combinations.Offered.Select(running.For).ToList();
        Assert.Equal((("E007", 7), ("E032", 32)), (given[0], given[^1]));
        Assert.Equal("1", counted.RevisionOf(combinations.Offered[0], "x"));
    }

    [Fact]
    public void Running_numbers_that_were_given_out_stay_when_the_line_grows()
    {
        var rule = new NumberRule("E{serial}", 1, 3, RevisionStyle.Letters);
        var offered = FamilyCombinations.Of(Estuary.Read(Estuary.WithSmall)).Offered;
        var register = Register.Empty("n").With([Entry(offered[2], "E003", 3), Entry(offered[4], "E005", 5)], []);
        var plan = NumberPlan.Of("n", rule, offered, register).Plan!;
        var running = plan.Running();
        Assert.Equal(["E006", "E007", "E003", "E008", "E005", "E009"], offered.Select(c => plan.NumberOf(c) ?? running.For(c).Number));

        // A number that another rule gave out is passed over.
        var taken = register.With([Entry(offered[0], "E006", null)], []);
        Assert.Equal(("E007", 7), NumberPlan.Of("n", rule, [.. offered.Skip(1)], taken).Plan!.Running().For(offered[1]));
    }

    [Fact]
    public void Conflicts_are_reported_and_nothing_is_numbered()
    {
        var rule = new NumberRule("SF-{vehicle}-{throttle_body}", 1, 3, RevisionStyle.Letters);
        var offered = FamilyCombinations.Of(Estuary.Read(Estuary.WithSmall)).Offered;
        string Conflict(Register register, NumberRule? other = null)
        {
            var (plan, conflicts) = NumberPlan.Of("n", other ?? rule, offered, register);
            Assert.Null(plan);
            return string.Join('\n', conflicts.Select(c => c.Text));
        }

        Assert.Contains("belongs to the line \"m\"", Conflict(Register.Empty("m")));
        Assert.Contains("given to another", Conflict(Register.Empty("n").With([Entry(offered[0], "SF-PLV-A58", null) with { Combination = "another" }], [])));
        Assert.Contains("given to another", Conflict(Register.Empty("n").With([Entry(offered[0], "sf-plv-a58", null) with { Combination = "another" }], [])));
        Assert.Contains("by the rule it would now be SF-PLV-A58", Conflict(Register.Empty("n").With([Entry(offered[0], "SF-1", null)], [])));
        Assert.Contains("was \"Heron", Conflict(Register.Empty("n").With([Entry(offered[0], "SF-PLV-A58", null) with { Names = "Heron, Alder 58, steel" }], [])));
        Assert.Contains("revision I", Conflict(Register.Empty("n").With([Entry(offered[0], "SF-PLV-A58", null) with { Revision = "I" }], [])));
        Assert.Contains("numbers.pinned names SF-9, and the register has no such number", Conflict(Register.Empty("n"), rule with { Pinned = ["SF-9"] }));
        Assert.Contains("numbers.in_stock names SF-8", Conflict(Register.Empty("n"), rule with { InStock = ["SF-8"] }));
        Assert.Contains("and PLV-A58-S would both get", Conflict(Register.Empty("n"), rule with { Pattern = "SF-{vehicle}" }));
    }

    [Fact]
    public void The_register_comes_back_as_it_was_and_only_grows()
    {
        var offered = FamilyCombinations.Of(Estuary.Read(Estuary.WithSmall)).Offered;
        var source = new Source("vehicle PLV", "abc", [new("a.b", "1"), new("c", "«x» \"y\"\n")]);
        var one = Register.Empty("Ästuar <1>").With([Entry(offered[0], "P1", 1)], [source]);
        var shape = Parts.PartShape.Of(Estuary.Solved.Parts[0].Bracket);
        var two = one.With([Entry(offered[0], "P1", 1) with { Revision = "B", Differences = ["c: 1, now 2"], Shape = shape }], [source])
            .With([new RegisteredService("K", "k", "P1", "A", []), new("K", "k", null, null, ["not sold"])])
            .With([new RegisteredRecall("P1", "A", "K", "k", ["it fails"]), new("P1", "A", "L", "l", ["it fails"]), new("P1", "A", "K", "k", [])]);
        var (read, problem) = Register.Parse(two.Bytes);
        Assert.Null(problem);
        Assert.Equal(two.Bytes, read!.Bytes);
        Assert.True(two.Bytes.AsSpan().StartsWith(one.Bytes));
        Assert.Equal("Ästuar <1>", read.Family);
        Assert.Equal(["A", "B"], read.Revisions.Select(r => r.Revision));
        Assert.Equal("B", read.Latest[offered[0].Key].Revision);
        Assert.Equal(source.Facts.AsEnumerable(), read.SourceOf("abc")!.Facts.AsEnumerable());
        Assert.Equal(["c: 1, now 2"], read.Revisions[1].Differences.AsEnumerable());
        Assert.Equal(PartFingerprintOf(shape), PartFingerprintOf(read.Find("P1", "B")!.Shape!));
        Assert.Null(read.Find("P1", "A")!.Shape);
        Assert.Equal((2, null), (read.Services.Length, read.Serving["K"].PartNumber));
        Assert.Equal(["not sold"], read.Serving["K"].Why.AsEnumerable());
        Assert.Equal("L", Assert.Single(read.OpenRecalls).Combination);
        Assert.Equal(3, read.Recalls.Length);
        Assert.Equal(one.Revisions[0].Facts.AsEnumerable(), read.Revisions[0].Facts.AsEnumerable());
    }

    private static string PartFingerprintOf(Parts.PartShape shape)
    {
        var family = Estuary.Solved.Run.Family;
        var job = Estuary.Solved.Parts[0].Job;
        return Parts.PartFingerprint.Of(shape.ToBracket(family, job.Vehicle.Cable, job.Preferences.StopOpening)!);
    }

    // Written by commit 45bc180, when keys said least and most, for the small line of Estuary.
    [Fact]
    public void A_register_with_old_keys_is_read_as_one_with_the_present_keys()
    {
        var bytes = File.ReadAllBytes(RepositoryRoot.PathOf("tests/BracketGen.Line.Tests/Registers/creek-line-with-old-keys.jsonl"));
        var register = Register.Parse(bytes).Register!;
        Assert.Equal(bytes, register.Bytes);
        var sources = register.Revisions.SelectMany(r => r.Sources).Distinct().Select(h => register.SourceOf(h)!).ToList();
        Assert.Equal(8, sources.Count);
        Assert.All(sources, s => Assert.Equal(s.Hash, InputHash.Of(s.Facts)));
        Assert.All(sources.SelectMany(s => s.Facts), f => Assert.DoesNotMatch("least|most", f.Key));
        Assert.Equal("6500", sources.Single(s => s.Name == "throttle body A58").Facts.Single(f => f.Key == "engine.max_speed").Value);
    }

    [Fact]
    public void A_renamed_key_changes_no_hash()
    {
        var files = Estuary.Files.With(
            Estuary.Path, Estuary.Small + "[preferences]\nmax_give = 0.4\nfree_play = 3\nmin_wrap = 12\nsweep_clearance = 2.5\nmin_over_travel = 1\nmin_free_play = 0.5\n");
        var facts = Estuary.Read(files).Options[0].Facts;
        Assert.Equal(["free_play", "min_free_play", "min_wrap", "max_give", "min_over_travel", "sweep_clearance"], facts.Select(f => f.Key));
        Assert.Equal(
            InputHash.OfTexts(["free_play", "3", "least_free_play", "0.5", "least_wrap", "12", "most_give", "0.4", "over_travel_reserve", "1", "sweep_clearance", "2.5"]),
            InputHash.Of(facts));
    }

    [Theory]
    [InlineData("", "no end")]
    [InlineData("{}\n", "line 1")]
    [InlineData("{\"register\":\"n\",\"version\":1}\n{\"part\":\"P\"}\n", "line 2: it is neither")]
    [InlineData("{\"register\":\"n\",\"version\":1}\nrubbish\n", "line 2: it cannot be read")]
    [InlineData("{\"register\":\"n\",\"version\":1}\n{\"part\":\"P\",\"rev", "no end")]
    [InlineData("{\"register\":\"n\",\"version\":9}\n", "line 1")]
    public void A_damaged_register_is_reported(string text, string problem) => Assert.Contains(problem, Register.Parse(Encoding.UTF8.GetBytes(text)).Damage!.Text);

    [Fact]
    public void A_revision_is_given_out_once_only()
    {
        var offered = FamilyCombinations.Of(Estuary.Read(Estuary.WithSmall)).Offered;
        var entry = Entry(offered[0], "P1", 1);
        Assert.Contains("line 3: P1 revision A is given out a second time", Register.Parse(Register.Empty("n").With([entry, entry], []).Bytes).Damage!.Text);
        Assert.Contains("already has the number P1", Register.Parse(Register.Empty("n").With([entry, entry with { PartNumber = "P2", Revision = "B" }], []).Bytes).Damage!.Text);
        Assert.Contains("second time", Register.Parse(Register.Empty("n").With([entry, entry with { Combination = "other" }], []).Bytes).Damage!.Text);
    }

    // Written by the program at 45bc180 from the small line, with revision B of the Plover's parts for a free inner length of 139.5 mm.
    [Fact]
    public void A_register_of_an_earlier_version_is_read_and_continued()
    {
        var bytes = File.ReadAllBytes(RepositoryRoot.PathOf("tests", "BracketGen.Line.Tests", "Data", "register-45bc180.jsonl"));
        var (register, damage) = Register.Parse(bytes);
        Assert.Null(damage);
        Assert.Equal(8, register!.Revisions.Length);
        Assert.Equal("B", register.Latest["PLV-A58-S"].Revision);

        // The search finds other parts today: each is a new revision, what was given out stays to the byte, and a second run adds nothing.
        using var rig = new LineRig(register);
        rig.Make(Plover("139.5"));
        Assert.True(rig.Register.Bytes.AsSpan().StartsWith(bytes));
        var today = rig.Register;
        Assert.Equal(today.Revisions.Length, today.Revisions.Select(r => (r.PartNumber, r.Revision)).Distinct().Count());
        rig.Make(Plover("139.5"));
        Assert.Equal(today.Bytes, rig.Register.Bytes);

        // A longer wire raises the Plover's parts alone, and only what changed is listed.
        rig.Make(Plover("170"));
        var added = rig.Register.Revisions.Skip(today.Revisions.Length).ToArray();
        Assert.Equal(["PLV-A58-S", "PLV-R64-S"], added.Select(r => r.Combination));
        Assert.All(added, r =>
        {
            Assert.Contains("vehicle PLV, cable.free_inner_length.value: 139.5, now 170", r.Differences);
            Assert.DoesNotContain(r.Differences, d => d.StartsWith("sheet: ", StringComparison.Ordinal));
            Assert.Single(r.Differences, d => !DescribedSince.Any(k => d.Contains(k, StringComparison.Ordinal))
                && (d.Split(' ')[0] is "vehicle" or "throttle" or "shop" or "material" or "option,"));
        });
        Assert.True(rig.Register.Bytes.AsSpan().StartsWith(bytes));
    }

    // What the shipped profiles say since that version was used: drag and each spring alone were not measured, and the casting was a keep-out then.
    private static readonly string[] DescribedSince = ["_drag", "return_springs.", "cable.outer_length", "outer_axial_stiffness", "outer_stiffness", "outer_end_mass", "bore_axis", "quadrant.pocket", "outer_bore", "wire_construction", "keep_out[", "sensor.slot"];

    private static MemoryFileSource Plover(string length) =>
        Estuary.Edit(Estuary.WithSmall, "vehicles/plover.toml", "free_inner_length = { value = 138,", $"free_inner_length = {{ value = {length},");

    [Fact]
    public void A_register_that_was_changed_meanwhile_is_not_written_over()
    {
        using var rig = new LineRig();
        var path = Path.Combine(rig.Folder, "deep", "register.jsonl");
        var before = RegisterFile.Read(path, "n").Register!;
        var offered = FamilyCombinations.Of(Estuary.Read(Estuary.WithSmall)).Offered;
        var now = before.With([Entry(offered[0], "P1", 1)], []);
        Assert.True(RegisterFile.Write(rig.Lock, path, before, now));
        Assert.Equal(now.Bytes, File.ReadAllBytes(path));
        Assert.False(RegisterFile.Write(rig.Lock, path, before, before.With([Entry(offered[1], "P2", 2)], [])));
        Assert.Equal(now.Bytes, File.ReadAllBytes(path));
    }

    private static RegisteredRevision Entry(Combination combination, string number, int? serial) =>
        new(number, "A", combination.Key, combination.Title, serial, "f", [new("sheet", "S235JR, 3 mm")], ["abc"], []);
}
