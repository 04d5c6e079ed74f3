using BracketGen.Profiles;
using BracketGen.Profiles.Forms;
using BracketGen.Profiles.Interview;

namespace BracketGen.Cli.Interview;

/// <summary>Asks question by question, and holds each answer against the profile's own rules at once.</summary>
/// <param name="profile">Kind of profile: «vehicle», «throttle body».</param>
/// <param name="schema">Its schema's file.</param>
/// <param name="questions">All questions, as far as the answers given so far say which there are.</param>
/// <param name="read">Every mistake in a profile's text.</param>
internal sealed class Interviewer(
    string profile, string schema, Func<Answers, IEnumerable<Question>> questions, Func<string, IReadOnlyList<ProfileError>> read)
{
    private const string Back = "back";

    /// <summary>The profile's text, or null where the input ended before the last answer.</summary>
    public string? Run(TextReader input, TextWriter output)
    {
        output.WriteLine($"Questions for the profile of a {profile}. Bare numbers are in mm, degrees, N, N m and V; a unit may follow: 1.125 in.");
        output.WriteLine($"Empty takes what stands in brackets; «{Back}» goes one question back; the end of input (Ctrl-D) leaves without writing.");
        var answers = new Answers();
        while (questions(answers).FirstOrDefault(q => !answers.Has(q)) is { } question)
        {
            Ask(output, question);
            if (input.ReadLine()?.Trim() is not { } answer)
            {
                return null;
            }

            if (answer == Back)
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
        output.WriteLine($"  {question.Explain}");
        if (question.Words.Length > 1)
        {
            output.WriteLine($"  {string.Join("   ", question.Words.Select((w, i) => $"{i + 1}: {w}"))}");
        }

        output.Write(question.Default switch
        {
            null => $"{question.Ask} ",
            "" => $"{question.Ask} [leave out] ",
            var usual => $"{question.Ask} [{usual}] ",
        });
        output.Flush();
    }

    private void Take(TextWriter output, Answers answers, Question question, string answer)
    {
        if (answer.Length == 0 && question.Default is null)
        {
            output.WriteLine("  An answer is needed here.");
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
        var mistakes = read(answers.Compose(profile, schema)).Where(e => e.Read != "nothing").ToList();
        if (mistakes.Count > 0)
        {
            answers.TakeBack();
            foreach (var mistake in mistakes)
            {
                output.WriteLine($"  {mistake.Key}: {mistake.Read} will not do; allowed: {mistake.Allowed}.");
                output.WriteLine($"  {mistake.Advice}");
            }
        }
    }
}
