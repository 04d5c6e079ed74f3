using System.CommandLine;
using BracketGen.Cli.Terminal;
using BracketGen.Design.Checks;
using BracketGen.Design.Study;
using BracketGen.Mechanism.Fitted;
using BracketGen.Profiles;
using BracketGen.Words.Profiles;

namespace BracketGen.Cli.Commands;

/// <summary>What the readings taken on the vehicle after fitting mean.</summary>
internal static class FittedCommand
{
    public static Command Create()
    {
        var job = new Argument<FileInfo>("job") { Description = "The job file (TOML)." };
        var closed = Reading("--volts-closed", ReadingKind.Voltage, "Sensor's reading with the pedal released (V).");
        var floored = Reading("--volts-floored", ReadingKind.Voltage, "Sensor's reading with the pedal on the floor, engine off (V).");
        var slack = Reading("--free-play", ReadingKind.Length, "Slack in the wire at the quadrant with the pedal released (mm, or with its unit: \"0.08 in\").");
        var travel = Reading("--pedal-travel", ReadingKind.Length, "Travel of the pad from released to the floor, carpet in place (mm, or with its unit).");
        var command = new Command(
            "fitted", $"Say what the readings taken after fitting mean, and how to turn the adjuster to correct them. Engine off for all of them.\n\n{ExitCode.Help}")
        {
            job, closed, floored, slack, travel,
        };
        command.SetAction(parsed => Run(parsed.GetRequiredValue(job), new()
        {
            ClosedVolts = Value(parsed.GetValue(closed), ReadingKind.Voltage),
            FlooredVolts = Value(parsed.GetValue(floored), ReadingKind.Voltage),
            FreePlay = Value(parsed.GetValue(slack), ReadingKind.Length),
            PadTravel = Value(parsed.GetValue(travel), ReadingKind.Length),
        }));
        return command;
    }

    private static Option<string?> Reading(string name, ReadingKind kind, string description)
    {
        var option = new Option<string?>(name) { Description = description };
        option.Validators.Add(result =>
        {
            if (result.GetValueOrDefault<string?>() is { } text && ReadingText.Parse(text, kind) is { Error: { } error })
            {
                result.AddError($"{name} was given as '{text}'. {ProfileErrorText.OfReading(error)}");
            }
        });
        return option;
    }

    private static double? Value(string? text, ReadingKind kind) => text is null ? null : ReadingText.Parse(text, kind).Value;

    private static int Run(FileInfo file, FittedReadings readings)
    {
        if (readings == new FittedReadings())
        {
            Console.Error.WriteLine("bracketgen: nothing was read: give at least one of --volts-closed, --volts-floored, --free-play and --pedal-travel.");
            return ExitCode.BadInput;
        }

        if (JobInput.Read(file) is not { } job)
        {
            return ExitCode.BadInput;
        }

        if (job.Body.Sensor is null && (readings.ClosedVolts ?? readings.FlooredVolts) is not null)
        {
            Console.Error.WriteLine($"bracketgen: voltages were given, but the profile of {job.Body.Name} has no [sensor] with the readings at the two stops to hold them against.");
            return ExitCode.BadInput;
        }

        if (Designer.Solve(job, 1, StrengthDetail.Usual).Mechanism is not { } mechanism || FittedCheck.Of(job, mechanism, readings) is not { } findings)
        {
            Console.Error.WriteLine("bracketgen: by the profiles the wire passes the throttle shaft within the sweep; the readings have nothing to be held against. See the command travel.");
            return ExitCode.BadInput;
        }

        AnswerTable.PrintFindings(Screen.OfConsole(), job, findings);
        return findings.All(f => f.Weight == FindingWeight.Good) ? ExitCode.Pass : ExitCode.CheckFailed;
    }
}
