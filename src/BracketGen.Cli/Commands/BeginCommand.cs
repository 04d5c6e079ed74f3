using System.CommandLine;
using System.Text;
using BracketGen.Cli.Interview;
using BracketGen.Cli.Terminal;
using BracketGen.Profiles;
using BracketGen.Profiles.Interview;
using BracketGen.Storage;

namespace BracketGen.Cli.Commands;

/// <summary>Starts a profile from answers given in the terminal.</summary>
internal static class BeginCommand
{
    private const string Vehicle = "vehicle", ThrottleBody = "throttle-body", InMemory = "profile.toml";

    public static Command Create()
    {
        var kind = new Argument<string>("kind") { Description = "What to describe: vehicle or throttle-body." };
        kind.AcceptOnlyFromAmong(Vehicle, ThrottleBody);
        var file = new Argument<FileInfo>("file") { Description = "The profile to write (TOML)." };
        var replace = new Option<bool>("--replace") { Description = "Write over a file that is there already." };
        var command = new Command(
            "begin", $"Start a profile: asks question by question what was measured (see worksheet), and writes the file when all is answered.\n\n{ExitCode.Help}")
        {
            kind, file, replace,
        };
        command.SetAction(parsed => Run(parsed.GetRequiredValue(kind), parsed.GetRequiredValue(file), parsed.GetValue(replace)));
        return command;
    }

    private static int Run(string kind, FileInfo file, bool replace)
    {
        if (file.Exists && !replace)
        {
            Console.Error.WriteLine($"bracketgen: {file} is there already. Choose another name, or say --replace.");
            return ExitCode.BadInput;
        }

        var interviewer = kind == Vehicle
            ? new Interviewer("vehicle", "vehicle.schema.json", VehicleQuestions.After, text => ProfileReader.ReadVehicle(InMemory, Holding(text)).Errors)
            : new Interviewer("throttle body", "throttle-body.schema.json", ThrottleBodyQuestions.After, text => ProfileReader.ReadThrottleBody(InMemory, Holding(text)).Errors);
        if (interviewer.Run(Console.In, Console.Out) is not { } text)
        {
            Console.Out.WriteLine();
            Console.Error.WriteLine("bracketgen: the answers ended before the last question; nothing was written.");
            return ExitCode.BadInput;
        }

        try
        {
            WholeFiles.WriteOne(file.FullName, Encoding.UTF8.GetBytes(text));
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            Console.Error.WriteLine($"bracketgen: {file} could not be written: {problem.Message}");
            return ExitCode.CannotWrite;
        }

        Console.Out.WriteLine();
        Console.Out.WriteLine($"  wrote {file}");
        return ExitCode.Pass;
    }

    private static MemoryFileSource Holding(string text) => MemoryFileSource.Empty.With(InMemory, text);
}
