namespace BracketGen.Words.Worksheet;

/// <summary>Titles and warnings of the measuring worksheet.</summary>
public static class WorksheetText
{
    /// <summary>Title of the pages about the throttle body.</summary>
    public const string ThrottleBodyTitle = "Measuring worksheet: throttle body";

    /// <summary>Title of the pages about the vehicle.</summary>
    public const string VehicleTitle = "Measuring worksheet: vehicle";

    /// <summary>Title of the page for the readings.</summary>
    public const string FittedTitle = "After fitting";

    /// <summary>Blank for the name of the throttle body.</summary>
    public const string ThrottleBody = "Throttle body";

    /// <summary>Blank for the name of the vehicle.</summary>
    public const string Vehicle = "Vehicle";

    /// <summary>Blank for both.</summary>
    public const string Both = "Vehicle and throttle body";

    /// <summary>Blank for date and name.</summary>
    public const string DateAndName = "Date, name:";

    /// <summary>Heading of the warnings.</summary>
    public const string Safety = "Safety";

    /// <summary>Before the tools.</summary>
    public const string Tools = "Tools: ";

    /// <summary>Before the mistake.</summary>
    public const string Mistake = "Common mistake: ";

    /// <summary>How often to measure.</summary>
    public const string Readings =
        "Take each reading afresh. Three blanks: circle the middle reading; as ± write its largest difference from the other two, and at least one division of the tool (common practice). "
        + "One blank: measure three times and write the middle reading. A guess is not a measurement: leave the blank empty.";

    /// <summary>How often to read after fitting.</summary>
    public const string Settings = "Three blanks: one for each setting. After each turn of the adjuster or of the sensor take every reading again.";

    /// <summary>Warnings of the measuring pages.</summary>
    public static IReadOnlyList<string> Measuring { get; } =
    [
        "Engine off, key out, wheels chocked. Keep fingers out of the bore and off the quadrant: its springs snap shut.",
    ];

    /// <summary>Warnings of the page for the readings.</summary>
    public static IReadOnlyList<string> Fitted { get; } =
    [
        "Engine off. A throttle that sticks open can kill: from every pedal position, cold and hot, the valve must spring back fully shut at once, also with each return spring unhooked in turn.",
        "Then take these readings and give them to the command \"fitted\"; do not start the engine before it says that the readings are right.",
    ];

    /// <summary>Title of a following page.</summary>
    public static string Continued(string title) => $"{title}, continued";
}
