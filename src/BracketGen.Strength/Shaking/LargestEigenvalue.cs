namespace BracketGen.Strength.Shaking;

/// <summary>The largest eigenvalue of a symmetric 3 x 3 matrix: the largest quadratic form over all directions of length one.</summary>
/// <remarks>By the cosine of a third of an angle; O. K. Smith, Communications of the ACM 4 (1961) 168 (from memory).</remarks>
internal static class LargestEigenvalue
{
    /// <summary>The eigenvalue.</summary>
    /// <param name="m">The matrix: xx, yy, zz, xy, yz, zx.</param>
    public static double Of(ReadOnlySpan<double> m)
    {
        var mean = (m[0] + m[1] + m[2]) / 3;
        double x = m[0] - mean, y = m[1] - mean, z = m[2] - mean;
        var off = m[3] * m[3] + m[4] * m[4] + m[5] * m[5];
        var size = Math.Sqrt((x * x + y * y + z * z + 2 * off) / 6);
        if (!(size > 0))
        {
            return mean;
        }

        var determinant = x * (y * z - m[4] * m[4]) - m[3] * (m[3] * z - m[4] * m[5]) + m[5] * (m[3] * m[4] - y * m[5]);
        var cosine = Math.Clamp(determinant / (2 * size * size * size), -1, 1);
        return mean + 2 * size * Math.Cos(Math.Acos(cosine) / 3);
    }
}
