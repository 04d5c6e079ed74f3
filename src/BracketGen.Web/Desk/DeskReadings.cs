using System.Collections.Immutable;
using BracketGen.Design.Inputs;
using BracketGen.Design.Search;
using BracketGen.Design.Study;
using BracketGen.Mechanism.Fitted;
using BracketGen.Profiles;
using BracketGen.Profiles.Errors;
using BracketGen.Units;
using BracketGen.Words.Fitted;
using BracketGen.Words.Page;
using BracketGen.Words.Profiles;
using Finding = BracketGen.Mechanism.Fitted.Finding;

namespace BracketGen.Web.Desk;

/// <summary>What the readings taken on the fitted bracket of a desk mean.</summary>
/// <param name="Errors">Errors in the files.</param>
/// <param name="Mistakes">What is wrong with a reading, by its name.</param>
/// <param name="Problem">Why else nothing can be said; null where something can.</param>
/// <param name="Job">The job; null where nothing is said.</param>
/// <param name="Findings">What they mean, the most severe first.</param>
public sealed record DeskReadings(
    IReadOnlyList<ProfileError> Errors, IReadOnlyDictionary<string, string> Mistakes, string? Problem, Job? Job, ImmutableArray<Finding> Findings)
{
    private static readonly ImmutableDictionary<string, ReadingKind> Kinds = new Dictionary<string, ReadingKind>
    {
        ["volts-stop"] = ReadingKind.Voltage,
        ["volts-closed"] = ReadingKind.Voltage,
        ["volts-floored"] = ReadingKind.Voltage,
        ["free-play"] = ReadingKind.Length,
        ["pedal-travel"] = ReadingKind.Length,
        ["percent-stop"] = ReadingKind.Percent,
        ["percent-closed"] = ReadingKind.Percent,
        ["percent-step"] = ReadingKind.Angle,
    }.ToImmutableDictionary();

    /// <summary>Asks the solver.</summary>
    /// <param name="desk">The desk.</param>
    /// <param name="texts">What was typed, by the name of the command's option; those that are empty were not read.</param>
    public static DeskReadings Of(JobDesk desk, IReadOnlyDictionary<string, string> texts)
    {
        var given = texts.Where(t => Kinds.ContainsKey(t.Key) && t.Value.Trim().Length > 0).ToDictionary(t => t.Key, t => t.Value.Trim());
        var read = given.ToDictionary(t => t.Key, t => ReadingText.Parse(t.Value, Kinds[t.Key]));
        var mistakes = read.Where(r => r.Value.Error is not null).ToDictionary(r => r.Key, r => ProfileErrorText.OfReading(r.Value.Error!));
        if (mistakes.Count > 0 || given.Count == 0)
        {
            return Nothing(mistakes.Count > 0 ? null : FittedWords.Nothing) with { Mistakes = mistakes };
        }

        double? Value(string name) => read.TryGetValue(name, out var reading) ? reading.Value : null;
        FittedReadings readings = new()
        {
            StopVolts = Value("volts-stop"),
            ClosedVolts = Value("volts-closed"),
            FlooredVolts = Value("volts-floored"),
            FreePlay = Value("free-play"),
            PadTravel = Value("pedal-travel"),
            StopPercent = Value("percent-stop"),
            ClosedPercent = Value("percent-closed"),
            StepOpening = Value("percent-step") is { } angle ? new(angle) : null,
        };
        var file = desk.Read();
        return file.IsRead ? Of(file.Value, readings, given) : Nothing(null) with { Errors = file.Errors };
    }

    private static DeskReadings Of(Job job, FittedReadings readings, Dictionary<string, string> given)
    {
        var bare = given.Where(t => Kinds[t.Key] == ReadingKind.Length && ReadingText.IsBare(t.Value)).Select(t => t.Key).Order(StringComparer.Ordinal).FirstOrDefault();
        if (job.Units == UnitSystem.Inch && bare is not null)
        {
            return Nothing(ReadingsText.NoUnit($"--{bare}"));
        }

        if (job.Body.Sensor is null && (readings.StopVolts ?? readings.ClosedVolts ?? readings.FlooredVolts) is not null)
        {
            return Nothing(ReadingsText.NoSensor(job.Body.Name));
        }

        return Designer.Solve(job, SearchEffort.BestOnly).Mechanism is { } mechanism && FittedCheck.Of(job, mechanism, readings) is { } findings
            ? new([], ImmutableDictionary<string, string>.Empty, null, job, [.. findings])
            : Nothing(ReadingsText.NoTravel);
    }

    private static DeskReadings Nothing(string? problem) => new([], ImmutableDictionary<string, string>.Empty, problem, null, []);
}
