namespace BracketGen.Words.Page;

/// <summary>The page's form for the readings taken after fitting; what they mean is in <see cref="Fitted"/>.</summary>
public static class FittedWords
{
    /// <summary>What each field is called, by the name of the command's option.</summary>
    public static IReadOnlyDictionary<string, string> Labels => Readings;

    internal static Dictionary<string, string> Readings { get; } = new()
    {
        ["volts-stop"] = "Sensor on the closed stop, wire off the quadrant",
        ["volts-closed"] = "Sensor, pedal released",
        ["volts-floored"] = "Sensor, pedal on the floor",
        ["free-play"] = "Slack in the wire at the quadrant, pedal released",
        ["pedal-travel"] = "Travel of the pad to the floor, carpet in place",
        ["percent-stop"] = "Controller on the closed stop, wire off the quadrant",
        ["percent-closed"] = "Controller, pedal released",
        ["percent-step"] = "Quadrant turned when the controller steps from 0 to 1 %",
    };

    /// <summary>The unit that stands beside each field.</summary>
    internal static Dictionary<string, string> UnitOf { get; } = new()
    {
        ["volts-stop"] = "V",
        ["volts-closed"] = "V",
        ["volts-floored"] = "V",
        ["free-play"] = "mm",
        ["pedal-travel"] = "mm",
        ["percent-stop"] = "%",
        ["percent-closed"] = "%",
        ["percent-step"] = "deg",
    };

    /// <summary>Round the form.</summary>
    internal static Dictionary<string, string> All { get; } = new()
    {
        ["explain"] = "Engine off for all of them. Leave out what you did not read; without the reading on the closed stop nothing is said of closing.",
        ["say"] = "Say what they mean",
        ["saying"] = "Calculating…",
        ["wrong"] = "Correct what is marked.",
        ["mark"] = "state",
        ["code"] = "check",
        ["means"] = "what it means, and what to do",
        ["caption"] = "What the readings mean",
        ["unit"] = "with unit",
        ["mistakes"] = "There is a mistake in the files:",
    };

    /// <summary>No field is filled.</summary>
    public const string Nothing = "Nothing was read: fill at least one field.";

    /// <summary>A sentence of the command with its options called as the fields are.</summary>
    /// <param name="sentence">The sentence.</param>
    public static string InFields(string sentence) => Readings.Aggregate(sentence, (text, r) => text.Replace($"--{r.Key}", $"«{r.Value}»", StringComparison.Ordinal))
        .Replace(" has no [sensor] with the readings", " has no sensor with the readings", StringComparison.Ordinal)
        .Replace(" See the command travel.", "", StringComparison.Ordinal);
}
