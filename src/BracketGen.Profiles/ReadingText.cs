using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Forms;
using BracketGen.Profiles.Toml;
using BracketGen.Units;

namespace BracketGen.Profiles;

/// <summary>What a reading that is typed outside a file measures.</summary>
public enum ReadingKind
{
    /// <summary>A length; bare numbers are in mm.</summary>
    Length,

    /// <summary>A voltage; bare numbers are in V.</summary>
    Voltage,

    /// <summary>An angle; bare numbers are in degrees.</summary>
    Angle,

    /// <summary>A bend angle; bare numbers are in degrees.</summary>
    BendAngle,

    /// <summary>An included angle; bare numbers are in degrees.</summary>
    IncludedAngle,

    /// <summary>A length that may point either way; bare numbers are in mm.</summary>
    Coordinate,

    /// <summary>What a display shows, in percent; without a unit.</summary>
    Percent,
}

/// <summary>Reads a quantity typed on a command line by the same rules and units as one in a file, without the quotes.</summary>
public static class ReadingText
{
    /// <summary>Whether a text is a number without a unit.</summary>
    public static bool IsBare(string text) => QuantityText.Split(text) is (_, "");

    /// <summary>The value in internal units (mm, V, rad, %), or what is wrong with the text.</summary>
    /// <param name="text">What was typed: 2.5, 0.1 in.</param>
    /// <param name="kind">What it measures.</param>
    public static (double? Value, ProfileError? Error) Parse(string text, ReadingKind kind)
    {
        var form = kind switch
        {
            ReadingKind.Voltage => QuantityForm.Volts(-1, 30),
            ReadingKind.Angle => QuantityForm.Angle(0, 90),
            ReadingKind.BendAngle => QuantityForm.Angle(5, 160),
            ReadingKind.IncludedAngle => QuantityForm.Angle(10, 180),
            ReadingKind.Coordinate => QuantityForm.Length(-1000, 1000),
            ReadingKind.Percent => QuantityForm.Number(0, 100),
            _ => QuantityForm.Length(-5, 1000),
        };
        var place = new Place("", 1, 1);
        var written = new Excerpt(text, 0, text.Length);
        TomlValue value = QuantityText.Split(text) is (var number, "") ? new TomlNumber(number, place, written) : new TomlText(text, place, written);
        var reading = new Reading();
        return form.TryRead(value, "", reading, out var result) ? (result, null) : (null, reading.Errors[0]);
    }
}
