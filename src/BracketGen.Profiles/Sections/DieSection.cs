using BracketGen.Geometry;
using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Forms;
using BracketGen.SheetMetal.Bending;
using BracketGen.Units;

namespace BracketGen.Profiles.Sections;

/// <summary>One <c>[[dies]]</c> of a shop.</summary>
internal static class DieSection
{
    private static readonly Key<double> Opening = new("opening", QuantityForm.Length(2, 300), "Width of the V: the die opening.");

    private static readonly Key<double> Radius = new(
        "inside_radius", QuantityForm.Length(0.1, 50), "Inside radius of the bend it gives in air bending.");

    private static readonly Key<double> VAngle = new(
        "angle", QuantityForm.Angle(10, 150), "Included angle of the V. If left out: 88 degrees, assumed.", isRequired: false);

    private static readonly Key<double> BodyWidth = new(
        "body_width", QuantityForm.Length(4, 600), "Width of the die across the bend, at its top. If left out: 1.6 times the opening and at least 14 mm more, assumed.", isRequired: false);

    private static readonly Key<double> ShoulderHeight = new(
        "shoulder_height", QuantityForm.Length(10, 500), "Height of the shoulders over the bed of the press. If left out: 80 mm, assumed.", isRequired: false);

    private static readonly Key<double> ShoulderRadius = new(
        "shoulder_radius", QuantityForm.Length(0.1, 50), "Radius between the V and the top. If left out: a twelfth of the opening and at least 1 mm, assumed.", isRequired: false);

    private static readonly Key<double> MaxForce = new(
        "max_force", ForceOnLength, "Force per length of bend that the die stands. If left out: 1000 N/mm, assumed.", isRequired: false);

    /// <summary>Force per length of a tool.</summary>
    public static QuantityForm ForceOnLength => new(UnitTable.NewtonPerMillimetre, 10, 20_000);

    public static Section<PressBrakeDie> Form { get; } = new(
        [Opening, Radius, VAngle, BodyWidth, ShoulderHeight, ShoulderRadius, MaxForce],
        Read,
        [
            new([Opening, Radius], Check),
            new([Opening, BodyWidth], v =>
            {
                if (v.Has(BodyWidth))
                {
                    Compare.MoreThan(v, BodyWidth, v.Get(Opening), Opening);
                }
            }),
        ]);

    private static PressBrakeDie Read(SectionValues v)
    {
        var usual = new PressBrakeDie(v.Get(Opening), v.Get(Radius));
        return usual with
        {
            Angle = new(v.Get(VAngle, usual.Angle.Radians)),
            BodyWidth = v.Get(BodyWidth, usual.BodyWidth),
            ShoulderHeight = v.Get(ShoulderHeight, usual.ShoulderHeight),
            ShoulderRadius = v.Get(ShoulderRadius, usual.ShoulderRadius),
            MaxForce = v.Get(MaxForce, usual.MaxForce),
            Evidence = new Key[] { VAngle, BodyWidth, ShoulderHeight, ShoulderRadius, MaxForce }.All(v.Has) ? Evidence.Given : Evidence.Assumed,
        };
    }

    private static void Check(SectionValues values)
    {
        if (values.Get(Radius) >= values.Get(Opening) / 2)
        {
            values.Report(Radius, new Compared(Relation.LessThan, Opening.Name, Quantity.Length, values.Get(Opening) / 2, CompareReason.DieRadius));
        }
    }
}
