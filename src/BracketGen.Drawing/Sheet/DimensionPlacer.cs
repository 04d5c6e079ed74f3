using System.Collections.Immutable;
using BracketGen.Geometry;

namespace BracketGen.Drawing.Sheet;

/// <summary>The side of a view on which a dimension stands.</summary>
public enum ViewSide
{
    /// <summary>Below the view, measured along x.</summary>
    Below,

    /// <summary>Above it, measured along x.</summary>
    Above,

    /// <summary>On its left, measured along y.</summary>
    Left,

    /// <summary>On its right, measured along y.</summary>
    Right,
}

/// <summary>A dimension somebody wants on a view.</summary>
/// <param name="A">First feature point (mm on paper).</param>
/// <param name="B">Second feature point (mm on paper).</param>
/// <param name="Side">Where it stands.</param>
/// <param name="Text">What it says.</param>
/// <param name="ClearA">Room to keep clear around the first point (mm): half a hole's centre mark, for one.</param>
/// <param name="ClearB">The same at the second point.</param>
public sealed record WantedDimension(Vector2 A, Vector2 B, ViewSide Side, string Text, double ClearA = 0, double ClearB = 0);

/// <summary>Stacks dimensions outside a view in rows, so that none lies over another.</summary>
/// <remarks>
/// Short dimensions stand next to the view and the ones that span them farther out, so extension lines cross no dimension line
/// they need not cross; a text that an extension line from a farther row would run through steps aside. Deterministic: the
/// order of equals is the order given.
/// </remarks>
public static class DimensionPlacer
{
    /// <summary>
    /// Places <paramref name="wanted"/> around <paramref name="view"/> (mm on paper, everything drawn of the view) and returns the
    /// dimensions side by side in the order placed. A dimension without length is left out, and so is one that says the same
    /// between the same extension lines on the same side.
    /// </summary>
    public static ImmutableArray<LinearDimension> Place(Bounds view, IEnumerable<WantedDimension> wanted, DimensionStyle? style = null)
    {
        var all = wanted.ToArray();
        LinearDimension[] Of(ViewSide side, Bounds around) => [.. PlaceSide(around, side, [.. all.Where(w => w.Side == side)], style ?? DimensionStyle.Standard)];
        var upright = Of(ViewSide.Left, view).Concat(Of(ViewSide.Right, view)).ToArray();
        return [.. Of(ViewSide.Below, PastCorners(ViewSide.Below)), .. Of(ViewSide.Above, PastCorners(ViewSide.Above)), .. upright];

        // A short dimension has its text beyond its end. At a corner of the view, where one of each kind does, the level one stands past the upright ones.
        Bounds PastCorners(ViewSide side) => upright.Length == 0 || Of(side, view).All(d => d.Reach.From >= view.Min.X - Tolerance.Point && d.Reach.To <= view.Max.X + Tolerance.Point)
            ? view
            : side == ViewSide.Below
                ? new(new(view.Min.X, Math.Min(view.Min.Y, upright.Min(d => d.Reach.From))), view.Max)
                : new(view.Min, new(view.Max.X, Math.Max(view.Max.Y, upright.Max(d => d.Reach.To))));
    }

    /// <summary>The same as a block: everything drawn, and its bounds together with the view's.</summary>
    public static SheetBlock Draw(Bounds view, IEnumerable<WantedDimension> wanted, DimensionStyle? style = null)
    {
        ImmutableArray<SheetItem> items = [.. Place(view, wanted, style).SelectMany(d => d.Draw())];
        return new(items, items.Select(i => i.Bounds).Aggregate(view, (a, b) => a.Union(b)));
    }

    private static IEnumerable<LinearDimension> PlaceSide(Bounds view, ViewSide side, WantedDimension[] wanted, DimensionStyle style)
    {
        var direction = side is ViewSide.Below or ViewSide.Above ? new Vector2(1, 0) : new Vector2(0, 1);
        var dimensions = wanted
            .Where(w => Math.Abs(direction.Dot(w.B - w.A)) > Tolerance.Point)
            .Select(w => new LinearDimension(w.A, w.B, direction, Vector2.Zero, w.Text, style, w.ClearA, w.ClearB))
            .DistinctBy(d => (Math.Round(d.Measured.From, 6), Math.Round(d.Measured.To, 6), d.Text))
            .OrderBy(d => Math.Round(d.Measured.To - d.Measured.From, 6))
            .ThenBy(d => d.Measured.From)
            .ToArray();
        var (settled, rows) = Settle(dimensions);
        return settled.Select((d, i) => d with { Level = Level(view, side, direction, rows[i], style) });
    }

    private static double Level(Bounds view, ViewSide side, Vector2 direction, int row, DimensionStyle style)
    {
        var offset = style.FirstOffset + row * style.NextOffset;
        Vector2 point = side switch
        {
            ViewSide.Below => new(0, view.Min.Y - offset),
            ViewSide.Above => new(0, view.Max.Y + offset),
            ViewSide.Left => new(view.Min.X - offset, 0),
            _ => new(view.Max.X + offset, 0),
        };
        return direction.Left.Dot(point);
    }

    /// <summary>
    /// Rows and text places that suit each other. A text that an extension line would run through moves within its dimension; if
    /// there is no room, to one end and then the other; if that does not help, its dimension goes one row out, where fewer lines
    /// pass. Each step is taken at most once a row, so this ends.
    /// </summary>
    private static (LinearDimension[] Dimensions, int[] Rows) Settle(LinearDimension[] wanted)
    {
        var least = new int[wanted.Length];
        var ends = wanted.Select(_ => new List<double>()).ToArray();
        while (true)
        {
            var current = wanted.Select((d, i) => ends[i].Count == 0 ? d : d with { TextMiddle = ends[i][^1] }).ToArray();
            var rows = Rows(current, least);
            var isSettled = true;
            for (var i = 0; i < current.Length && isSettled; i++)
            {
                var lines = LinesThrough(current, rows, i);
                if (!IsCrossed(current[i], lines))
                {
                    continue;
                }

                if (ends[i].Count == 0 && Within(current[i], lines) is { } moved)
                {
                    current[i] = moved;
                    continue;
                }

                isSettled = false;
                var end = (double[])[wanted[i].MiddleBeyondEnd, wanted[i].MiddleBeforeStart];
                var untried = end.Where(x => !ends[i].Contains(x) && !IsCrossed(wanted[i] with { TextMiddle = x }, lines)).ToArray();
                if (untried.Length > 0)
                {
                    ends[i].Add(untried[0]);
                }
                else if (least[i] < wanted.Length)
                {
                    least[i] = Math.Max(least[i], rows[i]) + 1;
                    ends[i].Clear();
                }
                else
                {
                    return Apart(wanted);
                }
            }

            if (isSettled)
            {
                return (current, Compact(rows));
            }
        }
    }

    /// <summary>A row for each, texts as far out as they must: no drawing should need it, but none may come out illegible.</summary>
    private static (LinearDimension[] Dimensions, int[] Rows) Apart(LinearDimension[] wanted)
    {
        var rows = Enumerable.Range(0, wanted.Length).ToArray();
        var placed = wanted.Select((me, i) =>
        {
            var lines = LinesThrough(wanted, rows, i);
            if (!IsCrossed(me, lines))
            {
                return me;
            }

            var half = HalfText(me);
            var middle = (me.Measured.From + me.Measured.To) / 2;
            return Within(me, lines) ?? lines.SelectMany(x => (double[])[x - half, x + half])
                .Concat([me.MiddleBeyondEnd, me.MiddleBeforeStart])
                .Where(x => x >= me.MiddleBeyondEnd - Tolerance.Point || x <= me.MiddleBeforeStart + Tolerance.Point)
                .OrderBy(x => Math.Abs(x - middle))
                .ThenByDescending(x => x)
                .Select(x => me with { TextMiddle = x })
                .First(d => !IsCrossed(d, lines));
        });
        return ([.. placed], rows);
    }

    /// <summary>Each dimension in the row next to the view, from its least one on, in which it finds room beyond all it spans.</summary>
    private static int[] Rows(LinearDimension[] dimensions, int[] least)
    {
        var rows = new int[dimensions.Length];
        for (var i = 0; i < dimensions.Length; i++)
        {
            rows[i] = least[i];
            while (Enumerable.Range(0, i).Any(j => rows[j] >= rows[i] && Clash(dimensions[i], dimensions[j], rows[j] > rows[i])))
            {
                rows[i]++;
            }
        }

        return rows;
    }

    /// <summary>Rows that all others moved out of are closed up; the order of rows, and so what passes through which, stays.</summary>
    private static int[] Compact(int[] rows)
    {
        var used = rows.Distinct().Order().ToList();
        return [.. rows.Select(r => used.IndexOf(r))];
    }

    /// <summary>Two dimensions clash in one row where their room overlaps; and an outer one that lies within an inner one clashes anywhere.</summary>
    private static bool Clash(LinearDimension longer, LinearDimension shorter, bool beyond)
    {
        if (beyond)
        {
            return longer.Measured.From <= shorter.Measured.From + Tolerance.Point && longer.Measured.To >= shorter.Measured.To - Tolerance.Point;
        }

        // Dimensions in a chain share an extension line: touching ends are no clash.
        var (from, to) = longer.Reach;
        var (otherFrom, otherTo) = shorter.Reach;
        return from < otherTo - Tolerance.Point && otherFrom < to - Tolerance.Point;
    }

    /// <summary>Extension lines that pass through the row of dimension <paramref name="of"/>, its own included, along the line (mm).</summary>
    private static double[] LinesThrough(LinearDimension[] dimensions, int[] rows, int of) =>
        [.. dimensions
            .Where((_, j) => j == of || rows[j] > rows[of])
            .SelectMany(d => (double[])[d.Measured.From, d.Measured.To])
            .Distinct()
            .Order()];

    /// <summary>The dimension with its text between its ends as near the middle as the lines allow; null where there is no room.</summary>
    private static LinearDimension? Within(LinearDimension me, double[] lines)
    {
        var half = HalfText(me);
        var (from, to) = me.Measured;
        var middle = (from + to) / 2;
        return lines.Where(x => x >= from - Tolerance.Point && x <= to + Tolerance.Point)
            .SelectMany(x => (double[])[x - half, x + half])
            .Append(middle)
            .Where(x => x - half >= from - Tolerance.Point && x + half <= to + Tolerance.Point)
            .OrderBy(x => Math.Abs(x - middle))
            .ThenBy(x => x)
            .Select(x => me with { TextMiddle = x })
            .FirstOrDefault(d => !IsCrossed(d, lines));
    }

    private static double HalfText(LinearDimension dimension) => (dimension.TextReach.To - dimension.TextReach.From) / 2;

    private static bool IsCrossed(LinearDimension dimension, double[] lines)
    {
        var (from, to) = dimension.TextReach;
        return lines.Any(x => x > from + Tolerance.Point && x < to - Tolerance.Point);
    }
}
