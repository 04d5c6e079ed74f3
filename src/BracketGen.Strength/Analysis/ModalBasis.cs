using System.Collections.Immutable;
using BracketGen.Geometry;

namespace BracketGen.Strength.Analysis;

/// <summary>The lowest natural vibrations of a held part as a shaken base excites them, and what a steady acceleration does.</summary>
/// <remarks>
/// R. W. Clough, J. Penzien, Dynamics of Structures, chapters on support excitation and modal participation (from memory). The steady part carries everything
/// that the counted modes miss, at the stiffness it has (mode acceleration).
/// </remarks>
public sealed class ModalBasis
{
    internal ModalBasis(ImmutableArray<double> frequencies, ImmutableArray<Vector3> participation, Vector3 mass, ImmutableArray<StressField> shapes, ImmutableArray<StressField> steady) =>
        (Frequencies, Participation, MovingMass, Shapes, Steady) = (frequencies, participation, mass, shapes, steady);

    /// <summary>Natural frequencies, slowest first (Hz).</summary>
    public ImmutableArray<double> Frequencies { get; }

    /// <summary>Participation factor of each mode along x, y and z (√t), of shapes whose modal mass is one.</summary>
    internal ImmutableArray<Vector3> Participation { get; }

    /// <summary>The mass that moves with the free nodes along x, y and z (t): what the effective masses of all modes come to.</summary>
    internal Vector3 MovingMass { get; }

    /// <summary>Effective mass of a mode along x, y and z (t): the square of its participation factor.</summary>
    internal Vector3 EffectiveMass(int mode)
    {
        var p = Participation[mode];
        return new(p.X * p.X, p.Y * p.Y, p.Z * p.Z);
    }

    /// <summary>Effective mass of a mode along the axis where it is largest, as a part of the moving mass there.</summary>
    public double LargestMassPart(int mode)
    {
        var mass = EffectiveMass(mode);
        return Math.Max(mass.X / MovingMass.X, Math.Max(mass.Y / MovingMass.Y, mass.Z / MovingMass.Z));
    }

    /// <summary>Part of the moving mass that the counted modes carry, along the axis where it is smallest.</summary>
    public double CountedMass
    {
        get
        {
            var sum = Vector3.Zero;
            for (var r = 0; r < Frequencies.Length; r++)
            {
                sum += EffectiveMass(r);
            }

            return Math.Min(sum.X / MovingMass.X, Math.Min(sum.Y / MovingMass.Y, sum.Z / MovingMass.Z));
        }
    }

    /// <summary>Stress of each shape (MPa for a modal coordinate of one).</summary>
    internal ImmutableArray<StressField> Shapes { get; }

    /// <summary>Stress under a steady acceleration of the base of 1 mm/s² along x, y and z (MPa).</summary>
    internal ImmutableArray<StressField> Steady { get; }
}
