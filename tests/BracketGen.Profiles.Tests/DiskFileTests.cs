using BracketGen.Profiles.Errors;
using BracketGen.TestSupport;
using BracketGen.Words.Profiles;

namespace BracketGen.Profiles.Tests;

/// <summary>What is no file is refused, and never waited for.</summary>
public sealed class DiskFileTests
{
    [SkippableFact]
    public void A_pipe_given_as_a_profile_is_refused_though_nobody_writes_into_it()
    {
        var mkfifo = OutsideTool.Require("mkfifo");
        var folder = Directory.CreateTempSubdirectory("bracketgen-pipe-").FullName;
        try
        {
            var pipe = Path.Combine(folder, "job.toml");
            mkfifo.RunOrFail([pipe]);
            var error = Assert.Single(ProfileReader.ReadJob(pipe, new DiskFileSource()).Errors);
            Assert.Equal(FileMistake.NoFile, Assert.IsType<FileUnread>(error.Problem).Mistake);
            Assert.Contains("read a pipe or a device; allowed: a file on a disk", ProfileErrorText.Format(error), StringComparison.Ordinal);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [SkippableFact]
    public void A_device_is_no_profile()
    {
        Skip.IfNot(File.Exists("/dev/zero"));
        Assert.Equal(FileState.NoFile, new DiskFileSource().Read("/dev/zero", 100).State);
    }

    [Fact]
    public void An_empty_file_is_read()
    {
        var path = Path.GetTempFileName();
        try
        {
            Assert.Equal((FileState.Read, 0), (new DiskFileSource().Read(path, 100).State, new DiskFileSource().Read(path, 100).Bytes.Length));
        }
        finally
        {
            File.Delete(path);
        }
    }
}
