using System.Collections.Immutable;
using BracketGen.Design.Inputs;
using BracketGen.Geometry;
using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Forms;
using BracketGen.SheetMetal.Fasteners;
using BracketGen.SheetMetal.Shops;
using BracketGen.SheetMetal.Standards;

namespace BracketGen.Profiles.Sections;

/// <summary><c>[mount.adapter_ring]</c>: a flat ring under the heads of the throttle body's own flange bolts, in which the mount holes lie.</summary>
internal static class AdapterRingSection
{
    private static readonly Key<Vector3> At = new("at", VectorForm.Point, "The bolt's axis where its head or washer bears on the flange today, throttle frame.");

    private static readonly Key<Vector3> PlusMinus = new(
        "plus_minus", new VectorForm(QuantityForm.Length(0, 20), isDirection: false), "How far each coordinate of at may be off, each way. If left out: it is exact.", isRequired: false);

    private static readonly Key<FastenerThread> Thread = new("thread", new FastenerThreadForm(), "Its thread: M6, M8x1, 1/4-20 UNC.");

    private static readonly Key<double> Length = new("length", QuantityForm.Length(6, 200), "Its length under the head.");

    private static readonly Key<double> Engagement = new("engagement", QuantityForm.Length(2, 100), "How deep it is screwed in today: its length less what it goes through.");

    private static readonly Key<double> Depth = new(
        "thread_depth", QuantityForm.Length(2, 200), "Depth of full thread that it is screwed into: turn a longer screw in by hand. If left out: not known, and a longer bolt is not proven.", isRequired: false);

    private static readonly Section<FlangeBolt> Bolt = new(
        [At, PlusMinus, Thread, Length, Engagement, Depth],
        v => new(new(v.Get(At)), v.Get(Thread), v.Get(Length), v.Get(Engagement)) { PlusMinus = Off(v.Get(PlusMinus)), ThreadDepth = v.OrNull(Depth) },
        [
            new([Thread, Length, Engagement], v =>
            {
                var most = v.Get(Length) - v.Get(Thread).WasherThickness;
                if (v.Get(Engagement) >= most)
                {
                    v.Report(Engagement, new RingWrong(RingMistake.BoltTooShort, "", v.Get(Engagement), most));
                }
            }),
        ]);

    private static readonly Key<string> Place = Key<string>.WithDefault(
        "place", new WordForm<string>(("under the heads", "under the heads"), (UnderFlangeWord, UnderFlangeWord)),
        "Under the heads of the flange bolts; between flange and manifold it cannot be designed.", "under the heads");

    private const string UnderFlangeWord = "under the flange";

    private static readonly Key<Material> Metal = new(
        "material", new WordForm<Material>([.. SheetLibrary.All.Select(m => (m.Designation, m))]), "Designation of its sheet, one of the library.");

    private static readonly Key<double> Thickness = new("thickness", QuantityForm.Length(2, 12), "Thickness of its sheet.");

    private static readonly Key<Vector3> BoreCentre = new("bore_centre", VectorForm.Point, "Any point of the axis of its bore, throttle frame.");

    private static readonly Key<double> BoreRadius = new(
        "bore_radius", QuantityForm.Length(5, 200), "Radius about that axis that must stay free: of the widest thing that stands in the bore of the ring or that the ring goes over as it is put on.");

    private static readonly Key<ImmutableArray<FlangeBolt>> Bolts = new("bolts", new ListForm<FlangeBolt>(Bolt, 2, 12), "The flange bolts that hold it, two or more.");

    public static Section<AdapterRing> Form { get; } = new(
        [Place, Metal, Thickness, BoreCentre, BoreRadius, Bolts],
        v => new(new(v.Get(Metal), v.Get(Thickness)), new(v.Get(BoreCentre)), v.Get(BoreRadius), v.Get(Bolts)),
        [
            new([Place], v =>
            {
                if (v.Get(Place) == UnderFlangeWord)
                {
                    v.Report(Place, new RingWrong(RingMistake.UnderFlange));
                }
            }),
        ]);

    /// <summary>A mount hole as the ring has it: its thread is as deep as the ring is thick.</summary>
    public static MountHole InRing(MountHole hole, AdapterRing ring) => hole.Fixing is TappedHole && hole.ThreadDepth is null ? hole with { ThreadDepth = ring.Thickness } : hole;

    /// <summary>Reports what does not go together.</summary>
    /// <param name="values">The mount.</param>
    /// <param name="ringKey">The key of the ring.</param>
    /// <param name="holesKey">The key of the mount holes.</param>
    /// <param name="secondKey">The key of a second face.</param>
    /// <param name="face">The mount face.</param>
    public static void Check(SectionValues values, Key<AdapterRing> ringKey, Key<ImmutableArray<MountHole>> holesKey, Key secondKey, Plane face)
    {
        if (!values.Has(ringKey))
        {
            return;
        }

        var (ring, holes) = (values.Get(ringKey), values.Get(holesKey));
        if (values.Has(secondKey))
        {
            values.Report(secondKey, new RingWrong(RingMistake.SecondFace));
            return;
        }

        for (var i = 0; i < holes.Length; i++)
        {
            if (OfHole(holes[i], ring, MountFace.HoleName(i)) is var (key, wrong))
            {
                values.ReportItem(holesKey, i, key, wrong);
                return;
            }
        }

        for (var i = 0; i < ring.Bolts.Length; i++)
        {
            if (OfBolt(ring, i, face) is { } wrong)
            {
                values.ReportIn(ringKey, "bolts", i, "at", wrong);
                return;
            }
        }

        OfPlaces(values, ringKey, holesKey, face);
    }

    private static (string Key, RingWrong Wrong)? OfHole(MountHole hole, AdapterRing ring, string name) =>
        hole.Fixing is MountStud ? ("kind", new(RingMistake.Stud, name))
        : hole.SpacerLength > 0 ? ("spacer", new(RingMistake.Spacer, name))
        : !hole.PlusMinus.IsExact ? ("plus_minus", new(RingMistake.PlusMinus, name))
        : hole.Fixing is ThroughHole through && Math.Abs(through.Flange - ring.Thickness) > Tolerance.SameSize ? ("flange_thickness", new(RingMistake.Thickness, name, through.Flange, ring.Thickness))
        : hole.ThreadDepth > ring.Thickness ? ("thread_depth", new(RingMistake.ThreadDepth, name, hole.ThreadDepth.Value, ring.Thickness))
        : null;

    private static RingWrong? OfBolt(AdapterRing ring, int number, Plane face)
    {
        var bolt = ring.Bolts[number];
        var under = -face.HeightOf(bolt.At.Vector);
        if (Math.Abs(under - ring.Thickness) > Tolerance.OffPlane + bolt.PlusMinus.Along(face.Normal))
        {
            return new(RingMistake.BoltOffFlange, AdapterRing.BoltName(number), under, ring.Thickness);
        }

        for (var other = 0; other < number; other++)
        {
            var min = (bolt.Thread.WasherDiameter + ring.Bolts[other].Thread.WasherDiameter) / 2;
            if (face.FootOf(bolt.At.Vector).DistanceTo(face.FootOf(ring.Bolts[other].At.Vector)) is var apart && apart < min)
            {
                return new(RingMistake.BoltsTogether, AdapterRing.BoltName(number), apart, min, AdapterRing.BoltName(other));
            }
        }

        return null;
    }

    private static void OfPlaces(SectionValues values, Key<AdapterRing> ringKey, Key<ImmutableArray<MountHole>> holesKey, Plane face)
    {
        var holes = values.Get(holesKey);
        var ring = values.Get(ringKey);

        // The face as it will be read decides where things lie; the bore as it will be cut decides what reaches into it.
        var shape = Design.Part.RingShape.Of(new MountFace(face, holes) { Ring = ring })!;
        for (var i = 0; i < shape.Holes.Length; i++)
        {
            var hole = shape.Holes[i];
            var least = shape.Bore.Radius + hole.Diameter / 2 + 1;
            var distance = hole.Centre.DistanceTo(new(shape.Bore.Centre));
            var wrong = distance < least ? new RingWrong(RingMistake.HoleInBore, hole.Name, distance, least) : null;
            foreach (var bolt in wrong is null && i < holes.Length ? shape.Holes[holes.Length..] : [])
            {
                var apart = (hole.Diameter + bolt.Diameter) / 2 + 1;
                if (hole.Centre.DistanceTo(bolt.Centre) < apart)
                {
                    wrong = new(RingMistake.HoleAtBolt, hole.Name, hole.Centre.DistanceTo(bolt.Centre), apart, bolt.Name);
                }
            }

            if (wrong is null)
            {
                continue;
            }

            if (i < holes.Length)
            {
                values.ReportItem(holesKey, i, "at", wrong);
            }
            else
            {
                values.ReportIn(ringKey, "bolts", i - holes.Length, "at", wrong);
            }

            return;
        }
    }

    private static PointPlusMinus Off(Vector3 each) => new(each.X, each.Y, each.Z);
}
