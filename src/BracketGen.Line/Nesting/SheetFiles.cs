using System.Collections.Immutable;
using System.Globalization;
using BracketGen.Drawing.Dxf;
using BracketGen.Line.Solving;
using BracketGen.Profiles.Family;
using BracketGen.Units;
using BracketGen.Words.Line;

namespace BracketGen.Line.Nesting;

/// <summary>The cut files of all sheets.</summary>
public static class SheetFiles
{
    /// <summary>Name of a sheet's file: material, thickness, number.</summary>
    /// <param name="nest">The sheets of one kind.</param>
    /// <param name="sheet">Which of them, from 0.</param>
    /// <param name="units">Unit of the thickness.</param>
    public static string NameOf(StockNest nest, int sheet, UnitSystem units)
    {
        var material = string.Concat(nest.Stock.Material.Designation.Select(c => char.IsAsciiLetterOrDigit(c) ? c : '-'));
        var thickness = UnitSystems.Decimals(units.In(Quantity.Length, nest.Stock.Thickness), units == UnitSystem.Inch ? "0.000" : "0.##");
        return $"{material}-{thickness}{units.Symbol(Quantity.Length)}-{(sheet + 1).ToString("00", CultureInfo.InvariantCulture)}.dxf";
    }

    /// <summary>Name and bytes of every file.</summary>
    /// <param name="family">The family.</param>
    /// <param name="parts">The parts on the sheets.</param>
    /// <param name="nests">The sheets.</param>
    public static IEnumerable<(string Name, byte[] Bytes)> Of(ProductFamily family, IReadOnlyList<LinePart> parts, ImmutableArray<StockNest> nests)
    {
        var brackets = parts.ToDictionary(p => p.Made.PartNumber, p => p.Bracket);
        foreach (var nest in nests)
        {
            for (var i = 0; i < nest.Nest.Sheets.Length; i++)
            {
                var title = SheetsText.FileTitle(
                    family.Name, nest.Stock.Material.Designation, nest.Stock.Thickness, i + 1, nest.Nest.Sheets.Length, family.Units);
                yield return (NameOf(nest, i, family.Units), new DxfWriter().Write(SheetDxf.Compose(nest.Nest.Sheets[i], brackets, title, family.Units)));
            }
        }
    }
}
