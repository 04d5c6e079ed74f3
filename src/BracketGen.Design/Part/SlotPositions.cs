using System.Collections.Immutable;
using BracketGen.Geometry;
using BracketGen.SheetMetal.Patterns;

namespace BracketGen.Design.Part;

/// <summary>Where slotted mount holes let a bracket stand.</summary>
/// <remarks>
/// Small rigid motions on the mount face: two bolts are put to ends of their slots, and the bracket goes as far that way as every bolt stays in its slot, within its play. So slots along one line let it
/// shift, slots side by side let it turn too, and one slot that points to a round hole lets it do neither. On a single bolt it is turned by eye as ever.
/// </remarks>
public static class SlotPositions
{
    /// <summary>A bracket shifted by less than this (mm) stands where it stood: less than the play of any bolt.</summary>
    public const double Least = 0.05;

    private const int Halvings = 20;

    /// <summary>The bracket in every extreme position that its slotted holes allow, in place; empty where they let it move nowhere.</summary>
    /// <param name="bracket">The bracket in place, its bolts where <see cref="BracketHole.Shift"/> says.</param>
    public static ImmutableArray<Bracket> Ends(Bracket bracket)
    {
        BracketHole[] bolts = [.. bracket.Holes.Where(h => h.Purpose == HolePurpose.Bolt)];
        if (!bolts.Any(b => b.IsSlotted))
        {
            return [];
        }

        List<Motion> ends = [];
        foreach (var motion in Motions(bolts))
        {
            var most = Most(bolts, motion);
            if (bolts.Max(b => most.Of(b.BoltAt.Vector).Length) >= Least
                && !ends.Exists(e => bolts.All(b => e.Of(b.BoltAt.Vector).DistanceTo(most.Of(b.BoltAt.Vector)) < Least)))
            {
                ends.Add(most);
            }
        }

        return [.. ends.Select(e => Moved(bracket, e))];
    }

    /// <summary>How far the bracket can be shifted from where it stands (mm), the farthest of its bolts; zero where it cannot.</summary>
    /// <param name="bracket">The bracket.</param>
    public static double Farthest(Bracket bracket) => Ends(bracket)
        .SelectMany(e => e.Holes.Zip(bracket.Holes, (moved, was) => (moved.Shift - was.Shift).Length)).DefaultIfEmpty(0).Max();

    // How the bolts move in the bracket: by a shift, and a turn about a point.
    private readonly record struct Motion(Vector2 About, Vector2 Shift, double Turn)
    {
        public Vector2 Of(Vector2 at) => About + (at - About).Rotate(new(Turn)) + Shift - at;

        public Motion Times(double part) => new(About, part * Shift, part * Turn);
    }

    private static IEnumerable<Motion> Motions(BracketHole[] bolts)
    {
        if (bolts is [var single])
        {
            return Ways(single).Select(to => new Motion(single.BoltAt.Vector, to, 0));
        }

        return
            from i in Enumerable.Range(0, bolts.Length)
            from k in Enumerable.Range(i + 1, bolts.Length - i - 1)
            from one in Ways(bolts[i])
            from other in Ways(bolts[k])
            select Between(bolts[i], bolts[k], one, other);
    }

    // A round hole is what the bracket turns about.
    private static Motion Between(BracketHole first, BracketHole second, Vector2 one, Vector2 other)
    {
        var apart = second.BoltAt - first.BoltAt;
        var turn = (other - one).Dot(apart.Left) / apart.Dot(apart);
        return !first.IsSlotted ? new(first.BoltAt.Vector, Vector2.Zero, turn)
            : !second.IsSlotted ? new(second.BoltAt.Vector, Vector2.Zero, turn)
            : new((first.BoltAt.Vector + second.BoltAt.Vector) / 2, (one + other) / 2, turn);
    }

    // From where the bolt stands to both ends of its slot; in a round hole it stays.
    private static Vector2[] Ways(BracketHole bolt) => bolt.IsSlotted ? [bolt.HalfTravel - bolt.Shift, -bolt.HalfTravel - bolt.Shift] : [Vector2.Zero];

    private static Motion Most(BracketHole[] bolts, Motion motion)
    {
        if (Stays(bolts, motion))
        {
            return motion;
        }

        var (holds, fails) = (0.0, 1.0);
        for (var i = 0; i < Halvings; i++)
        {
            var part = (holds + fails) / 2;
            (holds, fails) = Stays(bolts, motion.Times(part)) ? (part, fails) : (holds, part);
        }

        return motion.Times(holds);
    }

    private static bool Stays(BracketHole[] bolts, Motion motion) => Array.TrueForAll(bolts, b =>
    {
        var from = b.Shift + motion.Of(b.BoltAt.Vector);
        if (b.Outline is not SlottedHole slot)
        {
            return from.Length <= Least; // What its play does counts in every position.
        }

        var on = Math.Clamp(from.Dot(slot.Along), -slot.Travel / 2, slot.Travel / 2) * slot.Along;
        return from.DistanceTo(on) <= Math.Max(Least, b.Thread is { } thread ? (b.Diameter - thread.Diameter) / 2 + b.Fixing.Play(thread) : 0) + Tolerance.Point;
    });

    // The bolts stay where they are in space, and the bracket goes the other way.
    private static Bracket Moved(Bracket bracket, Motion motion)
    {
        var frame = bracket.Folded.Flanges[0];
        var turned = frame.Rotate(frame.ToWorld(motion.About), frame.Z, new(-motion.Turn)).Shift(Vector3.From(-motion.Shift));
        return bracket with
        {
            Folded = new(bracket.Flat, turned),
            Holes = [.. bracket.Holes.Select(h => h.Purpose == HolePurpose.Bolt ? h with { Shift = h.Shift + motion.Of(h.BoltAt.Vector) } : h)],
        };
    }
}
