using BracketGen.Geometry;

namespace BracketGen.Mechanism.Throttles;

/// <summary>The springs at the throttle shaft that close the valve.</summary>
/// <remarks>Torque is assumed to grow linearly from closed to wide open.</remarks>
/// <param name="TorqueClosed">Closing torque at the closed stop (N·mm).</param>
/// <param name="TorqueOpen">Closing torque at the wide-open stop (N·mm).</param>
/// <param name="Count">Number of springs that each close the valve alone (independent energy sources).</param>
public sealed record ReturnSprings(Measured TorqueClosed, Measured TorqueOpen, int Count)
{
    /// <summary>Closing torque (N·mm) after <paramref name="fraction"/> (0 to 1) of the rotation.</summary>
    public double TorqueAt(double fraction) =>
        TorqueClosed.Value + fraction * (TorqueOpen.Value - TorqueClosed.Value);

    /// <summary>As weak as their ± allows.</summary>
    public ReturnSprings Weakest() => this with { TorqueClosed = TorqueClosed.Min, TorqueOpen = TorqueOpen.Min };

    /// <summary>The springs left when one has failed, all assumed equally strong (49 CFR 571.124 S5).</summary>
    public ReturnSprings OneFailed()
    {
        var left = Count > 1 ? (Count - 1.0) / Count : 0;
        return new(Times(TorqueClosed, left), Times(TorqueOpen, left), Math.Max(0, Count - 1));
    }

    private static Measured Times(Measured torque, double k) => new(k * torque.Value, k * torque.PlusMinus);
}
