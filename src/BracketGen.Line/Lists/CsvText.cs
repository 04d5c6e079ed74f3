using System.Text;

namespace BracketGen.Line.Lists;

/// <summary>Tables as comma-separated values (RFC 4180), UTF-8 with a byte order mark so that spreadsheets read the letters right.</summary>
public static class CsvText
{
    /// <summary>The bytes of a table.</summary>
    public static byte[] Write(ListTable table)
    {
        var text = new StringBuilder("\uFEFF");
        Row(text, table.Columns);
        foreach (var row in table.Rows)
        {
            Row(text, row.Select(c => c.Text));
        }

        return Encoding.UTF8.GetBytes(text.ToString());
    }

    // RFC 4180 ends lines with carriage return and line feed; readers take a line feed alone, and so does every tool of the trade.
    private static void Row(StringBuilder text, IEnumerable<string> cells) => text.AppendJoin(',', cells.Select(Cell)).Append('\n');

    private static string Cell(string text)
    {
        // A spreadsheet would compute a text that begins like a formula; the apostrophe keeps it a text.
        var safe = text.Length > 0 && text[0] is '=' or '+' or '@' || (text.Length > 1 && text[0] == '-' && !char.IsAsciiDigit(text[1])) ? "'" + text : text;
        return safe.AsSpan().IndexOfAny(",\"\r\n") >= 0 ? "\"" + safe.Replace("\"", "\"\"") + "\"" : safe;
    }
}
