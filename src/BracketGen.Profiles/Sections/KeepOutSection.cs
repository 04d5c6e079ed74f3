using BracketGen.Design.Inputs;
using BracketGen.Geometry;
using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Forms;

namespace BracketGen.Profiles.Sections;

/// <summary>One <c>[[keep_out]]</c> or <c>[[spring_room]]</c> of a throttle body: a box, a tilted box or a cylinder.</summary>
internal static class KeepOutSection
{
    private static readonly Key<string> Name = new("name", new TextForm(80), "What is there.");

    private static readonly Key<Vector3> Min = new("min", VectorForm.Point, "Corner of minimum x, y and z.");

    private static readonly Key<Vector3> Max = new("max", VectorForm.Point, "Corner of maximum x, y and z.");

    private static readonly Key<Vector3> From = new("from", VectorForm.Point, "Centre of one end.");

    private static readonly Key<Vector3> To = new("to", VectorForm.Point, "Centre of the other end.");

    private static readonly Key<double> Radius = new("radius", QuantityForm.Length(0.1, 1000), "Radius.");

    private static readonly Section<KeepOut> Box = new(
        [Name, Min, Max],
        v => new KeepOutBox(v.Get(Name), new(v.Get(Min)), new(v.Get(Max))),
        [new([Min, Max], CheckCorners)]);

    private static readonly Key<Vector3> Corner = new("corner", VectorForm.Point, "One corner.");

    private static readonly Key<Vector3>[] Next =
    [
        new("next_1", VectorForm.Point, "The corner at the other end of an edge from it: the edge measured best."),
        new("next_2", VectorForm.Point, "The corner at the other end of the second edge from it."),
        new("next_3", VectorForm.Point, "The corner at the other end of the third edge from it."),
    ];

    // Edges that are this far off square to each other (sine) were not measured on one box.
    private static readonly double MostOffSquare = Math.Sin(Angle.FromDegrees(5).Radians);

    private static readonly Section<KeepOut> TiltedBox = new(
        [Name, Corner, .. Next],
        v => KeepOutTiltedBox.Of(v.Get(Name), new(v.Get(Corner)), [.. Next.Select(n => new ThrottlePoint(v.Get(n)))]),
        [new([Corner, .. Next], CheckEdges)]);

    private static readonly Section<KeepOut> Cylinder = new(
        [Name, From, To, Radius],
        v => new KeepOutCylinder(v.Get(Name), new(v.Get(From)), new(v.Get(To)), v.Get(Radius)),
        [new([From, To], CheckEnds)]);

    public static Variants<KeepOut> Form { get; } = new(
        "shape", "Its shape.", ("box", Box), ("tilted box", TiltedBox), ("cylinder", Cylinder));

    private static void CheckCorners(SectionValues values)
    {
        Vector3 min = values.Get(Min), max = values.Get(Max);
        if (min.X >= max.X || min.Y >= max.Y || min.Z >= max.Z)
        {
            values.Report(Max, new Contradiction(Contradictory.BoxCorners));
        }
    }

    private static void CheckEdges(SectionValues values)
    {
        Vector3[] edges = [.. Next.Select(n => values.Get(n) - values.Get(Corner))];
        for (var i = 0; i < edges.Length; i++)
        {
            if (edges[i].Length < Tolerance.OffPlane)
            {
                values.Report(Next[i], new Contradiction(Contradictory.TiltedBoxEdge));
                return;
            }

            for (var j = 0; j < i; j++)
            {
                if (Math.Abs(edges[i].Unit.Dot(edges[j].Unit)) > MostOffSquare)
                {
                    values.Report(Next[i], new Contradiction(Contradictory.TiltedBoxSquare));
                    return;
                }
            }
        }
    }

    private static void CheckEnds(SectionValues values)
    {
        if (values.Get(From).DistanceTo(values.Get(To)) < Tolerance.OffPlane)
        {
            values.Report(To, new Contradiction(Contradictory.CylinderEnds));
        }
    }
}
