using BracketGen.Profiles.Interview;

namespace BracketGen.Profiles.Tests;

/// <summary>Ways through the interviews.</summary>
internal static class Walks
{
    /// <summary>Every question that comes up whichever word is answered.</summary>
    public static IEnumerable<Question> Of(ProfileInterview interview) => Enumerable.Range(0, 8).SelectMany(word => Once(interview, word));

    /// <summary>The questions of one way.</summary>
    /// <param name="interview">The interview.</param>
    /// <param name="word">Which word is answered, from 0; the last where there are fewer.</param>
    public static IReadOnlyList<Question> Once(ProfileInterview interview, int word = 0) => [.. interview.Questions(Answered(interview, word))];

    /// <summary>The answers of one way: the word, 2 of everything, and 1 for any other number.</summary>
    /// <param name="interview">The interview.</param>
    /// <param name="word">Which word is answered, from 0; the last where there are fewer.</param>
    public static Answers Answered(ProfileInterview interview, int word)
    {
        var answers = new Answers();
        while (interview.Questions(answers).FirstOrDefault(q => !answers.Has(q)) is { } question)
        {
            answers.Give(question, question.Form switch
            {
                AnswerForm.Count => "2",
                AnswerForm.Point or AnswerForm.List or AnswerForm.Direction => "[1, 1, 1]",
                _ when question.TakesOther && word == 7 => "\"other\"",
                _ when question.Words.Length > 0 => $"\"{question.Words[question.Id == QuestionId.PunchKind ? word % 2 : Math.Min(word, question.Words.Length - 1)]}\"",
                AnswerForm.Text => "\"1\"",
                _ => "1",
            });
        }

        return answers;
    }
}
