using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Study;
using BracketGen.Drawing.Inspecting;
using BracketGen.Drawing.Setup;
using BracketGen.Drawing.Sheet;
using BracketGen.Drawing.Tests.ShopDrawing;
using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;
using BracketGen.Profiles.Family;
using BracketGen.Profiles.Forms;
using BracketGen.SheetMetal.Fasteners;
using BracketGen.SheetMetal.Shops;
using BracketGen.TestSupport;
using BracketGen.Units;
using BracketGen.Words;
using BracketGen.Words.Checks;
using BracketGen.Words.Report;
using BracketGen.Words.SetupSheet;

namespace BracketGen.Drawing.Tests.Setup;

public class SetupSheetTests
{
    private static IReadOnlyList<SheetPage> Compose(Solution solution) =>
        SetupSheet.Compose(solution, solution.Job.Units == UnitSystem.Inch ? PageFormat.AnsiA : PageFormat.A4);

    /// <summary>The words of all sheets, lines joined, no-break blanks as blanks.</summary>
    private static string TextOf(IEnumerable<SheetPage> pages) =>
        string.Join(' ', pages.SelectMany(p => p.Items).OfType<TextItem>().Select(t => t.Text)).Replace('\u00A0', ' ');

    private static Solution Example(string name) => ExampleSolutions.All.Single(e => e.Name == name).Solution;

    [Fact]
    public void Examples_are_legible()
    {
        foreach (var (name, solution) in ExampleSolutions.All.Where(e => e.Solution.Bracket is not null))
        {
            Clean(name, Compose(solution));
            Clean(name, InspectionSheet.Compose(solution, solution.Job.Units == UnitSystem.Inch ? PageFormat.AnsiA : PageFormat.A4));
        }
    }

    [Fact]
    public void Whatever_is_shaped_is_legible() => RandomSolutions.Each(200, solution =>
    {
        Clean("random", Compose(solution));
        Clean("random, inspection", InspectionSheet.Compose(solution, PageFormat.A4));
    });

    [Fact]
    public void Each_dimension_has_its_limits_and_a_blank_on_the_inspection_sheet()
    {
        var solution = Example("plover-alder-58");
        var text = TextOf(InspectionSheet.Compose(solution, PageFormat.A4));
        foreach (var item in Inspection.ItemsOf(solution.Job, solution.Bracket!))
        {
            Assert.Contains($"{item.Name} ", text, StringComparison.Ordinal);
        }

        // M6 in a hole of 6.6 mm (ISO 273), laser, ISO 9013 class 1 in 3 mm: ±0.15.
        Assert.Contains("6.450 mm 6.750 mm", text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_main_example_says_what_to_buy_what_to_set_and_how_tight()
    {
        var text = TextOf(Compose(Example("plover-alder-58")));
        string[] expected =
        [
            "PLV-A58-01, revision A", "ISO 4017 - M6 x 16 - 8.8", "ISO 7089 - 6 - 200 HV", "M8 x 1, 13 mm across flats", "barrel 6 mm x 8 mm",
            "7.0 N m", "13.9 mm", "11.4 mm", "2.0 mm (1.5 to 2.5 mm)", "minimum 1.0 mm", "6.8 mm (5.1 to 8.5 mm)", "one turn of the nuts is 1 mm",
            "0.50 V", "49 CFR 571.124", "VDI 2230", "FED-STD-H28/2", "common practice, no source",
        ];
        Assert.All(expected, e => Assert.Contains(e, text, StringComparison.Ordinal));

        // Closed at 0.52 V, open at 4.46 V: turned back to 0.50 V it reads 0.02 V less at the floor.
        Assert.Contains("4.44 V", text, StringComparison.Ordinal);
        foreach (var caution in Cautions.All)
        {
            Assert.Contains(caution, text, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Every_check_has_two_boxes_and_all_that_must_be_checked_is_there()
    {
        foreach (var (_, solution) in ExampleSolutions.All.Where(e => e.Solution.Bracket is not null))
        {
            var pages = Compose(solution);
            var boxes = pages.SelectMany(p => p.Items).OfType<Polyline>().Count(l => l.Kind == LineKind.Box && Math.Abs(l.Bounds.Width - 4.2) < 1e-9);
            var texts = pages.SelectMany(p => p.Items).OfType<TextItem>().Select(t => t.Text).ToList();
            Assert.Equal(boxes / 2, texts.Count(t => t == "cold"));
            Assert.Equal(boxes / 2, texts.Count(t => t == "hot"));
            Assert.True(boxes >= 18);
            var text = TextOf(pages);
            string[] expected =
            [
                "slip off the foot from a quarter, a half and three quarters", "return spring unhooked", "Pedal on the floor, worked by foot", "nothing can catch",
                "rocks the engine on its mounts", "locknuts are tight", "stays in its pocket", "Checked by",
            ];
            Assert.All(SetupChecks.Readings.SelectMany(r => r), label => Assert.Contains(label, texts));
            Assert.All(expected, e => Assert.Contains(e, text, StringComparison.Ordinal));
        }
    }

    [Fact]
    public void Failed_safety_checks_stand_in_large_type_on_the_first_sheet_and_others_below()
    {
        var danger = new Check(CheckId.MovingParts, 1, 3);
        var nuisance = new Check(CheckId.HoleBend, 1, 3) { Subject = "A" };
        var good = ExampleSolutions.First;
        var pages = Compose(good with { Checks = [.. good.Checks.Where(c => c.Passes), danger, nuisance] });
        var large = string.Join(' ', pages[0].Items.OfType<TextItem>().Where(t => t.Height >= TextHeight.Huge).Select(t => t.Text));
        Assert.StartsWith($"SAFETY CHECK FAILED: {danger.Title()}", large, StringComparison.Ordinal);
        Assert.Contains(nuisance.Consequence(), TextOf(pages), StringComparison.Ordinal);
        Clean("danger", pages);
        Assert.DoesNotContain("FAILED", TextOf(Compose(good with { Checks = [.. good.Checks.Where(c => c.Passes)] })), StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_not_proven_stands_in_large_type_with_what_to_do()
    {
        var good = ExampleSolutions.First;
        var pages = Compose(good with { Checks = [.. good.Checks.Where(c => c.Passes), new(CheckId.StampedYield, double.NaN, 1.2)] });
        Assert.Contains(pages[0].Items.OfType<TextItem>(), t => t.Height >= TextHeight.Huge && t.Text == "NOT PROVEN");
        Assert.Contains("Strength was not calculated", TextOf(pages), StringComparison.Ordinal);
        Clean("not proven", pages);
    }

    [Fact]
    public void Many_failed_checks_go_on_over_the_sheets()
    {
        var good = ExampleSolutions.First;
        var checks = Enumerable.Range(0, 24).Select(i => new Check(i < 6 ? CheckId.QuadrantOverlap : CheckId.KeepOut, 0.5, 3)
        {
            Subject = $"something that was looked at, number {i}, a sentence of some length, and what to do about it takes another one that is not shorter",
            Pair = i < 6 ? new(Thing.Quadrant, Thing.KeepOut) : null,
        });
        var pages = Compose(good with { Checks = [.. checks] });
        Clean("many", pages);
        var text = TextOf(pages);
        Assert.All(Enumerable.Range(0, 24), i => Assert.Contains($"number {i}", text, StringComparison.Ordinal));
    }

    [Fact]
    public void Inch_jobs_are_in_inches_throughout()
    {
        foreach (var solution in RandomSolutions.Samples.Where(s => s.Job.Units == UnitSystem.Inch).Take(12).Append(Example("whimbrel-hornbeam-70")))
        {
            var pages = Compose(solution);
            Assert.All(pages, p => Assert.Equal("A", p.Format.Name));
            var text = TextOf(pages);
            Assert.DoesNotContain(" mm", text, StringComparison.Ordinal);
            Assert.DoesNotContain(" N m", text, StringComparison.Ordinal);
            Assert.DoesNotContain("MPa", text, StringComparison.Ordinal);
            Assert.Contains(" lbf in", text, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Torques_in_inches_are_the_same_torques()
    {
        // NIST SP 811, appendix B.8: 1 lbf in = 0.112 984 8 N m; 7 N m are 61.96 lbf in.
        Assert.Equal("62 lbf in", UnitSystem.Inch.WriteCoarse(Quantity.Torque, 7000));

        // Ibidem: 1 lbf = 4.448 222 N, 1 ksi = 6.894 757 MPa.
        Assert.Equal("2248 lbf", UnitSystem.Inch.WriteCoarse(Quantity.Force, 10_000));
        Assert.Equal("16 ksi", UnitSystem.Inch.WriteCoarse(Quantity.Stress, 110));
    }

    [Fact]
    public void Every_screw_of_every_job_is_listed_with_its_holes_and_torque() => RandomSolutions.Each(60, solution =>
    {
        var bracket = solution.Bracket!;
        var text = TextOf(Compose(solution));
        foreach (var group in bracket.Holes.Where(h => h.Purpose == HolePurpose.Bolt).GroupBy(h => h.Thread!))
        {
            var screw = MountScrew.For(group.Key, bracket.Stock.Thickness);
            Assert.Contains($"ISO 4017 - {group.Key.Name} x {screw.Length} - 8.8", text, StringComparison.Ordinal);
            Assert.Contains(solution.Job.Units.WriteCoarse(Quantity.Torque, screw.Torque), text, StringComparison.Ordinal);
        }

        Assert.Equal(solution.Job.Vehicle.Cable.OuterEnd is ThreadedAdjuster, text.Contains("adjuster locknut, with the cable", StringComparison.Ordinal));
    });

    [Fact]
    public void Slotted_mount_holes_are_set_in_the_middle_and_marked()
    {
        var text = TextOf(Compose(Example("plover-alder-58-slotted")));
        Assert.All(
            ["ISO 7089 - 6 - 300 HV", "can be shifted 1.5 mm each way", "Set each screw in the middle of its slot", "The middle and every end of the slots are calculated.", "Paint a line across the edge of the bracket and the casting"],
            said => Assert.Contains(said, text, StringComparison.Ordinal));
    }

    [Fact]
    public void Nuts_studs_and_bolts_are_ordered_by_their_standards()
    {
        var text = TextOf(Compose(Example("plover-alder-58-stud")));
        Assert.All(
            [
                "ASME B18.2.2 - 1/4-28 UNF - SAE J995 grade 5", "stud at H1", "ASME B18.2.1 - 1/4-20 UNC x 1-1/4 in - SAE J429 grade 5", "behind the flange at H2", "ASME B18.21.1, type A - 1/4 N",
                "Run a bare nut down it by hand", "bolt through the hole: it must go in by hand", "a washer under each head and each nut", "Hold the head and turn the nut.", "under the bracket at H2", "0.2362 in ±0.0008 in, ends square", "Put a spacer 0.236 in long under", "Length of a bolt with a nut",
            ],
            words => Assert.Contains(words, text, StringComparison.Ordinal));
        Assert.DoesNotContain("ISO 4017", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Each_way_of_holding_the_outer_has_its_own_words()
    {
        // Every kind in a slot and in a hole, whatever the first samples have.
        OuterEnd[] kinds =
        [
            new ThreadedAdjuster(8, 1, 14, 13, 5), new PlainFerrule(7.5, 11), new SlottedClip(8, 14, 4), new BulkheadFerrule(8, 1, 16, 13, 5), new ClippedFerrule(7.5, 11, 5, 8, 13),
            new PushInEnd(9, 13, 1, 3, 7),
        ];
        Solution[] drawn = [RandomSolutions.Samples.First(s => s.Bracket!.Stop.IsSlot), RandomSolutions.Samples.First(s => !s.Bracket!.Stop.IsSlot)];
        var all = drawn.SelectMany(s => kinds.Select(end => s with { Job = s.Job with { Vehicle = s.Job.Vehicle with { Cable = s.Job.Vehicle.Cable with { OuterEnd = end } } } }))
            .Select(s => (Ends: s.Job.Vehicle.Cable.OuterEnd, s.Bracket!.Stop.IsSlot, Text: TextOf(Compose(s)))).ToList();
        void Says(Func<OuterEnd, bool, bool> which, string words)
        {
            var those = all.Where(a => which(a.Ends, a.IsSlot)).ToList();
            Assert.NotEmpty(those);
            Assert.All(those, t => Assert.Contains(words, t.Text, StringComparison.Ordinal));
        }

        Says((e, slot) => e is ThreadedAdjuster && slot, "from the open side, one nut on each side");
        Says((e, slot) => e is ThreadedAdjuster && !slot, "off the adjuster and pass it over the end fitting");
        Says((e, _) => e is SlottedClip, "Push the neck of the clip into slot");
        Says((e, slot) => e is BulkheadFerrule && slot, "lay it into slot");
        Says((e, slot) => e is BulkheadFerrule && !slot, "off the ferrule and pass it over the end fitting");
        Says((e, _) => e is BulkheadFerrule, "nut of the ferrule, with the cable");
        Says((e, _) => e is ClippedFerrule, "Push the clip into its groove");
        Says((e, _) => e is ClippedFerrule, "clip, new");
        Says((e, _) => e is PushInEnd, "barbs spring open behind the sheet");
        Says((e, slot) => e is PlainFerrule && slot, "Lay the nose of the ferrule into slot");
        Says((e, slot) => e is PlainFerrule && !slot, "seat the shoulder of the ferrule on that side");
    }

    [Fact]
    public void The_same_solution_gives_the_same_bytes()
    {
        var info = new PdfInfo("a", "b", new(2026, 3, 14));
        Assert.Equal(PdfWriter.Write(Compose(ExampleSolutions.First), info), PdfWriter.Write(Compose(ExampleSolutions.First), info));
    }

    [Fact]
    public void Without_a_bracket_there_is_nothing_to_fit() =>
        Assert.Throws<ArgumentException>(() => Compose(ExampleSolutions.First with { Bracket = null }));

    private static void Clean(string name, IReadOnlyList<SheetPage> pages)
    {
        var findings = pages.SelectMany((p, i) => SheetAudit.Check(p).Select(f => $"{name}, sheet {i + 1}: {f.Message}")).ToList();
        Assert.True(findings.Count == 0, string.Join("\n", findings.Take(5)));
        Assert.All(pages, p => Assert.True(p.Items.Length > 5, "a sheet with a head and nothing below it"));
    }
}
