using BracketGen.Geometry;
using BracketGen.Strength.Analysis;
using BracketGen.Strength.Model;

namespace BracketGen.Strength.Tests;

/// <summary>
/// R. H. MacNeal and R. L. Harder, "A proposed standard set of problems to test finite element accuracy", Finite Elements in
/// Analysis and Design 1 (1985) 3-20, section 3: the patch of 0.24 x 0.12 with four crooked inner nodes, here with every
/// quadrilateral cut in two. E = 1e6, ν = 0.25, t = 0.001.
/// </summary>
public sealed class PatchTests
{
    private const double E = 1e6;
    private const double Nu = 0.25;
    private const double T = 0.001;

    private static readonly TriangleMesh Patch = new(
        [new(0, 0), new(0.24, 0), new(0.24, 0.12), new(0, 0.12), new(0.04, 0.02), new(0.18, 0.03), new(0.16, 0.08), new(0.08, 0.08)],
        [new(0, 1, 5), new(0, 5, 4), new(1, 2, 6), new(1, 6, 5), new(2, 3, 7), new(2, 7, 6), new(3, 0, 4), new(3, 4, 7), new(4, 5, 6), new(4, 6, 7)]);

    // Any plane in space will do; a skew one shows that the turning into space is right too.
    public static TheoryData<double, double> Planes => new() { { 0, 0 }, { 0.7, -1.1 }, { 2.9, 0.4 } };

    [Theory]
    [MemberData(nameof(Planes))]
    public void ConstantMembraneStrain(double turn, double tilt)
    {
        // u = 1e-3 (x + y/2), v = 1e-3 (y + x/2): σx = σy = 1333, τxy = 400 (MacNeal-Harder, table 3), no rotation.
        var frame = new Turned(turn, tilt);
        Vector3 Move(FlatPoint p) => frame.Of(new(1e-3 * (p.X + p.Y / 2), 1e-3 * (p.Y + p.X / 2), 0));
        var solution = Solve(frame, Move, _ => Vector3.Zero);
        for (var n = 0; n < Patch.Nodes.Length; n++)
        {
            Close(Move(Patch.Nodes[n]), solution.Displacements[n], 1e-10 * 3e-4);
            Close(Vector3.Zero, solution.Rotations[n], 1e-10 * 1e-3);
            var expected = Math.Sqrt(1333.3333333333333 * 1333.3333333333333 + 3 * 400 * 400);
            Assert.Equal(expected, solution.Stresses[n].Top, 1e-8 * expected);
            Assert.Equal(expected, solution.Stresses[n].Bottom, 1e-8 * expected);
        }
    }

    [Theory]
    [MemberData(nameof(Planes))]
    public void ConstantCurvature(double turn, double tilt)
    {
        // w = 1e-3 (x² + xy + y²)/2: surface stress ±0.667, ±0.667, ±0.200 (MacNeal-Harder, table 3).
        var frame = new Turned(turn, tilt);
        Vector3 Move(FlatPoint p) => frame.Of(new(0, 0, 1e-3 * (p.X * p.X + p.X * p.Y + p.Y * p.Y) / 2));
        Vector3 Turn(FlatPoint p) => frame.Of(new(1e-3 * (p.Y + p.X / 2), -1e-3 * (p.X + p.Y / 2), 0));
        var solution = Solve(frame, Move, Turn);
        for (var n = 0; n < Patch.Nodes.Length; n++)
        {
            Close(Move(Patch.Nodes[n]), solution.Displacements[n], 1e-10 * 2e-5);
            Close(Turn(Patch.Nodes[n]), solution.Rotations[n], 1e-10 * 3e-4);
            var expected = Math.Sqrt(0.6666666666666666 * 0.6666666666666666 + 3 * 0.2 * 0.2);
            Assert.Equal(expected, solution.Stresses[n].Top, 1e-8);
            Assert.Equal(expected, solution.Stresses[n].Bottom, 1e-8);
        }
    }

    [Fact]
    public void ConstantShearOfAThickPlate()
    {
        // Pure transverse shear: w = γ x with fibres that stay upright. Constant γ, no moment, is a solution of Mindlin's plate.
        // Katili (1993) gives DKMT as passing it only in the thick limit, so the plate here is a hundred times thicker than wide.
        var model = new ShellModel(
            Patch.Flat(), 100, new(E, Nu, 0),
            Boundary(p => new(0, 0, 1e-3 * p.X), _ => Vector3.Zero));
        var solution = ShellSystem.Factorise(model).Solve([]);
        for (var n = 4; n < 8; n++)
        {
            Assert.Equal(1e-3 * Patch.Nodes[n].X, solution.Displacements[n].Z, 1e-8);
        }
    }

    [Fact]
    public void ReactionsBalanceTheLoad()
    {
        var model = new ShellModel(Patch.Flat(), T, new(E, Nu, 0), Held.Clamped([0, 3]));
        var solution = ShellSystem.Factorise(model).Solve([new(1, new(1, 2, 3e-6)), new(6, new(-0.5, 0.25, 1e-6))]);
        var force = solution.Reactions.Aggregate(Vector3.Zero, (s, r) => s + r.Force);
        var moment = solution.Reactions.Aggregate(Vector3.Zero, (s, r) => s + r.Moment + model.Mesh.Nodes[r.Node].Vector.Cross(r.Force));
        var applied = new Vector3(0.24, 0, 0).Cross(new(1, 2, 3e-6)) + new Vector3(0.16, 0.08, 0).Cross(new(-0.5, 0.25, 1e-6));
        Close(new(-0.5, -2.25, -4e-6), force, 1e-9);
        Close(-applied, moment, 1e-9);
    }

    private static StaticSolution Solve(Turned frame, Func<FlatPoint, Vector3> move, Func<FlatPoint, Vector3> turn)
    {
        var mesh = ShellMesh.Fold(Patch, p => new(frame.Of(Vector3.From(p.Vector))));
        return ShellSystem.Factorise(new(mesh, T, new(E, Nu, 0), Boundary(move, turn))).Solve([]);
    }

    // All six freedoms of the four corners are given; the inner nodes are free.
    private static IEnumerable<Held> Boundary(Func<FlatPoint, Vector3> move, Func<FlatPoint, Vector3> turn) =>
        Enumerable.Range(0, 4).SelectMany(n =>
        {
            Vector3 u = move(Patch.Nodes[n]), r = turn(Patch.Nodes[n]);
            return new[] { u.X, u.Y, u.Z, r.X, r.Y, r.Z }.Select((v, f) => new Held(n, (Freedom)f, v));
        });

    private static void Close(Vector3 expected, Vector3 actual, double within) =>
        Assert.True(expected.DistanceTo(actual) <= within, $"off by {expected.DistanceTo(actual):R}");

    private sealed record Turned(double Turn, double Tilt)
    {
        public Vector3 Of(Vector3 v) => v.Rotate(new(0, 0, 1), new(Turn)).Rotate(new Vector3(1, 2, 0).Unit, new(Tilt));
    }
}
