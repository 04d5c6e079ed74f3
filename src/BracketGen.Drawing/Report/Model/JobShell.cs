using BracketGen.Drawing.Report.Scene;
using BracketGen.Drawing.Sheet;
using BracketGen.Geometry;

namespace BracketGen.Drawing.Report.Model;

/// <summary>The calculated middle surface for the picture to turn.</summary>
internal static class JobShell
{
    /// <summary>The vibration is shown with its largest movement this part of the bracket's size, as on the drawing.</summary>
    private const double Exaggeration = 0.12;

    public static ShellData? Of(ReportScene scene)
    {
        if (scene.Solution.Strength is not { } report || report.Modes.IsEmpty)
        {
            return null;
        }

        double[] Flat(IEnumerable<Vector3> points) => [.. points.SelectMany(p => (double[])[SolidShapes.Short(p.X), SolidShapes.Short(p.Y), SolidShapes.Short(p.Z)])];
        var mesh = report.Folded;
        var stresses = scene.Stresses(report);
        var scale = ValueScale.UpTo(stresses.Max());
        var shape = report.Modes[0].Shape;
        var size = mesh.Nodes.Max(n => n.DistanceTo(mesh.Nodes[0]));
        var most = shape.Max(s => s.Length);
        return new(
            Flat(mesh.Nodes.Select(n => n.Vector)), [.. mesh.Triangles.SelectMany(t => (int[])[t.A, t.B, t.C])],
            [.. stresses.Select(s => Math.Round(s / scale.Most, 3))],
            Flat(shape.Select(s => Exaggeration * size / most * s)),
            [.. Enumerable.Range(0, ValueScale.Steps).Select(i => scale.Shade((i + 0.5) / ValueScale.Steps * scale.Most)).Select(c => $"#{c.Red:x2}{c.Green:x2}{c.Blue:x2}")]);
    }
}
