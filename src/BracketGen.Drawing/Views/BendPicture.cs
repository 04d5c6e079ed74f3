using System.Collections.Immutable;
using BracketGen.Drawing.Sheet;
using BracketGen.Geometry;
using BracketGen.SheetMetal.Forming;
using BracketGen.Words.ShopDrawing;

namespace BracketGen.Drawing.Views;

/// <summary>Sheet and tools in the section square to a bend, cut to the room that the sheet needs: before the bend is made, or with it made.</summary>
/// <remarks>Lengths in mm; the middle of the bend at the level of the die is the origin, the back gauge on the right.</remarks>
/// <param name="Shapes">Polygons, the tools first.</param>
/// <param name="Window">What is shown: the same before and after.</param>
internal sealed record BendPicture(ImmutableArray<(SectionKind Kind, ImmutableArray<Vector2> Outline)> Shapes, Bounds Window)
{
    // Round the sheet so much of the tools is seen (mm).
    private const double Margin = 8;

    // At least this much of the die below the sheet and of the punch above it (mm).
    private const double LeastTool = 30;

    /// <summary>Both pictures of a step.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="step">Number of the step, from 0.</param>
    public static (BendPicture Before, BendPicture After) Of(BendPlan plan, int step)
    {
        var (before, after) = (plan.Picture(step, 0), plan.Picture(step));
        var sheet = before.Concat(after).Where(s => s.Kind == SectionKind.Sheet).SelectMany(s => s.Outline.Select(p => new Vector2(p.Across, p.Up)));
        var window = Bounds.Around(sheet).Grow(Margin).Union(new(new(-LeastTool, -LeastTool), new(LeastTool, LeastTool)));
        return (Cut(before, window), Cut(after, window));
    }

    /// <summary>Room for the word under a picture (mm on paper).</summary>
    public const double Caption = 5;

    /// <summary>Between the two pictures of a step (mm on paper).</summary>
    public const double Gap = 5;

    /// <summary>Both pictures of a step in one block, each with its word under it.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="step">Number of the step, from 0.</param>
    /// <param name="scale">Paper over part.</param>
    /// <param name="inRow">Whether they stand beside each other; else one above the other.</param>
    public static SheetBlock Draw(BendPlan plan, int step, double scale, bool inRow = true)
    {
        var (before, after) = Of(plan, step);
        var next = inRow ? new Vector2(scale * before.Window.Width + Gap, 0) : new Vector2(0, -scale * before.Window.Height - Caption - Gap);
        return Named(before, BendStepText.Before).And(Named(after, BendStepText.After).Shift(next));

        SheetBlock Named(BendPicture picture, string name) =>
            picture.Draw(scale).And(SheetBlock.Around([new TextItem(name, new(0, 1 - Caption), TextHeight.Small)]));
    }

    /// <summary>It as a block whose lower left corner is the origin.</summary>
    /// <param name="scale">Paper over part.</param>
    public SheetBlock Draw(double scale)
    {
        ImmutableArray<Vector2> OnPaper(ImmutableArray<Vector2> outline) => [.. outline.Select(p => scale * (p - Window.Min))];
        var box = new Bounds(Vector2.Zero, scale * (Window.Max - Window.Min));
        List<SheetItem> items = [];
        foreach (var (kind, outline) in Shapes)
        {
            items.Add(new Fill(OnPaper(outline), kind == SectionKind.Sheet ? Ink.Black : Ink.Tint));
            if (kind != SectionKind.Sheet)
            {
                items.Add(new Polyline(OnPaper(outline), true, LineKind.Dimension));
            }
        }

        items.Add(Polyline.Rectangle(box, LineKind.Rule));
        return new([.. items], box);
    }

    private static BendPicture Cut(ImmutableArray<SectionShape> shapes, Bounds window) => new(
        [
            .. shapes.OrderBy(s => s.Kind == SectionKind.Sheet)
                .Select(s => (s.Kind, Outline: Inside([.. s.Outline.Select(p => new Vector2(p.Across, p.Up))], window)))
                .Where(s => s.Outline.Length > 2),
        ],
        window);

    // One side of the window after the other (Sutherland and Hodgman). What is cut off lies on the window's frame.
    private static ImmutableArray<Vector2> Inside(Vector2[] polygon, Bounds window)
    {
        foreach (var (normal, limit) in new[]
        {
            (new Vector2(1, 0), window.Max.X), (new Vector2(-1, 0), -window.Min.X), (new Vector2(0, 1), window.Max.Y), (new Vector2(0, -1), -window.Min.Y),
        })
        {
            List<Vector2> kept = [];
            for (var i = 0; i < polygon.Length; i++)
            {
                Vector2 from = polygon[i], to = polygon[(i + 1) % polygon.Length];
                double before = normal.Dot(from) - limit, after = normal.Dot(to) - limit;
                if (before <= 0)
                {
                    kept.Add(from);
                }

                if (before < 0 != after < 0 && before != 0 && after != 0)
                {
                    kept.Add(from + before / (before - after) * (to - from));
                }
            }

            polygon = [.. kept];
        }

        return [.. polygon];
    }
}
