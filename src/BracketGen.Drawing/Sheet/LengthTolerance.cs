namespace BracketGen.Drawing.Sheet;

/// <summary>Permitted deviations of one dimension.</summary>
/// <remarks>Millimetres, or radians on an angle. <see cref="Lower"/> is not above <see cref="Upper"/>.</remarks>
public readonly record struct LengthTolerance
{
    /// <summary>The deviations <paramref name="lower"/> and <paramref name="upper"/>, with sign.</summary>
    /// <exception cref="ArgumentException">The lower one is above the upper one.</exception>
    public LengthTolerance(double lower, double upper)
    {
        if (!(lower <= upper))
        {
            throw new ArgumentException($"The lower deviation {lower} is above the upper one {upper}.", nameof(lower));
        }

        Lower = lower;
        Upper = upper;
    }

    /// <summary>Lower deviation.</summary>
    public double Lower { get; }

    /// <summary>Upper deviation.</summary>
    public double Upper { get; }

    /// <summary>The same deviation both ways.</summary>
    public static LengthTolerance PlusMinus(double deviation) => new(-deviation, deviation);
}
