using BracketGen.Design.Checks;
using BracketGen.Drawing.Measuring;
using BracketGen.Drawing.Sheet;
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
                "outer_radius", "thickness", "torque_closed", "torque_open", "each", "shaft_drag", "closing_drag", "opening_drag", "normal", "at", "thread", "boss_diameter", "wire_diameter",
                "outer_diameter", "free_inner_length", "min_bend_radius", "diameter", "length", "range", "available_pull", "lever_ratio",
            },
            keys);
        var texts = string.Join(' ', Compose(paper).SelectMany(p => p.Items).OfType<TextItem>().Select(t => t.Text));
        Assert.Contains("sticks open can kill", texts, StringComparison.Ordinal);
        Assert.Contains("Engine off", texts, StringComparison.Ordinal);
        Assert.Contains(paper == "A" ? "lbf in" : "N m", texts, StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_every_time() => Assert.Equal(
        PdfWriter.Write(Compose("A4"), new("w", "w", new(2000, 1, 1))), PdfWriter.Write(Compose("A4"), new("w", "w", new(2000, 1, 1))));

    private static IReadOnlyList<SheetPage> Compose(string paper) => paper == "A"
        ? Worksheet.Compose(PageFormat.AnsiA, UnitSystem.Inch)
        : Worksheet.Compose(PageFormat.A4, UnitSystem.Metric);
}
