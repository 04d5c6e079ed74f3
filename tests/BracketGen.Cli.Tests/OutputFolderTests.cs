using BracketGen.Cli.Terminal;
using BracketGen.Design.Inputs;
using BracketGen.Line.Solving;
using BracketGen.Profiles.Family;
using BracketGen.Words.Report;

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
        Assert.Equal(ExitCode.NotProven, place.Make(Job).ExitCode);
        Assert.Equal("mine", File.ReadAllText(place.Made(Job, "notes.txt")));
        Assert.Equal(Workplace.Files.Length + 1, place.OutputFiles().Length);
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
