using BracketGen.Design.Inputs;
using BracketGen.Geometry;

namespace BracketGen.Design.Checks;

/// <summary>Whether the throttle body is described well enough to be stayed clear of.</summary>
public static class BodyChecks
{
    /// <summary>How far beyond its hole a mount face's normal is followed (mm): farther than any throttle body reaches.</summary>
    private const double Ray = 300;

    /// <summary>How far beside the face a point is taken for inside or outside the casting (mm).</summary>
    private const double Beside = 1;

    /// <summary>The checks, the same for every bracket.</summary>
    /// <param name="body">The throttle body.</param>
    public static IEnumerable<Check> Of(ThrottleBody body)
    {
        yield return new(CheckId.BodyDescribed, body.IsDescribed ? 1 : double.NaN, 1);
        if (body.IsDescribed)
        {
            yield return new(CheckId.MountNormal, PointsIntoBody(body) ? 0 : 1, 1);
        }

        foreach (var check in RingChecks.Of(body.Mount))
        {
            yield return check;
        }
    }

    /// <summary>
    /// Whether the mount face's normal points into the casting: followed out of a hole it meets the casting, and followed back it does not; or it meets it
    /// neither way, and all of the casting lies on the normal's side.
    /// </summary>
    /// <param name="body">A body that is described.</param>
    public static bool PointsIntoBody(ThrottleBody body)
    {
        var (plane, holes) = (body.Mount.Plane, body.Mount.OwnHoles);
        bool Meets(IReadOnlyList<ConvexSolid> casting, double from, double to) => holes.Any(h => casting.Any(
            c => SolidGap.Between(c, ConvexSolid.Rod((h.At + from * plane.Normal).Vector, (h.At + to * plane.Normal).Vector, 0)) < 0));
        if (body.Shape == BodyShape.KeepOuts)
        {
            // Of keep-outs, some are the casting and others are not: only what lies right at the face is taken for it.
            ConvexSolid[] all = [.. body.KeepOuts.Select(k => k.Solid)];
            return Meets(all, Beside, 2 * Beside) && !Meets(all, -Beside, -2 * Beside);
        }

        if (body.Casting is not { } round)
        {
            return false;
        }

        var (outwards, inwards) = (Meets([round.Solid], Beside, Ray), Meets([round.Solid], -Beside, -Ray));
        if (outwards || inwards)
        {
            return outwards && !inwards;
        }

        // A face square to the bore may stand at either end of it, and says nothing.
        var lengthwise = Math.Abs((round.To - round.From).Unit.Dot(plane.Normal)) > Math.Sqrt(0.5);
        return !lengthwise && plane.HeightOf(round.Solid.Farthest(-plane.Normal)) > 0;
    }
}
