using System.Collections.Immutable;
using BracketGen.Design.Inputs;
using BracketGen.Geometry;
using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Forms;
using BracketGen.SheetMetal.Standards;

namespace BracketGen.Profiles.Sections;

/// <summary><c>[mount]</c> of a throttle body with its <c>[[mount.holes]]</c>.</summary>
internal static class MountSection
{
    private static readonly Key<Vector3> At = new("at", VectorForm.Point, "Centre of the hole on the face, throttle frame.");

    private static readonly Key<MetricThread> Thread = new(
        "thread", new WordForm<MetricThread>([.. MetricThread.All.Select(t => (t.Name, t))]), "Thread of the hole.");

    private static readonly Key<double> BossDiameter = new(
        "boss_diameter", QuantityForm.Length(4, 100), "Diameter of the boss round the hole; the bracket covers it.");

    private static readonly Section<MountHole> Hole = new(
        [At, Thread, BossDiameter],
        v => new(new(v.Get(At)), v.Get(Thread), v.Get(BossDiameter)),
        [
            new([Thread, BossDiameter], v => Compare.MoreThan(v, BossDiameter, v.Get(Thread).Diameter, Thread)),
        ]);

    private static readonly Key<Vector3> Normal = new(
        "normal", VectorForm.Direction, "Direction out of the casting, square to the face; of any length.");

    private static readonly Key<ImmutableArray<MountHole>> Holes = new(
        "holes", new ListForm<MountHole>(Hole, 1, 12), "The tapped holes; the first one gives the position of the face.");

    public static Section<MountFace> Form { get; } = new(
        [Normal, Holes],
        v => new(Face(v), v.Get(Holes)),
        [
            new([Normal, Holes], CheckFlat),
            new([Holes], CheckApart),
        ]);

    private static Plane Face(SectionValues values) => new(values.Get(Holes)[0].At.Vector, values.Get(Normal));

    private static void CheckFlat(SectionValues values)
    {
        var face = Face(values);
        var holes = values.Get(Holes);
        for (var i = 1; i < holes.Length; i++)
        {
            var height = face.HeightOf(holes[i].At.Vector);
            if (Math.Abs(height) > Tolerance.OffPlane)
            {
                values.ReportItem(Holes, i, "at", new HoleOffFace(height, Tolerance.OffPlane, new(face.FootOf(holes[i].At.Vector))));
            }
        }
    }

    private static void CheckApart(SectionValues values)
    {
        var holes = values.Get(Holes);
        for (var i = 1; i < holes.Length; i++)
        {
            for (var j = 0; j < i; j++)
            {
                var min = (holes[i].Thread.Diameter + holes[j].Thread.Diameter) / 2;
                var apart = holes[i].At.DistanceTo(holes[j].At);
                if (apart < min)
                {
                    values.ReportItem(Holes, i, "at", new HolesOverlap(j + 1, min, apart));
                }
            }
        }
    }
}
