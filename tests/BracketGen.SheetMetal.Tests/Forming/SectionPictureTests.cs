using BracketGen.Geometry;
using BracketGen.SheetMetal.Forming;
using BracketGen.SheetMetal.Patterns;
using BracketGen.SheetMetal.Tooling;
using NetTopologySuite.Geometries;
using Shape = NetTopologySuite.Geometries.Geometry;

namespace BracketGen.SheetMetal.Tests.Forming;

/// <summary>The picture of a bend, measured by NetTopologySuite: what must touch touches, and the sheet is the folded sheet.</summary>
public class SectionPictureTests
{
    private static readonly GeometryFactory Factory = new();

    private static Polygon Of(SectionShape shape) =>
        Factory.CreatePolygon([.. shape.Outline.Append(shape.Outline[0]).Select(p => new Coordinate(p.Across, p.Up))]);

    private static BendPlan Plan(double[] flats, double[] turns) =>
        BendSimulation.Of(BentStrip.Of(flats, turns), BentStrip.Stock, [BentStrip.Die], BentStrip.Tools(BentStrip.Straight)).Plan!;

    [Theory]
    [InlineData(90)]
    [InlineData(-60)]
    [InlineData(130)]
    public void Sheet_touches_shoulders_and_tip_all_the_way(double turn)
    {
        var plan = Plan([40, 50], [turn]);
        for (var share = 0.0; share <= 1; share += 0.125)
        {
            var picture = plan.Picture(0, share);
            Shape All(SectionKind kind) => Factory.BuildGeometry([.. picture.Where(s => s.Kind == kind).Select(s => (Shape)Of(s))]);
            Assert.All(picture, s => Assert.True(Of(s).IsValid));
            var sheet = picture.Where(s => s.Kind == SectionKind.Sheet).Select(Of).ToArray();
            Assert.Equal(3, sheet.Length);

            // The two legs lie on the shoulders, whose arcs are drawn by their chords; the strip between them hangs free over the V and carries the tip.
            Assert.All(sheet[..2], leg => Assert.InRange(leg.Distance(All(SectionKind.Die)), 0, 0.05));
            Assert.All(sheet[..2], leg => Assert.InRange(leg.Buffer(-0.001).Intersection(All(SectionKind.Die)).Area, 0, 0.05));
            Assert.InRange(sheet[2].Distance(All(SectionKind.Punch)), 0, 0.02);
            Assert.InRange(sheet[2].Buffer(-0.001).Intersection(All(SectionKind.Punch)).Area, 0, 0.02);

            // Nothing is stretched: areas are lengths times thickness.
            Assert.Equal(40 * BentStrip.Thickness, Math.Min(sheet[0].Area, sheet[1].Area), 1e-6);
            Assert.Equal(50 * BentStrip.Thickness, Math.Max(sheet[0].Area, sheet[1].Area), 1e-6);
        }
    }

    /// <summary>Distances of the legs' far corners at the nominal angle are those of the folded sheet.</summary>
    [Fact]
    public void At_its_angle_the_sheet_is_the_folded_sheet()
    {
        var flat = BentStrip.Of([30, 60, 25], [90, 75]);
        var plan = BendSimulation.Of(flat, BentStrip.Stock, [BentStrip.Die], BentStrip.Tools(BentStrip.Straight)).Plan!;
        var last = plan.Steps[1];
        var turn = flat.Bends[last.Bend].Turn.Radians;
        var picture = plan.Picture(1, turn / (turn + last.OverBend.Radians));
        var ends = picture.Where(s => s.Kind == SectionKind.Sheet).SelectMany(s => s.Outline).ToArray();
        var folded = new FoldedSheet(flat, Frame.Identity);
        var length = flat.Blank.Outline.Bounds.Max.X;
        double Far(Func<double, double, ThrottlePoint> at) => new[] { 0, BentStrip.Thickness }.Max(h => new[] { 0, BentStrip.Thickness }.Max(g => at(0, h).DistanceTo(at(length, g))));
        var meant = Far((x, h) => folded.Fold(new(x, 20), h));

        // Among the corners of the picture there are two at that distance: the ends of the first and the last flange.
        Assert.Contains(ends, a => ends.Any(b => Math.Abs(Math.Sqrt(Math.Pow(a.Across - b.Across, 2) + Math.Pow(a.Up - b.Up, 2)) - meant) < 1e-6));
    }

    [Fact]
    public void Every_tool_is_in_the_picture()
    {
        var picture = Plan([40, 50], [90]).Picture(0);
        Assert.Equal(
            new[] { SectionKind.Sheet, SectionKind.Punch, SectionKind.Beam, SectionKind.Die, SectionKind.Bed, SectionKind.Gauge }.Order(),
            picture.Select(s => s.Kind).Distinct().Order());
        var gauge = picture.Single(s => s.Kind == SectionKind.Gauge);
        Assert.Equal(Plan([40, 50], [90]).Steps[0].Gauge.Fingers[0].Distance, gauge.Outline.Min(p => p.Across), 1e-9);
    }

    /// <summary>A folder turns a flange up about its nose; the flange's inside stays on the nose's radius.</summary>
    [Theory]
    [InlineData(90)]
    [InlineData(125)]
    public void A_folder_bends_round_its_nose(double turn)
    {
        var folder = new BendingClamp(ClampKind.Folder, "folder", BentStrip.Radius);
        var plan = BendSimulation.Of(BentStrip.Of([40, 50], [turn]), BentStrip.Stock, [], new() { Press = null, Punches = [], Clamps = [folder] }).Plan!;
        Assert.Equal(folder, Assert.Single(plan.Steps).Clamp);
        var picture = plan.Picture(0, turn / (turn + plan.Steps[0].OverBend.Degrees));
        var sheet = picture.Where(s => s.Kind == SectionKind.Sheet).Select(Of).ToArray();
        var nose = Of(picture.First(s => s.Kind == SectionKind.Clamp));
        Assert.All(sheet, s => Assert.InRange(s.Buffer(-0.02).Intersection(nose).Area, 0, 1e-6));
        Assert.InRange(sheet[2].Distance(nose), 0, 0.02);
        Assert.InRange(sheet.Max(s => s.EnvelopeInternal.MaxY), 40, 60);
    }

    /// <summary>A flange that hangs down from the one turned up meets the beam of the folder, but not a vice without a beam.</summary>
    [Fact]
    public void A_flange_below_meets_the_folders_beam()
    {
        var flat = BentStrip.Of([40, 10, 30], [80, -80]);
        BendResult Over(ClampKind kind) => BendSimulation.Of(
            flat, BentStrip.Stock, [], new() { Press = null, Punches = [], Clamps = [new(kind, "c", BentStrip.Radius) { MaxThickness = 4, LeastClamped = 5 }] });
        Assert.NotNull(Over(ClampKind.Vice).Plan);
        Assert.All(Over(ClampKind.Folder).Obstacles, o => Assert.Equal(Obstruction.Clamp, o.What));
        Assert.Null(Over(ClampKind.Folder).Plan);
    }
}
