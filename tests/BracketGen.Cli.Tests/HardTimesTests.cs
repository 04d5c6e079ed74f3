using System.Diagnostics;
using BracketGen.Cli.Terminal;
using BracketGen.Design.Inputs;
using BracketGen.Line.Solving;
using BracketGen.Profiles.Family;
using BracketGen.Profiles.Forms;
using BracketGen.TestSupport;
using BracketGen.Words.Report;

namespace BracketGen.Cli.Tests;

/// <summary>Full disks, folders that may not be written, killed runs, two runs at once: nothing that was there is lost, and the error says what happened.</summary>
public sealed class HardTimesTests : IDisposable
{
    private const string Job = "plover-alder-58";

    private readonly Workplace _place = new();

    public void Dispose() => _place.Dispose();

    // A disk of its own in a name space of its own: filled to the last block, or turned read-only, and gone with the shell.
    private ToolResult OnDisk(string script)
    {
        var unshare = OutsideTool.Require("unshare");
        if (unshare.Run(["-rm", "mount", "-t", "tmpfs", "tmpfs", _place.PathOf("profiles")]).ExitCode != 0)
        {
            OutsideTool.Refused("This test needs the right to mount a disk in a name space of its own.");
        }

        Directory.CreateDirectory(_place.PathOf("disk"));
        File.WriteAllText(_place.PathOf("script"), script.ReplaceLineEndings("\n"));
        return unshare.Run(["-rm", "sh", "-u", _place.PathOf("script"), _place.PathOf("disk"), .. BracketGenProgram.CommandLine], folder: _place.PathOf());
    }

    private const string Start =
        """
        disk=$1; shift
        hashes() { (cd "$disk" && find . -type f | sort | xargs sha256sum); }
        mount -t tmpfs -o size=SIZE tmpfs "$disk"

        """;

    private const string End =
        """

        echo "exit code $?"
        hashes >after
        diff before after && echo "all as it was"
        """;

    [SkippableFact]
    public void On_a_full_disk_every_file_of_the_run_before_stays()
    {
        var result = OnDisk(Start.Replace("SIZE", "3m", StringComparison.Ordinal) + $"""
            "$@" make profiles/jobs/{Job}.toml --skip-strength --into "$disk" >/dev/null; [ $? = 5 ] || exit 9
            cat /dev/zero >"$disk/filler" 2>/dev/null
            truncate -s -40K "$disk/filler"
            hashes >before
            "$@" make profiles/jobs/{Job}.toml --skip-strength --paper A4 --into "$disk"
            """ + End);
        Assert.Contains("exit code 3", result.Output, StringComparison.Ordinal);
        Assert.Contains("all as it was", result.Output, StringComparison.Ordinal);
        Assert.Contains("could not be written", result.Errors, StringComparison.Ordinal);
        Assert.Contains("No space left", result.Errors, StringComparison.Ordinal);
    }

    [SkippableFact]
    public void On_a_full_disk_a_line_keeps_its_register_and_what_it_made()
    {
        File.WriteAllText(_place.PathOf("profiles", "families", "creek.toml"), LineCommandTests.Creek.ReplaceLineEndings("\n"));
        var result = OnDisk(Start.Replace("SIZE", "8m", StringComparison.Ordinal) + """
            "$@" line profiles/families/creek.toml --skip-strength --into "$disk" --at-once 1 >/dev/null 2>&1; [ $? = 5 ] || exit 9
            cat /dev/zero >"$disk/filler" 2>/dev/null
            truncate -s -8K "$disk/filler"
            sed -i 's/free_inner_length = { value = "5.6 in"/free_inner_length = { value = "5.7 in"/' profiles/vehicles/whimbrel.toml
            hashes >before
            "$@" line profiles/families/creek.toml --skip-strength --into "$disk" --at-once 1
            """ + End);
        Assert.Contains("exit code 3", result.Output, StringComparison.Ordinal);
        Assert.Contains("all as it was", result.Output, StringComparison.Ordinal);
        Assert.Contains("No space left", result.Errors, StringComparison.Ordinal);
    }

    [SkippableTheory]
    [InlineData("make profiles/jobs/plover-alder-58.toml --skip-strength --into \"$disk\"", "could not be written")]
    [InlineData("worksheet --into \"$disk\"", "could not be written")]
    [InlineData("line profiles/families/estuary.toml --skip-strength --into \"$disk\"", "could not be written")]
    public void In_a_folder_that_may_not_be_written_nothing_is(string command, string told)
    {
        var result = OnDisk(Start.Replace("SIZE", "1m", StringComparison.Ordinal) + $"""
            echo mine >"$disk/notes.txt"
            mount -o remount,ro "$disk"
            hashes >before
            "$@" {command}
            """ + End);
        Assert.Contains("exit code 3", result.Output, StringComparison.Ordinal);
        Assert.Contains("all as it was", result.Output, StringComparison.Ordinal);
        Assert.Contains(told, result.Errors, StringComparison.Ordinal);
        Assert.Contains("Read-only", result.Errors, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", result.Errors, StringComparison.Ordinal);
    }

    // Wherever in its course it is killed, each file is whole: of the run before or of this one.
    [Fact]
    public void A_killed_run_leaves_whole_files_and_the_next_one_tidies_up()
    {
        // The shortest of three, because one may have waited for the machine: a fifth of it must come before a run's end.
        var takes = double.PositiveInfinity;
        SortedDictionary<string, string> Timed(string paper)
        {
            var clock = Stopwatch.StartNew();
            var made = Made(paper);
            takes = Math.Min(takes, clock.ElapsedMilliseconds);
            return made;
        }

        var (old, now) = (Timed("A3"), Timed("A4"));
        Timed("A3");
        var killed = 0;
        foreach (var part in LongRun.IsOn ? [0.2, 0.5, 0.7, 0.8, 0.85, 0.9, 0.93, 0.96, 1.0, 1.05] : new[] { 0.2, 0.7, 0.93 })
        {
            using var process = Process.Start(BracketGenProgram.Start("make", _place.Job(Job), "--into", _place.Output, "--skip-strength", "--paper", "A4"))!;
            if (!process.WaitForExit((int)(part * takes)))
            {
                process.Kill();
                process.WaitForExit();
                killed++;
            }

            var there = Whole();
            Assert.Equal(old.Keys, there.Keys);
            Assert.All(there, f => Assert.True(f.Value == old[f.Key] || f.Value == now[f.Key], $"{f.Key} is of no run"));
        }

        Assert.True(killed > 0, "every run ended before it was killed");
        Assert.Equal(now, Made("A4"));
        Assert.Equal(Workplace.Files.Length, _place.OutputFiles().Length);
    }

    [Fact]
    public void Two_runs_in_one_folder_leave_the_files_of_one()
    {
        var (a3, a4) = (Made("A3"), Made("A4"));
        for (var round = 0; round < (LongRun.IsOn ? 3 : 1); round++)
        {
            Process[] both = [.. new[] { "A3", "A4" }.Select(p =>
                Process.Start(BracketGenProgram.Start("make", _place.Job(Job), "--into", _place.Output, "--skip-strength", "--paper", p))!)];
            foreach (var process in both)
            {
                process.StandardOutput.ReadToEnd();
                process.WaitForExit();
                Assert.Equal(ExitCode.NotProven, process.ExitCode);
                process.Dispose();
            }

            var there = Whole();
            Assert.True(there.SequenceEqual(a3) || there.SequenceEqual(a4), "the files of the two are mixed");
            Assert.Equal(Workplace.Files.Length, _place.OutputFiles().Length);
        }
    }

    private SortedDictionary<string, string> Made(string paper)
    {
        var result = _place.MakeAlone(Job, "--paper", paper);
        Assert.True(result.ExitCode == ExitCode.NotProven, result.Errors);
        return Whole();
    }

    private SortedDictionary<string, string> Whole() => new(
        _place.OutputFiles().Where(f => !Path.GetFileName(f).StartsWith('.'))
            .ToDictionary(f => f, f => Convert.ToHexString(System.Security.Cryptography.SHA256.HashData(File.ReadAllBytes(Path.Combine(_place.Output, f))))),
        StringComparer.Ordinal);
}
