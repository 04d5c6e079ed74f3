using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Geometry;
using BracketGen.Mechanism.Grooves;
using BracketGen.Mechanism.Motion;

namespace BracketGen.Design.Checks;

/// <summary>What the spread of the measurements adds to the over-travel, at the least: a bound on what sampling finds.</summary>
/// <remarks>
/// The over-travel is pull - free play - wire drawn - lost motion. Pull, free play and lost motion are readings, each anywhere within its ±; on a round groove from which the wire does not lift, the wire drawn is radius ×
/// rotation, two more. Let X be their sum, S(q) its chance to exceed q, which is convex above zero, and Y the rest. Where Y is as likely as -Y, E[S(q - Y) + S(q + Y)]/2 ≥ S(q) for any q that X exceeds less than once in
/// four times: the quantile of the sum is no less than that of X alone. Where Y is not quite even, because the wire's length is not quite linear in the deviations, q grows by the mean of what it lacks, for S is convex
/// (Jensen's inequality): the second derivative of the length of a taut wire by its end is at most one over its straight part, and a turn moves that end towards the middle by half the square of the angle.
/// </remarks>
internal sealed class PullSpread
{
    // A deviation this small beside the largest adds nothing to speak of, and cancels badly in the sum below.
    private const double TooSmall = 0.02;

    // The wire keeps this much groove at the wide-open stop, so that deviations within the ± do not lift it off.
    private static readonly Angle KeptWrap = Angle.FromDegrees(5);

    private readonly Job _job;
    private readonly Travel _travel;
    private readonly Vector2 _seat;
    private readonly bool _isRound;
    private readonly double _quantile;

    /// <summary>The spread at a stop.</summary>
    /// <param name="stop">The stop.</param>
    /// <param name="lost">Lost motion at the wide-open stop, or less (mm): the wider its deviation, the larger the quantile.</param>
    public PullSpread(StopMechanism stop, double lost)
    {
        (_job, _travel, _seat) = (stop.Job, stop.Travel, stop.Seat);
        var (quadrant, preferences) = (_job.Body.Quadrant, _job.Preferences);
        List<double> halves = [_job.Vehicle.Pedal.AvailablePull.PlusMinus, preferences.FreePlay.PlusMinus, LoadedMechanism.LostMotionKnown * lost];
        var product = 0.0;
        if (quadrant.Groove is CircularGroove groove && _travel.WideOpen.Wrap >= KeptWrap)
        {
            var (radius, rotation) = (groove.PitchRadius, quadrant.Rotation.Radians);
            halves.AddRange([radius.Value * rotation.PlusMinus, radius.PlusMinus * rotation.Value]);
            product = radius.PlusMinus * rotation.PlusMinus;
            _isRound = true;
        }

        _quantile = Quantile(halves, MechanismChecks.LeastWorking) - product;
    }

    /// <summary>
    /// The quantile of the over-travel that 99 of 100 do not exceed lies above its nominal value by more than this (mm); zero where the bracket's deviations may bring the stop near the groove, for then nothing is sampled.
    /// </summary>
    /// <param name="bracket">The bracket.</param>
    public double AtLeast(Bracket bracket)
    {
        double farthest = 0, square = 0;
        foreach (var tolerance in SeatTolerances.Of(bracket, _job.Shop.Process, _job.Vehicle.Cable.OuterEnd).Concat(SeatTolerances.OfMount(bracket, _job.Body.Mount)))
        {
            var size = tolerance.PlusMinus * tolerance.Shift.Length;
            farthest += JudgeTolerance.FarthestDeviation * size;
            square += size * size / (tolerance.IsMeasured ? 3 : 4);
        }

        var straight = _travel.LeastStraight;
        if (!(farthest < straight))
        {
            return 0;
        }

        // The straight part may become half as long; then its curvature is twice as large.
        var lacks = _isRound ? 0 : MeanSquareOfEnd(square) / straight + TowardsMiddle();
        return Math.Max(0, (1 - JudgeTolerance.Samples) * (_quantile - lacks));
    }

    // Mean square by which the wire's end moves against the groove (mm²): the seat itself, turns about the shaft, and the groove's size.
    private double MeanSquareOfEnd(double ofSeat)
    {
        var quadrant = _job.Body.Quadrant;
        double pocket = quadrant.Pocket.Radians.PlusMinus, rotation = quadrant.Rotation.Radians.PlusMinus, groove = quadrant.Groove.PlusMinus;
        return 2 * ofSeat + ((2 * pocket * pocket + rotation * rotation) * _seat.Dot(_seat) + 2 * groove * groove) / 3;
    }

    // Of two turns, closed and wide open (mm).
    private double TowardsMiddle()
    {
        double pocket = _job.Body.Quadrant.Pocket.Radians.PlusMinus, rotation = _job.Body.Quadrant.Rotation.Radians.PlusMinus;
        return (2 * pocket * pocket + rotation * rotation) / 6 * _seat.Length;
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
