using System.Collections.Immutable;
using BracketGen.Profiles.Family;
using BracketGen.Words.Line;

namespace BracketGen.Line.Nesting;

/// <summary>What a shop must know of its sheets besides how full they are.</summary>
public static class StockNotes
{
    /// <summary>What is cut from each offcut and what is left of it, offcuts that nothing is cut from, and sheets that the family does not list.</summary>
    /// <param name="family">The family.</param>
    /// <param name="nests">The sheets.</param>
    public static IEnumerable<string> Of(ProductFamily family, ImmutableArray<StockNest> nests)
    {
        var units = family.Units;
        var used = nests.SelectMany(n => n.Nest.Offcuts.Select(o => (o.Offcut!.Code, Sheet: o, n.Nest.Border))).ToDictionary(o => o.Code);
        foreach (var offcut in family.Cutting.Offcuts)
        {
            if (!used.TryGetValue(offcut.Code, out var found))
            {
                yield return SheetsText.Unused(offcut.Code, offcut.Material, offcut.Thickness, units);
                continue;
            }

            var (sheet, left) = (found.Sheet, found.Sheet.Left(found.Border));
            yield return SheetsText.FromOffcut(
                offcut.Code, offcut.Material, offcut.Thickness, Counts(sheet), sheet.Area / sheet.WholeArea,
                offcut.Outline is null ? WorthKeeping(left) : null, sheet.Width, units);
        }

        foreach (var nest in nests.Where(n => !n.IsListed && !n.Nest.Sheets.IsEmpty))
        {
            yield return SheetsText.NotListed(nest.Stock.Material.Designation, nest.Stock.Thickness, nest.Size.Length, nest.Size.Width, units);
        }
    }

    /// <summary>The pieces of a sheet with their counts, in the order of their names.</summary>
    public static IReadOnlyList<(string Name, int Count)> Counts(LaidSheet sheet) =>
        [.. sheet.Laid.CountBy(l => l.Piece.Name).OrderBy(c => c.Key, StringComparer.Ordinal).Select(c => (c.Key, c.Value))];

    /// <summary>A length that is left (mm), 0 where it is too short to be listed as an offcut.</summary>
    public static double WorthKeeping(double left) => left >= Offcut.Least ? left : 0;
}
