namespace BracketGen.Geometry;

/// <summary>A convex solid in space, known by the farthest point of it in any direction.</summary>
/// <remarks>
/// The support mapping of convex geometry: whatever is convex has one, and <see cref="SolidGap"/> needs nothing else. Lengths in mm.
/// </remarks>
public sealed class ConvexSolid
{
    private readonly Func<Vector3, Vector3> _farthest;

    private double _reach = double.NaN;

    private ConvexSolid(Func<Vector3, Vector3> farthest, Vector3 inside, double rounding) =>
        (_farthest, Inside, Rounding) = (farthest, inside, rounding);

    /// <summary>A point of it, not counting <see cref="Rounding"/>.</summary>
    public Vector3 Inside { get; }

    /// <summary>How far its surface lies outside the solid whose farthest points are known (mm): the radius of a wire, for one; negative where it lies inside.</summary>
    public double Rounding { get; }

    /// <summary>Radius of a ball about <see cref="Inside"/> that holds all of it, its rounding included (mm).</summary>
    public double Reach
    {
        get
        {
            if (double.IsNaN(_reach))
            {
                // The farthest corner of the box round it.
                double Along(Vector3 axis) => Math.Max((Farthest(axis) - Inside).Dot(axis), (Farthest(-axis) - Inside).Dot(-axis));
                _reach = new Vector3(Along(new(1, 0, 0)), Along(new(0, 1, 0)), Along(new(0, 0, 1))).Length + Math.Max(0, Rounding);
            }

            return _reach;
        }
    }

    /// <summary>The point of the solid, <see cref="Rounding"/> not counted, that lies farthest in a direction of any length but zero.</summary>
    public Vector3 Farthest(Vector3 direction) => _farthest(direction);

    /// <summary>The same solid with its surface moved out by <paramref name="by"/> (mm), or in where it is negative.</summary>
    public ConvexSolid Grown(double by) => by == 0 ? this : new(_farthest, Inside, Rounding + by);

    /// <summary>The same solid moved.</summary>
    /// <param name="by">How far and which way.</param>
    public ConvexSolid Shifted(Vector3 by) => by == Vector3.Zero ? this : new(d => _farthest(d) + by, Inside + by, Rounding);

    /// <summary>A box along the axes.</summary>
    /// <param name="min">Corner of minimum x, y and z.</param>
    /// <param name="max">Corner of maximum x, y and z.</param>
    public static ConvexSolid Box(Vector3 min, Vector3 max) => new(
        d => new(d.X >= 0 ? max.X : min.X, d.Y >= 0 ? max.Y : min.Y, d.Z >= 0 ? max.Z : min.Z), 0.5 * (min + max), 0);

    /// <summary>A box at any angle.</summary>
    /// <param name="corner">One corner; the edges from it run along the frame's axes.</param>
    /// <param name="size">Lengths of these edges.</param>
    public static ConvexSolid TiltedBox(Frame corner, Vector3 size) => new(
        d => corner.ToWorld(new Vector3(d.Dot(corner.X) >= 0 ? size.X : 0, d.Dot(corner.Y) >= 0 ? size.Y : 0, d.Dot(corner.Z) >= 0 ? size.Z : 0)),
        corner.ToWorld(0.5 * size), 0);

    /// <summary>A cylinder with flat ends.</summary>
    /// <param name="from">Centre of one end.</param>
    /// <param name="to">Centre of the other end; the same point for a flat disc is not allowed.</param>
    /// <param name="radius">Radius, zero or more.</param>
    /// <exception cref="InvalidOperationException">The ends are one point: the cylinder has no axis.</exception>
    public static ConvexSolid Cylinder(Vector3 from, Vector3 to, double radius)
    {
        var axis = (to - from).Unit;
        return new(
            d =>
            {
                var along = d.Dot(axis);
                var across = d - along * axis;
                var length = across.Length;
                var end = along >= 0 ? to : from;

                // Along the axis every point of the end is farthest, and what is left across is round-off with any direction.
                return length > Tolerance.Direction * d.Length ? end + radius / length * across : end;
            },
            0.5 * (from + to), 0);
    }

    /// <summary>A flat plate with a convex outline.</summary>
    /// <param name="frame">Its frame: the outline in x and y.</param>
    /// <param name="corners">Corners of the outline, at least three.</param>
    /// <param name="from">Height of its lower face along z.</param>
    /// <param name="to">Height of its upper face.</param>
    public static ConvexSolid Plate(Frame frame, IReadOnlyList<Vector2> corners, double from, double to) => new(
        d =>
        {
            var local = frame.ToLocalDirection(d);
            var farthest = corners[0];
            foreach (var corner in corners)
            {
                farthest = corner.Dot(local.XY) > farthest.Dot(local.XY) ? corner : farthest;
            }

            return frame.ToWorld(farthest, local.Z >= 0 ? to : from);
        },
        frame.ToWorld(corners.Aggregate(Vector2.Zero, (sum, c) => sum + c) / corners.Count, (from + to) / 2), 0);

    /// <summary>A straight piece of wire or tube with round ends; a ball where both points are one.</summary>
    /// <param name="from">One end of its centre line.</param>
    /// <param name="to">The other end.</param>
    /// <param name="radius">Radius, zero or more.</param>
    public static ConvexSolid Rod(Vector3 from, Vector3 to, double radius) =>
        new(d => (to - from).Dot(d) >= 0 ? to : from, 0.5 * (from + to), radius);

    /// <summary>A flat triangle of a thickness with round edges: what a wire sweeps that turns about one of its ends.</summary>
    /// <param name="a">First corner.</param>
    /// <param name="b">Second corner.</param>
    /// <param name="c">Third corner.</param>
    /// <param name="radius">Half its thickness.</param>
    public static ConvexSolid Triangle(Vector3 a, Vector3 b, Vector3 c, double radius) => new(
        d => a.Dot(d) >= b.Dot(d) ? (a.Dot(d) >= c.Dot(d) ? a : c) : (b.Dot(d) >= c.Dot(d) ? b : c), (a + b + c) / 3, radius);

    /// <summary>A sector of a disc about the z axis, square to it.</summary>
    /// <param name="from">Polar angle where it begins.</param>
    /// <param name="to">Polar angle where it ends, at most half a turn on; two whole turns or more give the whole disc.</param>
    /// <param name="radius">Radius.</param>
    /// <param name="half">Half its thickness, on each side of z = 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The sector is more than half a turn and less than a whole one: it is not convex.</exception>
    public static ConvexSolid Sector(Angle from, Angle to, double radius, double half)
    {
        var aperture = (to - from).Radians / 2;
        if (aperture >= Math.PI)
        {
            return Cylinder(new(0, 0, -half), new(0, 0, half), radius);
        }

        if (aperture > Math.PI / 2 + Tolerance.Direction)
        {
            throw new ArgumentOutOfRangeException(nameof(to), to, "A sector of more than half a turn is not convex.");
        }

        Vector2 first = Vector2.FromPolar(radius, from), last = Vector2.FromPolar(radius, to), middle = Vector2.FromPolar(1, from + new Angle(aperture));
        var cosine = Math.Cos(aperture);
        return new(
            d =>
            {
                var z = d.Z >= 0 ? half : -half;
                var flat = d.XY;
                var length = flat.Length;
                if (length > 0 && flat.Dot(middle) >= cosine * length)
                {
                    return Vector3.From(radius / length * flat, z);
                }

                var corner = flat.Dot(first) >= flat.Dot(last) ? first : last;
                return Vector3.From(flat.Dot(corner) > 0 ? corner : Vector2.Zero, z);
            },
            Vector3.From(0.5 * radius * middle), 0);
    }
}
