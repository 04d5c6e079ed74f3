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
    public Angle OpeningAt(double pull) => First(pull, PullCurve.Of(this));

    /// <summary>The openings at many pulls (mm), each as <see cref="OpeningAt"/> gives it.</summary>
    public ImmutableArray<Angle> OpeningsAt(IEnumerable<double> pulls)
    {
        var curve = PullCurve.Of(this);
        return [.. pulls.Select(pull => First(pull, curve))];
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

    // The pull may fall again where the arm grows faster than the opening needs, so the first rise that reaches it is searched for.
    private Angle First(double pull, PullCurve curve)
    {
        if (curve.FirstReaching(pull) is not { } rise)
        {
            return Travel.Rotation;
        }

        return rise.From == rise.To
            ? rise.From * Travel.Rotation
            : Brent.FindRoot(x => PullAt(x * Travel.Rotation) - pull, rise.From, rise.To, MechanismTolerance.Root) * Travel.Rotation;
    }

    /// <summary>Pull (mm) over part of the rotation, in pieces over which it only rises or only falls.</summary>
    /// <remarks>
    /// p' = h + c (τ' h - τ h')/h². A piece is proven to rise by bounds on the arm h and on h' = -s (1 + s/ℓ), |s| at most as far as the wire touches the
    /// groove from the shaft. Where that proves nothing, it is halved down to <see cref="Finest"/>; there the sign of p' at both ends says
    /// whether a tip lies between, and bisection finds it. On the usual round groove each of the first steps is proven at once.
    /// </remarks>
    private sealed class PullCurve
    {
        // Part of the sweep below which the pull is taken to have one tip at the most.
        private const double Finest = 1.0 / 1536;
        private const int Steps = 24;
        private readonly List<(double At, double Pull)> _knots = [];
        private readonly LoadedTravel _travel;
        private readonly double _reach;
        private readonly double _leastStraight;

        private PullCurve(LoadedTravel travel)
        {
            _travel = travel;

            // The farthest point at the steps and half again: between them a convex groove reaches no farther.
            _reach = 1.5 * travel.Travel.Sweep.Max(w => w.From.Length);
            _leastStraight = Math.Max(travel._seat.Length - _reach, travel.Travel.LeastStraight / 2);
            var before = At(0);
            _knots.Add((0, before.Pull));
            for (var i = 1; i <= Steps; i++)
            {
                var next = At((double)i / Steps);
                Add(before, next);
                before = next;
            }
        }

        public static PullCurve Of(LoadedTravel travel) => new(travel);

        /// <summary>The first rise that reaches <paramref name="pull"/>, or the one place that does; null if none does.</summary>
        public (double From, double To)? FirstReaching(double pull)
        {
            for (var i = 0; i < _knots.Count; i++)
            {
                if (_knots[i].Pull >= pull)
                {
                    return i == 0 ? (0, 0) : (_knots[i - 1].At, _knots[i].At);
                }
            }

            return null;
        }

        private readonly record struct Place(double At, double Arm, double Pull, double Slope);

        private Place At(double part)
        {
            var wire = _travel.Solved(part * _travel.Travel.Rotation);
            double torque = TorqueAt(part), arm = wire.Arm;
            var pull = _travel.Travel.FreePlay + _travel.Travel.Closed.Length - wire.Length + _travel.LostAt(wire);
            return new(part, arm, pull, arm + _travel.LostPerTension * (TorqueSlope * arm - torque * wire.ArmSlope) / (arm * arm));
        }

        // What opens: springs and the shaft's drag both ways (N·mm).
        private double TorqueAt(double part) => _travel.Springs.TorqueAt(part) + 2 * _travel.ShaftDrag;

        // Change of the springs' torque with the opening (N·mm/rad).
        private double TorqueSlope => (_travel.Springs.TorqueOpen.Value - _travel.Springs.TorqueClosed.Value) / _travel.Travel.Rotation.Radians;

        private void Add(Place from, Place to)
        {
            if (!Rises(from, to))
            {
                if (to.At - from.At > Finest)
                {
                    var middle = At((from.At + to.At) / 2);
                    Add(from, middle);
                    Add(middle, to);
                    return;
                }

                if (from.Slope * to.Slope < 0)
                {
                    Place low = from, high = to;
                    for (var half = 0; half < 40; half++)
                    {
                        var middle = At((low.At + high.At) / 2);
                        (low, high) = middle.Slope * from.Slope > 0 ? (middle, high) : (low, middle);
                    }

                    _knots.Add((low.At, low.Pull));
                }
            }

            _knots.Add((to.At, to.Pull));
        }

        private bool Rises(Place from, Place to)
        {
            var width = (to.At - from.At) * _travel.Travel.Rotation.Radians;
            var steepest = _reach * (1 + _reach / _leastStraight);
            var arm = (from.Arm + to.Arm - steepest * width) / 2;
            var torque = Math.Max(TorqueAt(from.At), TorqueAt(to.At));
            return arm > 0 && arm > _travel.LostPerTension * (Math.Max(0, -TorqueSlope) / arm + torque * steepest / (arm * arm));
        }
    }
}
