using System.CommandLine;
using BracketGen.Cli.Terminal;
using BracketGen.Web.Folder;
using BracketGen.Web.Memory;
using BracketGen.Web.Phone;
using BracketGen.Web.Serving;
using BracketGen.Words.Terminal;

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
        var phone = new Option<bool>("--phone") { Description = "Serve one phone of your own network too, over TLS, paired by a code that works once. See docs/phone.md." };
        var address = new Option<string?>("--address") { Description = "With --phone: this machine's address in the phone's network, where it has several." };
        var phonePort = new Option<int>("--phone-port") { Description = "With --phone: port for the phone; 0 takes any free port.", DefaultValueFactory = _ => 0 };
        foreach (var checkedPort in new[] { port, phonePort })
        {
            checkedPort.Validators.Add(result =>
            {
                if (result.GetValueOrDefault<int>() is < 0 or > 65535)
                {
                    result.AddError($"{checkedPort.Name} must be a whole number from 0 to 65535.");
                }
            });
        }

        var command = new Command(
            "page", "Serve the page to this machine only, unless you ask for --phone: change numbers in the browser and watch the bracket. Ctrl-C ends it.")
        {
            job, folder, port, phone, address, phonePort,
        };
        command.Validators.Add(result =>
        {
            foreach (var option in new Option[] { address, phonePort })
            {
                if (!result.GetValue(phone) && result.GetResult(option) is { Implicit: false })
                {
                    result.AddError(PhoneWords.NeedsPhone(option.Name));
                }
            }
        });
        command.SetAction((parsed, _) => Run(
            parsed.GetValue(job), parsed.GetRequiredValue(folder), parsed.GetValue(port),
            parsed.GetValue(phone) ? () => PhoneSide.Of(NetworkAddress.OfThisMachine(), parsed.GetValue(address), parsed.GetValue(phonePort), TlsLibrary.IsThere()) : null));
        return command;
    }

    private static async Task<int> Run(string? job, DirectoryInfo folder, int port, Func<(PhoneSide? Side, string? Problem)>? phone)
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

        var (side, problemWithPhone) = phone?.Invoke() ?? default;
        if (problemWithPhone is not null)
        {
            Console.Error.WriteLine($"bracketgen: {problemWithPhone}");
            return ExitCode.BadInput;
        }

        using var signal = new StopSignal();
        var trying = (Option: "--port", Port: port);
        try
        {
            await using var server = await PageServer.Start(new(folder.FullName), new(PageMemory.UserFile), port);
            Console.Out.WriteLine($"The page is at {server.Address}{(job is null ? "" : $"#{Uri.EscapeDataString(job)}")}");
            Console.Out.WriteLine("Only this machine can open it. Ctrl-C ends it.");
            Console.Out.Flush();
            if (side is not null)
            {
                trying = ("--phone-port", side.Port);
            }

            await using var served = side is null ? null : await Phone(server, side, job, signal.Token);
            await Task.Delay(Timeout.Infinite, signal.Token).ContinueWith(_ => { }, CancellationToken.None, TaskContinuationOptions.None, TaskScheduler.Default);
            return ExitCode.Pass;
        }
        catch (IOException problem)
        {
            Console.Error.WriteLine($"bracketgen: port {trying.Port} cannot be used: {problem.Message} Choose another with {trying.Option}; 0 takes any free port.");
            return ExitCode.BadInput;
        }
    }

    private static async Task<PhoneServer> Phone(PageServer page, PhoneSide side, string? job, CancellationToken ending)
    {
        var screen = Screen.OfConsole();
        var server = await page.ServePhone(side.Address, side.Port, TimeProvider.System, (state, from) => PhoneSide.Tell(state, from, screen));
        PhoneSide.Say(server, job, screen);
        _ = PhoneSide.SayRunOut(server, screen, ending);
        _ = PhoneSide.Watch(server, job, screen, ending);
        return server;
    }
}
