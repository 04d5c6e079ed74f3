using System.Collections.Immutable;
using BracketGen.Drawing.Fitted;
using BracketGen.Drawing.Sheet;
using BracketGen.Drawing.Views;
using BracketGen.Geometry;
using BracketGen.Words.ShopDrawing;

namespace BracketGen.Drawing.ShopDrawing;

/// <summary>Puts the picture of the fitted bracket on the drawing: on the first sheet that has room for it, or else on a sheet of its own.</summary>
internal sealed class FittedSheet(BracketScene scene)
{
    /// <summary>Between blocks, and between them and the frame (mm on paper).</summary>
    private const double Gap = 5;

    /// <summary>The heading is no wider than this (mm on paper).</summary>
    private const double HeadWidth = 95;

    /// <summary>Beside the views the picture is no larger than the parts themselves; on a sheet of its own it may be twice as large.</summary>
    private const double MostBeside = 1, MostAlone = 2;

    private readonly FittedPicture _picture = FittedPicture.Of(scene.Solution);

    /// <summary>The sheets with the picture.</summary>
    /// <param name="format">Their format.</param>
    /// <param name="title">The room the title block takes.</param>
    /// <param name="main">The main sheets without it.</param>
    /// <param name="more">More sheets that may have room for it; a sheet of its own comes before them.</param>
    public ImmutableArray<MainSheets.Draft> Add(PageFormat format, Bounds title, ImmutableArray<MainSheets.Draft> main, ImmutableArray<MainSheets.Draft> more)
    {
        var drafts = main.AddRange(more);
        for (var i = 0; i < drafts.Length; i++)
        {
            if (Place(format, [title, .. drafts[i].Blocks.Select(b => b.Bounds)], r => _picture.Draw(r, MostBeside)) is { } beside)
            {
                return drafts.SetItem(i, drafts[i] with { Blocks = drafts[i].Blocks.Add(beside) });
            }
        }

        return drafts.Insert(main.Length, Alone(format, title));
    }

    private MainSheets.Draft Alone(PageFormat format, Bounds title)
    {
        var frame = format.Frame.Grow(-Gap);
        var warning = new WarningBlocks(scene.Solution, scene.Value).SeeSheetOne(frame.Width)?.UpperLeftAt(new(frame.Min.X, frame.Max.Y));
        ImmutableArray<SheetBlock> blocks = warning is null ? [] : [warning];
        return Place(format, [title, .. blocks.Select(b => b.Bounds)], r => _picture.DrawIn(r, MostAlone)) is { } block
            ? new([.. blocks, block], "-")
            : throw new InvalidOperationException(DrawingText.TooLarge);
    }

    /// <summary>The picture in the free rectangle of a sheet that lets it be largest; null where it has no room.</summary>
    private SheetBlock? Place(PageFormat format, IReadOnlyList<Bounds> taken, Func<Vector2, SheetBlock?> draw)
    {
        var frame = format.Frame.Grow(-Gap);
        Bounds[] kept = [.. taken.Select(b => b.Grow(Gap))];
        double[] xs = [frame.Min.X, frame.Max.X, .. kept.SelectMany(b => (double[])[b.Min.X, b.Max.X]).Where(x => x > frame.Min.X && x < frame.Max.X)];
        double[] ys = [frame.Min.Y, frame.Max.Y, .. kept.SelectMany(b => (double[])[b.Min.Y, b.Max.Y]).Where(y => y > frame.Min.Y && y < frame.Max.Y)];
        var rooms =
            from left in xs.Distinct()
            from right in xs.Distinct()
            where right - left >= FittedPicture.Smallest
            from low in ys.Distinct()
            from high in ys.Distinct()
            where high > low
            let room = new Bounds(new(left, low), new(right, high))
            where !kept.Any(b => Overlap(b, room))
            let head = Head(room)
            let picture = new Vector2(room.Width, room.Height - head.Bounds.Height - Gap)
            where picture.Y > 0
            let size = _picture.SizeIn(picture)
            where size >= FittedPicture.Smallest
            orderby size descending, room.Width * room.Height descending, left, low
            select (Room: room, Head: head, Picture: picture);
        foreach (var (room, head, size) in rooms.Take(2))
        {
            if (draw(size) is { } picture)
            {
                var middle = Math.Max(head.Bounds.Width, picture.Bounds.Width) / 2;
                var above = head.UpperLeftAt(new(middle - head.Bounds.Width / 2, 0));
                return above.And(picture.UpperLeftAt(new(middle - picture.Bounds.Width / 2, above.Bounds.Min.Y - Gap))).CentredAt(room.Centre);
            }
        }

        return null;
    }

    private static bool Overlap(Bounds a, Bounds b) =>
        a.Min.X < b.Max.X - Tolerance.Point && b.Min.X < a.Max.X - Tolerance.Point && a.Min.Y < b.Max.Y - Tolerance.Point && b.Min.Y < a.Max.Y - Tolerance.Point;

    private SheetBlock Head(Bounds room)
    {
        var width = Math.Min(HeadWidth, room.Width);
        var head = Notes.Paragraph(FittedText.Heading, width, weight: FontWeight.Bold);
        return SheetBlock.Around([.. head.Items, .. Notes.Paragraph(_picture.Seen, width).UpperLeftAt(new(head.Bounds.Min.X, head.Bounds.Min.Y)).Items]);
    }
}
