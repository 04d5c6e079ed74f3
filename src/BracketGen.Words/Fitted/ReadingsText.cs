namespace BracketGen.Words.Fitted;

/// <summary>Why nothing can be said of readings.</summary>
public static class ReadingsText
{
    /// <summary>A length without its unit in a job in inches.</summary>
    /// <param name="name">What was given.</param>
    public static string NoUnit(string name) => $"{name} was given without a unit, and the job is in inches. Write the unit with it: \"0.08 in\" or \"2 mm\".";

    /// <summary>Voltages where there is no sensor.</summary>
    /// <param name="body">Name of the throttle body.</param>
    public static string NoSensor(string body) => $"voltages were given, but the profile of {body} has no [sensor] with the readings at the two stops to hold them against.";

    /// <summary>Nothing to compare with.</summary>
    public const string NoTravel = "by the profiles the wire passes the throttle shaft within the sweep; the readings have nothing to be held against. See the command travel.";
}
