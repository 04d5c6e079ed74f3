using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text.Json.Nodes;
using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Forms;
using BracketGen.Profiles.Toml;
using BracketGen.SheetMetal.Standards;

namespace BracketGen.Profiles.Sections;

/// <summary>
/// The thread of a screw, in the spellings that are usual: M6, m6, M6x1, M6 x 1, M6×1.0; 1/4-20, 1/4"-20 UNC; #10-32, 10-32 UNF, No. 10-32.
/// </summary>
internal sealed class FastenerThreadForm : Form<FastenerThread>
{
    public override AllowedValue Allowed => new AllowedWords([.. FastenerThread.All.Select(t => t.Name)]);

    public override bool TryRead(TomlValue value, string key, Reading reading, [MaybeNullWhen(false)] out FastenerThread result)
    {
        var (size, pitch) = Split((value as TomlText)?.Text ?? "");
        ImmutableArray<FastenerThread> near = [.. FastenerThread.All.Where(t => SizeOf(t) == size)];
        result = near.FirstOrDefault(t => IsPitch(t, pitch));
        if (result is not null)
        {
            return true;
        }

        value.Report(key, reading, new ThreadUnknown(near.IsEmpty ? [.. FastenerThread.All] : near, !near.IsEmpty));
        return false;
    }

    /// <summary>The names, for those who choose from a list, or any of the spellings that are read.</summary>
    public override JsonObject Schema(SharedSchemas shared) => new()
    {
        ["anyOf"] = new JsonArray(
            new JsonObject { ["enum"] = new JsonArray([.. FastenerThread.All.Select(t => JsonValue.Create(t.Name))]) },
            new JsonObject { ["type"] = "string", ["pattern"] = $"^ *({string.Join('|', FastenerThread.All.Select(Pattern))}) *$" }),
    };

    // "M8x1" is M8 and 1, "1/4-20 UNC" is 1/4 and 20UNC; blanks, inch signs and capital letters mean nothing.
    private static (string Size, string Pitch) Split(string text)
    {
        var bare = text.Replace(" ", "", StringComparison.Ordinal).Replace("\"", "", StringComparison.Ordinal).Replace('×', 'x').ToUpperInvariant();
        if (bare.StartsWith('M'))
        {
            return bare.Split('X', 2) is [var metric, var step] ? (metric, step.Length == 0 ? "X" : step) : (bare, "");
        }

        if (bare.Split('-', 2) is not [var size, var perInch])
        {
            return ("", "");
        }

        // A number size is #10, No. 10 or 10.
        var number = size.StartsWith("NO.", StringComparison.Ordinal) ? size[3..] : size.StartsWith("NO", StringComparison.Ordinal) ? size[2..] : size;
        return (number.Length > 0 && number.All(char.IsAsciiDigit) ? "#" + number : number == size ? size : "", perInch);
    }

    private static string SizeOf(FastenerThread thread) => thread.System == ThreadSystem.Metric
        ? thread.Name.Split('x')[0]
        : thread.Name.Split('-')[0];

    private static bool IsPitch(FastenerThread thread, string pitch)
    {
        if (thread.System == ThreadSystem.Inch)
        {
            var (perInch, series) = InchNames(thread);
            return pitch == perInch || pitch == perInch + series;
        }

        return pitch.Length == 0
            ? !thread.IsFine
            : double.TryParse(pitch, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var step) && step == thread.Pitch;
    }

    private static (string PerInch, string Series) InchNames(FastenerThread thread) => thread.Name.Split('-', ' ') is [_, var perInch, var series] ? (perInch, series) : ("", "");

    private static string Pattern(FastenerThread thread)
    {
        if (thread.System == ThreadSystem.Inch)
        {
            var (perInch, series) = InchNames(thread);
            var number = thread.IsNumberSize ? "(#|[Nn][Oo][.]?)? *" : "";
            return $"{number}{SizeOf(thread).TrimStart('#')}\"? *- *{perInch}( *[Uu][Nn][{series[2]}{char.ToLowerInvariant(series[2])}])?";
        }

        var pitch = thread.Pitch.ToString(CultureInfo.InvariantCulture).Split('.') is [var whole, var part]
            ? $"{(whole == "0" ? "0?" : whole)}[.]{part}0*"
            : $"{thread.Pitch.ToString(CultureInfo.InvariantCulture)}([.]0*)?";
        var step = $" *[xX×] *{pitch}";
        return $"[Mm] *{SizeOf(thread)[1..]}{(thread.IsFine ? step : $"({step})?")}";
    }
}
