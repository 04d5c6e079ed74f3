using System.CommandLine;
using System.ComponentModel;
using System.Diagnostics;
using System.Text;
using BracketGen.Cli.Terminal;
using BracketGen.Storage;
using BracketGen.Web.Desk;
using BracketGen.Words.Terminal;

namespace BracketGen.Cli.Commands;

/// <summary>The first minute: the bracket of an example, and its report on the screen.</summary>
internal static class DemoCommand
{
    private const string Example = "jobs/plover-alder-58.toml";

    public static Command Create()
    {
        var into = new Option<DirectoryInfo>("--into")
        {
            Description = "Folder for the example's profiles and for its files.",
            DefaultValueFactory = _ => new("bracketgen-demo"),
        };
        var closed = new Option<bool>("--leave-closed") { Description = "Do not open the report." };
        var command = new Command("demo", $"Write an example job, design its bracket, and open the report.\n\n{ExitCode.Help}") { into, closed };
        command.SetAction(parsed => Run(parsed.GetRequiredValue(into), parsed.GetValue(closed)));
        return command;
    }

    private static int Run(DirectoryInfo into, bool isLeftClosed)
    {
        var folder = into.ToString();
        var profiles = JobDesk.OfExample(Example).Files.Select(f => (Path: Path.Combine(folder, f.Key), f.Value)).ToArray();
        try
        {
            // What is there already may be somebody's work.
            if (profiles.FirstOrDefault(p => File.Exists(p.Path) && File.ReadAllText(p.Path).ReplaceLineEndings("\n") != p.Value) is { Path: { } other })
            {
                Console.Error.WriteLine(TerminalWords.DemoChanged(other));
                return ExitCode.BadInput;
            }

            foreach (var (path, text) in profiles)
            {
                Directory.CreateDirectory(Path.GetDirectoryName(path)!);
                WholeFiles.WriteOne(path, Encoding.UTF8.GetBytes(text));
            }
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            Console.Error.WriteLine(TerminalWords.DemoNotWritten(folder, problem.Message));
            return ExitCode.CannotWrite;
        }

        var (job, output) = (new FileInfo(Path.Combine(folder, Example)), new DirectoryInfo(Path.Combine(folder, "output")));
        var ended = MakeCommand.Usual(job, output);
        var report = Path.Combine(JobInput.FolderIn(output, job), "report.html");
        if (File.Exists(report))
        {
            var screen = Screen.OfConsole();
            screen.Line();
            screen.Paragraph(TerminalWords.DemoReport(report, !isLeftClosed && Opens(report)));
        }

        return ended;
    }

    // Whatever the machine opens such files with; a machine without a screen has nothing.
    private static bool Opens(string path)
    {
        try
        {
            using var opened = Process.Start(new ProcessStartInfo(Path.GetFullPath(path)) { UseShellExecute = true });
            return true;
        }
        catch (Exception problem) when (problem is Win32Exception or InvalidOperationException or PlatformNotSupportedException)
        {
            return false;
        }
    }
}
