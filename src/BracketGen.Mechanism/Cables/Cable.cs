using BracketGen.Geometry;

namespace BracketGen.Mechanism.Cables;

/// <summary>The throttle cable that the vehicle brings.</summary>
public sealed record Cable
{
    /// <summary>What sits in the quadrant's pocket.</summary>
    public required EndFitting Fitting { get; init; }

    /// <summary>Diameter of the wire (mm).</summary>
    public required double WireDiameter { get; init; }

    /// <summary>How the outer ends at the bracket.</summary>
    public required OuterEnd OuterEnd { get; init; }

    /// <summary>Diameter of the outer (mm).</summary>
    public required double OuterDiameter { get; init; }

    /// <summary>Wire from the stop's seat to the fitting's centre (mm): adjuster at mid range, pedal released, wire taut.</summary>
    public required Measured FreeInnerLength { get; init; }

    /// <summary>Maximum fleet angle of the wire.</summary>
    public required Angle FleetLimit { get; init; }

    /// <summary>Minimum bend radius of the outer (mm).</summary>
    public required double MinBendRadius { get; init; }

    /// <summary>Maximum change of wire direction over the sweep at which side load does not wear the outer end.</summary>
    /// <remarks>Default 5° (common practice, no source).</remarks>
    public Angle WanderLimit { get; init; } = Angle.FromDegrees(5);

    /// <summary>What friction may be where nobody measured it: dry steel in steel (common practice, no source).</summary>
    public const double FrictionAtWorst = 0.25;

    /// <summary>Friction coefficient of the wire in the outer.</summary>
    /// <remarks>Default 0.12 ± 0.04, a steel wire in a plastic liner (common practice, no source), assumed.</remarks>
    public Measured Friction { get; init; } = new(0.12, 0.04, Evidence.Assumed);

    /// <summary>Drag where nobody measured it (N): what is usual, and what it may be (common practice, no source).</summary>
    public const double UsualDrag = 5, DragAtWorst = 15;

    /// <summary>Drag while closing (N): the pull at the end fitting that draws the wire back, pedal's end unhooked, outer routed as on the vehicle; the largest over the stroke.</summary>
    /// <remarks>Default 5 N, assumed.</remarks>
    public Measured ClosingDrag { get; init; } = new(UsualDrag, 0, Evidence.Assumed);

    /// <summary>Drag while opening (N): the pull at the pedal's end that draws the wire, end fitting free; likewise.</summary>
    /// <remarks>Default 5 N, assumed.</remarks>
    public Measured OpeningDrag { get; init; } = new(UsualDrag, 0, Evidence.Assumed);

    /// <summary>What the bends of an outer may come to where nobody measured them: a full turn (common practice, no source).</summary>
    public static readonly Angle TotalBendAtWorst = 2 * Angle.Straight;

    /// <summary>All bends of the outer added without sign (rad).</summary>
    /// <remarks>Default 180° (common practice, no source), assumed: out of the bulkhead and round to the engine.</remarks>
    public Measured TotalBend { get; init; } = new(Math.PI, 0, Evidence.Assumed);

    /// <summary>How much wider than the wire the outer's bore is where nobody measured it (mm): what is usual, and what it may be (common practice, no source).</summary>
    public const double UsualBorePlay = 0.5, BorePlayAtWorst = 1;

    /// <summary>How the wire is stranded; null where nobody looked.</summary>
    public WireConstruction? Construction { get; init; }

    /// <summary>Inside diameter of the outer or of its liner (mm); null if it was not measured.</summary>
    public double? OuterBore { get; init; }

    /// <summary>Modulus of elasticity of the wire's metal (MPa).</summary>
    /// <remarks>Default 200,000, steel.</remarks>
    public double WireModulus { get; init; } = 200_000;

    /// <summary>Effective metal in the wire's circle, 0 to 1.</summary>
    /// <remarks>Default 0.6, stranded wire with the stretch of its lay (common practice, no source).</remarks>
    public double WireFill { get; init; } = 0.6;

    /// <summary>Axial stiffness of the softest and of the stiffest usual outer (N; common practice, no source): a spiral of round wire, and wires laid along the outer.</summary>
    public const double SoftestOuter = 50_000, StiffestOuter = 500_000;

    /// <summary>Axial stiffness of the outer: force over the part by which it is pressed shorter (N for 1 mm/mm). An outer of one metre gives way by 1 mm under a thousandth of it.</summary>
    /// <remarks>Default: from <see cref="SoftestOuter"/> to <see cref="StiffestOuter"/>, assumed. The stiff end loads the stop when the pedal is stamped on, the soft end takes the lost motion.</remarks>
    public Measured OuterAxialStiffness { get; init; } = AssumedStiffness;

    /// <summary>Axial stiffness of an outer that nobody measured.</summary>
    public static Measured AssumedStiffness => new((SoftestOuter + StiffestOuter) / 2, (StiffestOuter - SoftestOuter) / 2, Evidence.Assumed);

    /// <summary>Length of the outer from the stop's seat to the bulkhead (mm); null if it was not measured.</summary>
    public Measured? OuterLength { get; init; }

    /// <summary>Length of an outer that was not measured (mm; common practice, no source): for lost motion a long one, for the proof load a short one.</summary>
    public const double UsualOuterLength = 1000, ShortestOuterLength = 400;

    /// <summary>What gives way in the cable at the soft end of what is known: it takes the lost motion.</summary>
    public CableCompliance Soft => Giving(OuterLength?.Value ?? UsualOuterLength, OuterAxialStiffness.Min);

    /// <summary>What gives way in the cable at the stiff end of what is known: with the pedal stamped on it leaves the most tension.</summary>
    public CableCompliance Stiff => Giving(OuterLength?.Value ?? ShortestOuterLength, OuterAxialStiffness.Max);

    private CableCompliance Giving(double outer, double axial) => new()
    {
        WireLength = outer + FreeInnerLength.Value,
        WireDiameter = WireDiameter,
        WireModulus = WireModulus,
        Fill = WireFill,
        OuterLength = outer,
        OuterAxialStiffness = axial,
    };

    /// <summary>Mass of the outer for its length (t/mm); null if it was not weighed.</summary>
    public Measured? OuterMass { get; init; }

    /// <summary>Mass of the outer's end with its nuts, without the outer (t); null if it was not weighed.</summary>
    public Measured? EndMass { get; init; }
}
