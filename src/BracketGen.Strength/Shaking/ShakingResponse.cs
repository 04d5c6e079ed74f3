using System.Collections.Immutable;
using BracketGen.Strength.Analysis;

namespace BracketGen.Strength.Shaking;

/// <summary>The stress in a part whose base shakes, by superposition of its modes.</summary>
/// <remarks>
/// Displacement against the base answers an acceleration a of it with -a (K⁻¹M r + Σ φ Γ (H(ω) - 1/ω₀²)): the steady response, and what each counted mode adds to it (mode
/// acceleration method; R. R. Craig, A. J. Kurdila, Fundamentals of Structural Dynamics, from memory). So what the counted modes miss is in it as if it moved
/// without delay. The direction of shaking is the worst of all for each place by itself.
/// </remarks>
public static class ShakingResponse
{
    /// <summary>The stress.</summary>
    public static ShakingStress Of(ModalBasis basis, BaseShaking shaking)
    {
        var places = basis.Steady[0].Places;
        var (sine, at) = shaking.Sine is { } amplitude ? SineOf(basis, amplitude, shaking) : (new double[places], new double[places]);
        var rms = shaking.Random is { } density ? RandomOf(basis, density, shaking.Damping) : new double[places];
        var stress = new ShakingStress(Nodes(sine), 0, Nodes(rms));
        var most = stress.MostStressed;
        var alternating = stress.Alternating[most];
        return stress with { SineFrequency = at[2 * most + (alternating.Top >= alternating.Bottom ? 0 : 1)] };
    }

    private static ImmutableArray<NodeStress> Nodes(double[] places)
    {
        var nodes = ImmutableArray.CreateBuilder<NodeStress>(places.Length / 2);
        for (var p = 0; p < places.Length; p += 2)
        {
            nodes.Add(new(places[p], places[p + 1]));
        }

        return nodes.MoveToImmutable();
    }

    /// <summary>Frequencies (Hz) at which the sine's response is looked at: every resonance and close by it, corners of the curve, and some between.</summary>
    internal static IReadOnlyList<double> FrequenciesFor(SpectrumCurve sine, IReadOnlyList<double> naturals, double damping, double spread)
    {
        List<double> all = [.. sine.Points.Select(p => p.Frequency), sine.From / (1 + spread), sine.To * (1 + spread)];
        for (var f = sine.From; f < sine.To; f *= Between)
        {
            all.Add(f);
        }

        // The resonances first: what lies below them is soon passed over.
        List<double> near = [];
        foreach (var natural in naturals)
        {
            near.AddRange(Near.Select(part => natural * (1 + part * damping)));
        }

        return [.. near.Concat(all).Distinct().Where(f => f >= sine.From / (1 + spread) && f <= sine.To * (1 + spread))];
    }

    // Half-widths of a resonance at which it is looked at.
    private static readonly double[] Near = [0, -0.5, 0.5, -1, 1, -2, 2, -4, 4, -8, 8];

    // From one frequency between to the next: twelve an octave.
    private const double Between = 1.0594630943592953;

    private static (double[] Amplitude, double[] Frequency) SineOf(ModalBasis basis, SpectrumCurve sine, BaseShaking shaking)
    {
        var (count, places) = (basis.Frequencies.Length, basis.Steady[0].Places);
        var (squares, at) = (new double[places], new double[places]);
        var real = new double[3 * count];
        var imaginary = new double[3 * count];
        var (norms, parts) = (Norms(basis), new double[count]);
        Span<double> p = stackalloc double[3 * StressField.Size], q = stackalloc double[3 * StressField.Size];
        foreach (var f in FrequenciesFor(sine, basis.Frequencies, shaking.Damping, shaking.FrequencySpread))
        {
            var a = sine.MaximumBetween(f / (1 + shaking.FrequencySpread), f * (1 + shaking.FrequencySpread));
            for (var r = 0; r < count; r++)
            {
                var omega = 2 * Math.PI * basis.Frequencies[r];
                var beyond = ModalFactors.Beyond(basis.Frequencies[r], shaking.Damping, f) / (omega * omega);
                var g = basis.Participation[r];
                parts[r] = a * g.Length * beyond.Magnitude;
                (real[3 * r], real[3 * r + 1], real[3 * r + 2]) = (a * g.X * beyond.Real, a * g.Y * beyond.Real, a * g.Z * beyond.Real);
                (imaginary[3 * r], imaginary[3 * r + 1], imaginary[3 * r + 2]) = (a * g.X * beyond.Imaginary, a * g.Y * beyond.Imaginary, a * g.Z * beyond.Imaginary);
            }

            for (var place = 0; place < places; place++)
            {
                // Never more than all parts at once, each in its own direction and phase.
                var norm = norms.AsSpan((count + 1) * place, count + 1);
                var bound = a * norm[count];
                for (var r = 0; r < count; r++)
                {
                    bound += parts[r] * norm[r];
                }

                if (bound * bound <= squares[place])
                {
                    continue;
                }

                q.Clear();
                for (var k = 0; k < 3; k++)
                {
                    var steady = basis.Steady[k].At(place);
                    for (var i = 0; i < StressField.Size; i++)
                    {
                        p[StressField.Size * k + i] = a * steady[i];
                    }
                }

                for (var r = 0; r < count; r++)
                {
                    var shape = basis.Shapes[r].At(place);
                    for (var k = 0; k < 3; k++)
                    {
                        double re = real[3 * r + k], im = imaginary[3 * r + k];
                        for (var i = 0; i < StressField.Size; i++)
                        {
                            p[StressField.Size * k + i] += re * shape[i];
                            q[StressField.Size * k + i] += im * shape[i];
                        }
                    }
                }

                // Never more than all three directions and both phases at once.
                if (Square(p) + Square(q) > squares[place] && PeakSquare(p, q) is var peak && peak > squares[place])
                {
                    (squares[place], at[place]) = (peak, f);
                }
            }
        }

        return (Array.ConvertAll(squares, Math.Sqrt), at);
    }

    // Von Mises stress of each shape at each place, and last that of a steady acceleration along all three axes.
    private static double[] Norms(ModalBasis basis)
    {
        var (count, places) = (basis.Frequencies.Length, basis.Steady[0].Places);
        var norms = new double[(count + 1) * places];
        for (var place = 0; place < places; place++)
        {
            for (var r = 0; r < count; r++)
            {
                norms[(count + 1) * place + r] = Math.Sqrt(Square(basis.Shapes[r].At(place)));
            }

            norms[(count + 1) * place + count] = Math.Sqrt(Square(basis.Steady[0].At(place)) + Square(basis.Steady[1].At(place)) + Square(basis.Steady[2].At(place)));
        }

        return norms;
    }

    private static double Square(ReadOnlySpan<double> x)
    {
        var sum = 0.0;
        foreach (var one in x)
        {
            sum += one * one;
        }

        return sum;
    }

    /// <summary>
    /// The square of the largest von Mises stress over a period, in the worst direction: of Re((p + iq) e^(iθ)) over θ, whose square is
    /// (P + Q)/2 + (P - Q)/2 cos 2θ - R sin 2θ in the matrices of products along x, y and z.
    /// </summary>
    /// <remarks>Over θ by steps, and closer round the largest: within 0.1 % of it.</remarks>
    /// <param name="p">Real parts: five numbers along x, y and z each.</param>
    /// <param name="q">Imaginary parts.</param>
    internal static double PeakSquare(ReadOnlySpan<double> p, ReadOnlySpan<double> q)
    {
        Span<double> half = stackalloc double[6], cosine = stackalloc double[6], sine = stackalloc double[6], m = stackalloc double[6];
        for (var i = 0; i < 6; i++)
        {
            var (k, l) = i < 3 ? (i, i) : (i - 3, (i - 2) % 3);
            double pp = 0, qq = 0, pq = 0;
            for (var c = 0; c < StressField.Size; c++)
            {
                double pk = p[StressField.Size * k + c], pl = p[StressField.Size * l + c], qk = q[StressField.Size * k + c], ql = q[StressField.Size * l + c];
                pp += pk * pl;
                qq += qk * ql;
                pq += (pk * ql + pl * qk) / 2;
            }

            (half[i], cosine[i], sine[i]) = ((pp + qq) / 2, (pp - qq) / 2, -pq);
        }

        var (best, angle) = (0.0, 0.0);
        foreach (var (steps, width) in Searches)
        {
            var from = angle;
            for (var s = 0; s < steps; s++)
            {
                var twice = from + width * (s - (steps - 1) / 2.0);
                var (sin, cos) = Math.SinCos(twice);
                for (var i = 0; i < 6; i++)
                {
                    m[i] = half[i] + cos * cosine[i] + sin * sine[i];
                }

                var square = LargestEigenvalue.Of(m);
                if (square > best)
                {
                    (best, angle) = (square, twice);
                }
            }
        }

        return best;
    }

    // Steps of 2θ all round, then closer.
    private static readonly (int Steps, double Width)[] Searches = [(12, Math.PI / 6), (7, Math.PI / 36)];

    private static double[] RandomOf(ModalBasis basis, SpectrumCurve density, double damping)
    {
        var (count, places) = (basis.Frequencies.Length, basis.Steady[0].Places);
        var integrals = RandomIntegrals.Of(density, basis.Frequencies, damping);
        var weights = new double[count][];
        for (var r = 0; r < count; r++)
        {
            var omega = 2 * Math.PI * basis.Frequencies[r];
            var g = basis.Participation[r] / (omega * omega);
            weights[r] = [g.X, g.Y, g.Z];
        }

        // In each direction the stress is a sum of fields, the steady one first; its mean square a quadratic form of their products.
        var products = new double[(count + 3) * (count + 3)];
        var rms = new double[places];
        Span<double> m = stackalloc double[6];
        for (var place = 0; place < places; place++)
        {
            for (var i = 0; i < count + 3; i++)
            {
                var one = Field(basis, i).At(place);
                for (var j = 0; j <= i; j++)
                {
                    var other = Field(basis, j).At(place);
                    var dot = 0.0;
                    for (var c = 0; c < StressField.Size; c++)
                    {
                        dot += one[c] * other[c];
                    }

                    products[(count + 3) * i + j] = products[(count + 3) * j + i] = dot;
                }
            }

            for (var i = 0; i < 6; i++)
            {
                var (k, l) = i < 3 ? (i, i) : (i - 3, (i - 2) % 3);
                var sum = integrals.Whole * products[(count + 3) * k + l];
                for (var r = 0; r < count; r++)
                {
                    var row = (count + 3) * (r + 3);
                    sum += integrals.Single[r] * (weights[r][k] * products[row + l] + weights[r][l] * products[row + k]);
                    for (var s = 0; s < count; s++)
                    {
                        sum += integrals.Pairs[r, s] * weights[r][k] * weights[s][l] * products[row + s + 3];
                    }
                }

                m[i] = sum;
            }

            rms[place] = Math.Sqrt(Math.Max(0, LargestEigenvalue.Of(m)));
        }

        return rms;
    }

    private static StressField Field(ModalBasis basis, int i) => i < 3 ? basis.Steady[i] : basis.Shapes[i - 3];
}
