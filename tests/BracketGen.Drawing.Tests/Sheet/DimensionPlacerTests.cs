using BracketGen.Design.Checks;
using BracketGen.Design.Search;
using BracketGen.Drawing.Sheet;
using BracketGen.Geometry;
using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Family;
using BracketGen.Profiles.Toml;
using BracketGen.TestSupport;
using BracketGen.Words.Report;
using CsCheck;

namespace BracketGen.Drawing.Tests.Sheet;

public class DimensionPlacerTests
{
    private static readonly Bounds View = new(new(80, 100), new(180, 160));

    /// <summary>Random stretches on the four sides of a view, some very short, some sharing ends: on a half-millimetre grid.</summary>
    private static readonly Gen<WantedDimension[]> Wanted =
        Gen.Select(Gen.Int[0, 3], Gen.Int[0, 200], Gen.Int[0, 200], (side, a, b) =>
        {
            var span = side < 2 ? View.Width : View.Height;
            double from = a / 200.0 * span, to = b / 200.0 * span;
            Vector2 At(double along) => side < 2 ? View.Min + new Vector2(along, 0) : View.Min + new Vector2(0, along);
            return new WantedDimension(At(from), At(to), (ViewSide)side, ValueFormat.Millimetre.Length(Math.Abs(to - from)));
        }).Array[1, 16];

    private static SheetPage Page(IEnumerable<WantedDimension> wanted) =>
        new SheetPage(new PageFormat("large", 600, 600, new(new(-300, -300), new(600, 600)), false))
            .With(DimensionPlacer.Draw(View, wanted));

    [Fact]
    public void No_text_is_overlapped_or_crossed() =>
        Wanted.Check(
            300,
            wanted =>
            {
                var findings = SheetAudit.Check(Page(wanted));
                Assert.True(findings.IsEmpty, string.Join("\n", findings.Select(f => f.Message)));
            });

    [Fact]
    public void Dimension_lines_of_one_side_share_no_room() =>
        Wanted.Check(
            300,
            wanted =>
            {
                var placed = DimensionPlacer.Place(View, wanted);
                foreach (var row in placed.GroupBy(d => (d.Along, Level: Math.Round(d.Level, 6))))
                {
                    var reaches = row.Select(d => d.Reach).OrderBy(r => r.From).ToArray();
                    for (var i = 1; i < reaches.Length; i++)
                    {
                        Assert.True(reaches[i].From >= reaches[i - 1].To - 1e-6);
                    }
                }
            });

    [Fact]
    public void What_spans_another_stands_farther_out() =>
        Wanted.Check(
            300,
            wanted =>
            {
                var below = DimensionPlacer.Place(View, wanted.Where(w => w.Side == ViewSide.Below));
                foreach (var outer in below)
                {
                    foreach (var inner in below.Where(d => d != outer && d.Measured.From >= outer.Measured.From && d.Measured.To <= outer.Measured.To
                        && d.Measured != outer.Measured))
                    {
                        Assert.True(outer.Level < inner.Level);
                    }
                }
            });

    [Fact]
    public void The_same_wishes_give_the_same_places() =>
        Wanted.Check(
            50,
            wanted => Assert.Equal(Page(wanted).Items.AsEnumerable(), Page(wanted).Items.AsEnumerable()));

    [Fact]
    public void Rows_have_the_standard_distances()
    {
        // 10 mm to the first line and 7 mm from line to line: common practice, no source.
        var placed = DimensionPlacer.Place(
            View,
            [
                new(View.Min, new(180, 100), ViewSide.Below, "100"),
                new(View.Min, new(120, 100), ViewSide.Below, "40"),
                new(new(120, 100), new(180, 100), ViewSide.Below, "60"),
            ]);
        Assert.Equal(["40", "60", "100"], placed.Select(d => d.Text));
        Assert.Equal([90.0, 90.0, 83.0], placed.Select(d => d.Level));
    }

    [Fact]
    public void Dimensions_without_length_and_repeated_ones_are_left_out()
    {
        WantedDimension one = new(View.Min, new(120, 100), ViewSide.Below, "40");
        var placed = DimensionPlacer.Place(View, [one, one with { A = new(80, 130) }, one with { B = new(80, 150) }]);
        Assert.Single(placed);
    }
}
