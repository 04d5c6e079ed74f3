using BracketGen.Geometry;
using BracketGen.Strength.Analysis;
using BracketGen.Strength.Model;

namespace BracketGen.Strength.Tests;

public enum BeamCase
{
    Extension,
    InPlaneShear,
    OutOfPlaneShear,
    Twist,
}

/// <summary>Tip displacements of the beams of MacNeal and Harder (1985) on a grid of any fineness.</summary>
internal static class BeamCases
{
    /// <summary>T L / (G J) of the straight beam, J = 0.229 b t³ for b = 2 t (Timoshenko and Goodier, Theory of Elasticity, section 109).</summary>
    public const double SaintVenantTwist = 6 / (1e7 / 2.6 * 0.229 * 0.2 * 0.1 * 0.1 * 0.1);

    public static double Straight(BeamCase load, int along, int across)
    {
        const double length = 6, depth = 0.2;
        var flat = Grid.Rectangle(length, depth, along, across);
        var tip = flat.Where(p => p.X == length).ToList();
        var system = ShellSystem.Factorise(new(flat.Flat(), 0.1, new(1e7, 0.3, 0), Held.Clamped(flat.Where(p => p.X == 0))));
        if (load == BeamCase.Twist)
        {
            // A unit torque as a couple of shears would bend the end; spread as moments it twists only.
            var twist = system.Solve(Grid.EdgeLoad(tip, new(1, 0, 0)).Select(l => new NodalLoad(l.Node, Vector3.Zero, l.Force)));
            return (twist.Displacements[tip[^1]].Z - twist.Displacements[tip[0]].Z) / depth;
        }

        var direction = load switch
        {
            BeamCase.Extension => new Vector3(1, 0, 0),
            BeamCase.InPlaneShear => new(0, 1, 0),
            _ => new(0, 0, 1),
        };
        return system.Solve(Grid.EdgeLoad(tip, direction)).Displacements[tip[tip.Count / 2]].Dot(direction);
    }

    public static double Curved(BeamCase load, int along, int across)
    {
        var flat = Grid.Rectangle(1, 1, along, across);
        var mesh = ShellMesh.Fold(flat, p => new(Vector3.From(Vector2.FromPolar(4.12 + 0.2 * (1 - p.Y), new(Math.PI / 2 * p.X)))));
        var tip = flat.Where(p => p.X == 1).ToList();
        var direction = load == BeamCase.InPlaneShear ? new Vector3(0, 1, 0) : new(0, 0, 1);
        return ShellSystem.Factorise(new(mesh, 0.1, new(1e7, 0.25, 0), Held.Clamped(flat.Where(p => p.X == 0))))
            .Solve(Grid.EdgeLoad(tip, direction)).Displacements[tip[tip.Count / 2]].Dot(direction);
    }

    public static double Twisted(BeamCase load, int along, int across)
    {
        const double length = 12, width = 1.1;
        var flat = Grid.Rectangle(length, width, along, across);
        var mesh = ShellMesh.Fold(flat, p =>
        {
            var (sin, cos) = Math.SinCos(Math.PI / 2 * p.X / length);
            return new(p.X, (p.Y - width / 2) * cos, (p.Y - width / 2) * sin);
        });

        // At the tip the strip stands upright: z lies in its plane there.
        var direction = load == BeamCase.InPlaneShear ? new Vector3(0, 0, 1) : new(0, 1, 0);
        var tip = flat.Where(p => p.X == length).ToList();
        return ShellSystem.Factorise(new(mesh, 0.32, new(29e6, 0.22, 0), Held.Clamped(flat.Where(p => p.X == 0))))
            .Solve(Grid.EdgeLoad(tip, direction)).Displacements[tip[tip.Count / 2]].Dot(direction);
    }

    /// <summary>
    /// A strip of sheet bent to a quarter circle, clamped at one end, pulled at the other square to the tangent there: deflection
    /// along the pull over π F R³ / (4 E I) of a thin curved bar (S. Timoshenko, Strength of Materials, part I, section 80).
    /// </summary>
    public static double BentSheet(int rows)
    {
        const double radius = 100, width = 10, thickness = 1, force = 1, young = 210000;
        var flat = Grid.Rectangle(radius * Math.PI / 2, width, rows, 4);
        var mesh = ShellMesh.Fold(flat, p => new(radius * Math.Sin(p.X / radius), p.Y, radius * (1 - Math.Cos(p.X / radius))));
        var tip = flat.Where(p => p.X > radius * Math.PI / 2 - 1e-9).ToList();
        var found = ShellSystem.Factorise(new(mesh, thickness, new(young, 0, 0), Held.Clamped(flat.Where(p => p.X == 0))))
            .Solve(Grid.EdgeLoad(tip, new(force, 0, 0))).Displacements[tip[2]].X;
        return found / (Math.PI * force * radius * radius * radius / (4 * young * width * thickness * thickness * thickness / 12));
    }
}
