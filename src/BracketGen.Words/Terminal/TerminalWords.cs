namespace BracketGen.Words.Terminal;

/// <summary>Sentences and headings of the terminal.</summary>
public static class TerminalWords
{
    /// <summary>What to do first, said where no command was given.</summary>
    public static IReadOnlyList<string> FirstSteps { get; } =
    [
        "bracketgen demo: designs the bracket of an example and opens its report.",
        "bracketgen page: opens the program for your browser. Measure step by step, watch the bracket, save the job.",
        "bracketgen --help: lists every command. The book is in docs/README.md.",
    ];

    /// <summary>What the example brings is there already, and is not the same.</summary>
    public static string DemoChanged(string path) => $"bracketgen: {path} is there already and has other content. Name another folder: bracketgen demo --into FOLDER.";

    /// <summary>The example could not be written.</summary>
    public static string DemoNotWritten(string folder, string why) => $"bracketgen: the example could not be written to {folder}: {why}";

    /// <summary>Where the example's report is.</summary>
    public static string DemoReport(string path, bool isOpened) => isOpened
        ? $"The report opens in your browser: {path}. Change a number in the example, and run make on it."
        : $"Open the report in a browser: {path}. Change a number in the example, and run make on it.";

    /// <summary>Heading of the pedal's table.</summary>
    public const string OverThePedal = "Over the pedal, from released to the floor, with lost motion and friction:";

    /// <summary>Heading of what is in the way of a bracket.</summary>
    public const string NoBracket = "No bracket passes. Causes, each shape counted at the first check that stops it:";

    /// <summary>What the command travel is asked.</summary>
    public const string TheTravel = "the travel";

    /// <summary>The verdict with its label.</summary>
    public static string Verdict(string verdict) => $"Verdict: {verdict}";

    /// <summary>How many checks pass.</summary>
    public static string PassesSummedUp(int passing, int all, bool listed) =>
        $"{passing} of {all} checks pass." + (listed || passing == 0 ? "" : " List them with --all-checks.");

    /// <summary>The vehicle and its throttle body.</summary>
    public static string Heading(string vehicle, string body) => $"{vehicle} on {body}";

    /// <summary>The same after fitting.</summary>
    public static string FittedHeading(string vehicle, string body) => $"{vehicle} on {body}, as fitted";

    /// <summary>A file that was written.</summary>
    public static string Wrote(string path) => $"wrote {path}";

    /// <summary>The bracket was written into the job.</summary>
    public static string Kept(string file) => $"chosen bracket written into {file}";

    /// <summary>Why cut file and STEP file were withheld, and what to do.</summary>
    public static IReadOnlyList<string> Withheld(IReadOnlyList<string> open) =>
    [
        $"The cut file and the STEP file were NOT written: {(open.Count == 1 ? "a safety check fails" : $"{open.Count} safety checks fail")} ({string.Join(", ", open)}).",
        $"Correct the job. To write them all the same, on your own responsibility, add --accept-danger {string.Join(' ', open)}.",
    ];
}
