using System.Text.RegularExpressions;
using BracketGen.Design.Inputs;
using BracketGen.Mechanism.Cables;
using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Family;
using BracketGen.Profiles.Forms;
using BracketGen.Words.Report;
using Tomlyn;
using Tomlyn.Model;

namespace BracketGen.Profiles.Tests;

/// <summary>A job in one file: to the letter what was put in, read like a plain job, and no way out of it.</summary>
public class PackedJobTests
{
    private static PackedJob Packed(string text) =>
        PackedJob.Read("p.toml", MemoryFileSource.Empty.With("p.toml", text)) is { IsRead: true } read ? read.Value : throw new InvalidOperationException(text);

    [Fact]
    public void Every_example_comes_back_to_the_letter()
    {
        foreach (var job in Examples.Of("jobs"))
        {
            var files = Examples.Texts.Where(t => t.Key == job || (t.Key.Split('/')[0] is "vehicles" or "throttle-bodies" or "shops" && Examples.Texts[job].Contains('/' + t.Key.Split('/')[1], StringComparison.Ordinal))).Select(t => (t.Key, t.Value)).ToList();
            var text = new PackedJob(job, [.. files]).Write();
            Assert.Equal(files, Packed(text).Files);

            // Somebody else's TOML reader finds the same texts.
            var model = TomlSerializer.Deserialize<TomlTable>(text)!;
            Assert.Equal(files.Select(f => f.Value), ((TomlTableArray)model["files"]).Select(f => (string)f["text"]));

            var plain = ProfileReader.ReadJob(job, Examples.Files).Value!;
            var read = ProfileReader.ReadJob("shared/p.toml", MemoryFileSource.Empty.With("shared/p.toml", text)).Value!;
            Assert.Equal(plain.Document, read.Document);
            Assert.Equal(plain.Vehicle.Cable, read.Vehicle.Cable);
        }
    }

    [Theory]
    [InlineData("")]
    [InlineData("\n")]
    [InlineData("a = 'b'")]
    [InlineData("a = '''b'''\n")]
    [InlineData("a = 1\r\nb = 2\r\n")]
    [InlineData("\t\u0001\u0000\uFEFF °𝛼 \\ \" \"\"\"")]
    public void Any_text_comes_back_to_the_letter(string text)
    {
        var (path, back) = Assert.Single(Packed(new PackedJob("a.toml", [("a.toml", text)]).Write()).Files);
        Assert.Equal("a.toml", path);
        Assert.Equal(text, back);
    }

    // As written before keys said min and max; comments and whatever else holds the old words stay.
    [Fact]
    public void Old_keys_are_read_as_the_present_ones_and_nothing_else_changes()
    {
        static string WithGive(string text, string key) => text.Replace("[document]", key + " = 0.4 # least, most_give = 1\n[document]", StringComparison.Ordinal);
        (string, string)[] plain = [.. Samples.Texts.Select(t => (t.Key, WithGive(t.Value, "max_give")))];
        (string, string)[] old =
        [
            .. Samples.Texts.Select(t => (t.Key, WithGive(
                RenamedKeys.All.Aggregate(t.Value, (text, r) => Regex.Replace(text, $"^{r.Now} =", r.Old + " =", RegexOptions.Multiline)), "most_give"))),
        ];
        Assert.Contains(old, f => f.Item2.Contains("least_bend_radius = 60", StringComparison.Ordinal));
        Assert.Contains(old, f => f.Item2.Contains("\nmost = [", StringComparison.Ordinal));
        var text = new PackedJob(Samples.Job, [.. old]).Write();
        Assert.Equal(plain, Packed(text).Files);
        var read = ProfileReader.ReadJob("p.toml", MemoryFileSource.Empty.With("p.toml", text));
        Assert.True(read.IsRead);
        Assert.Equal(0.4, read.Value.Preferences.MaxGive);
    }

    [Theory]
    [InlineData("a = { least = [1, { most = 2 }] }\n\"least_wrap\" = 3 # least_wrap = 4", "a = { min = [1, { max = 2 }] }\nmin_wrap = 3 # least_wrap = 4")]
    [InlineData("a.least.b = \"least\"\n[least]\n", "a.min.b = \"least\"\n[least]\n")]
    [InlineData("least = 'é😀 least = 1'\r\nmost = '''\nleast = 1\n'''", "min = 'é😀 least = 1'\r\nmax = '''\nleast = 1\n'''")]
    public void Only_keys_are_renamed(string old, string now) => Assert.Equal(now, RenamedKeys.TextNow(old));

    [Theory]
    [InlineData("../a.toml")]
    [InlineData("/a.toml")]
    [InlineData("b/../../a.toml")]
    [InlineData("c:/a.toml")]
    [InlineData("b\\a.toml")]
    [InlineData("b//a.toml")]
    public void Paths_that_lead_out_are_mistakes(string path)
    {
        var text = new PackedJob(path, [(path, "")]).Write();
        Assert.NotEmpty(PackedJob.Read("p.toml", MemoryFileSource.Empty.With("p.toml", text)).Errors);
    }

    [Fact]
    public void A_job_within_finds_nothing_outside_and_says_where_its_mistakes_are()
    {
        var job = Examples.Texts["jobs/plover-alder-58.toml"].Replace("../vehicles/", "../../vehicles/", StringComparison.Ordinal);
        var files = Examples.Files.With("p.toml", new PackedJob("jobs/plover-alder-58.toml", [("jobs/plover-alder-58.toml", job)]).Write());
        var errors = ProfileReader.ReadJob("p.toml", files).Errors;
        Assert.Equal(3, errors.Length);
        Assert.All(errors, e => Assert.Equal("p.toml/jobs/plover-alder-58.toml", e.File));
        Assert.All(errors, e => Assert.True(e.Problem is FileUnread { Mistake: FileMistake.Missing, Path: not null }));
    }
}
