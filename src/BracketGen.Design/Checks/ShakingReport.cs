using System.Collections.Immutable;
using BracketGen.Design.Inputs;
using BracketGen.Geometry;
using BracketGen.Strength.Analysis;

namespace BracketGen.Design.Checks;

/// <summary>What shaking of the mount does to the bracket, and whether it cracks from it.</summary>
/// <remarks>The numbers have six figures, as those of <see cref="LoadCase"/>; those of the nodes have all.</remarks>
public sealed record ShakingReport : IMirrored<ShakingReport>
{
    /// <summary>How the mount shakes.</summary>
    public required Shaking Shaking { get; init; }

    /// <summary>The vibrations that were counted, slowest first.</summary>
    public required ImmutableArray<ShakenMode> Modes { get; init; }

    /// <summary>How far the von Mises stress swings to each side, at every node on both surfaces (MPa).</summary>
    public required ImmutableArray<NodeStress> Alternating { get; init; }

    /// <summary>The largest of it (MPa).</summary>
    public required double LargestStress { get; init; }

    /// <summary>What the sine has in it there (MPa); the random acceleration has the rest, three times its root mean square.</summary>
    public required double SineStress { get; init; }

    /// <summary>Frequency at which the sine is worst there (Hz); zero without a sine.</summary>
    public required double SineFrequency { get; init; }

    /// <summary>Where it is, on the flat pattern (mm).</summary>
    public required FlatPoint At { get; init; }

    /// <summary>Safety factor against cracking from shaking and every opening together.</summary>
    public required double EnduranceFactor { get; init; }

    /// <summary>The same with what is assumed at its unfavourable end; null where nothing is assumed.</summary>
    public required double? EnduranceFactorAtWorst { get; init; }

    /// <inheritdoc/>
    public ShakingReport Mirrored() => this with { At = At.MirroredInX };
}

/// <summary>A natural vibration as shaking excites it.</summary>
/// <param name="Frequency">Natural frequency (Hz).</param>
/// <param name="MassPart">Effective mass along the axis where it is largest, as a part of the mass that moves.</param>
public readonly record struct ShakenMode(double Frequency, double MassPart);
