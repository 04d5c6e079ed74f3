using System.Globalization;
using BracketGen.Design.Part;
using BracketGen.Drawing.Dxf;
using BracketGen.Line.Lists;
using BracketGen.Line.Numbering;
using BracketGen.Line.Solving;
using BracketGen.SheetMetal.Shops;
using BracketGen.Units;

namespace BracketGen.Line.Nesting;

/// <summary>The cut files of all sheets.</summary>
public static class SheetFiles
{
    /// <summary>Name of a sheet's file: material, thickness, number.</summary>
    public static string NameOf(StockNest nest, int sheet)
    {
        var material = string.Concat(nest.Stock.Material.Designation.Select(c => char.IsAsciiLetterOrDigit(c) ? c : '-'));
        return string.Create(CultureInfo.InvariantCulture, $"{material}-{nest.Stock.Thickness:0.##}mm-{sheet + 1:00}.dxf");
    }

    /// <summary>Name and bytes of every file.</summary>
    public static IEnumerable<(string Name, byte[] Bytes)> Of(LineReport report)
    {
        var brackets = report.Selection.Parts.ToDictionary(p => p.Made.PartNumber, p => p.Bracket);
        foreach (var nest in report.Nests)
        {
            for (var i = 0; i < nest.Nest.Sheets.Length; i++)
            {
                var title = string.Create(
                    CultureInfo.InvariantCulture,
                    $"{report.Family.Family.Name}: {nest.Stock.Material.Designation}, {nest.Stock.Thickness:0.###} mm, sheet {i + 1} of {nest.Nest.Sheets.Length}");
                yield return (NameOf(nest, i), new DxfWriter().Write(SheetDxf.Compose(nest.Nest.Sheets[i], brackets, title, report.Family.Family.Units)));
            }
        }
    }
}
