using System.Collections.Immutable;
using BracketGen.Geometry;
using BracketGen.Strength.Analysis;
using BracketGen.Strength.Model;

namespace BracketGen.Design.Checks;

/// <summary>Whether a bracket bends, shakes or cracks: finite elements on the folded sheet.</summary>
public sealed record StrengthReport : IMirrored<StrengthReport>
{
    /// <summary>How many natural vibrations are looked at.</summary>
    public const int ModeCount = 3;

    /// <summary>Mesh of the flat pattern.</summary>
    public required TriangleMesh Flat { get; init; }

    /// <summary>Part by which the judged stresses may be wrong for the mesh (<see cref="SettledStrength"/>); null where there was but one mesh.</summary>
    public required double? MeshError { get; init; }

    /// <summary>The folded middle surface; its node numbers are those of <see cref="Flat"/>.</summary>
    public required ShellMesh Folded { get; init; }

    /// <summary>Give of the stop along the wire for 1 N of tension, valve wide open (mm/N).</summary>
    public required double GivePerTension { get; init; }

    /// <summary>The stop under the largest tension of an ordinary opening.</summary>
    public required LoadCase Opening { get; init; }

    /// <summary>The stop with the pedal stamped to the floor: the proof load.</summary>
    public required LoadCase Stamped { get; init; }

    /// <summary>The foot force (N) that makes the proof load, where the foot and not the floor is what limits it; null where the floor does.</summary>
    public required double? LimitingFootForce { get; init; }

    /// <summary>
    /// Axial stiffness of the outer (N) with which the yield factor would just be what it must: infinite where it is enough however stiff the outer, zero where it is too small however soft.
    /// </summary>
    public required double OuterStiffnessAtLimit { get; init; }

    /// <summary>Axial stiffness of the outer (N): its stiff end makes the proof load.</summary>
    public required Measured OuterStiffness { get; init; }

    /// <summary>What hangs on the stop.</summary>
    public required EndBody End { get; init; }

    /// <summary>The lowest natural frequencies, slowest first (Hz).</summary>
    public required ImmutableArray<double> Frequencies { get; init; }

    /// <summary>The vibrations that go with them.</summary>
    public required ImmutableArray<Mode> Modes { get; init; }

    /// <summary>The engine's firing frequency at its highest speed (Hz); null where the engine is not known.</summary>
    public required double? FiringFrequency { get; init; }

    /// <summary>Material yield strength over the largest stress under the proof load.</summary>
    public required double YieldFactor { get; init; }

    /// <summary>How the first natural frequency was judged.</summary>
    public required FrequencyRule FrequencyRule { get; init; }

    /// <summary>What shaking of the mount does; null where neither the engine nor its shaking is known.</summary>
    public required ShakingReport? Shaking { get; init; }

    /// <summary>Safety factor against cracking within the life that the job asks for.</summary>
    public double EnduranceFactor => Life.Factor;

    /// <summary>How it lasts.</summary>
    public required LifeFinding Life { get; init; }

    /// <summary>The factor with flatness and temperature at their bad ends, where nobody measured them; null where both are known.</summary>
    public required double? EnduranceAtWorst { get; init; }

    /// <summary>Yield strength over the stress as the bolts draw the second mount flange down; null where there is none.</summary>
    public double? DrawnFactor { get; init; }

    /// <summary>What its metal withstands.</summary>
    public required StrengthMetal Metal { get; init; }

    /// <summary>The screws that hold it.</summary>
    public required ImmutableArray<BoltedJoint> Joints { get; init; }

    /// <summary>The adapter ring; null where there is none. Give, stresses, joints and frequencies of the bracket are those on the ring.</summary>
    public RingReport? Ring { get; init; }

    /// <summary>Its checks.</summary>
    public ImmutableArray<Check> Checks { get; init; } = [];

    /// <inheritdoc/>
    public StrengthReport Mirrored() => this with
    {
        Flat = Flat.MirroredInX,
        Folded = Folded.Mirrored(),
        Opening = Opening.Mirrored(),
        Stamped = Stamped.Mirrored(),
        Life = Life.Mirrored(),
        Modes = [.. Modes.Select(m => m.Mirrored())],
        Shaking = Shaking?.Mirrored(),
    };
}
