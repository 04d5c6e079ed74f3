using System.Collections.Immutable;

namespace BracketGen.Mechanism.Uncertainty;

/// <summary>The minimum and maximum of each output over the corners of the box of all ±.</summary>
/// <remarks>
/// Every corner up to ten uncertain inputs, beyond that the corner towards which each input pulls, then any single input reversed while that
/// makes it worse. That is the true extreme if the output rises or falls steadily in every input.
/// </remarks>
internal sealed class WorstCase
{
    private const int MostForAll = 10;

    private readonly ImmutableArray<UncertainQuantity> _all;
    private readonly int[] _uncertain;
    private readonly double[] _at;
    private readonly double[] _least;
    private readonly double[] _most;
    private readonly UncertainModel _model;

    /// <summary>The search, not begun.</summary>
    /// <param name="all">The inputs.</param>
    /// <param name="uncertain">Numbers of those with ±.</param>
    /// <param name="values">The value of every input.</param>
    /// <param name="outputs">Number of outputs.</param>
    /// <param name="model">The model.</param>
    public WorstCase(ImmutableArray<UncertainQuantity> all, int[] uncertain, double[] values, int outputs, UncertainModel model)
    {
        (_all, _uncertain, _at, _model) = (all, uncertain, [.. values], model);
        (_least, _most) = (new double[outputs], new double[outputs]);
        Array.Fill(_least, double.PositiveInfinity);
        Array.Fill(_most, double.NegativeInfinity);
    }

    /// <summary>The extremes.</summary>
    public (double[] Least, double[] Most) Find()
    {
        if (_uncertain.Length <= MostForAll)
        {
            for (var corner = 0; corner < 1 << _uncertain.Length; corner++)
            {
                Try(k => (corner >> k & 1) == 0 ? -1 : 1);
            }
        }
        else
        {
            FollowThePull();
        }

        return (_least, _most);
    }

    private void FollowThePull()
    {
        double[][] up = [.. _uncertain.Select((_, k) => Try(i => i == k ? 1 : 0))];
        double[][] down = [.. _uncertain.Select((_, k) => Try(i => i == k ? -1 : 0))];
        for (var o = 0; o < _least.Length; o++)
        {
            foreach (var way in new[] { 1, -1 })
            {
                Worsen(o, way, [.. _uncertain.Select((_, k) => up[k][o] >= down[k][o] ? way : -way)]);
            }
        }
    }

    // Reverses one input after another as long as that makes the output worse.
    private void Worsen(int output, int way, int[] signs)
    {
        var best = way * Try(k => signs[k])[output];
        for (var k = 0; k < signs.Length; k++)
        {
            signs[k] = -signs[k];
            var turned = way * Try(i => signs[i])[output];
            if (turned > best)
            {
                best = turned;
                k = -1;
            }
            else
            {
                signs[k] = -signs[k];
            }
        }
    }

    private double[] Try(Func<int, int> sign)
    {
        for (var k = 0; k < _uncertain.Length; k++)
        {
            var q = _all[_uncertain[k]].Value;
            _at[_uncertain[k]] = q.Value + sign(k) * q.PlusMinus;
        }

        var result = new double[_least.Length];
        _model(_at, result);
        for (var o = 0; o < result.Length; o++)
        {
            _least[o] = Math.Min(_least[o], result[o]);
            _most[o] = Math.Max(_most[o], result[o]);
        }

        return result;
    }
}
