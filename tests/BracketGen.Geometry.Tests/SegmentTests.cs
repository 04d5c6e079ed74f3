using BracketGen.TestSupport;

namespace BracketGen.Geometry.Tests;

public class SegmentTests
{
    private const double Near = 1e-9;

    private static void Same(Vector2 expected, Vector2 actual) =>
        Assert.True(expected.DistanceTo(actual) < Near, $"{actual} is not {expected}.");

    [Fact]
    public void Reversed_runs_the_same_path_the_other_way() => RandomShapes.Segment.Check(300, s =>
    {
        var back = s.Reversed;
        Same(s.Start, back.End);
        Same(s.End, back.Start);
        Same(-s.StartTangent, back.EndTangent);
        Same(-s.EndTangent, back.StartTangent);
        Same(s.PointAt(0.3), back.PointAt(0.7));
        Assert.Equal(s.Length, back.Length, Near);
    });

    [Fact]
    public void Mirroring_reflects_every_point_and_tangent() => RandomShapes.Segment.Check(300, s =>
    {
        var mirror = s.MirroredInX;
        for (var f = 0.0; f <= 1; f += 0.125)
        {
            var p = s.PointAt(f);
            Same(new(-p.X, p.Y), mirror.PointAt(f));
        }

        Same(new(-s.StartTangent.X, s.StartTangent.Y), mirror.StartTangent);
        Same(new(-s.EndTangent.X, s.EndTangent.Y), mirror.EndTangent);
    });

    [Fact]
    public void Shifting_and_turning_move_every_point() => RandomShapes.Segment.Check(300, s =>
    {
        Vector2 by = new(3, -7);
        var turn = Angle.FromDegrees(37);
        Same(s.PointAt(0.4) + by, s.Shift(by).PointAt(0.4));
        Same(s.PointAt(0.4).Rotate(turn), s.Rotate(turn).PointAt(0.4));
        Same(s.EndTangent.Rotate(turn), s.Rotate(turn).EndTangent);
    });

    [Fact]
    public void Parts_and_tangents_agree_with_points() => RandomShapes.Segment.Check(300, s =>
    {
        var part = s.Part(0.25, 0.75);
        Same(s.PointAt(0.25), part.Start);
        Same(s.PointAt(0.75), part.End);
        Assert.Equal(s.Length / 2, part.Length, Near);

        const double step = 1e-6;
        Assert.True(((s.PointAt(step) - s.Start) / (step * s.Length)).DistanceTo(s.StartTangent) < 1e-4);
        Assert.True(((s.End - s.PointAt(1 - step)) / (step * s.Length)).DistanceTo(s.EndTangent) < 1e-4);
    });

    [Fact]
    public void Distance_is_that_to_the_nearest_of_many_points() => RandomShapes.Segment.Check(200, s =>
    {
        const int count = 4000;
        foreach (var point in RandomShapes.Point.Draw(3, stream: 7))
        {
            var sampled = Enumerable.Range(0, count + 1).Min(i => s.PointAt((double)i / count).DistanceTo(point));
            Assert.InRange(s.DistanceTo(point), sampled - s.Length / count, sampled + Near);
        }
    });

    [Fact]
    public void Bounds_are_those_of_many_points() => RandomShapes.Segment.Check(200, s =>
    {
        const int count = 4000;
        var sampled = Bounds.Around(Enumerable.Range(0, count + 1).Select(i => s.PointAt((double)i / count)));
        var slack = s is ArcSegment arc ? arc.Length * arc.Length / (count * (double)count) / arc.Radius : Near;
        foreach (var (exact, seen) in new[]
        {
            (-s.Bounds.Min.X, -sampled.Min.X), (-s.Bounds.Min.Y, -sampled.Min.Y),
            (s.Bounds.Max.X, sampled.Max.X), (s.Bounds.Max.Y, sampled.Max.Y),
        })
        {
            Assert.InRange(exact, seen - Near, seen + slack + Near);
        }
    });

    [Fact]
    public void Crossings_lie_on_the_segment_and_on_the_line() => RandomShapes.Segment.Check(300, s =>
    {
        foreach (var through in RandomShapes.Point.Draw(3, stream: 8))
        {
            var way = Vector2.FromPolar(1, new(through.X));
            var crossings = s.CrossingsWithLine(through, way).ToList();
            Assert.All(crossings, c =>
            {
                Assert.InRange(c.Fraction, 0, 1);
                Assert.True((through + c.Along * way).DistanceTo(s.PointAt(c.Fraction)) < 1e-7);
            });

            // Each crossing changes the side: the parity tells whether the ends lie on the same side.
            var sides = way.Cross(s.Start - through) * way.Cross(s.End - through);
            if (Math.Abs(sides) > 1e-4)
            {
                Assert.Equal(sides < 0, crossings.Count % 2 == 1);
            }
        }
    });

    [Fact]
    public void A_line_through_the_very_end_of_an_arc_meets_it()
    {
        // A line that just leaves an arc by round-off must not slip between it and its neighbour.
        foreach (var degrees in Enumerable.Range(0, 360))
        {
            ArcSegment arc = new(new(12.3, -4.7), 31.7, Angle.FromDegrees(degrees), Angle.FromDegrees(77));
            foreach (var end in new[] { arc.Start, arc.End })
            {
                Assert.Contains(
                    arc.CrossingsWithLine(end, (end - new Vector2(10, -5)).Unit),
                    c => Math.Abs(c.Along) < 1e-7 && c.Fraction is >= 0 and <= 1);
            }
        }
    }

    [Fact]
    public void Impossible_segments_are_refused()
    {
        Assert.Throws<ArgumentException>(() => new LineSegment(new(1, 2), new(1, 2)));
        Assert.Throws<ArgumentException>(() => new ArcSegment(Vector2.Zero, 0, Angle.Zero, Angle.Right));
        Assert.Throws<ArgumentException>(() => new ArcSegment(Vector2.Zero, double.NaN, Angle.Zero, Angle.Right));
        Assert.Throws<ArgumentException>(() => new ArcSegment(Vector2.Zero, 1, Angle.Zero, Angle.Zero));
        Assert.Throws<ArgumentException>(() => new ArcSegment(Vector2.Zero, 1, Angle.Zero, new(6.3)));
        Assert.Throws<ArgumentException>(() => new ArcSegment(Vector2.Zero, 1, Angle.Zero, new(double.NaN)));
    }
}
