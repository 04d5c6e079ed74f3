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
    /// <summary>How deep bosses are shown (mm): the casting's own shape is not known.</summary>
    private const double BossDepth = 8;

    /// <summary>How much of a routed outer is shown (mm).</summary>
    private const double ShownRoute = 90;

    /// <summary>The picture; the bracket must be there.</summary>
    public static SolidData Of(ReportScene scene)
    {
        var mesh = scene.Mesh!;
        var job = scene.Job;
        List<SolidPart> parts = [Sheet(mesh), Mount(job, scene.Solution.Bracket!.Stock.Thickness), .. Moving(scene), Outer(scene)];
        parts.AddRange(job.Body.KeepOuts.Concat(job.Body.Casting is { } casting ? [casting] : Array.Empty<KeepOut>()).Concat(job.Body.SpringRooms).Select(KeepOutPart));

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
            shapes.Cylinder(at - BossDepth * up, at, hole.BossDiameter / 2, 32);
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
        yield return new SolidShapes().Cylinder(-3 * shaft, shaft, scene.Job.Body.ShaftDiameter / 2).Part("shaft");
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
