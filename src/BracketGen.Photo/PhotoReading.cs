using System.Collections.Immutable;
using BracketGen.Geometry;
using MathNet.Numerics.LinearAlgebra;

namespace BracketGen.Photo;

/// <summary>Measures a throttle body in a photograph.</summary>
/// <remarks>
/// Everything that goes in has a spread: the camera as its marks tell it, each click, each height, how square the face is to the shaft. The spread of what comes out is theirs carried
/// through by difference quotients (JCGM 100:2008, 5.1.2 and 5.2.2).
/// </remarks>
public static class PhotoReading
{
    /// <summary>Each ± is this many standard deviations: 2 hold 95 of 100 where errors are small and many; the rest is for those that are not.</summary>
    internal const double Coverage = 2.2;

    /// <summary>How far the face may be out of square with the shaft (degrees), each way, in each of two directions: a milled face (common practice, no source).</summary>
    public const double FaceTilt = 0.3;

    // A ± of the camera's height over this part of it cannot take heights out.
    private const double BadlyKnown = 0.2;

    // A mark this many standard deviations off was clicked wrong or lies wrong.
    private const double MarkWrong = 5;

    // The same for all marks and all that is known of cameras together.
    private const double AllWrong = 4;

    // A lens that shifts a mark by this part of half the diagonal is beyond what was tried.
    private const double BendsTooMuch = 0.06;

    // Area of the least triangle of four marks, as a part of the square of their spread: below it three are in line.
    private const double InLine = 0.02;

    /// <summary>What the photograph tells.</summary>
    /// <param name="photograph">The photograph and its marks.</param>
    /// <param name="body">What was marked of the throttle body.</param>
    public static PhotoAnswer Of(Photograph photograph, MarkedBody body)
    {
        if (!HasFour(photograph.Marks))
        {
            return No(PhotoProblem.TooFewMarks);
        }

        var points = PointsOf(body);
        var (click, isMeasured) = CameraFit.ClickOf([.. photograph.Marks.Select(m => m.Clicks), .. points.Where(p => !p.IsRim).Select(p => p.Clicks)]);
        if (CameraFit.Of(photograph, click) is not { } found)
        {
            return No(PhotoProblem.Mirrored);
        }

        var camera = found.Camera;
        var scale = PixelsPerMillimetre(camera);
        var worst = found.Marks.MaxBy(m => m.OffOverDeviation);
        var bend = found.Marks.Max(m => m.Bend);
        if (worst.OffOverDeviation > MarkWrong || found.Squares > Surprise(2 * photograph.Marks.Length + Camera.Known(photograph) - Camera.Count))
        {
            return WrongMark(photograph, click, worst, scale);
        }

        if (bend > BendsTooMuch * found.Half)
        {
            return new(PhotoProblem.LensBends, 0, bend / scale, null);
        }

        var inputs = new PhotoInputs(found, photograph.Height, body, click, scale);
        var height = inputs.Spread(x => [inputs.Camera(x).Eye.Z]);
        var offFace = points.Select(p => p.Height).Concat(body.Edge is { } rim ? [rim.Height] : []).ToArray();
        if (offFace.Any(h => h.Value != 0) && height.PlusMinus(0) > BadlyKnown * height.Values[0])
        {
            return No(PhotoProblem.DistanceUnknown);
        }

        if (offFace.Any(h => h.Max >= height.Values[0]))
        {
            return No(PhotoProblem.AboveCamera);
        }

        if (!inputs.HasCircles())
        {
            return No(PhotoProblem.NoCircle);
        }

        var tilt = new Angle(Math.Acos(Math.Clamp(-camera.Ahead.Z, -1, 1)));
        return new(null, 0, 0, PhotoMeasuring.Of(inputs, body) with
        {
            CameraHeight = new(height.Values[0], height.PlusMinus(0)),
            Tilt = tilt,
            Bend = bend / scale,
            MarksOff = found.Marks.Max(m => m.Off) / scale,
            Click = click / scale,
            IsClickMeasured = isMeasured,
            Marks = photograph.Marks.Length,
        });
    }

    /// <summary>How far the face may be out of square with the shaft, each way, as a slope.</summary>
    internal static double TiltSlope => Math.Tan(Angle.FromDegrees(FaceTilt).Radians);

    // A sum of squares that hardly ever comes by chance: E. B. Wilson and M. M. Hilferty, Proc. Nat. Acad. Sci. 17 (1931) 684-688.
    private static double Surprise(int freedom) => freedom * Math.Pow(1 - 2.0 / (9 * freedom) + AllWrong * Math.Sqrt(2.0 / (9 * freedom)), 3);

    // The mark without which the others fit best: a wrong corner bends the camera so that its neighbours look worse than it does.
    private static PhotoAnswer WrongMark(Photograph photograph, double click, MarkRest worst, double scale)
    {
        var best = (Squares: double.PositiveInfinity, Number: worst.Number, worst.Off);
        foreach (var mark in photograph.Marks)
        {
            var others = photograph with { Marks = photograph.Marks.Remove(mark) };
            if (HasFour(others.Marks) && CameraFit.Of(others, click) is { } found && found.Squares < best.Squares)
            {
                best = (found.Squares, mark.Number, found.Camera.See(Vector3.From(found.Camera.Size * mark.At)).DistanceTo(CameraFit.Middle(mark.Clicks)));
            }
        }

        return new(PhotoProblem.MarkOff, best.Number, best.Off / scale, null);
    }

    private static PhotoAnswer No(PhotoProblem problem) => new(problem, 0, 0, null);

    private static ImmutableArray<MarkedPoint> PointsOf(MarkedBody body) =>
    [
        body.Shaft, .. body.Pocket is { } pocket ? [pocket] : Array.Empty<MarkedPoint>(), .. body.Holes.OfType<MarkedPoint>(),
    ];

    private static double PixelsPerMillimetre(Camera camera)
    {
        var (here, there) = (camera.See(Vector3.Zero), camera.See(new(1, 0, 0)));
        return here.DistanceTo(there);
    }

    // Some four marks of which no three are in line.
    private static bool HasFour(ImmutableArray<PhotoMark> marks)
    {
        Vector2[] at = [.. marks.Select(m => m.At)];
        for (var a = 0; a < at.Length; a++)
        {
            for (var b = a + 1; b < at.Length; b++)
            {
                for (var c = b + 1; c < at.Length; c++)
                {
                    for (var d = c + 1; d < at.Length; d++)
                    {
                        Vector2[] four = [at[a], at[b], at[c], at[d]];
                        if (IsSound(four) && IsSound([.. new[] { a, b, c, d }.Select(i => CameraFit.Middle(marks[i].Clicks))]))
                        {
                            return true;
                        }
                    }
                }
            }
        }

        return false;
    }

    private static bool IsSound(Vector2[] four)
    {
        var middle = CameraFit.Middle(four);
        var spread = four.Max(p => p.DistanceTo(middle));
        return Enumerable.Range(0, 4).All(i =>
        {
            var (p, q, r) = (four[i], four[(i + 1) % 4], four[(i + 2) % 4]);
            return Math.Abs((q - p).Cross(r - p)) > InLine * spread * spread;
        });
    }
}

/// <summary>Values with their covariance.</summary>
internal sealed record Carried(double[] Values, Matrix<double> Covariance)
{
    /// <summary>The ± of a value.</summary>
    public double PlusMinus(int i) => PhotoReading.Coverage * Math.Sqrt(Math.Max(0, Covariance[i, i]));

    /// <summary>A value with its ±.</summary>
    public Measured this[int i] => new(Values[i], PlusMinus(i));
}
