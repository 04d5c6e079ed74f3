using BracketGen.Geometry;
using BracketGen.Mechanism.Motion;
using BracketGen.Mechanism.Pedals;
using BracketGen.Mechanism.Throttles;

namespace BracketGen.Mechanism.Fitted;

/// <summary>The readings taken on the vehicle after fitting, engine off. Readings not taken stay null.</summary>
public sealed record FittedReadings
{
    /// <summary>Sensor with the valve on its closed stop and the cable off, once it is set (V).</summary>
    public double? StopVolts { get; init; }

    /// <summary>Sensor with the pedal released (V).</summary>
    public double? ClosedVolts { get; init; }

    /// <summary>Sensor with the pedal on the floor (V).</summary>
    public double? FlooredVolts { get; init; }

    /// <summary>Free play with the pedal released (mm).</summary>
    public double? FreePlay { get; init; }

    /// <summary>Travel of the pad from released to the floor, carpet in place (mm).</summary>
    public double? PadTravel { get; init; }

    /// <summary>Opening that the controller shows with the valve on its closed stop and the cable off (%).</summary>
    public double? StopPercent { get; init; }

    /// <summary>Opening that the controller shows with the pedal released (%).</summary>
    public double? ClosedPercent { get; init; }

    /// <summary>How far the quadrant has turned when that opening steps from 0 to 1 %.</summary>
    public Angle? StepOpening { get; init; }
}

/// <summary>What the readings are compared with.</summary>
public sealed record FittedExpectation
{
    /// <summary>The travel as designed; its free play is the one wanted.</summary>
    public required LoadedTravel Travel { get; init; }

    /// <summary>The pedal.</summary>
    public required Pedal Pedal { get; init; }

    /// <summary>The sensor as read at both stops before it was set, cable off; null if there is none.</summary>
    public PositionSensor? Sensor { get; init; }

    /// <summary>Zero of the controller (V); null if it learns its own.</summary>
    public double? ControllerZero { get; init; }

    /// <summary>Thread pitch of the adjuster (mm for a turn); null if there is none or it is not known.</summary>
    public double? Pitch { get; init; }

    /// <summary>Minimum free play that lets the valve close in every case (mm).</summary>
    public double MinFreePlay { get; init; } = 1;

    /// <summary>How well a voltage can be read (V): smaller differences are not mentioned.</summary>
    public double VoltsResolution { get; init; } = 0.02;

    /// <summary>How well pad travel is measured (mm).</summary>
    public double PadResolution { get; init; } = 5;
}
