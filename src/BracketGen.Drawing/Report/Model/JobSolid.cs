using BracketGen.Design.Inputs;
using BracketGen.Drawing.Report.Scene;
using BracketGen.Drawing.Solid.Mesh;
using BracketGen.Drawing.Views;
using BracketGen.Geometry;
using BracketGen.SheetMetal.Fasteners;

namespace BracketGen.Drawing.Report.Model;

/// <summary>The bracket with what it is bolted to, what it holds, and what it must stay clear of.</summary>
internal static class JobSolid
{
    /// <summary>How deep bosses are shown (mm) that do not end in the casting: nobody is asked how deep they are.</summary>
    private const double BossDepth = 8;

    /// <summary>How thick the valve's plate is shown (mm): nobody is asked.</summary>
    private const double PlateThickness = 2;

    /// <summary>How much of a routed outer is shown (mm).</summary>
    private const double ShownRoute = 90;

    /// <summary>The picture; the bracket must be there.</summary>
    public static SolidData Of(ReportScene scene)
    {
        var mesh = scene.Mesh!;
        var job = scene.Job;
        List<SolidPart> parts = [Sheet(mesh), Mount(job, scene.Solution.Bracket!.Stock.Thickness), .. Moving(scene), Outer(scene), .. Casting(job.Body)];
        parts.AddRange(job.Body.KeepOuts.Concat(job.Body.SpringRooms).Select(KeepOutPart));

        var rim = scene.Motion.Quadrant.OuterRadius;
        var points = mesh.Vertices.Concat([new(rim, rim, 0), new(-rim, -rim, 0)]).ToList();
        Vector3 least = new(points.Min(p => p.X), points.Min(p => p.Y), points.Min(p => p.Z));
        Vector3 most = new(points.Max(p => p.X), points.Max(p => p.Y), points.Max(p => p.Z));
        return new([.. parts], Short(least), Short(most), JobShell.Of(scene));

        static double[] Short(Vector3 p) => [SolidShapes.Short(p.X), SolidShapes.Short(p.Y), SolidShapes.Short(p.Z)];
    }

    private static SolidPart Sheet(FoldedMesh mesh) => SolidShapes.Part(
        "sheet", mesh.Vertices, mesh.Triangles.SelectMany(t => (int[])[t.A, t.B, t.C]),
        mesh.Edges.Where(e => e.Kind != MeshEdgeKind.Smooth).SelectMany(e => e.Points.Zip(e.Points.Skip(1), (a, b) => (int[])[a, b])).SelectMany(p => p),
        turns: false);

    private static SolidPart Mount(Job job, double thickness)
    {
        var shapes = new SolidShapes();
        foreach (var hole in job.Body.Mount.Holes)
        {
            var (at, up) = (hole.At.Vector, job.Body.Mount.PlaneOf(hole).Normal);
            shapes.Post(at, up, hole.BossDiameter / 2, BossOf(job.Body, hole, up));
            if (hole.Spacer is { } spacer)
            {
                shapes.Cylinder(at, at + spacer.Length * up, spacer.Outside / 2);
            }

            var (seat, washer) = (at + (hole.SpacerLength + thickness) * up, hole.Thread.WasherThickness * up);
            shapes.Cylinder(seat, seat + washer, hole.Thread.WasherDiameter / 2);
            var turned = hole.Fixing is MountStud ? hole.Thread.NutHeight : hole.Thread.HeadHeight;
            shapes.Cylinder(seat + washer, seat + washer + turned * up, hole.Fixing.AcrossFlats(hole.Thread) / Math.Sqrt(3), 6);
            if (hole.Fixing is MountStud)
            {
                shapes.Cylinder(seat + washer, seat + hole.Fixing.Above(hole.Thread, hole.SpacerLength + thickness) * up, hole.Thread.Diameter / 2);
            }
        }

        return shapes.Part("mount");
    }

    private static IEnumerable<SolidPart> Moving(ReportScene scene)
    {
        var quadrant = scene.Motion.Quadrant;
        var fitting = scene.Job.Vehicle.Cable.Fitting;
        var half = quadrant.Thickness / 2;
        var upright = Frame.FromZX(Vector3.Zero, new(0, 0, 1), new(1, 0, 0));
        yield return new SolidShapes().Prism([.. quadrant.Outline], upright, -half, half).Part("moving", turns: true);

        var at = Vector3.From(quadrant.Fitting);
        Vector3 across = new(0, 0, fitting.Length / 2);
        yield return new SolidShapes().Cylinder(at - across, at + across, fitting.Diameter / 2, 20).Part("fitting", turns: true);
        Vector3 shaft = new(0, 0, half + 4);
        var body = scene.Job.Body;
        var end = body.Casting is null ? -3 * shaft : new(0, 0, body.BoreAxis!.Z - body.Bore / 2);
        yield return new SolidShapes().Cylinder(end, shaft, body.ShaftDiameter / 2).Part("shaft");
    }

    // What was measured of the casting, and the valve in it.
    private static IEnumerable<SolidPart> Casting(ThrottleBody body)
    {
        if (body is not { Casting: { } casting, BoreAxis: { } bore })
        {
            yield break;
        }

        yield return new SolidShapes().Ring(casting.From.Vector, casting.To.Vector, casting.Radius, body.Bore / 2).Part("casting");
        var sense = body.Turned(new ThrottlePoint(0, 1, 0)).Y;
        var half = PlateThickness / 2 * Vector3.From(Vector2.FromPolar(1, bore.Direction + sense * body.ValveClosedAngle));
        Vector3 middle = new(0, 0, bore.Z);
        yield return new SolidShapes().Cylinder(middle - half, middle + half, body.Bore / 2, 36).Part("valve", turns: true);
    }

    /// <summary>How far below its face a boss ends: in the casting's wall where that lies under all of it.</summary>
    private static Func<Vector3, double> BossOf(ThrottleBody body, MountHole hole, Vector3 up)
    {
        if (body.Casting is not { } casting)
        {
            return _ => BossDepth;
        }

        var axis = (casting.To - casting.From).Unit;
        var wall = (casting.Radius + body.Bore / 2) / 2;
        double? Depth(Vector3 point)
        {
            Vector3 Across(Vector3 v) => v - v.Dot(axis) * axis;
            var (from, way) = (Across(point - casting.From.Vector), Across(-up));
            double a = way.Dot(way), b = from.Dot(way), c = from.Dot(from) - wall * wall;
            if (a < Tolerance.Direction || c <= 0 || b * b < a * c || b >= 0)
            {
                return null;
            }

            var depth = (-b - Math.Sqrt(b * b - a * c)) / a;
            var along = (point - depth * up - casting.From.Vector).Dot(axis);
            return along > 0 && along < casting.From.DistanceTo(casting.To) ? depth : null;
        }

        var rim = Frame.FromZX(hole.At.Vector, up, Math.Abs(up.X) < 0.7 ? new(1, 0, 0) : new(0, 1, 0));
        var isOnIt = Enumerable.Range(0, 64).Select(i => rim.ToWorld(Vector2.FromPolar(hole.BossDiameter / 2, new(2 * Math.PI * i / 64)))).All(p => Depth(p) is not null);
        return isOnIt ? p => Depth(p) ?? BossDepth : _ => BossDepth;
    }

    private static SolidPart Outer(ReportScene scene)
    {
        var shapes = new SolidShapes();
        var cable = scene.Job.Vehicle.Cable;
        var seat = Vector3.From(scene.Motion.Travel.Closed.Seat);
        var along = Vector3.From(scene.Motion.Travel.Closed.Direction);
        if (scene.Solution.Placement is { } placement)
        {
            (seat, along) = (placement.Seat.Vector, placement.Direction);
        }

        foreach (var (from, to, diameter) in OuterEndShape.Of(cable, scene.Solution.Bracket!.Stock.Thickness))
        {
            shapes.Cylinder(seat + from * along, seat + to * along, diameter / 2);
        }

        var way = OuterEndShape.WayOf(scene.Solution, seat, along, ShownRoute);
        return shapes.Tube(way, cable.OuterDiameter / 2).Part("outer");
    }

    private static SolidPart KeepOutPart(KeepOut keepOut) => keepOut switch
    {
        KeepOutBox box => new SolidShapes().Box(box.Min.Vector, box.Max.Vector).Part("keepout"),
        KeepOutTiltedBox box => new SolidShapes().TiltedBox(box.Corner, box.Size).Part("keepout"),
        KeepOutCylinder c => new SolidShapes().Cylinder(c.From.Vector, c.To.Vector, c.Radius, 40).Part("keepout"),
        _ => throw new InvalidOperationException($"There is no picture of a {keepOut.GetType().Name}."),
    };
}
