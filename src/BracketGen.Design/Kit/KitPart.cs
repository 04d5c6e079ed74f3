using System.Collections.Immutable;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;
using BracketGen.Mechanism.Throttles;
using BracketGen.SheetMetal.Standards;

namespace BracketGen.Design.Kit;

/// <summary>Where a part comes from.</summary>
public enum PartSource
{
    /// <summary>It is there already.</summary>
    Kept,

    /// <summary>Off another vehicle or engine.</summary>
    Donor,

    /// <summary>Bought.</summary>
    Bought,

    /// <summary>Made for this job.</summary>
    Made,
}

/// <summary>A part that may go onto the throttle body, as somebody measured it.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Source">Where it comes from.</param>
/// <param name="Measures">What was measured on it.</param>
public sealed record KitPart(string Name, PartSource Source, PartMeasures Measures)
{
    /// <summary>Seller, shelf or number, in the user's words; null where nobody said.</summary>
    public string? From { get; init; }

    /// <summary>Price of one (the shop's currency); null where nobody said.</summary>
    public double? Price { get; init; }

    /// <summary>How many there are; null for as many as are wanted.</summary>
    public int? Quantity { get; init; }

    /// <summary>What it comes with, at one price; null where it is sold alone.</summary>
    public PartBundle? Bundle { get; init; }

    /// <summary>Whether it is new.</summary>
    public bool IsNew { get; init; }
}

/// <summary>Several parts at one price: a donor throttle body, a box of parts.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Source">Where it comes from.</param>
/// <param name="Price">Price of all together (the shop's currency); null where nobody said.</param>
public sealed record PartBundle(string Name, PartSource Source, double? Price)
{
    /// <summary>What it costs: nothing where it is there already and nobody gave a price.</summary>
    public double? Cost => Price ?? (Source == PartSource.Kept ? 0 : null);

    /// <summary>Seller, shelf or number, in the user's words; null where nobody said.</summary>
    public string? From { get; init; }
}

/// <summary>What was measured on a part; null for what was not.</summary>
public abstract record PartMeasures;

/// <summary>A hole or arc slot of a position sensor.</summary>
/// <param name="Slot">Its middle line, from the axis of the throttle shaft.</param>
/// <param name="Width">Width, or diameter (mm).</param>
public readonly record struct SensorSlot(ArcSlot Slot, double Width);

/// <summary>A position sensor, its coordinates from the axis of the throttle shaft, seen from outside as it sits.</summary>
public sealed record SensorMeasures : PartMeasures
{
    /// <summary>Shape of the shaft's end that it is made for.</summary>
    public DriveShape? Drive { get; init; }

    /// <summary>What the shaft's end goes into, or the tongue that goes into the shaft's slot (mm).</summary>
    public Measured? Size { get; init; }

    /// <summary>Its holes or slots.</summary>
    public ImmutableArray<SensorSlot>? Slots { get; init; }

    /// <summary>How far each coordinate may be off (mm).</summary>
    public double PlusMinus { get; init; } = ScrewPattern.UsualPlusMinus;

    /// <summary>Readings on this throttle body, valve on its closed and its wide-open stop, sensor in the middle of its slots (V).</summary>
    public (double Closed, double Open)? Volts { get; init; }

    /// <summary>How much the reading changes for an angle (V/rad), by its maker.</summary>
    public double? VoltsPerAngle { get; init; }

    /// <summary>Range in which the reading follows the shaft (V).</summary>
    public (double Min, double Max) Range { get; init; } = (PositionSensor.UsualMinVolts, PositionSensor.UsualMaxVolts);

    /// <summary>Thickness of the flange under the screws' heads (mm).</summary>
    public double? Thickness { get; init; }
}

/// <summary>Plain holes in the flange of a part.</summary>
/// <param name="At">Their middles (mm).</param>
/// <param name="Diameter">Their diameter (mm); null where it was not measured.</param>
/// <param name="PlusMinus">How far each coordinate may be off (mm).</param>
public sealed record FlangeHoles(ImmutableArray<PatternPoint> At, double? Diameter, double PlusMinus);

/// <summary>An idle valve, seen from outside as it sits.</summary>
/// <param name="Holes">The holes of its flange.</param>
/// <param name="Air">Its passages for air.</param>
/// <param name="Water">Its passages for water, none where there are none.</param>
/// <param name="Thickness">Thickness of its flange (mm).</param>
public sealed record IdleMeasures(FlangeHoles? Holes, ImmutableArray<Port>? Air, ImmutableArray<Port>? Water, double? Thickness) : PartMeasures;

/// <summary>A pressure sensor with its O-ring, its holes from the middle of its nose, seen from outside as it sits.</summary>
public sealed record PressureMeasures : PartMeasures
{
    /// <summary>Diameter of the nose (mm).</summary>
    public Measured? Nose { get; init; }

    /// <summary>Diameter of the groove's bottom (mm).</summary>
    public Measured? GrooveDiameter { get; init; }

    /// <summary>Width of the groove (mm).</summary>
    public Measured? GrooveWidth { get; init; }

    /// <summary>Diameter of the O-ring's section (mm).</summary>
    public Measured? RingSection { get; init; }

    /// <summary>Inside diameter of the O-ring (mm).</summary>
    public Measured? RingInside { get; init; }

    /// <summary>The holes of its flange.</summary>
    public FlangeHoles? Holes { get; init; }

    /// <summary>Thickness of its flange (mm).</summary>
    public double? Thickness { get; init; }
}

/// <summary>A gasket, either side up.</summary>
/// <param name="Seals">What it seals: the flange of the throttle body, or the idle valve.</param>
/// <param name="Holes">Its holes for the screws.</param>
/// <param name="Openings">Its openings for the bore or the passages.</param>
public sealed record GasketMeasures(KitNeedKind Seals, FlangeHoles? Holes, ImmutableArray<Port>? Openings) : PartMeasures;

/// <summary>Screws of one size.</summary>
/// <param name="Thread">Their thread.</param>
/// <param name="Length">Their length under the head (mm).</param>
public sealed record ScrewMeasures(FastenerThread Thread, double Length) : PartMeasures;

/// <summary>A return spring at the throttle shaft, besides those on the throttle body.</summary>
/// <param name="Spring">Its torques at the shaft.</param>
public sealed record SpringMeasures(ReturnSpring Spring) : PartMeasures;

/// <summary>A cable from the pedal.</summary>
/// <param name="Cable">The cable.</param>
public sealed record CableMeasures(Cable Cable) : PartMeasures;

/// <summary>A pedal stop: what it stands up from the floor under the pad.</summary>
/// <param name="Min">Smallest height that it can be set to (mm).</param>
/// <param name="Max">Greatest (mm).</param>
public sealed record PedalStopMeasures(double Min, double Max) : PartMeasures;

/// <summary>A bracket that is there already.</summary>
/// <param name="File">Its file, as the list names it.</param>
/// <param name="Bracket">What the file says.</param>
public sealed record BracketMeasures(string File, MeasuredBracket Bracket) : PartMeasures;
