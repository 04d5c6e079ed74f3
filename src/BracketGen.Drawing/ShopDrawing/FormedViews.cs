using BracketGen.Design.Part;
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
        AddMountFace(space, _side, scale.Factor, _side.Direction(new(0, 1, 0)), along);
    });

    /// <summary>Whether the side view stands to the right of the front view.</summary>
    public bool SideStandsRight => _fromLeft == _firstAngle;

    /// <summary>The isometric view before it is put on paper.</summary>
    public ViewSketch IsometricView => _isometric;

    /// <summary>The isometric view.</summary>
    public SheetBlock Isometric(DrawingScale scale)
    {
        var space = new FreeSpace(_isometric.AtScale(scale.Factor));
        AddBendNames(space, _isometric, scale.Factor);
        return SheetBlock.Around(space.Items);
    }

    /// <summary>The same with its scale written below it, for another scale than the rest of the sheet.</summary>
    public SheetBlock IsometricNamed(DrawingScale scale)
    {
        var view = Isometric(scale);
        return view.And(SheetBlock.Around(
            [new TextItem($"{scale}", new(view.Bounds.Centre.X, view.Bounds.Min.Y - 6), TextHeight.Normal, TextAlign.Centre)]));
    }

    /// <summary>The stop flange seen square on, where none of the three views shows it so; null where one does, and for a flat plate.</summary>
    public SheetBlock? StopFlange(DrawingScale scale)
    {
        var bracket = _scene.Bracket;
        var normal = bracket.Folded.Flanges[bracket.Stop.Flange].Z;
        if (bracket.StopBend is not { } bend || new[] { _front, _top, _side }.Any(v => Math.Abs(v.View.Z.Dot(normal)) > ViewSketch.SeenFromAbove))
        {
            return null;
        }

        // A partial view (ISO 128-3): the flange from its bend on, the bend line level below it, as it is seen from the side of the seat.
        var k = scale.Factor;
        var region = _scene.Flat.FlangeRegion(bracket.Stop.Flange);
        Vector2 origin = bracket.Stop.Centre.Vector, along = bracket.SeatOnTop ? bend.Along : -bend.Along;
        Vector2 Place(Vector2 flat) => new((flat - origin).Dot(along), (flat - origin).Dot(bend.Across));
        Segment Placed(Segment s) => bracket.SeatOnTop
            ? s.Shift(-origin).Rotate(-along.Polar)
            : s.Shift(-origin).Rotate(-bend.Along.Polar).MirroredInX;
        var past = bend.Depth(bracket.Stop.Centre) - bend.Allowance;
        bool IsAtBend(Segment s) => Math.Abs(Place(s.Start).Y + past) < Tolerance.SameSize && Math.Abs(Place(s.End).Y + past) < Tolerance.SameSize;
        var space = new FreeSpace(region.Contours.SelectMany(c => c.Segments)
            .Select(s => new Stroke(ViewLine.Scaled(Placed(s), k), IsAtBend(s) ? LineKind.Tangent : LineKind.Visible)));
        space.Add(Dimensions.CentreMark(Vector2.Zero, k * bracket.Stop.Reach));

        // To edges that a gauge touches: the end of the flange and both its sides.
        Vector2[] points = [.. region.Outline.Segments.SelectMany(s => new[] { s.Start, s.End, s.PointAt(0.5) }).Select(Place)];
        var bounds = Bounds.Around(region.Outline.Segments.SelectMany(s => new[] { Placed(s).Bounds.Min, Placed(s).Bounds.Max }));
        var clear = k * bracket.Stop.Reach + 2;
        List<WantedDimension> wanted = [];
        void Want(Vector2 to, double length, ViewSide side)
        {
            if (length > Shown)
            {
                wanted.Add(new(Vector2.Zero, k * to, side, _scene.Value.Length(length), clear));
            }
        }

        // Of the points of a straight side the upper one, from where the extension line crosses no metal.
        Vector2 Farthest(int way) => new(
            way > 0 ? bounds.Max.X : bounds.Min.X,
            points.Where(p => Math.Abs(p.X - (way > 0 ? bounds.Max.X : bounds.Min.X)) < Tolerance.SameSize).Select(p => p.Y).DefaultIfEmpty(0).Max());
        Want(new(points.MaxBy(p => Math.Round(p.Y, 6)).X, bounds.Max.Y), bounds.Max.Y, ViewSide.Right);
        Want(Farthest(-1), -bounds.Min.X, ViewSide.Above);
        Want(Farthest(+1), bounds.Max.X, ViewSide.Above);
        space.Add(DimensionPlacer.Draw(space.Items.Select(i => i.Bounds).Aggregate((a, b) => a.Union(b)), wanted).Items);
        space.AddLabel(bracket.Stop.Name, Vector2.Zero, k * bracket.Stop.Reach, TextHeight.Small, FontWeight.Bold);
        var block = SheetBlock.Around(space.Items);
        return block.And(SheetBlock.Around([new TextItem(DrawingText.StopView, new(block.Bounds.Centre.X, block.Bounds.Max.Y + 4), TextHeight.Small, TextAlign.Centre, Weight: FontWeight.Bold)]));
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
        var clear = ClearOf(scale);
        List<WantedDimension> wanted = [];

        // Every hole from the datum, both ways: bolts on their face, the stop at its seat.
        foreach (var hole in _scene.Bracket.Holes.Skip(1))
        {
            var isStop = hole == _scene.Bracket.Stop;
            var at = isStop ? _scene.Seat : OnFace(hole);
            var room = isStop ? 0 : scale * hole.Reach + 2;
            if (Math.Abs(at.X) > Shown)
            {
                wanted.Add(new(Vector2.Zero, scale * at.XY, ViewSide.Below, _scene.Value.Length(Math.Abs(at.X)), clear, room));
            }

            if (Math.Abs(at.Y) > Shown)
            {
                wanted.Add(new(Vector2.Zero, scale * at.XY, SideStandsRight ? ViewSide.Left : ViewSide.Right, _scene.Value.Length(Math.Abs(at.Y)), clear, room));
            }
        }

        var space = new FreeSpace(drawn);
        space.Add(DimensionPlacer.Draw(Around(drawn, _front, scale), wanted).Items);
        return Block(space, _front, scale, _ =>
        {
            AddNames(space, _front, scale);
            AddBendNames(space, _front, scale);
        });
    }

    private SheetBlock Top(double scale) => _scene.ProfileFromSide ? Plain(_top, scale) : Profile(_top, scale);

    private SheetBlock Side(double scale) => _scene.ProfileFromSide ? Profile(_side, scale) : Plain(_side, scale);

    private SheetBlock Plain(ViewSketch sketch, double scale) => Block(new(Drawn(sketch, scale)), sketch, scale, space =>
    {
        AddNames(space, sketch, scale);
        AddBendNames(space, sketch, scale);
    });

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

        // And to each hole of the second mount flange, beside it.
        foreach (var hole in _scene.Bracket.Holes.Where(h => h.Purpose == HolePurpose.Bolt && h.Flange > 0))
        {
            Vector2 middle = sketch.At(OnFace(hole)), foot = sketch.At(FrontOf(_scene.Flat.Bends[hole.Flange - 1].Start, 0));
            Want(foot, middle, up, across.Dot(middle) > across.Dot(foot) - Shown ? across : -across);
        }

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
            AddMountFace(space, sketch, scale, across, up);
            AddNames(space, sketch, scale);
            AddBendNames(space, sketch, scale);
        });
    }

    // The middle of a hole on the side that lies on its face.
    private Vector3 OnFace(BracketHole hole) => _scene.Front.ToLocal(_scene.Bracket.Folded.Flanges[hole.Flange].ToWorld(hole.Centre.Vector, 0));

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
        var text = DrawingText.Included(_scene.Value.Degrees(included));
        var width = SheetFont.Of(FontWeight.Regular).Width(text, TextHeight.Small) + AngleRoom;
        var least = Math.Max(Math.Max(11, scale * setback + 5), Math.Min(40, width / included.Radians));
        space.AddFirstClean(
            from step in Enumerable.Range(0, 24)
            select Dimensions.Angular(
                scale * corner, back.Polar, sweep, least + 3 * step, text, LegOf(bend, setback) * scale));
    }

    /// <summary>Length of arc (mm on paper) that an angle's arrowheads take beside its text.</summary>
    private const double AngleRoom = 7;

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

    /// <summary>Datum A on the mount face, seen on edge.</summary>
    private void AddMountFace(FreeSpace space, ViewSketch sketch, double scale, Vector2 across, Vector2 up)
    {
        double[] ends = [.. new[] { _mount.Min, _mount.Max }.SelectMany(p => new[] { sketch.At(new(p.X, p.Y, 0)).Dot(across) }).Order()];
        var line = sketch.At(Vector3.Zero).Dot(up) * up;
        space.AddBest(
            from reach in (double[])[9, 12, 16, 21]
            from place in (double[])[0.5, 0.35, 0.65, 0.2, 0.8, 0.1, 0.9]
            select ToleranceFrame.Datum(scale * (line + (ends[0] + place * (ends[1] - ends[0])) * across), -up, DrawingText.MountDatum, reach));
    }

    /// <summary>Names of the holes that are seen square on.</summary>
    private void AddNames(FreeSpace space, ViewSketch sketch, double scale)
    {
        foreach (var hole in _scene.Bracket.Holes)
        {
            var frame = _scene.Bracket.Folded.Flanges[hole.Flange];
            if (Math.Abs(frame.Z.Dot(sketch.View.Z)) > ViewSketch.SeenFromAbove)
            {
                var centre = scale * sketch.View.ToLocal(frame.ToWorld(hole.Centre.Vector)).XY;
                if (!space.AddLabel(hole.Name, centre, scale * hole.Reach, TextHeight.Small, FontWeight.Bold))
                {
                    space.AddLeader(centre, scale * hole.Reach, Angle.FromDegrees(60), hole.Name);
                }
            }
        }
    }

    /// <summary>The number of every bend, at the outside of its middle.</summary>
    private void AddBendNames(FreeSpace space, ViewSketch sketch, double scale)
    {
        foreach (var (bend, i) in _scene.Flat.Bends.Select((b, i) => (b, i)))
        {
            var at = sketch.View.ToLocal(_scene.Bracket.Folded.Fold(bend.Middle + bend.Allowance / 2 * bend.Across, bend.IsUp ? 0 : _scene.Thickness).Vector).XY;
            var outwards = at - sketch.Bounds.Centre;
            space.AddLeader(scale * at, 0, outwards.Length > 1 ? outwards.Polar : Angle.FromDegrees(40), DrawingText.BendName(BracketScene.NameOf(i)));
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
