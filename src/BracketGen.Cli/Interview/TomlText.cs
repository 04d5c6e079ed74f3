using System.Text;

namespace BracketGen.Cli.Interview;

/// <summary>Text as TOML writes it.</summary>
internal static class TomlText
{
    public static string Quoted(string text)
    {
        var quoted = new StringBuilder("\"");
        foreach (var c in text)
        {
            quoted.Append(c switch
            {
                '"' => "\\\"",
                '\\' => "\\\\",
                _ when char.IsControl(c) => $"\\u{(int)c:X4}",
                _ => c.ToString(),
            });
        }

        return quoted.Append('"').ToString();
    }
}
