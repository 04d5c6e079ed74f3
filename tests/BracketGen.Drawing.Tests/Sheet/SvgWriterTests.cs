using System.Globalization;
using System.Xml.Linq;
using BracketGen.Drawing.Sheet;
using BracketGen.Geometry;
using BracketGen.Profiles.Family;
using BracketGen.Words.Report;

namespace BracketGen.Drawing.Tests.Sheet;

public class SvgWriterTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    [Fact]
    public void It_is_well_formed_and_says_all_that_the_sheet_says()
    {
        var page = DemoSheet.Compose(PageFormat.A3).With(new TextItem("a < b & \"c\"", new(200, 100), 2.5));
        var root = XDocument.Parse(SvgWriter.Write(page)).Root!;
        Assert.Equal("420mm", root.Attribute("width")!.Value);
        Assert.Equal(page.All.OfType<TextItem>().Select(t => t.Text), root.Elements(Svg + "text").Select(t => t.Value));
        Assert.Equal(page.All.Count(i => i is not TextItem), root.Elements(Svg + "path").Count());
    }

    [Fact]
    public void The_y_axis_is_turned_down()
    {
        var page = new SheetPage(PageFormat.A4, framed: false).With(new Stroke(new(10, 20), new(30, 40), LineKind.Visible));
        var path = XDocument.Parse(SvgWriter.Write(page)).Root!.Elements(Svg + "path").Single().Attribute("d")!.Value;
        Assert.Equal("M10 277L30 257", path);
    }

    [Fact]
    public void A_counter_clockwise_arc_stays_one()
    {
        var page = new SheetPage(PageFormat.A4, framed: false)
            .With(new Stroke(new ArcSegment(new(100, 97), 10, Angle.Zero, Angle.Right), LineKind.Visible));
        var path = XDocument.Parse(SvgWriter.Write(page)).Root!.Elements(Svg + "path").Single().Attribute("d")!.Value;

        // SVG 1.1, 8.3.8: sweep flag 0 turns towards negative angles, which with y downwards is counter-clockwise to the eye.
        Assert.Equal("M110 200A10 10 0 0 0 100 190", path);
    }

    [Fact]
    public void Numbers_do_not_follow_the_machines_language()
    {
        var before = CultureInfo.CurrentCulture;
        try
        {
            var plain = SvgWriter.Write(DemoSheet.Compose(PageFormat.A4));
            var comma = (CultureInfo)CultureInfo.InvariantCulture.Clone();
            comma.NumberFormat.NumberDecimalSeparator = ",";
            CultureInfo.CurrentCulture = comma;
            Assert.Equal(plain, SvgWriter.Write(DemoSheet.Compose(PageFormat.A4)));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
