using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;
using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Forms;
using BracketGen.Units;

namespace BracketGen.Profiles.Sections;

/// <summary><c>[cable]</c> of a vehicle.</summary>
internal static class CableSection
{
    private static readonly Key<EndFitting> Fitting = new("fitting", EndFittingSection.Form, "The end fitting on the wire; it sits in the pocket of the quadrant.");

    private static readonly Key<double> WireDiameter = new("wire_diameter", QuantityForm.Length(0.5, 6), "Diameter of the wire.");

    private static readonly Key<OuterEnd> OuterEnd = new("outer_end", OuterEndSection.Form, "The outer end at the bracket.");

    private static readonly Key<double> OuterDiameter = new("outer_diameter", QuantityForm.Length(1.5, 20), "Diameter of the outer.");

    private static readonly Key<double> OuterBore = new(
        "outer_bore", QuantityForm.Length(0.5, 20), "Inside diameter of the outer, or of its liner where it has one.", isRequired: false);

    private static readonly Key<WireConstruction> Construction = new(
        "wire_construction",
        new WordForm<WireConstruction>(
            ("7x19", WireConstruction.SevenByNineteen), ("7x7", WireConstruction.SevenBySeven), ("1x19", WireConstruction.OneStrand), ("single", WireConstruction.Single)),
        "How the wire is stranded: strands times wires in each.",
        isRequired: false);

    private static readonly Key<Measured> FreeInnerLength = new(
        "free_inner_length",
        new MeasuredForm(QuantityForm.Length(10, 1000), 100),
        "Wire from the stop's seat to the fitting's centre: adjuster at mid range, pedal released, wire taut.");

    private static readonly Key<double> FleetLimit = new("fleet_limit", QuantityForm.Angle(0.1, 30), "Maximum fleet angle of the wire.");

    private static readonly Key<double> MinBendRadius = new("min_bend_radius", QuantityForm.Length(5, 500), "Minimum bend radius of the outer.");

    private static readonly Key<double> WanderLimit = Key<double>.WithDefault(
        "wander_limit", QuantityForm.Angle(0.1, 45), "Maximum side load: change of wire direction at the outer end over the sweep (default: common practice, no source).", 5 * Math.PI / 180);

    private static readonly Key<Measured> Friction = Key<Measured>.WithDefault(
        "friction", new MeasuredForm(QuantityForm.Number(0, 0.6), 0.3), "Friction coefficient of the wire in the outer; no unit (default: lined outer, common practice, no source).", new(0.12, 0.04, Evidence.Assumed));

    private static readonly Key<Measured> ClosingDrag = Key<Measured>.WithDefault(
        "closing_drag", Drag(), "Pull at the end fitting that draws the wire back, pedal end unhooked, outer routed as on the vehicle; the largest over the stroke (default: assumed, up to 15 N; common practice, no source).", new(Cable.UsualDrag, 0, Evidence.Assumed));

    private static readonly Key<Measured> OpeningDrag = Key<Measured>.WithDefault(
        "opening_drag", Drag(), "Pull at the pedal end that draws the wire, end fitting free; likewise (default: assumed, up to 15 N; common practice, no source).", new(Cable.UsualDrag, 0, Evidence.Assumed));

    private static readonly Key<Measured> TotalBend = Key<Measured>.WithDefault(
        "total_bend",
        new MeasuredForm(QuantityForm.Angle(0, 1080), Math.PI),
        "All bends of the outer added up, whichever way they go; where the job gives the bulkhead, the larger of this and what is calculated counts (default: common practice, no source).",
        new(Math.PI, 0, Evidence.Assumed));

    private static readonly Key<double> WireModulus = Key<double>.WithDefault(
        "wire_modulus", new QuantityForm(UnitTable.Gigapascal, 1, 400), "Young's modulus of the wire's metal (default: steel).", 200_000);

    private static readonly Key<double> WireFill = Key<double>.WithDefault(
        "wire_fill", QuantityForm.Number(0.1, 1), "Effective metal area over the area of the wire's circle, 1 for a single wire; no unit (default: stranded wire, common practice, no source).", 0.6);

    private static readonly Key<Measured> OuterAxialStiffness = Key<Measured>.WithDefault(
        "outer_axial_stiffness",
        new MeasuredForm(QuantityForm.Force(2_000, 20_000_000), 10_000_000),
        "Axial stiffness of the outer: force over the part by which it is pressed shorter; for an outer of one metre a thousand times its N/mm (default: assumed, from 50 kN to 500 kN; common practice, no source).",
        Cable.AssumedStiffness);

    private static readonly Key<Measured> OuterMass = new(
        "outer_mass_per_metre", new MeasuredForm(new QuantityForm(UnitTable.Gram, 5, 2_000), 500), "Mass of one metre of the outer, weighed.", isRequired: false);

    private static readonly Key<Measured> EndMass = new(
        "outer_end_mass", new MeasuredForm(new QuantityForm(UnitTable.Gram, 1, 1_000), 200), "Mass of the outer's end with its nuts or clip, without the outer, weighed.", isRequired: false);

    private static readonly Key<Measured> OuterLength = new(
        "outer_length", new MeasuredForm(QuantityForm.Length(50, 5000), 100), "Length of the outer from the stop's seat to the bulkhead.", isRequired: false);

    public static Section<Cable> Form { get; } = new(
        [
            WireDiameter, OuterDiameter, OuterBore, Construction, FreeInnerLength, FleetLimit, MinBendRadius, WanderLimit, Friction, ClosingDrag, OpeningDrag, TotalBend, WireModulus,
            WireFill, OuterAxialStiffness, OuterLength, OuterMass, EndMass, Fitting, OuterEnd,
        ],
        v => new()
        {
            Fitting = v.Get(Fitting),
            WireDiameter = v.Get(WireDiameter),
            OuterEnd = v.Get(OuterEnd),
            OuterDiameter = v.Get(OuterDiameter),
            OuterBore = v.OrNull(OuterBore),
            Construction = v.OrNull(Construction),
            FreeInnerLength = v.Get(FreeInnerLength),
            FleetLimit = new(v.Get(FleetLimit)),
            MinBendRadius = v.Get(MinBendRadius),
            WanderLimit = new(v.Get(WanderLimit)),
            Friction = v.Get(Friction),
            ClosingDrag = v.Get(ClosingDrag),
            OpeningDrag = v.Get(OpeningDrag),
            TotalBend = v.Get(TotalBend),
            WireModulus = v.Get(WireModulus),
            WireFill = v.Get(WireFill),
            OuterAxialStiffness = v.Get(OuterAxialStiffness),
            OuterMass = v.Has(OuterMass) ? Times(v.Get(OuterMass), 1.0 / 1000) : null,
            EndMass = v.Has(EndMass) ? v.Get(EndMass) : null,
            OuterLength = v.Has(OuterLength) ? v.Get(OuterLength) : null,
        },
        [
            new([OuterBore, OuterDiameter, WireDiameter], CheckBore),
            new([OuterDiameter, WireDiameter], v => Compare.MoreThan(v, OuterDiameter, v.Get(WireDiameter), WireDiameter)),
            new([Fitting, WireDiameter], CheckFitting),
            new([OuterEnd, WireDiameter], CheckOuterEnd),
        ]);

    private static Measured Times(Measured value, double factor) => value with { Value = factor * value.Value, PlusMinus = factor * value.PlusMinus };

    private static MeasuredForm Drag() => new(QuantityForm.Force(0, 200), 100);

    private static void CheckBore(SectionValues values)
    {
        if (values.OrNull(OuterBore) is not { } bore)
        {
            return;
        }

        if (bore <= values.Get(WireDiameter))
        {
            values.Report(OuterBore, new Compared(Relation.MoreThan, WireDiameter.Name, Quantity.Length, values.Get(WireDiameter), CompareReason.Contains));
        }
        else
        {
            Compare.LessThan(values, OuterBore, bore, values.Get(OuterDiameter), OuterDiameter);
        }
    }

    private static void CheckFitting(SectionValues values)
    {
        var (fitting, wire) = (values.Get(Fitting), values.Get(WireDiameter));
        if (fitting.Diameter <= wire)
        {
            values.Report(WireDiameter, new Compared(Relation.LessThan, "fitting.diameter", Quantity.Length, fitting.Diameter, CompareReason.FittingHoldsWire));
        }
    }

    private static void CheckOuterEnd(SectionValues values)
    {
        var (end, wire) = (values.Get(OuterEnd), values.Get(WireDiameter));
        if (end.BodyDiameter <= wire)
        {
            values.Report(WireDiameter, new Compared(Relation.LessThan, "outer_end", Quantity.Length, end.BodyDiameter, CompareReason.WireThroughOuterEnd));
        }
    }
}
