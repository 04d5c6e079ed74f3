using BracketGen.Geometry;

namespace BracketGen.Mechanism;

/// <summary>The springs at the throttle shaft that close the valve.</summary>
/// <remarks>Torque is taken to grow linearly from closed to wide open. Immutable, thread-safe.</remarks>
/// <param name="TorqueClosed">Closing torque at the closed stop (N·mm).</param>
/// <param name="TorqueOpen">Closing torque at the wide-open stop (N·mm).</param>
/// <param name="Count">Number of springs that each close the valve alone (independent energy sources).</param>
public sealed record ReturnSprings(Measured TorqueClosed, Measured TorqueOpen, int Count)
{
    /// <summary>Closing torque (N·mm) after <paramref name="fraction"/> (0 to 1) of the rotation.</summary>
    public double TorqueAt(double fraction) =>
        TorqueClosed.Value + fraction * (TorqueOpen.Value - TorqueClosed.Value);
}
