using BracketGen.Geometry;

namespace BracketGen.Mechanism.Rods;

/// <summary>Where a rod may lie to begin the search from: one link's direction a place.</summary>
/// <remarks>
/// The rod's own frame is made of its ends alone, so that turned ends give turned starts: c along the gap, e1 towards the side of the first
/// direction, e2 square to both. A small fixed skew keeps ends with a plane of symmetry off the saddles in that plane.
/// </remarks>
internal readonly struct RodSpan
{
    /// <summary>Number of starts for a span.</summary>
    public const int Starts = 14;

    /// <summary>Number of starts where lines near by are followed too: the first five alone find all stable lines in 98 to 99 of 100 cases, one more makes the four sides whole.</summary>
    public const int StartsBesideLines = 6;

    private readonly Vector3 _first;
    private readonly Vector3 _last;
    private readonly Vector3 _c;
    private readonly Vector3 _e1;
    private readonly Vector3 _e2;

    /// <summary>The span from end to end.</summary>
    public RodSpan(Vector3 first, Vector3 last, Vector3 gap, double length)
    {
        (_first, _last) = (first, last);
        var towards = gap.Length > RodTolerance.NoGap * length ? gap
            : (first + last).Length > RodTolerance.NoFrame ? first + last
            : Aside(first);
        _c = towards.Unit;
        var side = first - first.Dot(_c) * _c;
        if (side.Length < RodTolerance.NoFrame)
        {
            side = last - last.Dot(_c) * _c;
        }

        _e1 = (side.Length < RodTolerance.NoFrame ? Aside(_c) : side).Unit;
        _e2 = _c.Cross(_e1);
    }

    /// <summary>Direction at <paramref name="s"/> (0 to 1) for start number <paramref name="start"/>.</summary>
    public Vector3 At(int start, double s)
    {
        double once = Math.Sin(Math.PI * s), twice = Math.Sin(2 * Math.PI * s);
        var (along, one, two) = start switch
        {
            0 => (0.0, 0.0, 0.0),
            1 => (0.8 * once, 0.0, 0.0),
            < 6 => (0.5 * once, 0.0, 2 * twice),
            < 10 => (0.0, 2 * once, 0.0),
            _ => (-2 * once, 0.0, 4 * twice),
        };
        var aside = one + two;
        var (by1, by2) = ((start - 2) & 3) switch
        {
            0 => (aside, 0.0),
            1 => (-aside, 0.0),
            2 => (0.0, aside),
            _ => (0.0, -aside),
        };
        by1 += RodTolerance.Skew * Math.Sin(2.3 * s + 0.4);
        by2 += RodTolerance.Skew * Math.Cos(1.7 * s);
        var sum = (1 - s) * _first + s * _last + along * _c + by1 * _e1 + by2 * _e2;
        return sum.Length > RodTolerance.NoFrame ? sum.Unit : _c;
    }

    // Any direction square to one: there is nothing to choose by.
    internal static Vector3 Aside(Vector3 direction) =>
        direction.Cross(Math.Abs(direction.X) < 0.8 ? new(1, 0, 0) : new(0, 1, 0)).Unit;
}
