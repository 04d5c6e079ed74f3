using BracketGen.Mechanism.Fitted;
using BracketGen.Units;

namespace BracketGen.Words.Fitted;

/// <summary>What the readings taken after fitting mean, in the job's units.</summary>
/// <param name="units">The units.</param>
/// <param name="pitch">Pitch of the adjuster (mm a turn); null if there is none or it is not known.</param>
public sealed class FindingText(UnitSystem units, double? pitch)
{
    /// <summary>A finding: what it means and what to do.</summary>
    public string Of(Finding finding) => finding switch
    {
        HeldOpen f => $"The valve does not close: the sensor reads {Volts(f.Volts)}, not {Volts(f.StopVolts)}. The valve is {Angle(f.Open)} open. Take the wire off the quadrant and read again. "
            + $"If the valve closes now, the cable is too tight: {Turns(f)}. If it does not, something holds the valve or its stop has moved.",
        BelowClosedStop f => $"With the pedal released the sensor reads {Volts(f.Volts)}, less open than at the closed stop ({Volts(f.StopVolts)}). The sensor has turned, or the first reading was not taken at the stop. Read both stops again.",
        ValveCloses f => $"The valve closes: {Volts(f.Volts)}, as at its stop.",
        ValveClosesByPercent f => $"The valve closes: {Percent(f.Percent)}, as at its stop.",
        HeldOpenByPercent f => $"The valve does not close: the controller shows {Percent(f.Percent)}, not {Percent(f.StopPercent)} as on the stop. The valve is about {Angle(f.Open)} open. Take the wire off the quadrant and read again. "
            + $"If the valve closes now, the cable is too tight: {Turns(f)}. If it does not, something holds the valve or its stop has moved.",
        BelowStopPercent f => $"With the pedal released the controller shows {Percent(f.Percent)}, less than on the closed stop ({Percent(f.StopPercent)}). The first reading was not taken at the stop, or the sensor has turned. Take the wire off the quadrant and read the stop again.",
        ClosingNotKnown { Why: ClosingUnknown.NoClosedReading } => "Whether the valve closes is not known: the reading with the pedal released is missing (--volts-closed, or --percent-closed).",
        ClosingNotKnown { Why: ClosingUnknown.NoStepReading } => "Whether the valve closes is not known: the controller shows 0 % on the stop and with the pedal released, but a valve that stands a little open may show 0 % too. Read how far the quadrant has turned when the display steps from 0 to 1 % (--percent-step).",
        ClosingNotKnown { Why: ClosingUnknown.NoSensor } => "Whether the valve closes is not known: nothing reads its opening. Look at it: with the pedal released it must rest on its closed stop, cold and hot.",
        ClosingNotKnown => "Whether the valve closes is not known. The sensor may have been turned since it was measured, so its reading on the closed stop is needed: take the wire off the quadrant, let the valve snap shut and read the sensor (--volts-stop, or --percent-stop).",
        OpeningNotKnown f => $"Whether the valve opens fully is not known: {Volts(f.Volts)} with the pedal on the floor says nothing without the reading on the closed stop (--volts-stop).",
        StopBeyondSlot f => $"{Volts(f.Volts)} on the closed stop cannot be right: from {Volts(f.ProfileVolts)} the sensor would have been turned {Angle(f.Turn)}, and its slot lets it turn {Angle(f.Slot)} each way. The valve does not rest on its stop with the cable off, its stop has moved, or the sensor is loose. Find out which, and measure both stops again.",
        TooLittleFreePlay f => $"Too little free play: {Length(f.Play)}; the minimum is {Length(f.Needed)}. When the engine moves or warms up the cable can hold the valve open. {Capital(Turns(f))}.",
        FreePlayOff f => $"Free play is {Length(f.Play)}, not {Length(f.Wanted)}: {(f.Play > f.Wanted ? "the first part of the pedal's travel does nothing" : "there is little in hand")}. {Capital(Turns(f))}.",
        FreePlayRight f => $"Free play is {Length(f.Play)}: right.",
        PadTravelShort f => $"The pedal travels {Length(f.Travel)}, {Length(f.Measured)} was measured before. Carpet or a pedal stop takes {Length(f.Measured - f.Travel)}, {Length(f.PullLost)} of pull.",
        PadTravelLong f => $"The pedal travels {Length(f.Travel)}, only {Length(f.Measured)} was measured before. It may strain the valve's stop. Measure again, and set the pedal stop.",
        PadTravelRight f => $"The pedal travels {Length(f.Travel)}, as measured.",
        ValveOpens f => $"The valve opens fully: {Volts(f.Volts)} with the pedal on the floor.",
        ValveStopsShort f => $"With the pedal on the floor the valve is {units.Write(Quantity.Fraction, f.Fraction)} open ({Angle(f.Reached)} of {Angle(f.Rotation)}): {Length(f.PullMissing)} of pull is missing. "
            + (f.AdjusterShift is null
                ? $"The adjuster cannot give it: free play has only {Length(f.PlayInHand)} in hand above the minimum of {Length(f.MinFreePlay)}. Fit a smaller quadrant, give the pedal more travel, or a longer cable arm."
                : $"The free play has that much in hand: {Turns(f)}."),
        DeadBandAtClosed f => $"Dead band: the controller sees nothing until the valve is {Angle(f.Behind)} open, where the reading passes {Volts(f.Zero)}. Turn the sensor {Angle(f.Behind)} in the sense of opening, until it reads {Volts(f.Zero)} closed.",
        ClosedSeenAsOpen f => $"The controller takes the closed valve for {Angle(f.Ahead)} open and may not idle. Turn the sensor back until it reads {Volts(f.Zero)} closed.",
        ClosedReadingOff f => $"{Volts(f.Volts)} on the closed stop is outside {UnitSystem.Metric.WriteRange(Quantity.Voltage, f.Target - f.Window, f.Target + f.Window)}. Set the sensor to {Volts(f.Target)} with the cable off, and read it again.",
        StepLate f => $"Dead band: the controller shows 0 % until the valve is {Angle(f.Opening)} open; at most {Angle(f.Limit)} is right. The valve can stand that far open without being seen. Turn the sensor in the sense of opening until the step from 0 to 1 % comes as soon as the valve moves.",
        StepPrompt f => $"The controller's display steps from 0 to 1 % at {Angle(f.Opening)}: as soon as the valve moves.",
        PercentOnStop f => $"The controller shows {Percent(f.Percent)} with the valve on its closed stop: it takes the closed valve for open and may not idle. Turn the sensor back until it shows 0 %, and no further than that: the step to 1 % must come as soon as the valve moves.",
        ControllerFollows { IsLearned: true } f => $"{Volts(f.Volts)} closed: the controller learns it as its zero.",
        ControllerFollows f => $"The controller sees the valve as soon as it moves ({Volts(f.Volts)} closed).",
        _ => throw new ArgumentOutOfRangeException(nameof(finding), finding, "This finding has no words yet."),
    };

    /// <summary>One word or two for a table.</summary>
    public static string Mark(FindingWeight weight) => weight switch
    {
        FindingWeight.Safety => "UNSAFE",
        FindingWeight.Adjust => "adjust",
        FindingWeight.NotProven => "NOT KNOWN",
        _ => "ok",
    };

    /// <summary>The weight that decides: a failure before what is not known.</summary>
    public static FindingWeight Decides(IReadOnlyList<Finding> findings) => findings.Max(f => f.Weight);

    /// <summary>What all findings come to.</summary>
    public static string Verdict(IReadOnlyList<Finding> findings) => Decides(findings) switch
    {
        FindingWeight.Safety => "UNSAFE. DO NOT START THE ENGINE. Correct it, then take every reading again.",
        FindingWeight.Adjust when findings.Any(f => f.Weight == FindingWeight.NotProven) =>
            "FAILS. The setting is not right yet, and these readings do not prove that the valve closes. Do not start the engine. Adjust it, then take every reading again.",
        FindingWeight.Adjust => "FAILS. The valve closes, but the setting is not right yet. Adjust it, then take every reading again.",
        FindingWeight.NotProven => "NOT PROVEN. These readings do not tell all. Do not start the engine before the missing readings are taken and right.",
        _ => "PASSES. The readings are right. Now try it, engine off, cold and hot: from every pedal position the valve must spring back at once.",
    };

    private string Turns(Finding finding)
    {
        var shift = finding.AdjusterShift ?? 0;
        var way = shift > 0 ? "away from the quadrant, which takes up slack" : "towards the quadrant, which gives slack";
        var move = $"move the outer's end {Length(Math.Abs(shift))} {way}";
        return pitch is { } p ? $"{move}: {UnitSystems.Decimals(Math.Abs(shift) / p, "0.0")} turns of the nuts ({Length(p)} a turn)" : move;
    }

    private static string Volts(double value) => UnitSystem.Metric.Write(Quantity.Voltage, value);

    private static string Percent(double value) => UnitSystems.Decimals(value, "0.##") + " %";

    private string Length(double value) => units.Write(Quantity.Length, value);

    private string Angle(Geometry.Angle value) => units.Write(Quantity.Angle, value.Radians);

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
