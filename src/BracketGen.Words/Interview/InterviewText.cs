using System.Globalization;
using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Interview;
using BracketGen.Units;
using BracketGen.Words.Profiles;

namespace BracketGen.Words.Interview;

/// <summary>What the interview in the terminal says beside its questions.</summary>
public static class InterviewText
{
    /// <summary>How to give the ± of a point.</summary>
    public const string PlusMinusHint = "Give how far all three may be off behind them: -50, 12, -24 +/- 0.3.";

    /// <summary>What a direction must be.</summary>
    public const string DirectionWanted = "Answer with one of the words, with two angles, or with three numbers x, y and z.";

    /// <summary>Nobody has said which way is up.</summary>
    public const string UpWanted = "Which way is up was left out. Go back to it, or answer with numbers.";

    /// <summary>Nobody has said which way the bulkhead is.</summary>
    public const string BulkheadWanted = "Which way the bulkhead is was left out. Go back to it, or answer with numbers.";

    /// <summary>What is typed to go back one question.</summary>
    public const string Back = "back";

    /// <summary>An answer is needed, but none was given.</summary>
    public const string AnswerNeeded = "This question needs an answer.";

    /// <summary>What a yes-or-no question has beside its answers.</summary>
    public const string Neither = "none of these";

    /// <summary>Asks for one of a few.</summary>
    public const string Which = "Which?";

    /// <summary>Asks which of a few readings of a number is meant.</summary>
    public const string WhichIsMeant = "A comma may part decimals or thousands. Which is meant?";

    /// <summary>Between two readings of one number.</summary>
    public const string Or = " or ";

    /// <summary>What a point must be.</summary>
    public const string PointWanted = "Answer with three numbers, x, y and z, with commas between them: -50, 12, -24.";

    /// <summary>The lines before the first question.</summary>
    /// <param name="profile">Kind of profile.</param>
    public static IReadOnlyList<string> Lead(string profile) =>
    [
        $"Questions for the profile of a {profile}. Each says which unit a bare number has; you may write another: 1 1/8 in, 2.5\", 31.5mm.",
        $"Press Enter to take what is in brackets. Type {Back} to go back one question, {Back} 12 to go back to question 12. End the input (Ctrl-D) to go on another time.",
    ];

    /// <summary>The question with its number, the unit of a bare number, and what an empty answer means.</summary>
    /// <param name="question">The question.</param>
    /// <param name="number">Its number, from 1.</param>
    /// <param name="standard">Unit of a bare number in the profile, in which the default is; null where no number is wanted.</param>
    /// <param name="unit">Unit of a bare number here and now.</param>
    /// <param name="waiting">An answer given before, which an empty answer repeats; null where there is none.</param>
    public static string Prompt(Question question, int number, Unit? standard, Unit? unit, string? waiting)
    {
        var ask = string.Create(CultureInfo.InvariantCulture, $"{number}. {QuestionText.Ask(question)} {(unit is { Name.Length: > 0 } ? $"({unit.Name}) " : "")}");
        return question.Default switch
        {
            _ when waiting is not null => $"{ask}[{waiting}] ",
            null => ask,
            "" => $"{ask}[leave out] ",
            var usual => $"{ask}[{usual}{(standard is { Name.Length: > 0 } ? $" {standard.Name}" : "")}] ",
        };
    }

    /// <summary>The number of the question that an answer goes back to, or null where it does not go back.</summary>
    /// <param name="answer">What was typed.</param>
    /// <param name="number">Number of the question that is asked.</param>
    public static int? BackTo(string answer, int number) => answer == Back ? number - 1
        : answer.StartsWith(Back + " ", StringComparison.Ordinal) && int.TryParse(answer[Back.Length..], NumberStyles.AllowLeadingWhite, CultureInfo.InvariantCulture, out var to) ? to
        : null;

    /// <summary>There is no such question to go back to.</summary>
    /// <param name="number">Number of the question that is asked.</param>
    public static string NoWayBack(int number) => number <= 1
        ? "This is the first question."
        : string.Create(CultureInfo.InvariantCulture, $"Go back to a question from 1 to {number - 1}: {Back} {number - 1}.");

    /// <summary>How a direction may be given.</summary>
    /// <param name="isOfVehicle">Whether up and the bulkhead are those that were answered before.</param>
    public static string DirectionHint(bool isOfVehicle) => (isOfVehicle
            ? "In words: up or down as the engine sits, to the bulkhead or from the bulkhead as you answered it; and as you look at the quadrant right, left, towards you, away from you."
            : "In words, as you look at the quadrant: up, down, right, left, towards you, away from you.")
        + " Or two angles: in the quadrant's plane counter-clockwise from x, then out of it towards you: 90, 20. Or x, y, z.";

    /// <summary>The direction that a word or two angles come to.</summary>
    /// <param name="numbers">Its x, y and z.</param>
    public static string DirectionIs(string numbers) => $"That is {numbers}.";

    /// <summary>One hole stands out.</summary>
    /// <param name="hole">Its number.</param>
    /// <param name="number">Number of its question; null where it is the one that is asked.</param>
    public static string SeemsWrong(int hole, int? number = null) => string.Create(
        CultureInfo.InvariantCulture, $"Hole {hole} seems wrong: the others lie in one plane. {(number is { } to ? $"Type {Back} {to} to answer it again." : "Measure it again.")}");

    /// <summary>How to go back to an earlier question that a mistake is about.</summary>
    /// <param name="question">The question.</param>
    /// <param name="number">Its number.</param>
    public static string WayBack(Question question, int number) =>
        string.Create(CultureInfo.InvariantCulture, $"Type {Back} {number} to answer again: {QuestionText.Ask(question)}");

    /// <summary>How to go back to a point of a table of which something is wrong.</summary>
    /// <param name="number">Number of its first question.</param>
    public static string WayBackToTable(int number) =>
        string.Create(CultureInfo.InvariantCulture, $"The table begins at question {number}. Type {Back} and a question's number to answer that one again.");

    /// <summary>What a count must be.</summary>
    /// <param name="min">Minimum.</param>
    /// <param name="max">Maximum.</param>
    public static string CountWanted(int min, int max) => string.Create(CultureInfo.InvariantCulture, $"Answer with a whole number from {min} to {max}.");

    /// <summary>The words or readings to choose from, each with its number.</summary>
    public static string Choices(IEnumerable<string> choices) => string.Join("   ", choices.Select((w, i) => string.Create(CultureInfo.InvariantCulture, $"{i + 1}: {w}")));

    /// <summary>A question that is answered with yes or no.</summary>
    public static string YesOrNo(string question) => $"{question} (yes or no)";

    /// <summary>What an answer to such a question means; null where it is neither.</summary>
    public static bool? IsYes(string answer) => answer.ToUpperInvariant() switch
    {
        "YES" or "Y" => true,
        "NO" or "N" => false,
        _ => null,
    };

    /// <summary>Asks whether a number was meant so.</summary>
    /// <param name="written">The number with its unit.</param>
    public static string IsMeant(string written) => $"{written}?";

    /// <summary>Asks once whether bare numbers are meant in the unit that was said before.</summary>
    /// <param name="written">The number with that unit.</param>
    /// <param name="said">The unit.</param>
    /// <param name="usual">The unit of a bare number until now.</param>
    public static string FromHereOn(string written, Unit said, Unit usual) => $"{written}, and {InWords(said)} from here on? No means {InWords(usual)}, now and from here on.";

    /// <summary>Says that a draft was taken up.</summary>
    /// <param name="count">How many answers it has.</param>
    public static string Recalled(int count) => string.Create(CultureInfo.InvariantCulture, $"Going on from the draft: {count} {(count == 1 ? "answer" : "answers")}.");

    /// <summary>Asks whether to go on from a draft.</summary>
    /// <param name="file">The draft.</param>
    /// <param name="count">How many answers it has.</param>
    public static string GoOn(string file, int count) => string.Create(CultureInfo.InvariantCulture, $"{file} has {count} {(count == 1 ? "answer" : "answers")} of an interview that ended early. Go on from it?");

    /// <summary>Says that a file with the name of a draft is none for this interview.</summary>
    public static string NoDraft(string file, string profile) => $"{file} is no draft of a {profile}; it is left as it is.";

    /// <summary>What becomes of the answers of an interview that ends early.</summary>
    /// <param name="file">The draft; null where nothing was answered.</param>
    /// <param name="again">What to type to go on.</param>
    public static string Left(string? file, string again) =>
        file is null ? "nothing was written." : $"the profile was not written. What was answered is kept in {file}. Go on with: {again}";

    /// <summary>Says that an answer of the draft no longer fits.</summary>
    /// <param name="question">The question.</param>
    /// <param name="typed">The answer.</param>
    public static string NoLongerFits(Question question, string typed) => $"{QuestionText.Ask(question)} The draft's answer does not fit: {typed}";

    private static string InWords(Unit unit) => unit.Name switch
    {
        "in" => "inches",
        "mm" => "millimetres",
        "deg" => "degrees",
        var name => name,
    };

    /// <summary>What to answer where one of a few words is wanted.</summary>
    public static string WordWanted(IEnumerable<string> words) => $"Answer with one of these, or its number: {string.Join(", ", words)}.";

    /// <summary>What to answer where one side of a ± is missing.</summary>
    /// <param name="sign">The sign as typed.</param>
    public static string BothSidesWanted(string sign) => $"Give a number on both sides of {sign}: 31.5 {sign} 0.2.";

    /// <summary>What is wrong with an answer, in two lines.</summary>
    public static IReadOnlyList<string> Wrong(ProfileError error) =>
    [
        $"{error.Key}: read {ProfileErrorText.Read(error)}; allowed: {ProfileErrorText.Allowed(error)}.",
        ProfileErrorText.Advice(error),
    ];
}
