namespace BracketGen.Mechanism.Cables;

/// <summary>Lost motion of the cable per newton: what the wire's tension uses up before the valve moves.</summary>
/// <remarks>
/// Wire stretch T L/(E A) with A = fill · π d²/4 the metal in the wire's circle (a stranded wire is not full); the outer's
/// compression T L/c with its axial stiffness c; the bracket's deflection at the stop, along the wire.
/// </remarks>
public sealed record CableCompliance
{
    /// <summary>Length of the whole wire (mm).</summary>
    public required double WireLength { get; init; }

    /// <summary>Diameter of the wire's circle (mm).</summary>
    public required double WireDiameter { get; init; }

    /// <summary>Modulus of elasticity of the wire's metal (MPa).</summary>
    public double WireModulus { get; init; } = 200_000;

    /// <summary>Metal in the wire's circle, with the lay's own give: effective area over π d²/4, from 0 to 1 (1 for a single wire).</summary>
    public double Fill { get; init; } = 1;

    /// <summary>Length of the outer (mm).</summary>
    public double OuterLength { get; init; }

    /// <summary>Axial stiffness of the outer (N for 1 mm/mm); infinite where it is taken as rigid.</summary>
    public double OuterAxialStiffness { get; init; } = double.PositiveInfinity;

    /// <summary>Deflection of the bracket at the stop, along the wire (mm/N).</summary>
    public double Bracket { get; init; }

    /// <summary>No lost motion.</summary>
    public static readonly CableCompliance Rigid = new() { WireLength = 0, WireDiameter = 1 };

    /// <summary>Wire stretch for 1 N of tension all along it (mm/N): L/(E A).</summary>
    public double Wire => WireLength / (WireModulus * Fill * Math.PI * WireDiameter * WireDiameter / 4);

    /// <summary>Compression of the outer for 1 N of tension all along it (mm/N).</summary>
    public double Outer => OuterLength / OuterAxialStiffness;

    /// <summary>Lost motion (mm) for 1 N of tension at the quadrant while opening.</summary>
    /// <remarks>Wire and outer feel the mean tension along the outer, the bracket the tension at the quadrant.</remarks>
    public double PerTension(CableFriction friction) => friction.MeanRatio * (Wire + Outer) + Bracket;

    /// <summary>Lost motion (mm) for the drag while opening, whatever the tension: all of it taken as arising at the stop, so that the whole cable feels it.</summary>
    public double ForDrag(CableFriction friction) => friction.OpeningDrag * (Wire + Outer);
}
