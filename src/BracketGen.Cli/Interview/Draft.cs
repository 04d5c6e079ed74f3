using System.Collections.Immutable;
using System.Text;
using BracketGen.Profiles.Interview;
using BracketGen.Units;

namespace BracketGen.Cli.Interview;

/// <summary>Answers kept to go on with another day: one a line, the name of the question before it.</summary>
/// <param name="Kind">Word of the profile that is begun.</param>
/// <param name="Units">Unit that a bare number would have in the profile, and the name of the one that it is meant in.</param>
/// <param name="Answers">Name of each question, and what was typed.</param>
internal sealed record Draft(string Kind, ImmutableArray<(string Standard, string Unit)> Units, ImmutableArray<(string Question, string Typed)> Answers)
{
    /// <summary>Maximum size (bytes): no interview is half as long.</summary>
    public const int MaxBytes = 200_000;

    private const string Head = "# Answers of bracketgen begin, draft of: ", UnitMark = "unit of ", Between = ": ";

    /// <summary>What was answered so far.</summary>
    /// <param name="interview">What is begun.</param>
    /// <param name="answers">The answers.</param>
    /// <param name="units">In which units bare numbers are meant.</param>
    /// <param name="unused">Answers to questions that are still to come.</param>
    public static Draft Of(ProfileInterview interview, Answers answers, UnitMemory units, IEnumerable<(string Question, string Typed)> unused) => new(
        interview.Kind.Word,
        [.. units.Kept.Select(k => (k.Standard, k.Unit.Name))],
        [.. answers.Given.Select(g => (g.Question.Name.Trim(), g.Typed)), .. unused]);

    /// <summary>The file's text.</summary>
    public string Compose()
    {
        var text = new StringBuilder(Head).Append(Kind).Append('\n');
        foreach (var (standard, unit) in Units)
        {
            text.Append(UnitMark).Append(standard).Append(Between).Append(unit).Append('\n');
        }

        foreach (var (question, typed) in Answers)
        {
            text.Append(question).Append(Between).Append(typed).Append('\n');
        }

        return text.ToString();
    }

    /// <summary>Reads a file's text; null where it is no draft. Lines that say nothing are passed over.</summary>
    public static Draft? Parse(string text)
    {
        var lines = text.Split('\n').Select(l => l.TrimEnd('\r')).ToArray();
        if (!lines[0].StartsWith(Head, StringComparison.Ordinal))
        {
            return null;
        }

        var pairs = lines.Skip(1).Select(l => (Line: l, At: l.IndexOf(Between[..1], StringComparison.Ordinal))).Where(l => l.At > 0)
            .Select(l => (Name: l.Line[..l.At].Trim(), Value: l.Line[(l.At + 1)..].Trim())).ToArray();
        return new(
            lines[0][Head.Length..].Trim(),
            [.. pairs.Where(p => p.Name.StartsWith(UnitMark, StringComparison.Ordinal)).Select(p => (p.Name[UnitMark.Length..], p.Value))],
            [.. pairs.Where(p => !p.Name.StartsWith(UnitMark, StringComparison.Ordinal))]);
    }

    /// <summary>What was typed in answer to a question; null where it is not in the draft.</summary>
    public string? TypedFor(Question question)
    {
        foreach (var (name, typed) in Answers)
        {
            if (name == question.Name.Trim())
            {
                return typed;
            }
        }

        return null;
    }

    /// <summary>Takes up the units in which bare numbers were meant.</summary>
    public void Recall(UnitMemory units)
    {
        foreach (var (standard, unit) in Units)
        {
            if (UnitTable.Find(standard) is { } of && UnitTable.Find(unit) is { } kept && kept.Kind == of.Kind)
            {
                units.Settle(of, kept, of);
            }
        }
    }
}
