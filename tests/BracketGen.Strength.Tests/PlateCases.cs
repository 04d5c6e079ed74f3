using BracketGen.Strength.Analysis;
using BracketGen.Strength.Model;

namespace BracketGen.Strength.Tests;

/// <summary>Published plate cases on a grid of any fineness.</summary>
internal static class PlateCases
{
    private const double E = 210000;
    private const double Nu = 0.3;
    private const double Density = 7.85e-9;

    /// <summary>ω a² sqrt(ρ h / D) of the first five modes of a square plate clamped along one edge.</summary>
    public static double[] CantileverSquare(int parts)
    {
        const double a = 100, h = 0.5;
        var flat = Grid.Rectangle(a, a, parts, parts);
        var system = ShellSystem.Factorise(new(flat.Flat(), h, new(E, Nu, Density), Held.Clamped(flat.Where(p => p.X == 0))));
        return [.. system.LowestModes(5).Select(m => Scaled(m.Frequency, a, h))];
    }

    /// <summary>The same of a square plate clamped all round, first four modes.</summary>
    public static double[] ClampedSquare(int parts)
    {
        const double a = 100, h = 0.5;
        var flat = Grid.Rectangle(a, a, parts, parts);
        var edge = flat.Where(p => p.X == 0 || p.Y == 0 || p.X == a || p.Y == a);
        var system = ShellSystem.Factorise(new(flat.Flat(), h, new(E, Nu, Density), Held.Clamped(edge)));
        return [.. system.LowestModes(4).Select(m => Scaled(m.Frequency, a, h))];
    }

    /// <summary>
    /// A strip eight overhangs long, clamped along one edge, with a load in the middle of the other; gives K_y and K_m at a distance
    /// along the edge, in overhangs, that the grid must hit.
    /// </summary>
    public static (Func<double, (double Deflection, double Stress)> At, int Nodes) EdgeLoaded(int parts)
    {
        const double a = 100, t = 1, load = 10;
        var flat = Grid.Rectangle(8 * a, a, 8 * parts, parts);
        int Node(double x, double y) => flat.Where(p => p.DistanceTo(new(x, y)) < 1e-9).Single();
        var solution = ShellSystem.Factorise(new(flat.Flat(), t, new(E, Nu, 0), Held.Clamped(flat.Where(p => p.Y == 0))))
            .Solve([new(Node(4 * a, a), new(0, 0, load))]);
        var unit = load * a * a / (Math.PI * E * t * t * t / (12 * (1 - Nu * Nu)));

        // At a clamped edge the stress along it is ν times that across it.
        var vonMises = Math.Sqrt(1 - Nu + Nu * Nu) * 6 * load / (t * t);
        return (
            beside => (
                solution.Displacements[Node((4 + beside) * a, a)].Z / unit,
                solution.Stresses[Node((4 + beside) * a, 0)].Top / vonMises),
            flat.Nodes.Length);
    }

    private static double Scaled(double frequency, double a, double h) =>
        2 * Math.PI * frequency * a * a * Math.Sqrt(Density * h * 12 * (1 - Nu * Nu) / (E * h * h * h));
}
