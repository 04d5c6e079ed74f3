using System.Collections.Immutable;
using BracketGen.Design.Inputs;
using BracketGen.Geometry;
using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Forms;

namespace BracketGen.Profiles.Sections;

/// <summary>What a job says of another cable, with where it names the cable and its groove.</summary>
internal sealed record LocatedUse(CableUse Use, Located<string> Cable, Located<string>? Groove);

/// <summary>One <c>[[other_cables]]</c> of a job: what becomes of a cable that does not come from the pedal.</summary>
internal static class CableUseSection
{
    private static readonly Key<Located<string>> Name = new("cable", new LocatedForm<string>(new TextForm(40)), "Name of the cable, as the vehicle's file has it.");

    private static readonly Key<bool> PedalEnd = new(
        "pedal_end", new WordForm<bool>(("off", true), ("hooked", false)),
        "Whether its end at the pedal is taken off. Leave it out if the vehicle's file says that the cable is not on the pedal.", isRequired: false);

    private static readonly Key<bool> Actuator = new(
        "actuator", new WordForm<bool>(("dead", true), ("live", false)),
        "Whether what pulls it is unplugged, its vacuum hose off and capped: for cruise control and idle-up.", isRequired: false);

    private static readonly Key<string> ServedBy = new("served_by", new TextForm(120), "What does its work instead, if anything does.", isRequired: false);

    private static readonly Key<string> To = new("to", new TextForm(120), "What it is hooked to, and what holds its outer there.");

    private static readonly Key<Located<string>> Groove = new("groove", new LocatedForm<string>(new TextForm(40)), "Name of the groove that it works in, as the throttle body's file has it.");

    private static readonly Key<Vector3> StopAt = new(
        "stop_at", VectorForm.Point, "Where the seat of its outer is held, throttle frame. If left out, the place where the cable would want it is calculated.", isRequired: false);

    private static readonly Key<string> HeldBy = new("held_by", new TextForm(120), "What holds its outer there: no bracket of this program does.", isRequired: false);

    public static Variants<LocatedUse> Form { get; } = new(
        "becomes",
        "What becomes of the cable.",
        ("laid by", new([Name, PedalEnd, Actuator, ServedBy], v => Of(v, CableFate.LaidBy))),
        ("taken out", new([Name, ServedBy], v => Of(v, CableFate.TakenOut))),
        ("hooked elsewhere", new([Name, To], v => Of(v, CableFate.HookedElsewhere))),
        ("in a groove", new([Name, Groove, StopAt, HeldBy], v => Of(v, CableFate.InGroove))));

    /// <summary>Reports names that the vehicle does not have, and names given twice.</summary>
    /// <param name="uses">What the job says.</param>
    /// <param name="vehicle">The vehicle.</param>
    /// <param name="body">The throttle body; null where it was not read, and grooves are not looked at.</param>
    /// <param name="reading">Where errors go.</param>
    public static void Check(ImmutableArray<LocatedUse> uses, Vehicle vehicle, ThrottleBody? body, Reading reading)
    {
        ImmutableArray<string> known = [.. vehicle.OtherCables.Select(c => c.Name)];
        for (var i = 0; i < uses.Length; i++)
        {
            var (use, cable, inGroove) = uses[i];
            if (!known.Contains(use.Name))
            {
                cable.Written.Report(cable.Key, reading, new NameUnknown(known, Nearest.To(use.Name, known), NamedThing.Cable));
            }
            else if (uses.Take(i).Any(u => u.Use.Name == use.Name))
            {
                cable.Written.Report(cable.Key, reading, new GivenTwice(Repeated.Cable));
            }
            else if (inGroove is not null && body is not null && OfGroove(uses.Take(i).Select(u => u.Use), use, vehicle, body) is { } problem)
            {
                inGroove.Written.Report(inGroove.Key, reading, problem);
            }
        }
    }

    private static ProfileProblem? OfGroove(IEnumerable<CableUse> before, CableUse use, Vehicle vehicle, ThrottleBody body)
    {
        ImmutableArray<string> known = [.. body.OtherGrooves.Select(g => g.Name)];
        if (body.OtherGrooves.FirstOrDefault(g => g.Name == use.Groove) is not { } groove)
        {
            return new NameUnknown(known, Nearest.To(use.Groove!, known), NamedThing.Groove);
        }

        var cable = vehicle.OtherCables.First(c => c.Name == use.Name);
        return before.Any(u => u.Groove == use.Groove) ? new GivenTwice(Repeated.Groove)
            : cable.Cable is null || cable.Stroke is null ? new Contradiction(Contradictory.CableNotMeasured)
            : cable.Duty != CableDuty.Other && groove.Draws != (cable.Duty == CableDuty.KickDown) ? new Contradiction(Contradictory.GrooveOfOtherWork)
            : null;
    }

    private static LocatedUse Of(SectionValues values, CableFate fate)
    {
        var (name, groove) = (values.Get(Name), values.Has(Groove) ? values.Get(Groove) : null);
        return new(
            new(name.Value, fate)
            {
                IsOffPedal = values.OrNull(PedalEnd),
                IsActuatorDead = values.OrNull(Actuator),
                ServedBy = values.Has(ServedBy) ? values.Get(ServedBy) : null,
                HookedTo = values.Has(To) ? values.Get(To) : null,
                Groove = groove?.Value,
                Seat = values.Has(StopAt) ? new(values.Get(StopAt)) : null,
                HeldBy = values.Has(HeldBy) ? values.Get(HeldBy) : null,
            },
            name, groove);
    }
}
