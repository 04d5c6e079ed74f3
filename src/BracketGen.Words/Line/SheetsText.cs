using BracketGen.Units;

namespace BracketGen.Words.Line;

/// <summary>The sentences about stock sheets: page, terminal and cut files.</summary>
public static class SheetsText
{
    /// <summary>What the numbers on the page mean.</summary>
    public const string Note = "The grain runs along the longer side. Utilisation is the net area of the parts over the area of sheet used; no nest can pass 100 %.";

    /// <summary>Title of the page.</summary>
    public static string Title(string family) => $"{family}: stock sheets";

    /// <summary>The sheets of one kind.</summary>
    /// <param name="sheets">How many.</param>
    /// <param name="length">Length (mm).</param>
    /// <param name="width">Width (mm).</param>
    /// <param name="byArea">How many the net area alone would need.</param>
    /// <param name="used">Utilisation, 0 to 1.</param>
    /// <param name="rows">Utilisation of plain rows.</param>
    /// <param name="saved">Sheet saved over plain rows, 0 to 1.</param>
    /// <param name="units">Units.</param>
    public static string Nest(int sheets, double length, double width, int byArea, double used, double rows, double saved, UnitSystem units) =>
        $"{Counted.Of(sheets, "stock sheet")} of {LineText.Size(length, width, units)} (at least {Counted.Number(byArea)} by area). Utilisation {Percent(used)}; in plain rows of rectangles {Percent(rows)}. {Saved(saved)}.";

    /// <summary>One kind of sheet on the terminal.</summary>
    public static string Short(string designation, double thickness, int sheets, double used, double saved, UnitSystem units) =>
        $"{LineText.Stock(designation, thickness, units)}: {Counted.Of(sheets, "stock sheet")}, utilisation {Percent(used)}; {char.ToLowerInvariant(Saved(saved)[0])}{Saved(saved)[1..]}";

    /// <summary>A piece that is too large.</summary>
    public static string TooLarge(string piece) => $"{piece} does not fit on this stock sheet.";

    /// <summary>Heading of one sheet.</summary>
    public static string Sheet(string file, int pieces, double used, double length, UnitSystem units) =>
        $"{file}: {Counted.Of(pieces, "piece")}, {units.Number(Quantity.Length, used)} of {units.Write(Quantity.Length, length)} used";

    /// <summary>First line in a cut file.</summary>
    public static string FileTitle(string family, string designation, double thickness, int number, int of, UnitSystem units) =>
        $"{family}: {LineText.Stock(designation, thickness, units)}, stock sheet {Counted.Number(number)} of {Counted.Number(of)}";

    /// <summary>The lines after it.</summary>
    /// <param name="length">Length (mm).</param>
    /// <param name="width">Width (mm).</param>
    /// <param name="pieces">Names of all pieces on the sheet.</param>
    /// <param name="units">Units.</param>
    public static IEnumerable<string> FileNotes(double length, double width, IReadOnlyCollection<string> pieces, UnitSystem units) =>
    [
        $"Stock sheet {LineText.Size(length, width, units)}, grain along x. {Counted.Of(pieces.Count, "piece")}.",
        .. pieces.GroupBy(p => p).Select(g => $"{Counted.Number(g.Count())} of {g.Key}"),
        "CUT_THROUGH: cut. FOLD_LINE: middle of a bend, do not cut. SHEET_EDGE: do not cut.",
        "Contours are net: kerf not compensated.",
    ];

    private static string Saved(double saved) => saved >= 0 ? $"Nesting saves {Percent(saved)} of the sheet" : $"Nesting takes {Percent(-saved)} more sheet";

    private static string Percent(double value) => UnitSystem.Metric.Write(Quantity.Fraction, value);
}
