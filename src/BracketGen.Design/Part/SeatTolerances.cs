using System.Collections.Immutable;
using BracketGen.Design.Inputs;
using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;
using BracketGen.Mechanism.Uncertainty;
using BracketGen.SheetMetal.Bending;
using BracketGen.SheetMetal.Cutting;
using BracketGen.SheetMetal.Fasteners;
using BracketGen.SheetMetal.Forming;
using BracketGen.SheetMetal.Standards;

namespace BracketGen.Design.Part;

/// <summary>How cutting, bending and bolting on move the outer's seat.</summary>
public static class SeatTolerances
{
    /// <summary>Limit deviation of a bend angle made on a press brake without correction (±1°, common practice, no source).</summary>
    /// <remarks>ISO 2768-1 m allows less on a leg longer than 10 mm; what a shop's first part does is wider, and it is what counts here.</remarks>
    public static readonly Angle BendAngle = Angle.FromDegrees(1);

    /// <summary>
    /// Every deviation of <paramref name="bracket"/> with the seat's shift in the groove's plane for one unit of it, found by
    /// folding the flat pattern again with the deviation in it.
    /// </summary>
    /// <remarks>
    /// Bend angle: <see cref="BendAngle"/>. Leg: the place of the bend line to the back gauge, ISO 2768-1 m by the leg's length, and more where it is
    /// set by a scribed line. Allowance: the ± of its bend rule, the bend line staying where it is. Cut:
    /// the stop's hole, as <see cref="HoleMaking"/> says. Bolts: see <see cref="OfBolts"/>. What does not move the seat in the groove's plane is left out.
    /// The drawing prints the same deviations.
    /// </remarks>
    /// <param name="bracket">The bracket, in the frame of the throttle body that opens counter-clockwise.</param>
    /// <param name="process">How it is cut.</param>
    /// <param name="end">The outer's end that goes into the stop.</param>
    public static ImmutableArray<SeatTolerance> Of(Bracket bracket, CuttingProcess process, OuterEnd end)
    {
        var seat = bracket.FoldedSeat.Point;
        if (bracket.Measured is { } measured)
        {
            // The seat was found where it is: only the reading is off, along any axis of the datums, and the play of the bolts stays.
            var datums = bracket.Folded.Flanges[0];
            var read = new[] { ("x", datums.X), ("y", datums.Y), ("z", datums.Z) }
                .Select(a => new SeatTolerance($"reading of the stop, {a.Item1}", a.Item2.XY, measured.PlusMinus) { IsMeasured = true });
            return [.. read.Concat(OfReadHoles(bracket)).Concat(OfBolts(bracket, process)).Where(Counts)];
        }

        var all = Deviations(bracket, process, end).Select(d => new SeatTolerance(d.Name, 1 / d.Step * (d.Made.FoldedSeat.Point - seat).XY, d.PlusMinus));
        return [.. all.Concat(OfBolts(bracket, process)).Where(Counts)];
    }

    // A hole that is elsewhere than read lets the bracket lie elsewhere, and the stop with it.
    private static IEnumerable<SeatTolerance> OfReadHoles(Bracket bracket)
    {
        var (datums, seat) = (bracket.Folded.Flanges[0], bracket.FoldedSeat.Point);
        var bolts = bracket.MountBolts;
        var (centroid, moves) = ReadingSpread.OfFit(bracket);
        foreach (var move in moves)
        {
            var by = move.Shift + move.Turn * (datums.ToFlat(seat).Vector - centroid).Left;
            yield return new($"reading of {bolts[move.Hole].Name}, {(move.Way.X > 0 ? "x" : "y")}", -datums.ToWorldDirection(Vector3.From(by)).XY, bolts[move.Hole].PlacePlusMinus) { IsMeasured = true };
        }
    }

    /// <summary>
    /// What the shop may make otherwise than drawn, one at a time: name, step of the deviation, limit deviation either way, and the bracket
    /// with one step of it. Steps and limits in mm, of angles in rad.
    /// </summary>
    internal static IEnumerable<(string Name, double Step, double PlusMinus, Bracket Made)> Deviations(Bracket bracket, CuttingProcess process, OuterEnd end)
    {
        for (var i = 0; i < bracket.Flat.Bends.Length; i++)
        {
            foreach (var deviation in OfBend(bracket, i, bracket.Stop.Centre))
            {
                yield return deviation;
            }
        }

        var cut = HoleMaking.Of(bracket, bracket.Stop, end, process).Position;
        foreach (var (axis, way) in new[] { ("x", new Vector2(1, 0)), ("y", new Vector2(0, 1)) })
        {
            var holes = bracket.Holes.SetItem(bracket.Holes.Length - 1, bracket.Stop with { Centre = bracket.Stop.Centre + DesignTolerance.LengthStep * way });
            yield return ($"cut of the stop's hole, {axis}", DesignTolerance.LengthStep, cut, bracket with { Holes = holes });
        }
    }

    /// <summary>The same of one bend, for what lies past it.</summary>
    /// <param name="bracket">The bracket.</param>
    /// <param name="number">Number of the bend, from 0.</param>
    /// <param name="past">What lies past it, flat coordinates.</param>
    internal static IEnumerable<(string Name, double Step, double PlusMinus, Bracket Made)> OfBend(Bracket bracket, int number, FlatPoint past)
    {
        const double angle = DesignTolerance.AngleStep, length = DesignTolerance.LengthStep;
        var (bends, bend) = (bracket.Flat.Bends, bracket.Flat.Bends[number]);
        var name = $"bend {number + 1}";
        yield return ($"{name}, angle", angle, BendAngle.Radians, Fold(bracket, bends.SetItem(number, bend with { Turn = bend.Turn + new Angle(angle) })));
        yield return ($"{name}, leg", length, OfLeg(bend.Depth(past)) + PlaceError(bracket, number), Fold(bracket, bends.SetItem(number, bend.Shift(length * bend.Across))));
        yield return (
            $"{name}, allowance", length, bend.Rule.KPlusMinus * bend.Turn.Magnitude.Radians * bracket.Flat.Thickness,
            Fold(bracket, bends.SetItem(number, bend.Shift(-length / 2 * bend.Across) with { Allowance = bend.Allowance + length })));
    }

    /// <summary>Limit deviation of the distance from a bend to what lies past it (mm, either way): ISO 2768-1 m.</summary>
    /// <param name="leg">The distance (mm).</param>
    public static double OfLeg(double leg) => GeneralTolerance.Linear(Math.Clamp(Math.Abs(leg), 0.5, 2000));

    /// <summary>How far a bracket on a single bolt may be turned about it: it is set by eye, in line with the wire, and tightened (rad; ±2°, common practice, no source).</summary>
    public static readonly Angle SetByEye = Angle.FromDegrees(2);

    /// <summary>How the play of the bolts in their clearance holes shifts and turns the bracket on the face.</summary>
    /// <remarks>
    /// A bracket in the play of several bolts is led by the two that are farthest apart. Along their line it shifts by the smaller of the two
    /// plays; across it each end moves by its own play, so that the bracket shifts, or turns by at most the sum of both plays over the distance. The play
    /// each way is half of the largest hole that its tolerance allows (ISO 273, medium) less the thread's nominal diameter. A single bolt does not keep the bracket from turning.
    /// </remarks>
    /// <param name="bracket">The bracket.</param>
    /// <param name="process">How it is cut.</param>
    public static IEnumerable<SeatTolerance> OfBolts(Bracket bracket, CuttingProcess process)
    {
        double Play(BracketHole bolt) => SeatTolerances.Play(bracket, bolt, process);
        var frame = bracket.Folded.Flanges[0];
        var seat = bracket.FoldedSeat.Point.Vector;
        var bolts = bracket.MountBolts;
        Vector3 Way(Vector2 flat) => frame.ToWorldDirection(Vector3.From(flat));
        Vector3 Turning(BracketHole about) => frame.Z.Cross(seat - frame.ToWorld(about.Centre.Vector));
        if (bolts.Length == 1)
        {
            var play = Play(bolts[0]);
            yield return new("bolts, x", Way(new(1, 0)).XY, play);
            yield return new("bolts, y", Way(new(0, 1)).XY, play);
            yield return new("turn about one bolt", Turning(bolts[0]).XY, SetByEye.Radians);
            yield break;
        }

        var (one, other) = bolts.SelectMany((a, i) => bolts.Skip(i + 1).Select(b => (One: a, Other: b))).MaxBy(p => p.One.Centre.DistanceTo(p.Other.Centre));
        var distance = one.Centre.DistanceTo(other.Centre);

        // Both across to the same side, so that equal moves shift it and opposite ones turn it.
        yield return new("bolts, along their line", Way((other.Centre - one.Centre) / distance).XY, Math.Min(Play(one), Play(other)));
        yield return new($"bolts, across at {one.Name}", 1 / distance * Turning(other).XY, Play(one));
        yield return new($"bolts, across at {other.Name}", -1 / distance * Turning(one).XY, Play(other));
    }

    /// <summary>Angle by which the play of the bolts lets the bracket turn, each way; null on a single bolt, which does not hold it.</summary>
    /// <param name="bracket">The bracket.</param>
    /// <param name="process">How it is cut.</param>
    public static Angle? TurnInPlay(Bracket bracket, CuttingProcess process)
    {
        double Play(BracketHole bolt) => SeatTolerances.Play(bracket, bolt, process);
        var bolts = bracket.MountBolts;
        return bolts.Length < 2 ? null : bolts
            .SelectMany((a, i) => bolts.Skip(i + 1).Select(b => new Angle(Math.Atan2(Play(a) + Play(b), a.Centre.DistanceTo(b.Centre)))))
            .MinBy(a => a.Radians);
    }

    /// <summary>How the seat moves with every ± of the mount holes: the bracket goes where the holes really are.</summary>
    /// <remarks>
    /// By small rigid motions of least squares: the bracket shifts by the mean of the holes' deviations and turns on the face by
    /// Σ r × δ / Σ r², r from the centroid; the face tilts as far as the heights of the holes decide (one hole: not at all, holes on a line:
    /// along it).
    /// </remarks>
    /// <param name="bracket">The bracket in place.</param>
    /// <param name="mount">The face it is bolted to.</param>
    public static ImmutableArray<SeatTolerance> OfMount(Bracket bracket, MountFace mount) =>
    [
        .. MovedByMount(mount, bracket.FoldedSeat.Point).Select(m => new SeatTolerance(m.Name, m.Move.XY, m.PlusMinus) { IsMeasured = m.IsMeasured }).Where(Counts),
    ];

    /// <summary>How a point of a bracket (mm) moves for a millimetre of each ± of the holes of the mount face, and of each spacer's length.</summary>
    internal static IEnumerable<(string Name, Vector3 Move, double PlusMinus, bool IsMeasured)> MovedByMount(MountFace mount, ThrottlePoint point)
    {
        var normal = mount.Plane.Normal;
        var own = mount.OwnHoles;
        Vector3[] holes = [.. own.Select(h => mount.Plane.FootOf(h.At.Vector))];
        var centre = holes.Aggregate(Vector3.Zero, (sum, h) => sum + h) / holes.Length;
        Vector3[] arms = [.. holes.Select(h => h - centre)];
        var seat = point.Vector - centre;
        var spread = arms.Sum(a => a.Dot(a));
        var tilt = Tilt(arms, MountFrame.Of(mount).Frame);
        Vector3 Moved(int hole, Vector3 by)
        {
            var shift = by / holes.Length;
            var turn = spread > 0 ? arms[hole].Cross(by).Dot(normal) / spread * normal : Vector3.Zero;
            return shift + (turn + by.Dot(normal) * tilt(arms[hole]).Cross(normal)).Cross(seat);
        }

        for (var i = 0; i < holes.Length; i++)
        {
            var off = own[i].PlusMinus;
            foreach (var (axis, way, plusMinus) in new[] { ("x", new Vector3(1, 0, 0), off.X), ("y", new(0, 1, 0), off.Y), ("z", new(0, 0, 1), off.Z) })
            {
                yield return ($"mount hole {i + 1}, {axis}", Moved(i, way), plusMinus, true);
            }

            if (own[i].Spacer is not null)
            {
                yield return ($"spacer {i + 1}", Moved(i, normal), Spacer.Deviation, false);
            }
        }

        foreach (var (name, move, plusMinus) in RingShape.Of(mount)?.Moves(point) ?? [])
        {
            yield return (name, move, plusMinus, false);
        }
    }

    // The slope (a vector of the face, for a unit of height at a hole with the arm given) of the plane that fits heights best; without what they
    // do not decide.
    private static Func<Vector3, Vector3> Tilt(Vector3[] arms, Frame face)
    {
        double xx = 0, xy = 0, yy = 0;
        Vector2 Flat(Vector3 arm) => new(arm.Dot(face.X), arm.Dot(face.Y));
        foreach (var arm in arms.Select(Flat))
        {
            (xx, xy, yy) = (xx + arm.X * arm.X, xy + arm.X * arm.Y, yy + arm.Y * arm.Y);
        }

        // Principal directions of the holes, with their sums of squares.
        var mean = (xx + yy) / 2;
        var half = Math.Sqrt((xx - yy) * (xx - yy) / 4 + xy * xy);
        var along = Vector2.FromPolar(1, new(0.5 * Math.Atan2(2 * xy, xx - yy)));
        var floor = arms.Length * LeastTiltArm * LeastTiltArm;
        return arm =>
        {
            var (slope, flat) = (Vector3.Zero, Flat(arm));
            foreach (var (way, sum) in new[] { (along, mean + half), (along.Left, mean - half) })
            {
                if (sum > floor)
                {
                    slope += flat.Dot(way) / sum * (way.X * face.X + way.Y * face.Y);
                }
            }

            return slope;
        };
    }

    // What a scribed line adds to the place of a bend (mm); nothing where the back gauge holds it, or where nobody looked.
    private static double PlaceError(Bracket bracket, int bend) =>
        bracket.Plan?.Steps.FirstOrDefault(s => s.Bend == bend)?.Gauge.PlusMinus - BackGauge.FingerError ?? 0;

    // Holes nearer than this (mm) to one line do not decide the tilt across it.
    private const double LeastTiltArm = 3;

    // A shift below this (mm) changes no probability that is printed.
    private const double NoShift = 1e-6;

    private static bool Counts(SeatTolerance tolerance) => tolerance.Shift.Length * tolerance.PlusMinus > NoShift;

    private static double Play(Bracket bracket, BracketHole bolt, CuttingProcess process) => bolt.Thread is { } thread
        ? Math.Max(0, bolt.Diameter + HoleMaking.Of(bolt, thread.Diameter, process, bracket.Stock.Thickness).Size - thread.Diameter) / 2 + bolt.Fixing.Play(thread)
        : 0;

    private static Bracket Fold(Bracket bracket, ImmutableArray<Bend> bends) =>
        bracket with { Folded = new(bracket.Flat with { Bends = bends }, bracket.Folded.Flanges[0]) };
}
