using System.Collections.Immutable;

namespace BracketGen.Design.Kit;

/// <summary>Whether a part fits, the worst first.</summary>
public enum FitState
{
    /// <summary>It does not fit.</summary>
    DoesNotFit,

    /// <summary>Something that decides it was not measured, or not well enough.</summary>
    NotKnown,

    /// <summary>It fits by its measurements.</summary>
    Fits,
}

/// <summary>What was looked at on a part.</summary>
public enum FitAspect
{
    /// <summary>Shape of the shaft's end.</summary>
    DriveShape,

    /// <summary>Play of the shaft's end in the sensor (mm).</summary>
    DrivePlay,

    /// <summary>The sensor's slots on the holes round the shaft (mm over the play of the screws).</summary>
    SensorHoles,

    /// <summary>The sensor's readings at both stops.</summary>
    SensorReading,

    /// <summary>Reading wide open by the change that its maker gives (V).</summary>
    SensorSpan,

    /// <summary>The checks of the sensor after it is set.</summary>
    SensorChecks,

    /// <summary>Screws of the part against those of the throttle body, with passages (mm over the play).</summary>
    Holes,

    /// <summary>Number of passages for air.</summary>
    AirPorts,

    /// <summary>Diameters of passages for air: the greatest difference (mm).</summary>
    AirSize,

    /// <summary>Passages for water.</summary>
    WaterPorts,

    /// <summary>Play of the nose in its bore (mm).</summary>
    NosePlay,

    /// <summary>Squeeze of the O-ring, a part of its section.</summary>
    RingSqueeze,

    /// <summary>How full the O-ring's groove is.</summary>
    RingFill,

    /// <summary>How far the O-ring is stretched.</summary>
    RingStretch,

    /// <summary>Length of thread that holds (mm).</summary>
    ScrewEngagement,

    /// <summary>Length of screw in the hole against the depth of thread (mm).</summary>
    ScrewBottom,

    /// <summary>Length of the screw against what the bracket wants (mm).</summary>
    ScrewLength,

    /// <summary>Number of pieces.</summary>
    Pieces,

    /// <summary>Springs of the throttle body one by one.</summary>
    SpringsAlone,

    /// <summary>Height of a pedal stop (mm).</summary>
    StopHeight,

    /// <summary>The whole job with the part.</summary>
    WholeJob,

    /// <summary>The part is on the throttle body already.</summary>
    OnBody,
}

/// <summary>Where a measurement is missing.</summary>
[Flags]
public enum MissingOn
{
    /// <summary>Nowhere.</summary>
    Nothing = 0,

    /// <summary>On the part.</summary>
    Part = 1,

    /// <summary>On the throttle body.</summary>
    Body = 2,

    /// <summary>In the job.</summary>
    Job = 4,

    /// <summary>On the part that is held.</summary>
    Held = 8,
}

/// <summary>One thing that was looked at on a part, as data.</summary>
/// <param name="Aspect">What.</param>
/// <param name="State">What came of it.</param>
public sealed record FitFinding(FitAspect Aspect, FitState State)
{
    /// <summary>What was found, internal unit; null where there is no number.</summary>
    public double? Value { get; init; }

    /// <summary>Least that it may be, internal unit; null where there is no such limit.</summary>
    public double? Min { get; init; }

    /// <summary>Most that it may be, internal unit; null where there is no such limit.</summary>
    public double? Max { get; init; }

    /// <summary>Where a measurement is missing.</summary>
    public MissingOn Missing { get; init; }

    /// <summary>Whether all was measured, but not well enough to tell.</summary>
    public bool IsTooRough => State == FitState.NotKnown && Missing == MissingOn.Nothing;

    /// <summary>Whether it would fit with its other side up.</summary>
    public bool WouldTurnedOver { get; init; }

    /// <summary>Whether passages for water are to be capped.</summary>
    public bool IsCapped { get; init; }

    /// <summary>How far the part can be turned on its screws, each way; null where that is no matter.</summary>
    public Geometry.Angle? Turn { get; init; }

    /// <summary>The two that were compared, where they were counted or are words.</summary>
    public (string Part, string Body)? Compared { get; init; }

    /// <summary>Names of the checks that fail or are not known.</summary>
    public ImmutableArray<string> Codes { get; init; } = [];

    /// <summary>A number against its limits: it fits where all of its range is within, and does not where none of it is.</summary>
    /// <param name="aspect">What.</param>
    /// <param name="range">Least and most that it may be, and its nominal value.</param>
    /// <param name="min">Least allowed.</param>
    /// <param name="max">Most allowed.</param>
    internal static FitFinding Within(FitAspect aspect, (double Min, double Value, double Max) range, double min, double max)
    {
        const double slack = Geometry.Tolerance.OnLimit;
        var state = range.Min >= min - slack && range.Max <= max + slack ? FitState.Fits
            : range.Max < min - slack || range.Min > max + slack ? FitState.DoesNotFit
            : FitState.NotKnown;
        return new(aspect, state) { Value = range.Value, Min = min, Max = max };
    }

    internal static FitFinding NotMeasured(FitAspect aspect, bool part, bool body) =>
        new(aspect, FitState.NotKnown) { Missing = (part ? MissingOn.Part : 0) | (body ? MissingOn.Body : 0) };
}
