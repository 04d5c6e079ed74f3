using System.Collections.Immutable;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Geometry;
using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Forms;
using BracketGen.SheetMetal.Standards;

namespace BracketGen.Profiles.Sections;

/// <summary><c>[mount.second_face]</c>: a face at an angle to the mount face that takes bolts too.</summary>
internal static class SecondFaceSection
{
    /// <summary>What the table says, before the mount face is known.</summary>
    /// <param name="Normal">Direction out of the part; null where the points decide it.</param>
    /// <param name="Points">Points of the face besides its holes.</param>
    /// <param name="Holes">Its holes.</param>
    /// <param name="CornerRadius">Radius of what is between the faces (mm).</param>
    public sealed record Written(Vector3? Normal, ImmutableArray<MountHole> Points, ImmutableArray<MountHole> Holes, double? CornerRadius);

    private static readonly Key<Vector3> Normal = new(
        "normal", VectorForm.Direction, "Direction out of the part that the face belongs to, square to the face; of any length. If left out, the points and holes decide it: three or more together.", isRequired: false);

    private static readonly Key<Vector3> At = new("at", VectorForm.Point, "A point of the face, throttle frame.");

    private static readonly Key<Vector3> PlusMinus = new(
        "plus_minus", new VectorForm(QuantityForm.Length(0, 20), isDirection: false), "How far each of its coordinates may be off, each way. If left out: it is exact.", isRequired: false);

    private static readonly Section<MountHole> Point = new([At, PlusMinus], v =>
    {
        var off = v.Get(PlusMinus);
        return new(new(v.Get(At)), FastenerThread.All[0], 0) { PlusMinus = new(off.X, off.Y, off.Z) };
    });

    private static readonly Key<ImmutableArray<MountHole>> Points = new(
        "points", new ListForm<MountHole>(Point, 1, 12), "Points measured on the face besides the holes.", isRequired: false);

    private static readonly Key<double> CornerRadius = new(
        "corner_radius", QuantityForm.Length(0, 200),
        "What is between the two faces: in an inside corner the radius of the fillet, 0 if there is none; on an outside edge the radius of its rounding, the width of its chamfer, or how far before the line where the faces would meet the metal ends. "
        + "If left out: not known, and the bend's room is not proven.", isRequired: false);

    private static readonly Key<ImmutableArray<MountHole>> Holes = new(
        "holes", new ListForm<MountHole>(MountSection.Hole, 1, 12), "The holes and studs of the second face, with the keys of mount.holes.");

    public static Section<Written> Form { get; } = new(
        [Normal, CornerRadius, Points, Holes],
        v => new(v.Has(Normal) ? v.Get(Normal) : null, v.Get(Points, []), v.Get(Holes), v.OrNull(CornerRadius)), anyOf: [Normal, Points]);

    // Points nearer to one line than this (mm) decide no face.
    private const double MinSpan = 3;

    // Farthest that a bracket reaches from its first hole (mm), see BracketShape.
    private const double MostReach = 400;

    /// <summary>The second face with its holes; a mistake where it does not go with the mount face.</summary>
    /// <param name="written">What the table says.</param>
    /// <param name="mount">The mount face.</param>
    /// <param name="own">Its holes.</param>
    public static (SecondFace? Face, ImmutableArray<MountHole> Holes, SecondFaceWrong? Wrong) Read(Written written, Plane mount, ImmutableArray<MountHole> own)
    {
        ImmutableArray<MountHole> holes = [.. written.Holes.Select(h => h with { IsOnSecond = true })];

        // The faces look the same way across the line where they meet: both holes stand above the other face, or both below it.
        var above = holes.Sum(h => mount.HeightOf(h.At.Vector)) > 0;
        if ((written.Normal ?? Through(written, own, above)) is not { } normal)
        {
            return (null, holes, new(SecondFaceMistake.NoDirection));
        }

        var face = new SecondFace(Fit(normal, written).Face) { CornerRadius = written.CornerRadius };
        var turn = face.Turn(mount);
        if (mount.Normal.Cross(face.Plane.Normal).Length < Math.Sin(Joint.LeastTurn.Radians))
        {
            return (face, holes, new(SecondFaceMistake.Parallel, turn, Distance: holes.Average(h => mount.HeightOf(h.At.Vector))));
        }

        if (turn.Radians > Joint.MostTurn.Radians + Tolerance.Direction)
        {
            return (face, holes, new(SecondFaceMistake.TooSharp, turn));
        }

        return (face, holes, OfHoles(face, mount, own, holes, turn, above));
    }

    /// <summary>The fit of the face to its holes and points.</summary>
    public static MountFit Fit(Vector3 normal, Written written) => MountFit.Of(normal, [.. written.Holes, .. written.Points]);

    private static SecondFaceWrong? OfHoles(SecondFace face, Plane mount, ImmutableArray<MountHole> own, ImmutableArray<MountHole> holes, Angle turn, bool above)
    {
        foreach (var (hole, number, isOnSecond) in own.Select((h, i) => (h, i + 1, false)).Concat(holes.Select((h, i) => (h, i + 1, true))))
        {
            var height = (isOnSecond ? mount : face.Plane).HeightOf(hole.At.Vector);
            var distance = face.FromLine(mount, new((isOnSecond ? face.Plane : mount).FootOf(hole.At.Vector)));
            if (above != height > 0)
            {
                return new(SecondFaceMistake.OtherSide, turn, number, isOnSecond, distance);
            }

            if (distance < hole.BossDiameter / 2)
            {
                return new(SecondFaceMistake.NearLine, turn, number, isOnSecond, distance, hole.BossDiameter / 2);
            }

            if (distance > MostReach)
            {
                return new(SecondFaceMistake.FarLine, turn, number, isOnSecond, distance, MostReach);
            }
        }

        return null;
    }

    private static Vector3? Through(Written written, ImmutableArray<MountHole> own, bool above)
    {
        // Any side first; the mount face's own holes then say which is out of the part.
        var free = PlaneFit.Of([.. written.Holes.Concat(written.Points).Select(h => h.At.Vector)], new(0, 0, 1), MinSpan);
        return free is not { } plane ? null : own.Sum(h => plane.HeightOf(h.At.Vector)) > 0 == above ? plane.Normal : -plane.Normal;
    }
}
