using System.Globalization;
using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Interview;
using BracketGen.Words.Interview;

namespace BracketGen.Cli.Interview;

/// <summary>Asks question by question, and holds each answer against the profile's own rules at once.</summary>
internal sealed class Interviewer
{
    private readonly ProfileInterview _interview;
    private readonly Conversation _talk;
    private readonly UnitMemory _units = new();
    private readonly Answers _answers = new();
    private readonly AnswerReader _reader;
    private readonly AnswerReader _defaults;
    private readonly HashSet<string> _recalled = [];
    private Draft? _draft;

    public Interviewer(ProfileInterview interview, Conversation talk)
    {
        (_interview, _talk) = (interview, talk);
        _reader = new(new(_units, _talk));

        // A default says nothing of the units that the person writes in.
        _defaults = new(new(new(), _talk));
    }

    /// <summary>The profile's text, or null where the input ended before the last answer.</summary>
    /// <param name="from">Answers given before.</param>
    /// <param name="keep">Takes what was answered so far, after each answer.</param>
    public string? Run(Draft? from = null, Action<Draft>? keep = null)
    {
        foreach (var line in InterviewText.Lead(_interview.Kind.Word))
        {
            _talk.Say(line);
        }

        if ((_draft = from) is not null)
        {
            from!.Recall(_units);
            _talk.Say(InterviewText.Recalled(from.Answers.Length));
        }

        while (Next() is var (question, number, all) && question is not null)
        {
            if (Recall(question))
            {
                continue;
            }

            if (Ask(question, number) is not { } answer)
            {
                return null;
            }

            if (InterviewText.BackTo(answer, number) is { } back)
            {
                GoBack(all, number, back);
            }
            else if (Take(question, answer))
            {
                keep?.Invoke(Draft.Of(_interview, _answers, _units, Unused()));
            }
        }

        return _interview.Compose(_answers);
    }

    // The first question without an answer, with its number from 1.
    private (Question? Question, int Number, IReadOnlyList<Question> All) Next()
    {
        var all = _interview.Questions(_answers).ToList();
        var at = all.FindIndex(q => !_answers.Has(q));
        return (at < 0 ? null : all[at], at + 1, all);
    }

    private string? Ask(Question question, int number)
    {
        _talk.Say();
        _talk.Say(QuestionText.Explain(question));
        if (question.Words.Length > 1)
        {
            _talk.Say(InterviewText.Choices(question.Words));
        }

        var standard = _interview.UnitOf(question);
        return _talk.Ask(InterviewText.Prompt(question, number, standard, standard is null ? null : _units.Of(standard)));
    }

    private void GoBack(IReadOnlyList<Question> all, int number, int back)
    {
        if (back < 1 || back >= number)
        {
            _talk.Say(InterviewText.NoWayBack(number));
            return;
        }

        _answers.TakeBack(all[back - 1]);
    }

    // Whether the answer was taken.
    private bool Take(Question question, string answer)
    {
        if (answer.Length == 0 && question.Default is null)
        {
            _talk.Say(InterviewText.AnswerNeeded);
            return false;
        }

        var given = new GivenAnswer(null, "", null);
        if (answer.Length > 0 || question.Default is not "")
        {
            given = answer.Length == 0 ? OfDefault(question) : _reader.Of(question, answer, _interview.UnitOf(question));
            if (given.Toml is null)
            {
                if (given.Problem is { } problem)
                {
                    _talk.Say(problem);
                }

                return false;
            }
        }

        var mistakes = Try(question, given);
        foreach (var mistake in mistakes)
        {
            foreach (var line in InterviewText.Wrong(mistake))
            {
                _talk.Say(line);
            }

            SayWayBack(question, mistake);
        }

        return mistakes.Count == 0;
    }

    // Which earlier question to go back to, where the mistake may lie there.
    private void SayWayBack(Question asked, ProfileError mistake)
    {
        if (_interview.QuestionOf(mistake, _answers) is { } earlier && earlier.Name != asked.Name)
        {
            var all = _interview.Questions(_answers).ToList();
            var number = all.FindIndex(q => q.Name == earlier.Name) + 1;
            _talk.Say(earlier.Path.StartsWith(mistake.Key + "[", StringComparison.Ordinal) ? InterviewText.WayBackToTable(number) : InterviewText.WayBack(earlier, number));
        }
    }

    // A default is in the profile's own units, whatever bare numbers are meant in.
    private GivenAnswer OfDefault(Question question)
    {
        var unit = _interview.UnitOf(question)?.Name ?? "";
        var given = _defaults.Of(question, unit.Length == 0 ? question.Default! : $"{question.Default} {unit}", _interview.UnitOf(question));
        return given with { Typed = "" };
    }

    // Takes the answer where the profile's reader finds nothing wrong. What is still missing is no mistake yet; whatever else is wrong came with this answer.
    private IReadOnlyList<ProfileError> Try(Question question, GivenAnswer given)
    {
        Answer[] before = [.. _answers.Given];
        _answers.Give(question, given.Toml, given.Typed);
        _answers.Settle(_interview.Questions);
        var mistakes = _interview.MistakesIn(_answers);
        if (mistakes.Count > 0)
        {
            _answers.Restore(before);
        }

        return mistakes;
    }

    // Answers the question from the draft, once; an answer that no longer fits is asked for again.
    private bool Recall(Question question)
    {
        if (_draft?.TypedFor(question) is not { } typed || !_recalled.Add(question.Name))
        {
            return false;
        }

        var isTaken = (typed.Length > 0 || question.Default is not null) && Take(question, typed);
        if (!isTaken)
        {
            _talk.Say(InterviewText.NoLongerFits(question, typed));
        }

        return isTaken;
    }

    // What the draft has for questions that are still to come.
    private IEnumerable<(string Question, string Typed)> Unused() =>
        _draft?.Answers.Where(a => !_recalled.Any(r => r.Trim() == a.Question)) ?? [];
}
