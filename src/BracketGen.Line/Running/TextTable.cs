namespace BracketGen.Line.Running;

/// <summary>Lines up columns of text for a terminal.</summary>
internal static class TextTable
{
    /// <summary>Prints <paramref name="rows"/> with each column as wide as its widest cell, two spaces between.</summary>
    public static void Print(TextWriter output, IReadOnlyList<string[]> rows, string indent = "  ")
    {
        var widths = Enumerable.Range(0, rows.Max(r => r.Length))
            .Select(i => rows.Max(r => i < r.Length ? r[i].Length : 0)).ToArray();
        foreach (var row in rows)
        {
            output.WriteLine((indent + string.Join("  ", row.Select((cell, i) => cell.PadRight(widths[i])))).TrimEnd());
        }
    }
}
