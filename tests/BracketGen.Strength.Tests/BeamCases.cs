using BracketGen.Geometry;

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
        var mesh = ShellMesh.Fold(flat, p => Vector3.From(Vector2.FromPolar(4.12 + 0.2 * (1 - p.Y), new(Math.PI / 2 * p.X))));
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
}
