using System.CommandLine;
using BracketGen.Cli.Terminal;
using BracketGen.Design.Search;
using BracketGen.Design.Study;
using BracketGen.Mechanism.Fitted;
using BracketGen.Profiles;
using BracketGen.Units;
using BracketGen.Words.Fitted;
using BracketGen.Words.Profiles;

namespace BracketGen.Cli.Commands;

/// <summary>What the readings taken on the vehicle after fitting mean.</summary>
internal static class FittedCommand
{
    public static Command Create()
    {
        var job = new Argument<FileInfo>("job") { Description = "The job file (TOML)." };
        var stop = Reading("--volts-stop", ReadingKind.Voltage, "Sensor's reading on the closed stop, sensor set, wire off the quadrant (V). Without it nothing is said of closing.");
        var closed = Reading("--volts-closed", ReadingKind.Voltage, "Sensor's reading with the pedal released (V).");
        var floored = Reading("--volts-floored", ReadingKind.Voltage, "Sensor's reading with the pedal on the floor, engine off (V).");
        var slack = Reading("--free-play", ReadingKind.Length, "Slack in the wire at the quadrant with the pedal released (mm, or with its unit: \"0.08 in\").");
        var travel = Reading("--pedal-travel", ReadingKind.Length, "Travel of the pad from released to the floor, carpet in place (mm, or with its unit).");
        var stopPercent = Reading("--percent-stop", ReadingKind.Percent, "Opening that the controller shows on the closed stop, wire off the quadrant (%).");
        var closedPercent = Reading("--percent-closed", ReadingKind.Percent, "Opening that the controller shows with the pedal released (%).");
        var step = Reading("--percent-step", ReadingKind.Angle, "How far the quadrant has turned when the controller's display steps from 0 to 1 % (degrees).");
        var command = new Command(
            "fitted", $"Say what the readings taken after fitting mean, and how to turn the adjuster to correct them. Engine off for all of them.\n\n{ExitCode.Help}")
        {
            job, stop, closed, floored, slack, travel, stopPercent, closedPercent, step,
        };
        command.SetAction(parsed =>
        {
            double? Value(Option<string?> option, ReadingKind kind) => parsed.GetValue(option) is { } text ? ReadingText.Parse(text, kind).Value : null;
            return Run(
                parsed.GetRequiredValue(job),
                new()
                {
                    StopVolts = Value(stop, ReadingKind.Voltage),
                    ClosedVolts = Value(closed, ReadingKind.Voltage),
                    FlooredVolts = Value(floored, ReadingKind.Voltage),
                    FreePlay = Value(slack, ReadingKind.Length),
                    PadTravel = Value(travel, ReadingKind.Length),
                    StopPercent = Value(stopPercent, ReadingKind.Percent),
                    ClosedPercent = Value(closedPercent, ReadingKind.Percent),
                    StepOpening = Value(step, ReadingKind.Angle) is { } angle ? new(angle) : null,
                },
                [.. new[] { slack, travel }.Where(o => parsed.GetValue(o) is { } text && ReadingText.IsBare(text)).Select(o => o.Name)]);
        });
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

    private static int Run(FileInfo file, FittedReadings readings, IReadOnlyList<string> bare)
    {
        if (readings == new FittedReadings())
        {
            Console.Error.WriteLine("bracketgen: nothing was read: give at least one of --volts-stop, --volts-closed, --volts-floored, --percent-stop, --percent-closed, --percent-step, --free-play and --pedal-travel.");
            return ExitCode.BadInput;
        }

        if (JobInput.Read(file) is not { } job)
        {
            return ExitCode.BadInput;
        }

        if (job.Units == UnitSystem.Inch && bare.Count > 0)
        {
            Console.Error.WriteLine($"bracketgen: {ReadingsText.NoUnit(bare[0])}");
            return ExitCode.BadInput;
        }

        if (job.Body.Sensor is null && (readings.StopVolts ?? readings.ClosedVolts ?? readings.FlooredVolts) is not null)
        {
            Console.Error.WriteLine($"bracketgen: {ReadingsText.NoSensor(job.Body.Name)}");
            return ExitCode.BadInput;
        }

        if (Designer.Solve(job, SearchEffort.BestOnly).Mechanism is not { } mechanism || FittedCheck.Of(job, mechanism, readings) is not { } findings)
        {
            Console.Error.WriteLine($"bracketgen: {ReadingsText.NoTravel}");
            return ExitCode.BadInput;
        }

        AnswerTable.PrintFindings(Screen.OfConsole(), job, findings);
        return FindingText.Decides(findings) switch
        {
            FindingWeight.Good => ExitCode.Pass,
            FindingWeight.NotProven => ExitCode.NotProven,
            _ => ExitCode.CheckFailed,
        };
    }
}
