using BracketGen.Design.Inputs;
using BracketGen.Geometry;
using BracketGen.SheetMetal.Bending;

namespace BracketGen.Design.Part;

/// <summary>Where two slabs of sheet in space are joined by a bend: position, direction and angle, its length still open.</summary>
/// <param name="Point">Where the bend's near edge crosses the across direction through the flat origin (mm).</param>
/// <param name="Across">Across the bend, from the flange that stays to the one that is bent; flat coordinates, length one.</param>
/// <param name="Turn">Bend angle, positive towards the top.</param>
/// <param name="InsideRadius">Inside radius (mm).</param>
/// <param name="Allowance">Bend allowance (mm).</param>
/// <param name="Rule">Where the allowance comes from.</param>
/// <param name="Next">Where the bent flange lies: flat coordinates and height to the throttle frame.</param>
public sealed record Joint(
    FlatPoint Point, Vector2 Across, Angle Turn, double InsideRadius, double Allowance, BendRule Rule, Frame Next)
{
    /// <summary>Largest bend angle from flat that is air bent on plain tooling (common practice, no source).</summary>
    public static readonly Angle MostTurn = Angle.FromDegrees(135);

    /// <summary>Minimum bend angle worth setting up a press brake for (common practice, no source).</summary>
    public static readonly Angle LeastTurn = Angle.FromDegrees(5);

    /// <summary>
    /// The joint between a flange in place and a slab; null where they are parallel, or stand at an angle that is not bent.
    /// </summary>
    /// <remarks>
    /// In the section square to both, with x across the bend from the flat origin and h above the flange's bottom, the bend's
    /// axis lies at height a over the bottom of either slab: a = t + r where it turns up, -r where it turns down. With bend
    /// angle A and the slab's bottom at distance b along its own top normal (-sin A, cos A): x = (a cos A - a - b) / sin A.
    /// </remarks>
    /// <param name="flange">The flange that stays: flat coordinates and height to the throttle frame.</param>
    /// <param name="bottom">Bottom of the slab to join; the normal is the direction of its top.</param>
    /// <param name="up">Whether the bend turns towards the top.</param>
    /// <param name="thickness">Thickness of the sheet (mm).</param>
    /// <param name="insideRadius">Inside radius (mm).</param>
    /// <param name="rule">Bend rule.</param>
    public static Joint? Between(
        Frame flange, Plane bottom, bool up, double thickness, double insideRadius, BendRule rule)
    {
        if (Section.Between(flange, bottom, up, thickness, insideRadius) is not { } section)
        {
            return null;
        }

        var (across, near, axis, sin, cos, _) = section;
        var turn = new Angle(Math.CopySign(Math.Clamp(Math.Abs(Math.Atan2(sin, cos)), LeastTurn.Radians, MostTurn.Radians), sin));
        var allowance = rule.Allowance(turn, insideRadius, thickness);
        if (!(allowance > 0))
        {
            return null;
        }

        var point = new FlatPoint(near * across);
        var next = flange.Shift(Vector3.From(-allowance * across)).Rotate(
            flange.ToThrottle(point, axis).Vector, flange.ToWorldDirection(Vector3.From(across).Cross(new(0, 0, 1))), turn);
        return new(point, across, turn, insideRadius, allowance, rule, next);
    }

    /// <summary>The same joint where the slab to join stands off from it by <paramref name="shift"/> (mm) along the direction of its top.</summary>
    /// <remarks>
    /// The near edge moves by -shift / sin A across the bend, the axis with it, and what hangs on the bend by as much less that
    /// movement turned by A.
    /// </remarks>
    /// <param name="flange">The flange that stays.</param>
    /// <param name="shift">How far (mm).</param>
    internal Joint MovedOut(Frame flange, double shift)
    {
        var by = -shift / Math.Sin(Turn.Radians);
        var movement = by * Vector3.From(Across);
        return this with
        {
            Point = Point + by * Across,
            Next = Next.Shift(Next.ToLocalDirection(flange.ToWorldDirection(movement)) - movement),
        };
    }

    /// <summary>A joint as the section square to both slabs shows it: all that its place depends on, without what hangs on it.</summary>
    /// <param name="Across">Across the bend; flat coordinates, length one.</param>
    /// <param name="Near">How far the bend's near edge lies from the flat origin along that (mm).</param>
    /// <param name="Axis">Height of the bend's axis over the flange's bottom (mm).</param>
    /// <param name="Sin">Sine of the bend angle, positive towards the top.</param>
    /// <param name="Cos">Cosine of the bend angle.</param>
    /// <param name="Top">Direction of the slab's top; flat coordinates and height, length one.</param>
    internal readonly record struct Section(Vector2 Across, double Near, double Axis, double Sin, double Cos, Vector3 Top)
    {
        // A bend of just the largest angle, as planes at 45° make it, is allowed whatever the rounding says.
        private static readonly double LeastCos = Math.Cos(MostTurn.Radians) - DesignTolerance.Cosine, MostCos = Math.Cos(LeastTurn.Radians) + DesignTolerance.Cosine;

        /// <summary>The section; null where <see cref="Joint.Between"/> has no joint for want of a bend angle.</summary>
        public static Section? Between(Frame flange, Plane bottom, bool up, double thickness, double insideRadius)
        {
            var top = flange.ToLocalDirection(bottom.Normal);
            var lean = Math.Sqrt(top.X * top.X + top.Y * top.Y);
            if (lean < DesignTolerance.NoBendLine || top.Z < LeastCos || top.Z > MostCos)
            {
                return null;
            }

            var across = (up ? -1 : 1) / lean * top.XY;
            var axis = up ? thickness + insideRadius : -insideRadius;
            var offset = flange.ToLocal(bottom.Point).Dot(top);
            var sin = up ? lean : -lean;
            return new(across, (axis * top.Z - axis - offset) / sin, axis, sin, top.Z, top);
        }

        /// <summary>How far (mm) a point, in the flange's coordinates, lies past the bend on the slab that is bent.</summary>
        public double Past(Vector3 point) => Past(point, Vector3.Zero);

        /// <summary>The same with the slab moved by <paramref name="moved"/> (mm), the flange's coordinates.</summary>
        public double Past(Vector3 point, Vector3 moved) =>
            (point.XY.Dot(Across) - Near + moved.Dot(Top) / Sin) * Cos + (point.Z - Axis) * Sin;
    }

    /// <summary>Along the bend, in flat coordinates: the across direction is to its left.</summary>
    public Vector2 Along => -Across.Left;

    /// <summary>The bend from <paramref name="from"/> to <paramref name="to"/> (mm) along it, counted from the flat origin.</summary>
    public Bend ToBend(int flange, double from, double to) => new()
    {
        From = flange,
        To = flange + 1,
        Start = Point + (from - Point.Vector.Dot(Along)) * Along,
        End = Point + (to - Point.Vector.Dot(Along)) * Along,
        Turn = Turn,
        InsideRadius = InsideRadius,
        Allowance = Allowance,
        Rule = Rule,
    };
}
