using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using BracketGen.Geometry;
using BracketGen.Mechanism.Grooves;
using BracketGen.Profiles.Forms;

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
            new Section<GroovePoint>("a point of the groove", [PointAngle, PointRadius], v => new(new Angle(v.Get(PointAngle)), v.Get(PointRadius))), 4, 90),
        "Measured points by rising angle, over less than a turn; a smooth curve is laid through them.");

    private static readonly Key<double> PlusMinus = Key<double>.WithDefault(
        "plus_minus", QuantityForm.Length(0, 20), "How well the radii are known, as one error common to all.", 0);

    public static Variants<Groove> Form { get; } = new(
        "a groove",
        "shape",
        "Shape of the wire's centre line.",
        ("eccentric circle", new(
            "an eccentric circle",
            [Radius, Offset, Direction],
            v => new EccentricGroove(v.Get(Radius), v.Get(Offset), new(v.Get(Direction))),
            [new([Radius, Offset], CheckOffset)])),
        ("table", new(
            "a table of points",
            [Points, PlusMinus],
            v => Make(v, out _)!,
            [new([Points, PlusMinus], CheckPoints)])));

    private static void CheckOffset(SectionValues values)
    {
        var radius = values.Get(Radius).Value;
        if (values.Get(Offset) >= radius)
        {
            values.Report(Offset, $"less than the radius, {Compare.Millimetres(radius)}", "The throttle shaft lies inside the groove's circle: measure again.");
        }
    }

    private static void CheckPoints(SectionValues values)
    {
        if (Make(values, out var problem) is null)
        {
            values.Report(Points, "points by rising angle on a convex curve", problem!);
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
