using BracketGen.Profiles.Family;
using BracketGen.Profiles.Interview;
using BracketGen.Words.Interview;
using BracketGen.Words.Report;

namespace BracketGen.Profiles.Tests;

/// <summary>The questions and their sentences.</summary>
public class InterviewTests
{
    [Fact]
    public void EveryQuestionIsAskedInWordsOfItsOwn()
    {
        var questions = Enum.GetValues<QuestionId>().Select(id => new Question(id, "", "", AnswerForm.Text) { Item = 3 }).ToArray();
        Assert.Equal(questions.Length, questions.Select(QuestionText.Ask).Distinct().Count());
        Assert.All(questions, q => Assert.EndsWith("?", QuestionText.Ask(q), StringComparison.Ordinal));
        Assert.All(questions, q => Assert.EndsWith(".", QuestionText.Explain(q), StringComparison.Ordinal));
    }

    // Every way through: each question there is comes up, and none twice in one profile.
    [Fact]
    public void EveryQuestionComesUp()
    {
        var asked = new HashSet<QuestionId>();
        foreach (var (questions, word) in new (Func<Answers, IEnumerable<Question>>, int)[]
        {
            (VehicleQuestions.After, 0), (VehicleQuestions.After, 1), (VehicleQuestions.After, 2), (VehicleQuestions.After, 3), (VehicleQuestions.After, 4), (VehicleQuestions.After, 5), (ThrottleBodyQuestions.After, 0), (ThrottleBodyQuestions.After, 1),
            (ThrottleBodyQuestions.After, 2),
        })
        {
            var answers = new Answers();
            while (questions(answers).FirstOrDefault(q => !answers.Has(q)) is { } question)
            {
                asked.Add(question.Id);
                answers.Give(question, question.Words.Length > 0 ? question.Words[Math.Min(word, question.Words.Length - 1)] : question.Form == AnswerForm.Count ? "2" : "1");
            }

            Assert.Equal(questions(answers).Count(), questions(answers).Select(q => q.Name).Distinct().Count());
        }

        Assert.Equal(Enum.GetValues<QuestionId>().Length, asked.Count);
    }
}
