using System.Collections.Immutable;
using BracketGen.Drawing.Sheet;
using BracketGen.Drawing.Views;
using BracketGen.Geometry;
using BracketGen.SheetMetal.Bending;
using BracketGen.Words.ShopDrawing;

namespace BracketGen.Drawing.ShopDrawing;

/// <summary>The flat pattern with its dimensions.</summary>
internal sealed class FlatView
{
    private readonly BracketScene _scene;
    private readonly FormedViews _formed;
    private readonly Region _blank;
    private readonly ImmutableArray<Bend> _bends;
    private readonly Dictionary<DrawingScale, SheetBlock> _blocks = [];

    public FlatView(BracketScene scene, FormedViews formed)
    {
        _scene = scene;
        _formed = formed;
        _blank = scene.Flat.Blank.Shift(-scene.FlatDatum);
        _bends = [.. scene.Flat.Bends.Select(b => b.Shift(-scene.FlatDatum))];
    }

    public Vector2 BareSize(DrawingScale scale) => scale.Factor * new Vector2(_blank.Outline.Bounds.Width, _blank.Outline.Bounds.Height);

    /// <summary>Larger side of the blank (mm).</summary>
    public double Size => Math.Max(_blank.Outline.Bounds.Width, _blank.Outline.Bounds.Height);

    /// <summary>Heading, view, dimensions.</summary>
    public SheetBlock Draw(DrawingScale scale)
    {
        if (!_blocks.TryGetValue(scale, out var block))
        {
            _blocks[scale] = block = Compose(scale);
        }

        return block;
    }

    /// <summary>The bare flat pattern: outline, holes with centre marks, bend lines.</summary>
    public static IEnumerable<SheetItem> Lines(Region blank, IEnumerable<Bend> bends, double scale)
    {
        foreach (var bend in bends)
        {
            var (start, end) = (bend.CentreLine.Start.Vector, bend.CentreLine.End.Vector);
            var past = BendOverrun * bend.Along;
            yield return new Stroke(scale * start - past, scale * end + past, LineKind.Bend);
        }

        foreach (var segment in blank.Outline.Segments)
        {
            yield return new Stroke(ViewLine.Scaled(segment, scale), LineKind.Visible);
        }

        foreach (var hole in blank.Holes)
        {
            foreach (var segment in hole.Segments)
            {
                yield return new Stroke(ViewLine.Scaled(segment, scale), LineKind.Visible);
            }
        }
    }

    /// <summary>A bend line runs past the outline by this (mm on paper).</summary>
    private const double BendOverrun = 3;

    private SheetBlock Compose(DrawingScale scale)
    {
        var k = scale.Factor;
        var space = new FreeSpace(Lines(_blank, _bends, k));
        space.Add(_scene.Bracket.Holes.SelectMany(h => Dimensions.CentreMark(k * Local(h.Centre), k * h.Reach)));
        var around = space.Items.Select(i => i.Bounds).Aggregate((a, b) => a.Union(b));
        space.Add(DimensionPlacer.Draw(around, Wanted(k)).Items);
        AddDatumAxes(space, k * _scene.DatumHole.Diameter / 2 + 2.5);
        foreach (var hole in _scene.Bracket.Holes)
        {
            var centre = k * Local(hole.Centre);
            if (!space.AddLabel(hole.Name, centre, k * hole.Reach, TextHeight.Normal, FontWeight.Bold))
            {
                space.AddLeader(centre, k * hole.Reach, Angle.FromDegrees(60), hole.Name);
            }
        }

        List<string> homeless = [.. Enumerable.Range(0, _bends.Length).Where(i => !AddBendNote(space, i, k)).Select(NoteOf)];
        AddPoints(space, k);
        var block = SheetBlock.Around(space.Items);
        if (_bends.IsEmpty)
        {
            var edge = _formed.EdgeView(scale);
            const double gap = 12;
            block = block.And(edge.Shift(new(
                _formed.SideStandsRight ? block.Bounds.Max.X + gap - edge.Bounds.Min.X : block.Bounds.Min.X - gap - edge.Bounds.Max.X,
                k * Local(_scene.DatumHole.Centre).Y)));
        }

        return block.And(Heading(scale, block, homeless));
    }

    private Vector2 Local(FlatPoint flat) => flat.Vector - _scene.FlatDatum;

    private SheetBlock Heading(DrawingScale scale, SheetBlock view, List<string> homeless)
    {
        List<SheetItem> items =
        [
            new TextItem(DrawingText.FlatHeading(_bends.IsEmpty, $"{scale}"), Vector2.Zero, TextHeight.Normal, Weight: FontWeight.Bold),
            new TextItem(DrawingText.SeenFrom, new(0, -4.6), TextHeight.Small),
        ];

        // What the view has no room for must still be said.
        items.AddRange(homeless.Select((text, i) => new TextItem(text, new(0, -9.2 - 4.4 * i), TextHeight.Small)));
        var block = SheetBlock.Around(items);
        if (!_bends.IsEmpty)
        {
            var grain = Grain();
            block = block.And(grain.Shift(new Vector2(block.Bounds.Max.X + 6, block.Bounds.Centre.Y) - new Vector2(grain.Bounds.Min.X, grain.Bounds.Centre.Y)));
        }

        return block.Shift(new Vector2(view.Bounds.Centre.X - block.Bounds.Centre.X, view.Bounds.Max.Y + 6 - block.Bounds.Min.Y));
    }

    /// <summary>The arrow of the rolling direction, across the first bend.</summary>
    private SheetBlock Grain()
    {
        const double half = 7;
        var along = LinearDimension.Readable(_bends[0].Across);
        return SheetBlock.Around(
        [
            new Stroke(-half * along, half * along, LineKind.Dimension),
            Arrow.Head(half * along, along, DimensionStyle.Standard),
            Arrow.Head(-half * along, -along, DimensionStyle.Standard),
            new TextItem(DrawingText.Grain, new(Math.Abs(half * along.X) + 2.5, -1.25), TextHeight.Small),
        ]);
    }

    /// <summary>Overall sizes, and from the first hole the places of bend lines that run along x or y; the bend table has the ends of all.</summary>
    private List<WantedDimension> Wanted(double scale)
    {
        List<WantedDimension> wanted = [];
        var clear = scale * _scene.DatumHole.Diameter / 2 + 2;
        var said = new HashSet<(bool AlongX, double From, double To)>();
        void Want(Vector2 a, Vector2 b, ViewSide side)
        {
            var alongX = side is ViewSide.Below or ViewSide.Above;
            var (from, to) = alongX ? (a.X, b.X) : (a.Y, b.Y);
            if (Math.Abs(to - from) > Shown && said.Add((alongX, Math.Round(Math.Min(from, to), 3), Math.Round(Math.Max(from, to), 3))))
            {
                wanted.Add(new(scale * a, scale * b, side, _scene.Value.Length(Math.Abs(to - from)), a == Vector2.Zero ? clear : 0));
            }
        }

        Vector2 left = new(-1, 0), right = new(1, 0), down = new(0, -1), up = new(0, 1);
        Want(Extreme(left, down), Extreme(right, down), ViewSide.Below);
        Want(Extreme(down, left), Extreme(up, left), ViewSide.Left);
        foreach (var bend in _bends)
        {
            var (start, end) = (bend.CentreLine.Start.Vector, bend.CentreLine.End.Vector);
            if (IsUpright(bend))
            {
                Want(Vector2.Zero, start.Y < end.Y ? end : start, ViewSide.Above);
            }
            else if (IsLevel(bend))
            {
                Want(Vector2.Zero, start.X < end.X ? end : start, ViewSide.Right);
            }
        }

        return wanted;

        // The farthest point of the outline; of several, the one nearest to where the dimension stands.
        Vector2 Extreme(Vector2 way, Vector2 then) => _blank.Outline.Segments
            .SelectMany(s => s is ArcSegment arc && arc.FractionAt(way.Polar) is var f && f < 1 ? (Vector2[])[s.Start, arc.PointAt(f)] : [s.Start])
            .MaxBy(p => Math.Round(p.Dot(way), 6) + SecondWay * p.Dot(then));
    }

    /// <summary>Of points equally far one way, the one farther this way is taken: it counts this much, less than what a drawing shows of a part of 1 m.</summary>
    public const double SecondWay = 1e-5;

    /// <summary>A distance below this (mm) is nothing on a drawing.</summary>
    private const double Shown = 0.005;

    /// <summary>Whether a bend line runs along y, and its place is a dimension along x.</summary>
    public static bool IsUpright(Bend bend) => Math.Abs(bend.Along.X) < Tolerance.Smooth;

    /// <summary>Whether a bend line runs along x.</summary>
    public static bool IsLevel(Bend bend) => Math.Abs(bend.Along.Y) < Tolerance.Smooth;

    /// <summary>Where x and y are counted from.</summary>
    private static void AddDatumAxes(FreeSpace space, double start)
    {
        space.AddFirstClean(from reach in (double[])[start + 8, start + 6, start + 11, start + 15, start + 21] select Axes(reach));

        ImmutableArray<SheetItem> Axes(double reach) =>
        [
            new Stroke(new(start, 0), new(reach, 0), LineKind.Dimension),
            new Stroke(new(0, start), new(0, reach), LineKind.Dimension),
            Arrow.Head(new(reach, 0), new(1, 0), DimensionStyle.Standard),
            Arrow.Head(new(0, reach), new(0, 1), DimensionStyle.Standard),
            new TextItem("x", new(reach - 1, -3.2), TextHeight.Small),
            new TextItem("y", new(-2.8, reach - 1.5), TextHeight.Small),
        ];
    }

    private bool AddBendNote(FreeSpace space, int index, double scale)
    {
        var bend = _bends[index];
        var text = NoteOf(index);
        var (start, end) = (bend.CentreLine.Start.Vector, bend.CentreLine.End.Vector);
        var along = LinearDimension.Readable(bend.Along);
        var length = bend.Length * scale;
        var width = SheetFont.Of(FontWeight.Regular).Width(text, TextHeight.Small);
        var written = width + 2 < length && space.AddFirstClean(
            from step in (double[])[0, 0.15, -0.15, 0.3, -0.3, 0.4, -0.4]
            from drop in (double[])[1, -1 - TextHeight.Small]
            where Math.Abs(step) * length + width / 2 < length / 2
            select ImmutableArray.Create<SheetItem>(new TextItem(
                text, scale * 0.5 * (start + end) + step * length * along + drop * along.Left, TextHeight.Small, TextAlign.Centre, along.Polar)));

        // The arrow may touch the line anywhere between its middle and its ends. On two lines the words leave the view more room.
        var comma = text.IndexOf(", ", StringComparison.Ordinal);
        string[] lines = comma < 0 ? [text] : [text[..(comma + 1)], text[(comma + 2)..]];
        return written || ((double[])[0.5, 0.25, 0.75, 0.1, 0.9])
            .Any(place => space.AddLeader(scale * (start + place * (end - start)), 0, Angle.FromDegrees(40), lines));
    }

    /// <summary>What is written at a bend line: "bend 1 UP, bend angle 90° R4".</summary>
    public string NoteOf(int index)
    {
        var bend = _bends[index];
        return $"{DrawingText.BendNote(BracketScene.NameOf(index), bend, _scene.Value.Degrees(bend.Turn.Magnitude))}, {_scene.Value.Radius(bend.InsideRadius)}";
    }

    /// <summary>Names the outline's points where they find a place beside it: the table has them all, in their order.</summary>
    private void AddPoints(FreeSpace space, double scale)
    {
        foreach (var (edge, i) in _scene.Bracket.Edges().Select((e, i) => (e, i)))
        {
            space.AddLabel(PartTableText.Point(i), scale * Local(new(edge.Start)), 0);
        }
    }
}
