using BracketGen.Geometry;
using BracketGen.Mechanism.Grooves;

namespace BracketGen.Mechanism.Motion;

/// <summary>The wire pulled taut from the end fitting over the groove to the stop, at one opening.</summary>
/// <remarks>In the groove's plane, throttle frame; solved for a body that opens counter-clockwise.</remarks>
/// <param name="Opening">How far the valve is open.</param>
/// <param name="Length">From the fitting's centre to the stop along the wire (mm).</param>
/// <param name="Straight">Its straight part, from the tangent point (or the fitting) to the stop (mm).</param>
/// <param name="Arm">Distance from the shaft axis to the wire's line (mm), positive if a pull opens the valve.</param>
/// <param name="Wrap">Wrap angle, as turn of the groove's normal from the pocket on; negative by how far the wire has lifted off.</param>
/// <param name="Leaving">Outward normal of the wire's line: the tangent angle φ.</param>
/// <param name="From">Where the straight part begins (mm).</param>
public readonly record struct TautWire(
    Angle Opening, double Length, double Straight, double Arm, Angle Wrap, Angle Leaving, Vector2 From) : IMirrored<TautWire>
{
    /// <summary>Whether the wire has left the groove: from here on it runs straight from the fitting to the stop.</summary>
    public bool LiftedOff => Wrap.Radians < 0;

    /// <summary>Direction of the wire towards the stop, length one.</summary>
    public Vector2 Direction => IsMirrored ? -Vector2.FromPolar(1, Leaving).Left : Vector2.FromPolar(1, Leaving).Left;

    /// <summary>Change of the moment arm with the opening (mm/rad).</summary>
    /// <remarks>
    /// The tangent keeps to the stop: stop·n(ν) = h(ν - θ), so dν/dθ = -s/ℓ with s = h' the tangent point's distance ahead of the foot of the
    /// perpendicular, and dh/dθ = s (dν/dθ - 1). A wire that has lifted off turns about its fitting: h' of a point.
    /// </remarks>
    public double ArmSlope
    {
        get
        {
            var ahead = From.Dot(Direction);
            return -ahead * (1 + ahead / Straight);
        }
    }

    /// <summary>Where the wire ends: the stop's seat (mm).</summary>
    public Vector2 Seat => From + Straight * Direction;

    // Whether the wire runs clockwise round the shaft: its mirror image was solved.
    private bool IsMirrored { get; init; }

    /// <inheritdoc/>
    public TautWire Mirrored() => this with { Leaving = -Leaving, From = From.MirroredInY, IsMirrored = !IsMirrored };

    /// <summary>The taut wire from the fitting of <paramref name="quadrant"/> to <paramref name="stop"/> (mm) at <paramref name="opening"/>.</summary>
    /// <remarks>
    /// The normal ν at the tangent point solves stop·n(ν) = h(ν - θ): the stop lies on the tangent (<see cref="Groove.LeavingNormal"/>). By
    /// the envelope theorem dL/dθ = -h: the moment arm is the pull per opening (virtual work).
    /// </remarks>
    /// <exception cref="ArgumentException">The stop lies inside the groove: no wire can reach it.</exception>
    public static TautWire Solve(Quadrant quadrant, Vector2 stop, Angle opening) =>
        Solve(quadrant, quadrant.PocketNormal, stop, opening);

    /// <summary>The same with the quadrant's <see cref="Quadrant.PocketNormal"/> at hand, which takes a search on some grooves.</summary>
    internal static TautWire Solve(Quadrant quadrant, Angle pocket, Vector2 stop, Angle opening)
    {
        var groove = quadrant.Groove;
        var leaving = groove.LeavingNormal(stop, opening);
        var wrap = leaving - opening - pocket;

        // The tangent angle is found up to a whole turn. A wire wraps no more than the groove holds, or has lifted off by
        // less than a quarter turn (more on a short groove); a groove nearly all the way round leaves less to decide by.
        var least = Math.Min(
            -0.1, Math.Max(quadrant.GrooveExtent.Radians - 2 * Math.PI, Math.Min(-Math.PI / 2, quadrant.GrooveExtent.Radians / 2 - Math.PI)));
        wrap = new(wrap.Radians - 2 * Math.PI * Math.Floor((wrap.Radians - least) / (2 * Math.PI)));
        if (wrap.Radians >= 0)
        {
            var n = Vector2.FromPolar(1, leaving);
            var (support, slope) = groove.Tangent(leaving - opening);
            var straight = stop.Dot(n.Left) - slope;
            return new(
                opening, straight + groove.ArcBetween(pocket, pocket + wrap), straight, support, wrap,
                pocket + opening + wrap, support * n + slope * n.Left);
        }

        var fitting = groove.PointWithNormal(pocket).Rotate(opening);
        var line = (stop - fitting).Unit;
        var normal = -line.Left;
        var length = fitting.DistanceTo(stop);
        return new(opening, length, length, fitting.Dot(normal), wrap, normal.Polar, fitting);
    }
}
