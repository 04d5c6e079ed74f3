using BracketGen.Geometry;
using BracketGen.Mechanism.Numerics;

namespace BracketGen.Mechanism.Uncertainty;

/// <summary>Distribution of a quantity's true value about its given value.</summary>
public enum Spread
{
    /// <summary>
    /// Anywhere between the limits, all equally likely: a reading with its ± (JCGM 100:2008, GUM, 4.3.7).
    /// </summary>
    Uniform,

    /// <summary>
    /// Normal, ± being two standard deviations: a process that keeps its tolerance about 95 times in 100. A shop that holds
    /// ± to three does better; two is on the safe side.
    /// </summary>
    Normal,
}

/// <summary>A quantity that is known only to within ±.</summary>
/// <param name="Name">What it is, for people.</param>
/// <param name="Value">The value with its ±.</param>
/// <param name="Spread">Distribution of the true value.</param>
/// <param name="MeasuredAgain">Whether it could be measured better; a manufacturing tolerance could not.</param>
public sealed record UncertainQuantity(string Name, Measured Value, Spread Spread, bool MeasuredAgain)
{
    /// <summary>The value that is exceeded with probability 1 - <paramref name="probability"/>.</summary>
    public double Quantile(double probability) => Value.Value + Value.PlusMinus * (Spread == Spread.Uniform
        ? 2 * probability - 1
        : NormalQuantile.At(probability) / 2);

    /// <summary>A reading taken on the vehicle or the bench.</summary>
    public static UncertainQuantity Reading(string name, Measured value) => new(name, value, Spread.Uniform, true);

    /// <summary>A tolerance of manufacture.</summary>
    public static UncertainQuantity Tolerance(string name, double plusMinus) =>
        new(name, new(0, plusMinus), Spread.Normal, false);
}
