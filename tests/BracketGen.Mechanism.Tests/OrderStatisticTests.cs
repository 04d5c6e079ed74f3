using BracketGen.Design.Checks;
using BracketGen.Mechanism.Numerics;
using BracketGen.TestSupport;
using BracketGen.Words.Report;
using CsCheck;

namespace BracketGen.Mechanism.Tests;

/// <summary>Values by rank, against a sorted copy.</summary>
public class OrderStatisticTests
{
    [Fact]
    public void Every_rank_is_that_of_the_sorted_values() =>
        Gen.OneOf(Gen.Double[-1e3, 1e3], Gen.Int[-3, 3].Select(i => (double)i), Gen.Int[0, 2].Select(i => new[] { double.NegativeInfinity, double.PositiveInfinity, 1e-310 }[i]))
            .Array[1, 60]
            .Check(300, values =>
            {
                var sorted = values.Order().ToArray();
                for (var rank = 0; rank < values.Length; rank++)
                {
                    Assert.Equal((sorted[rank], sorted[Math.Min(rank + 1, values.Length - 1)]), OrderStatistic.At(values, rank));
                }
            });

    [Fact]
    public void Values_in_order_already()
    {
        double[] rising = [.. Enumerable.Range(0, 100_000).Select(i => (double)i)];
        Assert.Equal((70_000, 70_001), OrderStatistic.At(rising, 70_000));
        Assert.Equal((70_000, 70_001), OrderStatistic.At([.. rising.Reverse()], 70_000));
    }
}
