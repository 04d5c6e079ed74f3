using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Study;
using BracketGen.Drawing.Dxf;
using BracketGen.Drawing.Dxf.Model;
using BracketGen.Drawing.Sheet;
using BracketGen.Drawing.Tests.ShopDrawing;
using BracketGen.Geometry;
using BracketGen.Profiles.Family;
using BracketGen.SheetMetal.Bending;
using BracketGen.SheetMetal.Shops;
using BracketGen.TestSupport;
using BracketGen.Units;
using BracketGen.Words.Report;
using BracketGen.Words.Worksheet;
using NetTopologySuite.Algorithm.Distance;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Buffer;

namespace BracketGen.Drawing.Tests.Dxf;

/// <summary>What a shop may take for granted in a cut file: examples and random brackets.</summary>
public class FlatPatternDxfTests
{
    private static readonly BufferParameters Fine = new(64) { SimplifyFactor = 1e-6 };

    private static IEnumerable<Solution> Brackets(int count) =>
        ExampleSolutions.All.Select(e => e.Solution).Where(s => s.Bracket is not null).Concat(RandomSolutions.Samples.Take(count));

    [Fact]
    public void Contours_are_closed_holes_before_the_outline_and_no_way_in_or_out_beside_them()
    {
        foreach (var solution in Brackets(80))
        {
            var blank = solution.Bracket!.Flat.Blank;
            var drawing = FlatPatternDxf.Compose(solution.Bracket, solution.Job, []);
            var cut = drawing.Entities.Where(e => e.Layer == DxfLayers.CutThrough).ToList();
            Assert.Equal(drawing.Entities.Take(cut.Count), cut);
            Assert.Equal(blank.Holes.Length - Drilled(solution).Count + 1, cut.Count);
            Assert.All(cut, e => Assert.True(e is DxfCircle or DxfPolyline { Closed: true }));
            var outline = cut[^1];
            Assert.Equal(blank.Outline.Perimeter, outline.Segments.Sum(s => s.Length), 1e-9);
            Assert.All(cut.SkipLast(1), hole => Assert.True(Holds(outline.Bounds, hole.Bounds)));
            Assert.All(drawing.Entities, e => Assert.All(e.Segments, s => Assert.True(s.Length > Tolerance.Point)));
            Assert.InRange(drawing.Bounds.Min.Length, 0, 1e-9);
        }
    }

    [Fact]
    public void No_path_is_cut_twice_and_none_crosses_another()
    {
        foreach (var solution in Brackets(60))
        {
            var cut = FlatPatternDxf.Compose(solution.Bracket!, solution.Job, []).Entities.Where(e => e.Layer == DxfLayers.CutThrough).ToList();
            for (var i = 0; i < cut.Count; i++)
            {
                var one = Ring(new Contour(cut[i].Segments));
                Assert.True(one.IsSimple);
                Assert.All(cut.Skip(i + 1), other => Assert.False(one.Intersects(Ring(new Contour(other.Segments)))));
            }
        }
    }

    [Fact]
    public void Each_bend_has_its_line_and_its_ticks_and_marks_stay_on_the_flanges()
    {
        var (named, pilots) = (0, 0);
        foreach (var solution in Brackets(80))
        {
            var bracket = solution.Bracket!;
            var flat = bracket.Flat.Shift(-bracket.Flat.Blank.Outline.Bounds.Min);
            var drawing = FlatPatternDxf.Compose(bracket, solution.Job, []);
            var folds = drawing.Entities.Where(e => e.Layer == DxfLayers.FoldLine).Cast<DxfLine>().ToList();
            Assert.Equal(flat.Bends.Select(b => b.CentreLine), folds.Select(f => (new FlatPoint(f.Start), new FlatPoint(f.End))));
            Assert.All(folds, f => Assert.All(new[] { f.Start, f.End }, end => Assert.InRange(flat.Blank.Outline.DistanceTo(end), 0, 1e-6)));

            var marks = drawing.Entities.Where(e => e.Layer == DxfLayers.SurfaceMark).ToList();
            var ticks = marks.OfType<DxfLine>().ToList();
            var drilled = Drilled(solution);

            // Only bends up are marked: the side that is cut from is the one that they press together.
            var up = flat.Bends.Count(b => b.IsUp);
            Assert.Equal(2 * up + 2 * drilled.Count, ticks.Count);
            Assert.All(ticks.Take(2 * up), t => Assert.Contains(flat.Bends.Where(b => b.IsUp), b => b.CentreLine.Start.DistanceTo(new FlatPoint(t.Start)) < 1e-9 || b.CentreLine.End.DistanceTo(new FlatPoint(t.Start)) < 1e-9));
            var unmarked = FlatPatternDxf.Compose(bracket, solution.Job with { Shop = solution.Job.Shop with { BendMarks = BendMarks.None } }, []);
            Assert.Equal(2 * drilled.Count, unmarked.Entities.Count(e => e.Layer == DxfLayers.SurfaceMark && e is DxfLine));
            Assert.All(ticks.Take(2 * up), t => Assert.Contains(folds, f => f.Segments.Single().DistanceTo(t.Start) < 1e-9 && f.Segments.Single().DistanceTo(t.End) < 1e-9));

            // A hole that is drilled has a cross at its middle, and the head of the file says what to drill.
            Assert.All(drilled, h => Assert.Equal(2, ticks.Count(t => (t.Start + t.End) is var sum && (0.5 * sum).DistanceTo(h.Centre - new FlatPoint(bracket.Flat.Blank.Outline.Bounds.Min)) < 1e-9)));
            Assert.Equal(drilled.Count > 0, drawing.Comment.Contains("at the pilot mark", StringComparison.Ordinal));
            pilots += drilled.Count;
            var strokes = marks.Where(m => m is not DxfLine).ToList();
            Assert.All(strokes.SelectMany(s => s.Segments).SelectMany(s => new[] { s.Start, s.PointAt(0.5), s.End }), p =>
            {
                Assert.True(flat.Blank.DepthOf(p) > 0.9);
                Assert.Null(flat.ZoneOf(new(p)).Bend);
            });
            named += strokes.Count > 0 ? 1 : 0;
            Assert.Equal(strokes.Count == 0, drawing.Comment.Contains("finds no room", StringComparison.Ordinal));
        }

        Assert.True(pilots > 0, "no hole is drilled");
        Assert.True(named > LongRun.AtLeast(75), $"only {named} carry their part number");
        Assert.All(ExampleSolutions.All.Where(e => e.Solution.Bracket is not null), e => Assert.DoesNotContain(
            "finds no room", FlatPatternDxf.Compose(e.Solution.Bracket!, e.Solution.Job, []).Comment, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(0.2)]
    [InlineData(1.6)]
    public void The_beam_s_way_is_what_NetTopologySuite_makes_of_the_blank(double kerf)
    {
        const double chord = 2e-4;
        var tight = 0;
        foreach (var solution in Brackets(40))
        {
            var drilled = Drilled(solution).Select(h => h.Centre.Vector).ToList();
            var blank = solution.Bracket!.Flat.Blank;
            blank = new(blank.Outline, blank.Holes.Where(h => !drilled.Any(d => d.DistanceTo(h.Bounds.Centre) < 1e-9)));
            var path = FlatPatternDxf.PathRound(solution.Bracket, solution.Job, kerf);
            var contours = path.Contours!.Shift(blank.Outline.Bounds.Min);
            tight += path.Tight.Length;
            var expected = Polygon(blank, chord).Buffer(kerf / 2, Fine);
            var found = Polygon(contours, chord);
            Assert.True(found.IsValid);
            Assert.Equal(expected.Area, contours.Area, 3e-4 * contours.CutLength);
            Assert.InRange(DiscreteHausdorffDistance.Distance(expected.Boundary, found.Boundary), 0, 2e-3);

            // Half the kerf off everywhere, but in corners that the beam does not get into.
            Assert.All(contours.Contours.SelectMany(c => c.Segments), s =>
                Assert.InRange(blank.DepthOf(s.PointAt(0.5)), -kerf / 2 - 1e-9, -kerf / 2 + 1e-9));
        }

        Assert.True(kerf < 1 || tight < 200, $"{tight} tight corners");
    }

    [Fact]
    public void A_compensated_file_says_so_in_its_head_and_beside_the_part()
    {
        foreach (var solution in Brackets(20))
        {
            var bracket = solution.Bracket!;
            var net = FlatPatternDxf.Compose(bracket, solution.Job, ["Warned"]);
            var drawing = FlatPatternDxf.ComposeCompensated(bracket, solution.Job, FlatPatternDxf.PathRound(bracket, solution.Job, 0.25), ["Warned"]);
            Assert.Contains("not compensated", net.Comment, StringComparison.Ordinal);
            Assert.DoesNotContain("not compensated", drawing.Comment, StringComparison.Ordinal);
            Assert.Contains("COMPENSATED for a kerf of " + (solution.Job.Units == UnitSystem.Inch ? "0.0098 in" : "0.250 mm"), drawing.Comment, StringComparison.Ordinal);
            Assert.EndsWith("Warned", drawing.Comment, StringComparison.Ordinal);
            Assert.DoesNotContain(net.Layers, l => l == DxfLayers.Note);

            // The note lies below the part, and all else but the contours is the same in both.
            var note = drawing.Entities.Where(e => e.Layer == DxfLayers.Note).ToList();
            Assert.NotEmpty(note);
            Assert.All(note, e => Assert.True(e.Bounds.Max.Y < -2));
            Assert.Equal(Marks(net), Marks(drawing));
            Assert.Equal(-0.125, drawing.Entities.Where(e => e.Layer == DxfLayers.CutThrough).Min(e => e.Bounds.Min.X), 1e-9);
        }

        static IEnumerable<string> Marks(DxfDrawing drawing) => drawing.Entities
            .Where(e => e.Layer == DxfLayers.FoldLine || e.Layer == DxfLayers.SurfaceMark)
            .Select(e => $"{e.Layer.Name} {string.Join(' ', e.Segments)}");
    }

    [Fact]
    public void Part_text_stands_below_all_else_on_a_layer_of_its_own_and_only_if_asked_for()
    {
        foreach (var solution in Brackets(20))
        {
            var bracket = solution.Bracket!;
            var path = FlatPatternDxf.PathRound(bracket, solution.Job, 0.25);
            foreach (var (without, with) in new[]
            {
                (FlatPatternDxf.Compose(bracket, solution.Job, ["Warned"]), FlatPatternDxf.Compose(bracket, solution.Job, ["Warned"], 25)),
                (FlatPatternDxf.ComposeCompensated(bracket, solution.Job, path, ["Warned"]), FlatPatternDxf.ComposeCompensated(bracket, solution.Job, path, ["Warned"], 25)),
            })
            {
                Assert.DoesNotContain(without.Layers, l => l == DxfLayers.PartText);
                Assert.DoesNotContain(without.Entities, e => e is DxfText);
                Assert.DoesNotContain("PART_TEXT", without.Comment, StringComparison.Ordinal);
                Assert.Contains("PART_TEXT: for reading. Do not cut, do not mark.", with.Comment, StringComparison.Ordinal);
                Assert.EndsWith("Warned", with.Comment, StringComparison.Ordinal);
                Assert.Equal(without.Layers.Append(DxfLayers.PartText), with.Layers);
                Assert.Equal(without.Entities.Select(e => $"{e.Layer.Name} {string.Join(' ', e.Segments)}"), with.Entities.SkipLast(with.Entities.Length - without.Entities.Length).Select(e => $"{e.Layer.Name} {string.Join(' ', e.Segments)}"));

                // Nothing but the text is below where all else ends, and no line of it reaches into another.
                var texts = with.Entities.Skip(without.Entities.Length).Cast<DxfText>().ToList();
                var document = solution.Job.Document;
                string[] expected =
                [
                    .. document.PartNumber.Length > 0 ? new[] { $"PART: {document.PartNumber}" } : [],
                    .. document.Revision.Length > 0 ? new[] { $"REVISION: {document.Revision}" } : [],
                    $"MATERIAL: {bracket.Stock.Material.Designation}",
                    $"THICKNESS: {solution.Job.Units.WriteSize(bracket.Stock.Thickness)}",
                    "QUANTITY: 25",
                ];
                Assert.Equal(expected, texts.Select(t => t.Value));
                Assert.All(texts, t => Assert.Same(DxfLayers.PartText, t.Layer));
                Assert.True(texts[0].Bounds.Max.Y < without.Bounds.Min.Y - 1);
                Assert.All(texts.Zip(texts.Skip(1)), pair => Assert.True(pair.Second.Bounds.Max.Y < pair.First.Bounds.Min.Y));
                Assert.Equal(texts[^1].Bounds.Min.Y, with.Bounds.Min.Y, 1e-9);
            }
        }
    }

    // Old controls have short buffers for a number: nine decimals at most, twelve in a bulge, and no minus before zero.
    [Fact]
    public void Numbers_have_no_long_tails()
    {
        var reals = 0;
        foreach (var solution in Brackets(30))
        {
            var lines = System.Text.Encoding.ASCII.GetString(new DxfWriter().Write(FlatPatternDxf.Compose(solution.Bracket!, solution.Job, []))).Split('\n');
            for (var i = 0; i + 1 < lines.Length; i += 2)
            {
                if (int.Parse(lines[i]) is >= 10 and < 60)
                {
                    var value = lines[i + 1];
                    Assert.InRange(value.Length - value.IndexOf('.') - 1, 1, int.Parse(lines[i]) == 42 ? 12 : 9);
                    Assert.NotEqual("-0.0", value);
                    reals++;
                }
            }
        }

        Assert.True(reals > 1000);
    }

    [Fact]
    public void A_beam_wider_than_a_hole_is_refused()
    {
        var solution = ExampleSolutions.First;
        var path = FlatPatternDxf.PathRound(solution.Bracket!, solution.Job, solution.Bracket!.Holes.Min(h => h.Diameter) + 0.1);
        Assert.Null(path.Contours);
        Assert.NotNull(path.Stuck);
        Assert.Throws<ArgumentException>(() => FlatPatternDxf.ComposeCompensated(solution.Bracket!, solution.Job, path, []));
    }

    private static List<BracketHole> Drilled(Solution solution) => [.. HoleMaking.Drilled(solution.Bracket!, solution.Job)];

    private static bool Holds(Bounds outer, Bounds inner) =>
        outer.Min.X < inner.Min.X && outer.Min.Y < inner.Min.Y && outer.Max.X > inner.Max.X && outer.Max.Y > inner.Max.Y;

    private static LinearRing Ring(Contour contour, double chord = 0.01)
    {
        var points = contour.Flatten(chord).Select(p => new Coordinate(p.X, p.Y)).ToList();
        return new LinearRing([.. points, points[0].Copy()]);
    }

    private static Polygon Polygon(Region region, double chord) =>
        new(Ring(region.Outline, chord), [.. region.Holes.Select(h => Ring(h, chord))]);
}
