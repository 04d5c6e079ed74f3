using System.Globalization;
using System.Text;

namespace BracketGen.Profiles.Interview;

/// <summary>The answers so far, in the order in which they were given.</summary>
internal sealed class Answers
{
    /// <summary>Section of answers that only steer the questions.</summary>
    public const string Unwritten = "-";

    private readonly List<(Question Question, string? Toml)> _given = [];

    public int Count => _given.Count;

    public bool Has(Question question) => _given.Any(g => g.Question.Name == question.Name);

    /// <summary>The word or number answered, without quotes; null where there is none yet, or the key is left out.</summary>
    public string? Of(string section, string key) =>
        _given.FirstOrDefault(g => g.Question.Section == section && g.Question.Key == key).Toml?.Trim('"');

    public int CountOf(string section, string key) =>
        int.TryParse(Of(section, key), NumberStyles.None, CultureInfo.InvariantCulture, out var count) ? count : 0;

    public void Give(Question question, string? toml) => _given.Add((question, toml));

    public void TakeBack() => _given.RemoveAt(_given.Count - 1);

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
                text.Append('\n').Append(section.Split(' ')[0] is ['[', '[', ..] ? section[..(section.IndexOf(']') + 2)] : section).Append('\n');
            }
            else
            {
                text.Append("# Bare numbers are in mm, degrees, N, N m and V.\n");
            }

            foreach (var (question, toml) in written.Where(g => g.Question.Section == section))
            {
                text.Append(question.Key).Append(" = ").Append(toml).Append('\n');
            }
        }

        return text.ToString();
    }
}
