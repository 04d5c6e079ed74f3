using System.Globalization;

namespace BracketGen.Words.Worksheet;

/// <summary>Labels in the picture of what is measured so far.</summary>
public static class SoFarText
{
    /// <summary>The view along the shaft.</summary>
    public const string FromOutside = "from outside, along the shaft";

    /// <summary>The view from the right of the first.</summary>
    public const string FromRight = "the same from the right";

    /// <summary>End of the cable.</summary>
    public const string CableEnd = "end of the cable, wire taut";

    /// <summary>Pull at the cable.</summary>
    public const string Pull = "pull at the cable";

    /// <summary>Travel of the pad.</summary>
    public const string PadTravel = "pad travel";

    /// <summary>Under the picture.</summary>
    public const string Caption = "To scale: what is measured so far. A wrong sign or a slipped point shows here.";

    /// <summary>A mount hole.</summary>
    public static string Hole(int number) => string.Create(CultureInfo.InvariantCulture, $"H{number}");
}
