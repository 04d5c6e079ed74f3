using System.CommandLine;
using System.Runtime.InteropServices;
using System.Text;
using BracketGen.Cli.Interview;
using BracketGen.Cli.Terminal;
using BracketGen.Profiles;
using BracketGen.Profiles.Interview;
using BracketGen.Storage;
using BracketGen.Words.Interview;

namespace BracketGen.Cli.Commands;

/// <summary>Starts a profile from answers given in the terminal.</summary>
internal static class BeginCommand
{
    private const string Vehicle = "vehicle", ThrottleBody = "throttle-body", Shop = "shop", Job = "job";

    public static Command Create()
    {
        var kind = new Argument<string>("kind") { Description = "What to describe: vehicle, throttle-body, shop or job." };
        kind.AcceptOnlyFromAmong(Vehicle, ThrottleBody, Shop, Job);
        var file = new Argument<FileInfo>("file") { Description = "The profile to write (TOML)." };
        var replace = new Option<bool>("--replace") { Description = "Write over a file that is there already." };
        var command = new Command(
            "begin",
            $"Start a profile: asks question by question what was measured (see worksheet), and writes the file when all is answered. Answers are kept beside it in FILE.draft until then.\n\n{ExitCode.Help}")
        {
            kind, file, replace,
        };
        command.SetAction(parsed => Run(parsed.GetRequiredValue(kind), parsed.GetRequiredValue(file), parsed.GetValue(replace)));
        return command;
    }

    private static int Run(string kind, FileInfo file, bool replace)
    {
        if (IsTaken(file, replace))
        {
            return ExitCode.BadInput;
        }

        var talk = new Conversation(Console.In, Console.Out);
        var interview = InterviewFor(kind, file);
        var draft = DraftFile.Beside(file, interview, talk);
        if (talk.IsOver)
        {
            Console.Out.WriteLine();
            Console.Error.WriteLine("bracketgen: the answers ended before the first question; nothing was written.");
            return ExitCode.BadInput;
        }

        // Ctrl-C and a closed terminal print what Ctrl-D prints; the signal itself then ends the program.
        var again = $"bracketgen begin {kind} {file}";
        void Tell(PosixSignalContext signal) => Console.Error.WriteLine($"\nbracketgen: {Left(draft, again)}");
        using var interrupted = PosixSignalRegistration.Create(PosixSignal.SIGINT, Tell);
        using var terminated = PosixSignalRegistration.Create(PosixSignal.SIGTERM, Tell);
        try
        {
            if (new Interviewer(interview, talk).Run(draft.Before, draft.Keep) is not { } text)
            {
                Console.Out.WriteLine();
                Console.Error.WriteLine($"bracketgen: the answers ended before the last question; {Left(draft, again)}");
                return ExitCode.BadInput;
            }

            // It may have come meanwhile.
            file.Refresh();
            if (IsTaken(file, replace))
            {
                Console.Error.WriteLine($"bracketgen: {Left(draft, again)}");
                return ExitCode.BadInput;
            }

            WholeFiles.WriteOne(file.FullName, Encoding.UTF8.GetBytes(text));
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            Console.Error.WriteLine($"bracketgen: {file} could not be written: {problem.Message}");
            return ExitCode.CannotWrite;
        }

        draft.Remove();
        Console.Out.WriteLine();
        Console.Out.WriteLine($"  wrote {file}");
        return ExitCode.Pass;
    }

    private static ProfileInterview InterviewFor(string kind, FileInfo file) => kind switch
    {
        Vehicle => ProfileInterview.Vehicle,
        ThrottleBody => ProfileInterview.ThrottleBody,
        Shop => ProfileInterview.Shop,
        _ => ProfileInterview.Job(file.FullName, new DiskFileSource(), ProfilesNear.Of(file)),
    };

    private static bool IsTaken(FileInfo file, bool replace)
    {
        if (!file.Exists || replace)
        {
            return false;
        }

        Console.Error.WriteLine($"bracketgen: {file} is there already. Choose another name, or say --replace.");
        return true;
    }

    private static string Left(DraftFile draft, string again) => InterviewText.Left(draft.HasAnswers ? draft.Name : null, again);
}
