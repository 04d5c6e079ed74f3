using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Interview;
using BracketGen.Words.Interview;

namespace BracketGen.Cli.Interview;

/// <summary>Asks question by question, and holds each answer against the profile's own rules at once.</summary>
/// <param name="profile">Kind of profile: vehicle, throttle body.</param>
/// <param name="schema">Its schema's file.</param>
/// <param name="questions">All questions, as far as the answers given so far say which there are.</param>
/// <param name="read">Every mistake in a profile's text.</param>
internal sealed class Interviewer(
    string profile, string schema, Func<Answers, IEnumerable<Question>> questions, Func<string, IReadOnlyList<ProfileError>> read)
{
    /// <summary>The profile's text, or null where the input ended before the last answer.</summary>
    public string? Run(TextReader input, TextWriter output)
    {
        foreach (var line in InterviewText.Lead(profile))
        {
            output.WriteLine(line);
        }

        var answers = new Answers();
        while (questions(answers).FirstOrDefault(q => !answers.Has(q)) is { } question)
        {
            Ask(output, question);
            if (input.ReadLine()?.Trim() is not { } answer)
            {
                return null;
            }

            if (answer == InterviewText.Back)
            {
                if (answers.Count > 0)
                {
                    answers.TakeBack();
                }

                continue;
            }

            Take(output, answers, question, answer);
        }

        return answers.Compose(profile, schema);
    }

    private static void Ask(TextWriter output, Question question)
    {
        output.WriteLine();
        output.WriteLine($"  {QuestionText.Explain(question)}");
        if (question.Words.Length > 1)
        {
            output.WriteLine($"  {string.Join("   ", question.Words.Select((w, i) => $"{i + 1}: {w}"))}");
        }

        output.Write(InterviewText.Prompt(question));
        output.Flush();
    }

    private void Take(TextWriter output, Answers answers, Question question, string answer)
    {
        if (answer.Length == 0 && question.Default is null)
        {
            output.WriteLine($"  {InterviewText.AnswerNeeded}");
            return;
        }

        if (answer.Length == 0 && question.Default is "")
        {
            answers.Give(question, null);
            return;
        }

        var (toml, problem) = AnswerText.Of(question, answer.Length == 0 ? question.Default! : answer);
        if (toml is null)
        {
            output.WriteLine($"  {problem}");
            return;
        }

        answers.Give(question, toml);

        // What is still missing is no mistake yet; whatever else is wrong came with this answer.
        var mistakes = read(answers.Compose(profile, schema)).Where(e => !e.IsMissing).ToList();
        if (mistakes.Count > 0)
        {
            answers.TakeBack();
            foreach (var mistake in mistakes)
            {
                foreach (var line in InterviewText.Wrong(mistake))
                {
                    output.WriteLine($"  {line}");
                }
            }
        }
    }
}
