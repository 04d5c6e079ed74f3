using BracketGen.Design.Checks;
using BracketGen.Drawing.Sheet;
using BracketGen.Geometry;
using BracketGen.Profiles.Family;
using BracketGen.TestSupport;
using BracketGen.Units;
using BracketGen.Words.Report;

namespace BracketGen.Drawing.Tests.Sheet;

public class DimensionTests
{
    private static T One<T>(IEnumerable<SheetItem> items) where T : SheetItem => items.OfType<T>().Single();

    [Fact]
    public void Extension_lines_leave_a_gap_and_run_over()
    {
        var items = LinearDimension.Horizontal(new(50, 60), new(90, 70), 40, "40").Draw();
        var lines = items.OfType<Stroke>().Select(s => s.Segment).ToArray();
        Assert.Equal(new LineSegment(new(50, 59), new(50, 38)), lines[0]);
        Assert.Equal(new LineSegment(new(90, 69), new(90, 38)), lines[1]);
        Assert.Equal(new LineSegment(new(50, 40), new(90, 40)), lines[2]);
    }

    [Fact]
    public void Arrowheads_touch_the_extension_lines_from_within()
    {
        var heads = LinearDimension.Horizontal(new(50, 60), new(90, 70), 40, "40").Draw().OfType<Fill>().ToArray();
        Assert.Equal([new Vector2(50, 40), new Vector2(90, 40)], heads.Select(h => h.Points[0]));
        Assert.True(heads[0].Points[1].X > 50 && heads[1].Points[1].X < 90);
    }

    [Fact]
    public void Where_it_is_tight_arrowheads_and_text_go_outside()
    {
        var dimension = LinearDimension.Horizontal(new(50, 60), new(54, 60), 40, "4");
        var items = dimension.Draw();
        Assert.True(dimension.ArrowsOutside);
        Assert.True(items.OfType<Fill>().First().Points[1].X < 50);
        Assert.True(One<TextItem>(items).Bounds.Min.X > 54);
        Assert.Empty(SheetAudit.Check(new SheetPage(PageFormat.A4).With(items)));
    }

    [Theory]
    [InlineData(1, 0)]
    [InlineData(-1, 0)]
    [InlineData(0, 1)]
    [InlineData(0, -1)]
    [InlineData(1, 1)]
    [InlineData(-1, 1)]
    [InlineData(-1, -1)]
    [InlineData(1, -1)]
    public void Text_reads_from_below_or_from_the_right_and_stands_above_its_line(double x, double y)
    {
        Vector2 a = new(100, 150), b = a + 40 * new Vector2(x, y);
        var dimension = LinearDimension.Aligned(a, b, 12, "40");
        var text = One<TextItem>(dimension.Draw());
        Assert.InRange(text.Direction.Degrees, -90 + 1e-9, 90 + 1e-9);
        var above = text.Position - (dimension.Level * dimension.Along.Left);
        Assert.Equal(DimensionStyle.Standard.TextGap, above.Dot(dimension.Along.Left), 1e-9);
    }

    [Fact]
    public void An_aligned_dimension_runs_at_its_offset_to_the_left_of_the_way()
    {
        Vector2 a = new(100, 100), b = new(60, 130);
        var line = LinearDimension.Aligned(a, b, 9, "50").Draw().OfType<Stroke>().Last().Segment;
        Assert.Equal(50, line.Length, 1e-9);
        Assert.Equal(9, (b - a).Unit.Cross(line.Start - a), 1e-9);
    }

    [Fact]
    public void A_dimension_of_nothing_is_refused() =>
        Assert.Throws<ArgumentException>(() => LinearDimension.Horizontal(new(50, 60), new(50, 70), 40, "0"));

    [Theory]
    [InlineData(0, 90)]
    [InlineData(30, 40)]
    [InlineData(120, 100)]
    [InlineData(200, 60)]
    [InlineData(300, 90)]
    [InlineData(80, 5)]
    public void Angles_are_legible_wherever_they_lie(double from, double sweep)
    {
        var items = Dimensions.Angular(new(105, 150), Angle.FromDegrees(from), Angle.FromDegrees(sweep), 30, "37.5°");
        Assert.Empty(SheetAudit.Check(new SheetPage(PageFormat.A4).With(items)));
        var arc = items.OfType<Stroke>().Select(s => s.Segment).OfType<ArcSegment>().Single();
        Assert.Equal(30, arc.Radius);
        foreach (var head in items.OfType<Fill>())
        {
            Assert.Equal(30, head.Points[0].DistanceTo(arc.Centre), 1e-9);
        }
    }

    [Fact]
    public void A_leader_points_at_the_middle_and_carries_its_text_on_a_landing()
    {
        Vector2 centre = new(100, 100);
        var items = Dimensions.Callout(centre, 5, Angle.FromDegrees(130), ["4 x Ø10", "for M8"], 12);
        var line = One<Polyline>(items);
        Assert.Equal(5, line.Points[0].DistanceTo(centre), 1e-9);
        Assert.Equal(0, (line.Points[1] - line.Points[0]).Unit.Cross((line.Points[0] - centre).Unit), 1e-9);
        Assert.Equal(line.Points[1].Y, line.Points[2].Y);
        Assert.All(items.OfType<TextItem>(), t => Assert.True(t.Bounds.Max.X < line.Points[1].X));
        Assert.Empty(SheetAudit.Check(new SheetPage(PageFormat.A4).With(items)));
    }
}
