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

    /// <summary>A kind of sheet of which the family lists no size.</summary>
    public static string NotListed(string designation, double thickness, double length, double width, UnitSystem units) =>
        $"The family lists no stock sheet of {LineText.Stock(designation, thickness, units)}: {LineText.Size(length, width, units)} was taken. If yours is another, list it in [[cutting.sheets]].";

    /// <summary>An offcut that nothing is cut from.</summary>
    public static string Unused(string code, string designation, double thickness, UnitSystem units) =>
        $"Offcut {code}, {LineText.Stock(designation, thickness, units)}: nothing is cut from it.";

    /// <summary>What is cut from an offcut, and what is left of it.</summary>
    /// <param name="code">Its code.</param>
    /// <param name="designation">Its material.</param>
    /// <param name="thickness">Its thickness (mm).</param>
    /// <param name="pieces">Names and counts of what is cut from it.</param>
    /// <param name="metal">Metal of the pieces over that of the offcut, 0 to 1.</param>
    /// <param name="left">Length (mm) of the rectangle that is left; 0 where nothing is worth keeping; null where it is no rectangle.</param>
    /// <param name="width">Width (mm) of that rectangle.</param>
    /// <param name="units">Units.</param>
    public static string FromOffcut(
        string code, string designation, double thickness, IReadOnlyList<(string Name, int Count)> pieces, double metal, double? left, double width, UnitSystem units) =>
        $"From offcut {code}, {LineText.Stock(designation, thickness, units)}: {string.Join(", ", pieces.Select(p => $"{Counted.Number(p.Count)} of {p.Name}"))}. {LeftOf(metal, left, width, units)}";

    /// <summary>Heading of one offcut.</summary>
    public static string Offcut(string file, string code, int pieces) => $"{file}: offcut {code}, {Counted.Of(pieces, "piece")}";

    /// <summary>What is left of a sheet.</summary>
    public static string Left(double left, double width, UnitSystem units) => $"{LineText.Size(left, width, units)} are left.";

    /// <summary>A line of a picture's legend.</summary>
    public static string Legend(int number, string piece, int count) => $"{Counted.Number(number)}: {piece}, {Counted.Of(count, "piece")}";

    /// <summary>First line in the cut file of an offcut.</summary>
    public static string OffcutTitle(string family, string designation, double thickness, string code, UnitSystem units) =>
        $"{family}: {LineText.Stock(designation, thickness, units)}, offcut {code}";

    private static string LeftOf(double metal, double? left, double width, UnitSystem units) => left switch
    {
        null => $"{Percent(1 - metal)} of its metal are left, in no rectangle.",
        > 0 and var length => Left(length, width, units),
        _ => "Nothing worth keeping is left.",
    };

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
    /// <param name="offcut">Code of the offcut; null for a sheet.</param>
    /// <param name="pieces">Names of all pieces on the sheet.</param>
    /// <param name="units">Units.</param>
    public static IEnumerable<string> FileNotes(double length, double width, string? offcut, IReadOnlyCollection<string> pieces, UnitSystem units) =>
    [
        $"{(offcut is null ? "Stock sheet" : $"Offcut {offcut},")} {LineText.Size(length, width, units)}, grain along x. {Counted.Of(pieces.Count, "piece")}.",
        .. pieces.GroupBy(p => p).Select(g => $"{Counted.Number(g.Count())} of {g.Key}"),
        "CUT_THROUGH: cut. SURFACE_MARK: mark, do not cut. FOLD_LINE: middle of a bend, do not cut. SHEET_EDGE: do not cut.",
        "Contours are net: kerf not compensated.",
    ];

    private static string Saved(double saved) => saved >= 0 ? $"Nesting saves {Percent(saved)} of the sheet" : $"Nesting takes {Percent(-saved)} more sheet";

    private static string Percent(double value) => UnitSystem.Metric.Write(Quantity.Fraction, value);
}
