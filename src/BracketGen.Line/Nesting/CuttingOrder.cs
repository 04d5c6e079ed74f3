using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using BracketGen.Line.Solving;
using BracketGen.Profiles.Family;
using BracketGen.Words.Line;

namespace BracketGen.Line.Nesting;

/// <summary>How many of each part to cut.</summary>
/// <param name="Quantities">Part number and pieces.</param>
public sealed record CuttingOrder(ImmutableArray<(string PartNumber, int Quantity)> Quantities)
{
    /// <summary>Maximum number of pieces in one order: laying them takes some ten seconds.</summary>
    public const int Max = 100_000;

    /// <summary>The family's quantity of every part.</summary>
    public static CuttingOrder OfAll(PartSelection selection, CuttingPlan plan) =>
        new([.. selection.Parts.Select(p => (p.Made.PartNumber, plan.Quantity))]);

    /// <summary>Reads an order: CSV with a first line that names the columns part_number and quantity.</summary>
    /// <param name="bytes">The file.</param>
    /// <param name="known">Part numbers of the line.</param>
    /// <returns>The order, or every mistake in it.</returns>
    public static (CuttingOrder? Order, ImmutableArray<OrderMistake> Mistakes) Parse(ReadOnlySpan<byte> bytes, IReadOnlySet<string> known)
    {
        var lines = Encoding.UTF8.GetString(bytes).TrimStart('\uFEFF').ReplaceLineEndings("\n").Split('\n');
        var separator = lines[0].Contains(';') ? ';' : ',';
        var head = Cells(lines[0], separator);
        int part = Array.IndexOf(head, "part_number"), quantity = Array.IndexOf(head, "quantity");
        if (part < 0 || quantity < 0)
        {
            return (null, [new OrderMistake.NoColumns(lines[0])]);
        }

        var wanted = new Dictionary<string, int>();
        var mistakes = ImmutableArray.CreateBuilder<OrderMistake>();
        for (var i = 1; i < lines.Length; i++)
        {
            if (lines[i].Trim().Length == 0)
            {
                continue;
            }

            var cells = Cells(lines[i], separator);
            if (cells.Length <= Math.Max(part, quantity))
            {
                mistakes.Add(new OrderMistake.MissingColumn(i + 1));
            }
            else if (!known.Contains(cells[part]))
            {
                mistakes.Add(new OrderMistake.UnknownPart(i + 1, cells[part]));
            }
            else if (!int.TryParse(cells[quantity], NumberStyles.None, CultureInfo.InvariantCulture, out var count) || count is < 1 or > Max)
            {
                mistakes.Add(new OrderMistake.BadQuantity(i + 1, cells[quantity], Max));
            }
            else if (wanted.Values.Sum() + count > Max)
            {
                mistakes.Add(new OrderMistake.TooMany(i + 1, Max));
            }
            else
            {
                wanted[cells[part]] = wanted.GetValueOrDefault(cells[part]) + count;
            }
        }

        return mistakes.Count > 0
            ? (null, mistakes.ToImmutable())
            : (new([.. wanted.Select(w => (w.Key, w.Value))]), []);
    }

    private static string[] Cells(string line, char separator) => [.. line.Split(separator).Select(c => c.Trim().Trim('"'))];
}
