namespace BracketGen.Design.Inputs;

/// <summary>The engine, as far as it shakes what is bolted to it.</summary>
/// <param name="Cylinders">Number of cylinders.</param>
/// <param name="MaxSpeed">Highest speed of the crankshaft (1/min).</param>
/// <param name="Strokes">Strokes of a working cycle: 4, or 2.</param>
public sealed record Engine(int Cylinders, double MaxSpeed, int Strokes = 4)
{
    /// <summary>Firing frequency at the highest speed (Hz): one pulse a cylinder in every working cycle.</summary>
    /// <remarks>The main order of the torque and of what shakes the engine: cylinders over strokes, twice, times the crankshaft's frequency.</remarks>
    public double FiringFrequency => MaxSpeed / 60 * Cylinders * 2 / Strokes;
}
