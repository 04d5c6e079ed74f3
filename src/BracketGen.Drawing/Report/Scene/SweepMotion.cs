using BracketGen.Design.Inputs;
using BracketGen.Design.Study;
using BracketGen.Drawing.Report.Html;
using BracketGen.Geometry;
using BracketGen.Mechanism.Motion;
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
    public SweepMotion(Solution solution)
    {
        var job = solution.Job;
        Travel = solution.Travel;
        Quadrant = solution.Quadrant;
        Positions = [.. PositionsOf(job)];
    }

    public Travel Travel { get; }

    /// <summary>The quadrant, throttle frame as measured.</summary>
    public QuadrantPicture Quadrant { get; }

    /// <summary>At least two: released and on the floor.</summary>
    public IReadOnlyList<SweepPosition> Positions { get; }

    /// <summary>The seat in the picture.</summary>
    public Vector2 Seat => PathData.Down(Travel.Closed.Seat);

    /// <summary>Direction in the picture from quadrant to seat, valve closed.</summary>
    public Vector2 Towards => PathData.Down(Travel.Closed.Direction);

    /// <summary>Centre of the end fitting in the picture, valve closed.</summary>
    public Vector2 Fitting => PathData.Down(Quadrant.Fitting);

    /// <summary>How far the quadrant is turned in the picture (degrees as SVG counts them: clockwise).</summary>
    public double Turned(Angle opening) => -Quadrant.TurnAt(opening).Degrees;

    /// <summary>The wire from the fitting over the groove to the seat, in the picture.</summary>
    public IEnumerable<Vector2> WirePath(TautWire wire)
    {
        var turn = Quadrant.TurnAt(wire.Opening);
        for (var i = 0; i * QuadrantPicture.GrooveStep.Radians < wire.Wrap.Radians; i++)
        {
            yield return PathData.Down(Quadrant.Groove[i].Rotate(turn));
        }

        yield return PathData.Down(wire.From);
        yield return Seat;
    }

    /// <summary>The groove, from the pocket to its end, valve closed, in the picture.</summary>
    public IEnumerable<Vector2> Groove => Quadrant.Groove.Take(Quadrant.InGroove).Select(PathData.Down);

    /// <summary>What the script moves.</summary>
    public SweepData Data()
    {
        var wrapped = (int)Math.Ceiling(Math.Max(1, Positions.Max(p => p.Wire.Wrap.Radians) / QuadrantPicture.GrooveStep.Radians)) + 1;
        return new(
            [.. Quadrant.Groove.Take(wrapped).SelectMany(p => Flat(PathData.Down(p)))], Rounded(QuadrantPicture.GrooveStep.Radians, 6), [.. Flat(Seat)], [.. Flat(Fitting)],
            [.. Positions.Select(p => Rounded(Turned(p.Wire.Opening), 3))], [.. Positions.Select(p => Rounded(p.Wire.Wrap.Radians, 4))],
            [.. Positions.SelectMany(p => Flat(PathData.Down(p.Wire.From)))], [.. Positions.Select(p => Rounded(p.Part, 4))]);
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
            if (pull > Travel.AvailablePull + nothing || next.Opening.Radians > Travel.Reached.Radians + Tolerance.OnLimit)
            {
                break;
            }

            (wire, last) = (next, pull);
            yield return At(i == 0 ? SweepText.FirstMove : i == Travel.Sweep.Length - 1 ? SweepText.WideOpen : "", wire, last);
        }

        if (!Travel.ReachesWideOpen && Travel.Reached.Radians > wire.Opening.Radians)
        {
            wire = Travel.OnFloor;
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
