using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using BracketGen.Profiles.Family;
using BracketGen.Units;
using BracketGen.Words.Line;

namespace BracketGen.Line.Orders;

/// <summary>An order as comma- or semicolon-separated values (RFC 4180); the first line names the columns.</summary>
public static class OrderCsv
{
    private const string Part = "part_number", Variant = "variant", Catalogue = "catalogue_number", Quantity = "quantity", Reference = "customer_reference", Units = "units";

    private const int MaxName = 120;

    // More mistakes than anyone corrects in one go.
    private const int MostProblems = 200;

    private static readonly string[] Known = [Part, Variant, Catalogue, Quantity, Reference, Units];

    /// <summary>The order, or everything that is wrong with it.</summary>
    /// <param name="bytes">The file.</param>
    public static (LineOrder? Order, ImmutableArray<OrderProblem> Problems) Parse(ReadOnlySpan<byte> bytes)
    {
        string text;
        try
        {
            text = new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(bytes).TrimStart('\uFEFF');
        }
        catch (DecoderFallbackException)
        {
            return (null, [new OrderProblem.NotText()]);
        }

        var first = text.AsSpan()[..(text.AsSpan().IndexOfAny('\r', '\n') is >= 0 and var end ? end : text.Length)];
        var (rows, open) = Rows(text, first.Contains(';') ? ';' : ',');
        if (open is { } line)
        {
            return (null, [new OrderProblem.OpenQuote(line)]);
        }

        var head = rows.Count > 0 ? rows[0].Cells : [];
        var wrong = head.Where((c, i) => !Known.Contains(c) || head.IndexOf(c) != i).ToArray();
        if (!head.Contains(Quantity) || !head.Any(c => c is Part or Variant or Catalogue))
        {
            return (null, [new OrderProblem.NoColumns(first.ToString())]);
        }

        if (wrong.Length > 0)
        {
            return (null, [.. wrong.Take(MostProblems).Select(c => new OrderProblem.BadColumn(c))]);
        }

        var items = ImmutableArray.CreateBuilder<OrderedItem>();
        var problems = ImmutableArray.CreateBuilder<OrderProblem>();
        foreach (var (at, cells) in rows.Skip(1))
        {
            if (items.Count == LineOrder.MaxItems)
            {
                problems.Add(new OrderProblem.ManyLines(at, LineOrder.MaxItems));
            }

            if (problems.Count >= MostProblems || items.Count == LineOrder.MaxItems)
            {
                break;
            }

            var (item, problem) = Item(at, head, cells);
            if (problem is not null)
            {
                problems.Add(problem);
            }
            else
            {
                items.Add(item!);
            }
        }

        return problems.Count > 0 ? (null, problems.ToImmutable())
            : items.Count == 0 ? (null, [new OrderProblem.Nothing()])
            : (new(null, items.ToImmutable()), []);
    }

    private static (OrderedItem? Item, OrderProblem? Problem) Item(int at, List<string> head, List<string> cells)
    {
        if (cells.Count != head.Count)
        {
            return (null, new OrderProblem.OtherCells(at, cells.Count, head.Count));
        }

        string Cell(string column) => head.IndexOf(column) is >= 0 and var i ? cells[i] : "";
        var named = new[] { (OrderedBy.Part, Cell(Part)), (OrderedBy.Variant, Cell(Variant)), (OrderedBy.CatalogueNumber, Cell(Catalogue)) }
            .Where(n => n.Item2.Length > 0).ToArray();
        if (named.Length != 1)
        {
            return (null, new OrderProblem.NotOneName(at, named.Length));
        }

        var (by, name) = named[0];
        var (quantity, reference, units) = (Cell(Quantity), Cell(Reference), Cell(Units));
        if (!Fits(name, MaxName))
        {
            return (null, new OrderProblem.BadText(at, name, MaxName));
        }

        if (!Fits(reference, LineOrder.MaxReference))
        {
            return (null, new OrderProblem.BadText(at, reference, LineOrder.MaxReference));
        }

        if (!int.TryParse(quantity, NumberStyles.None, CultureInfo.InvariantCulture, out var count) || count is < 1 or > LineOrder.MaxPieces)
        {
            return (null, new OrderProblem.BadQuantity(at, quantity, LineOrder.MaxPieces));
        }

        return units is not ("" or "mm" or "in")
            ? (null, new OrderProblem.BadUnits(at, units))
            : (new(by, name, count, reference, units switch { "mm" => UnitSystem.Metric, "in" => UnitSystem.Inch, _ => null }, at), null);
    }

    private static bool Fits(string text, int max) => text.Length <= max && !text.Any(char.IsControl);

    // Blank lines are left out. A line break in a quoted cell belongs to the cell.
    private static (List<(int Line, List<string> Cells)> Rows, int? OpenQuote) Rows(string text, char separator)
    {
        var rows = new List<(int, List<string>)>();
        var cells = new List<string>();
        var cell = new StringBuilder();
        var (line, begun, quoted, wasQuoted, isBlank) = (1, 1, false, false, true);
        void EndCell()
        {
            cells.Add(wasQuoted ? cell.ToString() : cell.ToString().Trim());
            cell.Clear();
            (wasQuoted, isBlank) = (false, true);
        }

        void EndRow()
        {
            EndCell();
            if (cells.Any(c => c.Length > 0))
            {
                rows.Add((begun, cells));
            }

            cells = [];
        }

        for (var i = 0; i < text.Length; i++)
        {
            var c = text[i];
            var isBreak = c == '\n' || (c == '\r' && (i + 1 == text.Length || text[i + 1] != '\n'));
            line += isBreak ? 1 : 0;
            if (quoted)
            {
                if (c != '"')
                {
                    cell.Append(c);
                }
                else if (i + 1 < text.Length && text[i + 1] == '"')
                {
                    cell.Append(c);
                    i++;
                }
                else
                {
                    quoted = false;
                }
            }
            else if (c == '"' && isBlank)
            {
                cell.Clear();
                (quoted, wasQuoted, isBlank) = (true, true, false);
            }
            else if (c == separator)
            {
                EndCell();
            }
            else if (isBreak)
            {
                EndRow();
                begun = line;
            }
            else if (c != '\r')
            {
                cell.Append(c);
                isBlank &= char.IsWhiteSpace(c);
            }
        }

        if (quoted)
        {
            return (rows, begun);
        }

        EndRow();
        return (rows, null);
    }
}
