using BracketGen.Design.Inputs;

namespace BracketGen.Design.Checks;

/// <summary>A speed at which an order of the engine meets a natural frequency of the bracket.</summary>
/// <param name="Order">The order: cycles in one turn of the crankshaft.</param>
/// <param name="Mode">Number of the vibration, from 1.</param>
/// <param name="Speed">Speed of the crankshaft (1/min), between idle and maximum.</param>
public readonly record struct OrderCrossing(double Order, int Mode, double Speed)
{
    /// <summary>All of them, by order and then by vibration.</summary>
    /// <param name="engine">The engine.</param>
    /// <param name="frequencies">Natural frequencies, slowest first (Hz).</param>
    public static IEnumerable<OrderCrossing> Of(Engine engine, IReadOnlyList<double> frequencies) =>
        from order in engine.Orders
        from mode in Enumerable.Range(0, frequencies.Count)
        let speed = frequencies[mode] * 60 / order
        where speed >= engine.IdleSpeed.Min && speed <= engine.MaxSpeed
        select new OrderCrossing(order, mode + 1, speed);
}
