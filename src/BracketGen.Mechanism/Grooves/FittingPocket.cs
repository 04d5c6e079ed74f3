namespace BracketGen.Mechanism.Grooves;

/// <summary>What kind of pocket holds the end fitting.</summary>
public enum PocketKind
{
    /// <summary>A bore for a barrel.</summary>
    Bore,

    /// <summary>A socket for a ball.</summary>
    Socket,

    /// <summary>A recess along the wire for a nipple.</summary>
    Recess,
}

/// <summary>The recess in the quadrant that holds the end fitting.</summary>
/// <remarks>Lengths in mm. The slot through which the wire leaves it is <see cref="Quadrant.SlotWidth"/>.</remarks>
/// <param name="Kind">What kind it is.</param>
/// <param name="Width">Diameter of bore or socket, width of a recess.</param>
/// <param name="Length">Length along the wire of a recess; the width again for the others.</param>
/// <param name="Depth">Depth from the quadrant's face: along a bore's own axis, or square to the wire.</param>
/// <param name="AlongShaft">Whether the axis of a bore lies along the throttle shaft; true for a socket, false for a recess.</param>
public sealed record FittingPocket(PocketKind Kind, double Width, double Length, double Depth, bool AlongShaft);
