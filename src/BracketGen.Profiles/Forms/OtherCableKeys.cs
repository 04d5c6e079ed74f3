namespace BracketGen.Profiles.Forms;

/// <summary>Keys under which people look for a place for a cable that does not come from the pedal.</summary>
internal static class OtherCableKeys
{
    /// <summary>The key that takes such cables.</summary>
    public const string Key = "other_cables";

    private static readonly HashSet<string> Guessed = new(StringComparer.OrdinalIgnoreCase)
    {
        "cables", "cable2", "cable_2", "second_cable", "other_cable", "further_cables", "cruise_cable", "cruise_control", "cruise_control_cable",
        "kick_down", "kick_down_cable", "kickdown", "kickdown_cable", "hand_throttle", "hand_throttle_cable", "idle_up", "idle_up_cable",
    };

    /// <summary>Whether a key that is not known asks for such a cable.</summary>
    public static bool AsksForOne(string name) => Guessed.Contains(name);
}
