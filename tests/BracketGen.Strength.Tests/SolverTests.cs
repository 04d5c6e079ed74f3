using BracketGen.Strength.Analysis;
using BracketGen.Strength.Model;
using BracketGen.Strength.Solving;
using BracketGen.TestSupport;
using CsCheck;
using MathNet.Numerics.LinearAlgebra;

namespace BracketGen.Strength.Tests;

/// <summary>The sparse solver and the eigenvalue search against Math.NET Numerics' dense ones.</summary>
public sealed class SolverTests
{
    private static readonly SheetMaterial Steel = new(210000, 0.3, 7.85e-9);

    [Fact]
    public void SparseCholeskySolvesAsDenseDoes() => Gen.Select(Gen.Int[1, 9], Gen.Int[1, 7], Gen.Double[0.5, 4]).Check(
        25,
        c =>
        {
            var (along, across, thickness) = c;
            var (stiffness, _) = Matrices(along, across, thickness);
            var force = new double[stiffness.Nodes * 6];
            for (var i = 0; i < force.Length; i++)
            {
                force[i] = Math.Sin(1.7 * i);
            }

            var sparse = force.ToArray();
            SparseCholesky.Factorise(stiffness).Solve(sparse);
            var dense = Dense(stiffness).Cholesky().Solve(Vector<double>.Build.Dense(force));
            Assert.True((dense - Vector<double>.Build.Dense(sparse)).L2Norm() <= 1e-8 * dense.L2Norm());
        });

    [Fact]
    public void LanczosFindsWhatTheDenseSolverFinds()
    {
        var (stiffness, mass) = Matrices(6, 4, 2);
        var (found, _) = BlockLanczos.Lowest(SparseCholesky.Factorise(stiffness), mass, 6);

        // Dense: with K = L Lᵀ the largest eigenvalues of L⁻¹ M L⁻ᵀ are the inverses of the lowest ones.
        var l = Dense(stiffness).Cholesky().Factor;
        var half = l.Solve(Dense(mass));
        var full = l.Solve(half.Transpose());
        var dense = ((full + full.Transpose()) / 2).Evd(Symmetricity.Symmetric).EigenValues.Select(v => v.Real).OrderDescending().ToArray();
        for (var i = 0; i < found.Length; i++)
        {
            Assert.Equal(1 / dense[i], found[i], 1e-8 / dense[i]);
        }
    }

    [Fact]
    public void ModesOfASmallPartEndWhenTheyRunOut()
    {
        // One free corner: with three masses, and rotary inertia in the plate's plane, five motions have mass.
        var mesh = new ShellMesh([new(0, 0, 0), new(10, 0, 0), new(0, 10, 0)], [new(0, 1, 2)]);
        var modes = ShellSystem.Factorise(new(mesh, 1, Steel, Held.Clamped([0, 1]))).LowestModes(8);
        Assert.InRange(modes.Length, 3, 6);
        Assert.Equal(modes.Select(m => m.Frequency).Order(), modes.Select(m => m.Frequency));
    }

    [Fact]
    public void PartThatIsNotHeldIsRefused()
    {
        var mesh = Grid.Rectangle(10, 10, 3, 3).Flat();
        Assert.Throws<NotHeldException>(() => ShellSystem.Factorise(new(mesh, 1, Steel, [])));

        // Pinned at one node: free to turn about it.
        Held[] pin = [new(0, Freedom.X), new(0, Freedom.Y), new(0, Freedom.Z)];
        var e = Assert.Throws<NotHeldException>(() => ShellSystem.Factorise(new(mesh, 1, Steel, pin)));
        Assert.Contains("not held", e.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void SameModelSameBits()
    {
        var a = LBracket.Part.Prepare(5, 3);
        var b = LBracket.Part.Prepare(5, 3);
        Assert.Equal(a.Flat.Nodes.AsEnumerable(), b.Flat.Nodes);
        Assert.Equal(a.Flat.Triangles.AsEnumerable(), b.Flat.Triangles);
        Assert.Equal(a.Under(LBracket.Force).SeatDeflection, b.Under(LBracket.Force).SeatDeflection);
        Assert.Equal(a.LowestModes(2)[1].Frequency, b.LowestModes(2)[1].Frequency);
    }

    private static (BlockMatrix Stiffness, MassMatrix Mass) Matrices(int along, int across, double thickness)
    {
        // A bent strip, so that membrane and plate talk to each other.
        var flat = Grid.Rectangle(30, 20, along, across);
        var mesh = ShellMesh.Fold(flat, p => new(p.X, p.Y, 0.01 * p.X * p.X));
        var held = flat.Where(p => p.X == 0).ToList();

        // A body at the far corner, hung on three nodes, one of them held where the strip is one element long.
        var corner = new[] { mesh.Nodes.Length - 1, mesh.Nodes.Length - 2, mesh.Nodes.Length - across - 3 };
        var model = new ShellModel(mesh, thickness, Steel, Held.Clamped(held))
        {
            Bodies = [new([(corner[0], 0.5), (corner[1], 0.25), (corner[2], 0.25)], 2e-5, new(3, -2, 8), new(0, 0, 1), 4e-4, 9e-4)],
        };
        var free = new FreeNodes(model);
        return (Assembly.Stiffness(model, free).Matrix, Assembly.Mass(model, free));
    }

    private static Matrix<double> Dense(BlockMatrix matrix) => Dense(matrix.Nodes, (x, product) => matrix.Multiply(x, product));

    private static Matrix<double> Dense(MassMatrix matrix) => Dense(matrix.Nodes, (x, product) => matrix.Multiply(x, product));

    private static Matrix<double> Dense(int nodes, Action<double[], double[]> multiply)
    {
        var dense = Matrix<double>.Build.Dense(nodes * 6, nodes * 6);
        var (unit, column) = (new double[nodes * 6], new double[nodes * 6]);
        for (var c = 0; c < unit.Length; c++)
        {
            unit[c] = 1;
            multiply(unit, column);
            dense.SetColumn(c, column);
            unit[c] = 0;
        }

        Assert.True((dense - dense.Transpose()).FrobeniusNorm() <= 1e-13 * dense.FrobeniusNorm());
        return dense;
    }
}
