using BracketGen.Geometry;
using BracketGen.SheetMetal.Patterns;

namespace BracketGen.Design.Inputs;

/// <summary>Slotted mount holes that are wanted, all alike, so that the bracket can be shifted before it is tightened.</summary>
/// <param name="Travel">How far the bracket can be shifted, from end to end (mm), more than zero.</param>
/// <param name="Way">Direction in which it can be shifted, throttle frame; what of it lies in the mount face counts. Its sense does not.</param>
public sealed record MountSlots(double Travel, Vector3 Way) : IMirrored<MountSlots>
{
    /// <summary>Least part of the direction that lies in the mount face: below it nobody meant it so (6°).</summary>
    public const double LeastInFace = 0.1;

    /// <summary>What of a direction lies in a mount face, length one; null where it is nearly square to the face, and says nothing.</summary>
    /// <param name="way">The direction, any length but zero.</param>
    /// <param name="normal">Normal of the face, length one.</param>
    public static Vector3? InFace(Vector3 way, Vector3 normal)
    {
        var inFace = way.Unit - way.Unit.Dot(normal) * normal;
        return inFace.Length < LeastInFace ? null : inFace.Unit;
    }

    /// <summary>The slot on the mount flange, by its own axes; its direction points to the right, or straight up.</summary>
    /// <param name="frame">The mount flange's frame.</param>
    /// <exception cref="InvalidOperationException">The direction is square to the face.</exception>
    public SlottedHole On(Frame frame)
    {
        var along = frame.ToLocalDirection(Way).XY.Unit;

        // The same slot whichever sense was given, also where round-off decides.
        var back = along.X < -Tolerance.Direction || (along.X < Tolerance.Direction && along.Y < 0);
        return new(back ? -along : along, Travel);
    }

    /// <inheritdoc/>
    public MountSlots Mirrored() => this with { Way = Way.MirroredInY };
}
