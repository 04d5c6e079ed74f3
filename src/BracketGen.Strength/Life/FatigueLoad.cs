namespace BracketGen.Strength.Life;

/// <summary>A stress that swings, and how often.</summary>
/// <param name="Amplitude">Half of its range (MPa).</param>
/// <param name="Mean">Its middle (MPa), zero or more.</param>
/// <param name="Cycles">How often over the life.</param>
public readonly record struct FatigueLoad(double Amplitude, double Mean, double Cycles)
{
    /// <summary>A stress (MPa) that comes and goes: mean and amplitude are each half of it.</summary>
    public static FatigueLoad FromZero(double stress, double cycles) => new(stress / 2, stress / 2, cycles);
}

/// <summary>How many times all loads may grow before the sheet cracks within the life.</summary>
public static class FatigueFactor
{
    /// <summary>The factor for one load: Soderberg's line σ_a/S + σ_m/S_y = (1 - σ_c/S_y)/n.</summary>
    /// <remarks>
    /// J. E. Shigley, C. R. Mischke, Mechanical Engineering Design, chapter on fatigue under fluctuating stress; the constant stress σ_c does not grow with the load, as that of a preload.
    /// </remarks>
    /// <param name="load">The load.</param>
    /// <param name="line">What the metal withstands.</param>
    /// <param name="yield">Yield strength (MPa).</param>
    /// <param name="constant">Stress that is always there (MPa), zero or more.</param>
    /// <param name="edge">Part of the amplitude that a cut edge withstands, above 0 to 1.</param>
    public static double Of(FatigueLoad load, SnLine line, double yield, double constant = 0, double edge = 1) => load.Amplitude == 0 && load.Mean == 0
        ? double.PositiveInfinity
        : Math.Max(0, 1 - constant / yield) / (load.Amplitude / (edge * line.Amplitude(load.Cycles)) + load.Mean / yield);

    /// <summary>The factor for several loads one after another: their damages add up to one (Palmgren and Miner).</summary>
    /// <remarks>
    /// n is found where Σ N_i/N(n σ_i) = 1, with the amplitude n σ_a/(1 - (σ_c + n σ_m)/S_y) of Soderberg's line, by halving between two bounds: no load alone has a smaller factor, and with k
    /// loads each of which may do a k-th of the damage the factor is no larger. Parameters as above.
    /// </remarks>
    public static double Of(ReadOnlySpan<FatigueLoad> loads, SnLine line, double yield, double constant = 0, double edge = 1)
    {
        double low = double.PositiveInfinity, high = double.PositiveInfinity;
        foreach (var load in loads)
        {
            high = Math.Min(high, Of(load, line, yield, constant, edge));
            low = Math.Min(low, Of(load with { Cycles = loads.Length * load.Cycles }, line, yield, constant, edge));
        }

        if (loads.Length < 2 || !(low < high))
        {
            return high;
        }

        for (var step = 0; step < 50; step++)
        {
            var middle = (low + high) / 2;
            var damage = 0.0;
            foreach (var load in loads)
            {
                damage += DamageOf(load, middle, line, yield, constant, edge);
            }

            (low, high) = damage <= 1 ? (middle, high) : (low, middle);
        }

        return low;
    }

    /// <summary>Part of the life that a load uses up when it is <paramref name="times"/> as large; infinite where it breaks the sheet at once.</summary>
    internal static double DamageOf(FatigueLoad load, double times, SnLine line, double yield, double constant, double edge)
    {
        var left = 1 - (constant + times * load.Mean) / yield;
        return left > 0 ? load.Cycles / line.Cycles(times * load.Amplitude / (edge * left)) : double.PositiveInfinity;
    }
}
