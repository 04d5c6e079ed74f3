using System.Globalization;
using BracketGen.Profiles.Forms;

namespace BracketGen.Profiles;

/// <summary>Errors as people read them.</summary>
public static class ProfileErrorText
{
    private const int MostKey = 120;

    /// <summary>Two lines: where, which key, what was read and what is allowed; then what to do.</summary>
    /// <example>
    /// <code>
    /// bodies/alder-58.toml:12:16: quadrant.pitch_radius: read "12 lbf"; allowed: a length from 5 to 200 mm
    ///     lbf is a unit of force. Give a length in mm, cm, m, in or ft.
    /// </code>
    /// </example>
    public static string Format(ProfileError error)
    {
        var place = error.Line > 0 ? string.Create(CultureInfo.InvariantCulture, $":{error.Line}:{error.Column}") : "";
        var key = error.Key.Length > 0 ? $" {(error.Key.Length > MostKey ? error.Key[..MostKey] + "…" : error.Key)}:" : "";
        return $"{error.File}{place}:{key} read {error.Read}; allowed: {error.Allowed}\n    {error.Advice}";
    }
}
