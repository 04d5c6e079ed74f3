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

    /// <summary>The rows of a table that <see cref="Write"/> wrote, all cells as texts; an apostrophe put before a text stays.</summary>
    /// <param name="bytes">The file.</param>
    public static List<List<string>> Read(ReadOnlySpan<byte> bytes)
    {
        List<List<string>> rows = [];
        List<string> row = [];
        var cell = new StringBuilder();
        var (quoted, ended) = (false, false);
        foreach (var letter in Encoding.UTF8.GetString(bytes).TrimStart('\uFEFF'))
        {
            // Quotes that end and begin again at once are one quote in the cell.
            var again = ended && letter == '"';
            ended = false;
            if (letter == '"')
            {
                (quoted, ended) = (!quoted, quoted);
                cell.Append(again ? "\"" : "");
            }
            else if (quoted || letter is not (',' or '\n'))
            {
                cell.Append(letter);
            }
            else
            {
                row.Add(cell.ToString());
                cell.Clear();
                if (letter == '\n')
                {
                    rows.Add(row);
                    row = [];
                }
            }
        }

        return rows;
    }

    // A spreadsheet would compute a text that begins like a formula, behind blanks and quotes too; the apostrophe keeps it a text (OWASP, CSV injection).
    private static string Harmless(string text) =>
        text.AsSpan().TrimStart(" \u00A0\"'") is [('=' or '+' or '-' or '@' or '\t' or '\r' or '\n' or '\uFF1D' or '\uFF0B' or '\uFF0D' or '\uFF20'), ..] ? "'" + text : text;
}
