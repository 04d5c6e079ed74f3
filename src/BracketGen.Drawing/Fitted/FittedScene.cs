using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Study;
using BracketGen.Drawing.Solid.Mesh;
using BracketGen.Drawing.Views;
using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;
using BracketGen.SheetMetal.Fasteners;
using BracketGen.Words.ShopDrawing;

namespace BracketGen.Drawing.Fitted;

/// <summary>Something in the picture of the fitted bracket that is named there.</summary>
/// <param name="Text">Its name.</param>
/// <param name="Places">Points on it, throttle frame (mm), the best first: the name goes to one that is seen.</param>
/// <param name="OnFace">Whether these lie within an outline, where a leader ends in a dot, or on it, where it ends in an arrow (ISO 128-2).</param>
internal sealed record FittedName(string Text, IReadOnlyList<Vector3> Places, bool OnFace = true);

/// <summary>The bracket on its throttle body, with quadrant, wire, outer and bolts, the valve closed.</summary>
/// <remarks>
/// Throttle frame as measured, mm. Of the casting the picture shows what was measured: the round body about the bore, the bosses, and the
/// keep-outs that stand for the body. Whatever else must be kept clear of is left out: it would hide what is to be seen.
/// </remarks>
internal sealed class FittedScene
{
    /// <summary>Facets within this (mm) of the bracket's round surfaces.</summary>
    private const double Chord = 0.08;

    /// <summary>How much of the outer is shown (mm).</summary>
    private const double ShownOuter = 35;

    /// <summary>How far the throttle shaft stands out of the quadrant (mm), and how far it is shown behind it where no bore was measured.</summary>
    private const double ShaftEnd = 4, ShaftBehind = 14;

    /// <summary>Between the end fitting and its pocket (mm), for the picture alone.</summary>
    private const double PocketRoom = 0.5;

    /// <summary>The quadrant is named at this part of its radius.</summary>
    private const double QuadrantName = 0.7;

    /// <summary>The arrow points up where up leans from the throttle shaft by some 20° at least: a part of its length is seen square on.</summary>
    private const double MinimumUpright = 0.35;

    private readonly FittedShapes _shapes = new();
    private readonly List<FittedName> _names = [];
    private readonly Solution _solution;
    private readonly Bracket _bracket;
    private readonly Job _job;

    /// <summary>The scene of a solution with its bracket.</summary>
    public FittedScene(Solution solution, Bracket bracket)
    {
        (_solution, _bracket, _job) = (solution, bracket, solution.Job);
        Mesh = FoldedMesh.Of(bracket.Folded, Chord);
        _shapes.Add(FittedThing.Bracket, Mesh);
        Bolts();
        Outer();
        Quadrant();
        Wire();
        Body();
        View = FittedView.Choose(this);
    }

    /// <summary>What points up in the picture, at right angles to the throttle shaft, length one: up, or y of the throttle frame where the job does not say or the shaft stands upright.</summary>
    public Vector3 Upright => ArrowIsUp ? new Vector3(_job.Up!.Value.X, _job.Up.Value.Y, 0).Unit : new(0, 1, 0);

    /// <summary>Whether the arrow of the picture points up.</summary>
    public bool ArrowIsUp => _job.Up is { } up && new Vector2(up.X, up.Y).Length > MinimumUpright;

    /// <summary>What the reader must be told of the arrow; empty where it points up.</summary>
    public string OfArrow => ArrowIsUp ? "" : FittedText.OfArrow(_job.Up?.Z);

    /// <summary>The bracket's facets.</summary>
    public FoldedMesh Mesh { get; }

    /// <summary>All bodies together.</summary>
    public FittedShapes Shapes => _shapes;

    /// <summary>The names, the bracket's own holes first.</summary>
    public IReadOnlyList<FittedName> Names => _names;

    /// <summary>The wire's centre line in the groove, from the end fitting to where it leaves; empty where it has lifted off.</summary>
    public IReadOnlyList<Vector3> InGroove { get; private set; } = [];

    /// <summary>How it is looked at: x to the right, y up, z towards the eye.</summary>
    public Frame View { get; }

    /// <summary>Where the outer sits on the bracket, and which way the seat faces.</summary>
    public (Vector3 Point, Vector3 Normal) Seat => (_bracket.FoldedSeat.Point.Vector, _bracket.FoldedSeat.Normal);

    /// <summary>Which way the mount flange faces, away from the casting.</summary>
    public Vector3 MountNormal => _bracket.Folded.Flanges[0].Z;

    /// <summary>Which ways the flanges face.</summary>
    public IEnumerable<Vector3> FlangeNormals => _bracket.Folded.Flanges.Select(f => f.Z);

    private void Bolts()
    {
        foreach (var hole in _bracket.Holes.Where(h => h.Purpose == HolePurpose.Bolt))
        {
            var flange = _bracket.Folded.Flanges[hole.Flange];
            var thread = hole.Thread!;
            Vector3 seat = flange.ToWorld(hole.BoltAt.Vector, _bracket.Stock.Thickness), washer = seat + thread.WasherThickness * flange.Z, top = washer + (hole.Fixing is MountStud ? thread.NutHeight : thread.HeadHeight) * flange.Z;
            if (hole.SpacerLength > 0)
            {
                Vector3 under = flange.ToWorld(hole.BoltAt.Vector, 0), on = flange.ToWorld(hole.BoltAt.Vector, -hole.SpacerLength);
                _shapes.Cylinder(FittedThing.Bolts, on, under, thread.WasherDiameter / 2);
            }

            _shapes.Cylinder(FittedThing.Bolts, seat, washer, thread.WasherDiameter / 2);
            _shapes.Hexagon(FittedThing.Bolts, washer, top, hole.Fixing.AcrossFlats(thread));
            var (end, radius) = (top, thread.AcrossFlats / 4);
            if (hole.Fixing is MountStud)
            {
                (end, radius) = (seat + hole.Fixing.Above(thread, _bracket.Stock.Thickness + hole.SpacerLength) * flange.Z, thread.Diameter / 4);
                _shapes.Cylinder(FittedThing.Bolts, top, end, thread.Diameter / 2);
            }

            var head = Frame.FromZX(end, flange.Z, flange.X);
            _names.Add(new(hole.Name, [.. FittedShapes.Round(radius, 8).Select(p => head.ToWorld(p)), seat]));
        }
    }

    private void Outer()
    {
        var (cable, thickness) = (_job.Vehicle.Cable, _bracket.Stock.Thickness);
        var (seat, along) = Seat;
        List<Vector3> places = [];
        foreach (var (from, to, diameter) in OuterEndShape.Of(cable, thickness))
        {
            if (cable.OuterEnd is NuttedEnd nutted && diameter == nutted.AcrossFlats)
            {
                _shapes.Hexagon(FittedThing.Outer, seat + from * along, seat + to * along, diameter);
            }
            else
            {
                _shapes.Cylinder(FittedThing.Outer, seat + from * along, seat + to * along, diameter / 2);
            }
        }

        // Named where its seat bears on the bracket, at the edge of the metal round it.
        var flange = _bracket.Folded.Flanges[_bracket.Stop.Flange];
        var bearing = Frame.FromZX(seat, along, flange.X);
        var (bore, metal) = (_job.Vehicle.Cable.OuterEnd.SeatDiameter / 2, _bracket.Stop.MetalRadius);
        places.AddRange(FittedShapes.Round(Math.Max((bore + metal) / 2, 0.9 * metal), 16).Select(p => bearing.ToWorld(p)));
        _names.Add(new(FittedText.Stop(_bracket.Stop.Name), places));

        var way = OuterEndShape.WayOf(_solution, seat, along, ShownOuter);
        _shapes.Tube(FittedThing.Outer, way, cable.OuterDiameter / 2);
        var (a, b) = (way[way.Count / 2 - 1], way[way.Count / 2]);
        var across = Frame.FromZX(0.5 * (a + b), b - a, Math.Abs((b - a).Unit.Z) < 0.7 ? new(0, 0, 1) : new(1, 0, 0));
        _names.Add(new(FittedText.Outer, [.. FittedShapes.Round(cable.OuterDiameter / 2, 8).Select(p => across.ToWorld(p))]));
    }

    private void Quadrant()
    {
        var quadrant = _solution.Quadrant;
        var cable = _job.Vehicle.Cable;
        double half = quadrant.Thickness / 2, room = Math.Min(half, _job.Body.Quadrant.GrooveWidth / 2);
        var core = quadrant.Outline.Select(p => Math.Min(p.Length, GrooveAt(p) - cable.WireDiameter / 2) * p.Unit).ToArray();
        _shapes.Prism(FittedThing.Quadrant, quadrant.Outline, Frame.Identity, -half, -room);
        _shapes.Prism(FittedThing.Quadrant, core, Frame.Identity, -room, room);
        _shapes.Prism(FittedThing.Quadrant, quadrant.Outline, Frame.Identity, room, half);
        var fitting = Vector3.From(quadrant.Fitting, half);
        _shapes.Circle(FittedThing.Quadrant, fitting, new(0, 0, 1), cable.Fitting.Diameter / 2 + PocketRoom);
        _shapes.Circle(FittedThing.Quadrant, fitting, new(0, 0, 1), cable.Fitting.Diameter / 2);
        Vector2[] rim = [.. quadrant.Outline.Where(p => p.Length > 0.9 * quadrant.OuterRadius)];
        _names.Add(new(FittedText.Quadrant, [.. ((double[])[0.5, 0.4, 0.6, 0.3, 0.7]).Select(t => Vector3.From(QuadrantName * rim[(int)(t * rim.Length)], half))]));
        _names.Add(new(FittedText.Pocket, [.. FittedShapes.Round(cable.Fitting.Diameter / 2 + PocketRoom, 12).Select(p => fitting + Vector3.From(p))], OnFace: false));

        var shaft = Math.Min(_job.Body.ShaftDiameter / 2, 0.6 * quadrant.HubRadius);
        Vector3 end = new(0, 0, half + ShaftEnd), behind = new(0, 0, Math.Min(_job.Body.BoreAxis?.Z ?? 0, -half - ShaftBehind));
        _shapes.Cylinder(FittedThing.Shaft, new(0, 0, half), end, shaft);
        _shapes.Cylinder(FittedThing.Shaft, behind, new(0, 0, -half), shaft);
        if (_job.Body.Casting is { } casting)
        {
            _shapes.Meeting(FittedThing.Body, new(0, 0, -half), behind, shaft, (casting.From.Vector, casting.To.Vector, casting.Radius));
        }

        _names.Add(new(FittedText.Shaft, [.. FittedShapes.Round(0.7 * shaft, 12).Select(p => end + Vector3.From(p))]));

        // The wire's centre line at the polar angle of a point of the outline.
        double GrooveAt(Vector2 point) => quadrant.Groove.Take(quadrant.InGroove).MinBy(g => g.Unit.DistanceTo(point.Unit)).Length;
    }

    private void Wire()
    {
        var (quadrant, wire) = (_solution.Quadrant, _solution.Travel.Closed);
        Vector3 from = Vector3.From(wire.From), seat = Seat.Point;
        if (!wire.LiftedOff)
        {
            var wrapped = (int)Math.Ceiling(wire.Wrap.Radians / Mechanism.Motion.QuadrantPicture.GrooveStep.Radians);
            InGroove = [.. quadrant.Groove.Take(wrapped).Select(p => Vector3.From(p)), from];
        }

        _shapes.Chain(FittedThing.Wire, [from, seat]);
        _names.Add(new(FittedText.Wire, [.. ((double[])[0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8]).Select(t => from + t * (seat - from))], OnFace: false));
    }

    private void Body()
    {
        var body = _job.Body;
        List<Vector3> places = [];
        if (body.Casting is { } casting)
        {
            var (start, end) = (casting.From.Vector, casting.To.Vector);
            _shapes.Cylinder(FittedThing.Body, start, end, casting.Radius, body.Bore < 2 * casting.Radius ? body.Bore / 2 : 0);
            var across = Frame.FromZX(Vector3.Zero, end - start, new(0, 0, 1));
            places.AddRange(
                from t in (double[])[0.9, 0.1, 0.75, 0.25]
                from p in FittedShapes.Round(casting.Radius, 24)
                select start + t * (end - start) + across.ToWorld(p));
        }

        foreach (var boss in body.Bosses)
        {
            _shapes.Cylinder(FittedThing.Body, boss.From.Vector, boss.To.Vector, boss.Radius);
            if (body.Casting is { } round)
            {
                _shapes.Meeting(FittedThing.Body, boss.To.Vector, boss.From.Vector, boss.Radius, (round.From.Vector, round.To.Vector, round.Radius));
            }
        }

        if (body.Shape == BodyShape.KeepOuts)
        {
            foreach (var keepOut in body.KeepOuts)
            {
                Show(keepOut, places);
            }
        }

        if (places.Count > 0)
        {
            _names.Add(new(FittedText.Body, places));
        }
    }

    private void Show(KeepOut keepOut, List<Vector3> places)
    {
        switch (keepOut)
        {
            case KeepOutBox box:
                Show(Frame.Identity.Shift(box.Min.Vector), box.Max - box.Min, places);
                break;
            case KeepOutTiltedBox box:
                Show(box.Corner, box.Size, places);
                break;
            case KeepOutCylinder cylinder:
                _shapes.Cylinder(FittedThing.Body, cylinder.From.Vector, cylinder.To.Vector, cylinder.Radius);
                places.AddRange(FittedShapes.Round(cylinder.Radius, 12).Select(p => Frame.FromZX(cylinder.To.Vector, cylinder.To - cylinder.From, (cylinder.To - cylinder.From).Cross(new(0.3, 0.5, 0.8))).ToWorld(p)));
                break;
            default:
                throw new InvalidOperationException($"There is no picture of a {keepOut.GetType().Name}.");
        }
    }

    private void Show(Frame corner, Vector3 size, List<Vector3> places)
    {
        _shapes.Box(FittedThing.Body, corner, size);
        places.Add(corner.ToWorld(size));
        places.Add(corner.Origin);
    }
}
