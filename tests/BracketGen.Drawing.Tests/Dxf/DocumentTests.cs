using System.Globalization;
using System.Text;
using BracketGen.Design.Checks;
using BracketGen.Drawing.Dxf;
using BracketGen.Drawing.Dxf.Model;
using BracketGen.Geometry;
using BracketGen.Profiles.Family;
using BracketGen.TestSupport;
using BracketGen.Units;
using BracketGen.Words.Report;
using CsCheck;

namespace BracketGen.Drawing.Tests.Dxf;

/// <summary>The file as a whole: numbers, handles, layers, units, texts, bytes.</summary>
public class DocumentTests
{
    private static readonly DxfEntity[] OneOfEach =
    [
        new DxfCircle(DxfLayers.CutThrough, new(10, 10), 3),
        new DxfPolyline(DxfLayers.CutThrough, [new(new(0, 0)), new(new(40, 0), 0.5), new(new(40, 20)), new(new(0, 20), -0.25)], closed: true),
        new DxfLine(DxfLayers.FoldLine, new(20, 0), new(20, 20)),
        new DxfArc(DxfLayers.SurfaceMark, new(30, 10), 4, Angle.FromDegrees(200), Angle.FromDegrees(-250)),
        .. StrokeText.Of("Whimbrel-64", new(2, 2), 2.5, Angle.FromDegrees(30), DxfLayers.SurfaceMark),
        new DxfText(DxfLayers.PartText, new(0, -6), 3, "MATERIAL: EN AW-5754 H22 µ"),
        new DxfText(DxfLayers.PartText, new(0, -12), 3, "QUANTITY: 4"),
    ];

    private static DxfDrawing Sample(DxfUnits units = DxfUnits.Millimetres, string comment = "") => new(units, [.. DxfLayers.All, DxfLayers.PartText], OneOfEach, comment);

    [SkippableTheory]
    [InlineData(DxfVersion.R2000, DxfUnits.Millimetres)]
    [InlineData(DxfVersion.R2000, DxfUnits.Inches)]
    [InlineData(DxfVersion.R12, DxfUnits.Millimetres)]
    [InlineData(DxfVersion.R12, DxfUnits.Inches)]
    public void Another_reader_finds_layers_units_and_entities(DxfVersion version, DxfUnits units)
    {
        var read = ReadBack.Of(new DxfWriter(version).Write(Sample(units)));
        Assert.Empty(read.Problems);
        Assert.Equal(OneOfEach.Length, read.Entities.Length);
        var unit = units == DxfUnits.Inches ? 25.4 : 1;
        foreach (var (expected, seen) in OneOfEach.Zip(read.Entities))
        {
            Assert.Equal(expected.Layer.Name, seen.Layer);
            Assert.Equal(expected.Segments.Sum(s => s.Length), seen.Length * unit, 4e-9 * unit);
        }

        Assert.Equal(["MATERIAL: EN AW-5754 H22 µ", "QUANTITY: 4"], read.Entities.Select(e => e.Text).OfType<string>());
        Assert.All(read.Entities.TakeLast(2), e => Assert.Equal(3, e.Height * unit, 4e-9 * unit));

        // The arc runs clockwise from 200° through 250° to -50°, and the format turns it round: from 310° on to 200°.
        var arc = Assert.Single(read.Entities, e => e.Kind == "ARC");
        Assert.Equal(30 + 4 * Math.Cos(310 * Math.PI / 180), arc.Start[0] * unit, 4e-9 * unit);
        Assert.Equal(10 + 4 * Math.Sin(200 * Math.PI / 180), arc.End[1] * unit, 4e-9 * unit);

        foreach (var layer in DxfLayers.All.Append(DxfLayers.PartText))
        {
            var seen = read.Layers[layer.Name];
            Assert.Equal(layer.Colour, seen[0].GetInt32());
            Assert.Equal("CONTINUOUS", seen[2].GetString(), ignoreCase: true);
            if (version == DxfVersion.R2000)
            {
                Assert.Equal(layer.Lineweight, seen[1].GetInt32());
            }
        }

        if (version == DxfVersion.R2000)
        {
            Assert.Equal(units == DxfUnits.Inches ? 1 : 4, read.Units);
            Assert.Equal(units == DxfUnits.Inches ? 0 : 1, read.Measurement);
        }
    }

    [SkippableFact]
    public void The_other_reader_does_see_damage()
    {
        var good = Encoding.ASCII.GetString(new DxfWriter().Write(Sample()));
        var noEntry = good.Replace("  3\nModel\n", "  3\nOther\n");
        var badLinetype = good.Replace("  8\nFOLD_LINE\n", "  8\nFOLD_LINE\n  6\nWavy\n");
        var cut = good[..(good.Length / 2)];
        var read = ReadBack.Of(new[] { noEntry, badLinetype, cut }.Select((t, i) => ($"{i}", Encoding.ASCII.GetBytes(t))));
        Assert.All(read.Values, r => Assert.NotEmpty(r.Problems));
    }

    [Fact]
    public void Handles_are_unique_and_point_at_something()
    {
        var groups = Groups(new DxfWriter().Write(Sample()));
        var seed = groups[groups.FindIndex(g => g.Value == "$HANDSEED") + 1].Value;
        var body = groups[groups.FindIndex(g => g.Value == "CLASSES")..];
        var handles = body.Where(g => g.Code is 5 or 105).Select(g => g.Value).ToList();
        Assert.Equal(handles.Count, handles.Distinct().Count());
        Assert.True(handles.Count > OneOfEach.Length + 30);
        Assert.All(body.Where(g => g.Code is 330 or 340 or 350 or 390), g => Assert.Contains(g.Value, handles.Append("0")));
        Assert.True(handles.Max(h => Convert.ToInt32(h, 16)) < Convert.ToInt32(seed, 16));

        // Every object with a handle names its owner next.
        for (var i = 0; i < body.Count; i++)
        {
            if (body[i].Code is 5 or 105)
            {
                Assert.Equal(330, body[i + 1].Code);
            }
        }
    }

    [Fact]
    public void Sections_and_tables_stand_in_the_order_of_the_reference()
    {
        // DXF Reference, "General DXF file structure" and "TABLES section".
        var groups = Groups(new DxfWriter().Write(Sample()));
        IEnumerable<string> After(string what) => groups.Zip(groups.Skip(1)).Where(p => p.First == (0, what)).Select(p => p.Second.Value);
        Assert.Equal(["HEADER", "CLASSES", "TABLES", "BLOCKS", "ENTITIES", "OBJECTS"], After("SECTION"));
        Assert.Equal(["VPORT", "LTYPE", "LAYER", "STYLE", "VIEW", "UCS", "APPID", "DIMSTYLE", "BLOCK_RECORD"], After("TABLE"));
        Assert.Equal((0, "EOF"), groups[^1]);
        Assert.Equal((999, "All lengths in millimetres"), groups[0]);
    }

    [Fact]
    public void Numbers_read_back_as_the_same_double_without_exponent() =>
        Gen.OneOf(
            Gen.Double[-1e3, 1e3],
            Gen.Double,
            Gen.Const(1e-300), Gen.Const(-0.0), Gen.Const(1e21), Gen.Const(-1e15), Gen.Const(123456789012345680.0), Gen.Const(0.1), Gen.Const(-5e-7))
            .Where(x => double.IsFinite(x) && Math.Abs(x) < 1e100)
            .Check(2000, x =>
            {
                var entity = new DxfPolyline(DxfLayers.CutThrough, [new(new(0, 0), 0.5), new(new(1, 1), x == 0 ? 1 : x)], closed: false);
                var text = Groups(new DxfWriter(DxfVersion.R12).Write(new(DxfUnits.Millimetres, DxfLayers.All, [entity])))
                    .Last(g => g.Code == 42).Value;
                Assert.Matches(@"^-?(0|[1-9][0-9]*)\.[0-9]+$", text);
                Assert.Equal(x == 0 ? 1 : Math.Round(x, 12), double.Parse(text, CultureInfo.InvariantCulture));
            });

    [Theory]
    [InlineData(0, "0.0")]
    [InlineData(-0.0, "0.0")]
    [InlineData(12, "12.0")]
    [InlineData(-12.5, "-12.5")]
    [InlineData(0.1, "0.1")]
    [InlineData(1e-7, "0.0000001")]
    [InlineData(-1.25e-10, "0.0")]
    [InlineData(-1.25e-9, "-0.000000001")]
    [InlineData(1e16, "10000000000000000.0")]
    [InlineData(1.5e21, "1500000000000000000000.0")]
    [InlineData(25.400000000000002, "25.4")]
    public void Numbers_are_plain_decimals(double value, string expected)
    {
        var line = new DxfLine(DxfLayers.CutThrough, new(value, 1), new(value, -1));
        var groups = Groups(new DxfWriter(DxfVersion.R12).Write(new(DxfUnits.Millimetres, DxfLayers.All, [line])));
        Assert.Equal(expected, groups[groups.FindIndex(g => g == (0, "LINE")) + 2].Value);
    }

    [Fact]
    public void An_inch_file_is_in_inches_throughout()
    {
        var line = new DxfLine(DxfLayers.CutThrough, new(25.4, 50.8), new(-12.7, 254));
        foreach (var version in Enum.GetValues<DxfVersion>())
        {
            var groups = Groups(new DxfWriter(version).Write(new(DxfUnits.Inches, DxfLayers.All, [line])));
            var first = groups.FindIndex(g => g.Value == "ENTITIES");
            Assert.Equal(
                ["1.0", "2.0", "0.0", "-0.5", "10.0", "0.0"],
                groups.Skip(first).Where(g => g.Code is >= 10 and < 40).Take(6).Select(g => g.Value));
            var extents = groups.FindIndex(g => g.Value == "$EXTMAX");
            Assert.Equal(["1.0", "10.0"], [groups[extents + 1].Value, groups[extents + 2].Value]);
            Assert.Equal((999, "All lengths in inches"), groups[0]);
        }
    }

    [Fact]
    public void The_machine_s_culture_changes_nothing()
    {
        var versions = Enum.GetValues<DxfVersion>();
        var expected = versions.Select(v => new DxfWriter(v).Write(Sample())).ToList();
        var culture = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        culture.NumberFormat.NumberDecimalSeparator = ",";
        culture.NumberFormat.NegativeSign = "~";
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = culture;
            Assert.Equal("~1,5", (-1.5).ToString());
            Assert.Equal(expected, versions.Select(v => new DxfWriter(v).Write(Sample())));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void Files_are_ascii_whatever_the_comment()
    {
        foreach (var version in Enum.GetValues<DxfVersion>())
        {
            var bytes = new DxfWriter(version).Write(Sample(comment: "Höhe ≤ 3 mm\nt^2 \t end"));
            Assert.All(bytes, b => Assert.True(b is (byte)'\n' or >= 32 and < 127));
            var groups = Groups(bytes);
            Assert.Equal((999, "H\\U+00F6he \\U+2264 3 mm"), groups[1]);
            Assert.Equal((999, "t^ 2 ^I end"), groups[2]);
        }
    }

    [Fact]
    public void Nothing_is_cut_twice()
    {
        var slot = RandomShapes.Slot(new(1, 2), 2, 9, new(0.3));
        var turned = new Contour([.. slot.Segments[2..], .. slot.Segments[..2]]);
        DxfLine line = new(DxfLayers.FoldLine, new(0, 0), new(5, 5));
        var drawing = new DxfDrawing(DxfUnits.Millimetres, DxfLayers.All,
        [
            RegionEntities.Of(slot, DxfLayers.CutThrough),
            RegionEntities.Of(turned, DxfLayers.CutThrough),
            RegionEntities.Of(slot.Reversed, DxfLayers.CutThrough),
            RegionEntities.Of(slot.Shift(new(1e-5, 0)), DxfLayers.CutThrough),
            new DxfCircle(DxfLayers.CutThrough, new(0, 0), 3),
            new DxfCircle(DxfLayers.CutThrough, new(0, 1e-9), 3),
            new DxfCircle(DxfLayers.CutThrough, new(0, 0), 3.1),
            line,
            new DxfLine(DxfLayers.FoldLine, new(5, 5), new(0, 0)),
            new DxfLine(DxfLayers.SurfaceMark, new(5, 5), new(0, 0)),
            new DxfArc(DxfLayers.SurfaceMark, new(0, 0), 2, Angle.Zero, Angle.Right),
            new DxfArc(DxfLayers.SurfaceMark, new(0, 0), 2, Angle.Right, -Angle.Right),
            new DxfArc(DxfLayers.SurfaceMark, new(2, 2), 2, Angle.Straight, Angle.Right),
        ]);
        Assert.Equal(8, drawing.Entities.Length);
    }

    [Fact]
    public void What_cannot_be_drawn_is_refused()
    {
        var cut = DxfLayers.CutThrough;
        Assert.Throws<ArgumentException>(() => new DxfLine(cut, new(1, 1), new(1, 1)));
        Assert.Throws<ArgumentException>(() => new DxfLine(cut, new(1, 1), new(1, double.NaN)));
        Assert.Throws<ArgumentException>(() => new DxfCircle(cut, new(1, 1), 0));
        Assert.Throws<ArgumentException>(() => new DxfCircle(cut, new(1, 1), double.PositiveInfinity));
        Assert.Throws<ArgumentException>(() => new DxfArc(cut, new(1, 1), 2, Angle.Zero, new(2 * Math.PI)));
        Assert.Throws<ArgumentException>(() => new DxfPolyline(cut, [new(new(1, 1))], closed: false));
        Assert.Throws<ArgumentException>(() => new DxfPolyline(cut, [new(new(1, 1)), new(new(2, 1)), new(new(1, 1))], closed: true));
        Assert.Throws<ArgumentException>(() => new DxfDrawing(DxfUnits.Millimetres, DxfLayers.All, []));
        Assert.Throws<ArgumentException>(() => new DxfDrawing(DxfUnits.Millimetres, [DxfLayers.FoldLine], OneOfEach));
        Assert.Throws<ArgumentException>(() => new DxfDrawing(DxfUnits.Millimetres, [.. DxfLayers.All, new("FOLD_LINE", 1, 25)], OneOfEach));
        Assert.Throws<ArgumentException>(() => new DxfLayer("fold line", 1, 25));
        Assert.Throws<ArgumentException>(() => new DxfLayer("FOLD", 0, 25));
        Assert.Throws<ArgumentException>(() => new DxfLayer("FOLD", 1, 26));
    }

    private static List<(int Code, string Value)> Groups(byte[] file)
    {
        var lines = Encoding.ASCII.GetString(file).Split('\n');
        Assert.Equal("", lines[^1]);
        Assert.Equal(1, lines.Length % 2);
        return [.. lines.Take(lines.Length - 1).Chunk(2).Select(p => (int.Parse(p[0], CultureInfo.InvariantCulture), p[1]))];
    }
}
