using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Interview;
using BracketGen.Words.Profiles;

namespace BracketGen.Words.Interview;

/// <summary>What the interview in the terminal says beside its questions.</summary>
public static class InterviewText
{
    /// <summary>What is typed to go back one question.</summary>
    public const string Back = "back";

    /// <summary>An answer is needed, but none was given.</summary>
    public const string AnswerNeeded = "This question needs an answer.";

    /// <summary>What a count must be.</summary>
    public const string CountWanted = "Answer with a whole number from 0 to 12.";

    /// <summary>What a point must be.</summary>
    public const string PointWanted = "Answer with three numbers, x, y and z, with commas between them: -50, 12, -24.";

    /// <summary>The lines before the first question.</summary>
    /// <param name="profile">Kind of profile.</param>
    public static IReadOnlyList<string> Lead(string profile) =>
    [
        $"Questions for the profile of a {profile}. Bare numbers are in mm, degrees, N, N m and V; you may add a unit: 1.125 in.",
        $"Press Enter to take what is in brackets. Type {Back} to go back one question. End the input (Ctrl-D) to leave without writing a file.",
    ];

    /// <summary>The question with what an empty answer means.</summary>
    public static string Prompt(Question question) => question.Default switch
    {
        null => $"{QuestionText.Ask(question)} ",
        "" => $"{QuestionText.Ask(question)} [leave out] ",
        var usual => $"{QuestionText.Ask(question)} [{usual}] ",
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
