using System.Text;
using BracketGen.Drawing.ShopDrawing;
using BracketGen.Line.Combinations;
using BracketGen.Words.Checks;

namespace BracketGen.Web.Tests;

/// <summary>The string literals of a script: what stands in quotes, and the fixed parts of templates.</summary>
/// <remarks>Source: ECMAScript 2023, 12.4, 12.9.4 to 12.9.6. A slash begins a regular expression where an operand may stand.</remarks>
internal static class ScriptText
{
    public static IReadOnlyList<string> LiteralsOf(string script)
    {
        var all = new List<string>();
        var at = 0;
        Code(script, ref at, all, isInTemplate: false);
        return all;
    }

    private static void Code(string s, ref int i, List<string> all, bool isInTemplate)
    {
        var (depth, before) = (0, '(');
        while (i < s.Length)
        {
            var c = s[i];
            if (c == '/' && s[i + 1] is '/' or '*' && c == '/')
            {
                var isLine = s[i + 1] == '/';
                var end = s.IndexOf(isLine ? "\n" : "*/", i + 2, StringComparison.Ordinal);
                i = end < 0 ? s.Length : end + (isLine ? 1 : 2);
                continue;
            }

            if (c is '\'' or '"')
            {
                all.Add(Quoted(s, ref i, c));
            }
            else if (c == '`')
            {
                Template(s, ref i, all);
            }
            else if (c == '/' && "(,=:[!&|?{};>".Contains(before, StringComparison.Ordinal))
            {
                Pattern(s, ref i);
            }
            else
            {
                depth += c == '{' ? 1 : c == '}' ? -1 : 0;
                i++;
                if (isInTemplate && depth < 0)
                {
                    return;
                }
            }

            before = char.IsWhiteSpace(c) ? before : c;
        }
    }

    private static string Quoted(string s, ref int i, char quote)
    {
        var text = new StringBuilder();
        for (i++; s[i] != quote; i++)
        {
            i += s[i] == '\\' ? 1 : 0;
            text.Append(s[i]);
        }

        i++;
        return text.ToString();
    }

    private static void Template(string s, ref int i, List<string> all)
    {
        var text = new StringBuilder();
        for (i++; s[i] != '`';)
        {
            if (s[i] == '$' && s[i + 1] == '{')
            {
                // What is filled in is no word of the script.
                text.Append('\u2026');
                i += 2;
                Code(s, ref i, all, isInTemplate: true);
                continue;
            }

            if (s[i] == '\\')
            {
                // A line break or a quote: no letter.
                text.Append(' ');
                i += 2;
                continue;
            }

            text.Append(s[i++]);
        }

        i++;
        all.Add(text.ToString());
    }

    private static void Pattern(string s, ref int i)
    {
        var isInClass = false;
        for (i++; s[i] != '/' || isInClass; i++)
        {
            isInClass = s[i] switch { '[' => true, ']' => false, _ => isInClass };
            i += s[i] == '\\' ? 1 : 0;
        }

        i++;
    }
}
