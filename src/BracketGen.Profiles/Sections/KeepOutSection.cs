using BracketGen.Design.Inputs;
using BracketGen.Geometry;
using BracketGen.Profiles.Forms;

namespace BracketGen.Profiles.Sections;

/// <summary>One <c>[[keep_out]]</c> of a throttle body: a box or a cylinder.</summary>
internal static class KeepOutSection
{
    private static readonly Key<string> Name = new("name", new TextForm(80), "What is there.");

    private static readonly Key<Vector3> Min = new("min", VectorForm.Point, "Corner of minimum x, y and z.");

    private static readonly Key<Vector3> Max = new("max", VectorForm.Point, "Corner of maximum x, y and z.");

    private static readonly Key<Vector3> From = new("from", VectorForm.Point, "Centre of one end.");

    private static readonly Key<Vector3> To = new("to", VectorForm.Point, "Centre of the other end.");

    private static readonly Key<double> Radius = new("radius", QuantityForm.Length(0.1, 1000), "Radius.");

    private static readonly Section<KeepOut> Box = new(
        "a box",
        [Name, Min, Max],
        v => new KeepOutBox(v.Get(Name), v.Get(Min), v.Get(Max)),
        [new([Min, Max], CheckCorners)]);

    private static readonly Section<KeepOut> Cylinder = new(
        "a cylinder",
        [Name, From, To, Radius],
        v => new KeepOutCylinder(v.Get(Name), v.Get(From), v.Get(To), v.Get(Radius)),
        [new([From, To], CheckEnds)]);

    public static Variants<KeepOut> Form { get; } = new(
        "a keep-out space", "shape", "Its shape.", ("box", Box), ("cylinder", Cylinder));

    private static void CheckCorners(SectionValues values)
    {
        Vector3 min = values.Get(Min), max = values.Get(Max);
        if (min.X >= max.X || min.Y >= max.Y || min.Z >= max.Z)
        {
            values.Report(Max, "a corner greater than min in x, in y and in z", "Exchange the coordinates that stand the wrong way round.");
        }
    }

    private static void CheckEnds(SectionValues values)
    {
        if (values.Get(From).DistanceTo(values.Get(To)) < Tolerance.OffPlane)
        {
            values.Report(To, "a point other than from", "Give the centres of the two ends of the cylinder.");
        }
    }
}
