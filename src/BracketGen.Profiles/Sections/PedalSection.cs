using System.Collections.Immutable;
using BracketGen.Geometry;
using BracketGen.Mechanism.Pedals;
using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Forms;
using BracketGen.Units;

namespace BracketGen.Profiles.Sections;

/// <summary><c>[pedal]</c> of a vehicle.</summary>
internal static class PedalSection
{
    private static readonly Key<Measured> AvailablePull = new(
        "available_pull", new MeasuredForm(QuantityForm.Length(5, 200), 50), "Available pull: length of wire drawn from pedal released to pedal on the floor.");

    private static readonly Key<double> LeverRatio = new(
        "lever_ratio", QuantityForm.Number(0.2, 20), "Lever ratio: pad travel over pull; no unit.", isRequired: false);

    private static readonly Key<double> Pad = new("pad", QuantityForm.Length(0, 400), "Travel of the pad from released.");

    private static readonly Key<double> Pull = new("pull", QuantityForm.Length(0, 200), "Pull there.");

    private static readonly Key<ImmutableArray<PedalPoint>> Table = new(
        "table",
        new ListForm<PedalPoint>(new Section<PedalPoint>([Pad, Pull], v => new(v.Get(Pad), v.Get(Pull))), 2, 60),
        "Pad travel and pull point by point, from released (0, 0) to the floor, instead of lever_ratio.",
        isRequired: false);

    private static readonly Key<Measured> PadLoad = Key<Measured>.WithDefault(
        "pad_load", new MeasuredForm(QuantityForm.Force(-200, 200), 100), "Force at the pad with which the released pedal itself opens the valve, by its own weight; negative if a spring lifts it.", new(0, 0, Evidence.Assumed));

    private static readonly Key<double> ProofForce = Key<double>.WithDefault(
        "proof_force", QuantityForm.Force(50, 5000), "Foot force with the pedal stamped on (default: 200 lbf, a pilot's foot on a rudder pedal; 14 CFR 23.397, amendment 23-45).", new Pedal(new(1), 1).ProofForce);

    private static readonly Key<double> PadMass = Key<double>.WithDefault(
        "pad_mass", new QuantityForm(UnitTable.Kilogram, 0.01, 10), "Mass of the moving pedal as felt at the pad: it slows the closing valve (default: common practice, no source).", new Pedal(new(1), 1).PadMass);

    public static Section<Pedal> Form { get; } = new(
        [AvailablePull, LeverRatio, Table, PadLoad, ProofForce, PadMass],
        v => v.Has(Table)
            ? new(v.Get(AvailablePull), v.Get(Table)[^1].Pad / v.Get(Table)[^1].Pull) { Table = new(v.Get(Table)), PadLoad = v.Get(PadLoad), ProofForce = v.Get(ProofForce), PadMass = v.Get(PadMass) }
            : new(v.Get(AvailablePull), v.Get(LeverRatio)) { PadLoad = v.Get(PadLoad), ProofForce = v.Get(ProofForce), PadMass = v.Get(PadMass) },
        [new([Table, AvailablePull], CheckTable)],
        [LeverRatio, Table]);

    private static void CheckTable(SectionValues values)
    {
        if (!values.Has(Table))
        {
            return;
        }

        var rows = values.Get(Table);
        try
        {
            _ = new TabulatedLever(rows);
        }
        catch (ArgumentException problem)
        {
            values.Report(Table, new PedalTableWrong(problem.Message));
            return;
        }

        var full = values.Get(AvailablePull).Value;
        if (Math.Abs(rows[^1].Pull - full) > 0.005)
        {
            values.ReportItem(Table, rows.Length - 1, "pull", new PedalTableShort(full));
        }
    }
}
