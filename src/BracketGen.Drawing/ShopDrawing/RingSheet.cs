using BracketGen.Design.Part;
using BracketGen.Drawing.Sheet;
using BracketGen.Drawing.Views;
using BracketGen.Geometry;
using BracketGen.Words.ShopDrawing;

namespace BracketGen.Drawing.ShopDrawing;

/// <summary>The sheet of the adapter ring: the flat part with its overall sizes, the table of its holes, notes.</summary>
internal sealed class RingSheet(BracketScene scene, RingShape shape)
{
    private const double Gap = 5;

    // Room round the view for its dimensions (mm on paper).
    private const double RoomForDimensions = 26;

    /// <summary>Notes are not squeezed below this width (mm), nor wider than that.</summary>
    private const double LeastWords = 80, MostWords = 130;

    /// <summary>The sheet without its title block.</summary>
    /// <param name="format">Its format.</param>
    /// <param name="title">The room the title block takes.</param>
    public MainSheets.Draft Compose(PageFormat format, Bounds title)
    {
        var frame = format.Frame.Grow(-Gap);
        var (mount, units) = (scene.Solution.Job.Body.Mount, scene.Units);
        List<SheetBlock> blocks = [];
        var top = frame.Max.Y;
        if (new WarningBlocks(scene.Solution, scene.Value).SeeSheetOne(frame.Width) is { } warning)
        {
            blocks.Add(warning.UpperLeftAt(new(frame.Min.X, top)));
            top = blocks[0].Bounds.Min.Y - Gap;
        }

        var beside = title.Min.X - Gap - frame.Min.X;
        var isBeside = beside >= LeastWords;
        var notes = Notes.Numbered(DrawingText.NotesHeading, [.. RingText.Notes(shape, mount, units).Select(scene.Value.Styled)], Math.Min(isBeside ? beside : frame.Width, MostWords));
        blocks.Add(notes.LowerLeftAt(new(frame.Min.X, isBeside ? frame.Min.Y : title.Max.Y + Gap)));
        var foot = Math.Max(blocks[^1].Bounds.Max.Y, title.Max.Y) + Gap;
        var table = SheetTable.Draw(RingText.TableHeading, RingText.Heads, [.. RingText.Rows(shape, mount, units).Select(r => (IReadOnlyList<string>)[.. r.Select(scene.Value.Styled)])], [1, 2, 3], maximumWidth: 50);
        var tableBeside = frame.Width - table.Bounds.Width > table.Bounds.Width;
        blocks.Add(tableBeside ? table.UpperRightAt(new(frame.Max.X, top)) : table.UpperLeftAt(new(frame.Min.X, top)));
        var room = new Bounds(new(frame.Min.X, foot), tableBeside ? new(blocks[^1].Bounds.Min.X - Gap, top) : new(frame.Max.X, blocks[^1].Bounds.Min.Y - Gap));
        var bounds = shape.Blank.Outline.Bounds;
        var scale = DrawingScale.Choose(bounds.Width, bounds.Height, room.Width - 2 * RoomForDimensions, room.Height - 2 * RoomForDimensions, DrawingScale.Full);
        var view = View(scale);
        blocks.Add(view.Shift(room.Centre - view.Bounds.Centre));
        return new([.. blocks], $"{scale}") { Ring = shape };
    }

    private SheetBlock View(DrawingScale scale)
    {
        var k = scale.Factor;
        var datum = shape.Holes[0].Centre.Vector;
        var blank = shape.Blank.Shift(-datum);
        var space = new FreeSpace(FlatView.Lines(blank, [], k));
        space.Add(shape.Holes.SelectMany(h => Dimensions.CentreMark(k * (h.Centre.Vector - datum), k * h.Diameter / 2)));
        space.Add(Dimensions.CentreMark(k * (shape.Bore.Centre - datum), k * shape.Bore.Radius));
        var around = space.Items.Select(i => i.Bounds).Aggregate((a, b) => a.Union(b));
        var box = blank.Outline.Bounds;
        space.Add(DimensionPlacer.Draw(
            around,
            [
                new(k * box.Min, k * new Vector2(box.Max.X, box.Min.Y), ViewSide.Below, scene.Value.Length(box.Width)),
                new(k * box.Min, k * new Vector2(box.Min.X, box.Max.Y), ViewSide.Left, scene.Value.Length(box.Height)),
            ]).Items);
        foreach (var hole in shape.Holes)
        {
            var centre = k * (hole.Centre.Vector - datum);
            if (!space.AddLabel(hole.Name, centre, k * hole.Diameter / 2, TextHeight.Normal, FontWeight.Bold))
            {
                space.AddLeader(centre, k * hole.Diameter / 2, Angle.FromDegrees(60), hole.Name);
            }
        }

        var block = SheetBlock.Around(space.Items);
        var heading = SheetBlock.Around(
        [
            new TextItem(RingText.Heading($"{scale}"), Vector2.Zero, TextHeight.Normal, Weight: FontWeight.Bold),
            new TextItem(DrawingText.SeenFrom, new(0, -4.6), TextHeight.Small),
        ]);
        return block.And(heading.Shift(new Vector2(block.Bounds.Centre.X - heading.Bounds.Centre.X, block.Bounds.Max.Y + 6 - heading.Bounds.Min.Y)));
    }
}
