using System.Collections;
using System.Reflection;
using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Geometry;
using BracketGen.Mechanism;
using BracketGen.Mechanism.Grooves;
using BracketGen.Mechanism.Motion;
using BracketGen.Mechanism.Throttles;
using BracketGen.Mechanism.Uncertainty;
using BracketGen.Profiles.Sections;
using BracketGen.SheetMetal.Bending;
using BracketGen.SheetMetal.Forming;
using BracketGen.SheetMetal.Patterns;
using BracketGen.Strength.Analysis;
using BracketGen.Strength.Model;
using BracketGen.TestSupport;

namespace BracketGen.Design.Tests;

/// <summary>
/// Whether one value is the mirror image of another in the plane y = 0, property by property: points in space go from y to -y, points of a
/// flat pattern from x to -x, and everything else stays. A coordinate that this list does not know fails.
/// </summary>
internal static class MirrorImage
{
    private const double Tolerance = 1e-9;

    // Polar angles, which change their sign.
    private static readonly HashSet<(Type, string)> PolarAngles =
    [
        (typeof(TautWire), nameof(TautWire.Leaving)), (typeof(StopPlacement), nameof(StopPlacement.Leaving)), (typeof(Quadrant), nameof(Quadrant.Pocket)),
        (typeof(EccentricGroove), nameof(EccentricGroove.Direction)), (typeof(GroovePoint), nameof(GroovePoint.Polar)),
    ];

    // Axes of turns, which mirror the other way round from directions.
    private static readonly HashSet<(Type, string)> Turns =
        [(typeof(StaticSolution), nameof(StaticSolution.Rotations)), (typeof(NodalLoad), nameof(NodalLoad.Moment))];

    private static readonly HashSet<Type> InGroovePlane = [typeof(TautWire), typeof(QuadrantPicture)];

    private static readonly HashSet<Type> InFlatPattern =
        [typeof(Part.BracketHole), typeof(HoleOutline), typeof(SlottedHole)];

    // Thousands of samples without coordinates, the groove's normal up to a whole turn, and the mirror image itself.
    private static readonly HashSet<string> Skipped = [nameof(TravelUncertainty.Run), nameof(Quadrant.PocketNormal), nameof(TriangleMesh.MirroredInX)];

    /// <summary>Fails where <paramref name="other"/> is not the mirror image of <paramref name="one"/>.</summary>
    public static void Check(object one, object other) => Compare(one, other, (one.GetType(), ""), one.GetType().Name);

    private static void Compare(object? one, object? other, (Type Owner, string Name) member, string path)
    {
        if (one is null || other is null)
        {
            Assert.True(one is null && other is null, path);
            return;
        }

        switch (one, other)
        {
            case (OpeningSense a, OpeningSense b):
                Assert.NotEqual(a, b);
                break;
            case (double a, double b):
                Same(a, b, path);
                break;
            case (Angle a, Angle b):
                Same(PolarAngles.Contains(member) ? -a.Radians : a.Radians, b.Radians, path);
                break;
            case (Measured a, Measured b):
                Same(a.Value, b.Value, path);
                Same(a.PlusMinus, b.PlusMinus, path);
                break;
            case (MeasuredAngle a, MeasuredAngle b):
                Compare(a.Value, b.Value, member, path);
                Same(a.PlusMinus.Radians, b.PlusMinus.Radians, path);
                break;
            case (ThrottlePoint a, ThrottlePoint b):
                Compare(a.Vector, b.Vector, (typeof(ThrottlePoint), nameof(a.Vector)), path);
                break;
            case (FlatPoint a, FlatPoint b):
                Same(-a.X, b.X, path);
                Same(a.Y, b.Y, path);
                break;
            case (Vector3 a, Vector3 b):
                var sign = Turns.Contains(member) ? -1 : 1;
                Same(sign * a.X, b.X, path);
                Same(-sign * a.Y, b.Y, path);
                Same(sign * a.Z, b.Z, path);
                break;
            case (Vector2 a, Vector2 b):
                Assert.True(InGroovePlane.Contains(member.Owner) || InFlatPattern.Contains(member.Owner), $"{path}: say in which plane it lies.");
                var flat = InFlatPattern.Contains(member.Owner);
                Same(flat ? -a.X : a.X, b.X, path);
                Same(flat ? a.Y : -a.Y, b.Y, path);
                break;
            case (Region a, Region b):
                Segment[] image = [.. a.MirroredInX.Contours.SelectMany(c => c.Segments)], segments = [.. b.Contours.SelectMany(c => c.Segments)];
                Assert.True(image.Length == segments.Length, path);
                Assert.All(image.Zip(segments), p => Assert.True(
                    p.First.Start.DistanceTo(p.Second.Start) < Tolerance && p.First.PointAt(0.5).DistanceTo(p.Second.PointAt(0.5)) < Tolerance, path));
                break;
            case (Frame a, Frame b):
                // A frame stays right-handed: its local x is turned round, as the flat pattern in it is.
                Members(a, b, path, [nameof(Frame.Origin), nameof(Frame.Y), nameof(Frame.Z)]);
                Compare(-a.X, b.X, member, path);
                break;
            case (Bend a, Bend b):
                // Its ends change places, so that it still turns to its left.
                Assert.True(a.Start.MirroredInX.DistanceTo(b.End) < Tolerance && a.End.MirroredInX.DistanceTo(b.Start) < Tolerance, path);
                Members(a, b, path, [nameof(Bend.From), nameof(Bend.To), nameof(Bend.Turn), nameof(Bend.InsideRadius), nameof(Bend.Allowance)]);
                break;
            case (BendPlan a, BendPlan b):
                Assert.Equal(a.Steps.Select(s => (s.Bend, s.TopUp, s.NewFlangeInFront, s.Gauge.Kind)), b.Steps.Select(s => (s.Bend, s.TopUp, s.NewFlangeInFront, s.Gauge.Kind)));
                Assert.All(a.Mirrored().Steps.Zip(b.Steps), p => Assert.All(p.First.Gauge.Fingers.Zip(p.Second.Gauge.Fingers), f =>
                {
                    Same(f.First.Distance, f.Second.Distance, path);
                    Same(f.First.Along, f.Second.Along, path);
                }));
                break;
            case (KeepOutBox a, KeepOutBox b):
                Compare(new ThrottlePoint(a.Min.X, a.Max.Y, a.Min.Z), b.Min, member, path);
                Compare(new ThrottlePoint(a.Max.X, a.Min.Y, a.Max.Z), b.Max, member, path);
                break;
            case (Triangle a, Triangle b):
                Assert.Equal((a.A, a.C, a.B), (b.A, b.B, b.C));
                break;
            case (QuadrantPicture a, QuadrantPicture b):
                Members(a, b, path, [nameof(a.Groove), nameof(a.Fitting), nameof(a.InGroove), nameof(a.OuterRadius), nameof(a.HubRadius), nameof(a.Thickness)]);
                Items(a.Outline.Reverse(), b.Outline, (typeof(QuadrantPicture), ""), path);
                Same(-a.TurnAt(Angle.Right).Radians, b.TurnAt(Angle.Right).Radians, path);
                break;
            case (TabulatedGroove a, TabulatedGroove b):
                Items(a.Points.Reverse(), b.Points, member, path);
                break;
            case (string or bool or int or long or Enum or DateOnly or Type, _):
                Assert.True(one.Equals(other), $"{path}: {one} and {other}");
                break;
            case (IEnumerable a, IEnumerable b):
                Items(a, b, member, path);
                break;
            default:
                Assert.Equal(one.GetType(), other.GetType());
                Members(one, other, path, null);
                break;
        }
    }

    private static void Items(IEnumerable one, IEnumerable other, (Type, string) member, string path)
    {
        List<object?> first = [.. one.Cast<object?>()], second = [.. other.Cast<object?>()];
        Assert.True(first.Count == second.Count, path);
        for (var i = 0; i < first.Count; i++)
        {
            Compare(first[i], second[i], member, $"{path}[{i}]");
        }
    }

    private static void Members(object one, object other, string path, string[]? only)
    {
        foreach (var property in one.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(p => p.GetIndexParameters().Length == 0))
        {
            if (only?.Contains(property.Name) ?? !Skipped.Contains(property.Name))
            {
                Compare(property.GetValue(one), property.GetValue(other), (property.DeclaringType!, property.Name), $"{path}.{property.Name}");
            }
        }

        foreach (var field in one.GetType().GetFields(BindingFlags.Public | BindingFlags.Instance).Where(_ => only is null))
        {
            Compare(field.GetValue(one), field.GetValue(other), (one.GetType(), field.Name), $"{path}.{field.Name}");
        }
    }

    private static void Same(double one, double other, string path) => Assert.True(
        one.Equals(other) || Math.Abs(one - other) <= Tolerance * Math.Max(1, Math.Abs(one)), FormattableString.Invariant($"{path}: {one} and {other}"));
}
