using BracketGen.Drawing.Sheet;
using BracketGen.Drawing.Solid.Mesh;
using BracketGen.Drawing.Views;
using BracketGen.Geometry;
using BracketGen.SheetMetal.Bending;
using BracketGen.Words.ShopDrawing;

namespace BracketGen.Drawing.ShopDrawing;

/// <summary>The views of the formed bracket: front, top and side with dimensions, and an isometric one.</summary>
internal sealed class FormedViews
{
    /// <summary>Between the room of two views (mm on paper).</summary>
    private const double Gap = 7;

    private readonly BracketScene _scene;
    private readonly bool _firstAngle;
    private readonly ViewSketch _front;
    private readonly ViewSketch _top;
    private readonly ViewSketch _side;
    private readonly bool _fromLeft;
    private readonly ViewSketch _isometric;
    private readonly Bounds _mount;
    private readonly Dictionary<DrawingScale, SheetBlock> _blocks = [];

    public FormedViews(BracketScene scene)
    {
        _scene = scene;
        _firstAngle = scene.Solution.Job.Document.Projection == Design.Inputs.Projection.FirstAngle;
        _front = new(scene, scene.Front, true);
        _top = new(scene, scene.FromTop, true);
        ViewSketch left = new(scene, scene.FromSide(true), true), right = new(scene, scene.FromSide(false), true);
        _fromLeft = left.HiddenLength <= right.HiddenLength + 1;
        _side = _fromLeft ? left : right;

        // Much to be seen, no flange edge-on, and rather from the corner that the other views look from.
        double Openness(Frame view) => scene.Bracket.Folded.Flanges.Min(f => Math.Abs(f.Z.Dot(view.Z)));
        _isometric = new[] { (_fromLeft ? -1 : 1, 1), (_fromLeft ? 1 : -1, 1), (-1, -1), (1, -1) }
            .Select(c => new ViewSketch(scene, scene.Isometric(c.Item1, c.Item2), false))
            .Select((s, i) => (Sketch: s, Worth: s.VisibleLength * (0.3 + Openness(s.View)) * (1 - 0.05 * i)))
            .MaxBy(s => s.Worth).Sketch;
        _mount = OutlinePiece.Of(scene.Flat)
            .Where(p => p.Flange == 0 && p.Bend is null)
            .Select(p => p.Segment.Shift(-scene.DatumHole.Centre.Vector).Rotate(-scene.Turn).Bounds)
            .Aggregate((a, b) => a.Union(b));
    }

    /// <summary>Front, top and side, aligned and dimensioned.</summary>
    public SheetBlock Orthographic(DrawingScale scale)
    {
        if (!_blocks.TryGetValue(scale, out var block))
        {
            _blocks[scale] = block = Arrange(Front(scale.Factor), Top(scale.Factor), Side(scale.Factor));
        }

        return block;
    }

    /// <summary>The edge view of a flat plate, aligned with its flat pattern: origin in the datum hole.</summary>
    public SheetBlock EdgeView(DrawingScale scale) => Block(new FreeSpace(Drawn(_side, scale.Factor)), _side, scale.Factor, space =>
    {
        var along = _side.Direction(new(0, 0, 1));
        AddThickness(space, _side, scale.Factor, new(0, -1), _mount.Min.Y, along);
        AddSeatMark(space, _side, scale.Factor);
    });

    /// <summary>Whether the side view stands to the right of the front view.</summary>
    public bool SideStandsRight => _fromLeft == _firstAngle;

    /// <summary>The isometric view before it is put on paper.</summary>
    public ViewSketch IsometricView => _isometric;

    /// <summary>The isometric view.</summary>
    public SheetBlock Isometric(DrawingScale scale) => SheetBlock.Around(_isometric.AtScale(scale.Factor));

    /// <summary>The same with its scale written below it, for another scale than the rest of the sheet.</summary>
    public SheetBlock IsometricNamed(DrawingScale scale)
    {
        var view = Isometric(scale);
        return view.And(SheetBlock.Around(
            [new TextItem($"{scale}", new(view.Bounds.Centre.X, view.Bounds.Min.Y - 6), TextHeight.Normal, TextAlign.Centre)]));
    }

    /// <summary>Rough size of the three views without their dimensions (mm on paper).</summary>
    public Vector2 BareSize(DrawingScale scale) => scale.Factor * new Vector2(
        _front.Bounds.Width + _side.Bounds.Width, _front.Bounds.Height + _top.Bounds.Height);

    private static IEnumerable<SheetItem> Drawn(ViewSketch sketch, double scale) => [.. sketch.AtScale(scale), .. sketch.CentreLines(scale)];

    private static Bounds Scaled(Bounds b, double scale) => new(scale * b.Min, scale * b.Max);

    private static SheetBlock Block(FreeSpace space, ViewSketch sketch, double scale, Action<FreeSpace> annotate)
    {
        annotate(space);
        return new([.. space.Items], space.Items.Select(i => i.Bounds).Aggregate(Scaled(sketch.Bounds, scale), (a, b) => a.Union(b)));
    }

    private SheetBlock Arrange(SheetBlock front, SheetBlock top, SheetBlock side)
    {
        // First angle puts the view from above below and the one from the left to the right; third angle the other way.
        var below = _firstAngle;
        top = top.Shift(new(0, below ? front.Bounds.Min.Y - Gap - top.Bounds.Max.Y : front.Bounds.Max.Y + Gap - top.Bounds.Min.Y));
        side = side.Shift(new(SideStandsRight ? front.Bounds.Max.X + Gap - side.Bounds.Min.X : front.Bounds.Min.X - Gap - side.Bounds.Max.X, 0));
        return front.And(top).And(side);
    }

    private SheetBlock Front(double scale)
    {
        var drawn = Drawn(_front, scale).ToList();
        var seat = _scene.Seat;
        var clear = ClearOf(scale);
        Vector2 a = Vector2.Zero, s = scale * seat.XY;
        List<WantedDimension> wanted = [];
        if (Math.Abs(seat.X) > Shown)
        {
            wanted.Add(new(a, s, ViewSide.Below, _scene.Value.Length(Math.Abs(seat.X)), clear));
        }

        if (Math.Abs(seat.Y) > Shown)
        {
            wanted.Add(new(a, s, SideStandsRight ? ViewSide.Left : ViewSide.Right, _scene.Value.Length(Math.Abs(seat.Y)), clear));
        }

        var space = new FreeSpace(drawn);
        space.Add(DimensionPlacer.Draw(Around(drawn, _front, scale), wanted).Items);
        return Block(space, _front, scale, _ => AddLetters(space, scale));
    }

    private SheetBlock Top(double scale) => _scene.ProfileFromSide ? Plain(_top, scale) : Profile(_top, scale);

    private SheetBlock Side(double scale) => _scene.ProfileFromSide ? Profile(_side, scale) : Plain(_side, scale);

    private static SheetBlock Plain(ViewSketch sketch, double scale) => Block(new(Drawn(sketch, scale)), sketch, scale, _ => { });

    /// <summary>The view along the first bend: heights, thickness, the stop, and the angle.</summary>
    private SheetBlock Profile(ViewSketch sketch, double scale)
    {
        var drawn = Drawn(sketch, scale).ToList();
        var bend = _scene.Flat.Bends[0];
        Vector2 up = sketch.Direction(new(0, 0, 1)), across = sketch.Direction(_scene.ProfileFromSide ? new(0, 1, 0) : new(1, 0, 0));
        var acrossInFront = bend.Across.Rotate(-_scene.Turn);
        var towards = Math.Sign(_scene.ProfileFromSide ? acrossInFront.Y : acrossInFront.X);
        Vector2 near = towards * across, outside = bend.IsUp ? -up : up;
        var far = _scene.ProfileFromSide
            ? (towards > 0 ? _mount.Min.Y : _mount.Max.Y)
            : (towards > 0 ? _mount.Min.X : _mount.Max.X);

        var value = _scene.Value;
        var points = _scene.Mesh.Vertices.Select(v => sketch.View.ToLocal(v).XY).ToArray();
        Vector2 Extreme(Vector2 way, Vector2 then) => points.MaxBy(p => way.Dot(p) + FlatView.SecondWay * then.Dot(p));
        List<WantedDimension> wanted = [];
        void Want(Vector2 a, Vector2 b, Vector2 along, Vector2 side, double clear = 0)
        {
            var length = Math.Abs(along.Dot(b - a));
            if (length > Shown)
            {
                wanted.Add(new(scale * a, scale * b, SideOf(side), value.Length(length), 0, clear));
            }
        }

        Vector2 low = Extreme(-up, near), high = Extreme(up, near);
        Want(low, high, up, near);
        Want(Extreme(-across, outside), Extreme(across, outside), across, outside);

        // From the mount face to the middle of the seat, on the side where the extension lines cross no metal.
        var seat = sketch.At(_scene.Seat);
        var face = bend.IsUp
            ? sketch.At(FrontOf(bend.Start, 0))
            : far * across;
        Want(face, seat, up, bend.IsUp ? near : -near);
        wanted.Add(new(
            scale * far * across, scale * (far * across + _scene.Thickness * up), SideOf(-near), value.Thickness(_scene.Thickness)));

        var space = new FreeSpace(drawn);
        space.Add(DimensionPlacer.Draw(Around(drawn, sketch, scale), wanted).Items);
        return Block(space, sketch, scale, _ =>
        {
            foreach (var b in _scene.Flat.Bends)
            {
                AddAngle(space, sketch, b, scale);
            }

            AddSeatMark(space, sketch, scale);
        });
    }

    private Vector3 FrontOf(FlatPoint flat, double height) => _scene.Front.ToLocal(_scene.Bracket.Folded.Flanges[0].ToWorld(flat.Vector, height));

    private void AddThickness(FreeSpace space, ViewSketch sketch, double scale, Vector2 side, double y, Vector2 along)
    {
        Vector2 foot = new(0, y);
        var wanted = new WantedDimension(
            scale * foot, scale * (foot + _scene.Thickness * along), SideOf(side), _scene.Value.Thickness(_scene.Thickness));
        space.Add(DimensionPlacer.Draw(Around(space.Items, sketch, scale), [wanted]).Items);
    }

    /// <summary>The angle between the insides of the two flanges, where the view shows it true.</summary>
    private void AddAngle(FreeSpace space, ViewSketch sketch, Bend bend, double scale)
    {
        var folded = _scene.Bracket.Folded;
        var (_, axis) = folded.AxisOf(bend);
        if (Math.Abs(axis.Dot(sketch.View.Z)) < ViewSketch.SeenFromAbove || bend.Turn.Magnitude.Degrees > 150)
        {
            return;
        }

        Frame from = folded.Flanges[bend.From], to = folded.Flanges[bend.To];
        var inside = bend.IsUp ? _scene.Thickness : 0;
        var near = sketch.View.ToLocal(from.ToWorld(bend.Start.Vector, inside)).XY;
        var back = sketch.View.ToLocalDirection(from.ToWorldDirection(Vector3.From(-bend.Across))).XY.Unit;
        var on = sketch.View.ToLocalDirection(to.ToWorldDirection(Vector3.From(bend.Across))).XY.Unit;
        var setback = bend.InsideRadius * Math.Tan(bend.Turn.Magnitude.Radians / 2);
        var corner = near - setback * back;
        var included = Angle.Straight - bend.Turn.Magnitude;
        var sweep = back.Cross(on) > 0 ? included : -included;

        // As small as the text lets it be, and clear of the bend.
        var least = Math.Max(Math.Max(11, scale * setback + 5), Math.Min(40, AngleRoom / included.Radians));
        space.AddFirstClean(
            from step in Enumerable.Range(0, 16)
            select Dimensions.Angular(
                scale * corner, back.Polar, sweep, least + 3 * step, _scene.Value.Degrees(included), LegOf(bend, setback) * scale));
    }

    /// <summary>Length of arc (mm on paper) that takes an angle's text and arrowheads.</summary>
    private const double AngleRoom = 17;

    /// <summary>Length of the shorter leg of a bend from the corner of its insides (mm).</summary>
    private double LegOf(Bend bend, double setback)
    {
        var depths = _scene.Flat.Blank.Outline.Segments.SelectMany(s => (FlatPoint[])[new(s.Start), new(s.End)]).Select(bend.Depth).ToArray();
        return setback + Math.Max(0, Math.Min(depths.Max() - bend.Allowance, -depths.Min()));
    }

    private void AddSeatMark(FreeSpace space, ViewSketch sketch, double scale)
    {
        var normal = sketch.View.ToLocalDirection(_scene.Bracket.FoldedSeat.Normal).XY;
        var stop = _scene.Bracket.Stop;

        // Beside the opening, where the seat bears: on the axis the arrow would point into the hole.
        var frame = _scene.Bracket.Folded.Flanges[stop.Flange];
        var height = _scene.Bracket.SeatOnTop ? _scene.Thickness : 0;
        var beside = new[] { 0.0, 90, 180, 270 }
            .Select(d => stop.Centre + Vector2.FromPolar((stop.Diameter / 2 + stop.MetalRadius) / 2, Angle.FromDegrees(d)))
            .Select(p => sketch.View.ToLocal(frame.ToWorld(p.Vector, height)).XY);
        var middle = sketch.At(_scene.Seat);
        var point = beside.MaxBy(p => Math.Round(p.DistanceTo(middle), 6));
        var wanted = normal.Length > 0.1 ? normal.Polar + Angle.FromDegrees(30) : Angle.FromDegrees(30);
        space.AddLeader(scale * point, 0, wanted, DrawingText.Seat);
    }

    // The datum's own letter first: of the others those that find a place, for the flat pattern names them all.
    private void AddLetters(FreeSpace space, double scale)
    {
        foreach (var hole in _scene.Bracket.Holes)
        {
            var frame = _scene.Bracket.Folded.Flanges[hole.Flange];
            if (Math.Abs(frame.Z.Dot(_front.View.Z)) > ViewSketch.SeenFromAbove)
            {
                space.AddLabel(
                    hole.Name, scale * _front.View.ToLocal(frame.ToWorld(hole.Centre.Vector)).XY, scale * hole.Diameter / 2, TextHeight.Small, FontWeight.Bold);
            }
        }
    }

    private double ClearOf(double scale) => scale * _scene.DatumHole.Diameter / 2 + 2;

    private static Bounds Around(IEnumerable<SheetItem> drawn, ViewSketch sketch, double scale) =>
        drawn.Select(i => i.Bounds).Aggregate(Scaled(sketch.Bounds, scale), (a, b) => a.Union(b));

    private static ViewSide SideOf(Vector2 way) => Math.Abs(way.X) > Math.Abs(way.Y)
        ? (way.X > 0 ? ViewSide.Right : ViewSide.Left)
        : (way.Y > 0 ? ViewSide.Above : ViewSide.Below);

    /// <summary>A distance below this (mm) is nothing on a drawing.</summary>
    private const double Shown = 0.005;
}
