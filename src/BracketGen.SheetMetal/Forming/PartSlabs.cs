using BracketGen.Geometry;
using BracketGen.SheetMetal.Bending;
using BracketGen.SheetMetal.Patterns;

namespace BracketGen.SheetMetal.Forming;

/// <summary>The part as slabs while one bend is made and some others are made already.</summary>
internal sealed class PartSlabs
{
    private readonly FlatPattern _flat;
    private readonly Bend _bend;
    private readonly bool _turnedRound;
    private readonly bool[] _made, _behind;
    private readonly Frame[] _flanges;
    private readonly int[] _plane;

    /// <summary>Lays the part under the tools.</summary>
    /// <param name="flat">The flat pattern.</param>
    /// <param name="outlines">The outline of each flange (mm).</param>
    /// <param name="made">Which bends are made.</param>
    /// <param name="bend">Number of the bend to make.</param>
    /// <param name="turnedRound">Whether the flange that the bend makes lies in front, not at the gauge.</param>
    public PartSlabs(FlatPattern flat, Vector2[][] outlines, bool[] made, int bend, bool turnedRound)
    {
        (_flat, _bend, _made, _turnedRound) = (flat, flat.Bends[bend], made, turnedRound);
        _flanges = new Frame[flat.FlangeCount];
        _plane = new int[flat.FlangeCount];
        _behind = new bool[flat.FlangeCount];
        _flanges[0] = Frame.Identity;
        foreach (var b in flat.Bends)
        {
            var from = _flanges[b.From];
            var isMade = IsMade(b);
            _flanges[b.To] = isMade ? Past(from, b, 1) : from;
            _plane[b.To] = isMade ? b.To : _plane[b.From];
            _behind[b.To] = b.To == _bend.To || _behind[b.From];
        }

        List<Slab> slabs = [];
        for (var i = 0; i < flat.FlangeCount; i++)
        {
            if (outlines[i].Length < 3)
            {
                continue;
            }

            slabs.AddRange(Flat(i, i, outlines[i]));
        }

        foreach (var b in flat.Bends.Where(b => b != _bend))
        {
            if (!IsMade(b))
            {
                var across = b.Allowance * b.Across;
                slabs.AddRange(Flat(b.To, b.From, [b.End.Vector, (b.End + across).Vector, (b.Start + across).Vector, b.Start.Vector]));
                continue;
            }

            slabs.AddRange(Chords(b));
        }

        Slabs = [.. slabs];
    }

    public Slab[] Slabs { get; }

    /// <summary>Whether the flange moves with the side of the back gauge.</summary>
    public bool IsAtGauge(int flange) => _behind[flange] != _turnedRound;

    /// <summary>Whether the flange lies in the plane of the leg on its side of the bend.</summary>
    public bool IsLeg(int flange) => _plane[flange] == _plane[_behind[flange] ? _bend.To : _bend.From];

    /// <summary>Whether the sheet's top faces up.</summary>
    public bool TopUp => _bend.IsUp;

    /// <summary>How far a flat point lies behind the middle of the bend, towards the gauge, and along the bend as the machine counts (mm).</summary>
    public Vector2 InMachine(Vector2 flat)
    {
        var p = flat - _bend.Start.Vector;
        double across = p.Dot(_bend.Across) - _bend.Allowance / 2, along = p.Dot(_bend.Along);

        // Turning the sheet over, or round, turns the direction along the bend.
        return new(_turnedRound ? -across : across, TopUp == _turnedRound ? _bend.Length - along : along);
    }

    // A flange, or a strip that goes on flat from one. The bend turns the leg's plane about its middle: what lies past it beside its ends goes the other way.
    private IEnumerable<Slab> Flat(int flange, int plane, Vector2[] outline)
    {
        if (!IsLeg(plane))
        {
            return [Make(flange, Lie.Standing, _flanges[plane], outline)];
        }

        return new[] { (Lie.Leg, Side(outline, _behind[plane])), (Lie.Wing, Side(outline, !_behind[plane])) }
            .Where(p => AreaOf(p.Item2) > NoArea).Select(p => Make(flange, p.Item1, _flanges[plane], p.Item2));
    }

    private bool IsMade(Bend bend) => _made[bend.To - 1];

    // The frame of what lies past the part `share` of a bend.
    private Frame Past(Frame from, Bend bend, double share)
    {
        var height = bend.IsUp ? _flat.Thickness + bend.InsideRadius : -bend.InsideRadius;
        return from.Shift(Vector3.From(-share * bend.Allowance * bend.Across)).Rotate(
            from.ToWorld(bend.Start.Vector, height), from.ToWorldDirection(Vector3.From(bend.Across).Cross(new(0, 0, 1))), share * bend.Turn);
    }

    private IEnumerable<Slab> Chords(Bend bend)
    {
        var count = Math.Max(2, (int)Math.Ceiling(bend.Turn.Magnitude.Radians / ChordTurn));
        var outside = bend.IsUp ? 0 : _flat.Thickness;
        var from = _flanges[bend.From];
        Vector3 At(int i) => Past(from, bend, (double)i / count).ToWorld((bend.Start + (double)i / count * bend.Allowance * bend.Across).Vector, outside);
        var along = from.ToWorldDirection(Vector3.From(bend.Along));
        for (var i = 0; i < count; i++)
        {
            Vector3 a = At(i), b = At(i + 1);
            var chord = (b - a).Unit;
            var inwards = (bend.IsUp ? 1 : -1) * along.Cross(chord);
            yield return Make(bend.To, Lie.Standing, a, chord, along, inwards, [new(0, 0), new(a.DistanceTo(b), 0), new(a.DistanceTo(b), bend.Length), new(0, bend.Length)]);
        }
    }

    // Turn (rad) of one chord of a bend that is made: the outside of the bend bulges out of it by 0.02 of its outside radius.
    private const double ChordTurn = 0.4;

    // The part of an outline in the leg's plane beyond the bend's strip, or before it.
    private Vector2[] Side(Vector2[] outline, bool beyond)
    {
        var edge = _bend.Start.Vector + (beyond ? _bend.Allowance : 0) * _bend.Across;
        double Depth(Vector2 p) => (beyond ? 1 : -1) * (p - edge).Dot(_bend.Across);
        List<Vector2> kept = [];
        for (var i = 0; i < outline.Length; i++)
        {
            Vector2 from = outline[i], to = outline[(i + 1) % outline.Length];
            double before = Depth(from), after = Depth(to);
            if (before >= -OnEdge)
            {
                kept.Add(from);
            }

            if (before >= -OnEdge != after >= -OnEdge && Math.Abs(before - after) > OnEdge)
            {
                kept.Add(from + Math.Clamp(before / (before - after), 0, 1) * (to - from));
            }
        }

        return [.. kept];
    }

    private static double AreaOf(Vector2[] polygon)
    {
        double area = 0;
        for (var i = 0; i < polygon.Length; i++)
        {
            area += polygon[i].Cross(polygon[(i + 1) % polygon.Length]) / 2;
        }

        return area;
    }

    // A corner this near (mm) to the edge of a strip lies on it.
    private const double OnEdge = 1e-6;

    // A wing smaller than this (mm²) is round-off of the outline.
    private const double NoArea = 0.01;

    private Slab Make(int flange, Lie lie, Frame frame, Vector2[] polygon) =>
        Make(flange, lie, frame.Origin, frame.X, frame.Y, frame.Z, polygon);

    private Slab Make(int flange, Lie lie, Vector3 origin, Vector3 x, Vector3 y, Vector3 z, Vector2[] polygon)
    {
        var leg = _flanges[_bend.From];
        var atGauge = IsAtGauge(flange);
        var place = leg.ToLocal(origin);
        var machine = InMachine(place.XY);
        Vector3 Way(Vector3 v)
        {
            var local = leg.ToLocalDirection(v);
            double across = local.XY.Dot(_bend.Across), along = local.XY.Dot(_bend.Along);
            return new(_turnedRound ? -across : across, TopUp ? local.Z : -local.Z, TopUp == _turnedRound ? -along : along);
        }

        var up = TopUp ? place.Z : _flat.Thickness - place.Z;
        return new(
            atGauge ? Carrier.Back : Carrier.Front, flange, lie,
            new(machine.X + (atGauge ? -1 : 1) * _bend.Allowance / 2, up, machine.Y), Way(x), Way(y), Way(z), _flat.Thickness, polygon);
    }
}
