using System.Globalization;
using System.Text;
using BracketGen.Geometry;
using BracketGen.Line.Catalogue;
using BracketGen.Line.Combinations;
using BracketGen.Line.Nesting;
using BracketGen.Line.Solving;
using BracketGen.TestSupport;

namespace BracketGen.Line.Tests;

/// <summary>Sheets carry what each part's own cut file carries; both are read back with ezdxf.</summary>
public class SheetFileTests
{
    private sealed record Drawn(string Layer, string Kind, double[] Numbers);

    [SkippableFact]
    public void A_sheet_draws_every_part_as_its_own_cut_file_does_turned_along()
    {
        var python = OutsideTool.RequirePython("ezdxf");
        var report = Reports.Of(Estuary.Solved.Rig, Estuary.Solved.Run);
        var sheets = report.Nests.SelectMany(n => n.Nest.All.Select((s, i) => (Name: SheetFiles.NameOf(n, i, report.Family.Family.Units), Sheet: s))).ToDictionary(s => s.Name, s => s.Sheet);
        var own = report.Selection.Parts.ToDictionary(
            p => p.Made.PartNumber,
            p => Read(python, File.ReadAllBytes(Path.Combine(Estuary.Solved.Rig.Folder, "combinations", p.Combination.Key, CombinationSolver.CutFile))).Drawn);
        int marks = 0, numbers = 0, turned = 0;
        foreach (var (name, bytes) in SheetFiles.Of(report.Family.Family, report.Selection.Parts, report.Nests))
        {
            var (errors, drawn) = Read(python, bytes);
            Assert.Equal(0, errors);
            Assert.Single(drawn, d => d.Layer == "SHEET_EDGE");
            Drawn[] expected =
            [
                .. from laid in sheets[name].Laid
                   let corner = laid.Piece.Outline.Bounds.Min.Rotate(laid.Turn) + laid.Shift
                   from d in own[laid.Piece.Name].OrderBy(d => d.Layer == "CUT_THROUGH")
                   select Moved(d, laid.Turn, corner),
            ];
            var found = drawn.Where(d => d.Layer != "SHEET_EDGE").ToArray();
            Assert.Equal(expected.Length, found.Length);
            foreach (var (want, got) in expected.Zip(found))
            {
                Assert.Equal((want.Layer, want.Kind, want.Numbers.Length), (got.Layer, got.Kind, got.Numbers.Length));
                Assert.True(want.Numbers.Zip(got.Numbers).All(p => Math.Abs(p.First - p.Second) < 1e-5), $"{name}: {want.Kind} on {want.Layer} is elsewhere");
            }

            // A letter is one stroke or more on the layer of marks; a bend a line on its own.
            marks += found.Count(d => d.Layer == "FOLD_LINE");
            numbers += found.Count(d => d is { Layer: "SURFACE_MARK", Kind: "LWPOLYLINE" });
            turned += sheets[name].Laid.Count(l => Math.Abs(Math.Sin(l.Turn.Radians)) > 0.1);
        }

        var laidOut = sheets.Values.Sum(s => s.Laid.Length);
        Assert.True(marks >= laidOut && numbers >= 5 * laidOut && turned > 0, $"{marks} bend lines and {numbers} strokes on {laidOut} pieces, {turned} of them turned");
    }

    [Fact]
    public void The_picture_numbers_every_piece_and_its_legend_counts_them()
    {
        var report = Reports.Of(Estuary.Solved.Rig, Estuary.Solved.Run);
        var page = Encoding.UTF8.GetString(SheetsPage.Write(report));
        foreach (var sheet in report.Nests.SelectMany(n => n.Nest.All))
        {
            foreach (var (i, (name, count)) in StockNotes.Counts(sheet).Index())
            {
                Assert.Contains($">{i + 1}: {name}, {count} piece", page, StringComparison.Ordinal);
            }
        }

        Assert.Equal(report.Nests.Sum(n => n.Nest.All.Sum(s => s.Laid.Length)), page.Split("<text ").Length - 1);
        Assert.DoesNotContain("NaN", page, StringComparison.Ordinal);
    }

    private static Drawn Moved(Drawn drawn, Angle turn, Vector2 shift)
    {
        var numbers = drawn.Numbers.ToArray();
        var step = drawn.Kind == "LINE" ? 2 : 3;
        for (var i = 0; i < numbers.Length; i += step)
        {
            var at = new Vector2(numbers[i], numbers[i + 1]).Rotate(turn) + shift;
            (numbers[i], numbers[i + 1]) = (at.X, at.Y);
        }

        return drawn with { Numbers = numbers };
    }

    private static (int Errors, Drawn[] Drawn) Read(OutsideTool python, byte[] bytes)
    {
        var path = Path.GetTempFileName();
        try
        {
            File.WriteAllBytes(path, bytes);
            var lines = python.RunOrFail(["-c", Reader, path]).Split('\n', StringSplitOptions.RemoveEmptyEntries);
            return (int.Parse(lines[0], CultureInfo.InvariantCulture),
            [
                .. lines.Skip(1).Select(l => l.Split(' ')).Select(c => new Drawn(c[0], c[1], [.. c.Skip(2).Select(n => double.Parse(n, CultureInfo.InvariantCulture))])),
            ]);
        }
        finally
        {
            File.Delete(path);
        }
    }

    private const string Reader =
        """
        import sys, ezdxf
        d = ezdxf.readfile(sys.argv[1])
        print(len(d.audit().errors))
        for e in d.modelspace():
            k = e.dxftype()
            if k == 'LINE': n = [e.dxf.start.x, e.dxf.start.y, e.dxf.end.x, e.dxf.end.y]
            elif k == 'CIRCLE': n = [e.dxf.center.x, e.dxf.center.y, e.dxf.radius]
            else: n = [v for p in e.get_points('xyb') for v in p]
            print(e.dxf.layer, k, *[repr(float(v)) for v in n])
        """;
}
