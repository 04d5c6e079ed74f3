using BracketGen.Geometry;

namespace BracketGen.Mechanism.Fitted;

/// <summary>Severity of a finding.</summary>
public enum FindingWeight
{
    /// <summary>As it should be.</summary>
    Good,

    /// <summary>The readings do not tell.</summary>
    NotProven,

    /// <summary>Should be set better.</summary>
    Adjust,

    /// <summary>The vehicle must not be started until it is put right.</summary>
    Safety,
}

/// <summary>One thing that the readings taken after fitting say.</summary>
/// <param name="Code">Its name, for machines.</param>
/// <param name="Weight">How severe it is.</param>
public abstract record Finding(string Code, FindingWeight Weight)
{
    /// <summary>How far to move the adjuster (mm of wire), positive if it takes up slack; null if the adjuster cannot correct it.</summary>
    public double? AdjusterShift { get; init; }
}

/// <summary>The valve stays open with the pedal released.</summary>
/// <param name="Volts">Reading (V).</param>
/// <param name="StopVolts">Reading at the closed stop (V).</param>
/// <param name="Open">How far open.</param>
public sealed record HeldOpen(double Volts, double StopVolts, Angle Open) : Finding("closes", FindingWeight.Safety);

/// <summary>The reading with the pedal released lies below that of the closed stop.</summary>
/// <param name="Volts">Reading (V).</param>
/// <param name="StopVolts">Reading at the closed stop (V).</param>
public sealed record BelowClosedStop(double Volts, double StopVolts) : Finding("closes", FindingWeight.Adjust);

/// <summary>The valve closes.</summary>
/// <param name="Volts">Reading (V).</param>
public sealed record ValveCloses(double Volts) : Finding("closes", FindingWeight.Good);

/// <summary>The same by a controller's display.</summary>
/// <param name="Percent">Reading (%).</param>
public sealed record ValveClosesByPercent(double Percent) : Finding("closes", FindingWeight.Good);

/// <summary>With the pedal released the controller shows more than on the stop.</summary>
/// <param name="Percent">Reading with the pedal released (%).</param>
/// <param name="StopPercent">Reading on the closed stop, cable off (%).</param>
/// <param name="Open">How far open.</param>
public sealed record HeldOpenByPercent(double Percent, double StopPercent, Angle Open) : Finding("closes", FindingWeight.Safety);

/// <summary>With the pedal released the controller shows less than on the stop.</summary>
/// <param name="Percent">Reading with the pedal released (%).</param>
/// <param name="StopPercent">Reading on the closed stop, cable off (%).</param>
public sealed record BelowStopPercent(double Percent, double StopPercent) : Finding("closes", FindingWeight.Adjust);

/// <summary>Why the readings do not tell whether the valve closes.</summary>
public enum ClosingUnknown
{
    /// <summary>The reading on the closed stop with the cable off is missing.</summary>
    NoStopReading,

    /// <summary>The reading with the pedal released is missing.</summary>
    NoClosedReading,

    /// <summary>The controller shows 0 %, and nobody knows up to which opening it does.</summary>
    NoStepReading,

    /// <summary>The throttle body has no sensor.</summary>
    NoSensor,
}

/// <summary>The readings do not tell whether the valve closes.</summary>
/// <param name="Why">Why.</param>
public sealed record ClosingNotKnown(ClosingUnknown Why) : Finding("closes", FindingWeight.NotProven);

/// <summary>The readings do not tell whether the valve opens fully: the reading on the closed stop is missing.</summary>
/// <param name="Volts">Reading with the pedal on the floor (V).</param>
public sealed record OpeningNotKnown(double Volts) : Finding("wide-open", FindingWeight.NotProven);

/// <summary>The reading on the closed stop is farther from the profile's than the slot lets the sensor turn.</summary>
/// <param name="Volts">Reading on the stop, cable off (V).</param>
/// <param name="ProfileVolts">The profile's reading (V).</param>
/// <param name="Turn">How far the sensor would have been turned.</param>
/// <param name="Slot">How far it can be turned each way.</param>
public sealed record StopBeyondSlot(double Volts, double ProfileVolts, Angle Turn, Angle Slot) : Finding("stop-reading", FindingWeight.Safety);

/// <summary>Less free play than the valve needs to close.</summary>
/// <param name="Play">Free play (mm).</param>
/// <param name="Needed">Minimum (mm).</param>
public sealed record TooLittleFreePlay(double Play, double Needed) : Finding("free-play", FindingWeight.Safety);

/// <summary>Free play well off what was wanted.</summary>
/// <param name="Play">Free play (mm).</param>
/// <param name="Wanted">What was wanted (mm).</param>
public sealed record FreePlayOff(double Play, double Wanted) : Finding("free-play", FindingWeight.Adjust);

/// <summary>Free play as wanted.</summary>
/// <param name="Play">Free play (mm).</param>
public sealed record FreePlayRight(double Play) : Finding("free-play", FindingWeight.Good);

/// <summary>The pad travels less than was measured.</summary>
/// <param name="Travel">Travel (mm).</param>
/// <param name="Measured">What was measured before (mm).</param>
/// <param name="PullLost">Pull that is missing (mm of wire).</param>
public sealed record PadTravelShort(double Travel, double Measured, double PullLost) : Finding("pad-travel", FindingWeight.Adjust);

/// <summary>The pad travels farther than was measured.</summary>
/// <param name="Travel">Travel (mm).</param>
/// <param name="Measured">What was measured before (mm).</param>
public sealed record PadTravelLong(double Travel, double Measured) : Finding("pad-travel", FindingWeight.Adjust);

/// <summary>The pad travels as measured.</summary>
/// <param name="Travel">Travel (mm).</param>
public sealed record PadTravelRight(double Travel) : Finding("pad-travel", FindingWeight.Good);

/// <summary>The valve opens fully.</summary>
/// <param name="Volts">Reading on the floor (V).</param>
public sealed record ValveOpens(double Volts) : Finding("wide-open", FindingWeight.Good);

/// <summary>The valve does not open fully; <see cref="Finding.AdjusterShift"/> says whether the free play can give what is missing.</summary>
/// <param name="Fraction">Opening as part of the rotation.</param>
/// <param name="Reached">Opening.</param>
/// <param name="Rotation">Full rotation.</param>
/// <param name="PullMissing">Pull that is missing (mm of wire).</param>
/// <param name="PlayInHand">Free play above the minimum (mm).</param>
/// <param name="MinFreePlay">Minimum free play (mm).</param>
public sealed record ValveStopsShort(double Fraction, Angle Reached, Angle Rotation, double PullMissing, double PlayInHand, double MinFreePlay)
    : Finding("wide-open", FindingWeight.Adjust);

/// <summary>The controller sees nothing of the first part of the opening.</summary>
/// <param name="Behind">Opening at which the reading passes the zero.</param>
/// <param name="Zero">The controller's zero (V).</param>
public sealed record DeadBandAtClosed(Angle Behind, double Zero) : Finding("dead-band", FindingWeight.Adjust);

/// <summary>The controller takes the closed valve for open.</summary>
/// <param name="Ahead">How far open it takes it.</param>
/// <param name="Zero">The controller's zero (V).</param>
public sealed record ClosedSeenAsOpen(Angle Ahead, double Zero) : Finding("dead-band", FindingWeight.Adjust);

/// <summary>The closed reading is outside its window.</summary>
/// <param name="Volts">Reading (V).</param>
/// <param name="Target">What to set (V).</param>
/// <param name="Window">How far it may be off (V).</param>
public sealed record ClosedReadingOff(double Volts, double Target, double Window) : Finding("dead-band", FindingWeight.Adjust);

/// <summary>The controller shows 0 % after the valve has begun to open.</summary>
/// <param name="Opening">Opening at which the display steps from 0 to 1 %.</param>
/// <param name="Limit">Maximum.</param>
public sealed record StepLate(Angle Opening, Angle Limit) : Finding("dead-band", FindingWeight.Adjust);

/// <summary>The display steps from 0 to 1 % as soon as the valve moves.</summary>
/// <param name="Opening">Opening at which it does.</param>
public sealed record StepPrompt(Angle Opening) : Finding("dead-band", FindingWeight.Good);

/// <summary>The controller shows more than 0 % on the closed stop.</summary>
/// <param name="Percent">Reading (%).</param>
public sealed record PercentOnStop(double Percent) : Finding("dead-band", FindingWeight.Adjust);

/// <summary>The controller sees the valve as soon as it moves.</summary>
/// <param name="Volts">Closed reading (V).</param>
/// <param name="IsLearned">Whether the controller learns it as its zero.</param>
public sealed record ControllerFollows(double Volts, bool IsLearned) : Finding("dead-band", FindingWeight.Good);
