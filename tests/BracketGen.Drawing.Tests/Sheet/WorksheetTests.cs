using BracketGen.Design.Checks;
using BracketGen.Drawing.Measuring;
using BracketGen.Drawing.Sheet;
using BracketGen.Geometry;
using BracketGen.Photo;
using BracketGen.Profiles.Family;
using BracketGen.Profiles.Forms;
using BracketGen.TestSupport;
using BracketGen.Units;
using BracketGen.Words.Report;
using BracketGen.Words.Worksheet;

namespace BracketGen.Drawing.Tests.Sheet;

/// <summary>The measuring worksheet.</summary>
public class WorksheetTests
{
    public static TheoryData<string> Papers => ["A4", "A"];

    [Theory]
    [MemberData(nameof(Papers))]
    public void Every_page_is_legible(string paper)
    {
        foreach (var page in Compose(paper))
        {
            Assert.Empty(SheetAudit.Check(page).Select(f => f.Message));
        }
    }

    [Theory]
    [MemberData(nameof(Papers))]
    public void It_asks_for_everything_that_a_profile_must_hold(string paper)
    {
        var keys = WorksheetSections.OfThrottleBody(UnitSystem.Metric).Concat(WorksheetSections.OfVehicle(UnitSystem.Metric)).SelectMany(s => s.Blanks).Select(b => b.Key).ToHashSet();
        Assert.Superset(
            new HashSet<string>
            {
                "opens", "bore", "shaft_diameter", "pitch_radius", "rotation", "pocket_angle", "groove_extent", "groove_width", "slot_width",
                "outer_radius", "thickness", "torque_closed", "torque_open", "shaft_drag", "radius", "offset", "friction", "outer_length", "closing_drag", "opening_drag", "outer_axial_stiffness", "outer_mass_per_metre", "outer_end_mass", "normal", "at", "thread", "boss_diameter", "wire_diameter",
                "outer_diameter", "free_inner_length", "min_bend_radius", "diameter", "length", "range", "available_pull", "lever_ratio",
            },
            keys);
        var texts = string.Join(' ', Compose(paper).SelectMany(p => p.Items).OfType<TextItem>().Select(t => t.Text));
        Assert.Contains("sticks open can kill", texts, StringComparison.Ordinal);
        Assert.Contains("Engine off", texts, StringComparison.Ordinal);
        Assert.Contains(paper == "A" ? "lbf in" : "N m", texts, StringComparison.Ordinal);
    }

    public static TheoryData<string> Sets => ["throttle body", "vehicle", "fitted"];

    // The sketch's letters are the texts of capitals alone; all other labels have small letters or digits.
    [Theory]
    [MemberData(nameof(Sets))]
    public void Sketch_and_blanks_have_the_same_letters_each_once(string set)
    {
        foreach (var section in Sections(set))
        {
            var drawn = Sketches.Of(section).Items.OfType<TextItem>().Select(t => t.Text).Where(t => t.All(char.IsAsciiLetterUpper));
            Assert.Equal(section.Blanks.Select(b => b.Letter).Where(l => l.Length > 0).Order(), drawn.Order());
            Assert.InRange(Sketches.Of(section).Bounds.Width, 30, Worksheet.SketchWidth);
        }
    }

    [Theory]
    [MemberData(nameof(Sets))]
    public void The_letters_run_on_without_I_and_O(string set)
    {
        var letters = Sections(set).SelectMany(s => s.Blanks).Select(b => b.Letter).Where(l => l.Length > 0).ToArray();
        var single = "ABCDEFGHJKLMNPQRSTUVWXYZ".Select(c => c.ToString());
        Assert.Equal(single.Concat(single.SelectMany(first => single.Select(second => first + second))).Take(letters.Length), letters);
    }

    // By the forms of docs/profiles.md: these keys take { value = ..., plus_minus = ... }.
    [Theory]
    [InlineData("throttle body", "pitch_radius rotation pocket_angle torque_closed torque_open shaft_drag at radius")]
    [InlineData("vehicle", "free_inner_length available_pull pad_load closing_drag opening_drag friction outer_length outer_axial_stiffness")]
    public void What_the_profile_takes_with_its_plus_minus_has_three_blanks_and_one_for_it(string set, string keys)
    {
        var blanks = Sections(set).SelectMany(s => s.Blanks).Where(b => b.Mark != "weight").ToArray();
        foreach (var key in keys.Split(' '))
        {
            Assert.Contains(blanks, b => b.Key == key);
            Assert.All(blanks.Where(b => b.Key == key), b => Assert.True(b is { Readings: 3, HasPlusMinus: true }, b.What));
        }

        // All radii of a table have one ±.
        Assert.All(blanks.Where(b => !keys.Split(' ').Contains(b.Key) && b.Key is not ("points" or "plus_minus")), b => Assert.False(b.HasPlusMinus, b.What));
    }

    [Theory]
    [MemberData(nameof(Papers))]
    public void A_blank_is_at_least_12_mm_wide(string paper)
    {
        foreach (var page in Compose(paper))
        {
            var blanks = page.Items.OfType<Stroke>().Where(s => s.Kind == LineKind.Rule).ToArray();
            Assert.NotEmpty(blanks);
            Assert.All(blanks, b => Assert.True(b.Bounds.Width >= 12 - 1e-9, $"{b}"));
        }
    }

    // What one sheet holds leaves less room than the next section needs, so only the last of a set may be short.
    [Theory]
    [MemberData(nameof(Papers))]
    public void The_sheets_are_well_filled(string paper)
    {
        var pages = Compose(paper);
        var last = pages.Select((p, i) => (Page: p, Last: i + 1 == pages.Count || !Title(pages[i + 1]).EndsWith(", continued", StringComparison.Ordinal)));
        foreach (var (page, _) in last.Where(p => !p.Last))
        {
            var foot = page.Items.OfType<Polyline>().Where(l => l.Kind == LineKind.Rule).Min(l => l.Bounds.Min.Y);
            Assert.True(foot < page.Space.Min.Y + 0.3 * page.Space.Height, $"{Title(page)}: ends at {foot} mm");
        }

        static string Title(SheetPage page) => page.Items.OfType<TextItem>().First(t => t.Height == TextHeight.Large).Text;
    }

    [Fact]
    public void The_same_every_time() => Assert.Equal(
        PdfWriter.Write(Compose("A4"), new("w", "w", new(2000, 1, 1))), PdfWriter.Write(Compose("A4"), new("w", "w", new(2000, 1, 1))));

    private static IEnumerable<WorksheetSection> Sections(string set) => set switch
    {
        "throttle body" => WorksheetSections.OfThrottleBody(UnitSystem.Metric),
        "vehicle" => WorksheetSections.OfVehicle(UnitSystem.Metric),
        _ => [WorksheetSections.AfterFitting(UnitSystem.Metric)],
    };

    private static IReadOnlyList<SheetPage> Compose(string paper) => paper == "A"
        ? Worksheet.Compose(PageFormat.AnsiA, UnitSystem.Inch)
        : Worksheet.Compose(PageFormat.A4, UnitSystem.Metric);
}

/// <summary>The target that is photographed.</summary>
public class TargetSheetTests
{
    [Theory]
    [InlineData("A4")]
    [InlineData("A")]
    public void It_is_legible_and_its_marks_are_where_the_program_has_them(string paper)
    {
        var format = PageFormat.Named(paper)!;
        var page = TargetSheet.Compose(format);

        Assert.Empty(SheetAudit.Check(page).Select(f => f.Message));

        // Where two black quarters touch: the first corner of each.
        var touching = page.Items.OfType<Fill>().Where(f => f.Points.Length > 20).GroupBy(f => f.Points[0]).Where(g => g.Count() == 2).Select(g => g.Key - format.Sheet.Centre);
        Assert.Equal(PrintedTarget.Marks.Order(Comparer<Vector2>.Create((a, b) => (a.X, a.Y).CompareTo((b.X, b.Y)))), touching.Order(Comparer<Vector2>.Create((a, b) => (a.X, a.Y).CompareTo((b.X, b.Y)))));

        // What no printer prints: 6 mm at each edge.
        Assert.All(page.Items, i => Assert.True(i.Bounds.Min.X >= 6 && i.Bounds.Max.X <= format.Width - 6 && i.Bounds.Min.Y >= 6 && i.Bounds.Max.Y <= format.Height - 6, $"{i}"));
        Assert.Contains(page.Items.OfType<TextItem>(), t => t.Text == "140 mm");
    }
}
