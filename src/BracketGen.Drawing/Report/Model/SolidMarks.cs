using System.Text.Json;
using System.Text.Json.Serialization;
using BracketGen.Design.Inputs;
using BracketGen.Design.Study;
using BracketGen.Geometry;
using BracketGen.Mechanism.Grooves;
using BracketGen.Words.Report;

namespace BracketGen.Drawing.Report.Model;

/// <summary>What in the picture has a name, and which numbers of the files can be seen in it: throttle frame as measured, mm.</summary>
/// <param name="Things">What has a name.</param>
/// <param name="Dimensions">Numbers that can be seen.</param>
/// <param name="Stop">A point on the stop's axis and the axis's direction, six numbers.</param>
internal sealed record SolidMarks(MarkedThing[] Things, MarkedDimension[] Dimensions, double[] Stop)
{
    /// <summary>The marks of a solution that has a bracket, as JSON.</summary>
    public static string Json(Solution solution) => JsonSerializer.Serialize(Of(solution), MarksContext.Default.SolidMarks);

    /// <summary>The marks of a solution.</summary>
    public static SolidMarks Of(Solution solution)
    {
        var seat = solution.Placement?.Seat.Vector ?? Vector3.From(solution.Travel.Closed.Seat);
        var along = solution.Placement?.Direction ?? Vector3.From(solution.Travel.Closed.Direction);
        var body = solution.Job.Body;
        return new(
            [
                new("shaft", SolidText.Shaft, Three(new(0, 0, body.Quadrant.Thickness / 2)), "", [], null),
                new("quadrant", SolidText.Quadrant, Three(Vector3.From(Vector2.FromPolar(body.Quadrant.OuterRadius, body.Quadrant.Pocket.Value))), "", [], null),
                new("stop", SolidText.Stop, Three(seat), "", [], null),
                .. HolesOf(body).Select((h, i) => new MarkedThing("hole", MountFace.HoleName(i), Three(h.Hole.At.Vector), h.Key, ["at"], Three(body.Mount.PlaneOf(h.Hole).Normal))),
                .. body.KeepOuts.Select((k, i) => KeepOutThing(k, $"keep_out[{i + 1}]")),
            ],
            [.. DimensionsOf(solution.Job)],
            [.. Three(seat), .. Three(along)]);
    }

    private static IEnumerable<(MountHole Hole, string Key)> HolesOf(ThrottleBody body)
    {
        var own = body.Mount.OwnHoles.Length;
        return body.Mount.Holes.Select((hole, i) => (hole, i < own ? $"mount.holes[{i + 1}]" : $"mount.second_face.holes[{i - own + 1}]"));
    }

    private static MarkedThing KeepOutThing(KeepOut keepOut, string key) => keepOut switch
    {
        KeepOutBox box => new("keepout", box.Name, Three(0.5 * (box.Min.Vector + box.Max.Vector)), key, ["min", "max"], null),
        KeepOutCylinder round => new("keepout", round.Name, Three(0.5 * (round.From.Vector + round.To.Vector)), key, ["from", "to"], null),
        KeepOutTiltedBox box => new("keepout", box.Name, Three(box.Corner.ToWorld(0.5 * box.Size)), key, ["corner", "next_1", "next_2", "next_3"], null),
        _ => throw new InvalidOperationException($"There are no marks of a {keepOut.GetType().Name}."),
    };

    private static IEnumerable<MarkedDimension> DimensionsOf(Job job)
    {
        var body = job.Body;
        var quadrant = body.Quadrant;
        var half = quadrant.Thickness / 2;
        var pocket = Vector2.FromPolar(1, quadrant.Pocket.Value);
        if (quadrant.Groove is CircularGroove round)
        {
            yield return Length("body", "quadrant.pitch_radius", SolidText.PitchRadius, Vector3.Zero, Vector3.From(round.PitchRadius.Value * pocket));
        }

        Vector3 rim = Vector3.From(quadrant.OuterRadius * pocket), front = new(0, 0, half);
        yield return Length("body", "quadrant.outer_radius", SolidText.OuterRadius, front, rim + front);
        yield return Length("body", "quadrant.thickness", SolidText.Thickness, rim - front, rim + front);
        Vector3 shaft = new(0, body.ShaftDiameter / 2, half + 4);
        yield return Length("body", "shaft_diameter", SolidText.ShaftDiameter, new(0, -shaft.Y, shaft.Z), shaft);
        if (body is { Casting: { } casting, BoreAxis: { } bore })
        {
            Vector3 middle = new(0, 0, bore.Z), across = new(-Math.Sin(bore.Direction.Radians), Math.Cos(bore.Direction.Radians), 0);
            Vector3 ahead = casting.To.Vector, behind = casting.From.Vector;
            yield return Length("body", "bore", SolidText.Bore, ahead - body.Bore / 2 * across, ahead + body.Bore / 2 * across);
            yield return Length("body", "bore_axis.z", SolidText.BoreAxis, Vector3.Zero, middle);
            yield return Length("body", "bore_axis.outside_diameter", SolidText.CastingDiameter, behind - casting.Radius * across, behind + casting.Radius * across);
            yield return Length("body", "bore_axis.ahead", SolidText.CastingAhead, middle, ahead);
            yield return Length("body", "bore_axis.behind", SolidText.CastingBehind, middle, behind);
        }

        foreach (var (i, (hole, key)) in HolesOf(body).Index())
        {
            var name = MountFace.HoleName(i);
            foreach (var one in Point("body", $"{key}.at", name, hole.At.Vector))
            {
                yield return one;
            }

            var normal = body.Mount.PlaneOf(hole).Normal;
            var across = Frame.FromZX(hole.At.Vector, normal, Math.Abs(normal.X) < 0.7 ? new(1, 0, 0) : new(0, 1, 0)).X;
            yield return Length("body", $"{key}.boss_diameter", SolidText.BossOf(name), hole.At.Vector - hole.BossDiameter / 2 * across, hole.At.Vector + hole.BossDiameter / 2 * across);
        }

        foreach (var (i, keepOut) in body.KeepOuts.Index())
        {
            foreach (var one in Of(keepOut, $"keep_out[{i + 1}]"))
            {
                yield return one;
            }
        }

        var fitting = job.Vehicle.Cable.Fitting;
        var at = Vector3.From(quadrant.FittingAt(Angle.Zero));
        Vector3 wide = new(0, fitting.Diameter / 2, fitting.Length / 2), deep = new(0, 0, fitting.Length / 2);
        yield return Length("vehicle", "cable.fitting.diameter", SolidText.FittingDiameter, at + new Vector3(0, -wide.Y, wide.Z), at + wide);
        yield return Length("vehicle", "cable.fitting.length", SolidText.FittingLength, at - deep, at + deep);
    }

    private static IEnumerable<MarkedDimension> Of(KeepOut keepOut, string key) => keepOut switch
    {
        KeepOutBox box => [.. Point("body", $"{key}.min", SolidText.Least(box.Name), box.Min.Vector), .. Point("body", $"{key}.max", SolidText.Greatest(box.Name), box.Max.Vector)],
        KeepOutCylinder round =>
        [
            .. Point("body", $"{key}.from", SolidText.FirstEnd(round.Name), round.From.Vector), .. Point("body", $"{key}.to", SolidText.OtherEnd(round.Name), round.To.Vector),
            Length("body", $"{key}.radius", SolidText.RadiusOf(round.Name), round.From.Vector, round.From.Vector + round.Radius * AcrossOf(round.To - round.From)),
        ],
        KeepOutTiltedBox box => Point("body", $"{key}.corner", SolidText.CornerOf(box.Name), box.Corner.Origin),
        _ => [],
    };

    private static Vector3 AcrossOf(Vector3 axis) => Frame.FromZX(Vector3.Zero, axis, Math.Abs(axis.Unit.X) < 0.7 ? new(1, 0, 0) : new(0, 1, 0)).X;

    // Each coordinate is the way from the plane through the origin to the point.
    private static IEnumerable<MarkedDimension> Point(string role, string key, string name, Vector3 at) =>
    [
        new(role, key, 0, $"{name}, x", Three(at with { X = 0 }), Three(at)),
        new(role, key, 1, $"{name}, y", Three(at with { Y = 0 }), Three(at)),
        new(role, key, 2, $"{name}, z", Three(at with { Z = 0 }), Three(at)),
    ];

    private static MarkedDimension Length(string role, string key, string name, Vector3 from, Vector3 to) => new(role, key, -1, name, Three(from), Three(to));

    private static double[] Three(Vector3 p) => [Math.Round(p.X, 4) + 0.0, Math.Round(p.Y, 4) + 0.0, Math.Round(p.Z, 4) + 0.0];
}

/// <summary>What has a name in the picture.</summary>
/// <param name="Kind">shaft, quadrant, stop, hole, keepout.</param>
/// <param name="Name">The name.</param>
/// <param name="At">Where it stands (mm).</param>
/// <param name="Key">Its table in the throttle body's file; empty where it is not to be moved.</param>
/// <param name="Moves">Keys of the points in that table that move with it.</param>
/// <param name="Normal">Normal of the face that it stays on; null where it is not held to one.</param>
internal sealed record MarkedThing(string Kind, string Name, double[] At, string Key, string[] Moves, double[]? Normal);

/// <summary>A number of a file that can be seen in the picture.</summary>
/// <param name="Role">Whose file: body or vehicle.</param>
/// <param name="Key">The key.</param>
/// <param name="Axis">Which coordinate of a point, from 0; -1 for a number.</param>
/// <param name="Name">What it is.</param>
/// <param name="From">One end of what it measures (mm).</param>
/// <param name="To">The other (mm).</param>
internal sealed record MarkedDimension(string Role, string Key, int Axis, string Name, double[] From, double[] To);

/// <summary>Serialization of the marks without reflection.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase)]
[JsonSerializable(typeof(SolidMarks))]
internal sealed partial class MarksContext : JsonSerializerContext;
