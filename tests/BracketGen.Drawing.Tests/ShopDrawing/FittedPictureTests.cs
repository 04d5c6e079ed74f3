using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Study;
using BracketGen.Drawing.Fitted;
using BracketGen.Drawing.Setup;
using BracketGen.Drawing.Sheet;
using BracketGen.Drawing.ShopDrawing;
using BracketGen.Drawing.Tests.Solid;
using BracketGen.Drawing.Views;
using BracketGen.Geometry;
using BracketGen.TestSupport;
using BracketGen.Words.ShopDrawing;

namespace BracketGen.Drawing.Tests.ShopDrawing;

/// <summary>The bracket as fitted: what the picture shows, and where it stands.</summary>
public class FittedPictureTests
{
    private static readonly PageFormat[] Formats = [PageFormat.A3, PageFormat.A4, PageFormat.AnsiB, PageFormat.AnsiA];

    /// <summary>The shipped jobs and thirty random ones.</summary>
    private static IEnumerable<(string Name, Solution Solution)> Jobs =>
        ExampleSolutions.All.Concat(RandomSolutions.Samples.Take(30).Select((s, i) => ($"sample {i}", s)));

    private static FittedScene SceneOf(Solution solution) => new(solution, solution.Bracket!);

    private static IEnumerable<Vector2> PointsOn(ViewLine line)
    {
        Vector2[] chain = line.Segment is { } segment ? [.. Enumerable.Range(0, 9).Select(i => segment.PointAt(i / 8.0))] : [.. line.Chain];
        return chain.Concat(chain.Zip(chain.Skip(1), (a, b) => 0.5 * (a + b)));
    }

    private static double Distance(Vector2 point, ViewLine line)
    {
        Vector2[] chain = line.Segment switch
        {
            null => [.. line.Chain],
            ArcSegment arc => [.. Enumerable.Range(0, 65).Select(i => arc.PointAt(i / 64.0))],
            var straight => [straight.Start, straight.End],
        };
        return chain.Zip(chain.Skip(1), (a, b) =>
        {
            var along = b - a;
            var t = along.Length > 0 ? Math.Clamp((point - a).Dot(along) / along.Dot(along), 0, 1) : 0;
            return point.DistanceTo(a + t * along);
        }).Min();
    }

    // A body described by keep-outs shows each of them, tilted boxes too: an upright box and the same box given by its corners make one picture.
    [Fact]
    public void A_tilted_box_stands_for_the_body_as_an_upright_one_does()
    {
        var solution = ExampleSolutions.All.First(e => e.Solution.Bracket is not null).Solution;
        ThrottlePoint min = new(-30, -30, -70), max = new(30, 30, -40);
        KeepOutTiltedBox tilted = KeepOutTiltedBox.Of("body", min, [new(max.X, min.Y, min.Z), new(min.X, max.Y, min.Z), new(min.X, min.Y, max.Z)]);
        FittedView With(KeepOut keepOut)
        {
            var body = solution.Job.Body with { Shape = BodyShape.KeepOuts, KeepOuts = [keepOut] };
            return new(SceneOf(solution with { Job = solution.Job with { Body = body } }));
        }

        FittedView one = With(new KeepOutBox("body", min, max)), other = With(tilted);
        Assert.Equal(one.Lines.Count, other.Lines.Count);
        Assert.True(one.Bounds.Min.DistanceTo(other.Bounds.Min) < 1e-9 && one.Bounds.Max.DistanceTo(other.Bounds.Max) < 1e-9);
    }

    [Fact]
    public void Every_job_is_drawn_with_its_names_clear_of_each_other()
    {
        foreach (var (name, solution) in Jobs)
        {
            var picture = new FittedPicture(SceneOf(solution));
            foreach (var room in (Vector2[])[new(230, 150), new(150, 110)])
            {
                if (picture.Draw(room) is not { } block)
                {
                    Assert.True(room.X < 200, $"{name} is not drawn on {room}.");
                    continue;
                }

                Assert.True(block.Bounds.Width <= room.X && block.Bounds.Height <= room.Y, name);
                var page = new SheetPage(PageFormat.A3, block.CentredAt(PageFormat.A3.Frame.Centre).Items);
                var findings = SheetAudit.Check(page);
                Assert.True(findings.IsEmpty, $"{name}: {string.Join(" ", findings.Select(f => f.Message))}");
                var lines = block.Items.OfType<Stroke>().Where(s => s.Kind is LineKind.FittedPart or LineKind.Visible).Select(s => s.Bounds)
                    .Concat(block.Items.OfType<Polyline>().Where(p => p.Kind == LineKind.FittedPart).Select(p => p.Bounds)).Aggregate((a, b) => a.Union(b));
                Assert.True(Math.Max(lines.Width, lines.Height) > FittedPicture.Smallest - 1, $"{name}: {lines}");
            }
        }
    }

    [Fact]
    public void Where_it_must_be_drawn_it_stays_in_its_room_and_names_that_have_none_are_left_out()
    {
        var left = 0;
        foreach (var (name, solution) in Jobs)
        {
            var picture = new FittedPicture(SceneOf(solution));
            Vector2 room = new(85, 75);
            var block = picture.DrawIn(room);
            Assert.True(block.Bounds.Width <= room.X && block.Bounds.Height <= room.Y, name);
            Assert.True(SheetAudit.Check(new SheetPage(PageFormat.A3, block.CentredAt(PageFormat.A3.Frame.Centre).Items)).IsEmpty, name);
            left += picture.Draw(room) is null ? 1 : 0;
        }

        Assert.True(left > 3);
    }

    [Fact]
    public void Shipped_jobs_name_bolts_stop_shaft_quadrant_wire_outer_and_up()
    {
        foreach (var (_, solution) in ExampleSolutions.All)
        {
            var texts = new FittedPicture(SceneOf(solution)).Draw(new(150, 110))!.Items.OfType<TextItem>().Select(t => t.Text).ToList();
            string[] expected =
            [
                Arrow(solution), FittedText.Shaft, FittedText.Quadrant, FittedText.Wire, FittedText.Outer, FittedText.Body, FittedText.Pocket, FittedText.Stop(solution.Bracket!.Stop.Name),
                .. solution.Bracket!.Holes.Where(h => h.Purpose == HolePurpose.Bolt).Select(h => h.Name),
            ];
            Assert.Equal(expected.Order(), texts.Order());
        }
    }

    private static string Arrow(Solution solution) => solution.Job.Up is null ? FittedText.NotUp : FittedText.Up;

    // A shaft that stands upright shows no up: the arrow is y then, and the words say where up is.
    [Theory]
    [InlineData(0.2, 0.98, 0, true, "")]
    [InlineData(0, -1, 0, true, "")]
    [InlineData(0.1, 0.1, -1, false, "up is away from you")]
    [InlineData(0, 0, 1, false, "up is towards you")]
    public void The_arrow_points_up(double x, double y, double z, bool isUp, string told)
    {
        var solution = ExampleSolutions.First;
        solution = solution with { Job = solution.Job with { Up = new Vector3(x, y, z).Unit } };
        var scene = SceneOf(solution);
        var picture = new FittedPicture(scene);
        Assert.Equal(isUp, scene.ArrowIsUp);
        Assert.Contains(told, picture.Seen, StringComparison.Ordinal);
        var (foot, tip) = (new FittedView(scene).At(Vector3.Zero), new FittedView(scene).At(isUp ? new Vector3(x, y, 0) : new(0, 1, 0)));
        Assert.True(Math.Abs(tip.X - foot.X) < 1e-9 && tip.Y > foot.Y + 0.1);
        Assert.Contains(picture.Draw(new(150, 110))!.Items.OfType<TextItem>(), t => t.Text == (isUp ? FittedText.Up : FittedText.NotUp));
    }

    [Fact]
    public void Points_lie_where_an_eye_outside_along_the_shaft_sees_them_with_up_upright()
    {
        foreach (var (name, solution) in Jobs)
        {
            var scene = SceneOf(solution);
            var view = new FittedView(scene);
            var eye = view.View.Z;
            Assert.True(eye.Z > 0.5, name);

            // Parallel projection along (a, b, c), y kept upright: across is (c, 0, -a) / √(a² + c²), up is eye x across (ISO 5456-3). All turned first so that up is y.
            var up = solution.Job.Up ?? new(0, 1, 0);
            Vector3 Upright(Vector3 v) => v.Rotate(new(0, 0, 1), Angle.FromDegrees(180 / Math.PI * Math.Atan2(up.X, up.Y)));
            eye = Upright(eye);
            var flat = Math.Sqrt(eye.X * eye.X + eye.Z * eye.Z);
            foreach (var p in scene.Mesh.Vertices.Select(Upright).Zip(scene.Mesh.Vertices))
            {
                Vector2 expected = new((eye.Z * p.First.X - eye.X * p.First.Z) / flat, flat * p.First.Y - eye.Y * (eye.X * p.First.X + eye.Z * p.First.Z) / flat);
                Assert.True(expected.DistanceTo(view.At(p.Second)) < 1e-9, name);
            }
        }
    }

    [Fact]
    public void The_bracket_has_no_line_that_it_has_not_alone()
    {
        foreach (var (name, solution) in Jobs.Take(14))
        {
            // The same view of the bracket by itself, as the formed views are drawn, from a finer mesh.
            var scene = SceneOf(solution);
            var alone = new ViewSketch(new(solution, solution.Bracket!), Frame.FromZX(Vector3.Zero, scene.View.Z, scene.View.X), false);
            foreach (var (_, line) in new FittedView(scene).Lines.Where(l => l.Thing == FittedThing.Bracket && l.Line.Length > 1))
            {
                Assert.All(PointsOn(line), p => Assert.True(alone.Lines.Min(l => Distance(p, l)) < 0.4, $"{name}: {p}"));
            }
        }
    }

    [Fact]
    public void What_is_drawn_is_what_no_facet_hides()
    {
        int hidden = 0, seen = 0;
        foreach (var (name, solution) in Jobs.Take(12))
        {
            var scene = SceneOf(solution);
            var view = new FittedView(scene);
            var facets = scene.Shapes.Triangles.Select(t => (A: view.View.ToLocal(scene.Shapes.Points[t.A]), B: view.View.ToLocal(scene.Shapes.Points[t.B]), C: view.View.ToLocal(scene.Shapes.Points[t.C]))).ToArray();
            var lines = view.Lines.Where(l => l.Thing == FittedThing.Bracket).Select(l => l.Line).ToArray();
            foreach (var edge in scene.Mesh.Edges.Where(e => e.Kind == Drawing.Solid.Mesh.MeshEdgeKind.Sharp))
            {
                Vector3 a = view.View.ToLocal(scene.Mesh.Vertices[edge.Points[0]]), b = view.View.ToLocal(scene.Mesh.Vertices[edge.Points[1]]);
                if (a.XY.DistanceTo(b.XY) < 2)
                {
                    continue;
                }

                // Hidden by a clear half millimetre, or by nothing at all: what lies between, rounding decides.
                var aside = Vector3.From(0.1 * (b.XY - a.XY).Unit.Left);
                Vector3[] points = [.. ((double[])[0.25, 0.5, 0.75]).Select(t => a + t * (b - a))];
                if (points.All(p => Covers(p, 0.5) && Covers(p + aside, 0.5) && Covers(p - aside, 0.5)))
                {
                    Assert.True(points.Any(p => lines.Min(l => Distance(p.XY, l)) > 0.15), $"{name}: {points[1]} is hidden and drawn.");
                    hidden++;
                }
                else if (points.All(p => !Covers(p + aside, 1e-6) && !Covers(p - aside, 1e-6)))
                {
                    Assert.True(points.All(p => lines.Min(l => Distance(p.XY, l)) < 0.15), $"{name}: {points[1]} is seen and not drawn.");
                    seen++;
                }
            }

            bool Covers(Vector3 point, double by) => facets.Any(f =>
            {
                double u = (f.B.XY - f.A.XY).Cross(point.XY - f.A.XY), v = (f.C.XY - f.B.XY).Cross(point.XY - f.B.XY), w = (f.A.XY - f.C.XY).Cross(point.XY - f.C.XY);
                return ((u > 0 && v > 0 && w > 0) || (u < 0 && v < 0 && w < 0)) && (v * f.A.Z + w * f.B.Z + u * f.C.Z) / (u + v + w) > point.Z + by;
            });
        }

        Assert.True(hidden > 50 && seen > 50, $"{hidden} edges hidden, {seen} seen");
    }

    [Fact]
    public void Mirror_image_of_a_job_gives_the_mirror_image_of_its_picture()
    {
        foreach (var (name, solution) in Jobs.Take(16))
        {
            // Mirrored in y = 0, and looked at from the mirrored side: the picture stands on its head.
            var scene = SceneOf(solution);
            FittedView view = new(scene), mirrored = new(SceneOf(solution.Mirrored()), FittedView.Looking(scene.View.Z.MirroredInY, -scene.Upright.MirroredInY));
            foreach (var things in view.Lines.GroupBy(l => l.Thing))
            {
                var others = mirrored.Lines.Where(l => l.Thing == things.Key).Select(l => l.Line).ToArray();
                foreach (var (_, line) in things.Where(l => l.Line.Length > 1))
                {
                    var missed = PointsOn(line).Select(p => others.Min(l => Distance(p.MirroredInY, l))).Order().ToList();
                    Assert.True(missed[missed.Count / 2] < 0.3, $"{name}: {things.Key} {line.Bounds}, {missed[missed.Count / 2]}");
                }

                double own = things.Sum(l => l.Line.Length), others_ = others.Sum(l => l.Length);
                Assert.True(Math.Abs(own - others_) < 0.03 * own + 3, $"{name}: {things.Key} {own}, mirrored {others_}");
            }
        }
    }

    [Fact]
    public void The_mount_flange_and_the_seat_of_shipped_jobs_face_the_eye() => Assert.All(ExampleSolutions.All, e =>
    {
        var scene = SceneOf(e.Solution);
        Assert.True(scene.MountNormal.Dot(scene.View.Z) > 0.2, e.Name);
        Assert.True(scene.Seat.Normal.Dot(scene.View.Z) > 0.2, e.Name);
    });

    [Fact]
    public void It_stands_once_on_the_drawing_clear_of_everything_else()
    {
        foreach (var (name, solution) in Jobs)
        {
            var scene = new BracketScene(solution, solution.Bracket!);
            foreach (var format in Formats.Where((_, i) => i < 2 || ExampleSolutions.All.Any(e => e.Name == name)))
            {
                var main = new MainSheets(scene, DrawingOptions.Standard);
                var (before, title) = (main.Compose(format), main.TitleRoom(format));
                var drafts = new FittedSheet(scene).Add(format, title, before, []);
                var at = Assert.Single(Enumerable.Range(0, drafts.Length), i => drafts[i].Blocks.Any(IsFitted));
                var block = drafts[at].Blocks.Single(IsFitted);
                Assert.True(format.Frame.Holds(block.Bounds), name);
                Assert.All(drafts[at].Blocks.Where(b => b != block).Select(b => b.Bounds).Append(title), b => Assert.False(b.Grow(1).Touches(block.Bounds), $"{name} on {format.Name}"));
                Assert.Equal(before.Length + (at == before.Length ? 1 : 0), drafts.Length);
            }
        }

        static bool IsFitted(SheetBlock block) => block.Items.OfType<TextItem>().Any(t => t.Text == FittedText.Heading);
    }

    [Fact]
    public void It_stands_on_the_first_sheet_of_the_set_up_sheet()
    {
        foreach (var (name, solution) in ExampleSolutions.All)
        {
            foreach (var format in (PageFormat[])[PageFormat.A4, PageFormat.AnsiA])
            {
                var first = SetupSheet.Compose(solution, format)[0].Items.OfType<TextItem>().Select(t => t.Text).ToList();
                Assert.Contains(FittedText.Heading, first);
                Assert.True(first.Contains(Arrow(solution)) && first.Contains(FittedText.Stop(solution.Bracket!.Stop.Name)), name);
            }
        }
    }

    [Fact]
    public void Bodies_are_closed_and_as_large_as_they_should_be()
    {
        double[] volumes =
        [
            Adds(s => s.Cylinder(FittedThing.Body, new(1, 2, 3), new(4, 6, 3), 20)),
            Adds(s => s.Cylinder(FittedThing.Body, new(1, 2, 3), new(4, 6, 3), 20, 15)),
            Adds(s => s.Box(FittedThing.Body, Frame.Identity.Shift(new(-1, -2, -3)), new(5, 8, 11))),
            Adds(s => s.Hexagon(FittedThing.Bolts, Vector3.Zero, new(0, 0, 4), 10)),
            Adds(s => s.Tube(FittedThing.Outer, [Vector3.Zero, new(10, 0, 0), new(20, 0, 0)], 2.5)),
        ];
        double[] expected = [Math.PI * 400 * 5, Math.PI * (400 - 225) * 5, 5 * 8 * 11, Math.Sqrt(3) / 2 * 100 * 4, Math.PI * 6.25 * 20];
        Assert.All(volumes.Zip(expected), v => Assert.Equal(1, v.First / v.Second, 0.01));

        static double Adds(Action<FittedShapes> add)
        {
            var shapes = new FittedShapes();
            add(shapes);
            var soup = new TriangleSoup([.. shapes.Triangles.Select(t => (shapes.Points[t.A], shapes.Points[t.B], shapes.Points[t.C]))]);
            Assert.True(soup.IsClosed);
            return soup.Volume;
        }
    }

    [Fact]
    public void Small_cylinder_meets_a_large_one_on_both_of_their_surfaces()
    {
        var shapes = new FittedShapes();
        shapes.Meeting(FittedThing.Body, new(3, 1, 40), new(3, 1, -10), 6, (new(-50, 0, 0), new(50, 0, 0), 30));
        Assert.True(shapes.Points.Count > 60);
        Assert.All(shapes.Points, p =>
        {
            Assert.Equal(6, double.Hypot(p.X - 3, p.Y - 1), 6);
            Assert.Equal(30, double.Hypot(p.Y, p.Z), 0.1);
            Assert.True(p.Z > 0);
        });
    }
}
