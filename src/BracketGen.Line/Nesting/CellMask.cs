using BracketGen.Geometry;

namespace BracketGen.Line.Nesting;

/// <summary>The cells of a square grid that a turned shape, grown by half the spacing, may touch: never one too few.</summary>
/// <remarks>
/// Two shapes whose cells are apart are apart by the spacing. Columns along x, each with its runs of cells along y.
/// </remarks>
internal sealed class CellMask
{
    /// <summary>Side of a cell (mm): what a part may lie farther from its neighbour than it must.</summary>
    public const double Cell = 1;

    private const double Chord = 0.02;

    private CellMask(Angle turn, Vector2 corner, (int From, int To)[][] columns) =>
        (Turn, Corner, Columns, Height) = (turn, corner, columns, columns.Max(c => c.Length == 0 ? 0 : c[^1].To + 1));

    /// <summary>By what the shape is turned.</summary>
    public Angle Turn { get; }

    /// <summary>Where the lower left corner of the first cell lies in the turned shape's own coordinates (mm).</summary>
    public Vector2 Corner { get; }

    /// <summary>For each column the runs of cells, first and last.</summary>
    public (int From, int To)[][] Columns { get; }

    /// <summary>Number of columns.</summary>
    public int Width => Columns.Length;

    /// <summary>Cells from the lowest to the highest.</summary>
    public int Height { get; }

    /// <summary>The cells of <paramref name="outline"/> turned by <paramref name="turn"/> with <paramref name="spacing"/> (mm) wanted between two shapes.</summary>
    public static CellMask Of(Contour outline, Angle turn, double spacing)
    {
        var points = outline.Flatten(Chord).Select(p => p.Rotate(turn)).ToArray();
        // A cell is touched where its middle is no farther from the shape than half the spacing and half its own diagonal.
        var reach = spacing / 2 + Cell * Math.Sqrt(0.5) + Chord;
        var bounds = Bounds.Around(points).Grow(reach);
        int width = (int)Math.Ceiling(bounds.Width / Cell), height = (int)Math.Ceiling(bounds.Height / Cell);
        var columns = new (int, int)[width][];
        for (var i = 0; i < width; i++)
        {
            var runs = new List<(int From, int To)>();
            var x = bounds.Min.X + (i + 0.5) * Cell;
            for (var j = 0; j < height; j++)
            {
                var y = bounds.Min.Y + (j + 0.5) * Cell;
                if (Touches(points, x, y, reach))
                {
                    if (runs.Count > 0 && runs[^1].To == j - 1)
                    {
                        runs[^1] = (runs[^1].From, j);
                    }
                    else
                    {
                        runs.Add((j, j));
                    }
                }
            }

            columns[i] = [.. runs];
        }

        // What no cell touches is cut off on the left and below; on the right and above it does no harm.
        var left = Array.FindIndex(columns, c => c.Length > 0);
        var right = Array.FindLastIndex(columns, c => c.Length > 0);
        var below = columns.Where(c => c.Length > 0).Min(c => c[0].Item1);
        return new(
            turn, bounds.Min + new Vector2(left * Cell, below * Cell),
            [.. columns[left..(right + 1)].Select(c => c.Select(r => (r.Item1 - below, r.Item2 - below)).ToArray())]);
    }

    private static bool Touches(Vector2[] polygon, double x, double y, double reach)
    {
        var inside = false;
        var least = reach * reach;
        var j = polygon.Length - 1;
        for (var i = 0; i < polygon.Length; j = i++)
        {
            double ax = polygon[j].X, ay = polygon[j].Y, bx = polygon[i].X, by = polygon[i].Y;
            if (by > y != ay > y && x < (ax - bx) * (y - by) / (ay - by) + bx)
            {
                inside = !inside;
            }

            double dx = bx - ax, dy = by - ay;
            var length = dx * dx + dy * dy;
            var t = length > 0 ? Math.Clamp(((x - ax) * dx + (y - ay) * dy) / length, 0, 1) : 0;
            double ex = ax + t * dx - x, ey = ay + t * dy - y;
            if (ex * ex + ey * ey <= least)
            {
                return true;
            }
        }

        return inside;
    }
}
