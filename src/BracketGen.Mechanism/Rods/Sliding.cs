namespace BracketGen.Mechanism.Rods;

/// <summary>A rod that slides through its supports: length moves between neighbouring spans until none lowers the energy.</summary>
/// <remarks>Pair after pair, by the secant method on the difference of the energy's changes with the two lengths.</remarks>
internal static class Sliding
{
    private const int MostRounds = 12;
    private const int MostSecants = 12;

    /// <summary>Slides the rod, warm from its present line.</summary>
    /// <param name="chain">The chain, solved.</param>
    /// <param name="isGripped">Whether the rod is held at the end of each span.</param>
    public static void Settle(RodChain chain, bool[] isGripped)
    {
        for (var round = 0; round < MostRounds; round++)
        {
            double moved = 0;
            var pairs = 0;
            for (var k = 0; k + 1 < isGripped.Length; k++)
            {
                if (!isGripped[k])
                {
                    moved = Math.Max(moved, Math.Abs(SlidePair(chain, k)));
                    pairs++;
                }
            }

            if (pairs < 2 || moved < RodTolerance.Slid)
            {
                return;
            }
        }
    }

    // Moves length from span k + 1 to span k; returns how much.
    private static double SlidePair(RodChain chain, int k)
    {
        double first = chain.Spans[k], second = chain.Spans[k + 1];
        double low = chain.LeastLength(k) - first, high = second - chain.LeastLength(k + 1);
        double at = 0, gain = Gain(chain, k);
        double before = 0, gainBefore = gain;
        for (var i = 0; i < MostSecants; i++)
        {
            // A gain above zero: a longer first span takes energy, so length goes to the second.
            (low, high) = gain > 0 ? (low, at) : (at, high);
            var next = gain != gainBefore && at != before ? at - gain * (at - before) / (gain - gainBefore) : double.NaN;
            if (!(next > low && next < high))
            {
                next = i == 0 ? at - Math.Sign(gain) * RodTolerance.FirstSlide * Math.Min(at - low + high - at, first + second) : (low + high) / 2;
            }

            next = Math.Clamp(next, low, high);
            if (Math.Abs(next - at) < RodTolerance.Slid / 10 || !MoveTo(chain, k, first + next, second - next))
            {
                break;
            }

            (before, gainBefore, at) = (at, gain, next);
            gain = Gain(chain, k);
        }

        return at;
    }

    private static bool MoveTo(RodChain chain, int k, double first, double second)
    {
        Span<double> spans = stackalloc double[chain.Spans.Length];
        chain.Spans.CopyTo(spans);
        var kept = chain.Save();
        (spans[k], spans[k + 1]) = (first, second);
        chain.SetLengths(spans);
        if (chain.Solve() && chain.Index == 0)
        {
            return true;
        }

        chain.Restore(kept);
        return false;
    }

    private static double Gain(RodChain chain, int k)
    {
        Span<double> change = stackalloc double[chain.Spans.Length];
        chain.EnergyByLength(change);
        return change[k] - change[k + 1];
    }
}
