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
            Row(text, row.Select(c => c.Number is null ? Harmless(c.Text) : c.Text));
        }

        return Encoding.UTF8.GetBytes(text.ToString());
    }

    // RFC 4180 ends lines with carriage return and line feed; readers take a line feed alone, and so does every tool of the trade.
    private static void Row(StringBuilder text, IEnumerable<string> cells) => text.AppendJoin(',', cells.Select(Cell)).Append('\n');

    private static string Cell(string text) => text.AsSpan().IndexOfAny(",;\"\t\r\n") >= 0 ? "\"" + text.Replace("\"", "\"\"") + "\"" : text;

    // A spreadsheet would compute a text that begins like a formula, behind blanks and quotes too; the apostrophe keeps it a text (OWASP, CSV injection).
    private static string Harmless(string text) =>
        text.AsSpan().TrimStart(" \u00A0\"'") is [('=' or '+' or '-' or '@' or '\t' or '\r' or '\n' or '\uFF1D' or '\uFF0B' or '\uFF0D' or '\uFF20'), ..] ? "'" + text : text;
}
