using System.Collections.Immutable;
using System.Globalization;
using BracketGen.Design.Inputs;
using BracketGen.Geometry;
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
        "boss_diameter", QuantityForm.Length(4, 100), "Diameter of the boss around the hole; the bracket covers it.");

    private static readonly Section<MountHole> Hole = new(
        "a mount hole",
        [At, Thread, BossDiameter],
        v => new(v.Get(At), v.Get(Thread), v.Get(BossDiameter)),
        [
            new([Thread, BossDiameter], v => Compare.MoreThan(v, BossDiameter, v.Get(Thread).Diameter, Thread)),
        ]);

    private static readonly Key<Vector3> Normal = new(
        "normal", VectorForm.Direction, "Direction out of the casting, square to the face; of any length.");

    private static readonly Key<ImmutableArray<MountHole>> Holes = new(
        "holes", new ListForm<MountHole>(Hole, 1, 12), "The threaded holes; the first one says where the face lies.");

    public static Section<MountFace> Form { get; } = new(
        "a mount face",
        [Normal, Holes],
        v => new(Face(v), v.Get(Holes)),
        [
            new([Normal, Holes], CheckFlat),
            new([Holes], CheckApart),
        ]);

    private static Plane Face(SectionValues values) => new(values.Get(Holes)[0].At, values.Get(Normal));

    private static void CheckFlat(SectionValues values)
    {
        var face = Face(values);
        var holes = values.Get(Holes);
        for (var i = 1; i < holes.Length; i++)
        {
            var height = face.HeightOf(holes[i].At);
            if (Math.Abs(height) > Tolerance.OffPlane)
            {
                var foot = face.FootOf(holes[i].At);
                values.ReportItem(Holes, i, "at",
                    $"a point on the face through hole 1, within {Compare.Millimetres(Tolerance.OffPlane)}",
                    $"It lies {Compare.Millimetres(Math.Abs(height))} {(height > 0 ? "before" : "behind")} the face. "
                    + $"Correct the hole or the normal; the nearest point of the face is {Show(foot)}.");
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
                var least = (holes[i].Thread.Diameter + holes[j].Thread.Diameter) / 2;
                var apart = holes[i].At.DistanceTo(holes[j].At);
                if (apart < least)
                {
                    values.ReportItem(Holes, i, "at",
                        $"a point more than {Compare.Millimetres(least)} from hole {(j + 1).ToString(CultureInfo.InvariantCulture)}",
                        $"The two holes run into each other at {Compare.Millimetres(apart)}: measure their centres again.");
                }
            }
        }
    }

    private static string Show(Vector3 point) =>
        string.Create(CultureInfo.InvariantCulture, $"[{point.X:0.###}, {point.Y:0.###}, {point.Z:0.###}]");
}
