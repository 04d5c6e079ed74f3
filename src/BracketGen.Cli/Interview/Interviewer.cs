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
    private readonly Dictionary<string, string> _waiting = [];
    private Draft? _draft;

    public Interviewer(ProfileInterview interview, Conversation talk)
    {
        (_interview, _talk) = (interview, talk);
        _reader = ReaderWith(_units);

        // A default says nothing of the units that the person writes in.
        _defaults = ReaderWith(new());
    }

    private AnswerReader ReaderWith(UnitMemory units)
    {
        var numbers = new NumberReader(units, _talk);
        return new(numbers, new(numbers, _talk));
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
        if (question.TakesPlusMinus)
        {
            _talk.Say(InterviewText.PlusMinusHint);
        }

        if (question.Form == AnswerForm.Direction)
        {
            _talk.Say(InterviewText.DirectionHint(question.Id is not (QuestionId.MountNormal or QuestionId.Up or QuestionId.BulkheadWay)));
        }

        if (question.Words.Length > 1)
        {
            _talk.Say(InterviewText.Choices(question.Words));
        }

        var standard = _interview.UnitOf(question);
        return _talk.Ask(InterviewText.Prompt(question, number, standard, standard is null ? null : _units.Of(standard), _waiting.GetValueOrDefault(question.Name)));
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
    private bool Take(Question question, string typed)
    {
        // An answer that waits for an earlier one to be put right is given again with Enter.
        var answer = typed.Length == 0 && _waiting.TryGetValue(question.Name, out var waiting) ? waiting : typed;
        if (answer.Length == 0 && question.Default is null)
        {
            _talk.Say(InterviewText.AnswerNeeded);
            return false;
        }

        var given = new GivenAnswer(null, "", null);
        if (answer.Length > 0 || question.Default is not "")
        {
            given = answer.Length == 0 ? OfDefault(question) : _reader.Of(question, answer, _interview.UnitOf(question), _answers.Of);
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
        _waiting.Remove(question.Name);
        if (mistakes.Count > 0)
        {
            Tell(question, given, mistakes);
        }

        return mistakes.Count == 0;
    }

    // What is wrong, and which earlier question to go back to where the mistake may lie there.
    private void Tell(Question asked, GivenAnswer given, IReadOnlyList<ProfileError> mistakes)
    {
        foreach (var line in mistakes.SelectMany(InterviewText.Wrong))
        {
            _talk.Say(line);
        }

        var all = _interview.Questions(_answers).ToList();
        int NumberOf(Question question) => all.FindIndex(q => q.Name == question.Name) + 1;
        var isMisfit = mistakes.Any(m => m.Problem is HoleOffFace);
        if (isMisfit && FaceMisfit.Hole(mistakes, _answers.CountOf("[mount]", "holes")) is { } hole)
        {
            var odd = all.First(q => q.Id == QuestionId.HoleCentre && q.Item == hole);
            _talk.Say(odd.Name == asked.Name ? InterviewText.SeemsWrong(hole) : InterviewText.SeemsWrong(hole, NumberOf(odd)));
        }
        else
        {
            var earlier = mistakes.Select(m => (Mistake: m, Question: _interview.QuestionOf(m, _answers))).Where(e => e.Question is { } q && q.Name != asked.Name).DistinctBy(e => e.Question).ToList();
            foreach (var (mistake, question) in earlier)
            {
                _talk.Say(question!.Path.StartsWith(mistake.Key + "[", StringComparison.Ordinal) ? InterviewText.WayBackToTable(NumberOf(question)) : InterviewText.WayBack(question, NumberOf(question)));
            }

            // Without one hole that stands out, the normal may be wrong as well.
            foreach (var other in isMisfit ? all.Where(q => (q.Id == QuestionId.MountNormal || q is { Id: QuestionId.HoleCentre, Item: 1 }) && q.Name != asked.Name) : [])
            {
                _talk.Say(InterviewText.WayBack(other, NumberOf(other)));
            }
        }

        if (given.Typed.Length > 0 && mistakes.Any(m => m.Problem is HoleOffFace or GrooveNotConvex || _interview.QuestionOf(m, _answers) is { } q && q.Name != asked.Name))
        {
            _waiting[asked.Name] = given.Typed;
        }
    }

    // A default is in the profile's own units, whatever bare numbers are meant in.
    private GivenAnswer OfDefault(Question question)
    {
        var unit = _interview.UnitOf(question)?.Name ?? "";
        var given = _defaults.Of(question, unit.Length == 0 ? question.Default! : $"{question.Default} {unit}", _interview.UnitOf(question), _answers.Of);
        return given with { Typed = "" };
    }

    // Takes the answer where the profile's reader finds nothing wrong. What is still missing is no mistake yet; whatever else is wrong came with this answer.
    private IReadOnlyList<ProfileError> Try(Question question, GivenAnswer given)
    {
        Answer[] before = [.. _answers.Given];
        _answers.Give(question, given.Toml, given.Typed);

        // What was said as "up" or "to the bulkhead" is asked again when that is another direction now.
        foreach (var other in before.Where(a => a.Question.Form == AnswerForm.Direction
            && (question.Id == QuestionId.Up && DirectionWords.NeedsUp(a.Typed) || question.Id == QuestionId.BulkheadWay && DirectionWords.NeedsBulkhead(a.Typed))))
        {
            _answers.TakeBack(other.Question);
        }

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
