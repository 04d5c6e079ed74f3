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

    private static readonly Key<FastenerThread> Thread = new(
        "thread", new FastenerThreadForm(), "Thread of the hole, of the bolt through it or of the stud: M6 or M6x1, M8x1, 1/4-20 UNC, #10-32 UNF.");

    private static readonly Key<double> BossDiameter = new(
        "boss_diameter", QuantityForm.Length(4, 100), "Diameter of the boss round the hole; the bracket covers it.");

    private static readonly Key<double> ThreadDepth = new(
        "thread_depth", QuantityForm.Length(1, 100), "Depth of full thread in the boss, by a screw turned in by hand; of a stud, how deep it sits in the boss. If left out: not known, and the strength of the mount is not proven.", isRequired: false);

    private const string TappedWord = "tapped", ThroughWord = "through", StudWord = "stud";

    private static readonly Key<string> Kind = Key<string>.WithDefault(
        "kind", new WordForm<string>((TappedWord, TappedWord), (ThroughWord, ThroughWord), (StudWord, StudWord)),
        "A tapped hole; a plain hole through a flange, for a bolt with a nut; or a stud, for a nut.", TappedWord);

    private static readonly Key<double> HoleDiameter = new(
        "hole_diameter", QuantityForm.Length(4, 20), "Diameter of the plain hole in the flange; only with kind = \"through\".", isRequired: false);

    private static readonly Key<double> FlangeThickness = new(
        "flange_thickness", QuantityForm.Length(1, 40), "Thickness of the flange that the bolt goes through; only with kind = \"through\".", isRequired: false);

    private static readonly Key<double> RoomBehind = new(
        "room_behind", QuantityForm.Length(0, 200), "Free depth behind the flange, over the whole nut and washer; only with kind = \"through\". If left out: not known, and the mount is not proven.", isRequired: false);

    private static readonly Key<double> StandsOut = new(
        "stands_out", QuantityForm.Length(3, 100), "How far the stud stands out of the mount face; only with kind = \"stud\".", isRequired: false);

    private static readonly Key<double> SpacerLength = Key<double>.WithDefault(
        "spacer", QuantityForm.Length(1, 40), "How much lower than the mount face this hole lies: the length of the spacer that goes under the bracket there. If left out: the hole lies on the face.", 0);

    public static readonly Section<MountHole> Hole = new(
        [At, PlusMinus, Thread, BossDiameter, ThreadDepth, Kind, HoleDiameter, FlangeThickness, RoomBehind, StandsOut, SpacerLength],
        v => new(new(v.Get(At)), v.Get(Thread), v.Get(BossDiameter)) { PlusMinus = Off(v.Get(PlusMinus)), ThreadDepth = v.OrNull(ThreadDepth), Fixing = FixingOf(v), SpacerLength = v.Get(SpacerLength) },
        [
            new([At, PlusMinus], CheckUnits),
            new([Kind, HoleDiameter, FlangeThickness, RoomBehind, StandsOut, ThreadDepth], CheckKind),
            new([Kind, Thread, HoleDiameter], CheckBolt),
            new([Thread, BossDiameter], v => Compare.MoreThan(v, BossDiameter, v.Get(Thread).Diameter, Thread)),
        ],
        kinds:
        [
            new KindKeys(Kind, ThroughWord, [HoleDiameter, FlangeThickness], [HoleDiameter, FlangeThickness, RoomBehind], [ThreadDepth]),
            new KindKeys(Kind, StudWord, [StandsOut], [StandsOut], []),
        ]);

    private static readonly Key<Vector3> Normal = new(
        "normal", VectorForm.Direction, "Direction out of the casting, square to the face; of any length.");

    private static readonly Key<ImmutableArray<MountHole>> Holes = new(
        "holes", new ListForm<MountHole>(Hole, 1, 12), "The tapped holes, plain holes and studs. Without plus_minus the first one gives the position of the face; with it the face lies where the heights of all of them fit best.");

    private static readonly Key<double> Flatness = new(
        "flatness", QuantityForm.Length(0, 2), "How far apart two planes are between which the faces of all bosses lie, spacers in place: feeler gauge under a straight edge. If left out: not known, and the life of the bracket is not proven.", isRequired: false);

    private static readonly Key<BossMetal> Boss = Key<BossMetal>.WithDefault(
        "boss_material", new WordForm<BossMetal>([.. BossMetal.All.Select(m => (m.Name, m))]), "Metal of the bosses. If left out: the weakest usual one.", BossMetal.Usual);

    private static readonly Key<ScrewClass?> Class = new(
        "screw_class", new WordForm<ScrewClass?>([.. ScrewClass.All.Select(c => (c.Name, (ScrewClass?)c))]),
        "Property class of the screws and studs; the set-up sheet orders the screws in it. If left out: 8.8 for metric threads, SAE J429 grade 5 for inch threads, SAE J82 60M below 1/4 in; studs 5.8, grade 2 or 60M.", isRequired: false);

    private static readonly Key<ScrewFriction> Friction = Key<ScrewFriction>.WithDefault(
        "screw_friction", new WordForm<ScrewFriction>([.. ScrewFriction.All.Select(f => (f.Name, f))]),
        "How the screws are fitted: waxed or greased (lubricated), dry or lightly oiled steel (as delivered), stainless without grease.", ScrewFriction.Usual);

    private static readonly Key<double> FaceFriction = new(
        "face_friction", QuantityForm.Number(0.03, 0.8),
        "Friction coefficient of the bracket on the bosses: lay a piece of the sheet, finished as the bracket, on the clean face, tilt until it slides; height over base, the least of five tries; no unit. If left out: not known, and a bracket on slotted holes is not proven.",
        isRequired: false);

    private static readonly Key<SecondFaceSection.Written> SecondFace = new(
        "second_face", SecondFaceSection.Form, "A second flat face, at an angle to the mount face, that takes bolts of the bracket too: the bracket gets a second mount flange. Both must belong to parts that are bolted together.", isRequired: false);

    private static readonly Key<AdapterRing> Ring = new(
        "adapter_ring", AdapterRingSection.Form,
        "A flat ring of sheet under the heads of the throttle body's own flange bolts, for a body without free tapped holes: it is designed with the bracket. The mount face is its top, and the mount holes are where the bracket bolts to it.", isRequired: false);

    public static Section<MountFace> Form { get; } = new(
        [Normal, Flatness, Boss, Class, Friction, FaceFriction, Holes, SecondFace, Ring],
        v => new(Fit(v).Face, AllHoles(v)) { Ring = v.Has(Ring) ? v.Get(Ring) : null, Second = v.Has(SecondFace) ? Second(v).Face : null, Flatness = v.OrNull(Flatness), Boss = v.Get(Boss), ScrewClass = v.Get(Class, null), ScrewFriction = v.Get(Friction), FaceFriction = v.OrNull(FaceFriction) },
        [
            new([Normal, Holes], CheckFlat),
            new([Holes], CheckApart),
            new([Holes], CheckSpacers),
            new([Class, Holes], CheckClass),
            new([Normal, Holes, SecondFace], CheckSecond),
            new([Normal, Holes, SecondFace, Ring], v => AdapterRingSection.Check(v, Ring, Holes, SecondFace, Fit(v).Face)),
        ]);

    private static (SecondFace? Face, ImmutableArray<MountHole> Holes, SecondFaceWrong? Wrong) Second(SectionValues values) =>
        SecondFaceSection.Read(values.Get(SecondFace), Fit(values).Face, values.Get(Holes));

    private static ImmutableArray<MountHole> AllHoles(SectionValues values) =>
        values.Has(SecondFace) ? [.. values.Get(Holes), .. Second(values).Holes]
        : values.Has(Ring) ? [.. values.Get(Holes).Select(h => AdapterRingSection.InRing(h, values.Get(Ring)))]
        : values.Get(Holes);

    private static void CheckSecond(SectionValues values)
    {
        // A ring beside it is a mistake of its own.
        if (!values.Has(SecondFace) || values.Has(Ring))
        {
            return;
        }

        var (face, holes, wrong) = Second(values);
        if (wrong is not null)
        {
            values.Report(SecondFace, wrong);
            return;
        }

        var written = values.Get(SecondFace);
        var fit = SecondFaceSection.Fit(face!.Plane.Normal, written);
        if (!fit.IsExplained && fit.Worst < holes.Length)
        {
            values.ReportIn(SecondFace, "holes", fit.Worst, "at", new HoleOffFace(fit.Height, fit.Allowed, Foot(fit, holes[fit.Worst]), IsFitted: true, fit.Free?.Normal));
        }
        else if (!fit.IsExplained)
        {
            values.ReportIn(SecondFace, "points", fit.Worst - holes.Length, "at", new HoleOffFace(fit.Height, fit.Allowed, Foot(fit, written.Points[fit.Worst - holes.Length]), IsFitted: true, fit.Free?.Normal));
        }
    }

    private static Fixing FixingOf(SectionValues values) => values.Get(Kind) switch
    {
        ThroughWord => new ThroughHole(values.Get(HoleDiameter), values.Get(FlangeThickness), values.OrNull(RoomBehind)),
        StudWord => new MountStud(values.Get(StandsOut)),
        _ => new TappedHole(),
    };

    // What a kind needs is there, and nothing that says something of another kind.
    private static void CheckKind(SectionValues values)
    {
        var kind = values.Get(Kind);
        foreach (var (key, belongs, isNeeded) in (ReadOnlySpan<(Key<double>, string, bool)>)
            [(HoleDiameter, ThroughWord, true), (FlangeThickness, ThroughWord, true), (RoomBehind, ThroughWord, false), (StandsOut, StudWord, true)])
        {
            if (kind == belongs && isNeeded && !values.Has(key))
            {
                values.Report(key, new KindNeedsKey(kind, key.Name, key.Help));
            }
            else if (kind != belongs && values.Has(key))
            {
                values.Report(key, new KeyOfOtherKind(kind, key.Name, belongs));
            }
        }

        if (kind == ThroughWord && values.Has(ThreadDepth))
        {
            values.Report(ThreadDepth, new KeyOfOtherKind(kind, ThreadDepth.Name, TappedWord));
        }
    }

    // The bolt goes through, and a millimetre of its head's face bears round the hole without the washer (our judgement, no source).
    private static void CheckBolt(SectionValues values)
    {
        if (values.Get(Kind) != ThroughWord || !values.Has(HoleDiameter))
        {
            return;
        }

        var (thread, hole) = (values.Get(Thread), values.Get(HoleDiameter));
        var max = SheetMetal.Fasteners.ScrewThread.Of(thread).HeadBearing - 1;
        if (hole <= thread.Diameter || hole > max)
        {
            values.Report(HoleDiameter, new HoleNotForBolt(thread.Name, thread.Diameter, max));
        }
    }

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
                var height = fit.Face.HeightOf(holes[i].At.Vector) + holes[i].SpacerLength;
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

    private static ThrottlePoint Foot(MountFit fit, MountHole hole) => new(fit.Face.FootOf(hole.At.Vector) - hole.SpacerLength * fit.Face.Normal);

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

    // The bracket lies on the highest hole itself.
    private static void CheckSpacers(SectionValues values)
    {
        var holes = values.Get(Holes);
        if (holes.All(h => h.SpacerLength > 0))
        {
            values.ReportItem(Holes, holes.IndexOf(holes.MinBy(h => h.SpacerLength)!), SpacerLength.Name, new SpacerUnderAll());
        }
    }

    private static void CheckClass(SectionValues values)
    {
        if (values.Get(Class, null) is { } named && values.Get(Holes).FirstOrDefault(h => !named.IsFor(h.Thread)) is { } other)
        {
            values.Report(Class, new ClassNotForThread(other.Thread.Name, [.. ScrewClass.All.Where(c => c.IsFor(other.Thread)).Select(c => c.Name)], ScrewClass.UsualFor(other.Thread).Name));
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
