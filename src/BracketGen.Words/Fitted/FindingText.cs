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
        ClosedReadingLow f => $"{Volts(f.Volts)} closed is below {Volts(f.Limit)}: the controller may take it for a broken wire. Set the sensor to about {Volts(f.Target)}.",
        ControllerFollows { IsLearned: true } f => $"{Volts(f.Volts)} closed: the controller learns it as its zero.",
        ControllerFollows f => $"The controller sees the valve as soon as it moves ({Volts(f.Volts)} closed).",
        _ => throw new ArgumentOutOfRangeException(nameof(finding), finding, "This finding has no words yet."),
    };

    /// <summary>One word or two for a table.</summary>
    public static string Mark(FindingWeight weight) => weight switch
    {
        FindingWeight.Safety => "UNSAFE",
        FindingWeight.Adjust => "adjust",
        _ => "ok",
    };

    /// <summary>What all findings come to.</summary>
    public static string Verdict(IReadOnlyList<Finding> findings) => findings.Max(f => f.Weight) switch
    {
        FindingWeight.Safety => "UNSAFE. DO NOT START THE ENGINE. Correct it, then take every reading again.",
        FindingWeight.Adjust => "FAILS. The valve closes, but the setting is not right yet. Adjust it, then take every reading again.",
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

    private string Length(double value) => units.Write(Quantity.Length, value);

    private string Angle(Geometry.Angle value) => units.Write(Quantity.Angle, value.Radians);

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
