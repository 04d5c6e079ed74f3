namespace BracketGen.Drawing.Measuring;

/// <summary>What is known of a vehicle's cable and pedal while they are measured. Lengths in mm; null where it is not measured yet.</summary>
public sealed record CableSoFar
{
    /// <summary>Diameter of the wire.</summary>
    public double? Wire { get; init; }

    /// <summary>Diameter of the outer.</summary>
    public double? Outer { get; init; }

    /// <summary>Seat to the middle of the end fitting, wire taut.</summary>
    public double? FreeInnerLength { get; init; }

    /// <summary>Whether the end fitting is a ball.</summary>
    public bool IsBall { get; init; }

    /// <summary>Diameter of the end fitting.</summary>
    public double? FittingDiameter { get; init; }

    /// <summary>Length of the end fitting along its own axis.</summary>
    public double? FittingLength { get; init; }

    /// <summary>Whether the fitting's axis is the wire's.</summary>
    public bool IsAlongWire { get; init; }

    /// <summary>Width of the outer end: of its nuts, shoulder or collar.</summary>
    public double? EndWidth { get; init; }

    /// <summary>Range of the adjuster.</summary>
    public double? Range { get; init; }

    /// <summary>Pull at the cable, whole stroke.</summary>
    public double? Pull { get; init; }

    /// <summary>Travel of the pad, whole stroke.</summary>
    public double? PadTravel { get; init; }
}
