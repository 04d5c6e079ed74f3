using BracketGen.Design.Inputs;
using BracketGen.Geometry;

namespace BracketGen.Design.Study;

/// <summary>A keep-out drawn back on every side: what is left to keep out of when it is moved off or made smaller.</summary>
/// <param name="Whole">The keep-out as it stands.</param>
/// <param name="By">How far its surface is drawn back (mm).</param>
internal sealed record KeepOutMovedOff(KeepOut Whole, double By) : KeepOut(Whole.Name)
{
    /// <inheritdoc/>
    public override double DistanceTo(ThrottlePoint point) => Whole.DistanceTo(point) + By;

    /// <inheritdoc/>
    public override ConvexSolid Solid => Whole.Solid.Grown(-By);

    /// <inheritdoc/>
    public override KeepOut Mirrored() => this with { Whole = Whole.Mirrored() };
}
