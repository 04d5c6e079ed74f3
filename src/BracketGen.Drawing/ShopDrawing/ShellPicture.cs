using BracketGen.Drawing.Sheet;
using BracketGen.Geometry;
using BracketGen.Strength.Model;

namespace BracketGen.Drawing.ShopDrawing;

/// <summary>The calculated middle surface seen along a line of sight, each triangle in the colour of its value.</summary>
internal static class ShellPicture
{
    /// <summary>Neighbours overlap by this (mm on paper), or a viewer lets the paper shine through between them.</summary>
    private const double Overlap = 0.04;

    /// <summary>Smaller than this on paper (mm, mm²) is not drawn: a viewer draws nothing of it, and an edge without length has no direction.</summary>
    private const double NoSize = 1e-6;

    /// <summary>The picture; the view's origin is the block's.</summary>
    /// <param name="nodes">Where the nodes are (mm).</param>
    /// <param name="triangles">The triangles.</param>
    /// <param name="values">Value of each node.</param>
    /// <param name="view">The view: x to the right, y up, z towards the eye.</param>
    /// <param name="scale">Paper over nature.</param>
    /// <param name="colours">The colours.</param>
    public static SheetBlock Draw(
        IReadOnlyList<Vector3> nodes, IReadOnlyList<Triangle> triangles, IReadOnlyList<double> values, Frame view, double scale, ValueScale colours)
    {
        var points = nodes.Select(view.ToLocal).ToArray();
        var rims = Rims(triangles);
        var items = new List<SheetItem>();
        foreach (var t in triangles.OrderBy(t => points[t.A].Z + points[t.B].Z + points[t.C].Z))
        {
            Vector2 a = scale * points[t.A].XY, b = scale * points[t.B].XY, c = scale * points[t.C].XY;
            var area = (b - a).Cross(c - a);
            if (Math.Abs(area) > NoSize)
            {
                var middle = (a + b + c) / 3;
                Vector2 Grown(Vector2 p) => p + Overlap * (p - middle).Unit;
                items.AddRange(colours.Bands((Grown(a), values[t.A]), (Grown(b), values[t.B]), (Grown(c), values[t.C])));
            }

            foreach (var (from, to) in new[] { (t.A, t.B), (t.B, t.C), (t.C, t.A) })
            {
                if (rims.Contains((from, to)) && scale * points[from].XY is var start && scale * points[to].XY is var end && start.DistanceTo(end) > NoSize)
                {
                    items.Add(new Stroke(start, end, LineKind.Rule));
                }
            }
        }

        return SheetBlock.Around(items);
    }

    /// <summary>The edges that only one triangle has, as that triangle runs along them.</summary>
    public static HashSet<(int From, int To)> Rims(IReadOnlyList<Triangle> triangles)
    {
        var rims = new HashSet<(int, int)>();
        foreach (var t in triangles)
        {
            foreach (var (a, b) in new[] { (t.A, t.B), (t.B, t.C), (t.C, t.A) })
            {
                if (!rims.Remove((b, a)))
                {
                    rims.Add((a, b));
                }
            }
        }

        return rims;
    }
}
