using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Forms;
using BracketGen.Profiles.Toml;
using BracketGen.SheetMetal.Standards;
using BracketGen.Units;

namespace BracketGen.Profiles.Sections;

/// <summary>A cable adjuster's thread.</summary>
/// <param name="Diameter">Nominal diameter (mm).</param>
/// <param name="Pitch">Pitch (mm).</param>
internal readonly record struct ScrewThread(double Diameter, double Pitch);

/// <summary>
/// A thread as it is called: metric M8x1 (ISO 965-1) or M8 for the coarse pitch, or in inches 5/16-24, diameter and threads
/// per inch (ASME B1.1).
/// </summary>
internal sealed partial class ScrewThreadForm : Form<ScrewThread>
{
    private const string Pattern = "^(M[0-9]+([.][0-9]+)?([x×][0-9]+([.][0-9]+)?)?|[0-9]+/[0-9]+-[0-9]+)$";

    public override AllowedValue Allowed => new AllowedPattern(TextPattern.Thread);

    public override bool TryRead(TomlValue value, string key, Reading reading, [MaybeNullWhen(false)] out ScrewThread result)
    {
        if (value is TomlText text && From(text.Text.Trim()) is { } thread)
        {
            result = thread;
            if (thread.Diameter is >= 3 and <= 30 && thread.Pitch is >= 0.2 and <= 4 && thread.Pitch < thread.Diameter / 2)
            {
                return true;
            }

            Report(value, key, reading, ValueMistake.ThreadSize);
            return false;
        }

        result = default;
        Report(value, key, reading, ValueMistake.NotThePattern);
        return false;
    }

    public override JsonObject Schema(SharedSchemas shared) => new() { ["type"] = "string", ["pattern"] = Pattern };

    private static ScrewThread? From(string text)
    {
        if (!Form().IsMatch(text))
        {
            return null;
        }

        if (!text.StartsWith('M'))
        {
            var parts = text.Split('/', '-').Select(Number).ToArray();
            return new(parts[0] / parts[1] * UnitTable.InchLength.Factor, UnitTable.InchLength.Factor / parts[2]);
        }

        var metric = text[1..].Split('x', '×').Select(Number).ToArray();
        return metric.Length == 2 ? new(metric[0], metric[1])
            : FastenerThread.All.FirstOrDefault(t => t.Diameter == metric[0]) is { } known ? new(known.Diameter, known.Pitch)
            : null;
    }

    private static double Number(string digits) => double.Parse(digits, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);

    [GeneratedRegex(Pattern, RegexOptions.CultureInvariant)]
    private static partial Regex Form();
}
