using System.Globalization;
using System.Text.Json;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Drawing.Dxf.Format;
using BracketGen.Drawing.Report.Html;
using BracketGen.Drawing.Report.Sections;
using BracketGen.Drawing.Tests.ShopDrawing;
using BracketGen.Geometry;
using BracketGen.Mechanism.Grooves;
using BracketGen.Mechanism.Motion;
using BracketGen.Mechanism.Pedals;
using BracketGen.Mechanism.Throttles;
using BracketGen.Profiles.Family;
using BracketGen.Profiles.Forms;
using BracketGen.Units;
using BracketGen.Words.Checks;
using BracketGen.Words.Report;

namespace BracketGen.Drawing.Tests.Report;

/// <summary>What the page shows is what the solver found.</summary>
public class ReportNumberTests
{
    [Fact]
    public void Every_check_stands_on_the_page_with_its_numbers_source_and_consequence() => ReportCases.Each((solution, _, document) =>
    {
        var units = solution.Job.Units;
        Assert.Equal(solution.Checks.Length, document.QuerySelectorAll(".checks tbody tr").Length);
        foreach (var check in solution.Checks)
        {
            var row = document.GetElementById("check-" + check.Code)!;
            Assert.Equal(
                [CheckText.Value(check, units), CheckText.Limit(check, units), CheckText.Margin(check, units)],
                row.QuerySelectorAll("td.n").Select(c => ReportCases.Plain(c.TextContent)));
            var head = ReportCases.Plain(row.QuerySelector("th")!.TextContent);
            Assert.All(new[] { check.Title(), check.Code, check.Source(), check.Consequence() }, t => Assert.Contains(t, head, StringComparison.Ordinal));
            Assert.Equal(CheckText.Mark(check), row.QuerySelector(".mark")!.TextContent.Trim());
        }
    });

    [Fact]
    public void Checks_keep_their_order_within_their_kind_and_none_that_does_not_pass_is_folded() => ReportCases.Each((solution, _, document) =>
    {
        var all = solution.Checks.GroupBy(c => c.Kind).OrderBy(g => g.Key).SelectMany(g => g).ToArray();
        var folded = document.QuerySelectorAll("details.passes .checks tbody tr").Select(r => r.Id).ToArray();
        var open = document.QuerySelectorAll(".checks tbody tr").Select(r => r.Id).Except(folded).ToArray();
        Assert.Equal(all.Select(c => "check-" + c.Code).Where(open.Contains), open);
        Assert.Equal(all.Select(c => "check-" + c.Code).Where(folded.Contains), folded);
        Assert.Equal(all.Length, open.Length + folded.Length);
        Assert.All(all.Where(c => folded.Contains("check-" + c.Code)), c => Assert.True(c.Passes));
        Assert.All(all.Where(c => open.Contains("check-" + c.Code) && c.Passes), c => Assert.InRange(c.Spare, 0, ChecksText.NearSpare));
    });

    [Theory]
    [InlineData(1.5, "M28 2H64V8H28Z")]
    [InlineData(0.5, "M28 2H14V8H28Z")]
    [InlineData(5, "M28 2H100V8H28Z")]
    [InlineData(double.NaN, "M28 2H28V8H28Z")]
    public void A_margin_bar_is_the_spare(double value, string bar)
    {
        // Free play, at least 1 mm: a bar of 72 to the right of the mark at 28 is as much again as the limit.
        var html = new HtmlWriter();
        MarginBar.Write(html, new(CheckId.FreePlay, value, 1));
        Assert.Contains(bar, html.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void The_numbers_of_the_sweep_are_those_of_the_travel() => ReportCases.Each((solution, _, document) =>
    {
        var (travel, units) = (solution.Travel, solution.Job.Units);
        var rows = document.QuerySelectorAll("#sweep-table tbody tr").Select(r => r.Children.Select(c => ReportCases.Plain(c.TextContent)).ToArray()).ToList();
        Assert.Equal("pedal released", rows[0][0]);
        Assert.Equal(units.Write(Quantity.Length, travel.Closed.Straight), rows[0][4]);

        // From the second row on, the solver's own steps, as far as the pedal gets.
        var reached = travel.Sweep.TakeWhile(w => travel.FreePlay + travel.Closed.Length - w.Length <= travel.AvailablePull + 1e-6 && w.Opening.Radians <= travel.Reached.Radians + 1e-12).ToList();
        foreach (var (wire, row) in reached.Zip(rows.Skip(1)))
        {
            Assert.Equal(
                [
                    units.Write(Quantity.Angle, wire.Opening.Radians),
                    units.Write(Quantity.Length, travel.FreePlay + travel.Closed.Length - wire.Length),
                    units.Write(Quantity.Length, wire.Straight),
                    wire.LiftedOff ? "lifted off" : units.Write(Quantity.Angle, wire.Wrap.Radians),
                    units.Write(Quantity.Length, wire.Arm),
                ],
                [row[1], row[3], row[4], row[5], row[6]]);
        }

        // The last row is as far as the valve gets, with all the pull there is.
        Assert.Equal(units.Write(Quantity.Angle, travel.Reached.Radians), rows[^1][1]);
        Assert.Equal("100 %", rows[^1][2]);
        Assert.Equal(units.Write(Quantity.Length, travel.AvailablePull), rows[^1][3]);
    });

    [Fact]
    public void The_picture_moves_as_the_solver_says() => ReportCases.Each((solution, _, document) =>
    {
        using var data = JsonDocument.Parse(document.GetElementById("data")!.TextContent);
        var sweep = data.RootElement.GetProperty("sweep");
        double[] Numbers(string name) => [.. sweep.GetProperty(name).EnumerateArray().Select(n => n.GetDouble())];
        var (turns, from, seat, wraps, pedal) = (Numbers("turns"), Numbers("from"), Numbers("seat"), Numbers("wraps"), Numbers("pedal"));
        Assert.Equal(document.QuerySelectorAll("#sweep-table tbody tr").Length, turns.Length);
        Assert.Equal(0, pedal[0]);
        Assert.Equal(1, pedal[^1], 1e-4);

        // Seen from outside a body opens to the side its profile says; on a screen angles run clockwise.
        var clockwise = solution.Job.Body.Opens == OpeningSense.Clockwise;
        Assert.Equal((clockwise ? 1 : -1) * solution.Travel.Reached.Degrees, turns[^1], 1e-3);
        if (solution.Placement is { } placement && solution.Mechanism is not null)
        {
            Assert.Equal(placement.Seat.X, seat[0], 1e-3);
            Assert.Equal(-placement.Seat.Y, seat[1], 1e-3);
        }

        // Whatever the drawing does, the free wire has the length that the table gives it.
        for (var i = 0; i < turns.Length; i++)
        {
            var drawn = new Vector2(from[2 * i], from[2 * i + 1]).DistanceTo(new(seat[0], seat[1]));
            var wire = TautWire.Solve(solution.Job.Body.OpeningCounterClockwise().Quadrant, solution.Job.Body.Turned(solution.Travel).Closed.Seat, Angle.FromDegrees(Math.Abs(turns[i])));
            Assert.Equal(wire.Straight, drawn, 1e-2);
            Assert.Equal(wire.Wrap.Radians, wraps[i], 1e-3);
        }
    });

    [Fact]
    public void Charts_go_through_the_values_of_the_solver()
    {
        foreach (var (_, solution) in ExampleSolutions.All)
        {
            var document = ReportCases.Parse(ReportCases.Text(solution));
            var (mechanism, travel) = (solution.Mechanism!, solution.Travel);
            var loaded = mechanism.Loaded!;
            var inch = solution.Job.Units == UnitSystem.Inch;

            // 1 in = 25.4 mm; 1 lbf = 0.45359237 kg x 9.80665 m/s² (NIST SP 811, appendix B.8).
            double length = inch ? 25.4 : 1, force = inch ? 0.45359237 * 9.80665 : 1, torque = inch ? length * force : 1000;
            Same(document, "pull", travel.Sweep, w => w.Opening.Degrees, w => (travel.FreePlay + travel.Closed.Length - w.Length) / length, w => loaded.PullAt(w.Opening) / length);
            Same(document, "arm", travel.Sweep, w => w.Opening.Degrees, w => w.Arm / length);
            Same(
                document, "tension", mechanism.FootForces, f => f.Opening.Degrees, f => f.Tension / force, f => loaded.Friction.Opening(f.Tension) / force,
                f => loaded.Friction.Closing(f.Tension) / force);
            Same(document, "foot", mechanism.FootForces, f => f.PadTravel / length, f => f.Pressing / force, f => f.Releasing / force);
            Same(document, "progression", mechanism.Progression!.Points, p => 100 * p.Pedal, p => 100 * p.Area, p => 100 * p.Valve);
            if (mechanism.Sensor is { } sensor)
            {
                Same(document, "volts", mechanism.Progression.Points, p => 100 * p.Pedal, p => sensor.Volts(p.Valve * sensor.Rotation));
            }
            else
            {
                Assert.Null(document.GetElementById("chart-volts"));
            }

            Same(
                document, "return", mechanism.Returns.Zip(mechanism.ReturnsOneFailed).ToList(), r => r.First.Opening.Degrees, r => r.First.Spring / torque,
                r => r.Second.Spring / torque, r => r.First.Needed / torque);
        }
    }

    /// <summary>The chart's table holds values of the solver, and its first curve passes through them where its own grid says they are.</summary>
    private static void Same<T>(IHtmlDocument document, string id, IReadOnlyList<T> points, Func<T, double> x, params Func<T, double>[] values)
    {
        var chart = document.GetElementById("chart-" + id)!;
        var rows = chart.QuerySelectorAll("tbody tr").ToList();
        Assert.InRange(rows.Count, 15, 60);
        Assert.Equal(values.Length + 1, rows[0].Children.Length);
        var (across, up) = (Scale(chart, "x", "middle"), Scale(chart, "y", "end"));
        foreach (var (row, index) in rows.Select((r, i) => (r, i)))
        {
            var cells = row.Children.Select(c => double.Parse(c.TextContent, CultureInfo.InvariantCulture)).ToArray();
            var point = points.MinBy(p => Math.Abs(across(x(p)) - double.Parse(row.GetAttribute("data-x")!, CultureInfo.InvariantCulture)))!;
            Assert.Equal(x(point), cells[0], Half(row.Children[0]));
            for (var i = 0; i < values.Length; i++)
            {
                Assert.Equal(values[i](point), cells[i + 1], Half(row.Children[i + 1]));
                var curve = chart.QuerySelector($"svg[role=img] .c{i + 1}")!.GetAttribute("d")!.Split(['M', 'L'], StringSplitOptions.RemoveEmptyEntries)
                    .Select(p => p.Split(' ').Select(n => double.Parse(n, CultureInfo.InvariantCulture)).ToArray()).ToList();
                Assert.Contains(curve, p => Math.Abs(p[0] - across(x(point))) < 0.02 && Math.Abs(p[1] - up(values[i](point))) < 0.02);
            }
        }

        // The written number may be off by half its last digit.
        static double Half(IElement cell)
        {
            var dot = cell.TextContent.IndexOf('.');
            return 0.5000001 * Math.Pow(10, dot < 0 ? 0 : -(cell.TextContent.Length - dot - 1));
        }
    }

    /// <summary>From a value to the picture, by two of the numbers at the chart's grid.</summary>
    private static Func<double, double> Scale(IElement chart, string coordinate, string anchor)
    {
        var ticks = chart.QuerySelectorAll($"text.tick[text-anchor={anchor}]")
            .Select(t => (Value: double.Parse(t.TextContent, CultureInfo.InvariantCulture), At: double.Parse(t.GetAttribute(coordinate)!, CultureInfo.InvariantCulture) - (coordinate == "y" ? 4 : 0)))
            .ToList();
        var ((low, from), (high, to)) = (ticks[0], ticks[^1]);
        return value => from + (value - low) / (high - low) * (to - from);
    }
}
