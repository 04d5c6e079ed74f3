using System.Collections.Immutable;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Geometry;
using BracketGen.SheetMetal.Patterns;
using BracketGen.SheetMetal.Standards;

namespace BracketGen.Design.Study;

/// <summary>One way to bolt a bracket to a mount face and to put the outer into it.</summary>
/// <param name="Bracket">The bracket as it is then: its bolt holes are those in use, with the threads of the mount face; what is not in use stays a plain hole.</param>
/// <param name="Mount">Where its mount flange comes to lie, throttle frame as measured.</param>
/// <param name="IsTurnedOver">Whether the side that was measured as the top lies on the mount face.</param>
/// <param name="IsOtherFace">Whether the outer bears on the other face of the stop flange than the one that was measured.</param>
/// <param name="Matches">For each tapped hole of the mount face in its order, the name of the bracket's hole on it.</param>
public sealed record BracketWay(Bracket Bracket, Frame Mount, bool IsTurnedOver, bool IsOtherFace, ImmutableArray<string> Matches)
{
    // A single bolt lets the bracket turn: it is set in line with the wire, found in steps of this.
    private static readonly Angle Step = Angle.FromDegrees(1);

    /// <summary>
    /// Every way in which bolts go through all tapped holes; in the order as measured, turned over, each with the outer on the face as measured and on the other one. None on a mount with a second face: a
    /// measured bracket has all its bolt holes in one flange.
    /// </summary>
    /// <param name="job">The job.</param>
    /// <param name="bracket">A bracket made elsewhere, its mount flange in its own coordinates.</param>
    public static IEnumerable<BracketWay> Of(Job job, Bracket bracket) =>
        from turned in job.Body.Mount.Second is null ? new[] { false, true } : []
        from other in new[] { false, true }
        let over = turned ? TurnedOver(bracket) : bracket
        from way in OnBolts(job, other ? OnOtherFace(over) : over)
        select way with { IsTurnedOver = turned, IsOtherFace = other };

    private static IEnumerable<BracketWay> OnBolts(Job job, Bracket bracket)
    {
        var mount = job.Body.Mount;
        var face = MountFrame.Of(mount);
        FacePoint[] tapped = [.. mount.Holes.Select(h => face.ToFace(h.At))];
        BracketHole[] holes = [.. bracket.Holes.Where(h => h.Purpose == HolePurpose.Bolt)];
        foreach (var chosen in Choices(holes, tapped, []))
        {
            BracketHole[] bolts = [.. chosen.Select((hole, i) => holes[hole] with { Thread = ThreadIn(holes[hole].Diameter, mount.Holes[i].Thread) })];
            var used = bracket with { Holes = [.. bolts, bracket.Stop] };
            var matches = bolts.Select(b => b.Name).ToImmutableArray();
            if (tapped.Length == 1)
            {
                if (InLine(job, used, face, tapped[0]) is { } mounted)
                {
                    yield return new(used, mounted, false, false, matches);
                }

                continue;
            }

            var frame = Fit(face, bolts, tapped);
            if (bolts.Any(b => b.IsSlotted))
            {
                (bolts, frame) = InSlots(face, bolts, tapped);
                used = used with { Holes = [.. bolts, bracket.Stop] };
            }

            if (bolts.Select((b, i) => frame.ToWorld(b.BoltAt.Vector).DistanceTo(face.ToThrottle(tapped[i]).Vector)).Max() <= MountMatch.MostOffFor(used))
            {
                yield return new(used, frame, false, false, matches);
            }
        }
    }

    // For each tapped hole one of the bracket's, all distances between them as the play allows at most.
    private static IEnumerable<ImmutableArray<int>> Choices(BracketHole[] holes, FacePoint[] tapped, ImmutableArray<int> chosen)
    {
        if (chosen.Length == tapped.Length)
        {
            yield return chosen;
            yield break;
        }

        for (var i = 0; i < holes.Length; i++)
        {
            if (chosen.Contains(i) || !chosen.Select((c, k) => Math.Abs(holes[c].Centre.DistanceTo(holes[i].Centre) - tapped[k].Vector.DistanceTo(tapped[chosen.Length].Vector))).All(off => off <= MostOff(holes) + 2 * holes.Max(h => h.HalfTravel.Length)))
            {
                continue;
            }

            foreach (var more in Choices(holes, tapped, chosen.Add(i)))
            {
                yield return more;
            }
        }
    }

    // Both ends of a distance may be off by the play of the largest hole.
    private static double MostOff(BracketHole[] holes) => holes.Max(h => h.Diameter - FastenerThread.All[0].Diameter);

    /// <summary>The thread that a hole of a diameter (mm) takes: the one wanted where its bolt goes through and its head does not pull in, else the one that it was drilled for.</summary>
    internal static FastenerThread ThreadIn(double diameter, FastenerThread wanted) =>
        diameter >= wanted.ClearanceFine - MeasuredShape.HoleReading && diameter <= wanted.ClearanceCoarse + MeasuredShape.HoleReading ? wanted
        : MeasuredShape.MadeFor(diameter) is var made && made != wanted ? made
        : FastenerThread.All.First(t => t != wanted);

    // The rigid motion of least squares: centroids on each other, turned by the mean of the arms.
    private static Frame Fit(MountFrame face, BracketHole[] bolts, FacePoint[] tapped)
    {
        var from = bolts.Aggregate(Vector2.Zero, (sum, b) => sum + b.BoltAt.Vector) / bolts.Length;
        var to = tapped.Aggregate(Vector2.Zero, (sum, t) => sum + t.Vector) / tapped.Length;
        double along = 0, across = 0;
        for (var i = 0; i < bolts.Length; i++)
        {
            Vector2 arm = bolts[i].BoltAt.Vector - from, goal = tapped[i].Vector - to;
            (along, across) = (along + arm.Dot(goal), across + arm.Cross(goal));
        }

        return Lying(face, from, to, new(Math.Atan2(across, along)));
    }

    // Each bolt to the nearest place in its slot, and the bracket again to all bolts, until both stay: so it lies near the middle of its slots.
    private static (BracketHole[] Bolts, Frame Frame) InSlots(MountFrame face, BracketHole[] bolts, FacePoint[] tapped)
    {
        var frame = Fit(face, bolts, tapped);
        for (var i = 0; i < MostFits; i++)
        {
            bolts = [.. bolts.Select((b, k) => b.Outline is SlottedHole slot
                ? b with { Shift = Math.Clamp((frame.ToFlat(face.ToThrottle(tapped[k])) - b.Centre).Dot(slot.Along), -slot.Travel / 2, slot.Travel / 2) * slot.Along }
                : b)];
            frame = Fit(face, bolts, tapped);
        }

        return (bolts, frame);
    }

    // Slots that are nearly in line settle slowly; past this the rest is less than anybody reads.
    private const int MostFits = 40;

    private static Frame Lying(MountFrame face, Vector2 from, Vector2 to, Angle turn) => Frame.FromZX(
        face.Frame.ToWorld(to - from.Rotate(turn)), face.Frame.Z, face.Frame.ToWorldDirection(Vector3.From(new Vector2(1, 0).Rotate(turn))));

    private static Frame? InLine(Job job, Bracket bracket, MountFrame face, FacePoint tapped)
    {
        var from = bracket.Holes[0].Centre.Vector;
        return Enumerable.Range(0, (int)Math.Round(2 * Math.PI / Step.Radians))
            .Select(i => Lying(face, from, tapped.Vector, new(i * Step.Radians)))
            .Select(f => (Frame: f, Reach: GivenBracket.Reach(job.Body, bracket, f)))
            .Where(w => w.Reach is not null)
            .OrderBy(w => w.Reach!.Value.Askew.Radians)
            .Select(w => (Frame?)w.Frame)
            .FirstOrDefault();
    }

    /// <summary>The same part with its top on the mount face: turned over about the y axis of its flat pattern.</summary>
    internal static Bracket TurnedOver(Bracket bracket)
    {
        var flat = bracket.Flat.Mirrored();
        flat = flat with { Bends = [.. flat.Bends.Select(b => b with { Turn = -b.Turn })] };
        return bracket with
        {
            Folded = new(flat, bracket.Folded.Flanges[0]),
            SeatOnTop = !bracket.SeatOnTop,
            Holes = [.. bracket.Holes.Select(h => h with { Centre = h.Centre.MirroredInX, Towards = h.Towards?.MirroredInX, Outline = h.Outline?.Mirrored(), Shift = h.Shift.MirroredInX })],
            Measured = bracket.Measured is { } m
                ? m with { Seat = m.Seat.MirroredInX, Height = bracket.Stock.Thickness - m.Height, Normal = new(-m.Normal.X, m.Normal.Y, -m.Normal.Z) }
                : null,
        };
    }

    // The outer put in from the other side: its seat is the other face of the same hole.
    private static Bracket OnOtherFace(Bracket bracket)
    {
        if (bracket.Measured is not { } m)
        {
            return bracket with { SeatOnTop = !bracket.SeatOnTop };
        }

        var moved = Vector3.From(m.Seat.Vector, m.Height) - bracket.Stock.Thickness * m.Normal;
        return bracket with { SeatOnTop = !bracket.SeatOnTop, Measured = m with { Seat = new(moved.XY), Height = moved.Z, Normal = -m.Normal } };
    }
}
