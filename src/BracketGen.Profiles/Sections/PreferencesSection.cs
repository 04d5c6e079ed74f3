using System.Collections.Immutable;
using BracketGen.Design.Inputs;
using BracketGen.Geometry;
using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Forms;
using BracketGen.Units;

namespace BracketGen.Profiles.Sections;

/// <summary>Preferences with the places of the materials named, to be held against the shop, and of the direction of slots, to be held against the mount face.</summary>
internal sealed record LocatedPreferences(Preferences Preferences, ImmutableArray<Located<string>> Materials, Located<Vector3>? SlotDirection = null);

/// <summary><c>[preferences]</c> of a job: every key may be left out.</summary>
internal static class PreferencesSection
{
    private static readonly Preferences Usual = new();

    private static readonly Key<Measured> FreePlay = Key<Measured>.WithDefault(
        "free_play", new MeasuredForm(QuantityForm.Length(0.1, 20), 10), "Free play wanted.", Usual.FreePlay);

    private static readonly Key<double> MinFreePlay = Length(
        "min_free_play", 0, 20, "Minimum free play with which the valve surely closes.", Usual.MinFreePlay);

    private static readonly Key<double> MinOverTravel = Length(
        "min_over_travel", 0, 50, "Minimum over-travel: pull left at the floor with the valve wide open.", Usual.MinOverTravel);

    private static readonly Key<double> MaxOverTravel = Length(
        "max_over_travel", 0, 100, "Maximum over-travel; above it the pedal needs a pedal stop.", Usual.MaxOverTravel);

    private static readonly Key<double> MinWrap = Key<double>.WithDefault(
        "min_wrap", QuantityForm.Angle(0, 90), "Minimum wrap angle at the wide-open stop.", Usual.MinWrap.Radians);

    private static readonly Key<double> FittingClearance = Length(
        "fitting_clearance", 0, 100, "Clearance between the end fitting and the stop, with everything that sticks out of the stop.", Usual.FittingClearance);

    private static readonly Key<double> SweepClearance = Length(
        "sweep_clearance", 0, 50, "Clearance between moving parts and the bracket, the casting and the keep-outs.", Usual.SweepClearance);

    private static readonly Key<double> OuterClearance = Length(
        "outer_clearance", 0, 50, "Clearance between the outer on its route and all that it passes.", Usual.OuterClearance);

    private static readonly Key<double> KeepOutClearance = Length(
        "keep_out_clearance", 0, 50, "Clearance between the bracket with the outer end and the casting and keep-outs.", Usual.KeepOutClearance);

    private static readonly Key<double> DirtAndCold = Key<double>.WithDefault(
        "dirt_and_cold", QuantityForm.Number(1, 20), "How many times measured drag counts for dirt and cold; 1 if it was measured cold and on a worn cable; no unit.", Usual.DirtAndCold);

    private static readonly Key<double> AdjusterReserve = Key<double>.WithDefault(
        "adjuster_reserve", QuantityForm.Number(0, 1), "Part of the adjuster's half range that the design leaves unused; no unit.", Usual.AdjusterReserve);

    private static readonly Key<StopOpening> Opening = Key<StopOpening>.WithDefault(
        "stop_opening",
        new WordForm<StopOpening>(("as needed", StopOpening.AsNeeded), ("hole", StopOpening.Hole), ("open slot", StopOpening.OpenSlot)),
        "Opening in the stop flange for the outer end.",
        Usual.StopOpening);

    private static readonly Key<double> SlotTravel = new("travel", QuantityForm.Length(1, 30), "How far the bracket can be shifted, from end to end.");

    private static readonly Key<Located<Vector3>> SlotDirection = new(
        "direction", new LocatedForm<Vector3>(VectorForm.Direction),
        "Direction in which it can be shifted, throttle frame; of any length, either sense. What of it lies in the mount face counts: [0, 0, 1] is along the throttle shaft.");

    private static readonly Key<(MountSlots Slots, Located<Vector3> At)> Slots = new(
        "mount_slots", new Section<(MountSlots, Located<Vector3>)>([SlotTravel, SlotDirection], v => (new(v.Get(SlotTravel), v.Get(SlotDirection).Value.Unit), v.Get(SlotDirection))),
        "Slotted mount holes, on which the bracket can be shifted before it is tightened. If left out: round holes.", isRequired: false);

    private static readonly Key<ImmutableArray<Located<string>>> Materials = Key<ImmutableArray<Located<string>>>.WithDefault(
        "materials",
        new ListForm<Located<string>>(new LocatedForm<string>(new TextForm(60)), 0, 100),
        "Designations of the materials allowed. If left out or empty: all that the shop stocks.",
        []);

    private static readonly Key<double> MinThickness = Length("min_thickness", 0.3, 25, "Minimum thickness of the sheet.", Usual.MinThickness);

    private static readonly Key<double> MaxThickness = Length("max_thickness", 0.3, 25, "Maximum thickness of the sheet.", Usual.MaxThickness);

    private static readonly Key<double> MinYieldFactor = Key<double>.WithDefault(
        "min_yield_factor", QuantityForm.Number(1, 10), "Minimum yield strength over stress with the pedal stamped on; no unit.", Usual.MinYieldFactor);

    private static readonly Key<double> MinEnduranceFactor = Key<double>.WithDefault(
        "min_endurance_factor", QuantityForm.Number(1, 20), "Minimum safety factor against cracking over all openings; no unit.", Usual.MinEnduranceFactor);

    private static readonly Key<double> MinFrequencyRatio = Key<double>.WithDefault(
        "min_frequency_ratio", QuantityForm.Number(1, 10), "Minimum first natural frequency over the engine's firing frequency at maximum speed; no unit.", Usual.MinFrequencyRatio);

    private static readonly Key<double> MaxGive = Length(
        "max_give", 0.01, 10, "Maximum give of the stop along the wire, at the largest tension of an opening.", Usual.MaxGive);

    private static readonly Key<double> CornerRadius = Length("corner_radius", 0, 50, "Radius wanted at outline corners.", Usual.CornerRadius);

    public static Section<LocatedPreferences> Form { get; } = new(
        [
            FreePlay, MinFreePlay, MinOverTravel, MaxOverTravel, MinWrap, FittingClearance, SweepClearance, OuterClearance,
            KeepOutClearance, DirtAndCold, AdjusterReserve, Opening, Materials, MinThickness, MaxThickness, CornerRadius,
            MinYieldFactor, MinEnduranceFactor, MinFrequencyRatio, MaxGive, Slots,
        ],
        v => new(
            new()
            {
                FreePlay = v.Get(FreePlay),
                MinFreePlay = v.Get(MinFreePlay),
                MinOverTravel = v.Get(MinOverTravel),
                MaxOverTravel = v.Get(MaxOverTravel),
                MinWrap = new Angle(v.Get(MinWrap)),
                FittingClearance = v.Get(FittingClearance),
                SweepClearance = v.Get(SweepClearance),
                OuterClearance = v.Get(OuterClearance),
                KeepOutClearance = v.Get(KeepOutClearance),
                DirtAndCold = v.Get(DirtAndCold),
                AdjusterReserve = v.Get(AdjusterReserve),
                StopOpening = v.Get(Opening),
                Materials = [.. v.Get(Materials).Select(m => m.Value)],
                MinThickness = v.Get(MinThickness),
                MaxThickness = v.Get(MaxThickness),
                CornerRadius = v.Get(CornerRadius),
                MinYieldFactor = v.Get(MinYieldFactor),
                MinEnduranceFactor = v.Get(MinEnduranceFactor),
                MinFrequencyRatio = v.Get(MinFrequencyRatio),
                MaxGive = v.Get(MaxGive),
                MountSlots = v.Has(Slots) ? v.Get(Slots).Slots : null,
            },
            v.Get(Materials), v.Has(Slots) ? v.Get(Slots).At : null),
        [
            new([FreePlay, MinFreePlay], v => CheckOrder(v, MinFreePlay, v.Get(MinFreePlay), FreePlay, v.Get(FreePlay).Value)),
            new([MinOverTravel, MaxOverTravel], v => CheckOrder(v, MinOverTravel, v.Get(MinOverTravel), MaxOverTravel, v.Get(MaxOverTravel))),
            new([MinThickness, MaxThickness], v => CheckOrder(v, MinThickness, v.Get(MinThickness), MaxThickness, v.Get(MaxThickness))),
        ],
        shareAs: "preferences");

    private static Key<double> Length(string name, double min, double max, string help, double usual) =>
        Key<double>.WithDefault(name, QuantityForm.Length(min, max), help, usual);

    private static void CheckOrder(SectionValues values, Key<double> less, double lessValue, Key more, double moreValue)
    {
        if (lessValue > moreValue)
        {
            // Whichever of the two stands in the file is the one to look at.
            var at = values.Has(less) ? less : more;
            values.Report(at, new WrongOrder(less.Name, lessValue, more.Name, moreValue, Quantity.Length, at == less, !(values.Has(less) && values.Has(more)), MayBeEqual: true));
        }
    }
}
