using System.Text.Json.Nodes;
using BracketGen.Design.Checks;
using BracketGen.Design.Part;
using BracketGen.Design.Study;
using BracketGen.Drawing.Result;
using BracketGen.Drawing.Sheet;
using BracketGen.Drawing.ShopDrawing;
using BracketGen.Drawing.Views;
using BracketGen.SheetMetal.Forming;
using BracketGen.SheetMetal.Tooling;
using BracketGen.TestSupport;
using BracketGen.Units;
using BracketGen.Words.ShopDrawing;
using NetTopologySuite.Geometries;

namespace BracketGen.Drawing.Tests.ShopDrawing;

/// <summary>The order of bends on the drawing: legible on every paper, and true of the plan.</summary>
public class BendSheetTests
{
    private static readonly PageFormat[] Formats = [PageFormat.A3, PageFormat.A4, PageFormat.AnsiB, PageFormat.AnsiA];

    // Examples, and random brackets of any shape for which the example's tools find an order.
    private static readonly Lazy<IReadOnlyList<Solution>> Bent = new(() =>
    [
        .. ExampleSolutions.All.Select(e => e.Solution).Where(s => s.Bracket?.Plan is not null),
        .. RandomSolutions.Samples.Take(60).Select(s =>
        {
            var shop = ExampleSolutions.First.Job.Shop with { Dies = s.Job.Shop.Dies };
            return s with { Bracket = s.Bracket! with { Plan = BendChecks.Bend(s.Bracket, shop).Plan } };
        }).Where(s => s.Bracket!.Plan is { Steps.IsEmpty: false }),
    ]);

    [Fact]
    public void Bend_sheets_are_legible_and_their_blocks_keep_apart()
    {
        Assert.Contains(Bent.Value, s => s.Bracket!.Flat.Bends.Length > 1);
        foreach (var solution in Bent.Value)
        {
            foreach (var format in Formats)
            {
                var scene = new BracketScene(solution, solution.Bracket!);
                var main = new MainSheets(scene, DrawingOptions.Standard);
                var title = main.TitleRoom(format);
                foreach (var draft in new BendSheet(scene, solution.Bracket!.Plan!).Compose(format, title))
                {
                    Geometry.Bounds[] all = [.. draft.Blocks.Select(b => b.Bounds.Grow(-0.6)), title];
                    for (var i = 0; i < all.Length; i++)
                    {
                        Assert.True(format.Frame.Grow(0.01).Holds(all[i]), $"{format.Name}: block {i} of {all.Length - 1} is outside the frame");
                        Assert.All(all[..i], b => Assert.False(all[i].Touches(b), $"{format.Name}: block {i} of {all.Length - 1} overlaps another"));
                    }

                    Assert.Empty(SheetAudit.Check(main.Finish(format, draft, 1, 1)));
                }
            }
        }
    }

    [Fact]
    public void Every_step_stands_on_the_drawing_once()
    {
        foreach (var solution in Bent.Value)
        {
            var plan = solution.Bracket!.Plan!;
            var texts = BracketDrawing.Compose(solution, new() { WithTemplate = false }).SelectMany(p => p.Items).OfType<TextItem>().Select(t => t.Text).ToList();
            for (var step = 0; step < plan.Steps.Length; step++)
            {
                Assert.Contains(BendStepText.Step(plan, step), texts);
            }

            Assert.Equal(plan.Steps.Length, texts.Count(t => t == BendStepText.After));
        }
    }

    // Fingers that meet an edge or two points lie on the outline, so far from the bend's middle as the table says.
    [Fact]
    public void Fingers_meet_the_edges_that_the_table_names()
    {
        var met = 0;
        foreach (var bracket in Bent.Value.Select(s => s.Bracket!))
        {
            var edges = bracket.Edges().ToList();
            foreach (var step in bracket.Plan!.Steps.Where(s => s.Gauge.Kind is GaugeKind.Edge or GaugeKind.TwoPoints))
            {
                var bend = bracket.Flat.Bends[step.Bend];
                var said = BendStepText.Rows(bracket, [bracket.Plan.Steps.IndexOf(step)], UnitSystem.Metric).Single(r => r[0] == "Placed by")[1];
                foreach (var finger in step.Gauge.Fingers)
                {
                    var at = step.OnFlat(bend, finger).Vector;
                    Assert.Equal(finger.Distance, Math.Abs((at - bend.CentreLine.Start.Vector).Dot(bend.Across)), 1e-9);
                    var edge = edges.MinBy(e => e.DistanceTo(at))!;

                    // The outline is searched by chords 0.005 mm from it; a finger over a rounded end of its edge is as wide as the edge needs.
                    Assert.InRange(edge.DistanceTo(at), 0, 0.05);
                    Assert.Contains($"P{edges.IndexOf(edge) + 1} to ", said);
                    met++;
                }
            }
        }

        Assert.True(met > 20, $"only {met} fingers");
    }

    // What is cut to the window is what NetTopologySuite cuts to it, in area.
    [Fact]
    public void Pictures_show_what_lies_in_their_window()
    {
        foreach (var plan in Bent.Value.Take(12).Select(s => s.Bracket!.Plan!))
        {
            for (var step = 0; step < plan.Steps.Length; step++)
            {
                var (before, after) = BendPicture.Of(plan, step);
                Assert.Equal(before.Window, after.Window);
                foreach (var (picture, share) in new[] { (before, 0.0), (after, 1.0) })
                {
                    var window = new Envelope(picture.Window.Min.X, picture.Window.Max.X, picture.Window.Min.Y, picture.Window.Max.Y);
                    var whole = plan.Picture(step, share).Sum(s => Polygon(s.Outline.Select(p => (p.Across, p.Up))).Intersection(GeometryFactory.Default.ToGeometry(window)).Area);
                    Assert.Equal(whole, picture.Shapes.Sum(s => Area([.. s.Outline])), 1e-3 * whole);
                    Assert.All(picture.Shapes.SelectMany(s => s.Outline), p => Assert.True(picture.Window.Grow(1e-9).Holds(new(p, p))));
                }
            }
        }
    }

    [Fact]
    public void The_result_carries_the_steps()
    {
        foreach (var (_, solution) in ExampleSolutions.All.Where(e => e.Solution.Bracket?.Plan is not null))
        {
            var steps = JsonNode.Parse(ResultJson.Write(solution, []))!["bracket"]!["bendSteps"]!.AsArray();
            Assert.Equal(solution.Bracket!.Plan!.Steps.Select(s => s.Bend), steps.Select(s => (int)s!["bend"]!));
            Assert.All(steps, s => Assert.InRange((double)s!["forcePerLength"]!, 1, (double)s["maxForcePerLength"]!));
        }
    }

    // A vice: no die, no punch, no force; the bend is placed by a scribed line.
    [Fact]
    public void A_shop_with_a_vice_is_asked_for_no_die()
    {
        var solution = ExampleSolutions.First;
        var bracket = solution.Bracket! with { Die = null };
        var tools = ToolSet.ViceOnly(bracket.Flat.Bends[0].InsideRadius);
        bracket = bracket with { Plan = BendSimulation.Of(bracket.Flat with { Bends = [bracket.Flat.Bends[0] with { Turn = Geometry.Angle.FromDegrees(60) }] }, bracket.Stock, [], tools).Plan };
        Assert.NotNull(bracket.Plan);
        var rows = BendStepText.Rows(bracket, [0], UnitSystem.Metric);
        Assert.DoesNotContain(rows, r => r[0] is "Die" or "Punch" or "Force" or "Gauge distance");
        Assert.Contains(rows, r => r[0] == "Bent over" && r[1] == "vice, bar");
        Assert.Contains(BendStepText.Notes(bracket, UnitSystem.Metric), n => n.Contains("bend to the scribed line") && n.Contains("±0.5\u00A0mm"));
    }

    private static Polygon Polygon(IEnumerable<(double X, double Y)> outline)
    {
        Coordinate[] points = [.. outline.Select(p => new Coordinate(p.X, p.Y))];
        return new(new([.. points, points[0]]));
    }

    private static double Area(Geometry.Vector2[] outline) =>
        Math.Abs(outline.Select((p, i) => p.Cross(outline[(i + 1) % outline.Length])).Sum()) / 2;
}
