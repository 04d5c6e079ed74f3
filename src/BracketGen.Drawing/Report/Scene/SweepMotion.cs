using BracketGen.Design.Inputs;
using BracketGen.Design.Study;
using BracketGen.Drawing.Report.Html;
using BracketGen.Geometry;
using BracketGen.Mechanism.Grooves;
using BracketGen.Mechanism.Motion;
using BracketGen.Mechanism.Pedals;
using BracketGen.Mechanism.Throttles;
using BracketGen.Mechanism;
using BracketGen.Words.Report;

namespace BracketGen.Drawing.Report.Scene;

/// <summary>One position of the pedal.</summary>
/// <param name="Name">What it is; empty between the named ones.</param>
/// <param name="Wire">The wire there.</param>
/// <param name="Pull">Wire pulled at the pedal's end since the released pedal (mm).</param>
/// <param name="Pad">Travel of the pad (mm).</param>
/// <param name="Part">The same as part of its full stroke.</param>
internal sealed record SweepPosition(string Name, TautWire Wire, double Pull, double Pad, double Part);

/// <summary>
/// Quadrant and wire from the released pedal to the floor: slack first, then the valve's travel in the solver's own steps, then what is
/// left over. Geometry alone; what gives way under load is not in it.
/// </summary>
/// <remarks>Picture coordinates: mm, x as measured, y down. The throttle shaft is the origin.</remarks>
internal sealed class SweepMotion
{
    private static readonly Angle GrooveStep = Angle.FromDegrees(3);

    private readonly bool _mirrored;
    private readonly Angle _pocket;

    public SweepMotion(Solution solution)
    {
        var job = solution.Job;
        Travel = solution.Travel;
        _mirrored = job.Body.Opens == OpeningSense.Clockwise;
        Quadrant = job.Body.OpeningCounterClockwise().Quadrant;
        _pocket = Quadrant.PocketNormal;
        SeatInEngine = Travel.Closed.From + Travel.Closed.Straight * Travel.Closed.Direction;
        Positions = [.. PositionsOf(job)];
    }

    public Travel Travel { get; }

    /// <summary>The quadrant, opening counter-clockwise.</summary>
    public Quadrant Quadrant { get; }

    /// <summary>At least two: released and on the floor.</summary>
    public IReadOnlyList<SweepPosition> Positions { get; }

    /// <summary>The seat (mm) in the frame opening counter-clockwise.</summary>
    public Vector2 SeatInEngine { get; }

    /// <summary>The seat in the picture.</summary>
    public Vector2 Seat => Shown(SeatInEngine);

    /// <summary>Direction in the picture from quadrant to seat, valve closed.</summary>
    public Vector2 Towards => Shown(Travel.Closed.Direction);

    /// <summary>Centre of the end fitting in the picture, valve closed.</summary>
    public Vector2 Fitting => Shown(Quadrant.FittingAt(Angle.Zero));

    /// <summary>From the frame opening counter-clockwise to the picture.</summary>
    public Vector2 Shown(Vector2 engine) => _mirrored ? engine : PathData.Down(engine);

    /// <summary>How far the quadrant is turned in the picture (degrees as SVG counts them: clockwise).</summary>
    public double Turned(Angle opening) => (_mirrored ? 1 : -1) * opening.Degrees;

    /// <summary>The wire from the fitting over the groove to the seat, in the picture.</summary>
    public IEnumerable<Vector2> WirePath(TautWire wire)
    {
        for (var at = 0.0; at < wire.Wrap.Radians; at += GrooveStep.Radians)
        {
            yield return Shown(Quadrant.Groove.PointWithNormal(_pocket + new Angle(at)).Rotate(wire.Opening));
        }

        yield return Shown(wire.From);
        yield return Seat;
    }

    /// <summary>The groove, from the pocket on, valve closed, in the picture.</summary>
    public IEnumerable<Vector2> Groove(double extent) =>
        Enumerable.Range(0, (int)Math.Ceiling(extent / GrooveStep.Radians) + 1)
            .Select(i => Shown(Quadrant.Groove.PointWithNormal(_pocket + i * GrooveStep)));

    /// <summary>What the script moves.</summary>
    public SweepData Data()
    {
        var groove = Groove(Math.Max(GrooveStep.Radians, Positions.Max(p => p.Wire.Wrap.Radians)));
        return new(
            [.. groove.SelectMany(Flat)], Rounded(GrooveStep.Radians, 6), [.. Flat(Seat)], [.. Flat(Fitting)],
            [.. Positions.Select(p => Rounded(Turned(p.Wire.Opening), 3))], [.. Positions.Select(p => Rounded(p.Wire.Wrap.Radians, 4))],
            [.. Positions.SelectMany(p => Flat(Shown(p.Wire.From)))], [.. Positions.Select(p => Rounded(p.Part, 4))]);
    }

    private IEnumerable<SweepPosition> PositionsOf(Job job)
    {
        var lever = job.Vehicle.Pedal.Lever;
        SweepPosition At(string name, TautWire wire, double pull)
        {
            var pad = pull <= 0 ? 0 : lever.PadAt(Math.Min(pull, Travel.AvailablePull));
            return new(name, wire, pull, pad, pad / lever.FullStroke);
        }

        double PullOf(TautWire wire) => Travel.FreePlay + Travel.Closed.Length - wire.Length;
        const double nothing = 1e-6;
        yield return At(SweepText.InTable(SweepText.Released), Travel.Closed, 0);
        var last = 0.0;
        var wire = Travel.Closed;
        for (var i = 0; i < Travel.Sweep.Length; i++)
        {
            var next = Travel.Sweep[i];
            var pull = PullOf(next);
            if (pull > Travel.AvailablePull + nothing || next.Opening.Radians > Travel.Reached.Radians + 1e-12)
            {
                break;
            }

            (wire, last) = (next, pull);
            yield return At(i == 0 ? SweepText.FirstMove : i == Travel.Sweep.Length - 1 ? SweepText.WideOpen : "", wire, last);
        }

        if (!Travel.ReachesWideOpen && Travel.Reached.Radians > wire.Opening.Radians)
        {
            wire = TautWire.Solve(Quadrant, SeatInEngine, Travel.Reached);
        }

        if (Travel.AvailablePull - last > nothing)
        {
            yield return At(SweepText.InTable(SweepText.OnFloor), wire, Travel.AvailablePull);
        }
    }

    private static double[] Flat(Vector2 p) => [Rounded(p.X, 3), Rounded(p.Y, 3)];

    private static double Rounded(double value, int decimals) => Math.Round(value, decimals) + 0.0;
}

/// <summary>The moving picture's geometry, in picture coordinates (mm, y down).</summary>
/// <param name="Groove">The groove's points, valve closed, x and y in turn.</param>
/// <param name="GrooveStep">Wrap from one of them to the next (rad).</param>
/// <param name="Seat">The outer's seat.</param>
/// <param name="Fitting">The end fitting, valve closed.</param>
/// <param name="Turns">Turn of the quadrant at each position (degrees, clockwise on the screen).</param>
/// <param name="Wraps">Wrap angle at each position (rad).</param>
/// <param name="From">Where the straight wire begins at each position, x and y in turn.</param>
/// <param name="Pedal">Part of the pedal's stroke at each position.</param>
internal sealed record SweepData(
    double[] Groove, double GrooveStep, double[] Seat, double[] Fitting, double[] Turns, double[] Wraps, double[] From, double[] Pedal);
