using System.Collections.Immutable;
using BracketGen.Design.Checks;
using BracketGen.Drawing.Sheet;
using BracketGen.Drawing.Views;
using BracketGen.Geometry;
using BracketGen.Strength.Model;
using BracketGen.Units;
using BracketGen.Words.Results;

namespace BracketGen.Drawing.ShopDrawing;

/// <summary>The sheet that shows whether the bracket bends, shakes or cracks: stress with the pedal stamped on, and the first vibration.</summary>
internal sealed class StrengthSheet(BracketScene scene, StrengthReport report)
{
    private const double Gap = 5;

    /// <summary>The vibration is drawn with its largest movement this part of the bracket's size.</summary>
    private const double Exaggeration = 0.12;

    private UnitSystem Units => scene.Solution.Job.Units;

    /// <summary>Pictures lower than this (mm) show nothing.</summary>
    private const double LeastPicture = 90;

    /// <summary>On a wide sheet, where two stand beside each other, they may be lower (mm).</summary>
    private const double LeastBeside = 50;

    /// <summary>The sheet without its title block; two where the paper is too narrow for all of it.</summary>
    /// <param name="format">Its format.</param>
    /// <param name="title">The room the title block takes.</param>
    public ImmutableArray<MainSheets.Draft> Compose(PageFormat format, Bounds title)
    {
        var frame = format.Frame.Grow(-Gap);
        var beside = title.Min.X - Gap - frame.Min.X;
        if (beside >= LeastWords)
        {
            var words = Words(beside).LowerLeftAt(frame.Min);
            var over = new Bounds(new(frame.Min.X, Math.Max(words.Bounds.Max.Y, title.Max.Y) + Gap), frame.Max);
            return Table().Bounds.Height + LeastBeside + 3 * Gap <= over.Height
                ? [Sheet([words], over)]
                : [Sheet([], over with { Min = new(frame.Min.X, title.Max.Y + Gap) }), new([words.UpperLeftAt(new(frame.Min.X, frame.Max.Y))], "-")];
        }

        var above = new Bounds(new(frame.Min.X, title.Max.Y + Gap), frame.Max);
        var below = Words(above.Width).LowerLeftAt(above.Min);
        return Table().Bounds.Height + below.Bounds.Height + LeastPicture + 4 * Gap <= above.Height
            ? [Sheet([below], above with { Min = new(above.Min.X, below.Bounds.Max.Y + Gap) })]
            : [Sheet([], above), new([below.UpperLeftAt(new(above.Min.X, above.Max.Y))], "-")];
    }

    /// <summary>Notes are not squeezed below this width (mm).</summary>
    private const double LeastWords = 80;

    private MainSheets.Draft Sheet(ImmutableArray<SheetBlock> words, Bounds above)
    {
        var table = Table().UpperRightAt(above.Max);
        var isNarrow = table.Bounds.Min.X - Gap - above.Min.X < LeastWords;
        var warning = new WarningBlocks(scene.Solution, scene.Value).SeeSheetOne(isNarrow ? above.Width : table.Bounds.Min.X - Gap - above.Min.X)
                ?.UpperLeftAt(new(above.Min.X, isNarrow ? table.Bounds.Min.Y - Gap : above.Max.Y));
        var top = Math.Min(table.Bounds.Min.Y, warning?.Bounds.Min.Y ?? above.Max.Y) - Gap;
        var room = above with { Max = new(above.Max.X, top) };
        var middle = room.Centre.X;
        return new(
            [
                .. words, table, .. warning is null ? Array.Empty<SheetBlock>() : [warning],
                .. Picture(StrengthText.StressHeading, Stress, new(room.Min, new(middle - Gap / 2, room.Max.Y))),
                .. Picture(StrengthText.VibrationHeading(report), Vibration, new(new(middle + Gap / 2, room.Min.Y), room.Max)),
            ],
            "-");
    }

    private IEnumerable<SheetBlock> Picture(string heading, Func<Frame, double, (SheetBlock Picture, SheetBlock Legend)> draw, Bounds room)
    {
        var head = SheetBlock.Around([new TextItem(heading, Vector2.Zero, TextHeight.Normal, Weight: FontWeight.Bold)]).UpperLeftAt(new(room.Min.X, room.Max.Y));
        var view = BestView();
        var legend = draw(view, 1).Legend.LowerLeftAt(room.Min);
        var inner = new Bounds(new(legend.Bounds.Max.X + Gap, room.Min.Y), new(room.Max.X, head.Bounds.Min.Y - Gap));
        var bare = draw(view, 1).Picture.Bounds;
        var scale = Math.Min(inner.Width / bare.Width, inner.Height / bare.Height);
        return [head, legend, draw(view, scale).Picture.CentredAt(inner.Centre)];
    }

    private (SheetBlock, SheetBlock) Stress(Frame view, double scale)
    {
        double[] values = [.. report.Stamped.Response.Solution.Stresses.Select(s => Units.In(Quantity.Stress, s.Largest))];
        var colours = ValueScale.UpTo(values.Max());
        return (ShellPicture.Draw([.. Nodes.Select(n => n.Vector)], Triangles, values, view, scale, colours), colours.Legend(Units.Symbol(Quantity.Stress), ValueScale.Plain));
    }

    private (SheetBlock, SheetBlock) Vibration(Frame view, double scale)
    {
        var shape = report.Modes[0].Shape;
        var size = Nodes.Max(n => n.DistanceTo(Nodes[0]));
        Vector3[] moved = [.. Nodes.Select((n, i) => n.Vector + Exaggeration * size * shape[i])];
        var colours = new ValueScale(1);
        var atRest = ShellPicture.Rims(Triangles)
            .Select(e => (Start: scale * view.ToLocal(Nodes[e.From].Vector).XY, End: scale * view.ToLocal(Nodes[e.To].Vector).XY))
            .Where(e => e.Start.DistanceTo(e.End) > Tolerance.SameSize)
            .Select(e => (SheetItem)new Stroke(e.Start, e.End, LineKind.Rule));
        var picture = ShellPicture.Draw(moved, Triangles, [.. shape.Select(s => s.Length)], view, scale, colours);
        return (SheetBlock.Around([.. picture.Items, .. atRest]), colours.Legend(StrengthText.OfMaximum, ValueScale.Plain));
    }

    private ImmutableArray<ThrottlePoint> Nodes => report.Folded.Nodes;

    private ImmutableArray<Triangle> Triangles => report.Folded.Triangles;

    // The isometric view that shows the most of the sheet's faces.
    private Frame BestView() => new[] { (1, 1), (-1, 1), (1, -1), (-1, -1) }
        .Select(c => scene.Isometric(c.Item1, c.Item2))
        .MaxBy(view => Triangles.Sum(t => Math.Abs(
            (view.ToLocal(Nodes[t.B].Vector).XY - view.ToLocal(Nodes[t.A].Vector).XY).Cross(view.ToLocal(Nodes[t.C].Vector).XY - view.ToLocal(Nodes[t.A].Vector).XY))))!;

    private SheetBlock Table() => SheetTable.Draw(
        StrengthText.LoadsTitle, StrengthText.LoadHeads,
        [.. StrengthText.Loads(scene.Solution, report).Select(r => (IReadOnlyList<string>)[.. r.Select(scene.Value.Styled)])], [1, 2, 3, 4]);

    private SheetBlock Words(double width) => Notes.Numbered(
        StrengthText.Heading, [.. report.Checks.Select(c => StrengthText.Note(c, Units)).Concat(StrengthText.Notes(report, Units)).Select(scene.Value.Styled)],
        width);
}
