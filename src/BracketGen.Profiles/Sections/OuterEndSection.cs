using BracketGen.Mechanism.Cables;
using BracketGen.Profiles.Forms;

namespace BracketGen.Profiles.Sections;

/// <summary><c>[cable.outer_end]</c> of a vehicle.</summary>
internal static class OuterEndSection
{
    private static readonly Key<ScrewThread> Thread = new("thread", new ScrewThreadForm(), "Thread of the adjuster.");

    private static readonly Key<double> Range = new(
        "range", QuantityForm.Length(0, 100), "Full range of the adjuster, half of it each way from mid range.");

    private static readonly Key<double> AcrossFlats = new("across_flats", QuantityForm.Length(3, 60), "Width across flats of the locknuts.");

    private static readonly Key<double> NutHeight = new("nut_height", QuantityForm.Length(1, 30), "Height of one locknut.");

    private static readonly Key<double> NoseDiameter = new("nose_diameter", QuantityForm.Length(1, 30), "Diameter of the nose that goes through the hole.");

    private static readonly Key<double> ShoulderDiameter = new(
        "shoulder_diameter", QuantityForm.Length(1, 60), "Diameter of the shoulder that bears on the bracket.");

    private static readonly Key<double> NeckDiameter = new("neck_diameter", QuantityForm.Length(1, 30), "Diameter of the neck between the collars.");

    private static readonly Key<double> CollarDiameter = new("collar_diameter", QuantityForm.Length(1, 60), "Diameter of the collars.");

    private static readonly Key<double> NeckLength = new("neck_length", QuantityForm.Length(0.5, 30), "Length of the neck: the sheet must fit between the collars.");

    private static readonly Key<double> RangeElsewhere = Key<double>.WithDefault(
        "range", QuantityForm.Length(0, 100), "Full range of an adjuster in the run of the outer; 0 if there is none.", 0);

    private static readonly Key<double> ThreadFlats = new(
        "thread_flats", QuantityForm.Length(2, 30), "Width across two flats along the thread, which keep it from turning in the stop; leave it out where it is round.", isRequired: false);

    private static readonly Section<OuterEnd> Adjuster = new(
        [Thread, Range, AcrossFlats, NutHeight, ThreadFlats],
        v => new ThreadedAdjuster(v.Get(Thread).Diameter, v.Get(Thread).Pitch, v.Get(Range), v.Get(AcrossFlats), v.Get(NutHeight)) { ThreadFlats = v.OrNull(ThreadFlats) },
        [new([AcrossFlats, Thread], v => Compare.MoreThan(v, AcrossFlats, v.Get(Thread).Diameter, Thread)), new([ThreadFlats, Thread], v => Compare.LessThan(v, ThreadFlats, v.OrNull(ThreadFlats) ?? 0, v.Get(Thread).Diameter, Thread))]);

    private static readonly Section<OuterEnd> Ferrule = new(
        [NoseDiameter, ShoulderDiameter, RangeElsewhere],
        v => new PlainFerrule(v.Get(NoseDiameter), v.Get(ShoulderDiameter), v.Get(RangeElsewhere)),
        [new([ShoulderDiameter, NoseDiameter], v => Compare.MoreThan(v, ShoulderDiameter, v.Get(NoseDiameter), NoseDiameter))]);

    private static readonly Section<OuterEnd> Clip = new(
        [NeckDiameter, CollarDiameter, NeckLength, RangeElsewhere],
        v => new SlottedClip(v.Get(NeckDiameter), v.Get(CollarDiameter), v.Get(NeckLength), v.Get(RangeElsewhere)),
        [new([CollarDiameter, NeckDiameter], v => Compare.MoreThan(v, CollarDiameter, v.Get(NeckDiameter), NeckDiameter))]);

    private static readonly Key<double> BulkheadAcrossFlats = new("across_flats", QuantityForm.Length(3, 60), "Width across flats of the nuts.");

    private static readonly Key<double> ThreadLength = new("thread_length", QuantityForm.Length(2, 100), "Length of the thread: both nuts and the sheet must find room on it.");

    private static readonly Key<double> Grip = new("grip", QuantityForm.Length(0.5, 30), "Length of nose from the shoulder to the clip: the sheet must fit in it.");

    private static readonly Key<double> NoseLength = new("nose_length", QuantityForm.Length(1, 60), "Length of the whole nose from the shoulder on.");

    private static readonly Key<double> ClipDiameter = new("clip_diameter", QuantityForm.Length(2, 60), "Diameter over the clip.");

    private static readonly Key<double> HoleDiameter = new("hole_diameter", QuantityForm.Length(2, 40), "Diameter of the hole that the end is made for.");

    private static readonly Key<double> CollarOnSheet = new("shoulder_diameter", QuantityForm.Length(2, 60), "Diameter of the collar that bears on the bracket.");

    private static readonly Key<double> MinSheet = new("min_sheet", QuantityForm.Length(0.3, 20), "Thinnest sheet that its barbs hold on to.");

    private static readonly Key<double> MaxSheet = new("max_sheet", QuantityForm.Length(0.3, 20), "Thickest sheet that it snaps over.");

    private static readonly Key<double> Reach = new("reach", QuantityForm.Length(1, 60), "How far it stands in and beyond the sheet, from the collar on.");

    private static readonly Section<OuterEnd> Bulkhead = new(
        [Thread, ThreadLength, BulkheadAcrossFlats, NutHeight, RangeElsewhere, ThreadFlats],
        v => new BulkheadFerrule(v.Get(Thread).Diameter, v.Get(Thread).Pitch, v.Get(ThreadLength), v.Get(BulkheadAcrossFlats), v.Get(NutHeight), v.Get(RangeElsewhere)) { ThreadFlats = v.OrNull(ThreadFlats) },
        [
            new([ThreadFlats, Thread], v => Compare.LessThan(v, ThreadFlats, v.OrNull(ThreadFlats) ?? 0, v.Get(Thread).Diameter, Thread)),
            new([BulkheadAcrossFlats, Thread], v => Compare.MoreThan(v, BulkheadAcrossFlats, v.Get(Thread).Diameter, Thread)),
            new([ThreadLength, NutHeight], v => Compare.MoreThan(v, ThreadLength, 2 * v.Get(NutHeight), NutHeight)),
        ]);

    private static readonly Section<OuterEnd> Clipped = new(
        [NoseDiameter, ShoulderDiameter, Grip, NoseLength, ClipDiameter, RangeElsewhere],
        v => new ClippedFerrule(v.Get(NoseDiameter), v.Get(ShoulderDiameter), v.Get(Grip), v.Get(NoseLength), v.Get(ClipDiameter), v.Get(RangeElsewhere)),
        [
            new([ShoulderDiameter, NoseDiameter], v => Compare.MoreThan(v, ShoulderDiameter, v.Get(NoseDiameter), NoseDiameter)),
            new([ClipDiameter, NoseDiameter], v => Compare.MoreThan(v, ClipDiameter, v.Get(NoseDiameter), NoseDiameter)),
            new([NoseLength, Grip], v => Compare.MoreThan(v, NoseLength, v.Get(Grip), Grip)),
        ]);

    private static readonly Key<double> HoleSide = new("hole_side", QuantityForm.Length(2, 40), "Side of the square hole that the end is made for.");

    private static readonly Key<double> CornerRadius = Key<double>.WithDefault(
        "corner_radius", QuantityForm.Length(0.1, 10), "Radius of the corners of that hole: no larger than that of the end's own corners (default: common practice, no source).", 0.5);

    private static readonly Section<OuterEnd> SquarePushIn = new(
        [HoleSide, CornerRadius, CollarOnSheet, MinSheet, MaxSheet, Reach, RangeElsewhere],
        v => new PushInEnd(v.Get(HoleSide), v.Get(CollarOnSheet), v.Get(MinSheet), v.Get(MaxSheet), v.Get(Reach), v.Get(RangeElsewhere)) { Corner = v.Get(CornerRadius) },
        [
            new([HoleSide, CornerRadius], v => Compare.MoreThan(v, HoleSide, 2 * v.Get(CornerRadius), CornerRadius)),
            new([CollarOnSheet, HoleSide], v => Compare.MoreThan(v, CollarOnSheet, v.Get(HoleSide), HoleSide)),
            new([MaxSheet, MinSheet], v => Compare.MoreThan(v, MaxSheet, v.Get(MinSheet), MinSheet)),
            new([Reach, MaxSheet], v => Compare.MoreThan(v, Reach, v.Get(MaxSheet), MaxSheet)),
        ]);

    private static readonly Section<OuterEnd> PushIn = new(
        [HoleDiameter, CollarOnSheet, MinSheet, MaxSheet, Reach, RangeElsewhere],
        v => new PushInEnd(v.Get(HoleDiameter), v.Get(CollarOnSheet), v.Get(MinSheet), v.Get(MaxSheet), v.Get(Reach), v.Get(RangeElsewhere)),
        [
            new([CollarOnSheet, HoleDiameter], v => Compare.MoreThan(v, CollarOnSheet, v.Get(HoleDiameter), HoleDiameter)),
            new([MaxSheet, MinSheet], v => Compare.MoreThan(v, MaxSheet, v.Get(MinSheet), MinSheet)),
            new([Reach, MaxSheet], v => Compare.MoreThan(v, Reach, v.Get(MaxSheet), MaxSheet)),
        ]);

    public static Variants<OuterEnd> Form { get; } = new(
        "kind",
        "The outer end at the bracket.",
        ("threaded adjuster", Adjuster),
        ("plain ferrule", Ferrule),
        ("slotted clip", Clip),
        ("bulkhead ferrule", Bulkhead),
        ("clipped ferrule", Clipped),
        ("push-in end", PushIn),
        ("square push-in end", SquarePushIn));
}
