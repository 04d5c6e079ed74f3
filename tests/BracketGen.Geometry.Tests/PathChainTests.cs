using System.Collections.Immutable;
using BracketGen.TestSupport;
using CsCheck;

namespace BracketGen.Geometry.Tests;

/// <summary>Drawn lines joined end to end.</summary>
public class PathChainTests
{
    // A square with two rounded corners, in pieces, each anyhow: the contour is the same.
    [Fact]
    public void Pieces_in_any_order_and_direction_give_the_contour()
    {
        Vector2[] corners = [new(0, 0), new(30, 0), new(30, 20), new(0, 20)];
        ImmutableArray<DrawnPath> pieces =
        [
            DrawnPath.Line(new(2, 0), new(28, 0)), DrawnPath.Arc(new(28, 2), 2, Angle.FromDegrees(-90), Angle.Right), DrawnPath.Line(new(30, 2), corners[2]),
            DrawnPath.Line(corners[2], corners[3]), DrawnPath.Line(corners[3], new(0, 2)), DrawnPath.Arc(new(2, 2), 2, Angle.FromDegrees(180), Angle.Right),
        ];
        Gen.Int[0, int.MaxValue].Check(
            LongRun.Of(500), seed =>
            {
                var random = new Random(seed);
                double Off() => 0.004 * (random.NextDouble() - 0.5);
                DrawnPath[] drawn = [.. pieces.OrderBy(_ => random.Next()).Select(p => random.Next(2) == 0 ? p : Turned(p))
                    .Select(p => p with { Points = [.. p.Points.Select(q => q with { At = q.At + new Vector2(Off(), Off()) })] })];
                var (closed, wrong) = PathChain.Join(drawn, 0.05);
                Assert.Null(wrong);
                var contour = Assert.Single(closed).Contour;
                Assert.Equal((30 * 20) - (2 * (4 - Math.PI)), Math.Abs(contour.SignedArea), 0.3);
            });
    }

    [Fact]
    public void A_gap_and_a_line_drawn_twice_are_told()
    {
        DrawnPath[] open = [DrawnPath.Line(new(0, 0), new(10, 0)), DrawnPath.Line(new(10, 0), new(10, 10)), DrawnPath.Line(new(10, 10), new(0, 0.5))];
        var (_, gap) = PathChain.Join(open, 0.05);
        Assert.Equal(ChainFault.Open, gap!.Value.Fault);
        Assert.Equal(0.5, gap.Value.Gap, 1e-9);
        DrawnPath[] twice = [DrawnPath.Line(new(0, 0), new(10, 0)), DrawnPath.Line(new(10, 0), new(10, 10)), DrawnPath.Line(new(10, 0), new(10, 10)), DrawnPath.Line(new(10, 10), new(0, 0))];
        Assert.Equal(ChainFault.Fork, PathChain.Join(twice, 0.05).Wrong!.Value.Fault);
    }

    // DXF Reference: a bulge of 1 is half a circle; area by hand.
    [Fact]
    public void Two_half_circles_are_a_circle()
    {
        var (closed, _) = PathChain.Join([new([new(new(-3, 1), 1), new(new(5, 1), 1)], true)], 0.05);
        var contour = Assert.Single(closed).Contour;
        Assert.Equal(16 * Math.PI, contour.SignedArea, 1e-9);
        Assert.All(contour.Segments, s => Assert.Equal(4, Assert.IsType<ArcSegment>(s).Radius, 1e-12));
    }

    private static DrawnPath Turned(DrawnPath path) => path with
    {
        Points = [.. Enumerable.Range(0, path.Points.Length).Select(i => new BulgedPoint(path.Points[^(i + 1)].At, i + 1 < path.Points.Length ? -path.Points[^(i + 2)].Bulge : 0))],
    };
}
