using System.Collections.Immutable;
using BracketGen.Geometry;
using BracketGen.SheetMetal.Standards;

namespace BracketGen.Design.Inputs;

/// <summary>What a throttle body has for the parts that make it complete; null for what was not measured.</summary>
/// <remarks>
/// Each opening has coordinates of its own, seen from outside as measured. They are not mirrored with the throttle body: only what looks at the job as it was
/// measured may use them.
/// </remarks>
public sealed record BodyOpenings
{
    /// <summary>Where the position sensor sits.</summary>
    public SensorMount? Sensor { get; init; }

    /// <summary>Where the idle valve sits.</summary>
    public IdleMount? Idle { get; init; }

    /// <summary>Where the pressure sensor sits.</summary>
    public PressurePort? Pressure { get; init; }

    /// <summary>The holes of the flange towards the manifold, from the middle of the bore.</summary>
    public ScrewPattern? Flange { get; init; }
}

/// <summary>Tapped holes or studs that hold a part.</summary>
/// <param name="Holes">Their middles (mm).</param>
/// <param name="Thread">Their thread; null where it was not measured.</param>
public sealed record ScrewPattern(ImmutableArray<PatternPoint> Holes, FastenerThread? Thread)
{
    /// <summary>How far a coordinate may be off where nobody said (mm; common practice, no source): caliper from hole to hole.</summary>
    public const double UsualPlusMinus = 0.2;

    /// <summary>How far each coordinate may be off (mm).</summary>
    public double PlusMinus { get; init; } = UsualPlusMinus;

    /// <summary>Depth of full thread (mm); null where it was not measured.</summary>
    public double? Depth { get; init; }
}

/// <summary>Shape of the throttle shaft's end that turns the position sensor.</summary>
public enum DriveShape
{
    /// <summary>Round with one flat.</summary>
    D,

    /// <summary>Round with two flats.</summary>
    DoubleD,

    /// <summary>A tongue that goes into the sensor.</summary>
    Tongue,

    /// <summary>A slot that a tongue of the sensor goes into.</summary>
    Slot,

    /// <summary>Square.</summary>
    Square,
}

/// <summary>The end of the throttle shaft with the holes round it: where the position sensor sits. Coordinates from the shaft's axis.</summary>
/// <param name="Drive">Shape of the shaft's end; null where it was not looked at.</param>
/// <param name="Size">Its size across the flats, or thickness of the tongue, or width of the slot (mm); null where it was not measured.</param>
/// <param name="Screws">The holes; null where they were not measured.</param>
public sealed record SensorMount(DriveShape? Drive, Measured? Size, ScrewPattern? Screws);

/// <summary>A round passage that opens in a face.</summary>
/// <param name="At">Its middle (mm).</param>
/// <param name="Diameter">Its diameter (mm).</param>
public readonly record struct Port(PatternPoint At, double Diameter);

/// <summary>The face that the idle valve sits on.</summary>
/// <param name="Screws">The holes; null where they were not measured.</param>
/// <param name="Air">The passages for air; null where they were not measured.</param>
/// <param name="Water">The passages for water, none where there are none; null where nobody looked.</param>
public sealed record IdleMount(ScrewPattern? Screws, ImmutableArray<Port>? Air, ImmutableArray<Port>? Water)
{
    /// <summary>How far each coordinate of a passage may be off (mm), with the holes.</summary>
    public double PlusMinus { get; init; } = ScrewPattern.UsualPlusMinus;

    /// <summary>Whether a gasket of its own seals the valve, and not rings in it.</summary>
    public bool HasGasket { get; init; } = true;
}

/// <summary>The bore that the pressure sensor's nose goes into, with its holes from the middle of the bore.</summary>
/// <param name="Bore">Its diameter (mm); null where it was not measured.</param>
/// <param name="Screws">The holes; null where they were not measured, empty where the sensor is held otherwise.</param>
public sealed record PressurePort(Measured? Bore, ScrewPattern? Screws);
