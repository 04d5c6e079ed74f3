namespace BracketGen.Strength.Analysis;

/// <summary>A field of stress on both surfaces that adds up like a vector: five numbers a place, whose root of squares is the von Mises stress.</summary>
/// <remarks>
/// Von Mises stress is a norm of the stress deviator, which has five independent numbers. With them a sum of fields, an amplitude with its phase and a mean square
/// (D. J. Segalman, C. W. G. Fulcher, G. M. Reese, R. V. Field, "An efficient method for calculating RMS von Mises stress in a random vibration environment",
/// Proceedings of the 16th International Modal Analysis Conference, 1998; from memory) are plain sums.
/// </remarks>
internal sealed class StressField
{
    /// <summary>Numbers of one place.</summary>
    public const int Size = 5;

    private readonly double[] _values;

    /// <summary>The field of the mean stress tensors at the nodes.</summary>
    /// <param name="tensors">Twelve numbers a node: xx yy zz xy yz zx (MPa) on top, then at the bottom.</param>
    public StressField(ReadOnlySpan<double> tensors)
    {
        Places = tensors.Length / 6;
        _values = new double[Size * Places];
        for (var p = 0; p < Places; p++)
        {
            var s = tensors.Slice(6 * p, 6);
            var y = _values.AsSpan(Size * p, Size);
            y[0] = HalfRootOf3 * (s[0] - s[1]);
            y[1] = s[2] - (s[0] + s[1]) / 2;
            y[2] = RootOf3 * s[3];
            y[3] = RootOf3 * s[4];
            y[4] = RootOf3 * s[5];
        }
    }

    /// <summary>Number of places: top and bottom of every node, in that order.</summary>
    public int Places { get; }

    /// <summary>The five numbers of a place (MPa).</summary>
    public ReadOnlySpan<double> At(int place) => _values.AsSpan(Size * place, Size);

    private static readonly double RootOf3 = Math.Sqrt(3), HalfRootOf3 = Math.Sqrt(3) / 2;
}
