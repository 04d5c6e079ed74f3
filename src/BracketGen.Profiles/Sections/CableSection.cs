using BracketGen.Geometry;
using BracketGen.Mechanism;
using BracketGen.Profiles.Forms;

namespace BracketGen.Profiles.Sections;

/// <summary><c>[cable]</c> of a vehicle.</summary>
internal static class CableSection
{
    private static readonly Key<EndFitting> Fitting = new("fitting", EndFittingSection.Form, "What is fixed on the wire's end and sits in the quadrant.");

    private static readonly Key<double> WireDiameter = new("wire_diameter", QuantityForm.Length(0.5, 6), "Diameter of the wire.");

    private static readonly Key<OuterEnd> OuterEnd = new("outer_end", OuterEndSection.Form, "How the outer ends at the bracket.");

    private static readonly Key<double> OuterDiameter = new("outer_diameter", QuantityForm.Length(1.5, 20), "Diameter of the outer.");

    private static readonly Key<Measured> FreeInnerLength = new(
        "free_inner_length",
        new MeasuredForm(QuantityForm.Length(10, 1000), 100),
        "Wire from the stop's seat to the fitting's centre: adjuster at mid range, pedal released, wire taut.");

    private static readonly Key<double> FleetLimit = new("fleet_limit", QuantityForm.Angle(0.1, 30), "Largest fleet angle the wire stands.");

    private static readonly Key<double> LeastBendRadius = new("least_bend_radius", QuantityForm.Length(5, 500), "Least bend radius of the outer.");

    public static Section<Cable> Form { get; } = new(
        "a cable",
        [WireDiameter, OuterDiameter, FreeInnerLength, FleetLimit, LeastBendRadius, Fitting, OuterEnd],
        v => new()
        {
            Fitting = v.Get(Fitting),
            WireDiameter = v.Get(WireDiameter),
            OuterEnd = v.Get(OuterEnd),
            OuterDiameter = v.Get(OuterDiameter),
            FreeInnerLength = v.Get(FreeInnerLength),
            FleetLimit = v.Get(FleetLimit),
            LeastBendRadius = v.Get(LeastBendRadius),
        },
        [
            new([OuterDiameter, WireDiameter], v => Compare.MoreThan(v, OuterDiameter, v.Get(WireDiameter), WireDiameter)),
            new([Fitting, WireDiameter], CheckFitting),
            new([OuterEnd, WireDiameter], CheckOuterEnd),
        ]);

    private static void CheckFitting(SectionValues values)
    {
        var (fitting, wire) = (values.Get(Fitting), values.Get(WireDiameter));
        if (fitting.Diameter <= wire)
        {
            values.Report(WireDiameter, $"less than the end fitting's diameter, {Compare.Millimetres(fitting.Diameter)}", "Measure wire and end fitting again: the fitting holds the wire's end.");
        }
    }

    private static void CheckOuterEnd(SectionValues values)
    {
        var (end, wire) = (values.Get(OuterEnd), values.Get(WireDiameter));
        if (end.BodyDiameter <= wire)
        {
            values.Report(WireDiameter, $"less than the diameter of the outer's end, {Compare.Millimetres(end.BodyDiameter)}", "Measure both again: the wire runs through the outer's end.");
        }
    }
}
