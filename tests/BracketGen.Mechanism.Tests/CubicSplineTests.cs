using BracketGen.Design.Checks;
using BracketGen.Mechanism.Numerics;
using BracketGen.TestSupport;
using BracketGen.Words.Report;
using CsCheck;
using Reference = MathNet.Numerics.Interpolation;

namespace BracketGen.Mechanism.Tests;

public class CubicSplineTests
{
    /// <summary>
    /// With the slopes at both ends taken from our spline, Math.NET Numerics' clamped spline through the same points is the same
    /// curve; it solves its own system.
    /// </summary>
    [Fact]
    public void Open_splines_agree_with_math_net() => Gen.Double[-3, 3].Array[7].Check(50, y =>
    {
        double[] x = [0, 0.4, 1.1, 1.5, 2.7, 3, 4.2];
        var ours = CubicSpline.Open(x, y);
        var theirs = Reference.CubicSpline.InterpolateBoundaries(
            x, y, Reference.SplineBoundaryCondition.FirstDerivative, ours.At(0).First,
            Reference.SplineBoundaryCondition.FirstDerivative, ours.At(4.2).First);
        for (var at = 0.0; at <= 4.2; at += 0.07)
        {
            Assert.Equal(theirs.Interpolate(at), ours.At(at).Value, 1e-9);
            Assert.Equal(theirs.Differentiate(at), ours.At(at).First, 1e-8);
            Assert.Equal(theirs.Differentiate2(at), ours.At(at).Second, 1e-7);
        }
    });

    /// <summary>Not a knot: one cubic is given back exactly, ends included (de Boor 1978, ch. IV).</summary>
    [Fact]
    public void A_cubic_comes_back_as_itself()
    {
        double[] x = [-1, 0, 0.5, 2, 3.5];
        static double Cubic(double v) => 2 - v + 0.5 * v * v - 0.3 * v * v * v;
        var spline = CubicSpline.Open(x, [.. x.Select(Cubic)]);
        for (var at = -1.5; at < 4; at += 0.11)
        {
            Assert.Equal(Cubic(at), spline.At(at).Value, 1e-11);
            Assert.Equal(1 - 1.8 * at, spline.At(at).Second, 1e-10);
        }
    }

    [Fact]
    public void Closed_splines_repeat_smoothly() => Gen.Double[-3, 3].Array[6].Check(50, y =>
    {
        double[] x = [0, 0.4, 1.1, 1.5, 2.7, 3, 4.2];
        var spline = CubicSpline.Closed(x, [.. y, y[0]]);
        const double Tiny = 1e-9;
        foreach (var knot in x)
        {
            Assert.Equal(spline.At(knot - Tiny).First, spline.At(knot + Tiny).First, 1e-6);
            Assert.Equal(spline.At(knot - Tiny).Second, spline.At(knot + Tiny).Second, 1e-5);
        }

        Assert.Equal(spline.At(0.7).Value, spline.At(0.7 - 3 * 4.2).Value, 1e-9);
        Assert.Equal(y[2], spline.At(1.1).Value, 1e-12);
    });
}
