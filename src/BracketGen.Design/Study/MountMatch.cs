using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Geometry;
using BracketGen.SheetMetal.Patterns;

namespace BracketGen.Design.Study;

/// <summary>The ways in which a bracket goes onto the bolts of a mount face.</summary>
public static class MountMatch
{
    /// <summary>How far a bolt hole may be off its threaded hole (mm): less than half the play of a medium clearance hole for M4 (ISO 273).</summary>
    public const double MostOff = 0.2;

    // What a bolt keeps of its play where the holes are off (mm): it must still go in by hand (our judgement, no source).
    private const double LeftOfPlay = 0.05;

    /// <summary>How far a bolt hole of a bracket may be off its threaded hole (mm): <see cref="MostOff"/>, or for a bracket made elsewhere the play of its own tightest bolt less 0.05 mm.</summary>
    /// <param name="bracket">The bracket.</param>
    public static double MostOffFor(Bracket bracket) => bracket.IsMadeElsewhere
        ? bracket.Holes.Where(h => h.Thread is not null).Min(h => Math.Max(0, (h.Diameter - h.Thread!.Diameter) / 2 - LeftOfPlay))
        : MostOff;

    /// <summary>
    /// Frames (flat coordinates and height to the throttle frame as measured) that bring the bolt holes of <paramref name="bracket"/>
    /// onto the threaded holes, its bottom on the face; for a single bolt, which lets it turn, only the one it was made in.
    /// </summary>
    /// <param name="bracket">The bracket as a part.</param>
    /// <param name="mount">The mount face.</param>
    public static IEnumerable<Frame> Of(Bracket bracket, MountFace mount)
    {
        var holes = bracket.MountBolts.Select(h => h.Centre).ToArray();
        var threaded = mount.OwnHoles.Select(h => mount.Plane.FootOf(h.At.Vector)).ToArray();
        BracketHole[] others = [.. bracket.Holes.Where(h => h.Purpose == HolePurpose.Bolt && h.Flange > 0)];
        MountHole[] onSecond = [.. mount.Holes.Where(h => h.IsOnSecond)];
        if (holes.Length != threaded.Length || others.Length != onSecond.Length)
        {
            yield break;
        }

        if (holes.Length == 1)
        {
            if (LiesOnSecond(bracket.Folded.Flanges[0]))
            {
                yield return bracket.Folded.Flanges[0];
            }

            yield break;
        }

        var along = holes[1] - holes[0];
        for (var first = 0; first < threaded.Length; first++)
        {
            for (var second = 0; second < threaded.Length; second++)
            {
                var way = threaded[second] - threaded[first];
                if (second == first || Math.Abs(way.Length - along.Length) > MostOff)
                {
                    continue;
                }

                // Local x of the frame: the direction that the first two holes have, turned back by their own in the flat.
                var lined = Frame.FromZX(threaded[first], mount.Plane.Normal, way);
                var x = lined.ToWorldDirection(Vector3.From(Vector2.FromPolar(1, -along.Polar)));
                var frame = Frame.FromZX(threaded[first], mount.Plane.Normal, x).Shift(Vector3.From(-holes[0].Vector));
                if (holes.All(h => threaded.Min(t => t.DistanceTo(frame.ToWorld(h.Vector))) <= MostOff) && LiesOnSecond(frame))
                {
                    yield return frame;
                }
            }
        }

        bool LiesOnSecond(Frame frame)
        {
            if (others.Length == 0)
            {
                return true;
            }

            var folded = new FoldedSheet(bracket.Flat, frame);
            return others.All(o => onSecond.Min(h => mount.FootOf(h).DistanceTo(folded.Fold(o.Centre, 0))) <= MostOff)
                && others.All(o => folded.TopAt(o.Centre).Dot(mount.Second!.Plane.Normal) > 0);
        }
    }
}
