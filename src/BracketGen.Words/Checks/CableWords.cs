using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;

namespace BracketGen.Words.Checks;

/// <summary>What the vehicle's other cables do, and what is lost without them.</summary>
public static class CableWords
{
    /// <summary>What a cable does, as files name it.</summary>
    public static string Duty(CableDuty duty) => duty switch
    {
        CableDuty.CruiseControl => "cruise control",
        CableDuty.KickDown => "kick-down",
        CableDuty.HandThrottle => "hand throttle",
        CableDuty.IdleUp => "idle-up",
        _ => "other work",
    };

    /// <summary>What is lost where the cable is left out; common practice, no source.</summary>
    public static string Lost(CableDuty duty) => duty switch
    {
        CableDuty.CruiseControl => "Cruise control does not work any more: nothing holds the speed, whatever its switch says. Put a note on the switch.",
        CableDuty.KickDown =>
            "The gearbox no longer learns how far the valve is open. With its cable slack or left hanging it works with too low a pressure: it shifts too early, slips and burns its clutches. "
            + "It can lose its drive in traffic.",
        CableDuty.HandThrottle => "The hand throttle does nothing any more: no winch or pump runs at a set speed. Take its lever off, so that nobody relies on it.",
        CableDuty.IdleUp => "Nothing raises the idle speed for a cold engine, the air conditioning or the steering pump: the engine can stall. Raise it another way if the engine needs it.",
        _ => "What the cable did is not done any more. Find out what that was before you lay it by.",
    };

    /// <summary>How to make dead what pulls the cable; null where nothing with a drive of its own pulls it.</summary>
    public static string? MakeDead(CableDuty duty) => duty switch
    {
        CableDuty.CruiseControl =>
            "Make its actuator dead: unplug an electric one, or take the vacuum hose off and cap hose and pipe. A loose cable alone does not: the switch still drives the actuator.",
        CableDuty.IdleUp => "Make its actuator dead: unplug it, or take the vacuum hose off and cap hose and pipe.",
        _ => null,
    };

    /// <summary>Title of a check about another cable.</summary>
    internal static string Title(Check check) => check.Id switch
    {
        CheckId.OtherStop => $"Stop for the outer of the cable \"{check.Subject}\"",
        CheckId.WrapWideOpen when check.IsVariant => $"Wrap at the closed stop, cable \"{check.Subject}\"",
        CheckId.GrooveLength when check.IsVariant => $"Groove left behind the wire at the wide-open stop, cable \"{check.Subject}\"",
        CheckId.PedalSlack => $"Slack of the pedal's wire taken up while the cable \"{check.Subject}\" opens the valve",
        _ when !IsLeftOut(check.Id) => $"{CheckWords.Of(check.Id).Title}, cable \"{check.Subject}\"",
        CheckId.CableLaidBy => $"Cable \"{check.Subject}\" taken out or laid by, off the pedal",
        CheckId.CableActuatorDead => $"Actuator of the cable \"{check.Subject}\" dead",
        CheckId.KickDownServed => $"Kick-down cable \"{check.Subject}\" connected, or the gearbox served another way",
        CheckId.CableElsewhere => $"Cable \"{check.Subject}\" where it is hooked now",
        _ => $"Work of the cable \"{check.Subject}\", which is left out",
    };

    /// <summary>Whether a check is about a cable that is left out, with words of its own.</summary>
    internal static bool IsLeftOut(CheckId id) =>
        id is CheckId.CableLaidBy or CheckId.CableActuatorDead or CheckId.KickDownServed or CheckId.CableElsewhere or CheckId.CableWork;

    /// <summary>What to measure for a cable in a groove of its own; null where that is said elsewhere.</summary>
    internal static string? Measure(CheckId id) => id switch
    {
        CheckId.IdleSlack =>
            "Where the slack goes is not known. Measure free_arc of its groove, over which the end fitting can stay behind ([[other_grooves]] of the throttle body's file), or take_up of the cable.",
        CheckId.PedalSlack =>
            "Where the slack of the pedal's wire goes is not known. Measure free_arc of the first groove, over which the end fitting can stay behind: at the top of the throttle body's file.",
        CheckId.DrawnStroke => "How far the wire can be drawn is not known. Draw it by hand to the end and measure: max_stroke of the cable.",
        CheckId.DrawnFootForce => "How hard the wire is drawn is not known. Measure draw_force of the cable with a spring balance.",
        _ => null,
    };

    /// <summary>What to measure where drag that nobody measured could turn the return with another cable.</summary>
    internal const string MeasureDrag =
        "It passes with the usual values, but not at the bad end of what was assumed. Measure the closing drag of this cable with its far end connected, and what is assumed of the pedal's cable and the throttle shaft.";

    /// <summary>What to do where such a check fails or is not known.</summary>
    internal static string Consequence(Check check)
    {
        var duty = check.Duty ?? CableDuty.Other;
        var isOpen = check.State == CheckState.NotKnown;
        return check.Id switch
        {
            CheckId.CableLaidBy when isOpen =>
                $"The cable \"{check.Subject}\" is left out: the job gives it no groove. Take it out of the vehicle, or lay it by as the set-up sheet says, with no end of it left on the pedal; "
                + "then write in the job what becomes of it: [[other_cables]], becomes, pedal_end.",
            CheckId.CableLaidBy =>
                $"The cable \"{check.Subject}\" is still hooked to the pedal: its friction or its own end stop can hold the pedal down, and the valve stays open. Take it off the pedal.",
            CheckId.CableActuatorDead when isOpen =>
                $"Whether something can still pull the cable \"{check.Subject}\" is not known. {MakeDead(duty)} Then write it in the job: [[other_cables]], actuator = \"dead\".",
            CheckId.CableActuatorDead => $"Something can still pull the cable \"{check.Subject}\": it can drag its loose end into the quadrant, or pull the pedal down. {MakeDead(duty)}",
            CheckId.KickDownServed =>
                $"Kick-down cable not connected. {Lost(duty)} Do not drive so. Connect it where it follows the valve (becomes = \"hooked elsewhere\"), or write in the job what serves the gearbox instead: served_by.",
            CheckId.CableElsewhere =>
                $"The program does not look at the cable \"{check.Subject}\" where it is hooked now. Engine off, pull it by hand over its whole stroke, then work the pedal over its own: "
                + "neither may move the other, neither may hold the valve open, and its slack may not reach the quadrant.",
            _ => Lost(duty),
        };
    }
}
