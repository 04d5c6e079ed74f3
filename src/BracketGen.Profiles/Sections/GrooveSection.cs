using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using BracketGen.Geometry;
using BracketGen.Mechanism.Grooves;
using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Forms;
using BracketGen.Units;

namespace BracketGen.Profiles.Sections;

/// <summary><c>[quadrant.groove]</c> of a throttle body whose groove has no constant radius about the throttle shaft.</summary>
internal static class GrooveSection
{
    private static readonly Key<Measured> Radius = new(
        "radius", new MeasuredForm(QuantityForm.Length(5, 200), 20), "Radius of the wire's centre line about its own centre.");

    private static readonly Key<double> Offset = new(
        "offset", QuantityForm.Length(0, 150), "Distance of that centre from the throttle shaft's axis.");

    private static readonly Key<double> Direction = new(
        "direction", QuantityForm.Angle(-360, 360), "Polar angle of that centre at the closed stop, counter-clockwise from the x axis.");

    private static readonly Key<double> PointAngle = new(
        "angle", QuantityForm.Angle(-360, 720), "Polar angle at the closed stop, counter-clockwise from the x axis.");

    private static readonly Key<double> PointRadius = new(
        "radius", QuantityForm.Length(3, 250), "Distance of the wire's centre line from the throttle shaft's axis there.");

    private static readonly Key<ImmutableArray<GroovePoint>> Points = new(
        "points",
        new ListForm<GroovePoint>(
            new Section<GroovePoint>([PointAngle, PointRadius], v => new(new Angle(v.Get(PointAngle)), v.Get(PointRadius))), 4, 90),
        "Measured points by rising angle, over less than a full turn; a smooth curve runs through them.");

    private static readonly Key<double> PlusMinus = Key<double>.WithDefault(
        "plus_minus", QuantityForm.Length(0, 20), "How far the radii may be off: one error common to all.", 0);

    public static Variants<Groove> Form { get; } = new(
        "shape",
        "Shape of the wire's centre line.",
        ("eccentric circle", new(
            [Radius, Offset, Direction],
            v => new EccentricGroove(v.Get(Radius), v.Get(Offset), new(v.Get(Direction))),
            [new([Radius, Offset], CheckOffset)])),
        ("table", new(
            [Points, PlusMinus],
            v => Make(v, out _)!,
            [new([Points, PlusMinus], CheckPoints)])));

    private static void CheckOffset(SectionValues values)
    {
        var radius = values.Get(Radius).Value;
        if (values.Get(Offset) >= radius)
        {
            values.Report(Offset, new Compared(Relation.LessThan, Radius.Name, Quantity.Length, radius, CompareReason.ShaftInsideGroove));
        }
    }

    private static void CheckPoints(SectionValues values)
    {
        if (Make(values, out var problem) is null)
        {
            values.Report(Points, new GrooveNotConvex(problem!));
        }
    }

    private static TabulatedGroove? Make(SectionValues values, [MaybeNull] out string problem)
    {
        try
        {
            problem = null;
            return new(values.Get(Points), closed: false, values.Get(PlusMinus));
        }
        catch (ArgumentException wrong)
        {
            problem = wrong.Message;
            return null;
        }
    }
}
