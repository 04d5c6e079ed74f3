using System.Collections.Immutable;
using BracketGen.Geometry;

namespace BracketGen.Mechanism.Throttles;

/// <summary>One return spring, measured alone: the others unhooked.</summary>
/// <param name="TorqueClosed">Closing torque at the closed stop (N·mm), read as the valve closes.</param>
/// <param name="TorqueOpen">Closing torque at the wide-open stop (N·mm), likewise.</param>
public readonly record struct ReturnSpring(Measured TorqueClosed, Measured TorqueOpen);

/// <summary>The springs at the throttle shaft that close the valve.</summary>
/// <remarks>
/// Torque is assumed to grow linearly from closed to wide open. It is read as the valve closes: friction of the springs' own coils is then taken off in it.
/// </remarks>
/// <param name="TorqueClosed">Closing torque of all at the closed stop (N·mm).</param>
/// <param name="TorqueOpen">Closing torque of all at the wide-open stop (N·mm).</param>
/// <param name="Count">Number of springs that each close the valve alone (independent energy sources).</param>
public sealed record ReturnSprings(Measured TorqueClosed, Measured TorqueOpen, int Count)
{
    /// <summary>What the strongest spring may be of an equal part, where the springs were not measured one by one (common practice, no source).</summary>
    public const double StrongestAtWorst = 1.2;

    /// <summary>The springs one by one; empty where only their torque together was measured.</summary>
    public ImmutableArray<ReturnSpring> Each { get; init; } = [];

    /// <summary>Springs measured one by one.</summary>
    /// <param name="each">At least one.</param>
    /// <param name="together">Torque of all together, where that was measured too; otherwise the sum stands for it.</param>
    public static ReturnSprings Of(ImmutableArray<ReturnSpring> each, (Measured Closed, Measured Open)? together = null) =>
        new(together?.Closed ?? Sum(each.Select(s => s.TorqueClosed)), together?.Open ?? Sum(each.Select(s => s.TorqueOpen)), each.Length) { Each = each };

    /// <summary>Closing torque (N·mm) after <paramref name="fraction"/> (0 to 1) of the rotation.</summary>
    public double TorqueAt(double fraction) =>
        TorqueClosed.Value + fraction * (TorqueOpen.Value - TorqueClosed.Value);

    /// <summary>As weak as their ± allows.</summary>
    public ReturnSprings Weakest() => this with
    {
        TorqueClosed = TorqueClosed.Min,
        TorqueOpen = TorqueOpen.Min,
        Each = [.. Each.Select(s => new ReturnSpring(s.TorqueClosed.Min, s.TorqueOpen.Min))],
    };

    /// <summary>The springs left when the strongest has failed (49 CFR 571.124 S5); where they were not measured one by one, all count as equally strong.</summary>
    /// <remarks>Which spring is the strongest may change over the sweep: each end of the torque loses its own strongest.</remarks>
    /// <param name="strongest">What the strongest is of an equal part, where the springs were not measured one by one.</param>
    public ReturnSprings OneFailed(double strongest = 1)
    {
        if (Each.Length > 1)
        {
            return new(Left(Each.Select(s => s.TorqueClosed)), Left(Each.Select(s => s.TorqueOpen)), Count - 1);
        }

        var left = Count > 1 ? Math.Max(0, (Count - strongest) / Count) : 0;
        return new(Times(TorqueClosed, left), Times(TorqueOpen, left), Math.Max(0, Count - 1));
    }

    /// <summary>The springs left when one of them has failed.</summary>
    /// <param name="index">Which, from 0; without the springs one by one, all count as equally strong.</param>
    public ReturnSprings Without(int index) => Each.Length > 1 ? Of(Each.RemoveAt(index)) : OneFailed();

    /// <inheritdoc/>
    public bool Equals(ReturnSprings? other) => other is not null
        && TorqueClosed == other.TorqueClosed && TorqueOpen == other.TorqueOpen && Count == other.Count && Each.SequenceEqual(other.Each);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(TorqueClosed, TorqueOpen, Count, Each.Length);

    // What is left of all without the largest; a sum rather than a difference, so that every part was measured.
    private static Measured Left(IEnumerable<Measured> torques) => Sum(torques.OrderBy(t => t.Value).SkipLast(1));

    private static Measured Sum(IEnumerable<Measured> torques) => torques.Aggregate((a, b) =>
        new(a.Value + b.Value, a.PlusMinus + b.PlusMinus, (Evidence)Math.Min((int)a.Evidence, (int)b.Evidence)));

    private static Measured Times(Measured torque, double k) => new(k * torque.Value, k * torque.PlusMinus);
}
