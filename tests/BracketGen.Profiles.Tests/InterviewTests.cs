using BracketGen.Profiles.Interview;
using BracketGen.TestSupport;
using BracketGen.Units;
using BracketGen.Words.Interview;

namespace BracketGen.Profiles.Tests;

/// <summary>The questions and their sentences.</summary>
public class InterviewTests
{
    // A job is asked about with a vehicle whose cables are two, and a body with a groove for one.
    private static readonly ProfileInterview[] Interviews =
    [
        .. ProfileInterview.Alone,
        ProfileInterview.Job(
            RepositoryRoot.PathOf("profiles", "jobs", "new.toml"), new DiskFileSource(),
            new(["../vehicles/dunlin-tourer.toml"], ["../throttle-bodies/alder-58-twin.toml"], ["../shops/saltmarsh-fabrication.toml"])),
    ];

    [Fact]
    public void EveryQuestionIsAskedInWordsOfItsOwn()
    {
        var questions = Enum.GetValues<QuestionId>().Select(id => new Question(id, "", "", AnswerForm.Text) { Item = 3 }).ToArray();
        Assert.Equal(questions.Length, questions.Select(QuestionText.Ask).Distinct().Count());
        Assert.All(questions, q => Assert.EndsWith("?", QuestionText.Ask(q), StringComparison.Ordinal));
        Assert.All(questions, q => Assert.EndsWith(".", QuestionText.Explain(q), StringComparison.Ordinal));
    }

    // The units of the questions are those of the profile's keys: a furlong is answered with them.
    [Fact]
    public void Every_question_for_a_number_knows_its_unit()
    {
        foreach (var (interview, word) in Interviews.SelectMany(i => Enumerable.Range(0, 8).Select(w => (i, w))))
        {
            var answered = Walks.Answered(interview, word);
            foreach (var question in Walks.Once(interview, word).Where(q => q.Section != Answers.Unwritten && q.Form is AnswerForm.Quantity or AnswerForm.Measured or AnswerForm.Point or AnswerForm.List or AnswerForm.Direction))
            {
                var unit = interview.UnitOf(question);
                Assert.True(unit is not null, question.Name);
                var answers = new Answers();
                answers.Restore([.. answered.Given.Select(g => g.Question.Name != question.Name ? g
                    : g with { Toml = question.Form is AnswerForm.Point or AnswerForm.List or AnswerForm.Direction ? "[\"1 furlong\", 1, 1]" : "\"1 furlong\"" })]);
                Assert.True(
                    interview.Read(interview.Compose(answers)).Any(e => e.Problem is Errors.UnitUnknown u ? u.Allowed.Unit == unit : unit == UnitTable.One && e.Problem is Errors.ValueWrong),
                    question.Name);
            }
        }
    }

    // Every way through: each question there is comes up, and none twice in one profile.
    [Fact]
    public void EveryQuestionComesUp()
    {
        Assert.Equal(Enum.GetValues<QuestionId>(), Interviews.SelectMany(Walks.Of).Select(q => q.Id).Distinct().Order());
        Assert.All(Interviews, i => Assert.All(Walks.Once(i), q => Assert.Single(Walks.Once(i), o => o.Name == q.Name)));
    }
}
