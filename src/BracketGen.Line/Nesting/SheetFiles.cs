using System.Collections.Immutable;
using System.Globalization;
using BracketGen.Drawing.Dxf;
using BracketGen.Line.Solving;
using BracketGen.Profiles.Family;
using BracketGen.Units;
using BracketGen.Words.Line;

namespace BracketGen.Line.Nesting;

/// <summary>The cut files of all offcuts and sheets.</summary>
public static class SheetFiles
{
    /// <summary>Name of a file: material, thickness, and the number of the sheet or the offcut's code.</summary>
    /// <param name="nest">The sheets of one kind.</param>
    /// <param name="sheet">Which of all, from 0: the offcuts are the first.</param>
    /// <param name="units">Unit of the thickness.</param>
    public static string NameOf(StockNest nest, int sheet, UnitSystem units)
    {
        var material = string.Concat(nest.Stock.Material.Designation.Select(c => char.IsAsciiLetterOrDigit(c) ? c : '-'));
        var thickness = UnitSystems.Decimals(units.In(Quantity.Length, nest.Stock.Thickness), units == UnitSystem.Inch ? "0.000" : "0.##");
        var offcuts = nest.Nest.Offcuts;
        var which = sheet < offcuts.Length ? $"offcut-{offcuts[sheet].Offcut!.Code}" : (sheet - offcuts.Length + 1).ToString("00", CultureInfo.InvariantCulture);
        return $"{material}-{thickness}{units.Symbol(Quantity.Length)}-{which}.dxf";
    }

    /// <summary>Name and bytes of every file.</summary>
    /// <param name="family">The family.</param>
    /// <param name="parts">The parts on the sheets.</param>
    /// <param name="nests">The sheets.</param>
    public static IEnumerable<(string Name, byte[] Bytes)> Of(ProductFamily family, IReadOnlyList<LinePart> parts, ImmutableArray<StockNest> nests)
    {
        var byNumber = parts.ToDictionary(p => p.Made.PartNumber);
        foreach (var nest in nests)
        {
            foreach (var (i, sheet) in nest.Nest.All.Index())
            {
                var title = sheet.Offcut is { } offcut
                    ? SheetsText.OffcutTitle(family.Name, nest.Stock.Material.Designation, nest.Stock.Thickness, offcut.Code, family.Units)
                    : SheetsText.FileTitle(
                        family.Name, nest.Stock.Material.Designation, nest.Stock.Thickness, i + 1 - nest.Nest.Offcuts.Length, nest.Nest.Sheets.Length, family.Units);
                yield return (NameOf(nest, i, family.Units), new DxfWriter().Write(SheetDxf.Compose(sheet, byNumber, title, family.Units)));
            }
        }
    }
}
