using System.Collections.Immutable;
using BracketGen.Geometry;
using BracketGen.Mechanism.Grooves;
using BracketGen.Mechanism.Motion;

namespace BracketGen.Design.Checks;

/// <summary>The space that the straight wire between quadrant and seat takes up over the sweep.</summary>
/// <remarks>
/// With the seat P, the groove's support h and the straight length s, the tangent's normal turns by dν/dθ = -h'/s: differentiate
/// P·n(ν) = h(ν - θ). A point of the wire lies at most s from P, so it moves across the wire by no more than max|h'| · max s / min s for
/// each radian of opening; on a round groove not at all. A wire that has lifted off ends at the fitting's centre, which moves by its distance from the shaft.
/// The wire is laid out as rods at equal steps of opening, each thicker by what the wire can move in half a step: nothing between
/// the steps is missed. Along itself the wire grows and shrinks inside the groove, where the quadrant is.
/// </remarks>
internal static class SweptWire
{
    /// <summary>How much thicker the rods may be for what lies between them (mm): a tenth of the usual clearance.</summary>
    private const double MostMoved = 0.3;

    /// <summary>Step of the normal in which the groove is looked at (rad).</summary>
    private const double NormalStep = Math.PI / 180;

    /// <summary>The rods, throttle frame.</summary>
    /// <param name="quadrant">The quadrant, opening counter-clockwise.</param>
    /// <param name="travel">The travel.</param>
    /// <param name="seat">The seat of the outer end (mm).</param>
    /// <param name="wireDiameter">Diameter of the wire (mm).</param>
    public static ImmutableArray<Rod> Of(Quadrant quadrant, Travel travel, ThrottlePoint seat, double wireDiameter)
    {
        var sweep = travel.Sweep;
        var moves = MostMove(quadrant, travel, seat.XY) * travel.Rotation.Radians;

        // Every rod stands for the openings half a step before and after it: the finest step is that of the sweep itself.
        var steps = sweep.Length - 1;
        var every = 1;
        while (every * 2 <= steps && steps % (every * 2) == 0 && moves * every * 2 / steps / 2 <= MostMoved)
        {
            every *= 2;
        }

        if (moves == 0)
        {
            return [new(new(Vector3.From(sweep[0].From)), seat, wireDiameter / 2)];
        }

        var radius = wireDiameter / 2 + moves * every / steps / 2;
        var rods = ImmutableArray.CreateBuilder<Rod>();
        for (var i = 0; i <= steps; i += every)
        {
            rods.Add(new(new(Vector3.From(sweep[i].From)), seat, radius));
        }

        return rods.ToImmutable();
    }

    /// <summary>How far a point of the wire may move across it for a radian of opening (mm).</summary>
    private static double MostMove(Quadrant quadrant, Travel travel, Vector2 seat)
    {
        var fitting = quadrant.FittingAt(Angle.Zero).Length;
        if (travel.Sweep.Any(w => w.LiftedOff))
        {
            return fitting;
        }

        if (quadrant.Groove is CircularGroove)
        {
            return 0;
        }

        // Between two normals h' changes by the integral of h + h'', which is the arc, less that of h: bounds that hold between the samples too.
        var groove = quadrant.Groove;
        double slope = 0, least = double.PositiveInfinity, most = 0;
        var first = quadrant.PocketNormal.Radians;
        var last = first + travel.Sweep.Max(w => w.Wrap.Radians) + NormalStep;
        for (var normal = first - NormalStep; normal < last; normal += NormalStep)
        {
            var (support, atStart) = groove.Tangent(new(normal));
            var change = Math.Max(groove.ArcBetween(new(normal), new(normal + NormalStep)), support * NormalStep * (1 + NormalStep));
            slope = Math.Max(slope, Math.Abs(atStart) + change);
            (least, most) = (Math.Min(least, support), Math.Max(most, support));
        }

        (least, most) = (Math.Max(0, least - slope * NormalStep), most + slope * NormalStep);
        var away = seat.Dot(seat);
        var shortest = Math.Sqrt(Math.Max(0, away - most * most)) - slope;
        var longest = Math.Sqrt(away - least * least) + slope;
        return shortest > 0 ? slope * longest / shortest : fitting + slope;
    }
}
