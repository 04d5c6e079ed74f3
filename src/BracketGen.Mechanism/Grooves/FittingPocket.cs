using BracketGen.Mechanism.Cables;

namespace BracketGen.Mechanism.Grooves;

/// <summary>The recess in the quadrant that holds the end fitting.</summary>
/// <remarks>Lengths in mm. The slot through which the wire leaves it is <see cref="Quadrant.SlotWidth"/>.</remarks>
/// <param name="Kind">The fitting it is made for: a bore for a barrel, a socket for a ball, a recess along the wire for a nipple.</param>
/// <param name="Width">Diameter of bore or socket, width of a recess.</param>
/// <param name="Length">Length along the wire of a recess for a nipple; the width again for the others.</param>
/// <param name="Depth">Depth from the quadrant's face: along a bore's own axis, or square to the wire.</param>
/// <param name="AlongShaft">Whether the axis of a bore lies along the throttle shaft; true for a socket, false for a recess.</param>
public sealed record FittingPocket(EndFittingKind Kind, double Width, double Length, double Depth, bool AlongShaft)
{
    /// <summary>Whether a fitting of this shape belongs in it: its own, and a ball in a barrel's bore.</summary>
    public bool Takes(EndFittingKind fitting) => fitting == Kind || (fitting == EndFittingKind.Ball && Kind == EndFittingKind.Barrel);

    /// <summary>Play of a fitting in it (mm), in the direction with the smallest; negative if it does not go in.</summary>
    public double PlayOf(EndFitting fitting) =>
        Kind == EndFittingKind.Nipple ? Math.Min(Width - fitting.Diameter, Length - fitting.Length) : Width - fitting.Diameter;

    /// <summary>How far a fitting lies below the quadrant's face (mm), resting on the bottom; negative if it sticks out.</summary>
    public double BelowFace(EndFitting fitting) =>
        Depth - (Kind == EndFittingKind.Barrel && fitting.Kind == EndFittingKind.Barrel ? fitting.Length : fitting.Diameter);

    /// <summary>Whether a fitting can turn in it about the throttle shaft's direction, as the wire's direction asks.</summary>
    public bool LetsTurn(EndFitting fitting) => fitting.Kind == EndFittingKind.Ball ? Kind != EndFittingKind.Nipple : AlongShaft && fitting.Kind == EndFittingKind.Barrel;
}
