using System.Diagnostics;
using BracketGen.Cli.Terminal;
using BracketGen.Line.Solving;
using BracketGen.Profiles.Family;
using BracketGen.TestSupport;
using BracketGen.Words.Report;

namespace BracketGen.Cli.Tests;

/// <summary>The product line as a user runs it: what it writes, how it is stopped, and what it refuses.</summary>
public sealed class LineCommandTests : IDisposable
{
    // A small line with two vehicles that share parts and one that does not.
    internal const string Creek =
        """
        profile = "family"
        name = "Creek line"
        shop = "../shops/saltmarsh-fabrication.toml"
        vehicles = [
          { code = "PLV", file = "../vehicles/plover.toml" }, { code = "PLE", file = "../vehicles/plover-estate.toml" },
          { code = "WHI", file = "../vehicles/whimbrel.toml" },
        ]
        throttle_bodies = [{ code = "A58", file = "../throttle-bodies/alder-58.toml" }, { code = "R64", file = "../throttle-bodies/rowan-64.toml" }]
        materials = [{ code = "S", name = "steel", designations = ["S235JR", "DC01"] }, { code = "L", name = "aluminium", designations = ["EN AW-5754 H22"] }]

        [numbers]
        rule = "SF-{vehicle}{throttle_body}{material}"

        [cutting]
        quantity = 3

        """;

    private readonly Workplace _place = new();

    public LineCommandTests() => File.WriteAllText(_place.PathOf("profiles", "families", "creek.toml"), Creek.ReplaceLineEndings("\n"));

    public void Dispose() => _place.Dispose();

    private string Family => _place.PathOf("profiles", "families", "creek.toml");

    private string Register => _place.PathOf("profiles", "families", "creek.register.jsonl");

    private string Made(params string[] parts) => _place.PathOf(["output", "creek", .. parts]);

    private ToolResult Line(params string[] options) => BracketGenProgram.Run(["line", Family, "--into", _place.Output, "--skip-strength", .. options]);

    [Fact]
    public void A_line_is_made_and_made_again_without_a_change()
    {
        var first = Line();
        Assert.True(first.ExitCode == ExitCode.NotProven, first.Output + first.Errors);
        Assert.Contains("Verdict of the line: NOT PROVEN.", first.Output);
        Assert.Contains("12 of 12 variants have a bracket, 12 of them not proven.", first.Output);
        Assert.Contains("12 variants not proven: Strength was not calculated.", first.Output);
        Assert.Contains("12 of 12 variants, 0 unchanged", first.Errors);
        Assert.DoesNotContain('\r', first.Errors);
        string[] lists = ["catalogue.html", "sheets.html", "line.xlsx", "revisions.txt", "parts.csv", "fits.csv", "shared.csv", "costs.csv", "sheets.csv", "register.jsonl"];
        Assert.All(lists, l => Assert.True(new FileInfo(Made(l)).Length > 100, l));
        Assert.All(["recall.csv", "replaced.csv", "redraw.csv"], l => Assert.Single(File.ReadAllLines(Made(l))));
        Assert.Equal(File.ReadAllBytes(Register), File.ReadAllBytes(Made("register.jsonl")));
        Assert.NotEmpty(Directory.GetFiles(Made("sheets"), "*.dxf"));
        Assert.Equal(12, Directory.GetFiles(Made("combinations"), "flat-pattern.dxf", SearchOption.AllDirectories).Length);
        var before = Contents();
        var second = Line();
        Assert.Equal(ExitCode.NotProven, second.ExitCode);
        Assert.Contains("12 of 12 variants, 12 unchanged", second.Errors);
        Assert.Contains("Register: 0 new parts, 0 new revisions.", second.Output);
        Assert.Equal(before, Contents());
        Assert.Equal(before, Contents(Line("--anew")));

        // A change that the parts take up: they stay, and the run says that they would be drawn otherwise today.
        _place.Edit("vehicles/whimbrel.toml", "free_inner_length = { value = \"5.6 in\"", "free_inner_length = { value = \"5.7 in\"");
        var stays = Line();
        Assert.Contains("Register: 0 new parts, 0 new revisions.", stays.Output);
        Assert.Contains("SF-WHIA58S revision A still passes and stays. Drawn anew it would be another part (--redraw SF-WHIA58S):", stays.Output);
        Assert.Contains("8 unchanged", stays.Errors);
        Assert.Contains("keep the parts that they have", stays.Output);
        Assert.Contains("--redraw names SF-HERON", Line("--redraw", "SF-HERON").Errors);

        // One that they do not: first of all what to recall; told key by key, and only its own parts are raised.
        _place.Edit("vehicles/whimbrel.toml", "free_inner_length = { value = \"5.7 in\"", "free_inner_length = { value = \"6.6 in\"");
        var changed = Line();
        Assert.StartsWith("RECALL SF-WHIA58", changed.Output);
        Assert.Contains("Register: 0 new parts, 4 new revisions.", changed.Output);
        Assert.Contains("SF-WHIA58S,A,WHI-A58-S,", File.ReadAllText(Made("recall.csv")));
        Assert.Contains(",A,SF-WHIA58S,B,", File.ReadAllText(Made("replaced.csv")));
        Assert.Contains("SF-WHIA58S is now revision B", changed.Output);
        Assert.Contains("vehicle WHI, cable.free_inner_length.value: 5.6 in, now 6.6 in", changed.Output);
        Assert.Contains("8 unchanged", changed.Errors);
        var after = Contents();
        var again = Line();
        Assert.StartsWith("4 recalls of earlier runs are still open", again.Output);
        Assert.Equal(after, Contents());
    }

    [Fact]
    public void A_lost_register_stops_the_line_and_is_made_again()
    {
        Assert.Equal(ExitCode.NotProven, Line().ExitCode);
        var (register, before) = (File.ReadAllBytes(Register), Contents());
        File.Delete(Register);
        var lost = Line();
        Assert.Equal(ExitCode.BadInput, lost.ExitCode);
        Assert.Contains("creek.register.jsonl is missing", lost.Errors);
        Assert.Contains("--rebuild-register", lost.Errors);
        Assert.False(File.Exists(Register));
        Assert.Equal(before, Contents());

        // From the copy: every byte.
        var rebuilt = Line("--rebuild-register");
        Assert.Equal(ExitCode.Pass, rebuilt.ExitCode);
        Assert.Contains("12 revisions from the copy, 0 revisions from the products", rebuilt.Output);
        Assert.Equal(register, File.ReadAllBytes(Register));
        Assert.Equal(before, Contents(Line()));
        Assert.Contains("creek.register.jsonl is there", Line("--rebuild-register").Errors);

        // From the products alone, once the copy is lost too: the same numbers, and the next run changes none.
        File.Delete(Register);
        File.Delete(Made("register.jsonl"));
        Assert.Equal(ExitCode.BadInput, Line().ExitCode);
        Assert.Contains("0 revisions from the copy, 12 revisions from the products", Line("--rebuild-register").Output);
        Assert.Equal(register, File.ReadAllBytes(Register));
        Assert.Equal(before, Contents(Line()));

        // Nothing to make it from, or a copy that is damaged.
        File.Delete(Register);
        File.AppendAllText(Made("register.jsonl"), "{");
        Assert.Contains("is damaged", Line("--rebuild-register").Errors);
        Directory.Delete(Made(), recursive: true);
        Assert.Contains("nothing to rebuild the register from", Line("--rebuild-register").Errors);
        Assert.False(File.Exists(Register));
    }

    // With strength, springs so strong that nothing assumed can turn the answer, and one variant that would fail: it is not sold, so all that is offered passes.
    [Fact]
    public void A_line_of_which_everything_offered_passes_ends_with_zero()
    {
        File.WriteAllText(Family, """
            profile = "family"
            name = "Creek line"
            shop = "../shops/saltmarsh-fabrication.toml"
            vehicles = [{ code = "PLV", file = "../vehicles/plover.toml" }, { code = "DUN", file = "../vehicles/dunlin.toml" }]
            throttle_bodies = [{ code = "A58", file = "../throttle-bodies/alder-58.toml" }]
            exclusions = [{ vehicle = "DUN", reason = "its pedal does not pull far enough" }]
            numbers = { rule = "SF-{vehicle}{throttle_body}" }
            preferences = { free_play = { value = 2, plus_minus = 0.5 } }
            life = { temperature = 80 }

            """.ReplaceLineEndings("\n"));
        foreach (var (weak, strong) in new[] { ("0.55", "0.85"), ("1.05", "1.45"), ("0.27", "0.42"), ("0.52", "0.72"), ("0.28", "0.43"), ("0.53", "0.73") })
        {
            _place.Edit("throttle-bodies/alder-58.toml", $"= {{ value = {weak}, plus_minus", $"= {{ value = {strong}, plus_minus");
        }

        var result = BracketGenProgram.Run("line", Family, "--into", _place.Output);
        Assert.True(result.ExitCode == ExitCode.Pass, result.Output + result.Errors);
        Assert.Contains("Verdict of the line: PASSES.", result.Output);
        Assert.Contains("1 of 1 variant has a bracket that passes every check; 1 more is not sold.", result.Output);
        Assert.Contains("1 variant not sold: its pedal does not pull far enough", result.Output);
        Assert.Contains("1 part serves 1 variant.", result.Output);
    }

    // Interrupted, terminated and killed in turn, and gone on each time: in the end every byte is as if it had run through.
    [SkippableFact]
    public void Stopped_by_signals_it_goes_on_to_the_same_bytes()
    {
        var kill = OutsideTool.Require("kill");
        Assert.Equal(ExitCode.NotProven, Line("--at-once", "2").ExitCode);
        var expected = Contents();
        Directory.Delete(Made(), recursive: true);
        File.Delete(Register);
        var stopped = 0;
        foreach (var (signal, lines) in new[] { ("INT", 1), ("KILL", 2), ("TERM", 1), ("KILL", 1) })
        {
            var code = StoppedRun(kill, signal, lines);
            Assert.Contains(code, signal == "KILL" ? [ExitCode.NotProven, 137] : (int[])[ExitCode.NotProven, ExitCode.Stopped]);
            stopped += code == ExitCode.NotProven ? 0 : 1;
            Assert.Equal(code != ExitCode.NotProven && signal == "KILL", code == 137);
        }

        Assert.True(stopped >= 2, $"only {stopped} runs were stopped before their end");
        Assert.Equal(ExitCode.NotProven, Line().ExitCode);
        Assert.Equal(expected, Contents());
    }

    [Fact]
    public void Conflicts_and_damage_are_reported_and_change_nothing()
    {
        Assert.Equal(ExitCode.NotProven, Line("--solve-only").ExitCode);
        var before = Contents();
        File.WriteAllText(Family, File.ReadAllText(Family).Replace("{vehicle}{throttle_body}", "{throttle_body}{vehicle}", StringComparison.Ordinal));
        var conflict = Line();
        Assert.Equal(2, conflict.ExitCode);
        Assert.Contains("PLV-A58-S has the number SF-PLVA58S in the register; by the rule it would now be SF-A58PLVS", conflict.Errors);
        Assert.Equal(before, Contents());

        File.WriteAllText(Family, Creek.ReplaceLineEndings("\n"));
        File.AppendAllText(Register, "{\"part\":");
        var damaged = Line();
        Assert.Equal(2, damaged.ExitCode);
        Assert.Contains("is damaged: its last line has no end", damaged.Errors);
    }

    [Fact]
    public void A_bad_family_a_bad_order_and_a_folder_that_cannot_be_written_have_their_own_codes()
    {
        File.WriteAllText(Family, Creek.Replace("\"WHI\"", "\"PLV\"", StringComparison.Ordinal));
        var twice = Line();
        Assert.Equal(2, twice.ExitCode);
        Assert.Contains("vehicles[3].code", twice.Errors);

        File.WriteAllText(Family, Creek.ReplaceLineEndings("\n"));
        var order = _place.PathOf("order.csv");
        File.WriteAllText(order, "part_number,quantity\nSF-PLVA58S,4\nSF-HERON,1\n");
        var unknown = Line("--order", order);
        Assert.Equal(2, unknown.ExitCode);
        Assert.Contains("order.csv: line 3: SF-HERON is no part", unknown.Errors);
        Assert.False(File.Exists(Made("parts.csv")));

        File.WriteAllText(_place.PathOf("output", "creek", "sheets"), "in the way");
        var blocked = Line();
        Assert.Equal(3, blocked.ExitCode);
        Assert.Contains("could not be written", blocked.Errors);
    }

    [Fact]
    public void A_failing_combination_makes_the_line_end_with_one()
    {
        _place.Edit("vehicles/plover.toml", "available_pull = { value = 51,", "available_pull = { value = 40,");
        var result = Line("--own-parts");
        Assert.Equal(1, result.ExitCode);
        Assert.Contains("PLV-A58-S: no bracket", result.Output);
        Assert.Contains("8 parts serve 8 variants", result.Output);
    }

    private static int StoppedRun(OutsideTool kill, ProcessStartInfo start, string signal, int lines)
    {
        using var process = Process.Start(start)!;
        var output = process.StandardOutput.ReadToEndAsync();
        for (var i = 0; i < lines && process.StandardError.ReadLine() is not null; i++)
        {
        }

        kill.Run(["-" + signal, process.Id.ToString(System.Globalization.CultureInfo.InvariantCulture)]);
        process.StandardError.ReadToEnd();
        process.WaitForExit();
        output.Wait();
        return process.ExitCode;
    }

    private int StoppedRun(OutsideTool kill, string signal, int lines) => StoppedRun(
        kill, BracketGenProgram.Start("line", Family, "--into", _place.Output, "--skip-strength", "--at-once", "1"), signal, lines);

    private SortedDictionary<string, string> Contents(ToolResult? after = null)
    {
        Assert.True(after is null or { ExitCode: ExitCode.NotProven }, after?.Errors);
        return new(
            Directory.GetFiles(Made(), "*", SearchOption.AllDirectories)
                .ToDictionary(f => Path.GetRelativePath(Made(), f), f => Convert.ToHexString(System.Security.Cryptography.SHA256.HashData(File.ReadAllBytes(f)))),
            StringComparer.Ordinal);
    }
}
