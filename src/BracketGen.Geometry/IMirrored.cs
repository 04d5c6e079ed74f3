namespace BracketGen.Geometry;

/// <summary>Something that has a place in the throttle frame, and so a mirror image in the plane y = 0.</summary>
/// <remarks>
/// Solvers take throttle bodies that open counter-clockwise. What belongs to a body that opens clockwise is mirrored on its way in, and the
/// answer is mirrored on its way out. Mirroring twice gives the same coordinates to the last bit; only the angles of arcs are rounded.
/// </remarks>
/// <typeparam name="TSelf">Its type.</typeparam>
public interface IMirrored<out TSelf>
{
    /// <summary>The mirror image in the plane y = 0.</summary>
    TSelf Mirrored();
}
