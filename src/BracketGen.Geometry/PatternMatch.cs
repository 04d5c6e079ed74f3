namespace BracketGen.Geometry;

/// <summary>Whether two patterns of points are congruent within the play of each point: turned and shifted in their plane, and turned over where they may be.</summary>
/// <remarks>
/// Looked for is the placing whose worst point is least beyond its play. Which point lies on which is found by branch and bound: a pair of points that differs
/// in distance by more than both plays bounds every placing. For one choice of partners the placing is approached by weighted least squares (Kabsch's rotation in
/// the plane, W. Kabsch, Acta Cryst. A32 (1976) 922-923) whose weights grow where the distance is too large (Lawson's method: C. L. Lawson, thesis, UCLA 1961, from
/// memory). For any weights w that add up to one, the least weighted mean of the squared distances bounds every placing: so the answer carries what was reached and
/// what cannot be improved on.
/// </remarks>
public static class PatternMatch
{
    /// <summary>Maximum number of points: the partners are tried one by one.</summary>
    public const int MostPoints = 16;

    /// <summary>Reached and proven come together to this (mm): a hundredth of what a caliper reads.</summary>
    public const double Resolution = 1e-4;

    // Weights double the distance between far and near about every ten steps; a pattern that is not settled by then keeps both its numbers.
    private const int Steps = 400;

    /// <summary>Lays a pattern on another; null where the two have not the same number of points, or some point has no partner of its kind.</summary>
    /// <param name="laid">The pattern that is laid (mm).</param>
    /// <param name="onto">The pattern that it is laid on (mm).</param>
    /// <param name="play">For each laid point and each point below how far they may be apart (mm); negative infinity for two that do not go together.</param>
    /// <param name="mayTurnOver">Whether the laid pattern may lie with its other side up.</param>
    /// <exception cref="ArgumentException">More points than <see cref="MostPoints"/>.</exception>
    public static PatternFit? Best(IReadOnlyList<Vector2> laid, IReadOnlyList<Vector2> onto, Func<int, int, double> play, bool mayTurnOver)
    {
        if (Math.Max(laid.Count, onto.Count) > MostPoints)
        {
            throw new ArgumentException($"A pattern has at most {MostPoints} points.", nameof(laid));
        }

        if (laid.Count != onto.Count || laid.Count == 0)
        {
            return null;
        }

        PatternFit? best = null;
        foreach (var isOver in mayTurnOver ? (bool[])[false, true] : [false])
        {
            var search = new Search([.. laid.Select(p => isOver ? p.MirroredInX : p)], [.. onto], play, isOver, best);
            search.From(0, double.NegativeInfinity);
            best = search.Best;
        }

        // A placing that was cut off may be better by what reached and proven may differ.
        return best is null ? null : best with { AtLeast = Math.Min(best.AtLeast, best.Over - Resolution) };
    }

    private sealed class Search(Vector2[] laid, Vector2[] onto, Func<int, int, double> play, bool isOver, PatternFit? known)
    {
        private readonly int[] _partners = new int[laid.Length];
        private readonly bool[] _isTaken = new bool[laid.Length];

        public PatternFit? Best { get; private set; } = known;

        // What is cut off is bounded by more than was reached, so that the least of what was looked at bounds all.
        public void From(int next, double bound)
        {
            if (next == laid.Length)
            {
                Settle(bound);
                return;
            }

            for (var j = 0; j < onto.Length; j++)
            {
                var room = _isTaken[j] ? double.NegativeInfinity : play(next, j);
                if (double.IsNegativeInfinity(room))
                {
                    continue;
                }

                var worse = Math.Max(bound, -room);
                for (var k = 0; k < next; k++)
                {
                    var differs = Math.Abs(laid[next].DistanceTo(laid[k]) - onto[j].DistanceTo(onto[_partners[k]]));
                    worse = Math.Max(worse, (differs - room - play(k, _partners[k])) / 2);
                }

                if (Best is { } best && worse >= best.Over - Resolution)
                {
                    continue;
                }

                (_partners[next], _isTaken[j]) = (j, true);
                From(next + 1, worse);
                _isTaken[j] = false;
            }
        }

        private void Settle(double bound)
        {
            Vector2[] to = [.. _partners.Select(j => onto[j])];
            double[] plays = [.. _partners.Select((j, i) => play(i, j))];
            var (over, atLeast, turn) = Placing(laid, to, plays, bound);
            var proven = Math.Min(atLeast, Best?.AtLeast ?? double.PositiveInfinity);
            Best = Best is { } best && best.Over <= over ? best with { AtLeast = Math.Min(proven, best.Over) } : new(over, Math.Min(proven, over), turn, isOver, [.. _partners]);
        }
    }

    private static (double Over, double AtLeast, Angle Turn) Placing(Vector2[] from, Vector2[] to, double[] plays, double bound)
    {
        var weights = new double[from.Length];
        Array.Fill(weights, 1.0 / from.Length);
        var (over, atLeast, turn) = (double.PositiveInfinity, bound, Angle.Zero);
        for (var step = 0; step < Steps && over - atLeast > Resolution; step++)
        {
            var (angle, distances) = LeastSquares(from, to, weights);
            var reached = distances.Zip(plays, (d, p) => d - p).Max();
            if (reached < over)
            {
                (over, turn) = (reached, angle);
            }

            atLeast = Math.Min(over, Math.Max(atLeast, Proven(weights, distances, plays)));

            // Lawson: what is farther off than the others counts more. The play that all have more than they need is no distance.
            var allowed = plays.Select(p => Math.Max(p + atLeast, 0)).ToArray();
            var sum = 0.0;
            for (var i = 0; i < weights.Length; i++)
            {
                weights[i] *= (distances[i] + Resolution) / (allowed[i] + Resolution);
                sum += weights[i];
            }

            for (var i = 0; i < weights.Length; i++)
            {
                weights[i] /= sum;
            }
        }

        return (over, atLeast, turn);
    }

    // With d_i <= p_i + e for all i, the weighted mean of (p_i + e)² is at least the least weighted mean of d_i²: the smallest such e. Where p_i + e would be
    // negative the placing is impossible already, and that is in the bound of the single points.
    private static double Proven(double[] weights, double[] distances, double[] plays)
    {
        var least = weights.Zip(distances, (w, d) => w * d * d).Sum();
        double mean = weights.Zip(plays, (w, p) => w * p).Sum(), square = weights.Zip(plays, (w, p) => w * p * p).Sum();

        // e² + 2 e mean + square - least = 0, the larger root: between the roots the mean is too small.
        var half = mean * mean - square + least;
        return half < 0 ? double.NegativeInfinity : Math.Sqrt(half) - mean;
    }

    // The rotation and shift with the least weighted sum of squared distances, in closed form in the plane.
    private static (Angle Turn, double[] Distances) LeastSquares(Vector2[] from, Vector2[] to, double[] weights)
    {
        Vector2 centre = Vector2.Zero, target = Vector2.Zero;
        for (var i = 0; i < from.Length; i++)
        {
            centre += weights[i] * from[i];
            target += weights[i] * to[i];
        }

        double along = 0, across = 0;
        for (var i = 0; i < from.Length; i++)
        {
            var (p, q) = (from[i] - centre, to[i] - target);
            along += weights[i] * p.Dot(q);
            across += weights[i] * p.Cross(q);
        }

        var turn = new Angle(along == 0 && across == 0 ? 0 : Math.Atan2(across, along));
        return (turn, [.. from.Select((p, i) => (target + (p - centre).Rotate(turn)).DistanceTo(to[i]))]);
    }
}
