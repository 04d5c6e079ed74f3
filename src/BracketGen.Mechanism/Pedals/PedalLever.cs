using System.Collections.Immutable;
using System.Globalization;
using BracketGen.Mechanism.Numerics;

namespace BracketGen.Mechanism.Pedals;

/// <summary>How the pedal's pad moves the wire: pad travel x (mm) to pull p (mm).</summary>
/// <remarks>
/// By virtual work the foot force is the tension at the pedal times dp/dx.
/// </remarks>
public abstract record PedalLever
{
    /// <summary>Travel of the pad from released to floor (mm).</summary>
    public abstract double FullStroke { get; }

    /// <summary>Pull (mm) at a pad travel (mm).</summary>
    public abstract double PullAt(double pad);

    /// <summary>Pad travel (mm) that gives a pull (mm).</summary>
    public abstract double PadAt(double pull);

    /// <summary>dp/dx at a pad travel (mm): pull for 1 mm of pad travel, and foot force for 1 N of tension at the pedal.</summary>
    public abstract double PullPerTravel(double pad);

    /// <summary>Pull of the full stroke (mm).</summary>
    public double FullPull => PullAt(FullStroke);
}

/// <summary>A lever of constant ratio.</summary>
/// <param name="Ratio">Pad travel for 1 mm of pull, positive.</param>
/// <param name="Stroke">Travel of the pad from released to floor (mm).</param>
public sealed record ConstantLever(double Ratio, double Stroke) : PedalLever
{
    /// <inheritdoc/>
    public override double FullStroke => Stroke;

    /// <inheritdoc/>
    public override double PullAt(double pad) => pad / Ratio;

    /// <inheritdoc/>
    public override double PadAt(double pull) => pull * Ratio;

    /// <inheritdoc/>
    public override double PullPerTravel(double pad) => 1 / Ratio;
}

/// <summary>One measured pair of a pedal table.</summary>
/// <param name="Pad">Travel of the pad from released (mm).</param>
/// <param name="Pull">Wire pulled there (mm).</param>
public readonly record struct PedalPoint(double Pad, double Pull);

/// <summary>A lever measured point by point, joined by a smooth curve that never turns back (<see cref="MonotoneCubic"/>).</summary>
/// <remarks>
/// Fritsch and Carlson, SIAM J. Numer. Anal. 17 (1980) 238-246. dp/dx is positive everywhere, also at the ends of a table that flattens: a level end
/// would mean that no load at the pad holds the wire. Equal where the points are.
/// </remarks>
public sealed record TabulatedLever : PedalLever
{
    private readonly MonotoneCubic curve;

    /// <summary>The lever through <paramref name="points"/>, the first of them (0, 0), the last at the floor.</summary>
    /// <exception cref="ArgumentException">Fewer than two points, or pad travel or pull that does not rise; the message names the row.</exception>
    public TabulatedLever(IEnumerable<PedalPoint> points)
    {
        Points = [.. points];
        if (Points.Length < 2)
        {
            throw new ArgumentException($"A pedal table needs at least two rows; this one has {Points.Length}.");
        }

        if (Points[0] != default)
        {
            throw new ArgumentException("Pedal table, row 1: it must begin with the released pedal, no travel and no pull.");
        }

        for (var i = 1; i < Points.Length; i++)
        {
            var (here, before) = (Points[i], Points[i - 1]);
            if (!(here.Pad > before.Pad && here.Pull > before.Pull))
            {
                throw new ArgumentException(string.Create(
                    CultureInfo.InvariantCulture,
                    $"Pedal table, row {i + 1} (pad {here.Pad:0.###} mm, pull {here.Pull:0.###} mm): both must be more than in row {i} ({before.Pad:0.###} mm, {before.Pull:0.###} mm)."));
            }
        }

        curve = new([.. Points.Select(p => p.Pad)], [.. Points.Select(p => p.Pull)], risesAtEnds: true);
    }

    /// <summary>The points, from released to floor.</summary>
    public ImmutableArray<PedalPoint> Points { get; }

    /// <inheritdoc/>
    public override double FullStroke => Points[^1].Pad;

    /// <inheritdoc/>
    public override double PullAt(double pad) => curve.At(pad).Value;

    /// <inheritdoc/>
    /// <remarks>Pulls outside the table give its ends.</remarks>
    public override double PadAt(double pull) => curve.Inverse(pull);

    /// <inheritdoc/>
    public override double PullPerTravel(double pad) => curve.At(pad).Slope;

    /// <inheritdoc/>
    public bool Equals(TabulatedLever? other) => other is not null && Points.SequenceEqual(other.Points);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Points.Length, Points[^1]);
}
