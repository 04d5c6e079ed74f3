using System.CommandLine;
using BracketGen.Cli.Terminal;
using BracketGen.Web.Folder;
using BracketGen.Web.Memory;
using BracketGen.Web.Serving;

namespace BracketGen.Cli.Commands;

/// <summary>Serves the page, on which the user changes numbers and watches the bracket.</summary>
internal static class PageCommand
{
    public static Command Create()
    {
        var job = new Argument<string?>("job") { Description = "Path of a job in the folder to open at once; if left out, the page asks.", DefaultValueFactory = _ => null };
        var folder = new Option<DirectoryInfo>("--folder")
        {
            Description = "Folder of the profiles; the page reads and writes profiles there and nowhere else.",
            DefaultValueFactory = _ => new("."),
        };
        var port = new Option<int>("--port") { Description = "Port on this machine; 0 takes any free port.", DefaultValueFactory = _ => 0 };
        port.Validators.Add(result =>
        {
            if (result.GetValueOrDefault<int>() is < 0 or > 65535)
            {
                result.AddError("--port must be a whole number from 0 to 65535.");
            }
        });
        var command = new Command(
            "page", "Serve the page to this machine only: change numbers in the browser and watch the bracket. Ctrl-C ends it.")
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
            Console.Error.WriteLine($"bracketgen: --folder is '{folder}', and there is no such folder.");
            return ExitCode.BadInput;
        }

        if (job is not null && !WorkFolder.IsAllowed(job))
        {
            Console.Error.WriteLine($"bracketgen: {job} is not the path of a profile in the folder. Give its path from there, with forward slashes and .toml at the end, or choose another --folder.");
            return ExitCode.BadInput;
        }

        using var signal = new StopSignal();
        try
        {
            await using var server = await PageServer.Start(new(folder.FullName), new(PageMemory.UserFile), port);
            Console.Out.WriteLine($"The page is at {server.Address}{(job is null ? "" : $"#{Uri.EscapeDataString(job)}")}");
            Console.Out.WriteLine("Only this machine can open it. Ctrl-C ends it.");
            Console.Out.Flush();
            await Task.Delay(Timeout.Infinite, signal.Token).ContinueWith(_ => { }, CancellationToken.None, TaskContinuationOptions.None, TaskScheduler.Default);
            return ExitCode.Pass;
        }
        catch (IOException problem)
        {
            Console.Error.WriteLine($"bracketgen: port {port} cannot be used: {problem.Message} Choose another with --port; 0 takes any free port.");
            return ExitCode.BadInput;
        }
    }
}
