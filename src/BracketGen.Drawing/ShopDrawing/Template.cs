using System.Collections.Immutable;
using BracketGen.Design.Checks;
using BracketGen.Design.Part;
using BracketGen.Drawing.Sheet;
using BracketGen.Drawing.Views;
using BracketGen.Geometry;
using BracketGen.SheetMetal.Bending;
using BracketGen.Words.ShopDrawing;

namespace BracketGen.Drawing.ShopDrawing;

/// <summary>The flat pattern at full size, for cardboard: on one sheet where it fits, on several with joining marks where it does not.</summary>
internal sealed class Template
{
    /// <summary>Edge of a sheet that workshop printers leave blank (mm).</summary>
    private const double Margin = 10;

    /// <summary>Kept for the head and the bars (mm).</summary>
    private const double Head = 24;

    private const double Foot = 16;

    /// <summary>Two sheets that join show this much (mm) of the part both.</summary>
    private const double Overlap = 14;

    private readonly BracketScene _scene;
    private readonly PageFormat _format;
    private readonly Bounds _room;
    private readonly Region _blank;
    private readonly ImmutableArray<Bend> _bends;
    private readonly ImmutableArray<(Vector2 Centre, double Radius, string Name)> _holes;
    private readonly ImmutableArray<(int X, int Y, Vector2 Shift)> _tiles;

    private readonly string _name;

    /// <summary>The template of the bracket on small sheets of the same kind as the drawing's.</summary>
    public Template(BracketScene scene, PageFormat drawing)
        : this(scene, drawing, scene.Flat.Blank, scene.Flat.Bends, [.. scene.Bracket.Holes.Select(h => (h.Centre, h.Reach, h.Name))], TemplateText.Name(scene.Solution.Job.Document))
    {
    }

    /// <summary>The same of the adapter ring under it.</summary>
    public Template(BracketScene scene, PageFormat drawing, RingShape ring)
        : this(scene, drawing, ring.Blank, [], [.. ring.Holes.Select(h => (h.Centre, h.Diameter / 2, h.Name))], RingText.PartNumber(scene.Solution.Job.Document))
    {
    }

    private Template(BracketScene scene, PageFormat drawing, Region blank, ImmutableArray<Bend> bends, ImmutableArray<(FlatPoint Centre, double Reach, string Name)> holes, string name)
    {
        (_scene, _name) = (scene, name);
        PageFormat[] formats = drawing.IsAsme
            ? [PageFormat.AnsiA, PageFormat.AnsiALandscape]
            : [PageFormat.A4, PageFormat.A4Landscape];

        // As it stands on the first sheet if may be; turned where that saves a sheet.
        var turns = Enumerable.Range(0, 36).Select(i => Angle.FromDegrees(i % 2 == 0 ? 2.5 * i : -2.5 * (i + 1)));
        var choice = turns
            .SelectMany(t => formats.Select(f => (Format: f, Turn: t, Count: CountOf(blank, f, t))))
            .MinBy(c => c.Count.X * c.Count.Y);
        _format = choice.Format;
        _room = RoomOf(_format);
        _blank = blank.Rotate(choice.Turn);
        _bends = [.. bends.Select(b => b with { Start = b.Start.Rotate(choice.Turn), End = b.End.Rotate(choice.Turn) })];
        _holes = [.. holes.Select(h => (h.Centre.Rotate(choice.Turn).Vector, h.Reach, h.Name))];

        var (nx, ny) = choice.Count;
        Vector2 step = new(_room.Width - Overlap, _room.Height - Overlap);
        var first = _room.Centre - _blank.Outline.Bounds.Centre + new Vector2((nx - 1) * step.X / 2, (ny - 1) * step.Y / 2);
        _tiles =
        [
            .. from y in Enumerable.Range(0, ny)
               from x in Enumerable.Range(0, nx)
               let shift = first - new Vector2(x * step.X, y * step.Y)
               where Clipped(shift).Any()
               select (x, y, shift),
        ];
    }

    public int SheetCount => _tiles.Length;

    public IEnumerable<SheetPage> Draw(int firstSheet, int sheets) => _tiles.Select((tile, i) => DrawTile(tile, firstSheet, firstSheet + i, sheets));

    private static Bounds RoomOf(PageFormat format) =>
        new(new(Margin, Margin + Foot), new(format.Width - Margin, format.Height - Margin - Head));

    private static (int X, int Y) CountOf(Region blank, PageFormat format, Angle turn)
    {
        var room = RoomOf(format);
        var size = blank.Outline.Rotate(turn).Bounds;
        const double edge = 4;
        static int Count(double part, double room) => part + 2 * edge <= room ? 1 : (int)Math.Ceiling((part + 2 * edge - Overlap) / (room - Overlap));
        return (Count(size.Width, room.Width), Count(size.Height, room.Height));
    }

    private SheetPage DrawTile((int X, int Y, Vector2 Shift) tile, int firstSheet, int sheet, int sheets)
    {
        var space = new FreeSpace(Clipped(tile.Shift)) { Room = _room };
        space.Add(Marks(tile));
        var holes = _holes.Select(h => h with { Centre = h.Centre + tile.Shift }).Where(h => _room.Grow(-h.Radius - 3).Holds(new(h.Centre, h.Centre))).ToList();
        space.Add(holes.SelectMany(h => Dimensions.CentreMark(h.Centre, h.Radius)));
        foreach (var (centre, radius, name) in holes)
        {
            space.AddLabel(name, centre, radius, TextHeight.Normal, FontWeight.Bold);
        }

        for (var i = 0; i < _bends.Length; i++)
        {
            var bend = _bends[i];
            var (start, end) = (bend.CentreLine.Start.Vector, bend.CentreLine.End.Vector);
            var along = LinearDimension.Readable(bend.Along);
            var text = DrawingText.BendNote(BracketScene.NameOf(i), bend, _scene.Value.Degrees(bend.Turn.Magnitude));
            var written = space.AddFirstClean(
                from place in (double[])[0.5, 0.35, 0.65, 0.2, 0.8]
                from drop in (double[])[1, -1 - TextHeight.Small]
                select ImmutableArray.Create<SheetItem>(new TextItem(
                    text, tile.Shift + start + place * (end - start) + drop * along.Left, TextHeight.Small, TextAlign.Centre, along.Polar)));
            var middle = tile.Shift + 0.5 * (start + end);
            if (!written && _room.Holds(new(middle, middle)))
            {
                space.AddLeader(middle, 0, Angle.FromDegrees(40), text);
            }
        }

        return new SheetPage(_format, false)
            .With(space.Items)
            .With(HeadBlock(tile, firstSheet, sheet, sheets))
            .With(ScaleBar.Millimetres(100).LowerLeftAt(new(Margin, Margin)))
            .With(ScaleBar.Inches(3).LowerRightAt(new(_format.Width - Margin, Margin)));
    }

    /// <summary>What of the flat pattern lies in the room when shifted so; of bends that are not made on a die also the lines where they begin and end, to scribe.</summary>
    private IEnumerable<SheetItem> Clipped(Vector2 shift) => FlatView.Lines(_blank.Shift(shift), _bends.Select(b => b.Shift(shift)), 1)
        .OfType<Stroke>()
        .Concat(_scene.Bracket.Die is null ? _bends.SelectMany(b => Tangents(b.Shift(shift))) : [])
        .SelectMany(s => Clip(s.Segment, _room).Select(p => s with { Segment = p }));

    private static IEnumerable<Stroke> Tangents(Bend bend)
    {
        var across = bend.Allowance * bend.Across;
        yield return new(bend.Start.Vector, bend.End.Vector, LineKind.Tangent);
        yield return new((bend.Start + across).Vector, (bend.End + across).Vector, LineKind.Tangent);
    }

    private static IEnumerable<Segment> Clip(Segment segment, Bounds room)
    {
        if (room.Holds(segment.Bounds))
        {
            return [segment];
        }

        double[] cuts =
        [
            0,
            .. segment.CrossingsWithLine(room.Min, new(1, 0)).Concat(segment.CrossingsWithLine(room.Max, new(1, 0)))
                .Concat(segment.CrossingsWithLine(room.Min, new(0, 1))).Concat(segment.CrossingsWithLine(room.Max, new(0, 1)))
                .Select(c => c.Fraction).Order(),
            1,
        ];
        return cuts.Zip(cuts.Skip(1))
            .Where(c => (c.Second - c.First) * segment.Length > 0.01 && segment.PointAt((c.First + c.Second) / 2) is var p && room.Holds(new(p, p)))
            .Select(c => segment.Part(c.First, c.Second));
    }

    /// <summary>Where the sheet joins its neighbours: a line in the middle of what both show, with a cross at either end.</summary>
    private IEnumerable<SheetItem> Marks((int X, int Y, Vector2 Shift) tile)
    {
        const double arm = 4;
        var inner = _room.Grow(-Overlap / 2);
        foreach (var (dx, dy) in ((int, int)[])[(1, 0), (-1, 0), (0, 1), (0, -1)])
        {
            if (!HasTile(tile.X + dx, tile.Y + dy))
            {
                continue;
            }

            Vector2 a = new(dx < 0 ? inner.Min.X : dx > 0 ? inner.Max.X : _room.Min.X, dy < 0 ? inner.Min.Y : dy > 0 ? inner.Max.Y : _room.Min.Y);
            Vector2 b = dx != 0 ? new(a.X, _room.Max.Y) : new(_room.Max.X, a.Y);
            yield return new Stroke(a, b, LineKind.Rule);
            foreach (var place in (double[])[0.15, 0.85])
            {
                var at = a + place * (b - a);
                var across = arm * (b - a).Unit.Left;
                yield return new Stroke(at - across, at + across, LineKind.Visible);
                yield return Stroke.Circle(at, arm / 2, LineKind.Visible);
            }
        }
    }

    private bool HasTile(int x, int y) => _tiles.Any(t => t.X == x && t.Y == y);

    private SheetBlock HeadBlock((int X, int Y, Vector2 Shift) tile, int firstSheet, int sheet, int sheets)
    {
        var width = _format.Width - 2 * Margin;
        var joins = ((int X, int Y, string Side)[])[(1, 0, "right"), (-1, 0, "left"), (0, 1, "upper"), (0, -1, "lower")];
        var neighbours = joins
            .Select(j => (j.Side, Index: _tiles.ToList().FindIndex(t => t.X == tile.X + j.X && t.Y == tile.Y + j.Y)))
            .Where(j => j.Index >= 0)
            .Select(j => TemplateText.Edge(j.Side, firstSheet + j.Index))
            .ToList();
        List<SheetBlock> lines =
        [
            Notes.Paragraph(Fitting(_name, TemplateText.Heading(sheet, sheets), width, TextHeight.Normal), width, TextHeight.Normal, FontWeight.Bold),
            Notes.Paragraph(TemplateText.HowTo(_bends.IsEmpty, _scene.Bracket.Die is not null), width),
        ];
        if (neighbours.Count > 0)
        {
            lines.Add(Notes.Paragraph(TemplateText.Joins(neighbours), width));
        }

        if (_scene.Solution.Verdict.Kind is VerdictKind.Unsafe or VerdictKind.NotProven)
        {
            var said = _scene.Solution.Verdict.Kind == VerdictKind.Unsafe ? TemplateText.Unsafe : TemplateText.NotProven;
            lines.Add(Notes.Paragraph(said, width, TextHeight.Normal, FontWeight.Bold, Ink.Warning));
        }

        var y = _format.Height - Margin;
        List<SheetItem> items = [];
        foreach (var line in lines)
        {
            items.AddRange(line.UpperLeftAt(new(Margin, y)).Items);
            y -= line.Bounds.Height + 0.6;
        }

        return SheetBlock.Around(items);
    }

    /// <summary>A long part number must not push the rest of the head into the part.</summary>
    private static string Fitting(string name, string heading, double width, double height)
    {
        var text = $"{name}: {heading}";
        var lines = TextFlow.Wrap(text, width, height, FontWeight.Bold);
        return lines.Length == 1 ? text : $"{lines[0]} {heading}";
    }
}
