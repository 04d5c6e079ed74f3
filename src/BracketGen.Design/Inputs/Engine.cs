using System.Collections.Immutable;
using BracketGen.Geometry;

namespace BracketGen.Design.Inputs;

/// <summary>The engine, as far as it shakes what is bolted to it.</summary>
/// <param name="Cylinders">Number of cylinders.</param>
/// <param name="MaxSpeed">Highest speed of the crankshaft (1/min).</param>
/// <param name="Strokes">Strokes of a working cycle: 4, or 2.</param>
public sealed record Engine(int Cylinders, double MaxSpeed, int Strokes = 4)
{
    /// <summary>Idle speed where nobody gives it (1/min; common practice, no source): low, so that no meeting of order and vibration is left out.</summary>
    public const double UsualIdleSpeed = 600;

    /// <summary>Idle speed of the crankshaft (1/min).</summary>
    public Measured IdleSpeed { get; init; } = new(UsualIdleSpeed, 0, Evidence.Assumed);

    /// <summary>Firing frequency at the highest speed (Hz): one pulse a cylinder in every working cycle.</summary>
    /// <remarks>The main order of the torque and of what shakes the engine: cylinders over strokes, twice, times the crankshaft's frequency.</remarks>
    public double FiringFrequency => MaxSpeed / 60 * Cylinders * 2 / Strokes;

    /// <summary>The orders that are looked at: half the firing order, the firing order and twice that. On a four-stroke of n cylinders n/4, n/2 and n.</summary>
    /// <remarks>An order is a number of cycles in one turn of the crankshaft. Half of the firing order comes from cylinders that do not fire alike; an in-line engine of four shakes hardest in its second.</remarks>
    public ImmutableArray<double> Orders => [(double)Cylinders / Strokes, 2.0 * Cylinders / Strokes, 4.0 * Cylinders / Strokes];

    /// <summary>Frequency of an order (Hz) at a speed (1/min).</summary>
    public static double FrequencyOf(double order, double speed) => order * speed / 60;
}
