using System.Collections.Immutable;
using BracketGen.Design.Inputs;
using BracketGen.Geometry;
using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Forms;
using BracketGen.Profiles.Toml;
using BracketGen.SheetMetal.Fasteners;
using BracketGen.SheetMetal.Standards;
using BracketGen.Units;

namespace BracketGen.Profiles.Sections;

/// <summary><c>[mount]</c> of a throttle body with its <c>[[mount.holes]]</c>.</summary>
internal static class MountSection
{
    private static readonly Key<Vector3> At = new("at", VectorForm.Point, "Centre of the hole on the face, throttle frame.");

    private static readonly Key<Vector3> PlusMinus = new(
        "plus_minus", new VectorForm(QuantityForm.Length(0, 20), isDirection: false),
        "How far each of the three coordinates of at may be off, each way. If left out: the centre is exact.", isRequired: false);

    private static readonly Key<MetricThread> Thread = new(
        "thread", new WordForm<MetricThread>([.. MetricThread.All.Select(t => (t.Name, t))]), "Thread of the hole.");

    private static readonly Key<double> BossDiameter = new(
        "boss_diameter", QuantityForm.Length(4, 100), "Diameter of the boss round the hole; the bracket covers it.");

    private static readonly Key<double> ThreadDepth = new(
        "thread_depth", QuantityForm.Length(1, 100), "Depth of full thread in the boss, by a screw turned in by hand. If left out: not known, and the strength of the mount is not proven.", isRequired: false);

    private static readonly Section<MountHole> Hole = new(
        [At, PlusMinus, Thread, BossDiameter, ThreadDepth],
        v => new(new(v.Get(At)), v.Get(Thread), v.Get(BossDiameter)) { PlusMinus = Off(v.Get(PlusMinus)), ThreadDepth = v.OrNull(ThreadDepth) },
        [
            new([At, PlusMinus], CheckUnits),
            new([Thread, BossDiameter], v => Compare.MoreThan(v, BossDiameter, v.Get(Thread).Diameter, Thread)),
        ]);

    private static readonly Key<Vector3> Normal = new(
        "normal", VectorForm.Direction, "Direction out of the casting, square to the face; of any length.");

    private static readonly Key<ImmutableArray<MountHole>> Holes = new(
        "holes", new ListForm<MountHole>(Hole, 1, 12), "The tapped holes. Without plus_minus the first one gives the position of the face; with it the face lies where the heights of all of them fit best.");

    private static readonly Key<double> Flatness = new(
        "flatness", QuantityForm.Length(0, 2), "How far apart two planes are between which the faces of all bosses lie: feeler gauge under a straight edge. If left out: not known, and the life of the bracket is not proven.", isRequired: false);

    private static readonly Key<BossMetal> Boss = Key<BossMetal>.WithDefault(
        "boss_material", new WordForm<BossMetal>([.. BossMetal.All.Select(m => (m.Name, m))]), "Metal of the bosses. If left out: the weakest usual one.", BossMetal.Usual);

    private static readonly Key<ScrewClass> Class = Key<ScrewClass>.WithDefault(
        "screw_class", new WordForm<ScrewClass>([.. ScrewClass.All.Select(c => (c.Name, c))]), "Property class of the screws; the set-up sheet orders it.", ScrewClass.Usual);

    private static readonly Key<ScrewFriction> Friction = Key<ScrewFriction>.WithDefault(
        "screw_friction", new WordForm<ScrewFriction>([.. ScrewFriction.All.Select(f => (f.Name, f))]),
        "How the screws are fitted: waxed or greased (lubricated), dry or lightly oiled steel (as delivered), stainless without grease.", ScrewFriction.Usual);

    public static Section<MountFace> Form { get; } = new(
        [Normal, Flatness, Boss, Class, Friction, Holes],
        v => new(Fit(v).Face, v.Get(Holes)) { Flatness = v.OrNull(Flatness), Boss = v.Get(Boss), ScrewClass = v.Get(Class), ScrewFriction = v.Get(Friction) },
        [
            new([Normal, Holes], CheckFlat),
            new([Holes], CheckApart),
        ]);

    private static PointPlusMinus Off(Vector3 each) => new(each.X, each.Y, each.Z);

    private static MountFit Fit(SectionValues values) => MountFit.Of(values.Get(Normal), values.Get(Holes));

    private static void CheckFlat(SectionValues values)
    {
        var fit = Fit(values);
        var holes = values.Get(Holes);
        if (holes.All(h => h.PlusMinus.IsExact))
        {
            for (var i = 1; i < holes.Length; i++)
            {
                var height = fit.Face.HeightOf(holes[i].At.Vector);
                if (Math.Abs(height) > Tolerance.OffPlane)
                {
                    values.ReportItem(Holes, i, "at", new HoleOffFace(height, Tolerance.OffPlane, Foot(fit, holes[i]), IsFitted: false, fit.Free?.Normal));
                }
            }
        }
        else if (!fit.IsExplained)
        {
            values.ReportItem(Holes, fit.Worst, "at", new HoleOffFace(fit.Height, fit.Allowed, Foot(fit, holes[fit.Worst]), IsFitted: true, fit.Free?.Normal));
        }
    }

    private static ThrottlePoint Foot(MountFit fit, MountHole hole) => new(fit.Face.FootOf(hole.At.Vector));

    // "1.125 in" with a bare ± of 0.01 means hundredths of an inch to whoever wrote it.
    private static void CheckUnits(SectionValues values)
    {
        if (values.Written(At) is not TomlList at || values.Written(PlusMinus) is not TomlList off)
        {
            return;
        }

        foreach (var (coordinate, plusMinus) in at.Items.Zip(off.Items))
        {
            if (coordinate is TomlText text && plusMinus is TomlNumber { Number: not 0 } bare && QuantityText.Split(text.Text) is var (_, unit))
            {
                values.Report(PlusMinus, new PlusMinusWithoutUnit(bare.Written.ToString(), unit));
                return;
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
