using System.Collections.Immutable;
using System.Globalization;
using BracketGen.Geometry;

namespace BracketGen.Drawing.Sheet;

/// <summary>The frame of the drawing space with ISO 5457's grid reference border and centring marks.</summary>
internal static class SheetFrame
{
    /// <summary>Width of the grid reference border and length of a field of it (mm), ISO 5457.</summary>
    private const double BorderWidth = 5, Field = 50;

    public static ImmutableArray<SheetItem> Draw(PageFormat format)
    {
        var frame = Polyline.Rectangle(format.Frame, LineKind.Frame);
        if (!format.HasGrid)
        {
            return [frame];
        }

        Bounds inner = format.Frame, outer = inner.Grow(BorderWidth);
        var centre = format.Sheet.Centre;
        var items = ImmutableArray.CreateBuilder<SheetItem>();
        items.Add(Polyline.Rectangle(outer, LineKind.Rule));
        items.Add(frame);

        // Fields are counted from the middle of the sheet outwards, so the first and the last are what is left over.
        var xs = Divisions(centre.X, inner.Min.X, inner.Max.X);
        for (var i = 0; i + 1 < xs.Length; i++)
        {
            var name = (i + 1).ToString(CultureInfo.InvariantCulture);
            foreach (var y in (double[])[inner.Max.Y, outer.Min.Y])
            {
                Mark(new((xs[i] + xs[i + 1]) / 2, y + BorderWidth / 2), name);
                if (i > 0)
                {
                    Divide(new(xs[i], y), new(xs[i], y + BorderWidth), xs[i] == centre.X);
                }
            }
        }

        var ys = Divisions(centre.Y, inner.Min.Y, inner.Max.Y);
        for (var i = 0; i + 1 < ys.Length; i++)
        {
            var name = ((char)('A' + ys.Length - 2 - i)).ToString();
            foreach (var x in (double[])[outer.Min.X, inner.Max.X])
            {
                Mark(new(x + BorderWidth / 2, (ys[i] + ys[i + 1]) / 2), name);
                if (i > 0)
                {
                    Divide(new(x, ys[i]), new(x + BorderWidth, ys[i]), ys[i] == centre.Y);
                }
            }
        }

        return items.ToImmutable();

        void Mark(Vector2 middle, string name) =>
            items.Add(new TextItem(name, middle - new Vector2(0, TextHeight.Normal / 2), TextHeight.Normal, TextAlign.Centre));

        // The centring mark stays outside the drawing space: inside it would run into the title block.
        void Divide(Vector2 from, Vector2 to, bool centring) =>
            items.Add(new Stroke(from, to, centring ? LineKind.Frame : LineKind.Rule));
    }

    private static double[] Divisions(double centre, double from, double to)
    {
        // A rest shorter than a third of a field has no room for its name's own field: it joins its neighbour.
        var inner = Enumerable.Range(-20, 41).Select(k => centre + k * Field).Where(v => v - from > Field / 3 && to - v > Field / 3);
        return [from, .. inner, to];
    }
}
