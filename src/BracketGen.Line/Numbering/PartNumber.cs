using System.Globalization;
using BracketGen.Line.Combinations;
using BracketGen.Profiles.Family;

namespace BracketGen.Line.Numbering;

/// <summary>Part numbers by the shop's rule.</summary>
public static class PartNumber
{
    /// <summary>Whether the rule counts parts.</summary>
    public static bool HasSerial(NumberRule rule) => rule.Pattern.Contains("{serial}", StringComparison.Ordinal);

    /// <summary>The number of a combination's part.</summary>
    /// <param name="rule">The shop's rule.</param>
    /// <param name="combination">The combination.</param>
    /// <param name="serial">Its running number; not looked at where the rule has none.</param>
    public static string Of(NumberRule rule, Combination combination, int serial) => rule.Pattern
        .Replace("{vehicle}", combination.Vehicle.Code, StringComparison.Ordinal)
        .Replace("{throttle_body}", combination.Body.Code, StringComparison.Ordinal)
        .Replace("{material}", combination.Material.Code, StringComparison.Ordinal)
        .Replace("{option}", combination.Option.Option.Code, StringComparison.Ordinal)
        .Replace("{serial}", serial.ToString("D" + rule.SerialDigits.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture), StringComparison.Ordinal);
}
