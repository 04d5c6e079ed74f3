using BracketGen.Geometry;

namespace BracketGen.Mechanism.Grooves;

/// <summary>The wire's centre line in the quadrant's groove: a convex curve round the throttle shaft.</summary>
/// <remarks>
/// Given by its support function in the quadrant's own frame (the throttle frame with the valve on its closed stop):
/// h(ν) is the distance from the shaft axis to the tangent whose outward normal has polar angle ν. The tangent touches
/// at h n + h' t, with n the normal and t the normal turned left, and an element of arc is (h + h'') dν (any text on convex
/// curves). The tangent's distance h is the moment arm of a wire along it, which is why the mechanism uses it.
/// Lengths in mm.
/// </remarks>
public abstract record Groove : IMirrored<Groove>
{
    /// <summary>Support function h (mm): distance from the shaft axis to the tangent with outward <paramref name="normal"/>.</summary>
    public abstract double Support(Angle normal);

    /// <summary>dh/dν (mm): how far the tangent point lies ahead (counter-clockwise) of the foot of the perpendicular.</summary>
    public abstract double Slope(Angle normal);

    /// <summary>Radius of curvature h + h'' (mm) at the point with the given outward <paramref name="normal"/>; positive.</summary>
    public abstract double RadiusOfCurvature(Angle normal);

    /// <summary>Length of groove (mm) between the points with the two normals; negative if <paramref name="to"/> is less.</summary>
    public abstract double ArcBetween(Angle from, Angle to);

    /// <summary>Outward normal at the groove's point at polar angle <paramref name="polar"/>, on the same turn.</summary>
    public abstract Angle NormalAt(Angle polar);

    /// <inheritdoc/>
    public abstract Groove Mirrored();

    /// <summary>± of its radius (mm): one error common to the whole groove, as from a wire that lies higher.</summary>
    public virtual double PlusMinus => 0;

    /// <summary>The curve that runs <paramref name="by"/> (mm, outward) beside this one everywhere: h + by.</summary>
    public virtual Groove Grown(double by) => by == 0 ? this : new ParallelGroove(this, by);

    /// <summary>Support and slope (mm) together, for curves where one search finds both.</summary>
    public virtual (double Support, double Slope) Tangent(Angle normal) => (Support(normal), Slope(normal));

    /// <summary>Support, slope and radius of curvature (mm) together, for curves where one search finds all three.</summary>
    internal virtual (double Support, double Slope, double Radius) Local(Angle normal)
    {
        var (support, slope) = Tangent(normal);
        return (support, slope, RadiusOfCurvature(normal));
    }

    /// <summary>The groove's point with the given outward normal (mm).</summary>
    public Vector2 PointWithNormal(Angle normal)
    {
        var n = Vector2.FromPolar(1, normal);
        var (support, slope) = Tangent(normal);
        return support * n + slope * n.Left;
    }

    /// <summary>
    /// Outward normal, up to whole turns, of the tangent from <paramref name="stop"/> (mm) along which a wire leaves the groove
    /// in the direction of increasing normals, with the quadrant turned by <paramref name="opening"/>.
    /// </summary>
    /// <remarks>
    /// g(ν) = stop·n(ν) - h(ν - θ) is how far the stop lies beyond the tangent ν; its derivative is the straight length. g is
    /// positive on one arc of directions, those from which the stop is seen, and the wire leaves at that arc's clockwise end.
    /// Newton's method, kept between a direction inside that arc and the opposite one by bisection, finds it for every
    /// convex groove round the shaft.
    /// </remarks>
    /// <exception cref="ArgumentException">The stop lies inside the groove: no wire can reach it.</exception>
    public virtual Angle LeavingNormal(Vector2 stop, Angle opening)
    {
        (double Beyond, double Straight) At(double normal)
        {
            var n = Vector2.FromPolar(1, new(normal));
            var (support, slope) = Tangent(new(normal - opening.Radians));
            return (stop.Dot(n) - support, stop.Dot(n.Left) - slope);
        }

        var high = Facing(stop, opening);
        var low = high - Math.PI;
        var distance = stop.Length;
        var normal = stop.Polar.Radians - Math.Acos(Math.Clamp(Support(new(high - opening.Radians - Math.PI / 2)) / distance, -1, 1));
        normal -= 2 * Math.PI * Math.Floor((normal - low) / (2 * Math.PI));
        if (normal >= high)
        {
            normal = (low + high) / 2;
        }

        for (var step = 0; step < 100; step++)
        {
            var (beyond, straight) = At(normal);
            (low, high) = beyond > 0 ? (low, normal) : (normal, high);
            var next = normal - beyond / straight;
            if (!(next > low && next < high))
            {
                // At convergence the step is round-off and may point out of the bracket: then it counts as none.
                if (Math.Abs(beyond) <= 4e-16 * distance || high - low < 1e-15)
                {
                    break;
                }

                next = (low + high) / 2;
            }

            var moved = Math.Abs(next - normal);
            normal = next;
            if (moved < 1e-9)
            {
                break; // The error falls with the square: it is round-off by now.
            }
        }

        return new(normal);
    }

    /// <summary>The error for a stop that no wire can reach.</summary>
    protected static ArgumentException Unreachable(Vector2 stop) => new ArgumentException(
        string.Create(
            System.Globalization.CultureInfo.InvariantCulture,
            $"The stop at ({stop.X:0.0}, {stop.Y:0.0}) mm lies inside or against the groove: no wire can run to it."),
        nameof(stop));

    /// <summary>A normal with the stop beyond its tangent.</summary>
    private double Facing(Vector2 stop, Angle opening)
    {
        double Beyond(double normal) => stop.Dot(Vector2.FromPolar(1, new(normal))) - Support(new(normal - opening.Radians));
        var best = stop.Polar.Radians;
        if (Beyond(best) > 0)
        {
            return best;
        }

        // Rare: the stop is close to a groove that bulges there. Search all round, then between the neighbours of the best.
        const int Count = 72;
        var start = best;
        for (var i = 1; i < Count; i++)
        {
            var normal = start + i * 2 * Math.PI / Count;
            best = Beyond(normal) > Beyond(best) ? normal : best;
        }

        for (var width = 2 * Math.PI / Count; width > 1e-9; width *= 0.5)
        {
            best = Beyond(best + width) > Beyond(best) ? best + width : Beyond(best - width) > Beyond(best) ? best - width : best;
        }

        return Beyond(best) > 0 ? best : throw Unreachable(stop);
    }
}
