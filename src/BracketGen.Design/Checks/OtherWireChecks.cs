using System.Collections.Immutable;
using BracketGen.Design.Inputs;
using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;
using BracketGen.Mechanism.Forces;
using BracketGen.Mechanism.Grooves;
using BracketGen.Mechanism.Motion;

namespace BracketGen.Design.Checks;

/// <summary>The checks of a cable that works in a groove of its own: its wire, its stroke, what it does to the pedal's cable and to the return.</summary>
internal static class OtherWireChecks
{
    /// <summary>What does not depend on the pedal's stop.</summary>
    /// <param name="job">The job, opening counter-clockwise.</param>
    /// <param name="wire">The cable.</param>
    public static IEnumerable<Check> Of(Job job, OtherCableWire wire) => Named(wire, OfWire(job, wire));

    /// <summary>What the cables of grooves of their own do to the return and to the foot.</summary>
    /// <param name="job">The job, opening counter-clockwise.</param>
    /// <param name="report">The mechanism of the pedal's cable.</param>
    public static IEnumerable<Check> OfForces(Job job, MechanismReport report) =>
        JobFacts.Of(job).OtherWires.Where(w => !w.Sweep.IsEmpty).SelectMany(w => Named(w, w.Groove.Draws ? Drawn(job, w, report) : Return(job, w, report)));

    private static IEnumerable<Check> Named(OtherCableWire wire, IEnumerable<Check> checks) =>
        checks.Select(c => c with { Number = wire.Number, Subject = wire.Other.Name, Duty = wire.Other.Duty });

    private static IEnumerable<Check> OfWire(Job job, OtherCableWire wire)
    {
        yield return new(CheckId.OtherStop, wire.IsSeatGiven && wire.Use.HeldBy is not null ? 1 : 0, 1);
        yield return new(CheckId.CableReach, wire.Sweep.IsEmpty ? 0 : 1, 1);
        if (wire.Sweep.IsEmpty)
        {
            yield break;
        }

        var (groove, cable, preferences) = (wire.Groove, wire.Cable, job.Preferences);
        var (quadrant, sweep) = (groove.Quadrant, wire.Sweep);
        yield return new(CheckId.MomentArm, sweep.Min(w => w.Arm), 0.5 * sweep[0].Arm);

        // A wire that is drawn lies on the least of the groove when the valve is closed, and on the most when it is wide open.
        var (least, most) = groove.Draws ? (sweep[0].Wrap, sweep[^1].Wrap) : (sweep[^1].Wrap, sweep[0].Wrap);
        yield return new(CheckId.WrapWideOpen, least.Radians, preferences.MinWrap.Radians) { IsVariant = groove.Draws };
        yield return new(CheckId.GrooveLength, (quadrant.GrooveExtent - most).Radians, quadrant.Pocket.PlusMinus.Radians) { IsVariant = groove.Draws };
        yield return new(CheckId.WireInGroove, quadrant.GrooveWidth, cable.WireDiameter + TravelChecks.WirePlay);
        yield return new(CheckId.WireInSlot, quadrant.SlotWidth, cable.WireDiameter + TravelChecks.WirePlay);
        foreach (var check in PocketChecks.Of(groove.Draws ? quadrant.Mirrored() : quadrant, cable, sweep))
        {
            yield return check;
        }

        var straight = sweep.Min(w => w.Straight);
        yield return new(CheckId.FleetAngle, Math.Atan2(Math.Abs(wire.Seat.Z - groove.Z), straight), cable.FleetLimit.Radians);
        yield return new(CheckId.OuterSideLoad, Wander(sweep), cable.WanderLimit.Radians);
        yield return new(CheckId.FittingClearance, straight - cable.Fitting.ReachRadius - wire.Protrusion, preferences.FittingClearance);
        yield return new(CheckId.FreePlay, wire.FreePlay, preferences.MinFreePlay);
        if (cable.OuterEnd.AdjusterRange is > 0 and var range)
        {
            yield return new(CheckId.AdjusterReserve, range / 2 - Math.Abs(wire.AdjusterShift), preferences.AdjusterReserve * range / 2);
        }

        foreach (var check in groove.Draws ? DrawnStrokes(wire) : Slacks(job, wire))
        {
            yield return check;
        }
    }

    private static IEnumerable<Check> DrawnStrokes(OtherCableWire wire)
    {
        var drawn = wire.Moved - wire.FreePlay;
        if (wire.Other.Duty == CableDuty.KickDown)
        {
            yield return new(CheckId.KickDownStroke, wire.Other.Stroke is null ? double.NaN : drawn, wire.Other.Stroke?.Max ?? 0);
        }

        yield return new(CheckId.DrawnStroke, wire.Other.MaxStroke is null ? double.NaN : wire.Moved, wire.Other.MaxStroke ?? 0);
    }

    // Whichever cable opens the valve, the wire of the other goes slack by what it would have pulled: it must stay in its groove.
    private static IEnumerable<Check> Slacks(Job job, OtherCableWire wire)
    {
        var (other, groove) = (wire.Other, wire.Groove);
        yield return new(CheckId.CableStroke, other.Stroke is { } stroke ? stroke.Value - wire.FreePlay - wire.Moved : double.NaN, 0);
        double? left = groove.FreeArc is null && other.TakeUp is null ? null : Free(groove.Quadrant, groove.FreeArc) + (other.TakeUp ?? 0) - wire.Moved;
        yield return new(CheckId.IdleSlack, left ?? double.NaN, 0);
        var quadrant = job.Body.Quadrant;
        yield return new(CheckId.PedalSlack, job.Body.FreeArc is { } arc ? Free(quadrant, arc) - Free(quadrant, quadrant.Rotation.Value) : double.NaN, 0);
    }

    private static double Free(Quadrant quadrant, Angle? arc) =>
        arc is { } free ? quadrant.Groove.ArcBetween(quadrant.PocketNormal, quadrant.PocketNormal + free) : 0;

    private static double Wander(ImmutableArray<TautWire> sweep)
    {
        double Turned(TautWire w) => (w.Leaving - sweep[0].Leaving).Normalised.Radians;
        return sweep.Max(Turned) - sweep.Min(Turned);
    }

    // Both wires are drawn back by the springs alone: the other's far end as it was when its drag was read, dirt and cold counted like that of the pedal's cable.
    private static IEnumerable<Check> Return(Job job, OtherCableWire wire, MechanismReport report)
    {
        if (report.Return is not { } study)
        {
            yield return new(CheckId.CableReturn, double.NaN, ReturnMargin.SafeFraction);
            yield return new(CheckId.CablesReturn, double.NaN, ReturnMargin.SafeFraction);
            yield return new(CheckId.CablesReturnOneFailed, double.NaN, 0);
            yield break;
        }

        var (drag, shaft) = (wire.Cable.ClosingDrag, job.Body.ShaftDrag);
        double Counted(Measured value, double bad, bool atWorst) => value.Evidence != Evidence.Assumed ? job.Preferences.DirtAndCold * value.Max : atWorst ? Math.Max(value.Max, bad) : value.Max;
        double Drag(bool atWorst) => Counted(drag, Cable.DragAtWorst, atWorst);
        double Alone(bool atWorst) => Least(study.All, (m, arm) => m with { Needed = arm * Drag(atWorst) + Counted(shaft, ThrottleBody.ShaftDragAtWorst, atWorst) }, wire);
        double Both(ImmutableArray<ReturnMargin> margins) => Least(margins, (m, arm) => m with { Needed = m.Needed + arm * Drag(atWorst: false) }, wire);

        // Never above the true one: both minima taken apart.
        double? AtWorst(ImmutableArray<ReturnMargin> margins, double? pedals) =>
            pedals is { } left ? left - margins.Select((m, i) => ArmAt(wire, i, margins.Length) * Drag(atWorst: true) / m.Spring).Max()
            : drag.Evidence == Evidence.Assumed ? Least(margins, (m, arm) => m with { Needed = m.Needed + arm * Drag(atWorst: true) }, wire) : null;
        var isAssumed = drag.Evidence == Evidence.Assumed || shaft.Evidence == Evidence.Assumed;
        yield return new(CheckId.CableReturn, Alone(atWorst: false), ReturnMargin.SafeFraction) { Unfavourable = isAssumed ? Alone(atWorst: true) : null };
        yield return new(CheckId.CablesReturn, Both(study.All), ReturnMargin.SafeFraction) { Unfavourable = AtWorst(study.All, study.AtWorst?.All) };
        if (!study.OneFailed.IsEmpty)
        {
            yield return new(CheckId.CablesReturnOneFailed, Both(study.OneFailed), 0) { Unfavourable = AtWorst(study.OneFailed, study.AtWorst?.OneFailed) };
        }
    }

    private static double Least(ImmutableArray<ReturnMargin> margins, Func<ReturnMargin, double, ReturnMargin> with, OtherCableWire wire) =>
        margins.Select((m, i) => with(m, ArmAt(wire, i, margins.Length)).Fraction).Min();

    private static double ArmAt(OtherCableWire wire, int index, int count) =>
        wire.Sweep[(int)Math.Round((double)index / (count - 1) * (wire.Sweep.Length - 1))].Arm;

    // What the quadrant draws pulls the valve closed and so never hinders the return; the foot has to draw it.
    private static IEnumerable<Check> Drawn(Job job, OtherCableWire wire, MechanismReport report)
    {
        if (report.Loaded is not { } loaded || wire.Other.DrawForce is not { } force)
        {
            yield return new(CheckId.DrawnFootForce, double.NaN, MechanismChecks.MostFootForce);
            yield break;
        }

        var lever = job.Vehicle.Pedal.Lever;
        yield return new(
            CheckId.DrawnFootForce,
            report.FootForces.Select((f, i) => f.Pressing + force.Max * ArmAt(wire, i, report.FootForces.Length) / loaded.Wire(f.Opening).Arm * report.Friction.Ratio * lever.PullPerTravel(f.PadTravel)).Max(),
            MechanismChecks.MostFootForce);
    }
}
