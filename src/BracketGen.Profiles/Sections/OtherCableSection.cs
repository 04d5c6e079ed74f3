using BracketGen.Design.Inputs;
using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;
using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Forms;

namespace BracketGen.Profiles.Sections;

/// <summary>One <c>[[other_cables]]</c> of a vehicle: a cable that does not come from the pedal.</summary>
internal static class OtherCableSection
{
    /// <summary>Its name, by which a job speaks of it.</summary>
    public static readonly Key<string> Name = new("name", new TextForm(40), "Name of the cable, by which a job says what becomes of it.");

    private static readonly Key<CableDuty> Does = new(
        "does",
        new WordForm<CableDuty>(
            ("cruise control", CableDuty.CruiseControl), ("kick-down", CableDuty.KickDown), ("hand throttle", CableDuty.HandThrottle),
            ("idle-up", CableDuty.IdleUp), ("other", CableDuty.Other)),
        "What it does: kick-down is any cable that tells an automatic gearbox how far the valve is open.");

    private static readonly Key<string> From = new("from", new TextForm(80), "Where it comes from: what pulls it or what it pulls, and where that is.");

    private static readonly Key<bool> OnPedal = new(
        "on_pedal", new WordForm<bool>(("yes", true), ("no", false)), "Whether an end of it is hooked to the pedal. If left out, it is not known.", isRequired: false);

    private static readonly Key<EndFitting> Fitting = new(
        "fitting", EndFittingSection.Form, "The end fitting on its wire, at the throttle.", isRequired: false);

    private static readonly Key<Cable> Whole = new(
        "cable", CableSection.Form, "The whole cable, as the one from the pedal: needed if it works in a groove of its own.", isRequired: false);

    private static readonly Key<Measured> Stroke = new(
        "stroke", new MeasuredForm(QuantityForm.Length(1, 300), 50),
        "Wire that its actuator or lever pulls over its whole stroke; for kick-down the wire that the gearbox needs drawn from closed to wide open.", isRequired: false);

    private static readonly Key<double> MaxStroke = new(
        "max_stroke", QuantityForm.Length(1, 300), "Wire that can be drawn before the far end meets its own stop: for a cable that the quadrant draws.", isRequired: false);

    private static readonly Key<double> TakeUp = new(
        "take_up", QuantityForm.Length(0, 300), "Wire that the far end takes up by itself while the pedal opens the valve.", isRequired: false);

    private static readonly Key<Measured> DrawForce = new(
        "draw_force", new MeasuredForm(QuantityForm.Force(0, 500), 200), "Pull at the end fitting that draws the wire over its stroke, far end connected; the largest.", isRequired: false);

    public static Section<OtherCable> Form { get; } = new(
        [Name, Does, From, OnPedal, Fitting, Whole, Stroke, MaxStroke, TakeUp, DrawForce],
        v => new(v.Get(Name), v.Get(Does), v.Get(From))
        {
            IsOnPedal = v.OrNull(OnPedal),
            Fitting = v.Has(Fitting) ? v.Get(Fitting) : v.Has(Whole) ? v.Get(Whole).Fitting : null,
            Cable = v.Has(Whole) ? v.Get(Whole) : null,
            Stroke = v.Has(Stroke) ? v.Get(Stroke) : null,
            MaxStroke = v.OrNull(MaxStroke),
            TakeUp = v.OrNull(TakeUp),
            DrawForce = v.Has(DrawForce) ? v.Get(DrawForce) : null,
        },
        [new([Fitting, Whole], CheckFitting)]);

    private static void CheckFitting(SectionValues values)
    {
        if (values.Has(Fitting) && values.Has(Whole))
        {
            values.Report(Fitting, new AlternativeTwice([Fitting.Name, $"{Whole.Name}.{Fitting.Name}"]));
        }
    }
}
