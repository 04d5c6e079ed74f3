using System.CommandLine;
using BracketGen.Design.Inputs;
using BracketGen.Profiles;
using BracketGen.Words.Profiles;

namespace BracketGen.Cli.Commands;

/// <summary>Reads the job that a command is given.</summary>
internal static class JobInput
{
    /// <summary>The option that says where a job's folder is made.</summary>
    public static Option<DirectoryInfo> IntoOption() => new("--into")
    {
        Description = "Folder for the files; one folder named after the job is made in it.",
        DefaultValueFactory = _ => new("output"),
    };

    /// <summary>The folder of a job's files.</summary>
    /// <param name="into">The folder that it is made in.</param>
    /// <param name="job">The job's file.</param>
    public static string FolderIn(DirectoryInfo into, FileInfo job) => Path.Combine(into.ToString(), Path.GetFileNameWithoutExtension(job.Name));

    /// <summary>The job, or null after every mistake in the files has been told.</summary>
    public static Job? Read(FileInfo file)
    {
        var result = ProfileReader.ReadJob(file.ToString(), new DiskFileSource());
        return Told(result) ? result.Value : null;
    }

    /// <summary>Whether a file was read; where it was not, every mistake has been told.</summary>
    public static bool Told<T>(ProfileResult<T> result)
        where T : class
    {
        if (result.IsRead)
        {
            return true;
        }

        foreach (var error in result.Errors)
        {
            Console.Error.WriteLine(ProfileErrorText.Format(error));
        }

        var count = result.Errors.Sum(e => e.Count);
        Console.Error.WriteLine(count == 1
            ? "1 mistake in the files; nothing was computed."
            : $"{count} mistakes in the files; nothing was computed.");
        return false;
    }
}
