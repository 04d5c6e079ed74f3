using BracketGen.Geometry;

namespace BracketGen.Drawing.Sheet;

/// <summary>What is drawn, sorted into square cells, so that only what lies near is looked at. One thread at a time.</summary>
internal sealed class InkGrid<T>
{
    /// <summary>Width of a cell (mm): a few lines of a picture fall into one.</summary>
    private const double Cell = 5;

    private readonly Dictionary<(int X, int Y), List<int>> _cells = [];
    private readonly List<(T Thing, Bounds Bounds)> _things = [];
    private readonly List<int> _asked = [];
    private int _question;

    public void Add(T thing, Bounds bounds)
    {
        var number = _things.Count;
        _things.Add((thing, bounds));
        _asked.Add(0);
        for (var x = Of(bounds.Min.X); x <= Of(bounds.Max.X); x++)
        {
            for (var y = Of(bounds.Min.Y); y <= Of(bounds.Max.Y); y++)
            {
                if (!_cells.TryGetValue((x, y), out var cell))
                {
                    _cells[(x, y)] = cell = [];
                }

                cell.Add(number);
            }
        }
    }

    /// <summary>All whose bounds touch <paramref name="bounds"/>, each once.</summary>
    public IEnumerable<T> Near(Bounds bounds)
    {
        _question++;
        for (var x = Of(bounds.Min.X); x <= Of(bounds.Max.X); x++)
        {
            foreach (var thing in InColumn(x, bounds.Min.Y, bounds.Max.Y, bounds))
            {
                yield return thing;
            }
        }
    }

    /// <summary>All whose bounds touch those of a line and that may meet it, each once.</summary>
    public IEnumerable<T> Near(LineSegment line)
    {
        _question++;
        var bounds = line.Bounds;
        var (from, to) = (line.Start, line.End);
        for (var x = Of(bounds.Min.X); x <= Of(bounds.Max.X); x++)
        {
            // The part of the line in this column of cells, a little longer for round-off.
            var (low, high) = (bounds.Min.Y, bounds.Max.Y);
            if (Math.Abs(to.X - from.X) > Tolerance.Point)
            {
                double At(double at) => from.Y + Math.Clamp((at - from.X) / (to.X - from.X), 0, 1) * (to.Y - from.Y);
                var (left, right) = (At(x * Cell), At((x + 1) * Cell));
                (low, high) = (Math.Min(left, right) - Tolerance.Point, Math.Max(left, right) + Tolerance.Point);
            }

            foreach (var thing in InColumn(x, low, high, bounds))
            {
                yield return thing;
            }
        }
    }

    private IEnumerable<T> InColumn(int x, double low, double high, Bounds bounds)
    {
        for (var y = Of(low); y <= Of(high); y++)
        {
            if (!_cells.TryGetValue((x, y), out var cell))
            {
                continue;
            }

            foreach (var number in cell)
            {
                if (_asked[number] != _question)
                {
                    _asked[number] = _question;
                    if (_things[number].Bounds.Touches(bounds))
                    {
                        yield return _things[number].Thing;
                    }
                }
            }
        }
    }

    private static int Of(double at) => (int)Math.Floor(at / Cell);
}
