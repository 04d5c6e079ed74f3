using BracketGen.Design.Inputs;
using BracketGen.Geometry;

namespace BracketGen.Design.Checks;

/// <summary>A solid that stands still, with what it is.</summary>
/// <param name="Thing">What it is.</param>
/// <param name="Name">Its name in the user's words, or the letter of its hole; null where there is only one.</param>
/// <param name="Solid">Its shape, throttle frame (mm).</param>
public sealed record Standing(Thing Thing, string? Name, ConvexSolid Solid)
{
    /// <summary>The casting as far as it is described, and the keep-outs.</summary>
    /// <param name="body">The throttle body.</param>
    public static IEnumerable<Standing> Of(ThrottleBody body) =>
    [
        .. body.KeepOuts.Select(k => new Standing(Thing.KeepOut, k.Name, k.Solid)),
        .. body.Casting is { } casting ? [new Standing(Thing.Casting, null, casting.Solid)] : Array.Empty<Standing>(),
        .. body.Bosses.Select(b => new Standing(Thing.Boss, b.Name, b.Solid)),
        .. RingChecks.Plate(body.Mount) is { } plate ? [new Standing(Thing.Ring, null, plate.Solid)] : Array.Empty<Standing>(),
        .. RingChecks.Heads(body.Mount).Select(h => new Standing(Thing.FlangeBolt, h.Name, h.Solid)),
    ];

    /// <summary>The spaces of the return springs.</summary>
    /// <param name="body">The throttle body.</param>
    public static IEnumerable<Standing> Springs(ThrottleBody body) => body.SpringRooms.Select(r => new Standing(Thing.Spring, r.Name, r.Solid));
}

/// <summary>The nearest of several standing solids.</summary>
/// <param name="Gap">Distance to it (mm), never above the true one; negative where it overlaps.</param>
/// <param name="To">Which it is.</param>
internal readonly record struct NearestStanding(double Gap, Standing To)
{
    /// <summary>The nearest to a union of solids; null where there is nothing.</summary>
    /// <param name="pieces">The solids whose union is looked at.</param>
    /// <param name="standing">What stands.</param>
    public static NearestStanding? Of(IReadOnlyList<ConvexSolid> pieces, IEnumerable<Standing> standing)
    {
        NearestStanding? nearest = null;
        foreach (var thing in standing)
        {
            foreach (var piece in pieces)
            {
                var best = nearest?.Gap ?? double.PositiveInfinity;
                if (piece.Inside.DistanceTo(thing.Solid.Inside) - piece.Reach - thing.Solid.Reach < best
                    && SolidGap.Between(piece, thing.Solid) is var gap && gap < best)
                {
                    nearest = new(gap, thing);
                }
            }
        }

        return nearest;
    }

    /// <summary>A check of this gap.</summary>
    /// <param name="id">Which check.</param>
    /// <param name="of">What was looked at.</param>
    /// <param name="limit">Distance to be kept (mm).</param>
    public Check Check(CheckId id, Thing of, double limit) => new(id, Gap, limit) { Pair = new(of, To.Thing), Subject = To.Name };
}
