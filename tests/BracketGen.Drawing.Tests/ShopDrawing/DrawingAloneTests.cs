using System.Globalization;
using System.Text.RegularExpressions;
using BracketGen.Design.Part;
using BracketGen.Design.Study;
using BracketGen.Drawing.Dxf;
using BracketGen.Drawing.Dxf.Model;
using BracketGen.Drawing.Sheet;
using BracketGen.Drawing.ShopDrawing;
using BracketGen.Drawing.Tests.Sheet;
using BracketGen.Geometry;
using BracketGen.TestSupport;
using BracketGen.Units;

namespace BracketGen.Drawing.Tests.ShopDrawing;

/// <summary>The part can be made from the drawing alone: the flat pattern is put together again from the words of the PDF, as poppler reads them, and compared with the cut file.</summary>
public partial class DrawingAloneTests
{
    private sealed record Word(int Page, double X, double Y, string Text);

    [SkippableFact]
    public void The_flat_pattern_of_the_shipped_jobs_comes_out_of_the_words_of_the_pdf()
    {
        foreach (var (name, solution) in ExampleSolutions.All.Where(e => e.Solution.Bracket is not null))
        {
            foreach (var format in (PageFormat[])[PageFormat.A3, PageFormat.AnsiB, PageFormat.A4])
            {
                Compare($"{name} on {format.Name}", solution, format);
            }
        }
    }

    [SkippableFact]
    public void So_does_that_of_random_jobs()
    {
        var count = LongRun.Of(50);
        foreach (var (solution, i) in RandomSolutions.Samples.Take(count).Select((s, i) => (s, i)))
        {
            Compare($"random {i}", solution, null);
        }
    }

    private static void Compare(string name, Solution solution, PageFormat? format)
    {
        var words = Read(BracketDrawing.Compose(solution, new() { Format = format, WithTemplate = false }));
        var unit = solution.Job.Units == UnitSystem.Inch ? 25.4 : 1;
        var step = solution.Job.Units == UnitSystem.Inch ? 25.4e-3 : 0.01;

        // Every printed number is off by half a step at most, and so is the corner that both are laid on.
        var tolerance = 2.5 * step;
        var outline = new Contour(Outline(Rows(words, "Point", "P"), unit, step));
        var corner = outline.Bounds.Min;
        var dxf = FlatPatternDxf.Compose(solution.Bracket!, solution.Job, []);
        var cut = dxf.Entities.Where(e => e.Layer == DxfLayers.CutThrough).ToList();
        Segment[] drawn = [.. cut[^1].Segments.Select(s => s.Shift(corner))];
        AssertNear(name, drawn, outline.Segments, tolerance);
        AssertNear(name, outline.Segments, drawn, tolerance);

        // Holes: those that are cut are circles of the file, those that are drilled have a cross there.
        var holes = Rows(words, "Hole", "H").Where(r => r[3].StartsWith('Ø')).ToList();
        var slotted = Rows(words, "Hole", "H").Where(r => r[3] == "slotted").ToList();
        Assert.Equal(solution.Bracket!.Holes.Count(h => h.IsSlotted), slotted.Count);
        Assert.Equal(solution.Bracket.Holes.Count(h => !h.IsSlot && !h.IsSlotted), holes.Count);
        var drilled = holes.Count(r => r.Contains("drill"));
        Assert.Equal(HoleMaking.Drilled(solution.Bracket!, solution.Job).Count(), drilled);
        Assert.Equal(holes.Count - drilled + slotted.Count, cut.Count - 1);
        var circles = cut.SkipLast(1).OfType<DxfCircle>().ToList();

        // Of a slotted hole the edge is π w + 2 (l - w) long, w the width and l the length over all.
        var slots = cut.SkipLast(1).Where(c => c is not DxfCircle).Select(c => (Segment[])[.. c.Segments]).ToList();
        foreach (var row in slotted)
        {
            var at = new Vector2(unit * Number(row[1]), unit * Number(row[2])) - corner;
            double width = unit * Number(row[5]), length = unit * Number(row[8]);
            Assert.Contains(slots, s => s.Aggregate(Vector2.Zero, (sum, e) => sum + e.PointAt(0.5)) is var sum && (sum / s.Length).DistanceTo(at) < tolerance
                && Math.Abs(s.Sum(e => e.Length) - Math.PI * width - 2 * (length - width)) < 8 * step);
        }

        var crosses = dxf.Entities.OfType<DxfLine>().Where(l => l.Layer == DxfLayers.SurfaceMark).Select(l => 0.5 * (l.Start + l.End)).ToList();
        foreach (var row in holes)
        {
            var at = new Vector2(unit * Number(row[1]), unit * Number(row[2])) - corner;
            var diameter = unit * Number(row[3][1..]);
            Assert.True(
                row.Contains("drill") ? crosses.Any(c => c.DistanceTo(at) < tolerance) : circles.Any(c => c.Centre.DistanceTo(at) < tolerance && Math.Abs(2 * c.Radius - diameter) < step),
                $"{name}: hole {row[0]} is not in the cut file.");
        }

        // Bend lines by their ends.
        var folds = dxf.Entities.OfType<DxfLine>().Where(l => l.Layer == DxfLayers.FoldLine).ToList();
        var lines = BendLines(words).ToList();
        Assert.True(folds.Count == lines.Count, $"{name}: {lines.Count} of {folds.Count} bend lines are given.");
        Assert.All(lines.Zip(folds), pair =>
        {
            Assert.InRange((unit * pair.First.From - corner).DistanceTo(pair.Second.Start), 0, tolerance);
            Assert.InRange((unit * pair.First.To - corner).DistanceTo(pair.Second.End), 0, tolerance);
        });
    }

    private static void AssertNear(string name, IEnumerable<Segment> one, IReadOnlyCollection<Segment> other, double tolerance) => Assert.All(
        one.SelectMany(s => Enumerable.Range(0, 9).Select(i => s.PointAt(i / 8.0))),
        p => Assert.True(other.Min(s => s.DistanceTo(p)) <= tolerance, $"{name}: {p} is {other.Min(s => s.DistanceTo(p))} mm off."));

    /// <summary>The edges from point to point, from the words of the table alone.</summary>
    private static IEnumerable<Segment> Outline(IReadOnlyList<string[]> rows, double unit, double step)
    {
        Assert.True(rows.Count > 2);
        Assert.Equal(Enumerable.Range(1, rows.Count).Select(i => $"P{i}"), rows.Select(r => r[0]));
        Vector2 At(string[] row) => new(unit * Number(row[1]), unit * Number(row[2]));
        for (var i = 0; i < rows.Count; i++)
        {
            var row = rows[i];
            Vector2 start = At(row), end = At(rows[(i + 1) % rows.Count]);
            if (start == end)
            {
                continue; // Shorter than what is printed.
            }

            if (row[3] == "line" || start.DistanceTo(end) < 2 * step)
            {
                yield return new LineSegment(start, end);
                continue;
            }

            var isHollow = row[4] == "hollow";
            var radius = unit * Number(row[3][1..]);
            var centre = new Vector2(unit * Number(row[isHollow ? 5 : 4]), unit * Number(row[isHollow ? 6 : 5]));
            Assert.Equal(radius, centre.DistanceTo(start), 2.5 * step);
            var sweep = (end - centre).Polar.Radians - (start - centre).Polar.Radians;
            sweep -= 2 * Math.PI * Math.Floor(sweep / (2 * Math.PI));
            yield return new ArcSegment(centre, centre.DistanceTo(start), (start - centre).Polar, new(isHollow ? sweep - 2 * Math.PI : sweep));
            yield return new LineSegment(centre + Vector2.FromPolar(centre.DistanceTo(start), (end - centre).Polar), end + new Vector2(1e-9, 0));
        }
    }

    /// <summary>The rows of all tables with a head: words on one line with a name of the first column, below that head.</summary>
    private static List<string[]> Rows(IReadOnlyList<Word> words, string head, string prefix)
    {
        List<string[]> rows = [];
        foreach (var top in words.Where(w => w.Text == head && words.Any(x => x.Text == "x" && OnLine(w, x) && x.X > w.X && x.X < w.X + 90)))
        {
            foreach (var name in words.Where(w => w.Page == top.Page && w.Y > top.Y && Math.Abs(w.X - top.X) < 1 && w.Text.StartsWith(prefix, StringComparison.Ordinal) && w.Text[1..].All(char.IsDigit)).OrderBy(w => w.Y))
            {
                rows.Add([.. words.Where(w => OnLine(name, w) && w.X >= name.X - 0.1).OrderBy(w => w.X).Select(w => w.Text)]);
            }
        }

        return [.. rows.OrderBy(r => int.Parse(r[0][1..], CultureInfo.InvariantCulture))];
    }

    private static IEnumerable<(Vector2 From, Vector2 To)> BendLines(IReadOnlyList<Word> words)
    {
        if (words.OrderBy(w => w.X).FirstOrDefault(w => w.Text == "Bend" && words.Any(d => d.Text == "Direction" && OnLine(w, d))) is not { } head)
        {
            yield break;
        }

        Word Column(string text) => words.Where(w => OnLine(head, w) && w.Text == text && w.X > head.X).MinBy(w => w.X)!;
        Word line = Column("Line"), to = words.Where(w => OnLine(head, w) && w.Text == "to" && w.X > line.X).MinBy(w => w.X)!, die = Column("Die");

        // The table of steps may stand right below: only rows of this one say up or down.
        var names = words.Where(w => w.Page == head.Page && w.Y > head.Y && Math.Abs(w.X - head.X) < 1 && w.Text.All(char.IsDigit) && words.Any(d => OnLine(w, d) && d.Text is ("up" or "down")))
            .OrderBy(w => w.Y).ToList();
        foreach (var name in names)
        {
            Vector2 Cell(Word from, Word until)
            {
                double[] numbers =
                [
                    .. words.Where(w => w.Page == name.Page && w.Y > name.Y - 1 && w.X > from.X - 1 && w.X < until.X - 1)
                        .OrderBy(w => Math.Round(w.Y)).ThenBy(w => w.X).Take(2).Select(w => Number(w.Text.TrimEnd(';'))),
                ];
                return new(numbers[0], numbers[1]);
            }

            yield return (Cell(line, to), Cell(to, die));
        }
    }

    private static bool OnLine(Word one, Word other) => one.Page == other.Page && Math.Abs(one.Y - other.Y) < 1;

    private static double Number(string text) => double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture);

    private static IReadOnlyList<Word> Read(IReadOnlyList<SheetPage> pages)
    {
        var tool = OutsideTool.Require("pdftotext");
        using var folder = new TemporaryFolder();
        var path = folder["drawing.pdf"];
        File.WriteAllBytes(path, PdfWriter.Write(pages, new("a", "b", new(2026, 3, 14))));
        List<Word> words = [];
        var page = 0;
        foreach (Match match in Words().Matches(tool.RunOrFail(["-bbox", path, "-"])))
        {
            if (match.Groups["page"].Success)
            {
                page++;
                continue;
            }

            double Of(string group) => Number(match.Groups[group].Value);

            // A no-break blank parts words for a reader.
            var x = Of("x");
            foreach (var part in System.Net.WebUtility.HtmlDecode(match.Groups["text"].Value).Split('\u00A0'))
            {
                words.Add(new(page, x, Of("y"), part));
                x += 1e-3;
            }
        }

        return words;
    }

    [GeneratedRegex("""(?<page><page )|<word xMin="(?<x>[-\d.]+)" yMin="(?<y>[-\d.]+)" xMax="[-\d.]+" yMax="[-\d.]+">(?<text>[^<]*)</word>""")]
    private static partial Regex Words();
}
