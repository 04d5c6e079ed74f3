using BracketGen.Geometry;

namespace BracketGen.SheetMetal.Forming;

/// <summary>How a piece of the part lies to the leg on its side of the bend.</summary>
internal enum Lie
{
    /// <summary>It is the leg: in its plane, on its own side of the bend.</summary>
    Leg,

    /// <summary>In the leg's plane, but past the bend: a wing beside it, which goes down while the leg goes up.</summary>
    Wing,

    /// <summary>It stands at an angle to the leg, or is a bend that is made.</summary>
    Standing,
}

/// <summary>A flat piece of the part: a flange, the strip of a bend not yet made, or one of the chords that stand for a bend that is made.</summary>
/// <remarks>Coordinates (mm): across and up in the section, counted from its carrier's origin, and along the bend.</remarks>
internal sealed class Slab
{
    private readonly Vector3 _origin, _x, _y, _z;
    private Slab? _profile;

    /// <summary>A polygon in the plane of <paramref name="x"/> and <paramref name="y"/> (length one, at right angles), as thick as the sheet along <paramref name="z"/>.</summary>
    public Slab(Carrier carrier, int flange, Lie lie, Vector3 origin, Vector3 x, Vector3 y, Vector3 z, double thickness, Vector2[] polygon)
    {
        (Carrier, Flange, Lie, Thickness, Polygon) = (carrier, flange, lie, thickness, polygon);
        (_origin, _x, _y, _z) = (origin, x, y, z);
        Vector2 min = polygon[0], max = min;
        foreach (var p in polygon)
        {
            min = new(Math.Min(min.X, p.X), Math.Min(min.Y, p.Y));
            max = new(Math.Max(max.X, p.X), Math.Max(max.Y, p.Y));
        }

        (Min, Max) = (min, max);
        Corners = new Vector2[8];
        for (var i = 0; i < 8; i++)
        {
            var p = origin + ((i & 1) == 0 ? min.X : max.X) * x + ((i & 2) == 0 ? min.Y : max.Y) * y + ((i & 4) == 0 ? 0 : thickness) * z;
            Corners[i] = p.XY;
            Reach = Math.Max(Reach, p.XY.Length);
        }
    }

    public Carrier Carrier { get; }

    /// <summary>The flange it belongs to; of a bend, the flange that the bend makes.</summary>
    public int Flange { get; }

    public Lie Lie { get; }

    /// <summary>Whether it is the leg that is being bent, or a part of it.</summary>
    public bool IsLeg => Lie == Lie.Leg;

    public double Thickness { get; }

    public Vector2[] Polygon { get; }

    public Vector2 Min { get; }

    public Vector2 Max { get; }

    /// <summary>Corners of a box around it, in the section.</summary>
    public Vector2[] Corners { get; }

    /// <summary>Largest distance of any of it from the carrier's origin, in the section.</summary>
    public double Reach { get; }

    /// <summary>
    /// For tools that have no ends along the bend: the same where it lies askew to the bend; where it lies along it, the rectangle that has the same section.
    /// </summary>
    public Slab Profile => _profile ??= Math.Abs(_z.Z) < Tolerance.Direction ? Rectangle() : this;

    /// <summary>Where its own origin and axes lie when its carrier stands at a place.</summary>
    public (Vector3 Origin, Vector3 X, Vector3 Y, Vector3 Z) In(Placement place) =>
        (Moved(place, _origin, true), Moved(place, _x, false), Moved(place, _y, false), Moved(place, _z, false));

    /// <summary>The points of its outline, on both faces, in the section.</summary>
    public IEnumerable<Vector2> Section(Placement place)
    {
        var (origin, x, y, z) = In(place);
        return Polygon.SelectMany(p => new[] { (origin + p.X * x + p.Y * y).XY, (origin + p.X * x + p.Y * y + Thickness * z).XY });
    }

    /// <summary>It as convex bodies that another slab must stay clear of.</summary>
    /// <param name="whole">Whether to put one box around it, which may be larger than itself.</param>
    public IReadOnlyList<ConvexBody> Bodies(bool whole) =>
        [.. (whole ? [[Min, new(Max.X, Min.Y), Max, new(Min.X, Max.Y)]] : ConvexParts.Of(Polygon)).Select(Body)];

    private Slab Rectangle()
    {
        Vector3 across = new(_z.Y, -_z.X, 0), along = new(0, 0, 1);
        Vector2 min = new(double.PositiveInfinity, double.PositiveInfinity), max = -min;
        foreach (var p in Polygon)
        {
            var point = _origin + p.X * _x + p.Y * _y;
            var (s, w) = (point.Dot(across), point.Z);
            min = new(Math.Min(min.X, s), Math.Min(min.Y, w));
            max = new(Math.Max(max.X, s), Math.Max(max.Y, w));
        }

        var foot = _origin - _origin.Dot(across) * across;
        return new(Carrier, Flange, Lie, new(foot.X, foot.Y, 0), across, along, _z, Thickness, [min, new(max.X, min.Y), max, new(min.X, max.Y)]);
    }

    private ConvexBody Body(Vector2[] polygon)
    {
        var faces = new HalfSpace[polygon.Length + 2];
        var count = 0;
        for (var i = 0; i < polygon.Length; i++)
        {
            var along = polygon[(i + 1) % polygon.Length] - polygon[i];
            if (along.Length > Tolerance.Point)
            {
                var out_ = -along.Unit.Left;
                var normal = out_.X * _x + out_.Y * _y;
                faces[count++] = new(normal, normal.Dot(_origin) + out_.Dot(polygon[i]));
            }
        }

        faces[count++] = new(_z, _z.Dot(_origin) + Thickness);
        faces[count++] = new(-_z, -_z.Dot(_origin));
        return new(Obstruction.Itself, Carrier, faces[..count], Corners);
    }

    private static Vector3 Moved(Placement place, Vector3 v, bool isPoint)
    {
        var moved = isPoint ? place.Point(v.XY) : place.Direction(v.XY);
        return new(moved.X, moved.Y, v.Z);
    }
}
