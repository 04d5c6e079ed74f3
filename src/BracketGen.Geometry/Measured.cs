namespace BracketGen.Geometry;

/// <summary>A number measured on the vehicle or the bench, with its ±.</summary>
/// <remarks>
/// The true value lies in <c>[Value - PlusMinus, Value + PlusMinus]</c>. The unit is that of the property that
/// holds it (mm, rad, N, N·mm). Default value: exactly zero.
/// </remarks>
/// <param name="Value">The reading.</param>
/// <param name="PlusMinus">Half-width of the interval that holds the true value; zero if it is exact.</param>
public readonly record struct Measured(double Value, double PlusMinus = 0)
{
    /// <summary>The minimum value the reading allows.</summary>
    public double Min => Value - PlusMinus;

    /// <summary>The maximum value the reading allows.</summary>
    public double Max => Value + PlusMinus;

    /// <summary>An exact number.</summary>
    public static implicit operator Measured(double value) => new(value);
}
