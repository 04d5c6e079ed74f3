using BracketGen.Drawing.Solid;
using BracketGen.Drawing.Tests.ShopDrawing;
using BracketGen.TestSupport;

namespace BracketGen.Drawing.Tests.Solid;

public class FormedVolumeTests
{
    [Fact]
    public void ItIsThatOfPlatesAndRings() => RandomSolutions.Each(int.MaxValue, solution =>
    {
        var flat = solution.Bracket!.Folded.Flat;
        Assert.InRange(FormedVolume.Of(flat) / PlatesAndRings.Of(flat).Volume, 1 - 1e-12, 1 + 1e-12);
    });

    // What docs/solid.md says of the shipped jobs, and why: b α t² (1/2 - k) for each bend.
    [Fact]
    public void OnTheShippedJobsDensityTimesVolumeIsThreeToFifteenThousandthsMoreThanTheMass()
    {
        foreach (var (name, solution) in ExampleSolutions.All.Where(e => e.Solution.Bracket is not null))
        {
            var (info, flat) = (SolidInfo.Of(solution), solution.Bracket!.Flat);
            var more = info.Volume * info.Density / info.Mass - 1;
            // A sheet that turns through more than 200 degrees has more of its length in the bends.
            Assert.True(more > 0.003 && more < (flat.Bends.Sum(b => b.Turn.Magnitude.Degrees) > 200 ? 0.015 : 0.008), $"{name}: {more}");
            var t = flat.Thickness;
            var expected = flat.Bends.Sum(b => b.Length * b.Turn.Magnitude.Radians * t * t * (0.5 - (b.Allowance / b.Turn.Magnitude.Radians - b.InsideRadius) / t));
            Assert.Equal(expected, info.Volume - t * flat.Blank.Area, 1e-6);
        }
    }
}
