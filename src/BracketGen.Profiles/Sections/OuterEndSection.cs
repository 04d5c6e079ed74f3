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

    private static readonly Section<OuterEnd> Adjuster = new(
        [Thread, Range, AcrossFlats, NutHeight],
        v => new ThreadedAdjuster(v.Get(Thread).Diameter, v.Get(Thread).Pitch, v.Get(Range), v.Get(AcrossFlats), v.Get(NutHeight)),
        [new([AcrossFlats, Thread], v => Compare.MoreThan(v, AcrossFlats, v.Get(Thread).Diameter, Thread))]);

    private static readonly Section<OuterEnd> Ferrule = new(
        [NoseDiameter, ShoulderDiameter, RangeElsewhere],
        v => new PlainFerrule(v.Get(NoseDiameter), v.Get(ShoulderDiameter), v.Get(RangeElsewhere)),
        [new([ShoulderDiameter, NoseDiameter], v => Compare.MoreThan(v, ShoulderDiameter, v.Get(NoseDiameter), NoseDiameter))]);

    private static readonly Section<OuterEnd> Clip = new(
        [NeckDiameter, CollarDiameter, NeckLength, RangeElsewhere],
        v => new SlottedClip(v.Get(NeckDiameter), v.Get(CollarDiameter), v.Get(NeckLength), v.Get(RangeElsewhere)),
        [new([CollarDiameter, NeckDiameter], v => Compare.MoreThan(v, CollarDiameter, v.Get(NeckDiameter), NeckDiameter))]);

    public static Variants<OuterEnd> Form { get; } = new(
        "kind",
        "The outer end at the bracket.",
        ("threaded adjuster", Adjuster),
        ("plain ferrule", Ferrule),
        ("slotted clip", Clip));
}
