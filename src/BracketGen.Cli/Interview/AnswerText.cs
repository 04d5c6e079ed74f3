using System.Globalization;
using System.Text;
using BracketGen.Profiles.Interview;
using BracketGen.Words.Interview;

namespace BracketGen.Cli.Interview;

/// <summary>Turns what was typed into a value as it stands in a profile; what it may be is left to the profile's own reader.</summary>
internal static class AnswerText
{
    private static readonly string[] PlusMinus = ["+/-", "+-", "±"];

    /// <summary>The value in TOML, or what is wrong with the answer.</summary>
    public static (string? Toml, string? Problem) Of(Question question, string answer)
    {
        switch (question.Form)
        {
            case AnswerForm.Text:
                return (Quoted(answer), null);
            case AnswerForm.Word:
                var word = question.Words.FirstOrDefault(w => string.Equals(w, answer, StringComparison.OrdinalIgnoreCase))
                    ?? (int.TryParse(answer, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number >= 1 && number <= question.Words.Length
                        ? question.Words[number - 1]
                        : null);
                return word is null ? (null, InterviewText.WordWanted(question.Words)) : (Quoted(word), null);
            case AnswerForm.Count:
                return int.TryParse(answer, NumberStyles.None, CultureInfo.InvariantCulture, out var count) && count <= 12
                    ? (answer, null)
                    : (null, InterviewText.CountWanted);
            case AnswerForm.Point:
                var parts = answer.Split((char[])[',', ';'], StringSplitOptions.TrimEntries);
                parts = parts.Length == 3 ? parts : answer.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
                return parts.Length == 3 && parts.All(p => p.Length > 0)
                    ? ($"[{string.Join(", ", parts.Select(Number))}]", null)
                    : (null, InterviewText.PointWanted);
            case AnswerForm.Measured when PlusMinus.FirstOrDefault(p => answer.Contains(p, StringComparison.Ordinal)) is { } sign:
                var at = answer.IndexOf(sign, StringComparison.Ordinal);
                var (value, around) = (answer[..at].Trim(), answer[(at + sign.Length)..].Trim());
                return value.Length > 0 && around.Length > 0
                    ? ($"{{ value = {Number(value)}, plus_minus = {Number(around)} }}", null)
                    : (null, InterviewText.BothSidesWanted(sign));
            default:
                return (Number(answer), null);
        }
    }

    // A bare number stands as it is, anything else in quotes: the reader says what is wrong with it.
    private static string Number(string text) => IsBare(text)
        ? double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture).ToString("0.############", CultureInfo.InvariantCulture)
        : Quoted(text);

    private static bool IsBare(string text) =>
        double.TryParse(text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) && Math.Abs(number) < 1e9;

    private static string Quoted(string text)
    {
        var quoted = new StringBuilder("\"");
        foreach (var c in text)
        {
            quoted.Append(c switch
            {
                '"' => "\\\"",
                '\\' => "\\\\",
                _ when char.IsControl(c) => $"\\u{(int)c:X4}",
                _ => c.ToString(),
            });
        }

        return quoted.Append('"').ToString();
    }
}
