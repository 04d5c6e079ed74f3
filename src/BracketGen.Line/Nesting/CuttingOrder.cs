using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using BracketGen.Line.Numbering;
using BracketGen.Line.Sharing;
using BracketGen.Line.Solving;
using BracketGen.Profiles.Family;
using BracketGen.Profiles.Forms;
using BracketGen.Units;

namespace BracketGen.Line.Nesting;

/// <summary>How many of each part to cut.</summary>
/// <param name="Quantities">Part number and pieces.</param>
public sealed record CuttingOrder(ImmutableArray<(string PartNumber, int Quantity)> Quantities)
{
    /// <summary>Most pieces of one order: laying them takes some ten seconds.</summary>
    public const int Most = 100_000;

    /// <summary>The family's quantity of every part.</summary>
    public static CuttingOrder OfAll(PartSelection selection, CuttingPlan plan) =>
        new([.. selection.Parts.Select(p => (p.Made.PartNumber, plan.Quantity))]);

    /// <summary>Reads an order: CSV with a first line that names the columns part_number and quantity.</summary>
    /// <param name="bytes">The file.</param>
    /// <param name="known">Part numbers of the line.</param>
    /// <returns>The order, or every mistake in it, in words.</returns>
    public static (CuttingOrder? Order, ImmutableArray<string> Mistakes) Parse(ReadOnlySpan<byte> bytes, IReadOnlySet<string> known)
    {
        var lines = Encoding.UTF8.GetString(bytes).TrimStart('\uFEFF').ReplaceLineEndings("\n").Split('\n');
        var separator = lines[0].Contains(';') ? ';' : ',';
        var head = Cells(lines[0], separator);
        int part = Array.IndexOf(head, "part_number"), quantity = Array.IndexOf(head, "quantity");
        if (part < 0 || quantity < 0)
        {
            return (null, [$"line 1: read \"{lines[0]}\"; the first line names the columns part_number and quantity"]);
        }

        var wanted = new Dictionary<string, int>();
        var mistakes = ImmutableArray.CreateBuilder<string>();
        for (var i = 1; i < lines.Length; i++)
        {
            if (lines[i].Trim().Length == 0)
            {
                continue;
            }

            var cells = Cells(lines[i], separator);
            void Mistake(string what) => mistakes.Add(string.Create(CultureInfo.InvariantCulture, $"line {i + 1}: {what}"));
            if (cells.Length <= Math.Max(part, quantity))
            {
                Mistake("a column is missing");
            }
            else if (!known.Contains(cells[part]))
            {
                Mistake($"{cells[part]} is no part that the line makes; a combination that another's part serves is ordered by that part's number");
            }
            else if (!int.TryParse(cells[quantity], NumberStyles.None, CultureInfo.InvariantCulture, out var count) || count is < 1 or > Most)
            {
                Mistake($"\"{cells[quantity]}\" is not a quantity from 1 to {Most}");
            }
            else if (wanted.Values.Sum() + count > Most)
            {
                Mistake($"with this line it is more than {Most} pieces in all; order in several files");
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
