using System.Collections.Immutable;
using BracketGen.Mechanism.Numerics;

namespace BracketGen.Mechanism.Uncertainty;

/// <summary>A computation whose inputs are uncertain: fills the outputs from the inputs.</summary>
public delegate void UncertainModel(ReadOnlySpan<double> inputs, Span<double> outputs);

/// <summary>What uncertain inputs do to a model's outputs: worst case, spread, and each input's contribution.</summary>
/// <remarks>
/// Worst case: see <see cref="WorstCase"/>. Spread: <see cref="SobolSequence"/> points through each input's distribution, in
/// <see cref="Replicates"/> independently shifted parts, whose scatter gives the standard error; inputs beyond the sequence's dimensions take
/// independent random numbers (padding: A. B. Owen, <i>Monte Carlo theory, methods and examples</i>, ch. 17, from memory). Contribution: the squared correlation of input and
/// output, which for independent inputs and a nearly linear model is that input's part of the variance (A. Saltelli et al., <i>Global Sensitivity Analysis</i>, 2008,
/// ch. 1). Same seed, same numbers.
/// </remarks>
public sealed class UncertaintyRun
{
    /// <summary>Number of independently shifted parts of a run.</summary>
    public const int Replicates = 8;

    // Too few samples to be worth a second thread.
    private const int FewSamples = 2_048;

    private readonly double[][] samples;
    private readonly double[][] shares;

    private UncertaintyRun(
        ImmutableArray<UncertainQuantity> inputs, double[] nominal, double[] least, double[] most, double[][] samples, double[][] shares)
    {
        (Inputs, this.samples, this.shares) = (inputs, samples, shares);
        (Nominal, Least, Most) = ([.. nominal], [.. least], [.. most]);
    }

    /// <summary>The inputs.</summary>
    public ImmutableArray<UncertainQuantity> Inputs { get; }

    /// <summary>Outputs with every input at its value.</summary>
    public ImmutableArray<double> Nominal { get; }

    /// <summary>Minimum outputs with every input within its ±.</summary>
    public ImmutableArray<double> Least { get; }

    /// <summary>Maximum outputs with every input within its ±.</summary>
    public ImmutableArray<double> Most { get; }

    /// <summary>Number of samples.</summary>
    public int Count => samples[0].Length;

    /// <summary>Runs the model.</summary>
    /// <param name="inputs">The inputs; those without ± stay at their value.</param>
    /// <param name="outputs">Number of outputs.</param>
    /// <param name="model">The model; called from several threads, it must not keep its arguments.</param>
    /// <param name="samples">Number of samples, at least <see cref="Replicates"/>; best <see cref="Replicates"/> times a power of two.</param>
    /// <param name="seed">Seed of the shifts.</param>
    public static UncertaintyRun Of(
        IEnumerable<UncertainQuantity> inputs, int outputs, UncertainModel model, int samples = 65_536, ulong seed = 1)
    {
        ImmutableArray<UncertainQuantity> all = [.. inputs];
        int[] uncertain = [.. Enumerable.Range(0, all.Length).Where(i => all[i].Value.PlusMinus > 0)];
        var values = all.Select(q => q.Value.Value).ToArray();
        var nominal = new double[outputs];
        model(values, nominal);
        var (least, most) = new WorstCase(all, uncertain, values, outputs, model).Find();
        var sampling = new Sampling(all, uncertain, values, nominal, model, Math.Max(1, samples / Replicates), seed);
        var total = sampling.Run(samples < FewSamples);
        var shares = Enumerable.Range(0, outputs).Select(o =>
        {
            var share = new double[all.Length];
            for (var k = 0; k < uncertain.Length; k++)
            {
                share[uncertain[k]] = total.SquaredCorrelation(k, o);
            }

            return share;
        }).ToArray();
        return new(all, nominal, least, most, sampling.Results, shares);
    }

    /// <summary>Mean of an output.</summary>
    public double Mean(int output) => samples[output].Average();

    /// <summary>Standard deviation of an output.</summary>
    public double StandardDeviation(int output)
    {
        var mean = Mean(output);
        var sum = 0.0;
        foreach (var value in samples[output])
        {
            sum += (value - mean) * (value - mean);
        }

        return Math.Sqrt(sum / Count);
    }

    /// <summary>The value that an output stays below with the given probability, 0 to 1.</summary>
    public double Quantile(int output, double probability)
    {
        var at = Math.Clamp(probability * Count - 0.5, 0, Count - 1);
        var below = (int)at;
        var (value, next) = OrderStatistic.At(samples[output], below);
        return value + (at - below) * (next - value);
    }

    /// <summary>The smallest magnitude that an output does not exceed with the given probability, 0 to 1.</summary>
    public double MagnitudeFor(int output, double probability)
    {
        var count = (int)Math.Ceiling(Math.Clamp(probability, 0, 1) * Count);
        return count == 0 ? 0 : OrderStatistic.At(Array.ConvertAll(samples[output], Math.Abs), count - 1).Value;
    }

    /// <summary>Probability that the outputs satisfy a condition, with its standard error.</summary>
    public Probability Probability(Func<ReadOnlySpan<double>, bool> condition)
    {
        var each = Count / Replicates;
        Span<double> row = new double[samples.Length];
        var parts = new double[Replicates];
        for (var part = 0; part < Replicates; part++)
        {
            for (var i = part * each; i < (part + 1) * each; i++)
            {
                for (var k = 0; k < samples.Length; k++)
                {
                    row[k] = samples[k][i];
                }

                parts[part] += condition(row) ? 1 : 0;
            }
        }

        parts = [.. parts.Select(p => p / each)];
        var mean = parts.Average();
        return new(mean, Math.Sqrt(parts.Sum(p => (p - mean) * (p - mean)) / (Replicates - 1) / Replicates), each * Replicates);
    }

    /// <summary>Each input's part of an output's variance, 0 to 1, in the order of <see cref="Inputs"/>.</summary>
    public ImmutableArray<double> Shares(int output) => [.. shares[output]];

    /// <summary>The model at points through the inputs' distributions, in independently shifted parts.</summary>
    private sealed class Sampling(
        ImmutableArray<UncertainQuantity> all, int[] uncertain, double[] values, double[] nominal, UncertainModel model, int each, ulong seed)
    {
        /// <summary>One row an output, part after part.</summary>
        public double[][] Results { get; } = [.. nominal.Select(_ => new double[each * Replicates])];

        public Sums Run(bool onOneThread)
        {
            var parts = new Sums[Replicates];
            if (onOneThread)
            {
                for (var part = 0; part < Replicates; part++)
                {
                    parts[part] = Run(part);
                }
            }
            else
            {
                Parallel.For(0, Replicates, part => parts[part] = Run(part));
            }

            // Added up in one order, so that the numbers do not depend on which thread was first.
            var total = new Sums(uncertain.Length, nominal.Length);
            foreach (var part in parts)
            {
                total.Add(part);
            }

            return total;
        }

        private Sums Run(int part)
        {
            var own = unchecked(seed * Replicates + (ulong)part);
            var dimensions = Math.Min(uncertain.Length, SobolSequence.MostDimensions);
            var sequence = new SobolSequence(dimensions, own);
            var random = ~own;
            var sums = new Sums(uncertain.Length, nominal.Length);
            var (at, point, result) = (values.ToArray(), new double[uncertain.Length], new double[nominal.Length]);
            for (var i = 0; i < each; i++)
            {
                sequence.Next(point.AsSpan(0, dimensions));
                for (var k = dimensions; k < point.Length; k++)
                {
                    point[k] = ((SobolSequence.SplitMix(ref random) >> 32) + 0.5) / 4294967296.0;
                }

                for (var k = 0; k < uncertain.Length; k++)
                {
                    var q = all[uncertain[k]];
                    at[uncertain[k]] = q.Quantile(point[k]);
                    point[k] = (at[uncertain[k]] - q.Value.Value) / q.Value.PlusMinus;
                }

                model(at, result);
                for (var k = 0; k < result.Length; k++)
                {
                    Results[k][part * each + i] = result[k];
                    result[k] -= nominal[k];
                }

                sums.Add(point, result);
            }

            return sums;
        }
    }

    /// <summary>Sums for the correlations, of deviations from the nominal value so that nothing cancels.</summary>
    private sealed class Sums(int inputs, int outputs)
    {
        private readonly double[] x = new double[inputs], xx = new double[inputs], y = new double[outputs], yy = new double[outputs];

        // Row after row: the outputs of the first input, of the second, and so on.
        private readonly double[] xy = new double[inputs * outputs];
        private int count;

        public void Add(ReadOnlySpan<double> input, ReadOnlySpan<double> output)
        {
            count++;
            for (var o = 0; o < output.Length; o++)
            {
                y[o] += output[o];
                yy[o] += output[o] * output[o];
            }

            for (var k = 0; k < input.Length; k++)
            {
                var value = input[k];
                x[k] += value;
                xx[k] += value * value;
                var row = xy.AsSpan(k * output.Length, output.Length);
                for (var o = 0; o < row.Length; o++)
                {
                    row[o] += value * output[o];
                }
            }
        }

        public void Add(Sums other)
        {
            count += other.count;
            Span<(double[] Own, double[] Others)> all = [(x, other.x), (xx, other.xx), (y, other.y), (yy, other.yy), (xy, other.xy)];
            foreach (var (own, others) in all)
            {
                for (var i = 0; i < own.Length; i++)
                {
                    own[i] += others[i];
                }
            }
        }

        public double SquaredCorrelation(int k, int o)
        {
            var covariance = xy[k * y.Length + o] - x[k] * y[o] / count;
            var variances = (xx[k] - x[k] * x[k] / count) * (yy[o] - y[o] * y[o] / count);
            return variances > 0 ? covariance * covariance / variances : 0;
        }
    }
}
