using System.Text;

namespace BracketGen.Drawing.Report.Html;

/// <summary>Writes elements and text; whatever is text is escaped, and every element that is opened is closed.</summary>
/// <remarks>What it writes is well-formed XML as well as HTML.</remarks>
internal sealed class HtmlWriter
{
    private readonly StringBuilder _text = new(1 << 17);
    private readonly Stack<string> _open = new();

    /// <summary>Opens an element; disposing what comes back closes it. Attributes without a value are left out.</summary>
    public Scope Open(string element, params ReadOnlySpan<(string Name, string? Value)> attributes)
    {
        Begin(element, attributes);
        _text.Append('>');
        _open.Push(element);
        return new(this);
    }

    /// <summary>Elements within a sentence: a line's end after them would show as a space.</summary>
    private static bool IsInline(string element) => element is "a" or "strong" or "code" or "span";

    /// <summary>An element that holds nothing but text.</summary>
    public void Line(string element, string text, params ReadOnlySpan<(string Name, string? Value)> attributes)
    {
        Begin(element, attributes);
        _text.Append('>');
        Text(text);
        _text.Append("</").Append(element).Append(IsInline(element) ? ">" : ">\n");
    }

    /// <summary>An element without content.</summary>
    public void Void(string element, params ReadOnlySpan<(string Name, string? Value)> attributes)
    {
        Begin(element, attributes);
        _text.Append("/>\n");
    }

    /// <summary>Text; a number and its unit are kept on one line.</summary>
    public void Text(string text) => Escaped(Typography.KeepUnits(text));

    private void Escaped(string text)
    {
        foreach (var rune in text.EnumerateRunes())
        {
            switch (rune.Value)
            {
                case '&':
                    _text.Append("&amp;");
                    break;
                case '<':
                    _text.Append("&lt;");
                    break;
                case '>':
                    _text.Append("&gt;");
                    break;
                case '"':
                    _text.Append("&quot;");
                    break;
                case '\'':
                    _text.Append("&#39;");
                    break;
                case < 0x20 and not '\n' and not '\t':
                case >= 0x7F and < 0xA0:
                case 0xFFFE or 0xFFFF:
                    _text.Append('\uFFFD'); // Neither HTML nor XML has a way to say these.
                    break;
                default:
                    _text.Append(rune);
                    break;
            }
        }
    }

    /// <summary>Markup of our own that is already as it should be; never anything a user wrote.</summary>
    public void Markup(string markup) => _text.Append(markup);

    /// <summary>All that was written.</summary>
    /// <exception cref="InvalidOperationException">An element is still open.</exception>
    public override string ToString() => _open.Count == 0
        ? _text.ToString()
        : throw new InvalidOperationException($"The element {_open.Peek()} was not closed.");

    private void Begin(string element, ReadOnlySpan<(string Name, string? Value)> attributes)
    {
        _text.Append('<').Append(element);
        foreach (var (name, value) in attributes)
        {
            if (value is not null)
            {
                _text.Append(' ').Append(name).Append("=\"");
                Escaped(value);
                _text.Append('"');
            }
        }
    }

    private void Close() => _text.Append("</").Append(_open.Pop()).Append(">\n");

    /// <summary>An element that is open.</summary>
    internal readonly struct Scope(HtmlWriter writer) : IDisposable
    {
        /// <summary>Closes it.</summary>
        public void Dispose() => writer.Close();
    }
}
