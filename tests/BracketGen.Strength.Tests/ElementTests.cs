using BracketGen.Geometry;
using BracketGen.Strength.Elements;
using BracketGen.Strength.Model;
using BracketGen.TestSupport;
using CsCheck;

namespace BracketGen.Strength.Tests;

/// <summary>What single triangles must do by mechanics alone.</summary>
public sealed class ElementTests
{
    private static readonly SheetMaterial Steel = new(210000, 0.3, 7.85e-9);

    private static readonly Gen<(Vector3 A, Vector3 B, Vector3 C)> Triangles =
        Gen.Double[-10, 10].Array[9]
            .Select(v => (A: new Vector3(v[0], v[1], v[2]), B: new Vector3(v[3], v[4], v[5]), C: new Vector3(v[6], v[7], v[8])))
            .Where(t => Quality(t.A, t.B, t.C) > 0.2);

    [Fact]
    public void RigidMotionMeetsNoStiffness() => Gen.Select(Triangles, Gen.Double[-1, 1].Array[6]).Check(
        200,
        c =>
        {
            var (t, v) = c;
            var k = Stiffness(new(t.A, t.B, t.C), 2);
            var u = Rigid(t, new(v[0], v[1], v[2]), new(v[3], v[4], v[5]));
            var largest = Enumerable.Range(0, 18).Max(i => k[19 * i]);
            for (var i = 0; i < 18; i++)
            {
                Assert.Equal(0, Enumerable.Range(0, 18).Sum(j => k[18 * i + j] * u[j]), 1e-10 * largest);
            }
        });

    [Fact]
    public void StiffnessIsSymmetricWithSixRigidMotionsOnly() => Triangles.Check(
        100,
        t =>
        {
            var k = Stiffness(new(t.A, t.B, t.C), 2);
            var matrix = MathNet.Numerics.LinearAlgebra.Matrix<double>.Build.Dense(18, 18, (i, j) => k[18 * i + j]);
            Assert.True((matrix - matrix.Transpose()).FrobeniusNorm() < 1e-10 * matrix.FrobeniusNorm());
            var values = matrix.Evd(MathNet.Numerics.LinearAlgebra.Symmetricity.Symmetric).EigenValues.Select(v => v.Real).Order().ToArray();
            Assert.True(Math.Abs(values[5]) < 1e-11 * values[17]);
            Assert.True(values[6] > 1e-8 * values[17]);
        });

    [Fact]
    public void MassOfRigidMotionIsTheTrianglesOwn() => Gen.Select(Triangles, Gen.Double[-1, 1].Array[6]).Check(
        200,
        c =>
        {
            var (t, v) = c;
            // Twice the kinetic energy of a moving flat triangle: the three mid-side points carry a third of the mass each (exact
            // for a quadratic), and the thickness adds its rotary inertia about in-plane axes.
            const double h = 2;
            var g = new LocalTriangle(t.A, t.B, t.C);
            var (blocks, m) = (new double[CornerBlocks.Length], new double[324]);
            ShellTriangle.Mass(g, h, Steel, blocks);
            CornerBlocks.Expand(blocks, m);
            Vector3 move = new(v[0], v[1], v[2]), turn = new(v[3], v[4], v[5]);
            var u = Rigid(t, move, turn);
            var found = 0.0;
            for (var i = 0; i < 18; i++)
            {
                found += u[i] * Enumerable.Range(0, 18).Sum(j => m[18 * i + j] * u[j]);
            }

            var mass = Steel.Density * h * g.Area;
            var expected = new[] { (t.A + t.B) / 2, (t.B + t.C) / 2, (t.C + t.A) / 2 }
                .Sum(p => (move + turn.Cross(p)) is var s ? mass / 3 * s.Dot(s) : 0);
            expected += mass * h * h / 12 * (Math.Pow(turn.Dot(g.Ex), 2) + Math.Pow(turn.Dot(g.Ey), 2));
            Assert.Equal(expected, found, 1e-9 * expected);
        });

    // Felippa (2003), section 7: a rectangle of two OPT triangles bends in its plane as a beam does, whatever its proportions.
    [Theory]
    [InlineData(1)]
    [InlineData(4)]
    [InlineData(16)]
    public void MembraneBendsExactlyAtAnyAspectRatio(double aspect)
    {
        // Pure bending over one rectangle, averaged over both diagonals as in the paper: energy ratio 1.
        var length = aspect;
        const double depth = 1, curvature = 1e-3;
        double Energy(Triangle[] triangles)
        {
            Vector2[] nodes = [new(0, 0), new(length, 0), new(length, depth), new(0, depth)];
            var energy = 0.0;
            foreach (var t in triangles)
            {
                var g = new LocalTriangle(Vector3.From(nodes[t.A]), Vector3.From(nodes[t.B]), Vector3.From(nodes[t.C]));
                var k = Stiffness(g, 1);
                var u = new double[18];
                for (var c = 0; c < 3; c++)
                {
                    // u = -κ x' y', v = κ x'²/2 + ν κ y'²/2, θ = κ x' about the middle of the rectangle.
                    var p = nodes[t[c]] - new Vector2(length / 2, depth / 2);
                    u[6 * c] = -curvature * p.X * p.Y;
                    u[6 * c + 1] = curvature * (p.X * p.X + Steel.PoissonsRatio * p.Y * p.Y) / 2;
                    u[6 * c + 5] = curvature * p.X;
                }

                for (var i = 0; i < 18; i++)
                {
                    for (var j = 0; j < 18; j++)
                    {
                        energy += u[i] * k[18 * i + j] * u[j] / 2;
                    }
                }
            }

            return energy;
        }

        var exact = Steel.YoungsModulus * depth * depth * depth / 12 * curvature * curvature * length / 2;
        var mean = (Energy([new(0, 1, 2), new(0, 2, 3)]) + Energy([new(0, 1, 3), new(1, 2, 3)])) / 2;
        Assert.Equal(1, mean / exact, 1e-9);
    }

    private static double[] Rigid((Vector3 A, Vector3 B, Vector3 C) t, Vector3 move, Vector3 turn)
    {
        var u = new List<double>();
        foreach (var p in new[] { t.A, t.B, t.C })
        {
            var s = move + turn.Cross(p);
            u.AddRange([s.X, s.Y, s.Z, turn.X, turn.Y, turn.Z]);
        }

        return [.. u];
    }

    private static double Quality(Vector3 a, Vector3 b, Vector3 c)
    {
        Vector3 ab = b - a, bc = c - b, ca = a - c;
        return 2 * Math.Sqrt(3) * ab.Cross(c - a).Length / (ab.Dot(ab) + bc.Dot(bc) + ca.Dot(ca));
    }

    private static double[] Stiffness(LocalTriangle g, double thickness)
    {
        var (blocks, k) = (new double[CornerBlocks.Length], new double[324]);
        ShellTriangle.Stiffness(g, thickness, Steel, blocks);
        CornerBlocks.Expand(blocks, k);
        return k;
    }
}
