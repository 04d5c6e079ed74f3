using System.Globalization;

namespace BracketGen.Bench;

/// <summary>Named options behind a command: each a name and a value.</summary>
internal sealed class Options
{
    private readonly Dictionary<string, string> _values = [];

    /// <exception cref="ArgumentException">An option has no value, or is none of those allowed.</exception>
    public Options(string[] written, params string[] allowed)
    {
        foreach (var pair in written.Chunk(2))
        {
            if (pair.Length < 2 || !allowed.Contains(pair[0]))
            {
                throw new ArgumentException($"{string.Join(' ', pair)}: write one of {string.Join(", ", allowed)}, then its value.");
            }

            _values[pair[0]] = pair[1];
        }
    }

    /// <summary>A text; null where the option is not given.</summary>
    public string? Text(string name) => _values.GetValueOrDefault(name);

    /// <summary>A whole number.</summary>
    /// <exception cref="FormatException">It is none.</exception>
    public int Number(string name, int otherwise) => _values.TryGetValue(name, out var text) ? int.Parse(text, CultureInfo.InvariantCulture) : otherwise;
}
