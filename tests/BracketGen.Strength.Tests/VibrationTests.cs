using BracketGen.Strength.Analysis;
using BracketGen.Strength.Model;
using Xunit;

namespace BracketGen.Strength.Tests;

/// <summary>Natural frequencies against published ones.</summary>
public sealed class VibrationTests
{
    // A. W. Leissa, Vibration of Plates, NASA SP-160 (1969), cantilever square plate, ν = 0.3: ω a² sqrt(ρ h / D), to three figures.
    private static readonly double[] Leissa = [3.49, 8.53, 21.4, 27.3, 31.1];

    [Fact]
    public void CantileverSquarePlate()
    {
        var found = PlateCases.CantileverSquare(24);
        for (var i = 0; i < Leissa.Length; i++)
        {
            Assert.InRange(found[i] / Leissa[i], 0.99, 1.01);
        }
    }

    [Fact]
    public void PairedModesAreBothFound()
    {
        // Clamped square plate: λ = 35.99, 73.41, 73.41, 108.27 (Leissa 1969, table 4.22); the second is double by symmetry.
        var found = PlateCases.ClampedSquare(24);
        double[] published = [35.99, 73.41, 73.41, 108.27];
        for (var i = 0; i < 4; i++)
        {
            Assert.InRange(found[i] / published[i], 0.99, 1.01);
        }
    }

    [Fact]
    public void StripVibratesInItsPlaneAsABeam()
    {
        // Bernoulli-Euler cantilever, β₁L = 1.87510 (any text on vibration): membrane stiffness and mass, drilling included.
        // The slenderness of 50 keeps Timoshenko's corrections below 0.1 %.
        const double length = 500, depth = 10;
        var flat = Grid.Rectangle(length, depth, 100, 4);
        var held = Held.Clamped(flat.Where(p => p.X == 0)).AddRange(
            flat.Where(p => p.X > 0).SelectMany(n => new[] { new Held(n, Freedom.Z), new Held(n, Freedom.AboutX), new Held(n, Freedom.AboutY) }));
        var mode = ShellSystem.Factorise(new(flat.Flat(), 5, new(210000, 0, 7.85e-9), held)).LowestModes(1)[0];
        var theory = 1.87510 * 1.87510 / (2 * Math.PI * length * length) * Math.Sqrt(210000 * depth * depth / 12 / 7.85e-9);
        Assert.InRange(mode.Frequency / theory, 0.995, 1.005);
    }

    [Theory]
    [InlineData(1, 1.2479)]
    [InlineData(0.2, 1.6164)]
    public void MassAtTheTipSlowsTheBeamDown(double ratio, double published)
    {
        // Cantilever with a point mass of so many times its own: 1 + cos β cosh β + r β (cos β sinh β - sin β cosh β) = 0
        // (R. D. Blevins, Formulas for Natural Frequency and Mode Shape, 1979, table 8-8; the roots from the equation itself).
        double Equation(double b) => 1 + Math.Cos(b) * Math.Cosh(b) + ratio * b * (Math.Cos(b) * Math.Sinh(b) - Math.Sin(b) * Math.Cosh(b));
        Assert.True(Equation(published - 1e-4) > 0 && Equation(published + 1e-4) < 0);

        const double length = 500, depth = 10, thickness = 5, density = 7.85e-9;
        var flat = Grid.Rectangle(length, depth, 100, 4);
        var held = Held.Clamped(flat.Where(p => p.X == 0)).AddRange(
            flat.Where(p => p.X > 0).SelectMany(n => new[] { new Held(n, Freedom.Z), new Held(n, Freedom.AboutX), new Held(n, Freedom.AboutY) }));
        var tip = flat.Where(p => p.X == length).ToList();
        var mass = ratio * length * depth * thickness * density;
        // The two last columns of nodes hold it; its centre of gravity is at the tip.
        var before = flat.Where(p => Math.Abs(p.X - length + 5) < 1e-6).ToList();
        var shares = Grid.EdgeLoad(tip, new(0.5, 0, 0)).Concat(Grid.EdgeLoad(before, new(0.5, 0, 0))).Select(l => (l.Node, l.Force.X));
        var model = new ShellModel(flat.Flat(), thickness, new(210000, 0, density), held)
        {
            Bodies = [new([.. shares], mass, new(2.5, 0, 0), new(1, 0, 0), 0, 0)],
        };
        var found = ShellSystem.Factorise(model).LowestModes(1)[0].Frequency;
        var theory = published * published / (2 * Math.PI * length * length) * Math.Sqrt(210000 * depth * depth / 12 / density);
        Assert.InRange(found / theory, 0.995, 1.005);
    }
}
