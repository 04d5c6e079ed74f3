using BracketGen.Mechanism.Numerics;
using BracketGen.Words.Report;

namespace BracketGen.Mechanism.Tests;

/// <summary>Sobol's points beyond the first few, where the recurrence makes the direction numbers.</summary>
public class SobolSequenceTests
{
    private static double[][] First(int count, int dimensions)
    {
        var sequence = new SobolSequence(dimensions);
        return [.. Enumerable.Range(0, count).Select(_ =>
        {
            var point = new double[dimensions];
            sequence.Next(point);
            return point;
        })];
    }

    /// <summary>
    /// The last two of 1024 points in 20 dimensions, as printed by S. Joe and F. Y. Kuo's own program sobol.cc from their file
    /// new-joe-kuo-6.21201; its output is kept in the tests of JuliaMath/Sobol.jl (test/results/exp_results_20). Ten direction numbers of
    /// every dimension are in them, the recurrence's among them.
    /// </summary>
    [Fact]
    public void Far_points_are_those_of_joe_and_kuos_program()
    {
        double[][] published =
        [
            [
                0.5009765625, 0.2529296875, 0.1123046875, 0.6455078125, 0.6865234375, 0.9384765625, 0.6396484375, 0.1181640625,
                0.8447265625, 0.3505859375, 0.1787109375, 0.5361328125, 0.6298828125, 0.1650390625, 0.8623046875, 0.9638671875,
                0.8134765625, 0.3759765625, 0.0849609375, 0.8193359375,
            ],
            [
                0.0009765625, 0.7529296875, 0.6123046875, 0.1455078125, 0.1865234375, 0.4384765625, 0.1396484375, 0.6181640625,
                0.3447265625, 0.8505859375, 0.6787109375, 0.0361328125, 0.1298828125, 0.6650390625, 0.3623046875, 0.4638671875,
                0.3134765625, 0.8759765625, 0.5849609375, 0.3193359375,
            ],
        ];
        var points = First(1024, 20);
        Assert.All(published[0].Zip(points[^2]), p => Assert.Equal(p.First, p.Second, 1e-9));
        Assert.All(published[1].Zip(points[^1]), p => Assert.Equal(p.First, p.Second, 1e-9));
    }

    /// <summary>
    /// Sobol's property A (I. M. Sobol', 1976, in S. Joe and F. Y. Kuo 2008): of 2^d points one lies in each of the 2^d boxes made by
    /// halving every axis. Joe and Kuo chose their numbers so that it holds in every number of dimensions that we have.
    /// </summary>
    [Fact]
    public void Every_halved_box_holds_one_point()
    {
        for (var d = 1; d <= 12; d++)
        {
            var boxes = First(1 << d, d).Select(p => p.Aggregate(0, (box, x) => 2 * box + (x < 0.5 ? 0 : 1)));
            Assert.Equal(1 << d, boxes.Distinct().Count());
        }
    }

    /// <summary>
    /// The same up to the last dimension, where the points are too many to try: the points are linear in the bits of their number, so
    /// the first bits of the points 2^k - 1, one direction number each, must make a regular matrix over the numbers 0 and 1.
    /// </summary>
    [Fact]
    public void Property_a_holds_in_all_dimensions()
    {
        const int D = SobolSequence.MostDimensions;
        var sequence = new SobolSequence(D);
        var point = new double[D];
        List<int> columns = [];
        for (var i = 0; columns.Count < D; i++)
        {
            sequence.Next(point);
            if ((i & (i + 1)) == 0 && i > 0)
            {
                columns.Add(point.Select((x, k) => x < 0.5 ? 0 : 1 << k).Sum());
            }
        }

        for (var d = 1; d <= D; d++)
        {
            Assert.Equal(d, Rank([.. columns.Take(d).Select(c => c & ((1 << d) - 1))]));
        }
    }

    // Gauss over {0, 1}.
    private static int Rank(List<int> rows)
    {
        var rank = 0;
        while (rows.Find(r => r != 0) is var pivot && pivot != 0)
        {
            var bit = pivot & -pivot;
            rows = [.. rows.Where(r => r != pivot).Select(r => (r & bit) == 0 ? r : r ^ pivot)];
            rank++;
        }

        return rank;
    }

    [Fact]
    public void More_dimensions_than_numbers_are_refused()
    {
        Assert.Equal(SobolSequence.MostDimensions, First(2, SobolSequence.MostDimensions)[1].Length);
        Assert.Throws<ArgumentOutOfRangeException>(() => new SobolSequence(SobolSequence.MostDimensions + 1));
    }
}
