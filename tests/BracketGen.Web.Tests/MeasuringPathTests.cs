using BracketGen.Web.Measuring;

namespace BracketGen.Web.Tests;

/// <summary>Which questions the page asks for what is written so far.</summary>
public class MeasuringPathTests
{
    [Fact]
    public void A_pedal_table_is_asked_for_row_by_row()
    {
        var without = MeasuringPath.Of("vehicle", "profile = \"vehicle\"\n");
        Assert.Contains(without, s => s.Key == "pedal.lever_ratio");
        var with = MeasuringPath.Of("vehicle", "profile = \"vehicle\"\n[[pedal.table]]\n[[pedal.table]]\n");
        Assert.DoesNotContain(with, s => s.Key == "pedal.lever_ratio");
        Assert.Equal(
            [("pedal.table", "Word"), ("pedal.table", "Count"), ("pedal.table[1].pad", "Quantity"), ("pedal.table[1].pull", "Quantity"), ("pedal.table[2].pad", "Quantity"), ("pedal.table[2].pull", "Quantity")],
            with.Where(s => s.Key.StartsWith("pedal.table", StringComparison.Ordinal)).Select(s => (s.Key, s.Form)));
        Assert.Equal(36, with.First(s => s is { Key: "pedal.table", Form: "Count" }).Max);
        Assert.All(with.Where(s => s.Key.StartsWith("pedal.", StringComparison.Ordinal)), s => Assert.Equal(2, s.Sketch));
    }

    [Fact]
    public void A_groove_of_any_shape_is_asked_for_point_by_point()
    {
        var steps = MeasuringPath.Of("throttle body", "profile = \"throttle body\"\n[quadrant.groove]\nshape = \"table\"\n[[quadrant.groove.points]]\nangle = -20\n");
        Assert.Equal(
            ["quadrant.groove", "quadrant.groove.plus_minus", "quadrant.groove.points", "quadrant.groove.points[1].angle", "quadrant.groove.points[1].radius"],
            steps.Where(s => s.Key.StartsWith("quadrant.groove", StringComparison.Ordinal) && !s.Key.Contains('_') || s.Key.StartsWith("quadrant.groove.", StringComparison.Ordinal)).Select(s => s.Key));
        Assert.All(steps.Where(s => s.Key.StartsWith("quadrant.groove.p", StringComparison.Ordinal)), s => Assert.Equal(9, s.Sketch));
        Assert.DoesNotContain(steps, s => s.Key == "quadrant.pitch_radius");
        Assert.Equal("Point", steps.First(s => s.Key == "mount.normal").Form);
    }
}
