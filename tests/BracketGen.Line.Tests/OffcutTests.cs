using System.Collections.Immutable;
using System.Text;
using BracketGen.Geometry;
using BracketGen.Line.Nesting;
using BracketGen.Profiles.Family;
using BracketGen.TestSupport;
using BracketGen.Units;
using CsCheck;
using Gen = CsCheck.Gen;

namespace BracketGen.Line.Tests;

/// <summary>Offcuts are filled before a sheet is begun, and nothing lies over their edges (NetTopologySuite).</summary>
public class OffcutTests
{
    private const string Ell =
        """
        0
        SECTION
        2
        HEADER
        9
        $INSUNITS
        70
        4
        0
        ENDSEC
        0
        SECTION
        2
        ENTITIES
        0
        LWPOLYLINE
        8
        EDGE
        90
        6
        70
        1
        10
        50
        20
        0
        10
        650
        20
        0
        10
        650
        20
        200
        10
        300
        20
        200
        10
        300
        20
        450
        10
        50
        20
        450
        0
        CIRCLE
        8
        EDGE
        10
        170
        20
        120
        40
        60
        0
        ENDSEC
        0
        EOF

        """;

    private const string OfSmall =
        """

        [cutting]
        quantity = 12

        [[cutting.offcuts]]
        code = "R7"
        material = "S235JR"
        thickness = 3
        outline = "ell.dxf"

        [[cutting.offcuts]]
        code = "R8"
        material = "S235JR"
        thickness = 3
        length = 300
        width = 200

        [[cutting.offcuts]]
        code = "R9"
        material = "S355J2"
        thickness = 3
        length = 300
        width = 200

        """;

    private static readonly Gen<Contour> Simple = RandomShapes.Outline.Where(o => NestingTests.IsSimple(o));

    private static readonly Region EllShape = new(
        Contour.Polygon([new(0, 0), new(600, 0), new(600, 200), new(250, 200), new(250, 450), new(0, 450)]), [Contour.Circle(new(120, 120), 60).Reversed]);

    [Fact]
    public void Offcuts_are_filled_first_and_keep_their_border()
    {
        List<string> codes = [];
        Gen.Select(Simple, Simple, Gen.Double[0, 8], Gen.Double[0, 12]).Check(LongRun.Of(40), order =>
        {
            var (one, other, spacing, border) = order;
            NestPiece[] pieces = [new("A", one, [Angle.Zero, Angle.Straight], 9), new("B", other, [Angle.Zero, Angle.Right, Angle.Straight, -Angle.Right], 9)];
            Offcut[] offcuts = [new("R7", "S", 3, 600, 450, EllShape), new("R8", "S", 3, 300, 250, null), new("R9", "S", 3, 60, 60, null)];
            var nest = Nester.Lay(pieces, offcuts, 900, 500, spacing, border);
            NestingTests.Judge(nest, pieces, 900, 500, spacing, border);
            codes.AddRange(nest.Offcuts.Select(o => o.Offcut!.Code));
            foreach (var offcut in nest.Offcuts)
            {
                NestingTests.JudgeOne(offcut, spacing, border);
            }

            var ell = NestingTests.Polygon(EllShape.Outline);
            var hole = NestingTests.Polygon(EllShape.Holes[0].Reversed);
            foreach (var laid in nest.Offcuts.Where(o => o.Offcut!.Code == "R7").SelectMany(o => o.Laid).Select(l => NestingTests.Polygon(l.Outline)))
            {
                Assert.True(ell.Contains(laid) && laid.Distance(ell.ExteriorRing) >= border - 0.003, "over the edge of the offcut");
                Assert.True(!hole.Intersects(laid) && laid.Distance(hole) >= border - 0.003, "over what was cut out of it");
            }

            // What an offcut takes is not cut from a sheet; without offcuts all is.
            Assert.True(nest.UsedArea <= Nester.Lay(pieces, 900, 500, spacing, border).UsedArea + 1e-6);
        });
        Assert.True(codes.Count(c => c == "R7") >= LongRun.AtLeast(20) && codes.Count(c => c == "R8") >= LongRun.AtLeast(10), string.Join(' ', codes));
        Assert.DoesNotContain("R9", codes);
    }

    [Fact]
    public void A_family_lists_its_offcuts_as_rectangles_and_drawings()
    {
        var report = Reports.Of(Estuary.Solved.Rig, Estuary.Solved.Run with { Family = Estuary.Read(With(OfSmall)) });
        var offcuts = report.Family.Family.Cutting.Offcuts;
        Assert.Equal(["R7", "R8", "R9"], offcuts.Select(o => o.Code));
        Assert.Equal((600.0, 450.0), (offcuts[0].Length, offcuts[0].Width));
        Assert.Equal(EllShape.Area, offcuts[0].Outline!.Area, 1e-6);
        var nest = Assert.Single(report.Nests);
        Assert.Equal(["R7", "R8"], nest.Nest.Offcuts.Select(o => o.Offcut!.Code));
        Assert.Equal(12 * report.Selection.Parts.Count, nest.Nest.All.Sum(s => s.Laid.Length));
        Assert.False(nest.IsListed);
        var notes = StockNotes.Of(report.Family.Family, report.Nests).ToArray();
        Assert.StartsWith("From offcut R7, S235JR, 3.0 mm: ", notes[0], StringComparison.Ordinal);
        Assert.EndsWith(" of its metal are left, in no rectangle.", notes[0], StringComparison.Ordinal);
        Assert.Equal("Offcut R9, S355J2, 3.0 mm: nothing is cut from it.", notes[2]);
        Assert.StartsWith("The family lists no stock sheet of S235JR, 3.0 mm: 2000.0 x 1000.0 mm was taken.", notes[3], StringComparison.Ordinal);
        var files = SheetFiles.Of(report.Family.Family, report.Selection.Parts, report.Nests).ToDictionary(f => f.Name, f => Encoding.UTF8.GetString(f.Bytes));
        Assert.Contains("Offcut R7, 600.0 x 450.0 mm", files["S235JR-3mm-offcut-R7.dxf"], StringComparison.Ordinal);
        Assert.Equal(nest.Nest.All.Count(), files.Count);
    }

    [Theory]
    [InlineData("outline = \"ell.dxf\"", "outline = \"ell.dxf\"\nlength = 300", "length or outline, not both")]
    [InlineData("outline = \"ell.dxf\"", "", "length or outline")]
    [InlineData("outline = \"ell.dxf\"", "length = 300", "length and width together, or an outline")]
    [InlineData("outline = \"ell.dxf\"", "outline = \"none.dxf\"", "the path of a file that exists")]
    [InlineData("code = \"R8\"", "code = \"r7\"", "each code once")]
    [InlineData("length = 300\nwidth = 200\n\n[[cutting.offcuts]]\ncode = \"R9\"", "length = 30\nwidth = 200\n\n[[cutting.offcuts]]\ncode = \"R9\"", "a length from 50 to 6000 mm")]
    public void Mistakes_in_the_list_are_said(string old, string changed, string allowed) => IsSaid(With(OfSmall.Replace(old, changed, StringComparison.Ordinal)), allowed);

    [Theory]
    [InlineData("LWPOLYLINE", "SPLINE", "an outline within", "This one is 40.0 x 40.0 mm")]
    [InlineData("70\n1\n10", "70\n0\n10", "lines that meet end to end", "On layer EDGE this line ends, and the nearest other end is 450.000 mm away.")]
    [InlineData("10\n170\n20\n120", "10\n640\n20\n120", "one outline", "On layer EDGE this lies outside the outline or crosses it.")]
    public void Mistakes_in_a_drawing_are_said(string old, string changed, string allowed, string advice)
    {
        var ell = old == "LWPOLYLINE" ? Ell.Replace("40\n60", "40\n20", StringComparison.Ordinal).Replace(old, changed, StringComparison.Ordinal) : Ell.Replace(old, changed, StringComparison.Ordinal);
        IsSaid(With(OfSmall).With("families/ell.dxf", ell), allowed, advice);
    }

    private static void IsSaid(Profiles.IFileSource files, params string[] parts)
    {
        var result = Profiles.FamilyReader.Read(Estuary.Path, files);
        var text = string.Join('\n', result.Errors.Select(Words.Profiles.ProfileErrorText.Format));
        Assert.All(parts, part => Assert.Contains(part, text, StringComparison.Ordinal));
        Assert.False(result.IsRead);
    }

    private static Profiles.MemoryFileSource With(string cutting) => Estuary.Files.With(Estuary.Path, Estuary.Small + cutting).With("families/ell.dxf", Ell);
}
