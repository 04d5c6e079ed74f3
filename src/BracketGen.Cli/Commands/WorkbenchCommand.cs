using System.CommandLine;
using BracketGen.Web.Folder;
using BracketGen.Web.Serving;

namespace BracketGen.Cli.Commands;

/// <summary>Serves the page on which the numbers are turned and the bracket watched.</summary>
internal static class WorkbenchCommand
{
    public static Command Create()
    {
        var job = new Argument<string?>("job") { Description = "Job to open at once, from the folder; left out, the page asks.", DefaultValueFactory = _ => null };
        var folder = new Option<DirectoryInfo>("--folder")
        {
            Description = "Folder of the profiles: the page reads and writes them there and nowhere else.",
            DefaultValueFactory = _ => new("."),
        };
        var port = new Option<int>("--port") { Description = "Port on this machine; 0 for any that is free.", DefaultValueFactory = _ => 5858 };
        port.Validators.Add(result =>
        {
            if (result.GetValueOrDefault<int>() is < 0 or > 65535)
            {
                result.AddError("--port is a number from 0 to 65535.");
            }
        });
        var command = new Command(
            "workbench", "Serve a page on this machine alone, for who would rather look than type: turn the numbers and watch the bracket. Ctrl-C ends it.")
        {
            job, folder, port,
        };
        command.SetAction((parsed, _) => Run(parsed.GetValue(job), parsed.GetRequiredValue(folder), parsed.GetValue(port)));
        return command;
    }

    private static async Task<int> Run(string? job, DirectoryInfo folder, int port)
    {
        if (!folder.Exists)
        {
            Console.Error.WriteLine($"bracketgen: --folder was given as '{folder}'; there is no such folder.");
            return ExitCode.BadInput;
        }

        if (job is not null && !WorkFolder.IsAllowed(job))
        {
            Console.Error.WriteLine($"bracketgen: {job} is no path of a profile within the folder: name it from there, with forward slashes and .toml at its end, or choose another --folder.");
            return ExitCode.BadInput;
        }

        using var signal = new StopSignal();
        try
        {
            await using var server = await WorkbenchServer.Start(new(folder.FullName), port);
            Console.Out.WriteLine($"The workbench is at {server.Address}{(job is null ? "" : $"#{Uri.EscapeDataString(job)}")}");
            Console.Out.WriteLine("It serves this machine alone. Ctrl-C ends it.");
            Console.Out.Flush();
            await Task.Delay(Timeout.Infinite, signal.Token).ContinueWith(_ => { }, CancellationToken.None, TaskContinuationOptions.None, TaskScheduler.Default);
            return ExitCode.Pass;
        }
        catch (IOException problem)
        {
            Console.Error.WriteLine($"bracketgen: port {port} cannot be used: {problem.Message} Choose another with --port, or 0 for any that is free.");
            return ExitCode.BadInput;
        }
    }
}
