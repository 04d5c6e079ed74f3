using BracketGen.Geometry;

namespace BracketGen.Photo;

/// <summary>A camera that looks at a face: where it stands, its lens, and how the lens bends straight lines.</summary>
/// <remarks>
/// A pinhole with square pixels and radial distortion (D. C. Brown, Photogrammetric Engineering 37 (1971) 855-866; R. Hartley and A. Zisserman, Multiple View Geometry in Computer
/// Vision, 2nd edition, section 7.4). Frame of the face: x to the right, y up, z towards the camera (mm); of the photograph: pixels, x to the right, y down.
/// The distortion is a polynomial of the distance from the lens's axis over half the diagonal of the photograph.
/// </remarks>
internal sealed class Camera
{
    /// <summary>Number of parameters.</summary>
    public const int Count = 12;

    /// <summary>Places of the parameters: three of turning, three of place, logarithm of the focal length, the lens's axis, distortion, scale of the target.</summary>
    public const int Turn = 0, Place = 3, Focal = 6, AxisX = 7, AxisY = 8, Bend = 9, BendMore = 10, Scale = 11;

    /// <summary>How many numbers are known of the camera of a photograph before its marks are.</summary>
    public static int Known(Photograph photograph) => Count - Focal + (photograph.Distance is null ? 0 : 1);

    // Newton's steps for the distortion the other way: five take any lens that is let through to round-off.
    private const int Steps = 8;

    private readonly Vector3 _r1, _r2, _r3, _place;
    private readonly double _focal, _bend, _bendMore, _half;
    private readonly Vector2 _axis;

    /// <param name="parameters">As the constants above number them.</param>
    /// <param name="rows">What the turning starts from: three rows of a rotation.</param>
    /// <param name="half">Half the diagonal of the photograph (pixels).</param>
    public Camera(IReadOnlyList<double> parameters, (Vector3, Vector3, Vector3) rows, double half)
    {
        var turn = new Vector3(parameters[Turn], parameters[Turn + 1], parameters[Turn + 2]);
        (_r1, _r2, _r3) = (Turned(rows.Item1, turn), Turned(rows.Item2, turn), Turned(rows.Item3, turn));
        _place = new(parameters[Place], parameters[Place + 1], parameters[Place + 2]);
        _focal = Math.Exp(parameters[Focal]);
        _axis = new(parameters[AxisX], parameters[AxisY]);
        (_bend, _bendMore, _half) = (parameters[Bend], parameters[BendMore], half);
        Size = parameters[Scale];
    }

    /// <summary>True size of the printed target for one of its own.</summary>
    public double Size { get; }

    /// <summary>Where the lens is (mm).</summary>
    public Vector3 Eye => -(_place.X * _r1 + _place.Y * _r2 + _place.Z * _r3);

    /// <summary>The way the camera looks.</summary>
    public Vector3 Ahead => _r3;

    /// <summary>Where the camera sees a point (pixels).</summary>
    public Vector2 See(Vector3 point)
    {
        var seen = new Vector3(_r1.Dot(point), _r2.Dot(point), _r3.Dot(point)) + _place;
        var straight = _focal * new Vector2(seen.X / seen.Z, seen.Y / seen.Z);
        return _axis + Bent(straight.Length) * straight;
    }

    /// <summary>Where a lens that bends nothing would show what is seen at a place (pixels).</summary>
    public Vector2 Straight(Vector2 seen)
    {
        var off = seen - _axis;
        var (target, straight) = (off.Length, off.Length);
        for (var i = 0; i < Steps; i++)
        {
            var q = straight / _half * (straight / _half);
            var slope = 1 + 3 * _bend * q + 5 * _bendMore * q * q;
            straight -= (straight * Bent(straight) - target) / slope;
        }

        return target > 0 ? _axis + straight / target * off : seen;
    }

    /// <summary>The point at a height over the face that is seen at a place of the photograph (mm).</summary>
    /// <param name="seen">The place (pixels).</param>
    /// <param name="height">Height of the point over the face (mm).</param>
    public Vector3 Find(Vector2 seen, double height)
    {
        var off = (Straight(seen) - _axis) / _focal;
        var way = off.X * _r1 + off.Y * _r2 + _r3;
        var eye = Eye;
        return eye + (height - eye.Z) / way.Z * way;
    }

    private double Bent(double straight)
    {
        var q = straight / _half * (straight / _half);
        return 1 + q * (_bend + q * _bendMore);
    }

    // Turned about the direction of turn by its length: Rodrigues' formula.
    private static Vector3 Turned(Vector3 row, Vector3 turn)
    {
        var angle = turn.Length;
        if (angle == 0)
        {
            return row;
        }

        var axis = turn / angle;
        var (sin, cos) = Math.SinCos(angle);
        return cos * row + sin * axis.Cross(row) + (1 - cos) * axis.Dot(row) * axis;
    }
}
