using System.Collections.Immutable;
using BracketGen.Geometry;
using BracketGen.SheetMetal.Patterns;
using BracketGen.SheetMetal.Shops;

namespace BracketGen.Design.Part;

/// <summary>A bolt hole that was measured.</summary>
/// <param name="At">Its centre on the mount flange (mm).</param>
/// <param name="Diameter">Its diameter, or the width of a slotted hole (mm).</param>
public readonly record struct MeasuredHole(FlatPoint At, double Diameter)
{
    /// <summary>How exactly each coordinate was read (mm, either way).</summary>
    public double PlusMinus { get; init; }

    /// <summary>How exactly the diameter was read (mm, either way), beyond what a caliper does.</summary>
    public double DiameterPlusMinus { get; init; }

    /// <summary>Whether the ± of its place is assumed, because nobody gave it.</summary>
    public bool IsAssumed { get; init; }

    /// <summary>The slot of a slotted hole, by the mount flange's axes; null for a round hole.</summary>
    public SlottedHole? Slot { get; init; }

    /// <summary>How exactly the slot's length over all was read (mm, either way).</summary>
    public double SlotPlusMinus { get; init; }

    /// <summary>The longest slot that the readings allow: in it the bracket can be shifted farthest. Null for a round hole.</summary>
    internal SlottedHole? LongestSlot => Slot is { } slot ? slot with { Travel = slot.Travel + SlotPlusMinus + DiameterPlusMinus } : null;
}

/// <summary>The opening for the outer's end that was measured.</summary>
public sealed record MeasuredOpening
{
    /// <summary>Middle of the opening at the seat: on the mount flange's axes, and its height above the mount face (mm).</summary>
    public required (FlatPoint On, double Height) At { get; init; }

    /// <summary>How exactly each coordinate was read (mm, either way).</summary>
    public required double PlusMinus { get; init; }

    /// <summary>Diameter of the hole, side of a square one, or width of the slot (mm).</summary>
    public required Measured Size { get; init; }

    /// <summary>Outline of a hole that is not round, laid along the axes of the stop flange; null for a round one and for a slot.</summary>
    public HoleOutline? Outline { get; init; }

    /// <summary>The slot's way out on the stop flange, any length; null for a hole.</summary>
    public Vector2? SlotTowards { get; init; }

    /// <summary>The way the seat faces, from the quadrant to the outer, on the mount flange's axes with z away from the mount face; null where it is square to the flange as the bends give it.</summary>
    public Vector3? Direction { get; init; }

    /// <summary>How far the direction may be off; where none was measured, how far the seat may be off the square to its flange.</summary>
    public required Angle DirectionPlusMinus { get; init; }

    /// <summary>Whether the ± of the place and that of the direction are assumed, because nobody gave them.</summary>
    public (bool Place, bool Direction) IsAssumed { get; init; }

    /// <summary>Number of the flange it is in; null for that of the last bend.</summary>
    public int? Flange { get; init; }
}

/// <summary>A bracket that is there already, as somebody measured it.</summary>
/// <remarks>Coordinates on the mount flange: x and y seen from the side away from the mount face, z away from it, z = 0 on the mount face.</remarks>
public sealed record MeasuredBracket
{
    /// <summary>How far a direction read with a bevel protractor may be off (common practice, no source).</summary>
    public static readonly Angle UsualDirection = Angle.FromDegrees(1);

    /// <summary>How far a corner line found with a square may be off (mm; common practice, no source).</summary>
    public const double UsualLine = 0.2;

    /// <summary>How far a radius gauge may be off: half its step (mm; common practice, no source).</summary>
    public const double UsualRadius = 0.25;

    /// <summary>Its name.</summary>
    public required string Name { get; init; }

    /// <summary>Where it is from.</summary>
    public required string Source { get; init; }

    /// <summary>What was read of its drawn flat pattern; null where the formed part was measured.</summary>
    public DrawnSource? Drawn { get; init; }

    /// <summary>What it costs, in the currency of the job's shop; null where nobody said.</summary>
    public double? Price { get; init; }

    /// <summary>Designation of one of the shop's materials, or a class of sheet (<see cref="SheetClass"/>).</summary>
    public required string Material { get; init; }

    /// <summary>Thickness of the sheet (mm).</summary>
    public required Measured Thickness { get; init; }

    /// <summary>The mount flange: its corners in order, drawn to the corner lines of its bends.</summary>
    public required ImmutableArray<FlangeCorner> MountFlange { get; init; }

    /// <summary>How exactly each coordinate of those corners was read (mm, either way).</summary>
    public double OutlinePlusMinus { get; init; }

    /// <summary>Whether that ± is assumed, because nobody gave it.</summary>
    public bool IsOutlineAssumed { get; init; }

    /// <summary>All holes of the mount flange that a bolt may go through.</summary>
    public required ImmutableArray<MeasuredHole> Holes { get; init; }

    /// <summary>The bends in order; bend i makes flange i + 1.</summary>
    public required ImmutableArray<MeasuredBend> Bends { get; init; }

    /// <summary>The opening for the outer's end.</summary>
    public required MeasuredOpening Stop { get; init; }

    /// <summary>The metal it is of, by the shop's list or by its class; null where the word is neither.</summary>
    /// <param name="shop">The job's shop.</param>
    public Material? MetalIn(Shop shop) =>
        shop.Stock.Select(s => s.Material).FirstOrDefault(m => m.Designation == Material) ?? SheetLibrary.Of(Material) ?? SheetClass.Of(Material);

    /// <summary>Whether only the class of its sheet is known.</summary>
    /// <param name="shop">The job's shop.</param>
    public bool IsOfClass(Shop shop) => shop.Stock.All(s => s.Material.Designation != Material);
}
