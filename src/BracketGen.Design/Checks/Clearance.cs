using BracketGen.Design.Inputs;
using BracketGen.Geometry;
using BracketGen.SheetMetal.Patterns;

namespace BracketGen.Design.Checks;

/// <summary>A convex thing in space: the signed distance (mm) of a point from its surface, negative inside.</summary>
/// <remarks>The signed distance from a convex set is a convex function; the search for the nearest point leans on it.</remarks>
public delegate double ConvexDistance(ThrottlePoint point);

/// <summary>How near the folded sheet comes to something else in space.</summary>
/// <remarks>
/// Branch and bound over the sheet in flat coordinates and height. On a flange the way from flat to folded is rigid, so a convex
/// distance stays convex there, and its tangent at a box's middle bounds it over the whole box: exact at once where faces are
/// parallel. In a bend the distance changes by at most a millimetre per millimetre of stretched sheet. Boxes that can hold
/// nothing nearer are dropped.
/// </remarks>
public static class Clearance
{
    private readonly record struct Box(FlatPoint Middle, double Height, Vector2 Half, double HalfHeight, bool AllMetal)
    {
        public double Reach => Half.Length;
    }

    /// <summary>Half a micrometre (mm): what nobody can make or measure, and what a distance exactly on its limit may be rounded by.</summary>
    private const double Negligible = 0.0005;

    /// <summary>Error (mm) that is good enough where the sheet is inside the thing anyway.</summary>
    private const double ErrorInside = 1;

    /// <summary>
    /// Least signed distance (mm) from the sheet to the union of <paramref name="things"/>: a lower bound to half a micrometre, at
    /// most <paramref name="error"/> (mm), or a fiftieth of it where it is larger, below the true value; where they overlap, at
    /// most a millimetre. The error never decides whether <paramref name="limit"/> is kept.
    /// </summary>
    /// <param name="sheet">The folded sheet.</param>
    /// <param name="things">Convex things; infinity comes back where there is none.</param>
    /// <param name="error">Largest error (mm).</param>
    /// <param name="limit">Distance (mm) that is to be kept.</param>
    /// <param name="within">
    /// Only the sheet where this is positive: a signed distance (mm) in the flat pattern, such as a bend's depth; null for all of it.
    /// </param>
    public static double Least(
        FoldedSheet sheet, IEnumerable<ConvexDistance> things, double error, double limit, Func<FlatPoint, double>? within = null)
    {
        double nearest = double.PositiveInfinity, bound = double.PositiveInfinity;
        foreach (var thing in things)
        {
            var (near, low) = Least(sheet, thing, best => Settled(best, error, limit), within, nearest);
            nearest = Math.Min(nearest, near);
            bound = Math.Min(bound, low);
        }

        return Math.Min(nearest, bound + Negligible);
    }

    /// <summary>Whether the sheet keeps <paramref name="limit"/> (mm) from all of <paramref name="things"/>: what the least distance would say, sooner.</summary>
    /// <param name="sheet">The folded sheet.</param>
    /// <param name="things">Convex things.</param>
    /// <param name="limit">Distance (mm) that is to be kept.</param>
    /// <param name="within">Only the sheet where this is positive; null for all of it.</param>
    public static bool Keeps(
        FoldedSheet sheet, IEnumerable<ConvexDistance> things, double limit, Func<FlatPoint, double>? within = null)
    {
        // One point too near ends the search; until then, only boxes that may hold one are looked into.
        double Settled(double best) => best < limit ? double.NegativeInfinity : limit - Negligible;
        return things.All(thing => Least(sheet, thing, Settled, within, double.PositiveInfinity).Nearest >= limit);
    }

    // What a box must promise to be left alone, with something found at `best`.
    private static double Settled(double best, double error, double limit)
    {
        if (double.IsInfinity(best))
        {
            return best;
        }

        var settled = best <= 0 ? best - ErrorInside : best - Math.Max(error, best / 50);
        return best >= limit && settled < limit ? limit - Negligible : settled;
    }

    private static (double Nearest, double Bound) Least(
        FoldedSheet sheet, ConvexDistance thing, Func<double, double> settled, Func<FlatPoint, double>? within, double best) =>
        new Search(sheet, thing, settled, within, best).Run();

    /// <summary>The search for the place nearest to one thing.</summary>
    private sealed class Search(
        FoldedSheet sheet, ConvexDistance thing, Func<double, double> settled, Func<FlatPoint, double>? within, double best)
    {
        private readonly PriorityQueue<Box, double> _queue = new();
        private double _best = best;
        private double _dropped = double.PositiveInfinity;

        public (double Nearest, double Bound) Run()
        {
            var bounds = sheet.Flat.Blank.Outline.Bounds;
            var halfThickness = sheet.Flat.Thickness / 2;
            Push(new(new(bounds.Centre), halfThickness, new(bounds.Width / 2, bounds.Height / 2), halfThickness, false));
            while (_queue.TryDequeue(out var box, out var bound))
            {
                if (bound >= settled(_best))
                {
                    return (_best, Math.Min(bound, _dropped));
                }

                foreach (var half in Split(box))
                {
                    Push(half);
                }
            }

            return (_best, _dropped);
        }

        private void Push(Box box)
        {
            if (!MayHoldMetal(ref box, out var inMetal))
            {
                return;
            }

            var place = sheet.Fold(box.Middle, box.Height);
            var here = thing(place);
            if (inMetal && here - box.HalfHeight < _best)
            {
                // Probing both faces as well makes the upper bound tight at once where the sheet lies flat to the thing. Neither is nearer than
                // the middle by more than half the height.
                _best = Math.Min(_best, Math.Min(here, Math.Min(
                    thing(sheet.Fold(box.Middle, box.Height - box.HalfHeight)),
                    thing(sheet.Fold(box.Middle, box.Height + box.HalfHeight)))));
            }

            var bound = here - LargestDrop(sheet, thing, box, place, here);
            if (bound < settled(_best))
            {
                _queue.Enqueue(box, bound);
            }
            else
            {
                _dropped = Math.Min(_dropped, bound);
            }
        }

        // False if the box lies wholly off the blank, in a hole or outside the part asked for; otherwise whether its middle is metal.
        private bool MayHoldMetal(ref Box box, out bool inMetal)
        {
            var reach = box.Reach;
            inMetal = true;
            if (!box.AllMetal)
            {
                var depth = sheet.Flat.Blank.DepthOf(box.Middle.Vector);
                if (depth < -reach)
                {
                    return false;
                }

                inMetal = depth >= 0;
                box = box with { AllMetal = depth >= reach };
            }

            if (within is null)
            {
                return true;
            }

            var past = within(box.Middle);
            inMetal &= past >= 0;
            return !(past < -reach);
        }
    }

    private static double LargestDrop(FoldedSheet sheet, ConvexDistance thing, Box box, ThrottlePoint place, double here)
    {
        var flat = sheet.Flat;
        var (stretch, detour) = (1.0, 0.0);
        foreach (var bend in flat.Bends)
        {
            var depth = bend.Depth(box.Middle);
            if (box.Reach > bend.Relief / 4 && bend.Relief > 0 && depth > -box.Reach && bend.IsAtCut(box.Middle, box.Reach))
            {
                // A smaller box there lies in the width of the cut: metal in it says that there is no cut.
                // What lies on either side of a relief cut hangs together only round the end of the cut: back to the bend's line and out again.
                stretch = Math.Max(stretch, (bend.InsideRadius + flat.Thickness) * bend.Turn.Magnitude.Radians / bend.Allowance);
                detour = Math.Max(detour, 2 * (depth + box.Reach));
            }

            if (depth > -box.Reach && depth < bend.Allowance + box.Reach)
            {
                stretch = Math.Max(stretch, (bend.InsideRadius + flat.Thickness) * bend.Turn.Magnitude.Radians / bend.Allowance);
            }
        }

        var reach = stretch * (box.Reach + detour);
        var far = Math.Sqrt(reach * reach + box.HalfHeight * box.HalfHeight);
        if (stretch > 1 || detour > 0)
        {
            return far;
        }

        var frame = sheet.Flanges[flat.ZoneOf(box.Middle).Flange];
        double Drop(Vector3 axis, double half) => Math.Abs(thing(place + DesignTolerance.TangentStep * axis) - here) / DesignTolerance.TangentStep * half;
        var tangent = Drop(frame.X, box.Half.X) + Drop(frame.Y, box.Half.Y) + Drop(frame.Z, box.HalfHeight);
        return Math.Min(far, tangent + DesignTolerance.TangentError);
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
