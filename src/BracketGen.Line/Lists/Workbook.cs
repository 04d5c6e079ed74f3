using System.IO.Compression;
using SpreadCheetah;
using SpreadCheetah.Styling;
using SpreadCheetah.Worksheets;

namespace BracketGen.Line.Lists;

/// <summary>Lists as one workbook (Office Open XML, XLSX), written by SpreadCheetah, which needs no reflection.</summary>
public static class Workbook
{
    /// <summary>First moment that a ZIP archive can tell: the same bytes on every day.</summary>
    private static readonly DateTimeOffset Timeless = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);

    /// <summary>The bytes of a workbook with a sheet for each of <paramref name="tables"/>.</summary>
    public static byte[] Write(IReadOnlyList<ListTable> tables)
    {
        using var stream = new MemoryStream();
        // Nothing in it waits: the stream is memory.
        Fill(stream, tables).GetAwaiter().GetResult();
        return WithoutTimes(stream);
    }

    private static async Task Fill(MemoryStream stream, IReadOnlyList<ListTable> tables)
    {
        await using var book = await Spreadsheet.CreateNewAsync(stream, new SpreadCheetahOptions { DocumentProperties = null });
        var head = book.AddStyle(new Style { Font = { Bold = true } });
        foreach (var table in tables)
        {
            var options = new WorksheetOptions { FrozenRows = 1 };
            for (var i = 0; i < table.Columns.Length; i++)
            {
                options.Column(i + 1).Width = Math.Clamp(table.Rows.Select(r => r[i].Text.Length).Append(table.Columns[i].Length).Max() + 2, 6, 60);
            }

            await book.StartWorksheetAsync(table.Name, options);
            await book.AddRowAsync(table.Columns.Select(c => new StyledCell(c, head)).ToArray());
            foreach (var row in table.Rows)
            {
                await book.AddRowAsync(row.Select(c => c.Number is { } number ? new Cell(number) : new Cell(c.Text)).ToArray());
            }
        }

        await book.FinishAsync();
    }

    private static byte[] WithoutTimes(MemoryStream written)
    {
        using var output = new MemoryStream();
        written.Position = 0;
        using (var from = new ZipArchive(written, ZipArchiveMode.Read))
        using (var to = new ZipArchive(output, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (var entry in from.Entries)
            {
                var copy = to.CreateEntry(entry.FullName, CompressionLevel.Optimal);
                copy.LastWriteTime = Timeless;
                using var source = entry.Open();
                using var target = copy.Open();
                source.CopyTo(target);
            }
        }

        return output.ToArray();
    }
}
