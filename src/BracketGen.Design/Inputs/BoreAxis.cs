using BracketGen.Geometry;

namespace BracketGen.Design.Inputs;

/// <summary>Where the bore lies, and how thick the casting is round it.</summary>
/// <remarks>The bore's axis crosses the throttle shaft's axis at right angles. Throttle frame; lengths in mm.</remarks>
/// <param name="Z">Height z at which the axes cross: negative, because the bore lies behind the groove.</param>
/// <param name="Direction">Polar angle of the bore's axis, either of its two ways.</param>
/// <param name="OutsideDiameter">Outside diameter of the casting round the bore, its largest flange included.</param>
/// <param name="Ahead">How far the casting reaches from the shaft's axis in <paramref name="Direction"/>, zero or more.</param>
/// <param name="Behind">How far it reaches the other way, zero or more; more than zero both ways together.</param>
public sealed record BoreAxis(double Z, Angle Direction, double OutsideDiameter, double Ahead, double Behind) : IMirrored<BoreAxis>
{
    /// <summary>The casting round the bore as a keep-out.</summary>
    /// <param name="name">What it is called.</param>
    public KeepOutCylinder Casting(string name)
    {
        var along = Vector3.From(Vector2.FromPolar(1, Direction));
        var crossing = new ThrottlePoint(0, 0, Z);
        return new(name, crossing - Behind * along, crossing + Ahead * along, OutsideDiameter / 2);
    }

    /// <inheritdoc/>
    public BoreAxis Mirrored() => this with { Direction = -Direction };
}
