using BracketGen.Geometry;

namespace BracketGen.SheetMetal.Forming;

/// <summary>Whether a slab and a convex body have a point in common.</summary>
/// <remarks>
/// Each face of the body, moved out by a distance, leaves of the slab what lies on its inner side: a half-space of the slab's own two coordinates and its height.
/// The height is eliminated (Fourier and Motzkin), which leaves half-planes, and the slab's polygon is cut with them (Sutherland and Hodgman). Exact, but
/// that corners of the body moved out stay sharp. Holds its working space: one for one thread.
/// </remarks>
internal sealed class SlabMeeting(int mostCorners)
{
    private Vector2[] _polygon = new Vector2[mostCorners], _next = new Vector2[mostCorners];
    private (double X, double Y, double H, double Limit)[] _faces = new (double, double, double, double)[16];

    /// <summary>Whether they meet with the body's faces moved out by <paramref name="grown"/> (mm; inwards if negative).</summary>
    public bool Meets(Slab slab, Placement slabAt, ConvexBody body, Placement bodyAt, double grown)
    {
        var (origin, x, y, z) = slab.In(slabAt);
        var count = 0;
        if (_faces.Length < body.Faces.Length)
        {
            _faces = new (double, double, double, double)[body.Faces.Length];
        }

        foreach (ref readonly var face in body.Faces.AsSpan())
        {
            var turned = bodyAt.Direction(face.Normal.XY);
            Vector3 normal = new(turned.X, turned.Y, face.Normal.Z);
            var limit = face.Limit + turned.Dot(bodyAt.At) + grown - normal.Dot(origin);
            double gx = normal.Dot(x), gy = normal.Dot(y), gh = normal.Dot(z);
            double low = Math.Min(gx * slab.Min.X, gx * slab.Max.X) + Math.Min(gy * slab.Min.Y, gy * slab.Max.Y) + Math.Min(0, gh * slab.Thickness);
            if (low >= limit)
            {
                return false;
            }

            var high = Math.Max(gx * slab.Min.X, gx * slab.Max.X) + Math.Max(gy * slab.Min.Y, gy * slab.Max.Y) + Math.Max(0, gh * slab.Thickness);
            if (high > limit)
            {
                _faces[count++] = (gx, gy, gh, limit);
            }
        }

        return Cut(slab, count);
    }

    private bool Cut(Slab slab, int count)
    {
        var corners = slab.Polygon.Length;
        if (_polygon.Length < corners)
        {
            _polygon = new Vector2[corners];
        }

        slab.Polygon.CopyTo(_polygon, 0);
        for (var i = 0; i < count; i++)
        {
            var a = _faces[i];
            if (!Keep(a.X, a.Y, a.Limit - Math.Min(0, a.H * slab.Thickness), ref corners))
            {
                return false;
            }

            for (var j = 0; j < i; j++)
            {
                var b = _faces[j];
                if (a.H * b.H < -Parallel
                    && !Keep(
                        Math.Abs(b.H) * a.X + Math.Abs(a.H) * b.X, Math.Abs(b.H) * a.Y + Math.Abs(a.H) * b.Y,
                        Math.Abs(b.H) * a.Limit + Math.Abs(a.H) * b.Limit, ref corners))
                {
                    return false;
                }
            }
        }

        double area = 0;
        for (var i = 0; i < corners; i++)
        {
            area += _polygon[i].Cross(_polygon[(i + 1) % corners]);
        }

        return Math.Abs(area) > NoArea;
    }

    // Two faces that are both nearly square to the slab bound its height by nothing together.
    private const double Parallel = 1e-12;

    // A common area below this (mm²) is a touch.
    private const double NoArea = 1e-9;

    // The part of the polygon with x X + y Y at most the limit; whether there is any.
    private bool Keep(double x, double y, double limit, ref int corners)
    {
        if (_next.Length < 2 * corners)
        {
            Array.Resize(ref _next, 2 * corners);
        }

        var kept = 0;
        var last = _polygon[corners - 1];
        var before = x * last.X + y * last.Y - limit;
        for (var i = 0; i < corners; i++)
        {
            var point = _polygon[i];
            var now = x * point.X + y * point.Y - limit;
            if (now > 0 != before > 0)
            {
                _next[kept++] = last + before / (before - now) * (point - last);
            }

            if (now <= 0)
            {
                _next[kept++] = point;
            }

            (last, before) = (point, now);
        }

        (_polygon, _next) = (_next, _polygon);
        corners = kept;
        return kept > 2;
    }
}
