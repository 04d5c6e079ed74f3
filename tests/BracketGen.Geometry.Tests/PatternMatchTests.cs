using BracketGen.TestSupport;
using CsCheck;
using NetTopologySuite.Algorithm;
using NetTopologySuite.Geometries;

namespace BracketGen.Geometry.Tests;

/// <summary>Patterns laid on each other, held against NetTopologySuite's smallest circles over all turns, and against closed forms.</summary>
public class PatternMatchTests
{
    private static readonly Gen<Vector2> Point = Gen.Select(Gen.Double[-40, 40], Gen.Double[-40, 40], (x, y) => new Vector2(x, y));

    private static readonly Gen<Vector2[]> Pattern = Point.Array[2, 6].Where(all => all.All(p => all.All(q => p == q || p.DistanceTo(q) > 6)));

    private static PatternFit Best(Vector2[] laid, Vector2[] onto, double play, bool mayTurnOver = false) => PatternMatch.Best(laid, onto, (_, _) => play, mayTurnOver)!;

    [Fact]
    public void A_turned_and_shifted_copy_fits_without_play() => Repeatable.Check(
        Gen.Select(Pattern, Gen.Double[-Math.PI, Math.PI], Point, (p, a, by) => (Laid: p, Onto: Moved(p, a, by))), 300, c =>
        {
            var fit = Best(c.Laid, c.Onto, 0);
            Assert.True(fit.Fits, $"{fit.Over}");
            Assert.False(fit.FitsNowhere);
        });

    [Fact]
    public void A_copy_turned_over_fits_only_where_it_may_be_turned_over() => Repeatable.Check(
        Gen.Select(Pattern.Where(p => p.Length > 3), Gen.Double[-Math.PI, Math.PI], Point, (p, a, by) => (Laid: p, Onto: Moved([.. p.Select(q => q.MirroredInX)], a, by))), 200, c =>
        {
            var over = Best(c.Laid, c.Onto, 0, mayTurnOver: true);
            Assert.True(over.Fits && (over.IsTurnedOver || Best(c.Laid, c.Onto, 0).Fits), $"{over} {string.Join(' ', c.Laid)}");
        });

    // A point moved away by more than twice the play: the distance to the farthest other point then differs by more than both plays allow, or no turn helps.
    [Fact]
    public void What_was_moved_by_more_than_its_play_does_not_fit() => Repeatable.Check(
        Gen.Select(Pattern, Gen.Double[-Math.PI, Math.PI], Point, Gen.Double[0.05, 1], Gen.Double[0.1, 2], (p, a, by, play, more) => (p, a, by, play, more)), 300, c =>
        {
            // Stretched along the line between two points, so that their distance alone decides.
            var along = (c.p[1] - c.p[0]).Unit;
            Vector2[] onto = [c.p[0], c.p[1] + (2 * c.play + c.more) * along, .. c.p[2..]];
            var fit = PatternMatch.Best(c.p, Moved(onto, c.a, c.by), (i, j) => i == j ? c.play : double.NegativeInfinity, false)!;
            Assert.True(fit.FitsNowhere && !fit.Fits && fit.Over >= c.more / 2 - 1e-9, $"{fit}");
        });

    // Two points on two: the error is shared by both, half the difference of the distances each.
    [Theory]
    [InlineData(34, 34.4, 0.2, 0)]
    [InlineData(34, 35, 0.2, 0.3)]
    [InlineData(40, 34, 0.25, 2.75)]
    public void Two_holes_share_the_difference_of_their_distances(double laid, double onto, double play, double over)
    {
        var fit = Best([new(0, 0), new(laid, 0)], [new(5, 5), new(5, 5 + onto)], play);
        Assert.Equal(over, fit.Over, 1e-4);
        Assert.InRange(fit.AtLeast, over - 1e-3, over + 1e-9);
    }

    // For one turn the best shift is the centre of the smallest circle round the differences (NetTopologySuite); turns are tried on a grid, and between
    // two of them the radius changes by at most the size of the pattern times the step.
    [Fact]
    public void The_worst_point_is_as_near_as_the_smallest_circle_over_all_turns_allows() => Repeatable.Check(
        Gen.Select(Point.Array[3], Gen.Double[-Math.PI, Math.PI], Point.Array[3], Gen.Double[0.05, 3], (p, a, off, size) => (Laid: p, Onto: p.Zip(off, (q, o) => (q + size / 40 * o).Rotate(new(a))).ToArray())), 40, c =>
        {
            var fit = PatternMatch.Best(c.Laid, c.Onto, (_, _) => 0, false)!;
            const int steps = 40_000;
            var least = double.PositiveInfinity;
            foreach (var order in new int[][] { [0, 1, 2], [0, 2, 1], [1, 0, 2], [1, 2, 0], [2, 0, 1], [2, 1, 0] })
            {
                // A coarse grid, then a fine one about its best.
                double Radius(double turn) => new MinimumBoundingCircle(new MultiPoint(
                    [.. c.Laid.Select((p, i) => c.Onto[order[i]] - p.Rotate(new(turn))).Select(d => new Point(d.X, d.Y))])).GetRadius();
                var coarse = Enumerable.Range(0, 400).Select(i => i * 2 * Math.PI / 400).MinBy(Radius);
                least = Math.Min(least, Enumerable.Range(-200, 401).Select(i => Radius(coarse + i * 2 * Math.PI / steps)).Min());
            }

            var slack = c.Laid.Max(p => p.Length) * 2 * Math.PI / steps;
            Assert.InRange(fit.Over, least - slack, least + slack + 2 * PatternMatch.Resolution);
            Assert.InRange(fit.AtLeast, least - slack - 1e-2, least + slack);
        });

    [Fact]
    public void Reached_and_proven_come_together() => Repeatable.Check(
        Gen.Select(Pattern, Point.Array[6], Gen.Double[0, 1].Array[6], Gen.Double[-3, 3], (p, off, plays, a) => (p, off, plays, a)), 200, c =>
        {
            var onto = Moved([.. c.p.Select((q, i) => q + 0.02 * c.off[i])], c.a, new(3, -8));
            var fit = PatternMatch.Best(c.p, onto, (i, _) => c.plays[i], false)!;
            Assert.True(fit.Over >= fit.AtLeast);
            Assert.True(fit.Over - fit.AtLeast < 0.02, $"reached {fit.Over}, proven {fit.AtLeast}");
        });

    [Fact]
    public void Points_go_together_only_with_their_kind()
    {
        Vector2[] laid = [new(0, 0), new(30, 0), new(15, 8)], onto = [new(0, 0), new(30, 0), new(15, -8)];
        double Play(int i, int j) => (i == 2) == (j == 2) ? 0.2 : double.NegativeInfinity;
        Assert.True(PatternMatch.Best(laid, onto, Play, false)!.Fits); // half a turn
        Assert.False(PatternMatch.Best([laid[0], laid[1], new(14, 8)], onto, Play, false)!.Fits);
        Assert.True(PatternMatch.Best([laid[0], laid[1], new(14, 8)], [onto[0], onto[1], new(14, -8)], Play, true)!.IsTurnedOver);
        Assert.Null(PatternMatch.Best(laid, onto[..2], (_, _) => 1, false));
        Assert.Null(PatternMatch.Best(laid, onto, (i, _) => i == 2 ? double.NegativeInfinity : 1, false));
    }

    // One screw 16 mm out in a slot of ±10° and 0.2 mm play: the law of cosines adds asin-like play at each end.
    [Fact]
    public void A_slot_lets_its_part_turn_by_its_arc_and_the_play()
    {
        ArcSlot[] slots = [new(new(16, 0), Angle.FromDegrees(10)), new(new(-16, 0), Angle.FromDegrees(10))];
        var turn = SlotTurn.Of(slots, [new(0, 16), new(0, -16)], [0.2, 0.2])!;
        Assert.True(turn.Fits);
        Assert.Equal(10 + 2 * Math.Asin(0.1 / 16) * 180 / Math.PI, turn.Half.Degrees, 1e-9); // chord of 0.2 at 16
        Assert.Equal(90, Math.Abs(turn.Middle.Degrees), 1e-9);
        Assert.Equal(0.3, SlotTurn.Of(slots, [new(0, 16.5), new(0, -16)], [0.2, 0.2])!.Over, 1e-5);
        Assert.Null(SlotTurn.Of(slots, [new(0, 16)], [0.2, 0.2]));
    }

    // Every turn on a fine grid in which every screw has room lies in the range, and no other.
    [Fact]
    public void The_range_of_turn_is_that_found_by_trying() => Repeatable.Check(
        Gen.Select(Gen.Double[10, 25], Gen.Double[0, 0.3].Array[2, 3], Gen.Double[-0.25, 0.25].Array[3], Gen.Double[-0.4, 0.4].Array[3], Gen.Double[0.2, 0.6], (r, halves, off, wrong, play) => (r, halves, off, wrong, play)), 60, c =>
        {
            var n = c.halves.Length;
            ArcSlot[] slots = [.. c.halves.Select((h, i) => new ArcSlot(new(Vector2.FromPolar(c.r, new(i * 2 * Math.PI / n + 0.1 * i * i))), new(h)))];
            PatternPoint[] screws = [.. slots.Select((s, i) => new PatternPoint(Vector2.FromPolar(c.r + c.wrong[i], s.Middle.Vector.Polar + new Angle(0.7 + 0.2 * c.off[i]))))];
            var turn = SlotTurn.Of(slots, screws, [.. Enumerable.Repeat(c.play, n)])!;
            bool Goes(double t) => slots.Zip(screws).All(p => Enumerable.Range(-100, 201)
                .Min(k => p.First.Middle.Vector.Rotate(new(t + k / 100.0 * p.First.Half.Radians)).DistanceTo(p.Second.Vector)) <= c.play);
            double[] good = [.. Enumerable.Range(-800, 1601).Select(i => 0.7 + i * 0.001).Where(Goes)];
            if (turn.Fits && turn.Half.Radians > 0.003)
            {
                Assert.NotEmpty(good);
                Assert.Equal(turn.Half.Radians, (good.Max() - good.Min()) / 2, 0.01);
            }
            else if (!turn.Fits)
            {
                Assert.Empty(good);
            }
        });

    private static Vector2[] Moved(Vector2[] points, double turn, Vector2 by) => [.. points.Select(p => p.Rotate(new(turn)) + by)];
}
