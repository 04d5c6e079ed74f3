using BracketGen.Geometry;
using MathNet.Numerics.LinearAlgebra;

namespace BracketGen.Photo;

/// <summary>The projective map of a face to its photograph.</summary>
/// <remarks>The vector (x, y, 1) times the matrix is (u w, v w, w).</remarks>
internal sealed class Homography
{
    private readonly double[] _h;

    private Homography(double[] h) => _h = h;

    /// <summary>An element of the matrix, row and column from 0.</summary>
    public double this[int row, int column] => _h[3 * row + column];

    /// <summary>
    /// The map that takes each point on the face nearest to its point in the photograph: the normalised direct linear transformation (R. Hartley and A. Zisserman,
    /// Multiple View Geometry in Computer Vision, 2nd edition, Cambridge 2004, algorithm 4.2). Four points with no three in line give it exactly.
    /// </summary>
    /// <param name="face">Four or more points on the face (mm), no three of four in line.</param>
    /// <param name="picture">The same points in the photograph (pixels).</param>
    public static Homography Of(IReadOnlyList<Vector2> face, IReadOnlyList<Vector2> picture)
    {
        var (a, sa) = Normal(face);
        var (b, sb) = Normal(picture);
        var rows = Matrix<double>.Build.Dense(Math.Max(9, 2 * face.Count), 9);
        for (var i = 0; i < face.Count; i++)
        {
            var (p, q) = (sa * (face[i] - a), sb * (picture[i] - b));
            rows.SetRow(2 * i, [p.X, p.Y, 1, 0, 0, 0, -q.X * p.X, -q.X * p.Y, -q.X]);
            rows.SetRow(2 * i + 1, [0, 0, 0, p.X, p.Y, 1, -q.Y * p.X, -q.Y * p.Y, -q.Y]);
        }

        // The right singular vector of the least singular value; then both normalisations are taken back.
        var n = rows.Svd().VT.Row(8);
        var normalised = Matrix<double>.Build.Dense(3, 3, (i, j) => n[3 * i + j]);
        var before = Matrix<double>.Build.DenseOfArray(new[,] { { sa, 0, -sa * a.X }, { 0, sa, -sa * a.Y }, { 0, 0, 1 } });
        var after = Matrix<double>.Build.DenseOfArray(new[,] { { 1 / sb, 0, b.X }, { 0, 1 / sb, b.Y }, { 0, 0, 1 } });
        var h = after * normalised * before;
        return new([.. Enumerable.Range(0, 9).Select(k => h[k / 3, k % 3])]);
    }

    /// <summary>Where a point on the face is in the photograph (pixels).</summary>
    public Vector2 Map(Vector2 p)
    {
        var w = _h[6] * p.X + _h[7] * p.Y + _h[8];
        return new((_h[0] * p.X + _h[1] * p.Y + _h[2]) / w, (_h[3] * p.X + _h[4] * p.Y + _h[5]) / w);
    }

    // Middle of the points, and the factor that makes their mean distance from it the root of two.
    private static (Vector2 Middle, double Factor) Normal(IReadOnlyList<Vector2> points)
    {
        var middle = CameraFit.Middle(points);
        return (middle, Math.Sqrt(2) / points.Average(p => p.DistanceTo(middle)));
    }
}
