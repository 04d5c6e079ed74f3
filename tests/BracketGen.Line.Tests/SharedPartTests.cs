using System.Collections.Immutable;
using System.Globalization;
using BracketGen.Design.Study;
using BracketGen.Line.Numbering;
using BracketGen.Line.Running;
using BracketGen.Line.Sharing;
using BracketGen.Line.Solving;
using BracketGen.Profiles;
using BracketGen.TestSupport;

namespace BracketGen.Line.Tests;

/// <summary>Parts that are the best bracket of no combination: cables of the Plover's kind in other lengths, on one throttle body.</summary>
public class SharedPartTests
{
    // The Plover's adjuster has a range of 14 mm, of whose half a half is kept in reserve.
    private const double Usable = 3.5;

    private static string Text(double value) => value.ToString(CultureInfo.InvariantCulture);

    private static MemoryFileSource Family(params double[] lengths)
    {
        var plover = System.Text.Encoding.UTF8.GetString(Estuary.Files.Read("vehicles/plover.toml", 1 << 20).Bytes.Span).ReplaceLineEndings("\n");
        Assert.Contains("value = 138,", plover, StringComparison.Ordinal);
        var files = lengths.Aggregate(Estuary.Files, (f, l) => f.With($"vehicles/plover-{Text(l)}.toml", plover.Replace("value = 138,", $"value = {Text(l)},", StringComparison.Ordinal)
            .Replace("name = \"Plover\"", $"name = \"Plover {Text(l)}\"", StringComparison.Ordinal)));
        var vehicles = string.Concat(lengths.Select(l => $"[[vehicles]]\ncode = \"P{Text(10 * l)}\"\nfile = \"../vehicles/plover-{Text(l)}.toml\"\n\n"));
        return files.With(Estuary.Path,
            $"""
            profile = "family"
            name = "Creek line"
            shop = "../shops/saltmarsh-fabrication.toml"

            {vehicles}
            [[throttle_bodies]]
            code = "A58"
            file = "../throttle-bodies/alder-58.toml"

            [[materials]]
            code = "S"
            name = "steel"
            designations = ["S235JR"]

            [numbers]
            rule = "SF-{"{vehicle}"}-{"{throttle_body}"}-{"{material}"}"

            """);
    }

    private static (PartSelection Selection, LineRig.Run Run, ImmutableArray<LinePart> Parts) Solve(LineRig rig, int threads, params double[] lengths)
    {
        var run = rig.Make(Family(lengths));
        var parts = LineParts.Of(run.Family, run.Offered, [.. run.Made.Select(m => m!)]);
        Assert.Equal(lengths.Length, parts.Length);
        var selection = FewestParts.Of(run.Family, parts, null, threads);
        Assert.Equal(selection.Parts.Count, selection.AtLeast);
        AssertProven(selection);
        return (selection, run, parts);
    }

    private static void AssertProven(PartSelection selection) => Assert.All(selection.Services, s =>
    {
        var solution = GivenBracket.On(s.Served.Job, s.By.Bracket, s.Mount)!;
        Assert.Contains(Fits.OutcomeOf(solution), new[] { Outcome.Passes, Outcome.NotProven });
        Assert.Equal(Fits.Of(solution).AdjusterShift, s.Fit.AdjusterShift, 1e-5);
        Assert.Contains(s.By, selection.Parts);
    });

    [Fact]
    public void Two_cables_get_the_one_part_that_a_third_between_them_would_show()
    {
        using var rig = new LineRig();
        var (selection, run, parts) = Solve(rig, 2, 135.6, 140.4);
        var part = Assert.Single(selection.Parts);
        Assert.False(part.IsOwn);
        Assert.All(selection.Services, s => Assert.True(s.IsShared));
        Assert.Equal([-2.4, 2.4], selection.Services.Select(s => Math.Round(s.Fit.AdjusterShift, 1)).Order());

        // With the third, its own bracket serves all, and nothing needs a number of its own.
        using var other = new LineRig();
        var three = Solve(other, 1, 135.6, 138, 140.4).Selection;
        Assert.True(Assert.Single(three.Parts).IsOwn);
        Assert.Equal(2, parts.Length);
        Assert.Equal(2, run.Offered.Length);
    }

    [Fact]
    public void A_shared_part_has_a_number_a_line_in_the_register_and_files_and_keeps_them()
    {
        using var rig = new LineRig();
        var (selection, run, _) = Solve(rig, 2, 135.6, 140.4);
        var (issued, register) = SharedNumbers.Issue(selection, rig.Register, new(run.Family, "1"), run.Family.Family);
        var part = Assert.Single(issued.Parts);
        Assert.Equal("SF-P1356-A58-S.1", part.Made.PartNumber);
        Assert.Equal("shared/P1356-A58-S.1", part.Folder);
        Assert.All(issued.Services, s => Assert.Same(part, s.By));
        AssertProven(issued);
        var line = register.Latest["P1356-A58-S.1"];
        Assert.Equal(("SF-P1356-A58-S.1", "A", "Plover 135.6, Alder 58, steel, shared part"), (line.PartNumber, line.Revision, line.Names));
        Assert.Equal(part.Made.Fingerprint, line.Fingerprint);
        Assert.Contains(line.Sources, s => register.SourceOf(s)!.Name == "vehicle P1404");

        // Read back and issued again, nothing is new; a register that grew reads back.
        var read = Register.Parse(register.Bytes).Register!;
        var again = SharedNumbers.Issue(selection, read, new(run.Family, "1"), run.Family.Family);
        Assert.Same(read, again.Register);
        Assert.Equal(part.Made.PartNumber, again.Selection.Parts[0].Made.PartNumber);

        // A number that somebody has already is passed over.
        var taken = rig.Register.With([line with { Combination = "OTHER", Fingerprint = "another" }], []);
        Assert.Equal("SF-P1356-A58-S.2", SharedNumbers.Issue(selection, taken, new(run.Family, "1"), run.Family.Family).Selection.Parts[0].Made.PartNumber);

        // Another shape in its place is the next revision of the same number.
        var earlier = rig.Register.With([line with { Fingerprint = "another", Facts = [new("sheet", "S235JR, 4 mm")] }], []);
        var raised = SharedNumbers.Issue(selection, earlier, new(run.Family, "1"), run.Family.Family);
        Assert.Equal(("SF-P1356-A58-S.1", "B"), (raised.Selection.Parts[0].Made.PartNumber, raised.Selection.Parts[0].Made.Revision));
        Assert.NotEmpty(raised.Register.Latest["P1356-A58-S.1"].Differences);

        var files = SharedFiles.Of(issued, null, null, 1).ToDictionary(f => f.Name, f => System.Text.Encoding.UTF8.GetString(f.Bytes));
        Assert.Equal(["shared/P1356-A58-S.1/flat-pattern.dxf", "shared/P1356-A58-S.1/result.json"], files.Keys.Order());
        Assert.Contains("SF-P1356-A58-S.1", files["shared/P1356-A58-S.1/result.json"], StringComparison.Ordinal);
    }

    [Fact]
    public void A_run_writes_a_shared_parts_files_a_second_one_the_same_and_one_without_sharing_takes_them_away_until_parts_are_chosen_anew()
    {
        var folder = Directory.CreateTempSubdirectory("bracketgen-shared-").FullName;
        try
        {
            var family = Estuary.Read(Family(135.6, 140.4));
            var place = LinePlace.Of(Path.Combine(folder, "creek.toml"), folder, null);
            SortedDictionary<string, string> Run(bool own, bool anew = false)
            {
                var output = new StringWriter();
                var (end, _) = LineWork.Run(family, new(2) { Strength = false, Own = own, ChooseAnew = anew }, place, new(output, output, "", _ => { }, () => { }), default);
                Assert.Equal(LineEnd.Made, end);
                return new(
                    Directory.GetFiles(place.Folder, "*", SearchOption.AllDirectories).ToDictionary(f => Path.GetRelativePath(place.Folder, f).Replace('\\', '/'), f => Convert.ToHexString(File.ReadAllBytes(f))),
                    StringComparer.Ordinal);
            }

            var first = Run(false);
            Assert.Contains("shared/P1356-A58-S.1/flat-pattern.dxf", first.Keys);
            Assert.Contains("shared/P1356-A58-S.1/result.json", first.Keys);
            var parts = File.ReadAllLines(Path.Combine(place.Folder, "parts.csv"));
            Assert.Equal(2, parts.Length);
            Assert.StartsWith("SF-P1356-A58-S.1,A,", parts[1], StringComparison.Ordinal);
            Assert.EndsWith(",shared/P1356-A58-S.1", parts[1], StringComparison.Ordinal);
            Assert.Contains("SF-P1356-A58-S.1: Plover 135.6, Alder 58, steel, shared part", File.ReadAllText(Path.Combine(place.Folder, "revisions.txt")), StringComparison.Ordinal);
            Assert.Equal(first, Run(false));
            Assert.DoesNotContain(Run(true).Keys, f => f.StartsWith("shared/", StringComparison.Ordinal));

            // Parts that were given out stay, until a choice anew is asked for.
            Assert.DoesNotContain(Run(false).Keys, f => f.StartsWith("shared/", StringComparison.Ordinal));
            var again = Run(false, anew: true);
            Assert.All(first.Where(f => f.Key.StartsWith("shared/", StringComparison.Ordinal)), f => Assert.Equal(f.Value, again[f.Key]));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    // It was given out, and still passes on both: though a seat in between would stand nearer to mid range now, nobody gets another number.
    [Fact]
    public void A_shared_part_that_was_given_out_stays_where_it_still_passes_and_is_replaced_where_it_does_not()
    {
        var folder = Directory.CreateTempSubdirectory("bracketgen-shared-").FullName;
        try
        {
            var place = LinePlace.Of(Path.Combine(folder, "creek.toml"), folder, null);
            string[] Run(double longer)
            {
                const string path = "vehicles/plover-140.4.toml";
                var files = Family(135.6, 140.4);
                var text = System.Text.Encoding.UTF8.GetString(files.Read(path, 1 << 20).Bytes.Span).Replace("value = 140.4,", $"value = {Text(longer)},", StringComparison.Ordinal);
                var output = new StringWriter();
                var (end, _) = LineWork.Run(Estuary.Read(files.With(path, text)), new(2) { Strength = false }, place, new(output, output, "", _ => { }, () => { }), default);
                Assert.Equal(LineEnd.Made, end);
                return [.. File.ReadAllLines(Path.Combine(place.Folder, "parts.csv")).Skip(1).Select(l => l.Split(',')[0])];
            }

            string Bytes() => Convert.ToHexString(File.ReadAllBytes(Path.Combine(place.Folder, "shared", "P1356-A58-S.1", "flat-pattern.dxf")));
            Assert.Equal(["SF-P1356-A58-S.1"], Run(140.4));
            var before = Bytes();
            Assert.Equal(["SF-P1356-A58-S.1"], Run(141.2));
            Assert.Equal(before, Bytes());

            // 9 mm apart: no adjuster takes that up, and the longer cable gets a part of its own.
            Assert.Equal(["SF-P1404-A58-S", "SF-P1356-A58-S.1"], Run(144.8));
            Assert.Contains("SF-P1356-A58-S.1", File.ReadAllText(Path.Combine(place.Folder, "replaced.csv")), StringComparison.Ordinal);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    // Adjusters that overlap: the fewest points that stab all ranges, found from the left, is how few parts there can be by length alone.
    [Fact]
    public void As_many_parts_as_the_rule_for_intervals_needs_and_a_cable_more_never_takes_more_than_its_own()
    {
        var random = new Random(20260302);
        for (var i = 0; i < 3; i++)
        {
            double[] lengths = [.. Enumerable.Range(0, 5).Select(_ => Math.Round(130 + 20 * random.NextDouble(), 1)).Distinct()];
            using LineRig rig = new(), fewer = new(), single = new();
            var with = Solve(rig, 2, lengths).Selection.Parts.Count;
            var without = Solve(fewer, 2, lengths[..^1]).Selection.Parts.Count;
            Assert.Equal(Stabs(lengths), with);
            Assert.Equal(Stabs(lengths[..^1]), without);
            Assert.InRange(with, without, without + 1);
            Assert.Equal(Listed(Solve(single, 1, lengths).Selection), Listed(FewestParts.Of(Estuary.Read(Family(lengths)), Solve(rig, 2, lengths).Parts, null, 2)));
        }
    }

    private static string Listed(PartSelection selection) =>
        string.Join('\n', selection.Services.Select(s => $"{s.Served.Key} {s.By.Key} {s.By.Made.Fingerprint} {Text(s.Fit.AdjusterShift)}"));

    private static int Stabs(double[] lengths)
    {
        var (count, at) = (0, double.NegativeInfinity);
        foreach (var length in lengths.Order())
        {
            if (length - Usable > at)
            {
                (count, at) = (count + 1, length + Usable);
            }
        }

        return count;
    }
}
