using BracketGen.Geometry;
using BracketGen.SheetMetal;

namespace BracketGen.Design;

/// <summary>How near the folded sheet comes to something else in space.</summary>
/// <remarks>
/// Branch and bound over the sheet in flat coordinates and height. A signed distance changes by at most a millimetre per
/// millimetre, so the distance at a box's middle less the box's half diagonal bounds the whole box; boxes that can hold
/// nothing nearer are dropped. In a bend the outside is stretched, which the half diagonal allows for.
/// </remarks>
public static class Clearance
{
    private readonly record struct Box(Vector2 Middle, double Height, Vector2 Half, double HalfHeight, bool AllMetal)
    {
        public double Reach => Half.Length;
    }

    /// <summary>
    /// Least signed distance (mm) from the sheet to the thing whose signed distance is <paramref name="distance"/>: a lower
    /// bound, at most <paramref name="error"/> (mm), or a fiftieth of it where it is larger, below the true value.
    /// </summary>
    /// <param name="sheet">The folded sheet.</param>
    /// <param name="distance">Signed distance (mm) of a point of the throttle frame, negative inside.</param>
    /// <param name="error">Largest error (mm).</param>
    /// <param name="within">
    /// Only the sheet where this is positive: a signed distance (mm) in the flat pattern, such as a bend's depth; null for all of it.
    /// </param>
    /// <param name="enough">A distance (mm) above which the exact value does not matter: the search stops refining there.</param>
    public static double Least(
        FoldedSheet sheet, Func<Vector3, double> distance, double error, Func<Vector2, double>? within = null, double enough = double.PositiveInfinity)
    {
        var flat = sheet.Flat;
        var queue = new PriorityQueue<Box, double>();
        var best = double.PositiveInfinity;
        double Settled() => double.IsInfinity(best) ? best : best - Math.Max(error, best / 50);
        var bounds = flat.Blank.Outline.Bounds;
        var halfThickness = flat.Thickness / 2;
        Push(new(bounds.Centre, halfThickness, new(bounds.Width / 2, bounds.Height / 2), halfThickness, false));
        while (queue.TryDequeue(out var box, out var bound))
        {
            if (bound >= Settled() || bound >= enough)
            {
                return Math.Min(bound, best);
            }

            foreach (var half in Split(box))
            {
                Push(half);
            }
        }

        return best;

        void Push(Box box)
        {
            var reach = box.Reach;
            var inMetal = true;
            if (!box.AllMetal)
            {
                var depth = flat.Blank.DepthOf(box.Middle);
                if (depth < -reach)
                {
                    return; // Wholly off the blank or in a hole.
                }

                inMetal = depth >= 0;
                box = box with { AllMetal = depth >= reach };
            }

            if (within is not null)
            {
                var past = within(box.Middle);
                if (past < -reach)
                {
                    return;
                }

                inMetal &= past >= 0;
            }

            var stretched = Stretch(flat, box) * reach;
            var radius = Math.Sqrt(stretched * stretched + box.HalfHeight * box.HalfHeight);
            var here = distance(sheet.Fold(box.Middle, box.Height));
            if (inMetal)
            {
                // Probing both faces as well makes the upper bound tight at once where the sheet lies flat to the thing.
                best = Math.Min(best, Math.Min(here, Math.Min(
                    distance(sheet.Fold(box.Middle, box.Height - box.HalfHeight)),
                    distance(sheet.Fold(box.Middle, box.Height + box.HalfHeight)))));
            }

            if (here - radius < Settled())
            {
                queue.Enqueue(box, here - radius);
            }
        }
    }

    private static double Stretch(FlatPattern flat, Box box)
    {
        var stretch = 1.0;
        foreach (var bend in flat.Bends)
        {
            var depth = bend.Depth(box.Middle);
            if (depth > -box.Reach && depth < bend.Allowance + box.Reach)
            {
                stretch = Math.Max(stretch, (bend.InsideRadius + flat.Thickness) * bend.Turn.Magnitude.Radians / bend.Allowance);
            }
        }

        return stretch;
    }

    private static IEnumerable<Box> Split(Box box)
    {
        if (box.HalfHeight >= box.Half.X && box.HalfHeight >= box.Half.Y)
        {
            var half = box.HalfHeight / 2;
            return [box with { Height = box.Height - half, HalfHeight = half }, box with { Height = box.Height + half, HalfHeight = half }];
        }

        var step = box.Half.X >= box.Half.Y ? new Vector2(box.Half.X / 2, 0) : new Vector2(0, box.Half.Y / 2);
        var shrunk = box.Half - step;
        return [box with { Middle = box.Middle - step, Half = shrunk }, box with { Middle = box.Middle + step, Half = shrunk }];
    }
}
