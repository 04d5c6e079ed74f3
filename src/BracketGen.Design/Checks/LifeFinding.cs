using System.Collections.Immutable;
using BracketGen.Geometry;
using BracketGen.Strength.Analysis;
using BracketGen.Strength.Life;
using BracketGen.Strength.Model;

namespace BracketGen.Design.Checks;

/// <summary>How the bracket lasts: the place where it cracks first.</summary>
/// <param name="Cycles">Pedal openings that it must last.</param>
/// <param name="Factor">How many times all loads may grow before it cracks within the life.</param>
/// <param name="At">That place on the flat pattern (mm).</param>
/// <param name="IsAtEdge">Whether it lies on a cut edge.</param>
/// <param name="Permitted">Alternating stress (MPa) that is withstood there for the pedal openings of the life.</param>
/// <param name="Openings">Alternating stress (MPa) of the pedal's openings there; their mean is as large.</param>
/// <param name="Constant">Stress that is always there (MPa): the mount face's bosses, drawn level by the screws.</param>
public sealed record LifeFinding(double Cycles, double Factor, FlatPoint At, bool IsAtEdge, double Permitted, double Openings, double Constant) : IMirrored<LifeFinding>
{
    /// <inheritdoc/>
    public LifeFinding Mirrored() => this with { At = At.MirroredInX };

    /// <summary>The place with the smallest factor, the first of several.</summary>
    /// <param name="mesh">Mesh of the flat pattern.</param>
    /// <param name="onEdge">Whether each node lies on a cut edge.</param>
    /// <param name="opening">Stresses under the largest tension of an opening.</param>
    /// <param name="openings">How often the pedal is opened.</param>
    /// <param name="metal">What the metal withstands.</param>
    /// <param name="constant">Von Mises stress that is always there, on either surface (MPa), a number a node; empty for none.</param>
    /// <param name="shaken">What shaking adds; null for none.</param>
    /// <param name="line">What it withstands in fatigue, and at what yield strength, where that is not the metal's own.</param>
    internal static LifeFinding Of(
        TriangleMesh mesh, ImmutableArray<bool> onEdge, ImmutableArray<NodeStress> opening, double openings, StrengthMetal metal,
        ImmutableArray<double> constant, ShakenStress? shaken, (SnLine Line, double Yield)? line = null)
    {
        var (sn, yield) = line ?? (metal.Line, metal.Yield);
        var (worst, least) = (0, double.PositiveInfinity);
        Span<FatigueLoad> loads = stackalloc FatigueLoad[2];
        for (var n = 0; n < opening.Length; n++)
        {
            double edge = onEdge[n] ? metal.EdgeFactor : 1, always = constant.IsDefaultOrEmpty ? 0 : constant[n];
            var pedal = FatigueLoad.FromZero(opening[n].Largest, openings);
            var factor = FatigueFactor.Of(pedal, sn, yield, always, edge);

            // Shaking rides on the opening: it widens the range of each, and swings by itself about all that an opening makes. It can only lower the factor.
            if (shaken is not null && factor > 0)
            {
                var swing = shaken.Amplitudes[n].Largest;
                loads[0] = pedal with { Amplitude = pedal.Amplitude + swing };
                loads[1] = new(swing, opening[n].Largest, shaken.Cycles);
                factor = FatigueFactor.Of(loads, sn, yield, always, edge);
            }

            if (factor < least)
            {
                (worst, least) = (n, factor);
            }
        }

        var at = onEdge[worst];
        return new(
            openings, LoadCase.SixFigures(least), mesh.Nodes[worst], at, LoadCase.SixFigures((at ? metal.EdgeFactor : 1) * sn.Amplitude(openings)),
            LoadCase.SixFigures(opening[worst].Largest / 2), constant.IsDefaultOrEmpty ? 0 : LoadCase.SixFigures(constant[worst]));
    }
}
