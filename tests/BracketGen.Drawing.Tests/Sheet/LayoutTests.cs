using BracketGen.Design.Checks;
using BracketGen.Design.Part;
using BracketGen.Drawing.Dxf.Format;
using BracketGen.Drawing.Sheet;
using BracketGen.Geometry;
using BracketGen.Profiles.Family;
using BracketGen.SheetMetal.Shops;
using BracketGen.TestSupport;
using BracketGen.Words.Checks;
using BracketGen.Words.Report;

namespace BracketGen.Drawing.Tests.Sheet;

public class LayoutTests
{
    private const string Long =
        "Every fastener on the throttle is locked: a nut that comes off holds the valve open, and nothing else on the vehicle will close it again.";

    private static void Clean(SheetBlock block)
    {
        var page = new SheetPage(PageFormat.A3).With(block.UpperLeftAt(new(30, 280)));
        Assert.Empty(SheetAudit.Check(page));
        Assert.All(block.Items, i => Assert.True(Holds(block.Bounds.Grow(1e-6), i.Bounds), $"{i} leaves its block"));
    }

    private static bool Holds(Bounds outer, Bounds inner) => outer.Union(inner) == outer;

    [Theory]
    [InlineData(30)]
    [InlineData(60)]
    [InlineData(200)]
    public void Wrapped_lines_fit_and_keep_every_word(double width)
    {
        var lines = TextFlow.Wrap(Long, width, 3.5);
        Assert.All(lines, l => Assert.True(SheetFont.Of(FontWeight.Regular).Width(l, 3.5) <= width));
        Assert.Equal(Long, string.Join(' ', lines));
        var even = TextFlow.WrapEvenly(Long, width, 3.5);
        Assert.Equal(lines.Length, even.Length);
        Assert.Equal(Long, string.Join(' ', even));
    }

    [Fact]
    public void A_word_longer_than_the_line_is_broken_and_not_lost()
    {
        var lines = TextFlow.Wrap("SF-DUN-A58-01-SF-DUN-A58-02", 20, 3.5);
        Assert.True(lines.Length > 1);
        Assert.Equal("SF-DUN-A58-01-SF-DUN-A58-02", string.Concat(lines));
    }

    [Fact]
    public void A_line_break_stays_one() => Assert.Equal(["one", "", "two"], TextFlow.Wrap("one\n\ntwo", 50, 2.5).AsEnumerable());

    [Fact]
    public void Notes_tables_warnings_and_bars_are_clean()
    {
        Clean(Notes.Numbered("Notes", [Long, "Short.", Long, .. Enumerable.Repeat("Another.", 9)], 80));
        Clean(Notes.Paragraph(Long, 60));
        Clean(SheetTable.Draw("Holes", ["Hole", "x", "y", "For"], [["A", "10", "20", Long], ["B1", "100.25", "7", "M6"]], [1, 2]));
        Clean(SheetTable.Draw("", ["Only a header"], []));
        Clean(WarningBox.Draw("Safety check failed: return", [Long, "Second."], 150));
        Clean(WarningBox.Draw("Stop", [], 60));
        Clean(ScaleBar.Millimetres(100));
        Clean(ScaleBar.Millimetres(50));
        Clean(ScaleBar.Inches(3));
    }

    [Fact]
    public void A_table_of_uneven_rows_is_refused() =>
        Assert.Throws<ArgumentException>(() => SheetTable.Draw("Holes", ["a", "b"], [["1"]]));

    [Theory]
    [InlineData("Bracket", "SF-1")]
    [InlineData("Throttle cable bracket with return-spring anchor and second stop for the cruise cable", "SF-DUNLIN-ALDER-58-LEFT-HAND-DRIVE-0000012345-REV")]
    public void A_title_block_takes_every_field_whole(string title, string number)
    {
        var block = new TitleBlock
        {
            Owner = "Saltmarsh Fabrication and Marine Engineering, Curlew Quay",
            Title = title,
            SupplementaryTitle = "Whimbrel with Hornbeam 70 and the long intake, right-hand drive",
            Number = number,
            Revision = "AA",
            Date = new DateOnly(2026, 3, 14),
            Sheet = 12,
            Sheets = 24,
            Creator = "A. Person with a long name",
            Approver = "B. Person with a longer name still",
            DocumentType = "Part drawing and flat pattern",
            Scale = "1:2 (1:1)",
            GeneralTolerances = "ISO 2768-m; cut edges ISO 9013-1; bends ±1° unless stated otherwise",
            Material = "Stainless steel 1.4301 (X5CrNi18-10), 2.5 mm",
            Finish = "Zinc plated ISO 2081 - Fe/Zn8",
            Mass = "0.128 kg",
        }.Draw(PageFormat.A3);
        Clean(block);
        Assert.Equal(TitleBlock.Width, block.Bounds.Width);
        var all = string.Join(' ', block.Items.OfType<TextItem>().Select(t => t.Text));
        Assert.Contains(title, all, StringComparison.Ordinal);
        Assert.Contains(number, all, StringComparison.Ordinal);
        Assert.Contains("12/24", all, StringComparison.Ordinal);
    }

    [Fact]
    public void The_smaller_end_of_the_projection_cone_is_on_the_left_and_its_view_on_the_methods_side()
    {
        // ISO 5456-2: seen from the left, both circles show, so the small end is on the left; first angle puts that view on the right.
        foreach (var (projection, side) in new[] { (Projection.FirstAngle, 1), (Projection.ThirdAngle, -1) })
        {
            var symbol = ProjectionSymbol.Draw(projection);
            var cone = symbol.Items.OfType<Polyline>().Single();
            var circle = symbol.Items.OfType<Stroke>().Select(s => s.Segment).OfType<ArcSegment>().First();
            Assert.Equal(side, Math.Sign(circle.Centre.X - cone.Bounds.Centre.X));
            double HeightAt(double x) => cone.Points.Where(p => p.X == x).Max(p => p.Y);
            Assert.True(HeightAt(cone.Bounds.Min.X) < HeightAt(cone.Bounds.Max.X));
        }
    }

    // ISO 5455, table 1: 1:1, 1:2, 1:5, 1:10 and 2:1, 5:1, 10:1.
    [Theory]
    [InlineData(100, 50, "1:1")]
    [InlineData(201, 50, "1:2")]
    [InlineData(100, 250, "1:5")]
    [InlineData(1500, 10, "1:10")]
    public void The_largest_preferred_scale_that_fits(double width, double height, string expected) =>
        Assert.Equal(expected, DrawingScale.Choose(width, height, 200, 100).ToString());

    [Fact]
    public void Small_parts_may_be_enlarged_where_asked()
    {
        Assert.Equal("2:1", DrawingScale.Choose(40, 40, 200, 100, new(5, 1)).ToString());
        Assert.Throws<ArgumentException>(() => DrawingScale.Choose(1e6, 1, 200, 100));
    }

    [Fact]
    public void Frames_have_the_margins_of_the_standards()
    {
        // ISO 5457: 20 mm on the left, 10 mm elsewhere. A3 then has a drawing space of 390 x 277, A4 of 180 x 277.
        Assert.Equal(new Bounds(new(20, 10), new(410, 287)), PageFormat.A3.Frame);
        Assert.Equal((180.0, 277.0), (PageFormat.A4.Frame.Width, PageFormat.A4.Frame.Height));
        Assert.Equal(431.8, PageFormat.AnsiB.Width, 1e-9);
        Assert.Equal(279.4, PageFormat.AnsiB.Height, 1e-9);
    }

    [Fact]
    public void Borders_stay_on_the_sheet_and_their_letters_run_down()
    {
        foreach (var format in new[] { PageFormat.A3, PageFormat.A3Portrait, PageFormat.A4, PageFormat.A4Landscape, PageFormat.AnsiA, PageFormat.AnsiB, PageFormat.AnsiALandscape })
        {
            Assert.All(new SheetPage(format).Border, i => Assert.True(Holds(format.Sheet, i.Bounds)));
        }

        // ISO 5457: A3 has fields A to F down the side and 1 to 8 along the edge.
        var marks = new SheetPage(PageFormat.A3).Border.OfType<TextItem>().ToArray();
        Assert.Equal("ABCDEF", string.Concat(marks.Where(m => m.Position.X < 20).OrderByDescending(m => m.Position.Y).Select(m => m.Text)));
        Assert.Equal("12345678", string.Concat(marks.Where(m => m.Position.Y > 287).OrderBy(m => m.Position.X).Select(m => m.Text)));
    }
}
