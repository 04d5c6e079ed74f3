using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Study;
using BracketGen.Drawing.Sheet;
using BracketGen.Drawing.ShopDrawing;
using BracketGen.Drawing.Solid.Mesh;
using BracketGen.Drawing.Views;
using BracketGen.Geometry;
using BracketGen.Mechanism.Throttles;
using BracketGen.Profiles.Family;
using BracketGen.SheetMetal.Shops;
using BracketGen.TestSupport;
using BracketGen.Units;
using BracketGen.Words.Checks;
using BracketGen.Words.Report;
using BracketGen.Words.Worksheet;

namespace BracketGen.Drawing.Tests.ShopDrawing;

public class BracketDrawingTests
{
    private static readonly PageFormat[] Formats = [PageFormat.A3, PageFormat.A4, PageFormat.AnsiB, PageFormat.AnsiA];

    private static IReadOnlyList<SheetPage> Compose(Solution solution) => BracketDrawing.Compose(solution, DrawingOptions.Standard);

    private static IReadOnlyList<SheetPage> Compose(Solution solution, PageFormat format) => BracketDrawing.Compose(solution, new() { Format = format });

    private static string TextOf(SheetPage page) => string.Join(" ", page.Items.OfType<TextItem>().Select(t => t.Text));

    [Fact]
    public void ExamplesAreLegible()
    {
        Assert.NotEmpty(ExampleSolutions.All);
        foreach (var (name, solution) in ExampleSolutions.All.Where(s => s.Solution.Bracket is not null))
        {
            AssertClean(name, Compose(solution));
            foreach (var format in Formats)
            {
                var pages = Compose(solution, format);
                AssertClean($"{name} on {format.Name}", pages);
                Assert.All(pages.Where(p => p.Framed), p => Assert.Equal(format, p.Format));
                Assert.All(pages.Where(p => !p.Framed), p => Assert.Equal(format.IsAsme ? "A" : "A4", p.Format.Name));
            }
        }
    }

    // With the sheets of the other papers more than 500 drawings in a long run.
    [Fact]
    public void WhateverIsShapedIsLegible()
    {
        Assert.True(RandomSolutions.Samples.Count > LongRun.AtLeast(250));
        RandomSolutions.Each(int.MaxValue, solution => AssertClean("random", Compose(solution)));
    }

    [Fact]
    public void SmallPaperIsLegibleToo()
    {
        var number = 0;
        RandomSolutions.Each(200, solution =>
        {
            var format = number++ % 2 == 0 ? PageFormat.A4 : PageFormat.AnsiA;
            var pages = BracketDrawing.Compose(solution, new() { Format = format, WithTemplate = false });
            AssertClean("random", pages);

            // Nothing is written smaller because the paper is: labels of fields aside, 2.5 mm (ISO 3098-1).
            Assert.All(
                pages.SelectMany(p => p.Items).OfType<TextItem>().Where(t => t.Ink != Ink.Grey && !InTitle(t, format)),
                t => Assert.True(t.Height >= TextHeight.Small, t.Text));
        });
    }

    [Fact]
    public void WhatStandsOnLargePaperStandsOnSmall()
    {
        foreach (var solution in ExampleSolutions.All.Select(e => e.Solution).Where(s => s.Bracket is not null).Concat(RandomSolutions.Samples.Take(25)))
        {
            var large = Words(BracketDrawing.Compose(solution, new() { Format = PageFormat.A3, WithTemplate = false }));
            var small = Words(BracketDrawing.Compose(solution, new() { Format = PageFormat.A4, WithTemplate = false }));
            Assert.Equal(large.Where(w => !small.Contains(w)), []);
        }

        // Every word of notes, tables and dimensions, whatever the lines they are broken into; scales, sheet numbers and the format aside.
        static HashSet<string> Words(IEnumerable<SheetPage> pages) =>
        [
            .. pages.SelectMany(p => p.Items).OfType<TextItem>().SelectMany(t => t.Text.Split(' '))
                .Where(w => w.Length > 2 && w != "(flat" && !(w.Any(char.IsDigit) && (w.Contains(':') || w.Contains('/')))),
        ];
    }

    private static bool InTitle(TextItem text, PageFormat format) =>
        text.Position.X > format.Frame.Max.X - TitleBlock.Width && text.Position.Y < format.Frame.Min.Y + 51;

    [Fact]
    public void BlocksKeepApartAndInTheFrame() => RandomSolutions.Each(50, solution =>
    {
        var bracket = solution.Bracket!;
        var scene = new BracketScene(solution, bracket);
        foreach (var format in Formats)
        {
            KeepApart(scene, format);
        }
    });

    private static void KeepApart(BracketScene scene, PageFormat format)
    {
        var title = new Bounds(new(format.Frame.Max.X - TitleBlock.Width, format.Frame.Min.Y), new(format.Frame.Max.X, format.Frame.Min.Y + 50));
        foreach (var draft in new MainSheets(scene, DrawingOptions.Standard).Compose(format))
        {
            Bounds[] all = [.. draft.Blocks.Select(b => b.Bounds.Grow(-0.6)), title];
            for (var i = 0; i < all.Length; i++)
            {
                Assert.True(format.Frame.Grow(0.01).Holds(all[i]));
                for (var j = 0; j < i; j++)
                {
                    Assert.False(all[i].Touches(all[j]), $"Blocks {j} and {i} overlap.");
                }
            }
        }
    }

    [Fact]
    public void SameSolutionGivesTheSameBytes()
    {
        var info = new PdfInfo("a", "b", new(2026, 3, 14));
        Assert.Equal(PdfWriter.Write(Compose(ExampleSolutions.First), info), PdfWriter.Write(Compose(ExampleSolutions.First), info));
    }

    [Fact]
    public void EverySolutionCarriesTheCautions() => RandomSolutions.Each(40, solution =>
    {
        var text = TextOf(Compose(solution)[0]);
        Assert.Contains("49 CFR", text);
        Assert.Contains("571.124", text);
        Assert.Contains("competent person", text);
    });

    [Fact]
    public void FailedSafetyCheckStandsInLargeType()
    {
        var danger = new Check(CheckId.MovingParts, 1, 3);
        var good = ExampleSolutions.First;
        var pages = Compose(good with { Checks = good.Checks.Add(danger) });
        var large = string.Join(" ", pages[0].Items.OfType<TextItem>().Where(t => t.Height >= TextHeight.Huge).Select(t => t.Text));
        var inch = good.Job.Units == UnitSystem.Inch;
        Assert.Contains($"SAFETY CHECK FAILED: {danger.Title()}: " + (inch ? ".039 in" : "1.0 mm"), large);
        Assert.Contains(danger.Consequence(), TextOf(pages[0]));
        Assert.All(pages.Skip(1), p => Assert.Contains("SAFETY CHECK FAILED", TextOf(p)));
        AssertClean("danger", pages);
        Assert.DoesNotContain("SAFETY CHECK FAILED", TextOf(Compose(good with { Checks = [.. good.Checks.Where(c => c.Passes)] })[0]));
    }

    [Fact]
    public void WhatIsNotProvenStandsInLargeTypeWithWhatToDo()
    {
        var good = ExampleSolutions.First;
        foreach (var format in Formats)
        {
            var pages = Compose(good with { Checks = [.. good.Checks.Where(c => c.Passes), new(CheckId.StampedYield, double.NaN, 1.2)] }, format);
            Assert.Contains(pages[0].Items.OfType<TextItem>(), t => t.Height >= TextHeight.Huge && t.Text == "NOT PROVEN");
            Assert.Contains("Strength was not calculated", TextOf(pages[0]));
            Assert.All(pages.Where(p => !p.Framed), p => Assert.Contains("NOT PROVEN", TextOf(p)));
            AssertClean("not proven", pages);
        }

        Assert.DoesNotContain("NOT PROVEN", TextOf(Compose(good with { Checks = [.. good.Checks.Where(c => c.Passes)] })[0]));
    }

    [Fact]
    public void ManyFailedChecksStillFit()
    {
        var good = ExampleSolutions.First;
        var checks = Enumerable.Range(0, 24).Select(i => new Check(i < 6 ? CheckId.QuadrantOverlap : CheckId.KeepOut, 0.5, 3)
        {
            Subject = $"something that was looked at, number {i}, a sentence of some length, and what to do about it takes another one that is not shorter",
            Pair = i < 6 ? new(Thing.Quadrant, Thing.KeepOut) : null,
        });
        foreach (var format in Formats)
        {
            var pages = Compose(good with { Checks = [.. checks] }, format);
            AssertClean("many", pages);
            var all = string.Join(" ", pages.Select(TextOf));
            Assert.All(Enumerable.Range(0, 24), i => Assert.Contains($"number {i}", all));
        }
    }

    [Fact]
    public void InchJobsAreInInchesThroughout()
    {
        var inch = RandomSolutions.Samples.Where(s => s.Job.Units == UnitSystem.Inch).Take(15).ToList();
        Assert.Equal(15, inch.Count);
        foreach (var page in inch.Select(s => Compose(s)[0]))
        {
            Assert.Equal("B", page.Format.Name);
            Assert.DoesNotContain(page.Items.OfType<TextItem>(), t => t.Text.Contains(" mm"));
        }
    }

    [Theory]
    [InlineData(null, UnitSystem.Metric, "A3")]
    [InlineData(null, UnitSystem.Inch, "B")]
    [InlineData(Paper.A4, UnitSystem.Inch, "A4")]
    [InlineData(Paper.A, UnitSystem.Metric, "A")]
    [InlineData(Paper.B, UnitSystem.Metric, "B")]
    [InlineData(Paper.A3, UnitSystem.Inch, "A3")]
    public void PaperIsWhatTheJobSaysUnlessAnOptionDoes(Paper? paper, UnitSystem units, string name)
    {
        var job = ExampleSolutions.First.Job;
        job = job with { Units = units, Document = job.Document with { Paper = paper } };
        Assert.Equal(name, DrawingOptions.Standard.FormatFor(job).Name);
        Assert.Equal("A4", new DrawingOptions { Format = PageFormat.A4 }.FormatFor(job).Name);
    }

    // ISO 129-1 (from memory): a leader crosses no dimension line where there is another place that does not widen the view by much.
    // ISO 128-2 (from memory): no line runs nearer than 0.7 mm beside another; the part's own edges and what extends them lie where they must.
    [Fact]
    public void Leaders_seldom_cross_dimension_lines_and_these_keep_their_distance()
    {
        List<string> close = [];
        bool Crosses(Solution solution, PageFormat format)
        {
            var pages = BracketDrawing.Compose(solution, new() { Format = format, WithTemplate = false });
            close.AddRange(pages.SelectMany(SheetAudit.LinesTooClose).Select(f => $"{solution.Job.Document.PartNumber} {format.Name}: {f.Message}"));
            return pages.Any(p => SheetAudit.LeadersOverDimensions(p).Any());
        }

        var shipped = ExampleSolutions.All.Where(e => e.Solution.Bracket is not null)
            .SelectMany(e => new[] { PageFormat.A3, PageFormat.A4, PageFormat.AnsiA }.Where(f => Crosses(e.Solution, f)).Select(f => $"{e.Name}, {f.Name}")).ToList();
        Assert.True(shipped.Count <= 3, string.Join("; ", shipped)); // One leader of one job, on each paper.
        Assert.Empty(close);
        var random = RandomSolutions.Samples.Take(60).Count(s => Crosses(s, PageFormat.A3));
        Assert.True(random <= 12, $"{random} of 60 random drawings.");
        Assert.True(close.Count <= 2, string.Join("; ", close)); // A leader along a slanting dimension.
    }

    [Fact]
    public void SheetsAreCounted()
    {
        var pages = Compose(ExampleSolutions.First);
        Assert.Contains($"1/{pages.Count}", TextOf(pages[0]));
        Assert.Contains($"2/{pages.Count}", TextOf(pages[1]));
        Assert.Contains($"3/{pages.Count}", TextOf(pages[2]));
        Assert.Contains($"4/{pages.Count}", TextOf(pages[3]));
        Assert.Contains($"sheet 5/{pages.Count}", TextOf(pages[4]));

        // The formed part, the flat pattern, the order of bends with the part as fitted, strength.
        Assert.Equal(4, BracketDrawing.Compose(ExampleSolutions.First, new() { WithTemplate = false }).Length);
        Assert.Equal(3, BracketDrawing.Compose(ExampleSolutions.First with { Strength = null }, new() { WithTemplate = false }).Length);
    }

    [Fact]
    public void TemplateIsFullSize() => RandomSolutions.Each(40, solution =>
    {
        var bracket = solution.Bracket!;
        // Full size: the outline's length on paper, overlaps of joined sheets aside, is the outline's length.
        var pages = Compose(solution).Where(p => !p.Framed).ToList();
        var circles = pages.SelectMany(p => p.Items).OfType<Stroke>().Where(s => s.Kind == LineKind.Visible && s.Segment is ArcSegment { IsFullCircle: true })
            .Select(s => ((ArcSegment)s.Segment).Radius).Where(r => Math.Abs(r - 2) > 1e-9 || pages.Count == 1).ToList();
        foreach (var hole in bracket.Holes.Where(h => !h.IsSlot))
        {
            Assert.Contains(circles, r => Math.Abs(r - hole.Diameter / 2) < 1e-9);
        }

        var drawn = pages.SelectMany(p => p.Items).OfType<Stroke>().Where(s => s.Kind == LineKind.Visible).Sum(s => s.Segment.Length);
        if (pages.Count == 1)
        {
            Assert.Equal(bracket.Flat.Blank.CutLength, drawn, 6);
        }
        else
        {
            Assert.True(drawn > bracket.Flat.Blank.CutLength);
        }
    });

    [Fact]
    public void FlatPatternIsDrawnAtTheScaleItNames()
    {
        var page = Compose(ExampleSolutions.First)[1];
        var heading = page.Items.OfType<TextItem>().Single(t => t.Text.StartsWith("Flat pattern, scale ", StringComparison.Ordinal)).Text;
        var scale = heading.Split(' ')[^1].Split(':');
        var factor = double.Parse(scale[0]) / double.Parse(scale[1]);
        foreach (var hole in ExampleSolutions.First.Bracket!.Holes.Where(h => !h.IsSlot))
        {
            Assert.Contains(page.Items.OfType<Stroke>(), s => s.Segment is ArcSegment { IsFullCircle: true } c && Math.Abs(c.Radius - factor * hole.Diameter / 2) < 1e-9);
        }
    }

    [Fact]
    public void NothingThatTheShopNeedsIsLeftOut() => RandomSolutions.Each(int.MaxValue, solution =>
    {
        var bracket = solution.Bracket!;
        var value = ValueFormat.Of(solution.Job.Units == UnitSystem.Inch ? UnitSystem.Inch : UnitSystem.Metric);
        var texts = BracketDrawing.Compose(solution, new() { WithTemplate = false })
            .SelectMany(p => p.Items).OfType<TextItem>().Select(t => t.Text).ToList();
        Assert.All(bracket.Holes, h => Assert.True(texts.Count(t => t == h.Name) >= 2, $"Hole {h.Name} is not named in view and table."));
        Assert.All(bracket.Flat.Bends.Select((b, i) => $"bend {i + 1} {(b.IsUp ? "UP" : "DOWN")}"), n => Assert.Contains(texts, t => t.StartsWith(n, StringComparison.Ordinal)));
        Assert.Contains("S", texts);
        Assert.Contains(value.Thickness(bracket.Flat.Thickness), texts);
        foreach (var arc in bracket.Flat.Blank.Outline.Segments.OfType<ArcSegment>())
        {
            // The bottom of a slot is half its width, which the hole table gives.
            var isBottom = bracket.Stop.IsSlot && arc.Centre.DistanceTo(bracket.Stop.Centre.Vector) < 1e-6 && arc.Sweep.Radians < 0;
            Assert.True(isBottom || texts.Any(t => t.Contains(value.Radius(arc.Radius))), $"The radius {arc.Radius} is not given.");
        }
    });

    [Fact]
    public void NoBracketIsSaidPlainly()
    {
        var error = Assert.Throws<ArgumentException>(() => Compose(ExampleSolutions.First with { Bracket = null }));
        Assert.Contains("no bracket to draw", error.Message);
    }

    private static void AssertClean(string name, IReadOnlyList<SheetPage> pages)
    {
        var findings = pages.SelectMany((p, i) => SheetAudit.Check(p).Select(f => $"{name}, sheet {i + 1}: {f.Message}")).ToList();
        Assert.True(findings.Count == 0, string.Join("\n", findings.Take(5)));
    }

    [Fact]
    public void StrengthHasItsOwnSheet()
    {
        foreach (var (name, solution) in ExampleSolutions.All)
        {
            // Its words have a sheet of their own where they would leave the pictures no room.
            var texts = BracketDrawing.Compose(solution, DrawingOptions.Standard)
                .Where(p => p.Items.OfType<TextItem>().Any(t => t.Text == "Strength" || t.Text.StartsWith("First vibration", StringComparison.Ordinal)))
                .SelectMany(p => p.Items).ToList();
            Assert.Contains(texts.OfType<TextItem>(), t => t.Text == "Strength");
            Assert.Contains(texts.OfType<TextItem>(), t => t.Text.StartsWith("First vibration", StringComparison.Ordinal));

            // Every triangle that is not seen on edge is there, in one step of the scale or cut into several.
            Assert.True(texts.OfType<Shade>().Count() > solution.Strength!.Flat.Triangles.Length, name);
        }

        var without = ExampleSolutions.First with { Strength = null };
        Assert.DoesNotContain(
            BracketDrawing.Compose(without, DrawingOptions.Standard).SelectMany(p => p.Items).OfType<TextItem>(), t => t.Text == "Strength");
    }

    [Fact]
    public void ReturnLipIsDrawnToo()
    {
        var drawn = 0;
        foreach (var (name, solution) in ExampleSolutions.All.Where(e => e.Solution.Job.Body.Opens == OpeningSense.CounterClockwise))
        {
            foreach (var lipped in ReturnLip.On(solution.Bracket!, solution.Job))
            {
                var pages = Compose(solution with { Bracket = lipped, Strength = null });
                AssertClean($"{name} with a lip", pages);
                var last = $"bend {lipped.Flat.Bends.Length}";
                Assert.Contains(pages[1].Items.OfType<TextItem>(), t => t.Text.Contains(last, StringComparison.Ordinal));
                var mesh = Drawing.Solid.Mesh.FoldedMesh.Of(lipped.Folded);
                Assert.Equal(lipped.Flat.Blank.Area * lipped.Flat.Thickness, mesh.Volume, 0.05 * mesh.Volume);
                drawn++;
            }
        }

        Assert.True(drawn >= 4);
    }
}
