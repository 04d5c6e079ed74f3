using System.Collections.Immutable;
using System.Globalization;
using BracketGen.Geometry;
using BracketGen.Units;

namespace BracketGen.Drawing.Sheet;

/// <summary>A bar of known length, to check that a printer did not resize the sheet.</summary>
public static class ScaleBar
{
    /// <summary>A bar of <paramref name="length"/> mm (a multiple of 10), in fields of 10 mm. The bar's lower left corner is the origin.</summary>
    public static SheetBlock Millimetres(int length) => Draw(length / 10, 10, 10, UnitTable.Millimetre.Name);

    /// <summary>A bar of <paramref name="length"/> whole inches, in fields of half an inch. The bar's lower left corner is the origin.</summary>
    public static SheetBlock Inches(int length) => Draw(2 * length, UnitTable.InchLength.Factor / 2, 0.5, UnitTable.InchLength.Name);

    private static SheetBlock Draw(int fields, double field, double value, string unit)
    {
        const double thickness = 3, height = TextHeight.Small;
        var items = ImmutableArray.CreateBuilder<SheetItem>();
        for (var i = 0; i < fields; i += 2)
        {
            items.Add(Fill.Rectangle(new(new(i * field, 0), new((i + 1) * field, thickness)), Ink.Black));
        }

        // Thin rules and no wide outline: the ends must be where they are measured, not half a line width further out.
        var bar = new Bounds(Vector2.Zero, new(fields * field, thickness));
        items.Add(new Stroke(new(0, 0), new(bar.Max.X, 0), LineKind.Rule));
        items.Add(new Stroke(new(0, thickness), new(bar.Max.X, thickness), LineKind.Rule));
        foreach (var x in (double[])[0, bar.Max.X])
        {
            items.Add(new Stroke(new(x, -1), new(x, thickness + 1), LineKind.Rule));
        }

        var step = fields > 6 ? fields / 2 : fields;
        for (var i = 0; i <= fields; i += step)
        {
            var label = (i * value).ToString("0.#", CultureInfo.InvariantCulture) + (i == fields ? " " + unit : "");
            items.Add(new TextItem(label, new(i * field, thickness + 2), height, i == 0 ? TextAlign.Left : i == fields ? TextAlign.Right : TextAlign.Centre));
        }

        return SheetBlock.Around(items);
    }
}
