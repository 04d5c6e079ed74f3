using System.Globalization;
using System.Text;

namespace BracketGen.Profiles.Interview;

/// <summary>The answers so far.</summary>
internal sealed class Answers
{
    /// <summary>Section of answers that only steer the questions.</summary>
    public const string Unwritten = "-";

    private readonly List<Answer> _given = [];

    /// <summary>Every answer: its question, its value in TOML, and what was typed.</summary>
    public IReadOnlyList<Answer> Given => _given;

    public bool Has(Question question) => _given.Any(g => g.Question.Name == question.Name);

    /// <summary>The word or number answered, without quotes; null where there is none yet, or the key is left out.</summary>
    public string? Of(string section, string key) =>
        _given.FirstOrDefault(g => g.Question.Section == section && g.Question.Key == key)?.Toml is not { } toml ? null
            : toml is ['"', .. var text, '"'] ? text.Replace("\\\"", "\"", StringComparison.Ordinal).Replace("\\\\", "\\", StringComparison.Ordinal)
            : toml;

    public int CountOf(string section, string key) =>
        int.TryParse(Of(section, key), NumberStyles.None, CultureInfo.InvariantCulture, out var count) ? count : 0;

    public void Give(Question question, string? toml, string typed = "") => _given.Add(new(question, toml, typed));

    public void TakeBack(Question question) => _given.RemoveAll(g => g.Question.Name == question.Name);

    /// <summary>Puts the answers in the order of the questions, and drops those to questions that are no longer asked.</summary>
    /// <param name="questions">All questions, as far as the answers given so far say which there are.</param>
    public void Settle(Func<Answers, IEnumerable<Question>> questions)
    {
        int before;
        do
        {
            before = _given.Count;
            var asked = questions(this).Select((q, i) => (q.Name, i)).ToDictionary(q => q.Name, q => q.i);
            var kept = _given.Where(g => asked.ContainsKey(g.Question.Name)).OrderBy(g => asked[g.Question.Name]).ToList();
            Restore(kept);
        }
        while (_given.Count < before);
    }

    /// <summary>Puts the answers back as they were.</summary>
    public void Restore(IReadOnlyList<Answer> given)
    {
        Answer[] before = [.. given];
        _given.Clear();
        _given.AddRange(before);
    }

    /// <summary>The profile's text.</summary>
    public string Compose(string profile, string schema)
    {
        var text = new StringBuilder($"#:schema ../schemas/{schema}\nprofile = \"{profile}\"\n");
        var written = _given.Where(g => g.Toml is not null && g.Question.Form != AnswerForm.Count && g.Question.Section != Unwritten).ToList();
        foreach (var section in written.Select(g => g.Question.Section).Distinct().OrderBy(s => s.Length == 0 ? 0 : 1).ToList())
        {
            if (section.Length > 0)
            {
                // The number behind a repeated header only tells the sections apart.
                text.Append('\n').Append(section[..(section.LastIndexOf(']') + 1)]).Append('\n');
            }
            else
            {
                text.Append(profile == ProfileKind.Shop.Word ? "# Bare numbers are in mm, degrees, N, N/mm, MPa, GPa and kg/m3.\n" : "# Bare numbers are in mm, degrees, N, N m and V.\n");
            }

            foreach (var (question, toml, _) in written.Where(g => g.Question.Section == section))
            {
                text.Append(question.Before).Append(question.Key).Append(" = ").Append(toml).Append('\n');
            }
        }

        return text.ToString();
    }
}

/// <summary>One answer.</summary>
/// <param name="Question">To what.</param>
/// <param name="Toml">The value in TOML; null where the key is left out.</param>
/// <param name="Typed">What was typed, so that typed again it needs no further question; empty for the default.</param>
internal sealed record Answer(Question Question, string? Toml, string Typed);
