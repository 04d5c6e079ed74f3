namespace BracketGen.Mechanism.Cables;

/// <summary>Shape of the end fitting.</summary>
public enum EndFittingKind
{
    /// <summary>A cylinder across the wire.</summary>
    Barrel,

    /// <summary>A ball.</summary>
    Ball,

    /// <summary>A cylinder along the wire.</summary>
    Nipple,
}

/// <summary>The fitting fixed on the wire's end, which sits in the quadrant's pocket.</summary>
/// <param name="Kind">Its shape.</param>
/// <param name="Diameter">Diameter (mm).</param>
/// <param name="Length">Length (mm), along its own axis; the diameter again for a ball.</param>
public sealed record EndFitting(EndFittingKind Kind, double Diameter, double Length)
{
    /// <summary>Radius (mm) of the smallest ball about its centre that holds it, whichever way it lies.</summary>
    public double ReachRadius => Kind == EndFittingKind.Ball ? Diameter / 2 : Math.Sqrt(Diameter * Diameter + Length * Length) / 2;

    /// <summary>Diameter (mm) of the smallest round hole through which it can be threaded on a wire of <paramref name="wire"/> (mm).</summary>
    /// <remarks>A barrel goes through flat on, a rectangle of its diameter by its length, or end on with the wire lying along its side.</remarks>
    public double PassageDiameter(double wire) =>
        Kind == EndFittingKind.Barrel ? Math.Min(double.Hypot(Diameter, Length), Diameter + wire) : Diameter;

    /// <summary>Width (mm) of the narrowest slot, however long, that it can slip through.</summary>
    /// <remarks>The least width of a cylinder is the smaller of its diameter and its length.</remarks>
    public double LeastWidth => Kind == EndFittingKind.Ball ? Diameter : Math.Min(Diameter, Length);
}
