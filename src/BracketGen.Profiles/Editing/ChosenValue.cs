using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using BracketGen.Design.Inputs;

namespace BracketGen.Profiles.Editing;

/// <summary>Writes the bracket that was chosen into a job.</summary>
public static class ChosenValue
{
    /// <summary>The job's key.</summary>
    public const string Key = "chosen";

    // Finer than any file of a bracket is written (mm, degrees).
    private const int Digits = 9;

    /// <summary>A chosen bracket as the job's key has it; every value with its unit, so that it holds for a job in inches too.</summary>
    public static JsonObject Of(ChosenBracket chosen) => new()
    {
        ["material"] = chosen.Material,
        ["thickness"] = Length(chosen.Thickness),
        ["leaving"] = Degrees(chosen.Leaving.Degrees),
        ["adjuster_shift"] = Length(chosen.AdjusterShift),
        ["inside_radius"] = Length(chosen.InsideRadius),
        ["seat"] = chosen.SeatOnTop ? "top" : "bottom",
        ["bends"] = new JsonArray([.. chosen.Bends.Select(b => (JsonNode)new JsonObject { ["turn"] = Degrees(b.Turn.Degrees), ["length"] = Length(b.Length) })]),
    };

    /// <summary>The job's text with that bracket chosen, all else as it was; null where it cannot be written in.</summary>
    /// <param name="text">The job.</param>
    /// <param name="chosen">The bracket; null for the best again.</param>
    public static string? Apply(string text, ChosenBracket? chosen)
    {
        if (chosen is null)
        {
            return ProfileEditor.Apply(text, Key, null);
        }

        using var value = JsonDocument.Parse(Of(chosen).ToJsonString());
        return ProfileEditor.Apply(text, Key, value.RootElement);
    }

    private static string Length(double value) => Number(value) + " mm";

    private static string Degrees(double value) => Number(value) + " deg";

    // No minus before a zero.
    private static string Number(double value) => (Math.Round(value, Digits) + 0.0).ToString("0.#########", CultureInfo.InvariantCulture);
}
