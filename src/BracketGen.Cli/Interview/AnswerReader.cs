using System.Collections.Immutable;
using System.Globalization;
using BracketGen.Profiles.Interview;
using BracketGen.Profiles.Toml;
using BracketGen.Words.Interview;

namespace BracketGen.Cli.Interview;

/// <summary>Turns what was typed into a value as it stands in a profile; what it may be is left to the profile's own reader.</summary>
internal sealed class AnswerReader(NumberReader numbers, DirectionReader directions)
{
    private static readonly string[] PlusMinus = ["+/-", "+-", "±"];

    /// <summary>The value, or what is wrong with the answer.</summary>
    /// <param name="question">What was asked.</param>
    /// <param name="answer">What was typed; not empty.</param>
    /// <param name="standard">Unit of a bare number in the profile; null where no number is wanted.</param>
    /// <param name="answered">An answer before, by section and key.</param>
    public GivenAnswer Of(Question question, string answer, Units.Unit? standard, Func<string, string, string?> answered)
    {
        switch (question.Form)
        {
            case AnswerForm.Text:
                return new(TomlLiteral.Quoted(answer), answer, null);
            case AnswerForm.Word:
                var word = WordOf(question, answer) ?? (question.TakesOther ? answer : null);
                return word is null ? GivenAnswer.Wrong(InterviewText.WordWanted(question.Words)) : new(TomlLiteral.Quoted(word), word, null);
            case AnswerForm.Texts:
                var texts = answer.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
                var known = texts.Select(t => question.Words.Length == 0 ? t : WordOf(question, t)).OfType<string>().ToArray();
                return known.Length < texts.Length ? GivenAnswer.Wrong(InterviewText.WordWanted(question.Words)) : new(List([.. known.Select(TomlLiteral.Quoted)]), string.Join(", ", known), null);
            case AnswerForm.Count:
                return int.TryParse(answer, NumberStyles.None, CultureInfo.InvariantCulture, out var count) && count >= question.Min && count <= question.Max
                    ? new(count.ToString(CultureInfo.InvariantCulture), count.ToString(CultureInfo.InvariantCulture), null)
                    : GivenAnswer.Wrong(InterviewText.CountWanted(question.Min, question.Max));
            case AnswerForm.Direction:
                return directions.Of(question, answer, PartsOf(answer), answered);
            case AnswerForm.Point when question.TakesPlusMinus && SignIn(answer) is { } sign:
                var before = answer.IndexOf(sign, StringComparison.Ordinal);
                return PointOf(answer[..before]) is { Length: 3 } centre && answer[(before + sign.Length)..].Trim() is { Length: > 0 } off
                    ? numbers.Of([.. centre, off], [", ", ", ", " +/- "], standard, all => $"{List([.. all.Take(3)])}\nplus_minus = {List([all[3], all[3], all[3]])}")
                    : GivenAnswer.Wrong(InterviewText.PointWanted);
            case AnswerForm.Point:
                return PointOf(answer) is { Length: 3 } point ? numbers.Of(point, [", ", ", "], standard, List) : GivenAnswer.Wrong(InterviewText.PointWanted);
            case AnswerForm.List:
                return numbers.Of(ListOf(answer), [", "], standard, List);
            case AnswerForm.Measured when SignIn(answer) is { } sign:
                var at = answer.IndexOf(sign, StringComparison.Ordinal);
                var (value, around) = (answer[..at].Trim(), answer[(at + sign.Length)..].Trim());
                return value.Length > 0 && around.Length > 0
                    ? numbers.Of([value, around], [" +/- "], standard, both => $"{{ value = {both[0]}, plus_minus = {both[1]} }}")
                    : GivenAnswer.Wrong(InterviewText.BothSidesWanted(sign));
            default:
                return numbers.Of([answer], [""], standard, one => one[0]);
        }
    }

    // A word, or its number in the list.
    private static string? WordOf(Question question, string answer) =>
        question.Words.FirstOrDefault(w => string.Equals(w, answer, StringComparison.OrdinalIgnoreCase))
        ?? (int.TryParse(answer, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number >= 1 && number <= question.Words.Length ? question.Words[number - 1] : null);

    private static string? SignIn(string answer) => PlusMinus.FirstOrDefault(p => answer.Contains(p, StringComparison.Ordinal));

    private static string List(IReadOnlyList<string> items) => $"[{string.Join(", ", items)}]";

    // A comma may part numbers or decimals. It parts coordinates where each piece between commas is a number, and where the blanks do not.
    private static ImmutableArray<string> PointOf(string answer)
    {
        if (answer.Contains(';'))
        {
            return [.. answer.Split(';', StringSplitOptions.TrimEntries)];
        }

        string[] commas = answer.Split(',', StringSplitOptions.TrimEntries), words = answer.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
        return commas.Length == 3 && (commas.All(c => Units.HandWritten.Read(c) is not null) || words.Length != 3) ? [.. commas] : [.. words];
    }

    // Three numbers or two, or words, which are left whole.
    private static ImmutableArray<string> PartsOf(string answer) =>
        PointOf(answer) is { Length: 3 } three && three.All(p => Units.HandWritten.Read(p) is not null) ? three
        : ListOf(answer) is { Length: 2 } two ? two
        : [answer];

    // A comma with a blank after it parts the numbers of a list; without one it may part decimals, and is asked about where it can be read so.
    private static ImmutableArray<string> ListOf(string answer)
    {
        var items = answer.Split(answer.Contains(';') ? ";" : ", ", StringSplitOptions.TrimEntries);
        if (items.Length == 1 && Units.HandWritten.Read(answer) is null)
        {
            items = answer.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
        }

        return [.. items.SelectMany(i => Units.HandWritten.Read(i) is null ? i.Split(',', StringSplitOptions.TrimEntries) : [i])];
    }
}
