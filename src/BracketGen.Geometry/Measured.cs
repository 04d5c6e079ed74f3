namespace BracketGen.Geometry;

/// <summary>A number taken from the vehicle or the bench, with how well it was measured.</summary>
/// <remarks>
/// The true value is taken to lie in <c>[Value - PlusMinus, Value + PlusMinus]</c>. The unit is that of the property that
/// holds it (mm, rad, N, N·mm). Default value: exactly zero.
/// </remarks>
/// <param name="Value">The reading.</param>
/// <param name="PlusMinus">Half-width of the interval that holds the true value; zero where it is taken as exact.</param>
public readonly record struct Measured(double Value, double PlusMinus = 0)
{
    /// <summary>The smallest value the reading allows.</summary>
    public double Least => Value - PlusMinus;

    /// <summary>The largest value the reading allows.</summary>
    public double Most => Value + PlusMinus;

    /// <summary>An exact number.</summary>
    public static implicit operator Measured(double value) => new(value);
}
