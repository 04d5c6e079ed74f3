using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Units;
using BracketGen.Words.Checks;

namespace BracketGen.Words.Results;

/// <summary>The vehicle's other cables in words: which is left out, what is lost, and how to lay it by.</summary>
public static class OtherCableText
{
    /// <summary>Heading.</summary>
    public const string Heading = "Other cables of the vehicle";


    /// <summary>Whether the job has other cables.</summary>
    public static bool Has(Job job) => !job.Vehicle.OtherCables.IsEmpty;

    /// <summary>Whether one of them is left out and stays in the vehicle, as far as the job says.</summary>
    public static bool HasToLayBy(Job job) => job.Vehicle.OtherCables.Any(c => StaysLoose(job, c));

    /// <summary>Before the cables.</summary>
    public static string Intro(Job job)
    {
        var (all, working) = (job.Vehicle.OtherCables.Length, job.Vehicle.OtherCables.Count(c => job.UseOf(c).Fate == CableFate.InGroove));
        var grooves = $"{job.Body.Name} has {(job.Body.OtherGrooves.IsEmpty ? "one groove" : Counted.Of(job.Body.OtherGrooves.Length + 1, "groove"))}. The cable from the pedal works in {(job.Body.OtherGrooves.IsEmpty ? "it" : "the first")}.";
        var works = working == 0 ? "" : $" {Phrases.Capital(Count(working))} of {job.Vehicle.Name} {Counted.Verb(working, "works", "work")} in {Counted.Verb(working, "a groove of its own", "grooves of their own")}.";
        return $"{grooves}{works}{(working == all ? "" : $" {Phrases.Capital(Count(all - working))} of {job.Vehicle.Name} {Counted.Verb(all - working, "is", "are")} left out.")}";
    }

    /// <summary>Name of a cable, what it did and where it comes from.</summary>
    public static string Which(OtherCable cable) => $"Cable \"{cable.Name}\": {CableWords.Duty(cable.Duty)}, from {cable.From}";

    /// <summary>What becomes of a cable, as the job says.</summary>
    public static string Becomes(CableUse use) => use.Fate switch
    {
        CableFate.LaidBy => "laid by",
        CableFate.TakenOut => "taken out",
        CableFate.HookedElsewhere => $"hooked elsewhere: {use.HookedTo}",
        CableFate.InGroove => $"works in the groove \"{use.Groove}\"",
        _ => "not said",
    };

    /// <summary>What becomes of a cable and what is lost or does its work instead, as sentences.</summary>
    public static string Account(Job job, OtherCable cable)
    {
        var use = job.UseOf(cable);
        if (use.Fate == CableFate.InGroove)
        {
            return $"{Phrases.Capital(Becomes(use))}. {Working(job, cable)}";
        }

        var fate = use.Fate == CableFate.NotSaid ? "The job does not say what becomes of it." : $"{Phrases.Capital(Becomes(use))}.";
        var work = use.ServedBy is { } by ? $"Its work is done by: {by}." : use.Fate == CableFate.HookedElsewhere ? "" : CableWords.Lost(cable.Duty);
        return $"{fate} {work}".TrimEnd();
    }

    // What the wire does over the sweep, and where its outer must be held.
    private static string Working(Job job, OtherCable cable)
    {
        var wire = OtherCableWire.Of(job.OpeningCounterClockwise()).First(w => w.Other == cable);
        var units = job.Units;
        if (wire.Sweep.IsEmpty)
        {
            return "No wire runs from the groove to its seat.";
        }

        string Length(double value) => units.Write(Quantity.Length, value);
        var seat = job.Body.Turned(wire.Seat);
        var at = $"x {units.Number(Quantity.Length, seat.X)}, y {units.Number(Quantity.Length, seat.Y)}, z {Length(seat.Z)}";
        var moves = wire.Groove.Draws
            ? $"The quadrant draws {Length(wire.Moved)} of its wire from closed to wide open."
            : $"It pulls {Length(wire.Moved)} of wire from closed to wide open. When the pedal opens the valve, its wire goes slack by as much.";
        var held = wire.IsSeatGiven
            ? $"Its outer's seat is at {at}, {(wire.Use.HeldBy is { } by ? $"held by: {by}" : "and nothing holds it yet")}."
            : $"Its outer's seat is not given. The cable would want it at {at}, where nothing holds it yet.";
        return $"{moves} {held}";
    }

    /// <summary>Before the steps for a cable.</summary>
    public static string HowTo(Job job, OtherCable cable) => job.UseOf(cable).Fate == CableFate.InGroove ? "To fit it:" : "To lay it by (common practice, no source):";

    /// <summary>How to fit a cable or to lay it by, step by step; empty if it is taken out or hooked elsewhere. Common practice, no source.</summary>
    public static IEnumerable<string> Steps(Job job, OtherCable cable)
    {
        if (job.UseOf(cable).Fate == CableFate.InGroove)
        {
            foreach (var step in Fitting(job, cable))
            {
                yield return step;
            }

            yield break;
        }

        if (!StaysLoose(job, cable))
        {
            yield break;
        }

        if (cable.IsOnPedal != false)
        {
            yield return $"{(cable.IsOnPedal is null ? "If an end of it is hooked to the pedal, take it off" : "Take its end off the pedal")}. A second cable still hooked there can hold the pedal down by its friction or its own end stop. Nothing of it hangs from the pedal arm.";
        }

        if (CableWords.MakeDead(cable.Duty) is { } dead)
        {
            yield return dead;
        }

        yield return "Cut its wire off flush with the outer, or put a cap over the end fitting and tape it: no barrel, ball or strand is left that can hook into something.";
        yield return "Tie the outer back to the body of the vehicle, not to the engine, its wire slack, in two places near its end: away from pedal, quadrant, throttle shaft, exhaust and steering.";
        yield return "Engine off: work the pedal to the floor, rock the engine, turn the steering from lock to lock. The tied cable touches nothing that moves and nothing hot.";
    }

    /// <summary>The check on the set-up sheet before the first start; null where no other cable is left.</summary>
    public static string? Check(Job job) => job.Vehicle.OtherCables.Where(c => job.UseOf(c).Fate is not (CableFate.TakenOut or CableFate.InGroove)).ToList() is { Count: > 0 } left
        ? $"{Phrases.Capital(Phrases.List([.. left.Select(c => $"cable \"{c.Name}\"")]))}: no loose end can reach pedal, quadrant or throttle shaft. Pulled by hand as far as it goes, it moves neither valve nor pedal."
        : null;

    /// <summary>The check on the set-up sheet of cables in grooves of their own; null where there is none.</summary>
    public static string? CheckTogether(Job job) => job.Vehicle.OtherCables.Where(c => job.UseOf(c).Fate == CableFate.InGroove).ToList() is { Count: > 0 } working
        ? $"{Phrases.Capital(Phrases.List([.. working.Select(c => $"cable \"{c.Name}\"")]))}: the valve snaps shut after this cable alone, after the pedal alone, and after both together; no wire leaves its groove while it is slack."
        : null;

    private static bool StaysLoose(Job job, OtherCable cable) => job.UseOf(cable).Fate is CableFate.NotSaid or CableFate.LaidBy;

    private static IEnumerable<string> Fitting(Job job, OtherCable cable)
    {
        var wire = OtherCableWire.Of(job.OpeningCounterClockwise()).First(w => w.Other == cable);
        yield return "Fit the cable from the pedal first, and do every check with it alone.";
        yield return $"Lay the end fitting into the pocket of the groove \"{wire.Groove.Name}\" and the wire into that groove. Fix the outer at its seat: nothing of it may turn or give.";
        yield return wire.Groove.Draws
            ? $"Set its free play to {job.Units.Write(Quantity.Length, wire.FreePlay)} with the valve closed. By hand, open the valve slowly: the wire is drawn without a jerk and does not reach its end before the valve's own stop. Let go: the far end draws its wire back by itself, and no slack is left."
            : $"Set its free play to {job.Units.Write(Quantity.Length, wire.FreePlay)} with the valve closed and its actuator or lever released. Open the valve with the pedal: its wire stays in its groove and touches nothing. Open it with this cable: the pedal's wire stays in its groove.";
        yield return "Do the checks before the first start with each cable alone and with both.";
    }

    private static string Count(int count) => count == 1 ? "one other cable" : $"{Counted.Number(count)} other cables";
}
