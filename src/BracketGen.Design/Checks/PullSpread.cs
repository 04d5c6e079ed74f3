using BracketGen.Design.Inputs;
using BracketGen.Geometry;
using BracketGen.Mechanism.Grooves;
using BracketGen.Mechanism.Motion;

namespace BracketGen.Design.Checks;

/// <summary>What the spread of the measurements adds to the over-travel, at the least and whatever bracket holds the stop.</summary>
/// <remarks>
/// On a round groove from which the wire does not lift, the over-travel is pull - free play - radius × rotation - lost motion: its deviations are those of readings, each anywhere within its ±,
/// and a product that is left aside with its full size. The quantile of a sum of independent symmetric deviations with one peak is no less than that of a part of them, for any probability from three quarters on: with S the
/// part's chance to exceed q, convex above zero, and Y the rest, E[S(q - Y) + S(q + Y)]/2 ≥ S(q). So what depends on the bracket is left out.
/// </remarks>
internal static class PullSpread
{
    // A deviation this small beside the largest adds nothing to speak of, and cancels badly in the sum below.
    private const double TooSmall = 0.02;

    // The wire keeps this much groove at the wide-open stop, so that deviations within the ± do not lift it off (rad).
    private static readonly Angle KeptWrap = Angle.FromDegrees(5);

    /// <summary>The 99 in 100 quantile of the over-travel is more above its nominal value than this (mm): zero where the groove is not round.</summary>
    /// <param name="job">The job, opening counter-clockwise.</param>
    /// <param name="travel">The travel at the stop.</param>
    /// <param name="lost">Lost motion at the wide-open stop, or less (mm): the wider its deviation, the larger the quantile.</param>
    public static double AtLeast(Job job, Travel travel, double lost)
    {
        var quadrant = job.Body.Quadrant;
        if (quadrant.Groove is not CircularGroove groove || travel.WideOpen.Wrap < KeptWrap)
        {
            return 0;
        }

        var (radius, rotation) = (groove.PitchRadius, quadrant.Rotation.Radians);
        double[] halves =
        [
            job.Vehicle.Pedal.AvailablePull.PlusMinus, job.Preferences.FreePlay.PlusMinus,
            radius.Value * rotation.PlusMinus, radius.PlusMinus * rotation.Value, LoadedMechanism.LostMotionKnown * lost,
        ];
        return Math.Max(0, Quantile(halves, MechanismChecks.LeastWorking) - radius.PlusMinus * rotation.PlusMinus);
    }

    /// <summary>The value that a sum of independent deviations, each anywhere within its ±, does not exceed with a probability.</summary>
    /// <remarks>
    /// P(sum > q) = Σ (-1)^|s| (A - q - 2 Σ_s a)₊ⁿ / (n! 2ⁿ Π a), over all subsets s of the half-widths a with sum A (the distribution of a sum of uniform variables, P. S. Laplace; W. Feller, An Introduction to Probability
    /// Theory, volume II, chapter I.9), solved by bisection.
    /// </remarks>
    /// <param name="halves">The half-widths; those that are far smaller than the largest are left out.</param>
    /// <param name="probability">From a half up.</param>
    internal static double Quantile(IReadOnlyList<double> halves, double probability)
    {
        var largest = halves.Max();
        double[] a = [.. halves.Where(h => h > TooSmall * largest)];
        if (a.Length == 0)
        {
            return 0;
        }

        var (low, high) = (0.0, a.Sum());
        for (var step = 0; step < 60; step++)
        {
            var middle = (low + high) / 2;
            (low, high) = Exceeds(a, middle) > 1 - probability ? (middle, high) : (low, middle);
        }

        return low;
    }

    private static double Exceeds(double[] a, double q)
    {
        double sum = 0, all = a.Sum(), scale = 1;
        for (var i = 0; i < a.Length; i++)
        {
            scale *= (i + 1) * 2 * a[i];
        }

        for (var subset = 0; subset < 1 << a.Length; subset++)
        {
            double left = all - q, sign = 1;
            for (var i = 0; i < a.Length; i++)
            {
                if ((subset >> i & 1) == 1)
                {
                    left -= 2 * a[i];
                    sign = -sign;
                }
            }

            sum += left > 0 ? sign * Math.Pow(left, a.Length) : 0;
        }

        return sum / scale;
    }
}
