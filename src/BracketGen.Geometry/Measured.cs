namespace BracketGen.Geometry;

/// <summary>How a number came to be known.</summary>
public enum Evidence
{
    /// <summary>Nobody measured it: a usual value stands in.</summary>
    Assumed,

    /// <summary>A part's profile or the job gives it.</summary>
    Given,

    /// <summary>It was measured on the vehicle or the bench.</summary>
    Measured,
}

/// <summary>A number measured on the vehicle or the bench, with its ±, and how it is known.</summary>
/// <remarks>
/// The true value lies in <c>[Value - PlusMinus, Value + PlusMinus]</c>. The unit is that of the property that
/// holds it (mm, rad, N, N·mm). Default value: zero, assumed.
/// </remarks>
/// <param name="Value">The reading.</param>
/// <param name="PlusMinus">Half-width of the interval that holds the true value; zero if it is exact.</param>
/// <param name="Evidence">How it is known.</param>
public readonly record struct Measured(double Value, double PlusMinus = 0, Evidence Evidence = Evidence.Measured)
{
    /// <summary>The minimum value the reading allows.</summary>
    public double Min => Value - PlusMinus;

    /// <summary>The maximum value the reading allows.</summary>
    public double Max => Value + PlusMinus;

    /// <summary>An exact number, given.</summary>
    public static implicit operator Measured(double value) => new(value, 0, Evidence.Given);
}
