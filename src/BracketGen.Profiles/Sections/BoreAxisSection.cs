using BracketGen.Design.Inputs;
using BracketGen.Geometry;
using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Forms;
using BracketGen.Units;

namespace BracketGen.Profiles.Sections;

/// <summary><c>[bore_axis]</c> of a throttle body: where the bore lies, and the casting round it.</summary>
internal static class BoreAxisSection
{
    private static readonly Key<double> Z = new(
        "z", QuantityForm.Length(-500, 500), "Where the bore's axis crosses the throttle shaft's axis: z, negative behind the groove.");

    private static readonly Key<double> Direction = new(
        "direction", QuantityForm.Angle(-360, 360), "Polar angle of the bore's axis, either of its two ways, counter-clockwise from the x axis.");

    private static readonly Key<double> OutsideDiameter = new(
        "outside_diameter", QuantityForm.Length(10, 400), "Outside diameter of the casting round the bore, its largest flange included.");

    private static readonly Key<double> Ahead = new(
        "ahead", QuantityForm.Length(0, 500), "How far the casting reaches from the shaft's axis in that direction.");

    private static readonly Key<double> Behind = new(
        "behind", QuantityForm.Length(0, 500), "How far the casting reaches from the shaft's axis the other way.");

    public static Section<BoreAxis> Form { get; } = new(
        [Z, Direction, OutsideDiameter, Ahead, Behind],
        v => new(v.Get(Z), new(v.Get(Direction)), v.Get(OutsideDiameter), v.Get(Ahead), v.Get(Behind)),
        [new([Ahead, Behind], CheckLength)]);

    private static void CheckLength(SectionValues values)
    {
        if (values.Get(Ahead) + values.Get(Behind) < Tolerance.OffPlane)
        {
            values.Report(Ahead, new Compared(Relation.MoreThan, "nothing", Quantity.Length, 0, CompareReason.Positive));
        }
    }
}
