using System.Net;
using System.Text;

namespace BracketGen.Line.Catalogue;

/// <summary>Writes a page, every text made safe.</summary>
internal sealed class HtmlText
{
    private readonly StringBuilder _text = new();

    /// <summary>Markup as it is.</summary>
    public HtmlText Raw(string markup)
    {
        _text.Append(markup);
        return this;
    }

    /// <summary>An element with a text in it.</summary>
    public HtmlText Element(string name, string text, string? attributes = null) =>
        Raw($"<{name}{(attributes is null ? "" : " " + attributes)}>{Safe(text)}</{name}>\n");

    /// <summary>A row of a table; cells that begin with a hash are numbers and stand to the right.</summary>
    public HtmlText Row(IEnumerable<string> cells, bool isHead = false)
    {
        _text.Append("<tr>");
        foreach (var cell in cells)
        {
            var isNumber = cell.StartsWith('#');
            _text.Append(isHead ? "<th" : "<td").Append(isNumber ? " class=\"number\">" : ">").Append(Safe(isNumber ? cell[1..] : cell)).Append(isHead ? "</th>" : "</td>");
        }

        _text.Append("</tr>\n");
        return this;
    }

    /// <summary>A text with the signs replaced that mean something in a page.</summary>
    public static string Safe(string text) => WebUtility.HtmlEncode(text);

    public override string ToString() => _text.ToString();
}
