namespace BracketGen.Mechanism.Numerics;

/// <summary>What a number of failures among independent trials says of the probability of failing.</summary>
internal static class BinomialBound
{
    /// <summary>The one-sided risk that the true probability is above the bound.</summary>
    public const double Risk = 0.05;

    // The normal quantile of that risk. With so many failures the binomial distribution is normal to a hundredth of its own spread.
    private const double Quantile = 1.6449;
    private const int Many = 1_000;

    private const int Halvings = 60;

    /// <summary>Upper bound of the probability of failing, 0 to 1: with it, so few failures or fewer come in 5 of 100 series.</summary>
    /// <remarks>
    /// C. J. Clopper and E. S. Pearson, Biometrika 26 (1934) 404-413: the root of Σ C(n, i) qⁱ (1 - q)ⁿ⁻ⁱ = 0.05 over i up to the failures, by
    /// halving; beyond a thousand failures and a thousand successes E. B. Wilson's bound (J. Amer. Statist. Assoc. 22 (1927) 209-212).
    /// </remarks>
    /// <param name="failures">Number of failures.</param>
    /// <param name="trials">Number of trials, at least 1.</param>
    public static double Upper(int failures, int trials)
    {
        if (failures >= trials)
        {
            return 1;
        }

        if (failures > Many && trials - failures > Many)
        {
            double n = trials, p = failures / n, z2 = Quantile * Quantile;
            return (p + z2 / (2 * n) + Quantile * Math.Sqrt(p * (1 - p) / n + z2 / (4 * n * n))) / (1 + z2 / n);
        }

        var (low, high) = ((double)failures / trials, 1.0);
        for (var i = 0; i < Halvings; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = AtMost(failures, trials, middle) > Risk ? (middle, high) : (low, middle);
        }

        return high;
    }

    // P(F <= failures): terms from the last one downwards, each from its neighbour, scaled by the largest so that nothing underflows.
    private static double AtMost(int failures, int trials, double q)
    {
        if (q >= 1)
        {
            return 0;
        }

        double term = trials * Math.Log(1 - q), odds = Math.Log(q / (1 - q)), most = term;
        var logs = new double[failures + 1];
        logs[0] = term;
        for (var i = 1; i <= failures; i++)
        {
            term += Math.Log((double)(trials - i + 1) / i) + odds;
            logs[i] = term;
            most = Math.Max(most, term);
        }

        var sum = 0.0;
        foreach (var log in logs)
        {
            sum += Math.Exp(log - most);
        }

        return sum * Math.Exp(most);
    }
}
