using BracketGen.Geometry;

namespace BracketGen.Design.Inputs;

/// <summary>A space on the engine that bracket, cable and quadrant must stay out of.</summary>
/// <remarks>Throttle frame, mm.</remarks>
/// <param name="Name">What is there, in the user's words.</param>
public abstract record KeepOut(string Name) : IMirrored<KeepOut>
{
    /// <summary>Signed distance (mm) from its surface: negative inside.</summary>
    public abstract double DistanceTo(ThrottlePoint point);

    /// <summary>The same space as a solid, for gaps to other solids.</summary>
    public abstract ConvexSolid Solid { get; }

    /// <inheritdoc/>
    public abstract KeepOut Mirrored();

    /// <summary>Signed distance (mm) of a point, counted from a box's middle along its edges, from the surface of the box.</summary>
    private protected static double FromBox(Vector3 point, Vector3 half)
    {
        double x = Math.Abs(point.X) - half.X, y = Math.Abs(point.Y) - half.Y, z = Math.Abs(point.Z) - half.Z;
        return new Vector3(Math.Max(x, 0), Math.Max(y, 0), Math.Max(z, 0)).Length + Math.Min(Math.Max(x, Math.Max(y, z)), 0);
    }
}

/// <summary>An upright box between two corners.</summary>
/// <param name="Name">What is there.</param>
/// <param name="Min">Corner of minimum x, y and z (mm).</param>
/// <param name="Max">Corner of maximum x, y and z (mm).</param>
public sealed record KeepOutBox(string Name, ThrottlePoint Min, ThrottlePoint Max) : KeepOut(Name)
{
    /// <inheritdoc/>
    public override double DistanceTo(ThrottlePoint point) => FromBox(point - ThrottlePoint.Middle(Min, Max), 0.5 * (Max - Min));

    /// <inheritdoc/>
    public override ConvexSolid Solid => ConvexSolid.Box(Min.Vector, Max.Vector);

    /// <inheritdoc/>
    public override KeepOut Mirrored() => new KeepOutBox(Name, new(Min.X, -Max.Y, Min.Z), new(Max.X, -Min.Y, Max.Z));
}

/// <summary>A box that stands at any angle.</summary>
/// <param name="Name">What is there.</param>
/// <param name="Corner">One corner; the edges from it run along the frame's axes (mm).</param>
/// <param name="Size">Lengths of these edges (mm), positive.</param>
public sealed record KeepOutTiltedBox(string Name, Frame Corner, Vector3 Size) : KeepOut(Name)
{
    /// <summary>The box by one corner and the three corners next to it.</summary>
    /// <remarks>Measured edges are never quite square: the first is kept, the second and the third are laid square to it, as long as they reach that way.</remarks>
    /// <param name="name">What is there.</param>
    /// <param name="corner">The corner (mm).</param>
    /// <param name="next">The three corners next to it, in any order (mm), not in one plane with it.</param>
    public static KeepOutTiltedBox Of(string name, ThrottlePoint corner, IReadOnlyList<ThrottlePoint> next)
    {
        Vector3 one = next[0] - corner, two = next[1] - corner, three = next[2] - corner;
        if (one.Cross(two).Dot(three) < 0)
        {
            (two, three) = (three, two);
        }

        var z = one.Cross(two).Unit;
        var frame = Frame.FromZX(corner.Vector, z, one);
        return new(name, frame, new(one.Length, two.Dot(frame.Y), three.Dot(z)));
    }

    /// <inheritdoc/>
    public override double DistanceTo(ThrottlePoint point) => FromBox(Corner.ToLocal(point.Vector) - 0.5 * Size, 0.5 * Size);

    /// <inheritdoc/>
    public override ConvexSolid Solid => ConvexSolid.TiltedBox(Corner, Size);

    /// <inheritdoc/>
    /// <remarks>The frame stays right-handed: its corner is the one at the other end of its first edge.</remarks>
    public override KeepOut Mirrored() => this with { Corner = Corner.Shift(new(Size.X, 0, 0)).Mirrored() };
}

/// <summary>A cylinder with flat ends.</summary>
/// <param name="Name">What is there.</param>
/// <param name="From">Centre of one end (mm).</param>
/// <param name="To">Centre of the other end (mm), another point.</param>
/// <param name="Radius">Radius (mm), positive.</param>
public sealed record KeepOutCylinder(string Name, ThrottlePoint From, ThrottlePoint To, double Radius) : KeepOut(Name)
{
    /// <inheritdoc/>
    public override double DistanceTo(ThrottlePoint point)
    {
        var axis = To - From;
        var half = axis.Length / 2;
        var from = point - ThrottlePoint.Middle(From, To);
        var along = from.Dot(axis.Unit);
        var out_ = Math.Sqrt(Math.Max(0, from.Dot(from) - along * along)) - Radius;
        var past = Math.Abs(along) - half;
        return Math.Min(Math.Max(out_, past), 0) + new Vector2(Math.Max(out_, 0), Math.Max(past, 0)).Length;
    }

    /// <inheritdoc/>
    public override ConvexSolid Solid => ConvexSolid.Cylinder(From.Vector, To.Vector, Radius);

    /// <inheritdoc/>
    public override KeepOut Mirrored() => this with { From = From.Mirrored(), To = To.Mirrored() };
}
