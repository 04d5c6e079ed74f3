using System.Globalization;
using System.Text.Json;
using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Search;
using BracketGen.Design.Study;
using BracketGen.Drawing.Tests.ShopDrawing;
using BracketGen.Geometry;
using BracketGen.Profiles.Family;
using BracketGen.SheetMetal.Shops;
using BracketGen.Units;
using BracketGen.Words.Checks;
using BracketGen.Words.Report;
using BracketGen.Words.Worksheet;

namespace BracketGen.Drawing.Tests.Report;

/// <summary>The report's strength section shows what the calculation found, where it found it.</summary>
public class ReportStrengthTests
{
    private static readonly Lazy<IReadOnlyList<Solution>> Solved = new(() =>
        [.. ExampleSolutions.All.Select(s => s.Solution.Strength is null ? Designer.Solve(s.Solution.Job, SearchEffort.Whole) : s.Solution).Where(s => s.Strength is not null)]);

    [Fact]
    public void The_coloured_polygons_cover_the_blank_once()
    {
        foreach (var solution in Solved.Value)
        {
            var document = ReportCases.Parse(ReportCases.Text(solution));
            var pictures = document.QuerySelectorAll("#strength svg.values");
            Assert.Equal(2, pictures.Length);
            foreach (var picture in pictures)
            {
                // Arcs are cut to chords by the mesh, which takes a little off the blank and adds a little at its holes.
                var area = picture.QuerySelectorAll(".band").Sum(p => Polygons(p.GetAttribute("d")!).Sum(Area));
                Assert.Equal(solution.Bracket!.Flat.Blank.Area, area, 0.01 * solution.Bracket.Flat.Blank.Area);
                Assert.All(
                    picture.QuerySelectorAll(".band").SelectMany(p => Polygons(p.GetAttribute("d")!)).Select(Middle),
                    m => Assert.True(solution.Bracket.Flat.Blank.DepthOf(new(m.X, -m.Y)) > -0.3));
            }
        }
    }

    [Fact]
    public void The_ring_is_round_the_largest_stress()
    {
        foreach (var solution in Solved.Value)
        {
            var (report, document) = (solution.Strength!, ReportCases.Parse(ReportCases.Text(solution)));
            var start = document.QuerySelector("#strength .most")!.GetAttribute("d")!.Split(['M', 'A'])[1].Split(' ').Select(n => double.Parse(n, CultureInfo.InvariantCulture)).ToArray();
            var (x, y) = (report.Stamped.At.X, -report.Stamped.At.Y);
            Assert.Equal(y, start[1], 0.01);
            Assert.InRange(start[0] - x, 0.3, 6); // Its path begins on the right, a radius from the middle.

            // In the darkest colour that the picture has.
            var dark = document.QuerySelectorAll("#strength svg.values")[0].QuerySelectorAll(".band")
                .MinBy(b => int.Parse(b.GetAttribute("fill")![1..], NumberStyles.HexNumber, CultureInfo.InvariantCulture))!;
            Assert.True(Polygons(dark.GetAttribute("d")!).Min(p => Middle(p).DistanceTo(new(x, y))) < 2);
        }
    }

    [Fact]
    public void The_picture_to_turn_gets_the_same_mesh()
    {
        foreach (var solution in Solved.Value)
        {
            using var data = JsonDocument.Parse(ReportCases.Parse(ReportCases.Text(solution)).GetElementById("data")!.TextContent);
            var shell = data.RootElement.GetProperty("solid").GetProperty("shell");
            int Count(string name) => shell.GetProperty(name).GetArrayLength();
            var mesh = solution.Strength!.Folded;
            Assert.Equal(3 * mesh.Nodes.Length, Count("points"));
            Assert.Equal(3 * mesh.Nodes.Length, Count("swing"));
            Assert.Equal(mesh.Nodes.Length, Count("stress"));
            Assert.Equal(3 * mesh.Triangles.Length, Count("triangles"));
            Assert.InRange(shell.GetProperty("stress").EnumerateArray().Max(v => v.GetDouble()), 0.5, 1);

            // Each node where folding its place on the flat pattern puts the middle of the sheet, in the frame as measured.
            var bracket = solution.Bracket!;
            var points = shell.GetProperty("points").EnumerateArray().Select(v => v.GetDouble()).Chunk(3).ToList();
            foreach (var (flat, point) in solution.Strength.Flat.Nodes.Zip(points))
            {
                Assert.Equal(0, bracket.Folded.Fold(flat, bracket.Stock.Thickness / 2).DistanceTo(new(point[0], point[1], point[2])), 0.02);
            }
        }
    }

    [Fact]
    public void Loads_and_checks_are_told_and_what_was_not_calculated_too()
    {
        foreach (var solution in Solved.Value)
        {
            var document = ReportCases.Parse(ReportCases.Text(solution));
            var said = ReportCases.Plain(document.GetElementById("strength")!.TextContent);
            Assert.All(solution.Strength!.Checks, c => Assert.Contains(CheckText.Value(c, solution.Job.Units), said, StringComparison.Ordinal));
            Assert.Contains(solution.Job.Units.Write(Quantity.Force, solution.Strength.Stamped.Tension), said, StringComparison.Ordinal);
            Assert.DoesNotContain("NOT calculated", document.Body!.TextContent, StringComparison.Ordinal);

            var without = ReportCases.Parse(ReportCases.Text(solution with { Strength = null }));
            Assert.Contains("NOT calculated", without.GetElementById("cautions")!.TextContent, StringComparison.Ordinal);
            Assert.Empty(without.QuerySelectorAll("[name=paint], svg.values"));
        }
    }

    private static List<Vector2[]> Polygons(string data) =>
    [
        .. data.Split('M', StringSplitOptions.RemoveEmptyEntries).Select(p => p.TrimEnd('Z').Split('L')
            .Select(c => c.Split(' ').Select(n => double.Parse(n, CultureInfo.InvariantCulture)).ToArray()).Select(c => new Vector2(c[0], c[1])).ToArray()),
    ];

    private static double Area(Vector2[] polygon) =>
        Math.Abs(Enumerable.Range(0, polygon.Length).Sum(i => polygon[i].Cross(polygon[(i + 1) % polygon.Length]))) / 2;

    private static Vector2 Middle(Vector2[] polygon) => 1.0 / polygon.Length * polygon.Aggregate((a, b) => a + b);
}
