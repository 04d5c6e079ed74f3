namespace BracketGen.Geometry;

/// <summary>An angle measured on the vehicle or the bench, with its ±, and how it is known.</summary>
/// <remarks>
/// The true angle lies in <c>[Value - PlusMinus, Value + PlusMinus]</c>. Default value: zero, assumed.
/// </remarks>
/// <param name="Value">The reading.</param>
/// <param name="PlusMinus">Half-width of the interval that holds the true angle; zero if it is exact.</param>
/// <param name="Evidence">How it is known.</param>
public readonly record struct MeasuredAngle(Angle Value, Angle PlusMinus = default, Evidence Evidence = Evidence.Measured)
{
    /// <summary>The reading in radians.</summary>
    public Measured Radians => new(Value.Radians, PlusMinus.Radians, Evidence);

    /// <summary>The angle of a reading in radians.</summary>
    public static MeasuredAngle FromRadians(Measured reading) => new(new(reading.Value), new(reading.PlusMinus), reading.Evidence);

    /// <summary>An exact angle, given.</summary>
    public static implicit operator MeasuredAngle(Angle value) => new(value, Angle.Zero, Evidence.Given);
}
