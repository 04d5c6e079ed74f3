using BracketGen.Geometry;
using BracketGen.Strength.Analysis;
using BracketGen.Strength.Model;
using BracketGen.Strength.Shaking;
using MathNet.Numerics.LinearAlgebra;
using Xunit;
using Complex = System.Numerics.Complex;

namespace BracketGen.Strength.Tests;

/// <summary>A shaken base against closed forms, published values and a direct solution without modes.</summary>
public sealed class ShakingTests
{
    [Theory]
    [InlineData(0.5, 0.01)]
    [InlineData(1, 0.01)]
    [InlineData(1, 0.05)]
    [InlineData(1.4142135623730951, 0.05)]
    [InlineData(3, 0.2)]
    public void OneMassOnAShakenBase(double ratio, double damping)
    {
        // S. S. Rao, Mechanical Vibrations, harmonic motion of the base: Z/Y = r²/√((1-r²)² + (2ζr)²), X/Y = √((1 + (2ζr)²)/((1-r²)² + (2ζr)²)).
        var below = (1 - ratio * ratio) * (1 - ratio * ratio) + 4 * damping * damping * ratio * ratio;
        var relative = ratio * ratio * (Complex.One + ModalFactors.Beyond(100, damping, 100 * ratio));
        Assert.Equal(ratio * ratio / Math.Sqrt(below), relative.Magnitude, 1e-9);
        Assert.Equal(Math.Sqrt((1 + 4 * damping * damping * ratio * ratio) / below), (Complex.One + relative).Magnitude, 1e-9);
    }

    [Theory]
    [InlineData(0.001)]
    [InlineData(0.005)]
    [InlineData(0.01)]
    [InlineData(0.03)]
    [InlineData(0.2)]
    public void WhiteNoiseOnOneMassIsMilesEquation(double damping)
    {
        // J. W. Miles, On structural fatigue under random loading, Journal of the Aeronautical Sciences 21 (1954): g_rms² = π/2 f Q W with Q = 1/(2ζ) (from memory).
        const double natural = 300, density = 0.2;
        var found = RandomIntegrals.Of(new(new(0.01, density), new(100 * natural, density)), [natural], damping);
        var miles = Math.PI / 2 * natural / (2 * damping) * density;
        Assert.Equal(1, (found.Whole + 2 * found.Single[0] + found.Pairs[0, 0]) / miles, 1e-4);
    }

    [Fact]
    public void TwoModesUnderWhiteNoise()
    {
        // Cross term of two oscillators under white noise: the complete quadratic combination, with equal damping
        // ρ = 8ζ²(1+r)r^1.5/((1-r²)² + 4ζ²r(1+r)²) (E. L. Wilson, A. Der Kiureghian, E. Bayo, Earthquake Engineering and Structural Dynamics 9 (1981) 187-194).
        const double damping = 0.02, density = 1;
        double[] naturals = [200, 210];
        var found = RandomIntegrals.Of(new(new(0.01, density), new(30000, density)), naturals, damping);
        double Product(int i, int j) => found.Whole + found.Single[i] + found.Single[j] + found.Pairs[i, j];
        const double r = 200.0 / 210, s = 4 * damping * damping;
        var published = 2 * s * (1 + r) * Math.Pow(r, 1.5) / ((1 - r * r) * (1 - r * r) + s * r * (1 + r) * (1 + r));
        Assert.Equal(published, Product(0, 1) / Math.Sqrt(Product(0, 0) * Product(1, 1)), 1e-3);
    }

    [Fact]
    public void CantileverBeamHasItsPublishedEffectiveMasses()
    {
        // Uniform cantilever shaken across: effective masses 0.6131, 0.1883, 0.0647 of its mass (T. Irvine, Effective Modal Mass and Modal Participation Factors;
        // R. W. Clough, J. Penzien, Dynamics of Structures; from memory). Participation factor of mode one over its tip: 1.566.
        double[] published = [0.6131, 0.1883, 0.0647];
        const double length = 500, depth = 10;
        var flat = Grid.Rectangle(length, depth, 100, 4);
        var held = Held.Clamped(flat.Where(p => p.X == 0)).AddRange(
            flat.Where(p => p.X > 0).SelectMany(n => new[] { new Held(n, Freedom.Z), new Held(n, Freedom.AboutX), new Held(n, Freedom.AboutY) }));
        var basis = ShellSystem.Factorise(new(flat.Flat(), 5, new(210000, 0, 7.85e-9), held)).Shaken(3);
        const double mass = length * depth * 5 * 7.85e-9;
        Assert.Equal(1, basis.MovingMass.Y / mass, 0.01);
        for (var r = 0; r < 3; r++)
        {
            Assert.Equal(published[r], basis.EffectiveMass(r).Y / mass, 0.002);
        }
    }

    [Fact]
    public void EveryModeTogetherCarriesTheWholeMass()
    {
        // But for how the mass of the coarse triangles at the clamped edge is shared out.
        Assert.InRange(Plate().Shaken(72).CountedMass, 0.97, 1.03);
    }

    [Fact]
    public void SineIsThatOfADirectSolutionWithoutModes()
    {
        // (K - ω²M + iωC) u = -M r a on a plate of twelve free nodes, every mode damped by 2 %, solved by MathNet.Numerics; directions and phases by trial.
        var direct = new Direct(0.02);
        var basis = Plate().Shaken(6);
        foreach (var part in new[] { 0.5, 0.97, 1.0, 1.4, 2.5 })
        {
            var frequency = part * basis.Frequencies[0];
            const double amplitude = 1e5;
            var found = ShakingResponse.Of(basis, new(At(frequency, amplitude), null, 0.02));
            var expected = direct.Peaks(frequency, amplitude);
            var most = expected.Max();
            for (var place = 0; place < expected.Length; place++)
            {
                var node = found.Sine[place / 2];
                Assert.InRange((place % 2 == 0 ? node.Top : node.Bottom) - expected[place], -0.01 * most, 0.015 * most);
            }
        }
    }

    [Fact]
    public void RandomIsThatOfADirectSolutionWithoutModes()
    {
        var direct = new Direct(0.05);
        var basis = Plate().Shaken(6);
        SpectrumCurve density = new(new(0.4 * basis.Frequencies[0], 1e4), new(basis.Frequencies[0], 1e5), new(1.2 * basis.Frequencies[1], 2e4));
        var found = ShakingResponse.Of(basis, new(null, density, 0.05)).Rms;
        var expected = direct.RootMeanSquares(density);
        var most = expected.Max();
        for (var place = 0; place < expected.Length; place++)
        {
            Assert.InRange((place % 2 == 0 ? found[place / 2].Top : found[place / 2].Bottom) - expected[place], -0.01 * most, 0.01 * most);
        }
    }

    // CalculiX 2.20 on the kept deck (l-bracket.inp) with *FREQUENCY, STORAGE=YES for twelve modes, then *STEADY STATE DYNAMICS at 300 Hz and at its own first frequency, 610.969 Hz, with
    // *MODAL DAMPING 0.01 and *DLOAD GRAV of 10 m/s² along x, y and z: the von Mises amplitude (MPa) of the complex stresses at nodes on the surfaces, the largest over 800 directions and the phase.
    private static readonly (double X, double Y, double Z, double At300, double AtFirst)[] Calculix =
    [
        (11.0936, 12.2597, 1.5, 0.2771, 9.5763),
        (-8.21516, 12.528, 1.5, 0.2761, 9.5946),
        (8.24838, 14.9283, 1.5, 0.2600, 9.2887),
        (3.53857, 32.0, 14.2335, 0.1032, double.NaN),
        (-14.8979, 32.0, 15.0442, double.NaN, 4.2782),
        (-14.8979, 29.0, 15.0442, double.NaN, 4.2732),
    ];

    [Fact]
    public void LBracketIsShakenAsInCalculix()
    {
        // Away from the washers' edges, where solids and a clamped shell differ.
        var part = LBracket.Part.Prepare(4, 1.5);
        var basis = part.Shaken(2500);
        var (below, first) = (ShakingResponse.Of(basis, new(At(300, 1e4), null, 0.01)), ShakingResponse.Of(basis, new(At(basis.Frequencies[0], 1e4), null, 0.01)));
        foreach (var (x, y, z, at300, atFirst) in Calculix)
        {
            // On the foot the top is above; on the upright flange it is the side towards the foot. Between nodes straight on, as the deck has another mesh.
            var onFoot = Math.Abs(z - 1.5) < 1e-6;
            var isTop = onFoot || Math.Abs(y - 29) < 1e-6;
            Vector2 at = onFoot ? new(x, y) : new(x, 26 + 4.5 * Math.PI / 2 + z - 4.5);
            double Of(ShakingStress stress) => Between(part.Flat, at, n => isTop ? stress.Sine[n].Top : stress.Sine[n].Bottom);
            foreach (var (found, expected) in new[] { (Of(below), at300), (Of(first), atFirst) })
            {
                if (!double.IsNaN(expected))
                {
                    Assert.InRange(found / expected, 0.95, 1.05);
                }
            }
        }
    }

    [Fact]
    public void FrequenciesLookedAtHoldTheWorst()
    {
        // Against a sweep in steps of a thirtieth of each resonance's width.
        var basis = LBracket.Part.Prepare(8, 4).Shaken(2500);
        SpectrumCurve sine = new(new(200, 2e4), new(900, 1e5), new(2500, 3e4));
        var found = ShakingResponse.Of(basis, new(sine, null, 0.01));
        var (swept, at) = (0.0, 0.0);
        foreach (var natural in basis.Frequencies.Where(f => f < 2500))
        {
            for (var part = -0.02; part <= 0.02; part += 1.0 / 1500)
            {
                var f = natural * (1 + part);
                var one = ShakingResponse.Of(basis, new(At(f, sine.At(f)), null, 0.01)).Largest;
                (swept, at) = one > swept ? (one, f) : (swept, at);
            }
        }

        Assert.InRange(found.Largest / swept, 0.995, 1.005);
        Assert.InRange(found.SineFrequency / at, 0.995, 1.005);
    }

    [Fact]
    public void MoreModesChangeLittle()
    {
        // What the counted modes miss is in the steady part: ten modes more move the stress by less than a hundredth.
        var part = LBracket.Part.Prepare(6, 3);
        BaseShaking shaking = new(new(new(100, 5e4), new(440, 5e4)), new(new(10, 1e6), new(2000, 1e6)), 0.01);
        double few = ShakingResponse.Of(part.System.Shaken(5), shaking).Largest, many = ShakingResponse.Of(part.System.Shaken(15), shaking).Largest;
        Assert.InRange(few / many, 0.99, 1.01);
    }

    [Fact]
    public void PeakOverPhaseAndDirectionIsThatOfATrial()
    {
        var random = new Random(7);
        for (var trial = 0; trial < 30; trial++)
        {
            double[] p = [.. Enumerable.Range(0, 15).Select(_ => random.NextDouble() - 0.5)], q = [.. Enumerable.Range(0, 15).Select(_ => (random.NextDouble() - 0.5) * (trial % 3))];
            var found = Math.Sqrt(ShakingResponse.PeakSquare(p, q));
            Assert.InRange(Trial(p, q) / found, 0.99, 1.001);
        }
    }

    [Fact]
    public void LargestEigenvalueIsThatOfMathNet()
    {
        var random = new Random(3);
        for (var trial = 0; trial < 50; trial++)
        {
            double[] m = [.. Enumerable.Range(0, 6).Select(_ => random.NextDouble() - 0.5)];
            var matrix = Matrix<double>.Build.DenseOfArray(new[,] { { m[0], m[3], m[5] }, { m[3], m[1], m[4] }, { m[5], m[4], m[2] } });
            Assert.Equal(matrix.Evd(Symmetricity.Symmetric).EigenValues.Select(v => v.Real).Max(), LargestEigenvalue.Of(m), 1e-9);
        }

        Assert.Equal(2, LargestEigenvalue.Of([2, 2, 2, 0, 0, 0]), 1e-12);
    }

    [Fact]
    public void FieldIsAsLongAsTheVonMisesStress()
    {
        // σ² = ½((xx-yy)² + (yy-zz)² + (zz-xx)²) + 3(xy² + yz² + zx²) by hand: ½(100 + 400 + 900) + 3·(25 + 4 + 9) = 814.
        var field = new StressField([40, 30, 10, 5, 2, 3, 0, 0, 0, 0, 0, 0]);
        Assert.Equal(814, field.At(0).ToArray().Sum(x => x * x), 1e-9);
        Assert.Equal(0, field.At(1).ToArray().Sum(x => x * x), 1e-12);
    }

    [Fact]
    public void CurveIsStraightInLogarithms()
    {
        SpectrumCurve curve = new(new(10, 100), new(1000, 1));
        Assert.Equal(10, curve.At(100), 1e-9);
        Assert.Equal(0, curve.At(9.9));
        Assert.Equal(0, curve.At(1001));

        // ∫ 1000/f df from 10 to 1000.
        Assert.Equal(Math.Sqrt(1000 * Math.Log(100)), curve.RootOfArea, 1e-9);
        SpectrumCurve valley = new(new(100, 10), new(200, 1), new(400, 10));
        Assert.Equal(valley.At(160), valley.MaximumBetween(160, 220), 1e-12);
        Assert.Equal(10, valley.MaximumBetween(300, 500), 1e-12);
        Assert.Equal(0, valley.MaximumBetween(500, 600));
    }

    [Fact]
    public void CurveRejectsWhatIsNone()
    {
        Assert.Throws<ArgumentException>(() => new SpectrumCurve(new SpectrumPoint(10, 1)));
        Assert.Throws<ArgumentException>(() => new SpectrumCurve(new(10, 1), new(10, 2)));
        Assert.Throws<ArgumentException>(() => new SpectrumCurve(new(10, 1), new(20, 0)));
    }

    private static double Between(TriangleMesh flat, Vector2 at, Func<int, double> value)
    {
        foreach (var t in flat.Triangles)
        {
            Vector2 a = flat.Nodes[t.A].Vector, b = flat.Nodes[t.B].Vector, c = flat.Nodes[t.C].Vector;
            double Area(Vector2 p, Vector2 q, Vector2 r) => (q.X - p.X) * (r.Y - p.Y) - (q.Y - p.Y) * (r.X - p.X);
            var (u, v, w) = (Area(at, b, c), Area(a, at, c), Area(a, b, at));
            if (Math.Min(u, Math.Min(v, w)) >= 0)
            {
                return (u * value(t.A) + v * value(t.B) + w * value(t.C)) / (u + v + w);
            }
        }

        throw new ArgumentException("No triangle there.");
    }

    // A sine at next to one frequency.
    private static SpectrumCurve At(double frequency, double amplitude) => new(new(frequency * (1 - 1e-9), amplitude), new(frequency, amplitude));

    private static double Trial(double[] p, double[] q)
    {
        var most = 0.0;
        foreach (var d in Directions)
        {
            for (var k = 0; k < 36; k++)
            {
                var (sin, cos) = Math.SinCos(k * Math.PI / 36);
                var sum = 0.0;
                for (var c = 0; c < 5; c++)
                {
                    var re = d.X * p[c] + d.Y * p[5 + c] + d.Z * p[10 + c];
                    var im = d.X * q[c] + d.Y * q[5 + c] + d.Z * q[10 + c];
                    sum += (cos * re - sin * im) * (cos * re - sin * im);
                }

                most = Math.Max(most, sum);
            }
        }

        return Math.Sqrt(most);
    }

    // Evenly spread over the half sphere by the golden angle.
    private static readonly Vector3[] Directions =
    [
        .. Enumerable.Range(0, 600).Select(i =>
        {
            double z = (i + 0.5) / 600, r = Math.Sqrt(1 - z * z), angle = i * Math.PI * (3 - Math.Sqrt(5));
            return new Vector3(r * Math.Cos(angle), r * Math.Sin(angle), z);
        }),
    ];

    private static ShellModel PlateModel
    {
        get
        {
            // Bent out of its plane, so that no direction is without effect.
            var flat = Grid.Rectangle(40, 20, 4, 2);
            var mesh = ShellMesh.Fold(flat, p => p.X <= 20 ? new(p.X, p.Y, 0) : new(20 + 0.6 * (p.X - 20), p.Y, 0.8 * (p.X - 20)));
            return new(mesh, 2, new(210000, 0.3, 7.85e-9), Held.Clamped(flat.Where(p => p.X == 0)))
            {
                // A body off the sheet and off its middle.
                Bodies = [new([.. flat.Where(p => p is { X: >= 30, Y: <= 10 }).Select(n => (n, 0.25))], 2e-5, new(2, 1, 6), new(0, 0, 1), 5e-4, 8e-4)],
            };
        }
    }

    private static ShellSystem Plate() => ShellSystem.Factorise(PlateModel);

    private sealed class Direct
    {
        private readonly Matrix<double> _stiffness, _mass, _damping;
        private readonly Matrix<double> _force;
        private readonly ShellModel _model = PlateModel;
        private readonly FreeNodes _free;

        public Direct(double damping)
        {
            _free = new(_model);
            var (stiffness, mass) = (Assembly.Stiffness(_model, _free).Matrix, Assembly.Mass(_model, _free));
            var n = 6 * _free.Pattern.Nodes;
            (_stiffness, _mass) = (Dense(n, stiffness.Multiply), Dense(n, mass.Multiply));
            _force = Matrix<double>.Build.Dense(n, 3);
            for (var axis = 0; axis < 3; axis++)
            {
                var one = Enumerable.Range(0, n).Select(i => i % 6 == axis ? 1.0 : 0).ToArray();
                _force.SetColumn(axis, _mass * Vector<double>.Build.Dense(one) + Vector<double>.Build.Dense(_free.Reduced(Assembly.InertiaOfHeld(_model, _free, axis))));
            }

            // Modes of L⁻¹ M L⁻ᵀ, all of them: C = Σ 2ζω (Mφ)(Mφ)ᵀ.
            var lower = _stiffness.Cholesky().Factor;
            var inverse = lower.Inverse();
            var evd = (inverse * _mass * inverse.Transpose()).Evd(Symmetricity.Symmetric);
            _damping = Matrix<double>.Build.Dense(n, n);
            for (var r = 0; r < n; r++)
            {
                var square = evd.EigenValues[r].Real;
                if (square > 1e-14)
                {
                    var moved = _mass * (inverse.Transpose() * evd.EigenVectors.Column(r)) / Math.Sqrt(square);
                    _damping += 2 * damping / Math.Sqrt(square) * moved.OuterProduct(moved);
                }
            }
        }

        public double[] Peaks(double frequency, double amplitude)
        {
            var fields = Fields(frequency, amplitude);
            return [.. Enumerable.Range(0, fields[0].Real.Places).Select(place => Trial(
                [.. fields.SelectMany(f => f.Real.At(place).ToArray())], [.. fields.SelectMany(f => f.Imaginary.At(place).ToArray())]))];
        }

        public double[] RootMeanSquares(SpectrumCurve density)
        {
            const int steps = 240;
            double low = density.From, step = (density.To - low) / steps;
            double[][]? sums = null;
            for (var k = 0; k <= steps; k++)
            {
                var weight = step * density.At(Math.Min(low + k * step, density.To)) * (k is 0 or steps ? 0.5 : 1);
                var fields = Fields(low + k * step, 1);
                sums ??= [.. Enumerable.Range(0, fields[0].Real.Places).Select(_ => new double[9])];
                for (var place = 0; place < sums.Length; place++)
                {
                    for (var i = 0; i < 9; i++)
                    {
                        var (a, b) = (fields[i / 3], fields[i % 3]);
                        for (var c = 0; c < 5; c++)
                        {
                            sums[place][i] += weight * (a.Real.At(place)[c] * b.Real.At(place)[c] + a.Imaginary.At(place)[c] * b.Imaginary.At(place)[c]);
                        }
                    }
                }
            }

            return [.. sums!.Select(s => Math.Sqrt(Math.Max(0, Matrix<double>.Build.Dense(3, 3, s).Evd(Symmetricity.Symmetric).EigenValues.Max(v => v.Real))))];
        }

        private (StressField Real, StressField Imaginary)[] Fields(double frequency, double amplitude)
        {
            var omega = 2 * Math.PI * frequency;
            var whole = (_stiffness - omega * omega * _mass).ToComplex() + Complex.ImaginaryOne * omega * _damping.ToComplex();
            var u = whole.Solve(_force.ToComplex() * amplitude);
            return [.. Enumerable.Range(0, 3).Select(axis => (Of(u.Column(axis).Real()), Of(u.Column(axis).Imaginary())))];
        }

        private StressField Of(Vector<double> part) => new(StressRecovery.TensorsAtNodes(_model, _free, _free.Whole(part.ToArray())));

        private delegate void Product(ReadOnlySpan<double> x, Span<double> y);

        private static Matrix<double> Dense(int n, Product product)
        {
            var dense = Matrix<double>.Build.Dense(n, n);
            for (var i = 0; i < n; i++)
            {
                var (x, y) = (new double[n], new double[n]);
                x[i] = 1;
                product(x, y);
                dense.SetColumn(i, y);
            }

            return dense;
        }
    }
}
