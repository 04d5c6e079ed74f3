using BracketGen.Design.Part;
using BracketGen.Geometry;
using BracketGen.Mechanism.Motion;

namespace BracketGen.Design.Checks;

/// <summary>How hard the wire pulls at one stop, whatever bracket holds it.</summary>
/// <remarks>The tension of an opening is the springs' torque over the moment arm: the bracket's give moves the pedal, not the wire at the quadrant.</remarks>
internal sealed class StopTension
{
    /// <summary>Steps over the sweep in which the largest tension is looked for.</summary>
    private const int Steps = 24;

    private readonly double _lostInCable;
    private readonly double _lostToDrag;
    private readonly PullSpread _spread;

    /// <summary>The tensions at a stop.</summary>
    public StopTension(StopMechanism stop)
    {
        Stop = stop;
        (_lostInCable, _lostToDrag) = (stop.StiffCable.PerTension(stop.Friction), stop.StiffCable.ForDrag(stop.Friction));
        var loaded = stop.Under(stop.Friction, stop.CableAlone);
        CanOpen = loaded is not null;
        (AtLargest, Largest) = LargestOf(stop.Travel, stop.Job.Body.Springs, loaded);
        AtWideOpen = loaded?.TensionAt(stop.Travel.WideOpen.Opening) ?? Largest;
        _spread = new(stop, Math.Max(0, stop.CableAlone.PerTension(stop.Friction) * AtWideOpen + stop.CableAlone.ForDrag(stop.Friction)));

        // Friction in the outer keeps some of it from the stop; a worn-in outer keeps the least, so nothing is counted on.
        var pedal = stop.Job.Vehicle.Pedal;
        ByFoot = Math.Max(Largest, pedal.ProofForce / pedal.Lever.PullPerTravel(pedal.Lever.FullStroke));
    }

    /// <summary>The stop.</summary>
    public StopMechanism Stop { get; }

    /// <summary>Whether a tension opens the valve at every opening: the wire keeps to its side of the throttle shaft.</summary>
    public bool CanOpen { get; }

    /// <summary>The largest tension of an ordinary opening (N).</summary>
    public double Largest { get; }

    /// <summary>The wire where it is so; wide open where no other opening has more.</summary>
    public TautWire AtLargest { get; }

    /// <summary>Whether the tension is largest wide open: then one direction of load serves both cases.</summary>
    public bool IsLargestWideOpen => AtLargest.Opening == Stop.Travel.WideOpen.Opening;

    /// <summary>Tension with the valve wide open (N).</summary>
    public double AtWideOpen { get; }

    /// <summary>The most that a foot can put on the wire (N), and never less than <see cref="Largest"/>.</summary>
    public double ByFoot { get; }

    /// <summary>The give (mm/N) above which the stop fails its limit for certain; infinite where the largest tension pulls another way than that of the proof load.</summary>
    public double LargestGive => IsLargestWideOpen ? (1 + JudgeTolerance.RoundOff) * Stop.Job.Preferences.MaxGive / Largest : double.PositiveInfinity;

    /// <summary>What 1 N of tension puts on the stop, valve wide open: the outer pushes it towards the quadrant, along the wire, as hard as the wire pulls.</summary>
    public Vector3 UnitForce => -Vector3.From(Stop.Travel.WideOpen.Direction);

    /// <summary>The same where the tension of an ordinary opening is largest.</summary>
    public Vector3 UnitForceAtLargest => -Vector3.From(AtLargest.Direction);

    /// <summary>The tension of the proof load is never below this (N) on a bracket with a give of at most <paramref name="give"/>.</summary>
    /// <remarks>
    /// The floor puts T = (o - d + s)/c on the wire, with o the over-travel, d what the drag takes of it, s what the spread of the measurements adds, at least that of
    /// <see cref="SpreadAtLeast"/>, and c = c₀ + g the lost motion for 1 N, the cable at its stiff end: less, the larger the give g.
    /// </remarks>
    /// <param name="give">Give of the stop along the wire, valve wide open (mm/N), or more.</param>
    /// <param name="spread">What the spread of the measurements adds, or less (mm).</param>
    public double ProofAtLeast(double give, double spread)
    {
        if (!CanOpen)
        {
            return ByFoot;
        }

        var lost = _lostInCable + give;
        var pull = Stop.Travel.OverTravel - _lostToDrag;
        var over = (pull - lost * AtWideOpen > 0 ? pull : 0) + spread;
        return over > 0 ? Math.Min(ByFoot, Math.Max(Largest, over / lost)) : Largest;
    }

    /// <summary>What the spread of the measurements adds to the over-travel, or less (mm).</summary>
    public double SpreadAtLeast(Bracket bracket) => _spread.AtLeast(bracket);

    /// <summary>
    /// The wire's tension at the stop with the pedal stamped on: the floor stops the pedal, and what is pulled beyond the wide-open stop
    /// stretches wire, outer and bracket, the outer as stiff as it may be; but never more than the foot can give.
    /// </summary>
    public ProofLoad ProofOf(LoadedMechanism mechanism)
    {
        var foot = Stop.Job.Vehicle.Pedal.ProofForce;
        if (mechanism.Stamped is not { } stamped || !double.IsFinite(stamped.TensionOnFloor))
        {
            return new(ByFoot, foot);
        }

        var byFloor = Math.Max(Largest, stamped.TensionOnFloor + MoreOverTravel(mechanism) / stamped.LostPerTension);
        return byFloor <= ByFoot ? new(byFloor, null) : new(ByFoot, foot);
    }

    /// <summary>
    /// Axial stiffness of the outer (N) with which the proof load would be <paramref name="tension"/> (N): infinite where no outer is stiff enough for it, zero where an ordinary opening alone takes as much.
    /// </summary>
    /// <remarks>T (m (w + x) + g) = o + s - F0 (w + x), with x = L/c the outer's compression for 1 N, w the wire's stretch, g the give, m the mean tension along the outer for 1 N; the rest as in <see cref="ProofAtLeast"/>.</remarks>
    /// <param name="mechanism">The mechanism with the bracket.</param>
    /// <param name="give">Give of the stop along the wire (mm/N).</param>
    /// <param name="tension">The tension.</param>
    public double StiffnessFor(LoadedMechanism mechanism, double give, double tension)
    {
        if (tension <= Largest)
        {
            return 0;
        }

        var (cable, friction) = (Stop.StiffCable, Stop.Friction);
        var outer = (Stop.Travel.OverTravel + MoreOverTravel(mechanism) - tension * give) / (tension * friction.MeanRatio + friction.OpeningDrag) - cable.Wire;
        return tension >= ByFoot || outer <= 0 ? double.PositiveInfinity : cable.OuterLength / outer;
    }

    // As far as things were measured, the floor may come later than thought (mm).
    private static double MoreOverTravel(LoadedMechanism mechanism) =>
        mechanism.Uncertainty?.OverTravel is { } spread ? Math.Max(0, spread.Quantile(MechanismChecks.LeastWorking) - spread.Nominal) : 0;

    private static (TautWire Wire, double Tension) LargestOf(
        Travel travel, Mechanism.Throttles.ReturnSprings springs, LoadedTravel? loaded)
    {
        if (loaded is null)
        {
            return (travel.WideOpen, travel.Sweep.Max(w => springs.TorqueAt(w.Opening.Radians / travel.Rotation.Radians) / Math.Max(1, w.Arm)));
        }

        // The wide-open stop is looked at first and stays where others are no worse: its direction is that of the proof load.
        return Enumerable.Range(0, Steps + 1)
            .Select(i => i == 0 ? travel.WideOpen : loaded.Wire((double)(Steps - i) / Steps * travel.Rotation))
            .Select(w => (w, loaded.TensionAt(w.Opening)))
            .MaxBy(p => p.Item2);
    }
}
