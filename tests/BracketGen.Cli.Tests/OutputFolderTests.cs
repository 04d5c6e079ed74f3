using BracketGen.Design.Inputs;
using BracketGen.Drawing.Report.Html;
using BracketGen.Line.Solving;
using BracketGen.Profiles.Family;

namespace BracketGen.Cli.Tests;

/// <summary>Files are written whole or not at all; old ones survive when new ones cannot be written.</summary>
public class OutputFolderTests
{
    private const string Job = "plover-alder-58";

    [Fact]
    public void A_folder_below_a_file_cannot_be_made()
    {
        using var place = new Workplace();
        File.WriteAllText(place.Output, "not a folder");
        var result = place.Make(Job);
        Assert.Equal(ExitCode.CannotWrite, result.ExitCode);
        Assert.Contains(place.Output, result.Errors, StringComparison.Ordinal);
        Assert.DoesNotContain("wrote", result.Output, StringComparison.Ordinal);
        Assert.Equal("not a folder", File.ReadAllText(place.Output));
    }

    [Fact]
    public void The_jobs_own_folder_may_be_a_file_too()
    {
        using var place = new Workplace();
        Directory.CreateDirectory(place.Output);
        File.WriteAllText(place.PathOf("output", Job), "not a folder");
        Assert.Equal(ExitCode.CannotWrite, place.Make(Job).ExitCode);
        Assert.Equal([Job], place.OutputFiles());
    }

    [Fact]
    public void Where_one_file_cannot_be_replaced_none_is()
    {
        using var place = new Workplace();
        Directory.CreateDirectory(place.Made(Job, Workplace.ResultFile));
        File.WriteAllText(place.Made(Job, Workplace.CutFile), "old cut file");
        var result = place.Make(Job);
        Assert.Equal(ExitCode.CannotWrite, result.ExitCode);
        Assert.Equal([$"{Job}/{Workplace.CutFile}"], place.OutputFiles());
        Assert.Equal("old cut file", File.ReadAllText(place.Made(Job, Workplace.CutFile)));
    }

    [Fact]
    public void Files_of_the_user_are_left_alone()
    {
        using var place = new Workplace();
        Directory.CreateDirectory(place.PathOf("output", Job));
        File.WriteAllText(place.Made(Job, "notes.txt"), "mine");
        Assert.Equal(ExitCode.Pass, place.Make(Job).ExitCode);
        Assert.Equal("mine", File.ReadAllText(place.Made(Job, "notes.txt")));
        Assert.Equal(Workplace.Files.Length + 1, place.OutputFiles().Length);
    }

    [SkippableFact]
    public void On_a_full_disk_the_old_files_stay_and_nothing_is_left_over()
    {
        Skip.IfNot(File.Exists("/dev/full"), "This system has no device that is always full.");
        using var place = new Workplace();
        Directory.CreateDirectory(place.Output);
        foreach (var name in new[] { "a", "b", "gone" })
        {
            File.WriteAllText(Path.Combine(place.Output, name), "old " + name);
        }

        // The second file's place until all are made is on the full device.
        File.CreateSymbolicLink(Path.Combine(place.Output, $".b.{Environment.ProcessId}.part"), "/dev/full");
        Assert.Throws<IOException>(() => OutputFolder.Write(place.Output, [("a", [1]), ("b", [2])], ["gone"]));
        Assert.Equal(["a", "b", "gone"], place.OutputFiles());
        Assert.All(place.OutputFiles(), name => Assert.Equal("old " + name, File.ReadAllText(Path.Combine(place.Output, name))));
    }

    [Fact]
    public void Where_a_later_file_cannot_be_moved_the_earlier_ones_are_put_back()
    {
        using var place = new Workplace();
        Directory.CreateDirectory(place.Output);
        foreach (var name in new[] { "a", "gone" })
        {
            File.WriteAllText(Path.Combine(place.Output, name), "old " + name);
        }

        // The same name twice: by the second time there is nothing left to move, as if another program had taken it.
        Assert.ThrowsAny<IOException>(() => OutputFolder.Write(place.Output, [("new", [1]), ("a", [2]), ("a", [3])], ["gone"]));
        Assert.Equal(["a", "gone"], place.OutputFiles());
        Assert.All(place.OutputFiles(), name => Assert.Equal("old " + name, File.ReadAllText(Path.Combine(place.Output, name))));
    }

    [Fact]
    public void What_is_outdated_goes()
    {
        using var place = new Workplace();
        OutputFolder.Write(place.Output, [("a", [1]), ("b", [2])], ["c"]);
        OutputFolder.Write(place.Output, [("a", [3])], ["b", "c"]);
        Assert.Equal(["a"], place.OutputFiles());
        Assert.Equal([3], File.ReadAllBytes(Path.Combine(place.Output, "a")));
    }

    [SkippableFact]
    public void A_result_that_cannot_be_printed_is_not_a_failed_check()
    {
        Skip.IfNot(File.Exists("/dev/full"), "This system has no device that is always full.");
        using var place = new Workplace();
        foreach (var arguments in new string[][] { ["travel", place.Job(Job)], ["make", place.Job(Job), "--into", place.Output] })
        {
            var result = BracketGenProgram.RunWithoutRoomToPrint(arguments);
            Assert.Equal(ExitCode.CannotWrite, result.ExitCode);
            Assert.Contains("could not be printed", result.Errors, StringComparison.Ordinal);
        }
    }
}
