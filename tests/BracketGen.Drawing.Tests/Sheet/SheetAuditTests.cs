using BracketGen.Design.Checks;
using BracketGen.Design.Part;
using BracketGen.Drawing.Sheet;
using BracketGen.Geometry;
using BracketGen.Profiles.Family;
using BracketGen.TestSupport;
using BracketGen.Units;
using BracketGen.Words.Report;

namespace BracketGen.Drawing.Tests.Sheet;

public class SheetAuditTests
{
    private static readonly TextItem Text = new("Bracket", new(100, 100), 3.5);

    private static SheetFault[] Faults(params SheetItem[] items) =>
        [.. SheetAudit.Check(new SheetPage(PageFormat.A4).With(items)).Select(f => f.Fault)];

    [Fact]
    public void A_well_laid_sheet_has_no_faults()
    {
        Assert.Empty(SheetAudit.Check(DemoSheet.Compose(PageFormat.A3)));
        Assert.Empty(SheetAudit.Check(DemoSheet.Compose(PageFormat.A4)));
        Assert.Empty(SheetAudit.Check(DemoSheet.Compose(PageFormat.AnsiB, UnitSystem.Inch)));
    }

    [Fact]
    public void Texts_over_each_other_are_found() =>
        Assert.Equal([SheetFault.TextOverlap], Faults(Text, Text with { Position = new(105, 102) }));

    [Fact]
    public void Turned_texts_are_judged_by_their_turned_boxes()
    {
        // The upright rectangles around these two overlap, the texts do not.
        var slanted = new TextItem("A rather long slanted text", new(100, 100), 3.5, Direction: Angle.FromDegrees(45));
        var beside = new TextItem("x", new(125, 105), 3.5);
        Assert.Empty(Faults(slanted, beside));
        Assert.Equal([SheetFault.TextOverlap], Faults(slanted, beside with { Position = new(110, 110) }));
    }

    [Theory]
    [InlineData(90, 101.5, 130, 101.5, true)]
    [InlineData(90, 98, 130, 98, false)]
    [InlineData(102, 90, 102, 120, true)]
    [InlineData(103, 101, 104, 102, true)]
    public void A_line_through_a_text_is_found(double x1, double y1, double x2, double y2, bool crosses)
    {
        SheetFault[] expected = crosses ? [SheetFault.TextCrossed] : [];
        Assert.Equal(expected, Faults(Text, new Stroke(new(x1, y1), new(x2, y2), LineKind.Dimension)));
        Assert.Equal(expected, Faults(Text, new Polyline([new(x1, y1), new(x2, y2)], false, LineKind.Visible)));
    }

    [Fact]
    public void A_circle_around_a_text_is_no_fault_and_one_through_it_is()
    {
        Assert.Empty(Faults(Text, Stroke.Circle(new(108, 101), 20, LineKind.Visible)));
        Assert.Equal([SheetFault.TextCrossed], Faults(Text, Stroke.Circle(new(108, 101), 4, LineKind.Visible)));
    }

    [Fact]
    public void A_ground_under_the_whole_text_is_no_fault_and_an_arrowhead_through_it_is()
    {
        Assert.Empty(Faults(Fill.Rectangle(new(new(90, 90), new(150, 110)), Ink.Tint), Text));
        Assert.Equal([SheetFault.TextCrossed], Faults(Text, Arrow.Head(new(105, 101), new(0, -1), DimensionStyle.Standard)));
    }

    [Fact]
    public void What_leaves_the_frame_is_found()
    {
        Assert.Equal([SheetFault.OutsideFrame], Faults(Text with { Position = new(190, 100) }));
        Assert.Equal([SheetFault.OutsideFrame], Faults(new Stroke(new(15, 50), new(60, 50), LineKind.Visible)));
    }

    [Fact]
    public void A_character_the_font_lacks_is_found() =>
        Assert.Equal([SheetFault.MissingGlyph], Faults(Text with { Text = "漢" }));
}
