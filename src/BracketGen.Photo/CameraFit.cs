using System.Collections.Immutable;
using BracketGen.Geometry;
using MathNet.Numerics.LinearAlgebra;

namespace BracketGen.Photo;

/// <summary>Finds the camera that took a photograph from the marks in it, and how well they tell.</summary>
/// <remarks>
/// Least squares over place, turning, focal length, axis and distortion of the lens and the scale of the print (one view of a plane: Z. Zhang, IEEE Trans. Pattern Analysis and Machine
/// Intelligence 22 (2000) 1330-1334; steps after Levenberg and Marquardt). What one photograph cannot tell is held by what is known of any camera before; so nothing is undecided, and what is
/// badly known has a wide spread. The spread of all parameters together is the inverse of the normal equations (JCGM 100:2008, H.3).
/// </remarks>
internal static class CameraFit
{
    /// <summary>Standard deviation of a click (pixels) where repeated clicks do not tell (common practice, no source).</summary>
    public const double UsualClick = 2;

    // Nobody clicks better than this, however alike two clicks are (pixels).
    private const double BestClick = 0.7;

    // What is known of a camera before its photograph, as standard deviations: the logarithm of the focal length over the longer side, the axis as a part of the longer side, the distortion.
    // From memory of telephones and compact cameras, wide on purpose.
    private const double FocalBefore = 0.7, AxisBefore = 0.01, BendBefore = 0.06, BendMoreBefore = 0.03;

    private static readonly double[] FocalStarts = [0.6, 0.9, 1.3, 2, 3.2];

    private const int MaxSteps = 60;

    // A step that gains less than this part of the sum of squares ends the fit.
    private const double SmallGain = 1e-10;

    // Damping of the first step, as a part of the slopes' own squares: the start is near.
    private const double FirstDamping = 1e-3;

    // What is said to be exact is known this well (mm, or a part of one): no row of the equations without an end.
    private const double NeverExact = 1e-6;

    // Step of a difference quotient, as a part of a parameter's natural size.
    private const double Difference = 1e-5;

    /// <summary>The standard deviation of a click: from how far clicks on the same thing lie apart, where there are enough of them.</summary>
    /// <param name="clicks">Clicks on the same thing, for each thing (pixels).</param>
    /// <returns>The deviation along each axis (pixels), and whether it was measured.</returns>
    public static (double Deviation, bool IsMeasured) ClickOf(IEnumerable<IReadOnlyList<Vector2>> clicks)
    {
        const int enough = 8;
        var (squares, freedom) = (0.0, 0);
        foreach (var same in clicks.Where(c => c.Count > 1))
        {
            var middle = Middle(same);
            squares += same.Sum(c => (c - middle).Dot(c - middle));
            freedom += 2 * (same.Count - 1);
        }

        return freedom < enough ? (UsualClick, false) : (Math.Max(BestClick, Math.Sqrt(squares / freedom)), true);
    }

    /// <summary>The middle of some points.</summary>
    public static Vector2 Middle(IReadOnlyList<Vector2> points) => points.Aggregate(Vector2.Zero, (sum, p) => sum + p) / points.Count;

    /// <summary>The camera of a photograph; null where no camera that looks at the face sees the marks so, as in a mirrored photograph.</summary>
    /// <param name="photograph">The photograph: four or more marks, no three of four in line.</param>
    /// <param name="click">Standard deviation of a click (pixels).</param>
    public static CameraFound? Of(Photograph photograph, double click)
    {
        double longer = Math.Max(photograph.Width, photograph.Height);
        var middle = new Vector2(photograph.Width / 2.0, photograph.Height / 2.0);
        var half = middle.Length;
        var marks = photograph.Marks;
        Vector2[] seen = [.. marks.Select(m => Middle(m.Clicks))];
        var map = Homography.Of([.. marks.Select(m => m.At)], [.. seen.Select(s => s - middle)]);
        CameraFound? best = null;
        foreach (var start in FocalStarts)
        {
            if (StartOf(map, start * longer) is not var (rows, place))
            {
                continue;
            }

            double[] parameters = [0, 0, 0, place.X, place.Y, place.Z, Math.Log(start * longer), middle.X, middle.Y, 0, 0, photograph.Scale.Value];
            var problem = new Problem(photograph, seen, rows, half, longer, middle, click, parameters);
            if (problem.Solve(parameters) is { } found && found.Camera.Eye.Z > 0 && (best is null || found.Squares < best.Squares))
            {
                best = found;
            }
        }

        return best;
    }

    // Turning and place of a camera of this focal length, from the columns of the map (Zhang, section 3.1).
    private static ((Vector3, Vector3, Vector3) Rows, Vector3 Place)? StartOf(Homography h, double focal)
    {
        Vector3 Column(int j) => new(h[0, j] / focal, h[1, j] / focal, h[2, j]);
        var (a, b, place) = (Column(0), Column(1), Column(2));
        var size = 2 / (a.Length + b.Length) * (place.Z < 0 ? -1 : 1);
        var x = (size * a).Unit;
        var y = size * b;
        y = (y - y.Dot(x) * x).Unit;
        var z = x.Cross(y);
        return double.IsFinite(size) ? ((new(x.X, y.X, z.X), new(x.Y, y.Y, z.Y), new(x.Z, y.Z, z.Z)), size * place) : null;
    }

    private sealed class Problem
    {
        private readonly Photograph _photograph;
        private readonly Vector2[] _seen;
        private readonly (Vector3, Vector3, Vector3) _rows;
        private readonly double _half;
        private readonly double[] _sizes, _before, _deviations;
        private readonly double[] _markDeviations;

        public Problem(Photograph photograph, Vector2[] seen, (Vector3, Vector3, Vector3) rows, double half, double longer, Vector2 middle, double click, double[] start)
        {
            (_photograph, _seen, _rows, _half) = (photograph, seen, rows, half);
            var far = Math.Abs(start[Camera.Place + 2]);
            _sizes = [1, 1, 1, far, far, far, 1, longer, longer, 1, 1, 1];
            _before = [0, 0, 0, 0, 0, 0, Math.Log(longer), middle.X, middle.Y, 0, 0, photograph.Scale.Value];
            _deviations = [0, 0, 0, 0, 0, 0, FocalBefore, AxisBefore * longer, AxisBefore * longer, BendBefore, BendMoreBefore, Uniform(photograph.Scale.PlusMinus)];
            var camera = new Camera(start, rows, half);
            _markDeviations = [.. photograph.Marks.Select(m => MarkDeviation(camera, m, click))];
        }

        public CameraFound? Solve(double[] parameters)
        {
            var damping = FirstDamping;
            var rest = Rest(parameters);
            for (var step = 0; step < MaxSteps && damping < 1e12; step++)
            {
                var (normal, right) = Normal(parameters, rest);
                var damped = normal.Clone();
                for (var i = 0; i < Camera.Count; i++)
                {
                    damped[i, i] *= 1 + damping;
                }

                var by = damped.Cholesky().Solve(right);
                double[] next = [.. parameters.Select((p, i) => p + by[i] * _sizes[i])];
                var then = Rest(next);
                var gain = Squares(rest) - Squares(then);
                if (!(gain >= 0))
                {
                    damping *= 10;
                    continue;
                }

                (parameters, rest, damping) = (next, then, damping / 5);
                if (gain <= SmallGain * (1 + Squares(rest)))
                {
                    break;
                }
            }

            if (!double.IsFinite(Squares(rest)))
            {
                return null;
            }

            var spread = Normal(parameters, rest).Normal.Inverse();
            var scaled = Matrix<double>.Build.Dense(Camera.Count, Camera.Count, (i, j) => spread[i, j] * _sizes[i] * _sizes[j]);
            var camera = new Camera(parameters, _rows, _half);
            return new(parameters, _rows, _half, scaled, Squares(rest), [.. _photograph.Marks.Select((m, i) => Of(camera, m, i))]);
        }

        private MarkRest Of(Camera camera, PhotoMark mark, int i)
        {
            var off = camera.See(On(camera, mark)) - _seen[i];
            var straight = camera.Straight(_seen[i]) - _seen[i];
            return new(mark.Number, off.Length, off.Length / _markDeviations[i], straight.Length);
        }

        // Mark by mark what the camera sees less what was clicked, then what is known before, each over its standard deviation.
        private double[] Rest(double[] parameters)
        {
            var camera = new Camera(parameters, _rows, _half);
            var rest = new List<double>();
            for (var i = 0; i < _seen.Length; i++)
            {
                var off = (camera.See(On(camera, _photograph.Marks[i])) - _seen[i]) / _markDeviations[i];
                rest.Add(off.X);
                rest.Add(off.Y);
            }

            for (var i = Camera.Focal; i < Camera.Count; i++)
            {
                rest.Add((parameters[i] - _before[i]) / _deviations[i]);
            }

            if (_photograph.Distance is { } distance)
            {
                rest.Add((camera.Eye.Length - distance.Value) / Uniform(distance.PlusMinus));
            }

            return [.. rest];
        }

        private (Matrix<double> Normal, Vector<double> Right) Normal(double[] parameters, double[] rest)
        {
            var slopes = Matrix<double>.Build.Dense(rest.Length, Camera.Count);
            for (var j = 0; j < Camera.Count; j++)
            {
                var step = Difference * _sizes[j];
                var (up, down) = (Rest(With(parameters, j, step)), Rest(With(parameters, j, -step)));
                for (var i = 0; i < rest.Length; i++)
                {
                    slopes[i, j] = (up[i] - down[i]) / (2 * Difference);
                }
            }

            return (slopes.TransposeThisAndMultiply(slopes), -slopes.TransposeThisAndMultiply(Vector<double>.Build.Dense(rest)));
        }

        private static Vector3 On(Camera camera, PhotoMark mark) => Vector3.From(camera.Size * mark.At);

        // A click's own deviation, the place of the mark on the paper, and the paper that stands off the face, seen from where the camera stands.
        private static double MarkDeviation(Camera camera, PhotoMark mark, double click)
        {
            const double step = 0.1;
            var at = On(camera, mark);
            var here = camera.See(at);
            var perMillimetre = Math.Max((camera.See(at + new Vector3(step, 0, 0)) - here).Length, (camera.See(at + new Vector3(0, step, 0)) - here).Length) / step;
            var perHeight = (camera.See(at + new Vector3(0, 0, step)) - here).Length / step;
            var (place, paper) = (Uniform(mark.PlusMinus) * perMillimetre, Uniform(PrintedTarget.PaperPlusMinus) * perHeight);
            return Math.Sqrt(click * click / mark.Clicks.Length + place * place + paper * paper);
        }

        private static double Squares(double[] rest) => rest.Sum(r => r * r);
    }

    /// <summary>Standard deviation of what lies anywhere within a ± (JCGM 100:2008, 4.3.7); never zero, so that all stays decided.</summary>
    public static double Uniform(double plusMinus) => Math.Max(plusMinus, NeverExact) / Math.Sqrt(3);

    private static double[] With(double[] parameters, int j, double by) => [.. parameters.Select((p, i) => i == j ? p + by : p)];
}

/// <summary>A mark beside the camera that was found.</summary>
/// <param name="Number">The mark.</param>
/// <param name="Off">From where it was clicked to where the camera sees it (pixels).</param>
/// <param name="OffOverDeviation">The same over its standard deviation.</param>
/// <param name="Bend">How far the lens's distortion shifts it (pixels).</param>
internal readonly record struct MarkRest(int Number, double Off, double OffOverDeviation, double Bend);

/// <summary>A camera that was found, and how well it is known.</summary>
/// <param name="Parameters">Its parameters.</param>
/// <param name="Rows">What its turning starts from.</param>
/// <param name="Half">Half the diagonal of the photograph (pixels).</param>
/// <param name="Spread">Covariance of the parameters.</param>
/// <param name="Squares">Sum of the squares that were made least.</param>
/// <param name="Marks">Each mark.</param>
internal sealed record CameraFound(
    double[] Parameters, (Vector3, Vector3, Vector3) Rows, double Half, Matrix<double> Spread, double Squares, ImmutableArray<MarkRest> Marks)
{
    /// <summary>The camera.</summary>
    public Camera Camera => With(Parameters);

    /// <summary>The same camera with other parameters.</summary>
    public Camera With(IReadOnlyList<double> parameters) => new(parameters, Rows, Half);
}
