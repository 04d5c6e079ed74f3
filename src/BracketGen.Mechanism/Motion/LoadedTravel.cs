using System.Collections.Immutable;
using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;
using BracketGen.Mechanism.Grooves;
using BracketGen.Mechanism.Numerics;
using BracketGen.Mechanism.Throttles;
using MathNet.Numerics.RootFinding;

namespace BracketGen.Mechanism.Motion;

/// <summary>The travel with the wire under tension: what the pedal must really pull, lost motion included.</summary>
/// <remarks>
/// At the opening θ the springs need the tension T(θ) = (τ(θ) + 2 d)/arm(θ): τ is read as the valve closes, so the drag d at the throttle shaft is taken off in it, and
/// opening it must be overcome twice. Under T wire, outer and bracket take lost motion c T, and c0 more for the cable's drag, so
/// the pedal pulls p(θ) = f + pull(θ) + c T(θ) + c0. The opening for a pull is found from that equation, so that tension and
/// opening belong together. Free play is taken up without tension; before the valve leaves its stop the wire is first pulled
/// tight, which takes c T(0) + c0. Lengths in mm of wire at the cable, forces in N.
/// </remarks>
public sealed record LoadedTravel : IMirrored<LoadedTravel>
{
    // What the solver takes, opening counter-clockwise, also where the answer is mirrored.
    private readonly Quadrant _quadrant;
    private readonly Vector2 _seat;
    private bool _isMirrored;

    private LoadedTravel(Quadrant quadrant, Vector2 seat) => (_quadrant, _seat) = (quadrant, seat);

    /// <summary>The travel without load.</summary>
    public required Travel Travel { get; init; }

    /// <summary>The springs.</summary>
    public required ReturnSprings Springs { get; init; }

    /// <summary>The outer's friction.</summary>
    public required CableFriction Friction { get; init; }

    /// <summary>Lost motion for 1 N of tension at the quadrant (mm/N).</summary>
    public required double LostPerTension { get; init; }

    /// <summary>Lost motion that the cable's drag takes whatever the tension (mm).</summary>
    public double LostToDrag { get; init; }

    /// <summary>Drag torque at the throttle shaft (N·mm): half the difference between the torque that opens and the torque read as it closes.</summary>
    public double ShaftDrag { get; init; }

    /// <summary>Opening with the pedal on the floor, up to the full rotation.</summary>
    public required Angle Reached { get; init; }

    /// <summary>Lost motion when the valve begins to move (mm).</summary>
    public double LostAtFirstMove => LostAt(Travel.Closed);

    /// <summary>Lost motion when the valve is wide open (mm).</summary>
    public double LostAtWideOpen => LostAt(Travel.WideOpen);

    /// <summary>Over-travel: pull left at the floor after the valve is wide open (mm); negative if the valve does not open fully.</summary>
    public double OverTravel => Travel.OverTravel - LostAtWideOpen;

    /// <summary>
    /// Tension at the quadrant (N) with the pedal held on the floor: over-travel stretches the wire against the wide-open stop.
    /// Infinite if nothing is elastic.
    /// </summary>
    public double TensionOnFloor => OverTravel > 0
        ? TensionAt(Travel.WideOpen) + OverTravel / LostPerTension
        : TensionAt(Solved(Reached));

    /// <summary>The wire at <paramref name="opening"/>.</summary>
    public TautWire Wire(Angle opening) => _isMirrored ? Solved(opening).Mirrored() : Solved(opening);

    /// <summary>Tension at the quadrant (N) that opens the valve further at <paramref name="opening"/>, against springs and shaft drag.</summary>
    public double TensionAt(Angle opening) => TensionAt(Solved(opening));

    /// <summary>Tension at the quadrant (N) with which the springs close the valve at <paramref name="opening"/>.</summary>
    public double ClosingTensionAt(Angle opening)
    {
        var wire = Solved(opening);
        return TensionAt(wire) - 2 * ShaftDrag / wire.Arm;
    }

    /// <summary>Pull at the pedal's end (mm) that holds the valve at <paramref name="opening"/>.</summary>
    public double PullAt(Angle opening)
    {
        var wire = Solved(opening);
        return Travel.FreePlay + Travel.Closed.Length - wire.Length + LostAt(wire);
    }

    /// <summary>Opening at a pull (mm), from 0 to the full rotation: the first at which <see cref="PullAt"/> needs that pull.</summary>
    public Angle OpeningAt(double pull) => First(pull, i => PullAt(StepAt(i)));

    /// <summary>The openings at many pulls (mm), each as <see cref="OpeningAt"/> gives it.</summary>
    public ImmutableArray<Angle> OpeningsAt(IEnumerable<double> pulls)
    {
        var known = new double?[Steps + 1];
        double PullAtStep(int i) => known[i] ??= PullAt(StepAt(i));
        return [.. pulls.Select(pull => First(pull, PullAtStep))];
    }

    /// <summary>The travel under load for a stop at <paramref name="seat"/> (mm, in the groove's plane).</summary>
    /// <exception cref="ArgumentException">The wire pulls past the shaft somewhere: no tension can open the valve there.</exception>
    public static LoadedTravel Solve(
        Quadrant quadrant, Vector2 seat, double freePlay, double availablePull,
        ReturnSprings springs, CableFriction friction, CableCompliance compliance, double shaftDrag = 0)
    {
        var travel = Travel.Solve(quadrant, seat, freePlay, availablePull);
        if (!(travel.LeastArm > 0))
        {
            throw new ArgumentException(
                "The wire's line passes the throttle shaft within the sweep: there no tension can open the valve. Move the stop first.");
        }

        var loaded = new LoadedTravel(quadrant, seat)
        {
            Travel = travel,
            Springs = springs,
            Friction = friction,
            LostPerTension = compliance.PerTension(friction),
            LostToDrag = compliance.ForDrag(friction),
            ShaftDrag = shaftDrag,
            Reached = travel.Rotation,
        };
        return loaded with { Reached = loaded.OpeningAt(availablePull) };
    }

    /// <inheritdoc/>
    public LoadedTravel Mirrored() => this with { Travel = Travel.Mirrored(), _isMirrored = !_isMirrored };

    private TautWire Solved(Angle opening) => TautWire.Solve(_quadrant, _seat, opening);

    private double TensionAt(TautWire wire) => (Springs.TorqueAt(wire.Opening.Radians / Travel.Rotation.Radians) + 2 * ShaftDrag) / wire.Arm;

    private double LostAt(TautWire wire) => LostPerTension * TensionAt(wire) + LostToDrag;

    // The pull may fall again where the arm grows faster than the opening needs, so the first step past it is searched for.
    private const int Steps = 24;

    private Angle First(double pull, Func<int, double> pullAtStep)
    {
        for (var i = 0; i <= Steps; i++)
        {
            if (pullAtStep(i) >= pull)
            {
                return i == 0
                    ? Angle.Zero
                    : Brent.FindRoot(x => PullAt(x * Travel.Rotation) - pull, (i - 1.0) / Steps, (double)i / Steps, MechanismTolerance.Root) * Travel.Rotation;
            }
        }

        return Travel.Rotation;
    }

    private Angle StepAt(int i) => (double)i / Steps * Travel.Rotation;
}
